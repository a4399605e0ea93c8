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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class CaseFileTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private static String text(String name) {
    try (var stream = CaseFileTest.class.getResourceAsStream("/cases/" + name)) {
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
    return cases("cases.json");
  }

  /**
   * Random shapes, sources and settings and many awkward spots, computed by a second model in
   * another language with general-purpose root finders and integrators, as the file says.
   */
  @TestFactory
  Stream<DynamicTest> meetsASecondModelOverRandomAndExtremeCases() {
    return cases("variants.json");
  }

  private static Stream<DynamicTest> cases(String name) {
    return JSON.readTree(text(name))
        .path("cases")
        .valueStream()
        .flatMap(
            node ->
                Stream.of("si", "given")
                    .filter(node::has)
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

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '~',
        textBlock =
            """
            "shelf": -20                                    | 'shelf' of -20.0 K cannot be
            "shelf": "-20"                                  | the unit is missing
            "shelf": "-20 mTorr"                            | 'mTorr' is not a unit of temperature
            "shelf": 253, "fill": true                      | 'fill'
            "shelf": 253, "fill": "NaN mL"                  | 'fill'
            "shelf": 253, "pressure": -10                   | vapor pressure -10.0 Pa
            "shelf": 253, "solids": 0.9, "unfrozen": 0.2    | leave no ice
            "shelf": 253, "rp_r0": -1                       | initial cake resistance
            "shelf": 253, "rp_r0": null                     | OK
            "shelf": 253, "kv_a": "inf"                     | OK
            "shelf": 253, "kv_a": "inf W/m2/K", "k_frozen": "∞" | OK
            "shelf": 1e9                                    | OK
            """)
    void refusesWhatNoVesselCanBeAndSolvesWhatOneCan(String more, String said) {
      String file =
          "{\"kind\": \"primary\", \"si\": {"
              + more
              + "}, \"given\": {\"area_product\": \"3.8 cm2\", \"fill\": \"3 mL\","
              + " \"rho_solution\": \"1 g/mL\", \"kv_a\": \"10 W/m2/K\","
              + " \"rp_r0\": \"1e5 m/s\", \"pressure\": \"75 mTorr\"}}";
      SolvedCase solved = CaseFile.parse("one.json", file).solve().get(0);
      assertThat(solved.refusal().orElse("OK")).contains(said);
      assertThat(solved.answer().isEmpty()).isEqualTo(solved.refusal().isPresent());
    }

    @Test
    void refusesRowsThatLackAValueAndRowsOfTexts() {
      String file =
          """
          [{"kind": "recipe", "given": {"area_product": "3.8 cm2", "fill": "3 mL",
             "rho_solution": "1 g/mL", "kv_a": "10 W/m2/K", "shelf_start": "-45 degC",
             "shelf_steps_target_rate_hold": [["-20 degC"]], "pressure_points": [["0 h", "10 Pa"]]}},
           {"kind": "dryer", "si": {"pressures_Pa": [0, 5], "duct_area": 0.01}},
           5, null, [], {"kind": "primary", "si": [1], "given": "x"}]
          """;
      assertThat(CaseFile.parse("rows.json", file).solve())
          .hasSize(6)
          .allSatisfy(one -> assertThat(one.refusal()).isPresent())
          .first()
          .satisfies(one -> assertThat(one.refusal()).get().asString().contains("3 values"));
    }

    @Test
    void writesNoNumberAsNullInsideAListToo() {
      String file =
          """
          {"kind": "batch-gauge", "si": {"area_product": 3.8e-4, "fill": 3e-6,
           "rho_solution": 1000, "kv_a": 10, "rp_r0": 1e5, "shelf": 225, "pressure": 10,
           "pumping_speed": 0.01, "gas_temperature": 293, "per_class": 5,
           "kv_factors": [1, 1.1], "rp_factors": [1, 1]}}
          """;
      assertThat(CaseJson.write(CaseFile.parse("idle.json", file).solve()))
          .doesNotContain("undefined", "Infinity", "NaN");
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
