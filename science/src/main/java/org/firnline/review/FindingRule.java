package org.firnline.review;

import java.util.List;

/** One thing worth knowing about a run, looked for in its facts. */
interface FindingRule {
  /** The findings of this rule; empty if there is nothing to say. */
  List<Finding> find(Facts facts);
}
