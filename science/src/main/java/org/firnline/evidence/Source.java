package org.firnline.evidence;

/**
 * A published or traditional origin of a value.
 *
 * @param citation author, year, title or standard; not blank
 * @param status how the value was obtained from it
 */
public record Source(String citation, Status status) {

  /** How a value was obtained from its source. */
  public enum Status {
    /** Read in the source, or in a page that quotes it. */
    FOUND("read in the source"),
    /** Recalled and not retrieved; not to be cited as checked. */
    FROM_MEMORY("from memory"),
    /** Computed from stated inputs. */
    DERIVED("derived"),
    /** What the trade does; no published source. */
    COMMON_PRACTICE("common practice, no published source");

    private final String label;

    Status(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }
  }

  public Source {
    if (citation.isBlank()) {
      throw new IllegalArgumentException("a source needs a citation");
    }
  }

  /** The citation with its status in brackets. */
  @Override
  public String toString() {
    return citation + " (" + status.label() + ")";
  }
}
