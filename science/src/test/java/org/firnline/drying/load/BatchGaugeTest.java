package org.firnline.drying.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.gauge.EndMarks;
import org.firnline.drying.gauge.RatioPoint;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BatchGaugeTest {

  private static final double AGREEMENT = 1e-6;

  /** Marks lie on steps of the curve and are asked for to one in a thousand. */
  private static final double MARK_AGREEMENT = 1e-3;

  private final BatchGauge gauge = new BatchGauge(0.6, 1.0 / 60, 293.15);

  /** 1000 vials in 40 classes of 25, fully specified reference case. */
  @Nested
  class AThousandVialsRunningDry {

    private final List<NamedCsvRecord> rows = rows();
    private final LoadRun run =
        CoupledDrying.run(
            new DryingLoad(rows.stream().map(AThousandVialsRunningDry::group).toList()),
            new LoadSettings(253.14999999999998, new PressureControl.Held(10), VaporPath.UNLIMITED),
            72_000);

    private static VesselGroup group(NamedCsvRecord row) {
      double heat = Double.parseDouble(row.getField("kv_factor"));
      double cake = Double.parseDouble(row.getField("rp_factor"));
      return CoupledDryingTest.vials(
          25,
          CoupledDryingTest.AVERAGE_TUBING.times(heat),
          CoupledDryingTest.DISACCHARIDE.times(cake));
    }

    private static List<NamedCsvRecord> rows() {
      try (var text =
              new InputStreamReader(
                  BatchGaugeTest.class.getResourceAsStream("/cases/batch-gauge.csv"),
                  StandardCharsets.UTF_8);
          CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(text)) {
        return csv.stream().toList();
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    }

    @Test
    void endsClassByClass() {
      for (int group = 0; group < rows.size(); group++) {
        near(
            run.groupEnds().get(group),
            Double.parseDouble(rows.get(group).getField("end_time_s")),
            AGREEMENT);
      }
    }

    @Test
    void givesTheRatioAtTheStartAndAfterTwentyHours() {
      List<RatioPoint> curve = gauge.along(run).orElseThrow().points();
      near(curve.get(0).ratio(), 1.5852279422869384, AGREEMENT);
      double later =
          curve.stream().filter(r -> r.time() == 72_000).findFirst().orElseThrow().ratio();
      near(later, 1.5746802721042221, AGREEMENT);
    }

    @Test
    void marksOnsetMidpointAndEnd() {
      EndMarks marks = gauge.along(run).orElseThrow().marks();
      near(marks.onset().orElseThrow(), 89388.98253977491, MARK_AGREEMENT);
      near(marks.midpoint().orElseThrow(), 95932.32559826119, MARK_AGREEMENT);
      near(marks.end().orElseThrow(), 97358.83583006004, MARK_AGREEMENT);
    }
  }

  @Test
  void readsOneInDryGasAndNearlyItsExcessInPureVapor() {
    assertThat(gauge.ratio(0, 10)).isEqualTo(1);
    assertThat(gauge.ratio(1, 10)).isCloseTo(1.6, within(1e-5));
  }

  @Test
  void hasNoCurveWhereNothingEverDries() {
    LoadRun idle =
        new LoadRun(new LoadOutcome.NothingSublimes(), List.of(), List.of(), List.of(), 1);
    assertThat(gauge.along(idle)).isEmpty();
  }

  private static void near(double actual, double expected, double relative) {
    assertThat(actual).isCloseTo(expected, within(relative * expected));
  }
}
