package org.firnline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the manual and the README tell people to type does what they say. */
class ExamplesTest {
  private static final Path EXAMPLES = Path.of("..", "docs", "examples");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int type(String... words) {
    CommandLine command = FirnlineCommand.commandLine();
    command.setOut(new PrintWriter(out));
    command.setErr(new PrintWriter(err));
    return command.execute(words);
  }

  private static String example(String name) {
    return EXAMPLES.resolve(name).toString();
  }

  @Test
  void plansTheBogMyrtleExtract() {
    assertThat(type("plan", example("bog-myrtle.yaml"))).isZero();
    assertThat(out.toString()).contains("°C").contains("Pa");
  }

  @Test
  void plansInJsonWithUnitsInTheKeys() {
    assertThat(type("plan", example("bog-myrtle.yaml"), "--json")).isZero();
    assertThat(out.toString()).contains("\"shelf_K\"").contains("\"pressure_Pa\"");
  }

  @Test
  void reviewsTheShelfOvershootAgainstThePlan() {
    int exit = type("review", example("shelf-overshoot.csv"), "--plan", example("bog-myrtle.yaml"));
    assertThat(exit).isEqualTo(FirnlineCommand.STOP_LINE);
    assertThat(out.toString())
        .contains("critical temperature", "Verdict: is the ice gone?", "Plan against actual")
        .contains("primary drying: ");
  }

  @Test
  void reviewsInJsonWithVerdictsAndSteps() {
    type("review", example("shelf-overshoot.csv"), "--plan", example("bog-myrtle.yaml"), "--json");
    JsonNode json = JsonMapper.shared().readTree(out.toString());
    JsonNode load = json.get("verdicts").get(0);
    assertThat(load.get("load").asBoolean()).isTrue();
    assertThat(load.get("state").asString()).isIn("ice gone", "ice left", "cannot tell");
    assertThat(load.get("reasons")).isNotEmpty();
    JsonNode step = json.get("steps").get(0);
    assertThat(step.get("phase").asString()).isEqualTo("primary drying");
    assertThat(step.get("planned").get("shelf_K").asDouble()).isBetween(200.0, 300.0);
    assertThat(step.get("actual").get("duration_s").asDouble()).isPositive();
    assertThat(step.get("actual").has("ramp_K_per_s")).isTrue();
  }

  @Test
  void solvesTheExampleCases() {
    assertThat(type("solve", example("cases.json"), "--json")).isZero();
    assertThat(out.toString()).contains("\"drying_time_s\"").doesNotContain("refused");
  }

  @Test
  void learnsHeatTransferFromWeighedIce() {
    String[] sheets = {
      example("ice-run-6pa.csv"), example("ice-run-12pa.csv"), example("ice-run-30pa.csv")
    };
    assertThat(type("learn", "ice-run", sheets[0], sheets[1], sheets[2])).isZero();
    assertThat(out.toString()).contains("center", "corner", "a = ", "±");
    out.getBuffer().setLength(0);
    assertThat(type("learn", "ice-run", sheets[1], "--json")).isZero();
    assertThat(out.toString()).contains("\"heatTransfer_W_per_m2_K\"");
    assertThat(type("learn", "ice-run", example("bog-myrtle.yaml"), "--json"))
        .isEqualTo(FirnlineCommand.BAD_INPUT);
    assertThat(err.toString()).contains("no line of an ice-run sheet");
    assertThat(type("learn")).isEqualTo(FirnlineCommand.BAD_INPUT);
  }

  @Test
  void explainsWhatItReports() {
    assertThat(type("explain", "max_bottom_K")).isZero();
    assertThat(out.toString()).contains("formula", "science.md");
    assertThat(type("explain", "luck")).isEqualTo(FirnlineCommand.BAD_INPUT);
  }

  @Test
  void saysThatAFileIsMissing() {
    assertThat(type("solve", example("nowhere.json"))).isEqualTo(FirnlineCommand.BAD_INPUT);
    assertThat(err.toString()).contains("nowhere.json");
  }
}
