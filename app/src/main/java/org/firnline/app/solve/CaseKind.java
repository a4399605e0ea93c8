package org.firnline.app.solve;

/** One kind of question that a case may ask. */
@FunctionalInterface
interface CaseKind {

  /**
   * Every answer this kind knows for {@code inputs}.
   *
   * @throws CaseRefusal if an input is missing or impossible
   */
  CaseAnswer solve(CaseInputs inputs);
}
