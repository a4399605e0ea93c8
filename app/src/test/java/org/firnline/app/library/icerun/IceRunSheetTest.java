package org.firnline.app.library.icerun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.firnline.app.words.Words;
import org.firnline.evidence.Problem;
import org.firnline.learning.icerun.IceRun;
import org.junit.jupiter.api.Test;

class IceRunSheetTest {
  private static final Words WORDS = Words.in(Locale.ENGLISH);
  private static final String HEAD =
      """
      # invented
      ice run,March
      dryer,Fen 2
      vessel,10R
      ice per vessel,3 mL
      chamber pressure,75 mTorr +- 1 mTorr
      time,2 h +- 1 min
      shelf temperature,14 °F +- 0.5 K
      ice temperature,-36 °C ± 0.4 K
      balance resolution,1 mg
      """;
  private static final String TABLE =
      "vessel,position,before (g),after (g)\n1,center,12.800,12.150\n2,edge,12.9 g,12.1 g\n";

  private static IceRunReading read(String text) {
    return IceRunSheet.read("sheet.csv", text, WORDS);
  }

  @Test
  void readsValuesInTheirOwnUnitsWithTheirDeviations() {
    IceRunReading reading = read(HEAD + TABLE);
    assertThat(reading.problems()).isEmpty();
    IceRun run = reading.run().orElseThrow();
    assertThat(run.pressure().best()).isCloseTo(10, within(0.01));
    assertThat(run.time().spread()).isEqualTo(60);
    assertThat(run.shelf().best()).isCloseTo(263.15, within(1e-9));
    assertThat(run.bottom().spread()).isEqualTo(0.4);
    assertThat(run.iceAtStart()).isCloseTo(3e-3, within(1e-12));
    assertThat(run.vessels().get(0).loss()).isCloseTo(0.65e-3, within(1e-12));
    assertThat(run.vessels().get(1).loss()).isCloseTo(0.8e-3, within(1e-12));
    assertThat(reading.dryer()).isEqualTo("Fen 2");
  }

  @Test
  void saysWhatItAssumed() {
    String without = (HEAD + TABLE).replaceAll("ice temperature.*\\n", "");
    IceRunReading reading = read(without);
    assertThat(reading.assumed()).hasSize(2);
    assertThat(String.join(" ", reading.assumed()))
        .contains("outer diameter 24", "ISO 8362-1", "equilibrium");
    assertThat(reading.run().orElseThrow().bottom().spread()).isEqualTo(1);
  }

  /** A spreadsheet of another country: tabs or semicolons, decimal commas. */
  @Test
  void readsPastedCellsAndDecimalCommas() {
    String pasted = (HEAD + TABLE).replace(",", "\t").replace('.', ',');
    assertThat(read(pasted).problems()).isEmpty();
    assertThat(read(pasted).run().orElseThrow().vessels().get(0).loss())
        .isCloseTo(0.65e-3, within(1e-12));
    assertThat(read("\uFEFF" + (HEAD + TABLE).replace(",", ";")).problems()).isEmpty();
  }

  @Test
  void namesTheLineOfEveryProblem() {
    String text =
        HEAD.replace("time,2 h", "time,2 apples").replace("dryer,", "dryr,")
            + "vessel,position,before (g),after (g)\n1,center,12.8\n2,edge,12.1,12.9\n3,edge,x,1\n";
    IceRunReading reading = read(text);
    assertThat(reading.run()).isEmpty();
    assertThat(reading.problems())
        .extracting(Problem::code)
        .contains("unknown-line", "short-row", "no-loss", "not-a-quantity");
    assertThat(reading.problems()).allMatch(problem -> problem.where().contains("line"));
    IceRunReading badTime = read(HEAD.replace("time,2 h", "time,2 apples") + TABLE);
    assertThat(badTime.problems()).extracting(Problem::code).containsOnly("not-a-quantity");
  }

  @Test
  void saysWhatIsMissing() {
    assertThat(read("ice run,March\n").problems())
        .extracting(Problem::code)
        .contains("no-table", "missing-line");
    assertThat(read(HEAD.replace("10R", "our own vial") + TABLE).problems())
        .extracting(Problem::code)
        .containsExactly("no-diameter");
    assertThat(read(HEAD.replace("14 °F", "-40 °C") + TABLE).problems())
        .extracting(Problem::code)
        .containsExactly("impossible");
  }

  @Test
  void theEmptySheetAsksForWhatItNeeds() {
    IceRunReading empty = read(IceRunTemplate.text(WORDS));
    assertThat(empty.run()).isEmpty();
    assertThat(empty.problems()).extracting(Problem::code).containsOnly("missing-line");
  }
}
