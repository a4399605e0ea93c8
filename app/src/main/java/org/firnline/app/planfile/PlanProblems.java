package org.firnline.app.planfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.Node;

/** Gathers everything wrong with one file, so that it can be mended in one go. */
final class PlanProblems {
  private final String fileName;
  private final List<PlanProblem> found = new ArrayList<>();

  PlanProblems(String fileName) {
    this.fileName = fileName;
  }

  boolean none() {
    return found.isEmpty();
  }

  /** In the order of the file; missing keys last. */
  List<PlanProblem> inOrder() {
    return found.stream()
        .sorted(
            Comparator.comparingInt(
                    (PlanProblem problem) ->
                        problem.line() == 0 ? Integer.MAX_VALUE : problem.line())
                .thenComparingInt(PlanProblem::column))
        .toList();
  }

  void at(Node node, String path, String code, String what, String rule, String advice) {
    Mark mark = node.getStartMark();
    at(mark.getLine() + 1, mark.getColumn() + 1, path, new Problem(code, what, "", rule, advice));
  }

  void at(int line, int column, String path, Problem problem) {
    String place = fileName + " line " + line + ", column " + column;
    found.add(new PlanProblem(path, line, column, problem.at(place)));
  }

  void missing(String path, String advice) {
    Problem problem =
        new Problem("missing-key", path, fileName, "is needed and has no default", advice);
    found.add(new PlanProblem(path, 0, 0, problem));
  }

  /** What a noun of the lab refused, put beside the key that caused it. */
  void refused(PlanSection section, String key, InvalidInputException refusal) {
    for (Problem problem : refusal.problems()) {
      section.blame(key, problem);
    }
  }
}
