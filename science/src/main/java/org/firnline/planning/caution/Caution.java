package org.firnline.planning.caution;

import java.util.List;
import org.firnline.planning.Figure;
import org.firnline.planning.Verdict;

/**
 * One reminder about one part of a load. The words are the reader's language and live with the
 * screens. A stop needs the reason of a named, authorised person; nothing is ever called safe.
 *
 * @param topic what it is about
 * @param verdict how grave
 * @param owner whose part of the load; empty text for the whole load
 * @param about the substance or vessel it concerns
 * @param figures the numbers behind it, the decisive one first
 */
public record Caution(
    Topic topic, Verdict verdict, String owner, String about, List<Figure> figures) {

  /** What a caution is about, with the number under which the manual lists the hazard. */
  public enum Topic {
    /** Glass under vacuum can implode. */
    GLASS("H1"),
    /** Freezing in a cold bath: burns, brittle parts, displaced oxygen. */
    CRYOGEN("H2"),
    /** A solvent that the collector freezes. */
    SOLVENT_TRAPPED("H5"),
    /** A solvent that stays liquid on the collector or partly passes to the pump. */
    SOLVENT_PARTLY("H5"),
    /** A solvent that goes to the pump and into the room. */
    SOLVENT_PASSES("H5"),
    /** A solvent nobody has listed. */
    SOLVENT_UNKNOWN("H5"),
    /** An acid or base that corrodes collector, pump and seals. */
    CORROSIVE("H6"),
    /** Azides with copper or brass can form explosives. */
    AZIDE("H7"),
    /** Drying concentrates energetic material. */
    ENERGETIC("H8"),
    /** Live or infectious material. */
    BIOLOGICAL("H9"),
    /** Potent or sensitising dry powder. */
    TOXIC("H10"),
    /** Backfill can raise the chamber above the pressure of the room. */
    BACKFILL("H14"),
    /** Drying does not make food safe to eat. */
    FOOD("H17"),
    /** Food beside laboratory samples. */
    FOOD_BESIDE_OTHERS("H18"),
    /** Solvent or acid of one owner reaches the samples of another. */
    VAPOR_REACHES_OTHERS("H5"),
    /** The run goes on while nobody is there. */
    UNATTENDED("H20"),
    /** So much salt or sugar that the product softens far below freezing. */
    SOFT_PRODUCT(""),
    /** A tray that does not stand level dries unevenly. */
    TRAY_LEVEL("");

    private final String hazard;

    Topic(String hazard) {
      this.hazard = hazard;
    }

    /** Number of the hazard in the manual; empty where nobody is in danger. */
    public String hazard() {
      return hazard;
    }
  }

  public Caution {
    figures = List.copyOf(figures);
  }
}
