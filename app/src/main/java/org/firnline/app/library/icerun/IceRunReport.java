package org.firnline.app.library.icerun;

import java.util.ArrayList;
import java.util.List;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.TextTable;
import org.firnline.app.words.Words;
import org.firnline.evidence.Problem;
import org.firnline.learning.icerun.IceRunAnswer;
import org.firnline.learning.icerun.PositionHeatTransfer;

/** What ice runs tell, for people at a terminal. */
public final class IceRunReport {
  private static final int WIDTH = 92;

  private final Words words;
  private final IceRunWords figures;

  public IceRunReport(Words words) {
    this.words = words;
    this.figures = new IceRunWords(words);
  }

  /** Lines ready to print. */
  public String of(IceRunFindings findings, List<String> assumed) {
    List<String> lines = new ArrayList<>();
    for (IceRunAnswer answer : findings.answers()) {
      run(lines, answer);
    }
    if (!findings.laws().isEmpty()) {
      lines.add(words.say("icerun.law"));
      findings
          .laws()
          .forEach(
              (position, law) ->
                  lines.addAll(TextTable.hanging("  " + position, figures.law(law), 11, WIDTH)));
      lines.add("");
    }
    if (!assumed.isEmpty()) {
      lines.add(words.say("icerun.assumed"));
      assumed.forEach(one -> lines.addAll(TextTable.hanging("  ", one, 2, WIDTH)));
      lines.add("");
    }
    lines.addAll(TextTable.hanging("", words.say("icerun.note"), 0, WIDTH));
    return Quantities.plain(String.join(System.lineSeparator(), lines));
  }

  private void run(List<String> lines, IceRunAnswer answer) {
    lines.add(figures.title(answer));
    List<List<String>> rows = new ArrayList<>();
    for (PositionHeatTransfer position : answer.positions()) {
      rows.add(
          List.of(
              "  " + position.position(),
              figures.count(position),
              figures.value(position),
              figures.between(position),
              figures.largest(position)));
    }
    lines.addAll(TextTable.of(rows));
    for (Problem warning : answer.warnings()) {
      lines.addAll(
          TextTable.hanging(
              "  " + words.say("state.watch"),
              words.say("icerun.warning", warning.what(), warning.rule(), warning.advice()),
              11,
              WIDTH));
    }
    lines.add("");
  }
}
