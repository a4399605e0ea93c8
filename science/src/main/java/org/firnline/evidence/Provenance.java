package org.firnline.evidence;

/** Why a value is what it is: measured here, published, assumed, or stated by the person. */
public sealed interface Provenance {

  /** One phrase for people, such as "published: …". */
  String label();

  /**
   * Measured on this lab's own machine or product.
   *
   * @param what the run or test it came from
   */
  record Measured(String what) implements Provenance {
    @Override
    public String label() {
      return "measured here: " + what;
    }
  }

  /** Taken from a publication or from the trade. */
  record Published(Source source) implements Provenance {
    @Override
    public String label() {
      return "published: " + source;
    }
  }

  /**
   * Chosen because nothing better is known.
   *
   * @param reason why this value is a cautious choice
   */
  record Assumed(String reason) implements Provenance {
    @Override
    public String label() {
      return "assumed: " + reason;
    }
  }

  /**
   * Given by the person for this plan or run.
   *
   * @param where the plan line or form field
   */
  record Stated(String where) implements Provenance {
    @Override
    public String label() {
      return "stated: " + where;
    }
  }
}
