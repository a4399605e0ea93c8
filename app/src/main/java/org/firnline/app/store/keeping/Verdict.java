package org.firnline.app.store.keeping;

import java.util.List;
import java.util.Optional;

/**
 * What a verification found.
 *
 * @param entries entries of the audit that were read
 * @param rows tables whose rows were compared with the audit
 * @param files raw files whose bytes were read and hashed
 * @param series series whose blocks were read and hashed
 * @param lastHash hash of the last entry; written down elsewhere, it proves later that none is gone
 * @param problems what is not as it was written, the earliest first
 */
public record Verdict(
    long entries, int rows, int files, int series, String lastHash, List<String> problems) {

  public Verdict {
    problems = List.copyOf(problems);
  }

  /** Whether everything is as it was written. */
  public boolean isUnaltered() {
    return problems.isEmpty();
  }

  /** The first record that is not as it was written. */
  public Optional<String> first() {
    return problems.stream().findFirst();
  }
}
