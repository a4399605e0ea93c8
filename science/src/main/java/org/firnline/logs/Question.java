package org.firnline.logs;

import java.util.List;
import java.util.Objects;

/**
 * What only a person can settle. The log is read all the same with what is {@code assumed}.
 *
 * @param kind one of the three things that are ever asked
 * @param text the question in plain words
 * @param options answers to choose from, in the form the choice takes; empty if free
 * @param assumed the answer assumed until someone chooses
 * @param choice name of the choice that settles it, as in {@link Guess#choice()}
 */
public record Question(
    Kind kind, String text, List<String> options, String assumed, String choice) {

  /** The only things that are ever asked. */
  public enum Kind {
    DATE_ORDER("date order"),
    ZONE("zone"),
    UNIT_OR_ROLE("unit or role");

    private final String label;

    Kind(String label) {
      this.label = label;
    }

    /** The words shown to people and used in answers for machines. */
    public String label() {
      return label;
    }
  }

  public Question {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(text, "text");
    options = List.copyOf(options);
    Objects.requireNonNull(assumed, "assumed");
    Objects.requireNonNull(choice, "choice");
  }
}
