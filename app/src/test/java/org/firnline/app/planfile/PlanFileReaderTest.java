package org.firnline.app.planfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import org.firnline.evidence.Provenance;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PlanFileReaderTest {
  private static final String SMALLEST = "vessel: {type: 10R, fill: 3 mL}\ncount: 120\n";

  private final PlanFileReader reader = new PlanFileReader();

  private PlanReading read(String text) {
    return reader.read("plan.yaml", text);
  }

  private static String example() {
    try (InputStream in = PlanFileReaderTest.class.getResourceAsStream("/plans/bog-myrtle.yaml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Nested
  class AWholeFile {
    private final PlanInput input = read(example()).input().orElseThrow();

    @Test
    void becomesTheNounsOfTheLabInSiUnits() {
      assertThat(input.title()).isEqualTo("Bog-myrtle extract, first try");
      assertThat(input.load().count()).isEqualTo(120);
      assertThat(input.load().fill()).isCloseTo(3e-6, within(1e-18));
      assertThat(input.load().product().solution().density()).isCloseTo(1020, within(1e-9));
      assertThat(input.load().product().critical().temperature().best())
          .isCloseTo(273.15 - 31, within(1e-9));
      assertThat(input.load().product().critical().temperature().spread())
          .isCloseTo(2, within(1e-12));
      assertThat(input.dryer().pressure().high()).isCloseTo(50, within(1e-12));
      assertThat(input.dryer().collector().rate()).isCloseTo(2 / 86_400.0, within(1e-15));
    }

    @Test
    void acceptsAnyUnitOfTheRightKind() {
      // 60 mTorr at 101325/760 Pa a torr
      assertThat(input.pressure_Pa().orElseThrow()).isCloseTo(7.999342, within(1e-6));
      assertThat(input.shelf_K().orElseThrow()).isCloseTo(251.15, within(1e-9));
    }

    @Test
    void startsByTheLaboratorysOwnClock() {
      assertThat(input.start()).contains(LocalDateTime.of(2026, 11, 26, 16, 30));
    }

    @Test
    void remembersWhereAStatedValueStands() {
      assertThat(input.load().product().critical().temperature().provenance())
          .isEqualTo(new Provenance.Stated("plan line 6"));
    }
  }

  @Nested
  class AShortFile {
    private final PlanReading reading = read(SMALLEST);

    @Test
    void isFilledWithDefaultsThatSayWhereTheyComeFrom() {
      assertThat(reading.input()).isPresent();
      assertThat(reading.assumptions())
          .extracting(Assumption::path)
          .contains("product.solids", "product.critical_temperature", "dryer.ramp")
          .doesNotContain("vessel.fill", "count");
      assertThat(reading.assumptions())
          .allSatisfy(filled -> assertThat(filled.provenance().label()).contains(": "));
    }

    @Test
    void mayBeJson() {
      String json = "{\"vessel\": {\"type\": \"10R\", \"fill\": \"3 mL\"}, \"count\": 120}";
      assertThat(read(json).input()).isEqualTo(reading.input());
    }
  }

  @Nested
  class ProblemsInAFile {
    private List<PlanProblem> problems(String text) {
      PlanReading reading = read(text);
      assertThat(reading.input()).isEmpty();
      return reading.problems();
    }

    @Test
    void areAllReportedTogetherInTheOrderOfTheFile() {
      var problems =
          problems(
              """
              produkt: {solids: 5 %}
              vessel: {type: 11R, fill: 3}
              count: many
              dryer: {ramp: 0.5 Pa}
              """);
      assertThat(problems)
          .extracting(PlanProblem::path)
          .containsExactly("produkt", "vessel.type", "vessel.fill", "count", "dryer.ramp");
      assertThat(problems).extracting(PlanProblem::line).containsExactly(1, 2, 2, 3, 4);
    }

    @Test
    void nameTheNearestKnownKey() {
      assertThat(problems("vesel: {type: 10R, fill: 3 mL}\ncount: 1\n").get(0).sentence())
          .isEqualTo(
              "plan.yaml line 1, column 1: key 'vesel': is not known; did you mean 'vessel'?");
    }

    @Test
    void sayTheLineAndColumnOfTheValue() {
      PlanProblem problem = problems("vessel: {type: 10R, fill: 3 kg}\ncount: 1\n").get(0);
      assertThat(problem.line()).isEqualTo(1);
      assertThat(problem.column()).isEqualTo(27);
      assertThat(problem.sentence()).contains("'kg' is not a unit of volume", "3 mL");
    }

    @Test
    void includeWhatTheLabRefuses() {
      PlanProblem problem = problems("vessel: {type: 10R, fill: 12 mL}\ncount: 1\n").get(0);
      assertThat(problem.path()).isEqualTo("vessel.fill");
      assertThat(problem.sentence()).contains("leaves no headspace");
    }

    @Test
    void includeKeysThatAreNeeded() {
      assertThat(problems("count: 3\n"))
          .extracting(PlanProblem::path)
          .containsExactly("vessel.type", "vessel.fill");
    }

    @Test
    void includeTextThatIsNoYaml() {
      assertThat(problems("vessel: {type: 10R\ncount: [")).hasSize(1);
      assertThat(problems("")).hasSize(1);
      assertThat(problems("- a\n- b\n").get(0).problem().code()).isEqualTo("not-a-section");
    }

    @Test
    void includeAKeyThatStandsTwice() {
      assertThat(problems(SMALLEST + "count: 4\n")).hasSize(1);
    }
  }

  @Nested
  class HostileText {
    @Test
    void cannotMakeObjects() {
      PlanReading reading =
          read("vessel: !!javax.script.ScriptEngineManager {type: 10R, fill: 3 mL}\ncount: 1\n");
      assertThat(reading.problems()).singleElement().matches(problem -> problem.line() == 1);
    }

    @Test
    void cannotBeEndless() {
      assertThat(read("plan: " + "x".repeat(70_000) + "\n" + SMALLEST).problems()).hasSize(1);
    }

    @Test
    void cannotBeDeep() {
      assertThat(read("plan: " + "[".repeat(500)).problems()).hasSize(1);
    }
  }
}
