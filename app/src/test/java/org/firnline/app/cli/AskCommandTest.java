package org.firnline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code firnline ask} at a terminal and for programs. */
class AskCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int type(String... words) {
    CommandLine command = FirnlineCommand.commandLine();
    command.setOut(new PrintWriter(out));
    command.setErr(new PrintWriter(err));
    return command.execute(words);
  }

  @Test
  void answersInWords() {
    assertThat(type("ask", "layer", "--fill", "100 mL")).isZero();
    assertThat(out.toString()).contains("Shell, thickness", "mm", "pass:", "fill", "100 mL");
  }

  @Test
  void answersInJsonWithUnitsInTheKeys() {
    assertThat(type("ask", "time", "--critical", "-5 degC", "--json")).isZero();
    JsonNode json = JsonMapper.shared().readTree(out.toString());
    JsonNode time = json.path("answer").path("dryingTime_s");
    assertThat(time.path("low").asDouble()).isLessThan(time.path("best").asDouble());
    assertThat(time.path("best").asDouble()).isLessThan(time.path("high").asDouble());
    assertThat(json.path("inputs").path("critical_K").asDouble()).isEqualTo(268.15);
    assertThat(json.path("verdict").asString()).isEqualTo("pass");
  }

  @Test
  void endsWithOneOnAStop() {
    assertThat(type("ask", "collector", "--count", "6000")).isEqualTo(FirnlineCommand.STOP_LINE);
  }

  @Test
  void endsWithTwoOnWhatItCannotUse() {
    assertThat(type("ask", "layer", "--fill", "bananas", "--json"))
        .isEqualTo(FirnlineCommand.BAD_INPUT);
    assertThat(err.toString()).startsWith("fill: ");
    assertThat(out.toString()).contains("\"problems\"");
    assertThat(type("ask", "layer", "--fill", "900 mL")).isEqualTo(FirnlineCommand.BAD_INPUT);
    assertThat(type("ask")).isEqualTo(FirnlineCommand.BAD_INPUT);
    assertThat(type("ask", "luck")).isEqualTo(FirnlineCommand.BAD_INPUT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"layer", "time", "pressure", "collector", "failure"})
  void explainsEveryOption(String question) {
    assertThat(type("ask", question, "--help")).isZero();
    assertThat(out.toString()).contains("--json", "Without it:");
  }
}
