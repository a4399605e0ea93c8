package org.firnline.app.library.icerun;

import java.util.ArrayList;
import java.util.List;
import org.firnline.app.words.Words;
import org.firnline.learning.icerun.IceRunAnswer;
import org.firnline.learning.icerun.PositionHeatTransfer;

/**
 * The answer to filled sheets, every text ready to read.
 *
 * @param runs one for each sheet
 * @param laws K_v(P) where there are three pressures
 * @param assumed what the sheets did not say
 */
record IceRunView(List<Run> runs, List<Law> laws, List<String> assumed) {

  /** One sheet. */
  record Run(String title, List<Row> rows, List<String> warnings) {}

  /** One position class. */
  record Row(
      String position,
      String vessels,
      String value,
      String between,
      String most,
      List<Vessel> each) {}

  /** One vessel. */
  record Vessel(String name, double heatTransfer) {}

  /** K_v(P) of one class. */
  record Law(String position, String text) {}

  static IceRunView of(IceRunFindings findings, List<String> assumed, Words words) {
    IceRunWords figures = new IceRunWords(words);
    List<Run> runs = new ArrayList<>();
    for (IceRunAnswer answer : findings.answers()) {
      runs.add(
          new Run(
              figures.title(answer),
              answer.positions().stream().map(position -> row(position, figures)).toList(),
              answer.warnings().stream()
                  .map(
                      warning ->
                          words.say(
                              "icerun.warning", warning.what(), warning.rule(), warning.advice()))
                  .toList()));
    }
    List<Law> laws = new ArrayList<>();
    findings.laws().forEach((position, law) -> laws.add(new Law(position, figures.law(law))));
    return new IceRunView(runs, laws, assumed);
  }

  private static Row row(PositionHeatTransfer position, IceRunWords figures) {
    return new Row(
        position.position(),
        figures.count(position),
        figures.value(position),
        figures.between(position),
        figures.largest(position),
        position.vessels().stream()
            .map(vessel -> new Vessel(vessel.vessel().name(), vessel.heatTransfer()))
            .toList());
  }
}
