package org.firnline.lab;

/**
 * What a person declares about a sample because it can harm people, the dryer or other samples.
 * Declaring it makes nothing safe; local rules and trained, authorised people decide.
 */
public sealed interface Hazard {

  /** Stable word for files and programs. */
  String code();

  /**
   * An organic solvent in the liquid.
   *
   * @param name as in the list of solvents, such as {@code acetonitrile}; not blank
   * @param massFraction of the liquid, kg/kg; above 0 to 1
   */
  record Solvent(String name, double massFraction) implements Hazard {

    public Solvent {
      Check.named(name, "solvent name");
      Check.that(
          massFraction > 0 && massFraction <= 1,
          "share-range",
          "share of solvent",
          "share of solvent " + massFraction,
          "must lie above 0 and at most 1",
          "give for instance 30 %");
    }

    @Override
    public String code() {
      return "solvent";
    }
  }

  /**
   * An acid or base that leaves with the vapor, such as trifluoroacetic acid.
   *
   * @param name not blank
   */
  record Corrosive(String name) implements Hazard {

    public Corrosive {
      Check.named(name, "name of the corrosive");
    }

    @Override
    public String code() {
      return "acid";
    }
  }

  /** An azide, which copper and brass can turn into explosives. */
  record Azide() implements Hazard {

    @Override
    public String code() {
      return "azide";
    }
  }

  /**
   * Material that drying concentrates into something energetic: peroxide formers, nitro compounds,
   * perchlorates.
   *
   * @param name not blank
   */
  record Energetic(String name) implements Hazard {

    public Energetic {
      Check.named(name, "name of the energetic material");
    }

    @Override
    public String code() {
      return "energetic";
    }
  }

  /**
   * Live or infectious material.
   *
   * @param group risk group 1 to 4 by the lab's own assessment
   */
  record Biological(int group) implements Hazard {

    public Biological {
      Check.that(
          group >= 1 && group <= 4,
          "risk-group-range",
          "risk group",
          "risk group " + group,
          "runs from 1 to 4",
          "ask who assesses biological risk");
    }

    @Override
    public String code() {
      return "biological";
    }
  }

  /** A potent, toxic or sensitising solid: its dry cake is light and flies. */
  record Toxic() implements Hazard {

    @Override
    public String code() {
      return "toxic";
    }
  }

  /**
   * Food for people or animals: drying does not make it safe, and it shares no laboratory dryer.
   */
  record Food() implements Hazard {

    @Override
    public String code() {
      return "food";
    }
  }
}
