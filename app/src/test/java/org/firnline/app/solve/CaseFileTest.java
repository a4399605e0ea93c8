package org.firnline.app.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.firnline.evidence.InvalidInputException;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class CaseFileTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private static String text() {
    try (var stream = CaseFileTest.class.getResourceAsStream("/cases/cases.json")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Cases of an independent reference model, each confirmed there in a second way, at the relative
   * tolerance each asks of another implementation; read in SI and with units alike.
   */
  @TestFactory
  Stream<DynamicTest> meetsTheReferenceModel() {
    return JSON.readTree(text())
        .path("cases")
        .valueStream()
        .flatMap(
            node ->
                Stream.of("si", "given")
                    .map(
                        block ->
                            DynamicTest.dynamicTest(
                                node.path("id").asString() + " from " + block,
                                () -> check(node, block))));
  }

  private static void check(JsonNode node, String block) {
    ObjectNode asked = node.deepCopy().asObject();
    asked.remove(block.equals("si") ? "given" : "si");
    String file =
        JSON.writeValueAsString(
            JSON.createObjectNode().set("cases", JSON.createArrayNode().add(asked)));
    JsonNode answer =
        JSON.readTree(CaseJson.write(CaseFile.parse("cases.json", file).solve()))
            .path("cases")
            .get(0)
            .path("answer");
    List<String> misses = new ArrayList<>();
    node.path("expect")
        .properties()
        .forEach(
            entry -> {
              JsonNode expected = entry.getValue();
              if (!agrees(
                  answer.path(entry.getKey()),
                  expected.path("value"),
                  expected.path("rel").doubleValue())) {
                misses.add(
                    entry.getKey() + ": " + answer.path(entry.getKey()) + " for " + expected);
              }
            });
    assertThat(misses).as("%s", answer.path("reason")).isEmpty();
  }

  private static boolean agrees(JsonNode actual, JsonNode expected, double relative) {
    if (expected.isArray()) {
      if (!actual.isArray() || actual.size() != expected.size()) {
        return false;
      }
      for (int i = 0; i < expected.size(); i++) {
        if (!agrees(actual.get(i), expected.get(i), relative)) {
          return false;
        }
      }
      return true;
    }
    if (expected.isNumber() && actual.isNumber()) {
      double value = expected.doubleValue();
      return Math.abs(actual.doubleValue() - value) <= relative * Math.abs(value);
    }
    return !actual.isMissingNode() && actual.equals(expected);
  }

  @Nested
  class ACaseThatCannotBeAnswered {

    @Test
    void saysWhyAndLeavesTheRestSolved() {
      String file =
          """
          {"cases": [
            {"id": "a", "kind": "tea-leaves"},
            {"id": "b", "kind": "property", "si": {"pressure_Pa": [100]}},
            {"id": "c", "kind": "frozen-product",
             "given": {"fill": "3 mm", "rho_solution": "1 g/mL", "area_product": "3 cm2"}}
          ]}
          """;
      List<SolvedCase> solved = CaseFile.parse("three.json", file).solve();
      assertThat(solved.get(0).refusal()).get().asString().contains("tea-leaves", "primary");
      assertThat(solved.get(1).refusal()).isEmpty();
      assertThat(solved.get(2).refusal()).get().asString().contains("'mm' is not a unit of volume");
    }

    @Test
    void refusesANegativeFillInWords() {
      String file =
          """
          {"kind": "frozen-product",
           "given": {"fill": "-3 mL", "rho_solution": "1 g/mL", "area_product": "3 cm2"}}
          """;
      assertThat(CaseFile.parse("one.json", file).solve().get(0).refusal()).isPresent();
    }

    @Test
    void namesTheLineOfBrokenJson() {
      assertThatThrownBy(() -> CaseFile.parse("broken.json", "{\n\"cases\": [}"))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("broken.json line 2");
    }
  }
}
