package org.firnline.logs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * A known run written in hundreds of layouts and read back: times, values, roles and gaps must be
 * those of the run, and nothing may be asked (R-IMP-02 to 06, 11 to 13).
 */
class LayoutAxesTest {
  /** Units are applied once or twice to numbers of at most nine digits. */
  private static final double ROUNDING = 1e-9;

  @Property(
      tries = 500,
      seed = "2026101405",
      edgeCases = EdgeCasesMode.NONE,
      shrinking = ShrinkingMode.OFF)
  void any_layout_gives_back_the_run(@ForAll long seed) {
    check(seed);
  }

  /** As many layouts as asked for, from a first seed on: {@code ./firnline fuzz layouts}. */
  @Test
  @EnabledIfSystemProperty(named = "firnline.layouts", matches = "\\d+")
  void many_layouts_give_back_the_run() {
    long count = Long.parseLong(System.getProperty("firnline.layouts"));
    for (long seed = 0; seed < count; seed++) {
      check(seed);
    }
  }

  static void check(long seed) {
    LayoutAxes axes = LayoutAxes.drawn(new Random(seed));
    String what = "seed " + seed + " " + axes;
    Reading reading =
        new LogReader()
            .read("axes", axes.bytes(), ReadingChoices.none().withZone(ZoneId.of(axes.zone())));
    assertThat(reading.log()).as(what + reading.problems()).isPresent();
    Log log = reading.log().orElseThrow();
    assertThat(log.time().size()).as(what + " rows " + reading.rows()).isEqualTo(KnownRun.ROWS);
    assertThat(reading.questions()).as(what).isEmpty();
    for (int row = 0; row < KnownRun.ROWS; row++) {
      assertThat(log.time().instant(row)).as(what).isEqualTo(KnownRun.time(row));
    }
    for (Role role : KnownRun.ROLES) {
      values(axes, log, role, what);
    }
  }

  private static void values(LayoutAxes axes, Log log, Role role, String what) {
    List<Channel> found =
        log.channels().stream()
            .filter(
                c -> c.role() == role || (role == Role.PRESSURE && c.role().isChamberPressure()))
            .toList();
    assertThat(found).as(what + " " + role + " of " + log.channels()).hasSize(1);
    for (int row = 0; row < KnownRun.ROWS; row++) {
      Quality quality = found.get(0).series().quality(row);
      assertThat(quality == Quality.GOOD).as(what).isEqualTo(!axes.isMissing(role, row));
      if (quality == Quality.GOOD) {
        double printed = KnownRun.printed(role, row, axes.unit(role)).doubleValue();
        double si = axes.unit(role).toSi(printed);
        assertThat(found.get(0).series().value(row))
            .as(what + " " + role + " row " + row)
            .isCloseTo(si, within(ROUNDING * Math.max(1, Math.abs(si))));
      }
    }
  }
}
