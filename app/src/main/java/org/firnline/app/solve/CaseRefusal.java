package org.firnline.app.solve;

/** A case that cannot be answered, with the reason and what would be right. */
final class CaseRefusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  CaseRefusal(String reason, String advice) {
    super(advice.isEmpty() ? reason : reason + "; " + advice);
  }
}
