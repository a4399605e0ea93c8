package org.firnline.app.planfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.firnline.lab.EdgeHeat;
import org.firnline.lab.Flask;
import org.firnline.lab.Hazard;
import org.firnline.lab.Piece;
import org.firnline.lab.Tray;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.Yaml;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every kind of load and dryer can be written down, and what cannot be meant is refused. */
class WholePlanFileTest {
  private static final Path EXAMPLES = Path.of("..", "docs", "examples");
  private static final Path SCHEMA = Path.of("..", "docs", "plan.schema.json");

  static List<Path> plans() throws IOException {
    List<Path> plans = new ArrayList<>();
    for (Path folder : List.of(EXAMPLES, Path.of("src", "main", "resources", "demo"))) {
      try (Stream<Path> files = Files.list(folder)) {
        files
            .filter(file -> file.toString().endsWith(".yaml"))
            .filter(file -> !file.getFileName().toString().startsWith("fen"))
            .forEach(plans::add);
      }
    }
    return plans;
  }

  private static PlanReading read(String text) {
    return new PlanFileReader().read("plan.yaml", text);
  }

  private static PlanInput example(String name) throws IOException {
    return read(Files.readString(EXAMPLES.resolve(name))).input().orElseThrow();
  }

  @Nested
  class Loads {

    /** A sphere of 1 L has a radius of (3 V/4π)^(1/3) = 62.0 mm. */
    @Test
    void mayBeFlasksOnAManifold() throws IOException {
      PlanInput input = example("reed-peat-flasks.yaml");
      Flask flask = (Flask) input.load().vessel();
      Flask.Form.Shell shell = (Flask.Form.Shell) flask.form();
      assertThat(shell.wallRadius()).isCloseTo(0.06204, within(1e-5));
      assertThat(input.dryer().shelves()).isEmpty();
      assertThat(input.dryer().pressureControl()).isEmpty();
      assertThat(input.room_K()).isCloseTo(294.15, within(1e-9));
      assertThat(input.isVialsOnShelves()).isFalse();
    }

    @Test
    void mayBeTraysBetweenShelves() throws IOException {
      Tray tray = (Tray) example("sedge-seed-trays.yaml").load().vessel();
      assertThat(tray.area()).isCloseTo(0.12, within(1e-12));
      assertThat(tray.above().orElseThrow().coefficient().spread()).isCloseTo(3, within(1e-12));
    }

    @Test
    void mayBePieces() {
      PlanInput input =
          read("""
          vessel: {kind: piece, type: leaf, thickness: 8 mm, face_area: 20 cm2, above: {}}
          count: 30
          """)
              .input()
              .orElseThrow();
      assertThat(input.load().vessel()).isInstanceOf(Piece.class);
      assertThat(input.load().fill()).isCloseTo(16e-6, within(1e-12));
    }

    /** The cap of 200 mL in a sphere of 1 L is 36 mm deep: 200 mL / 36 mm = 55 cm2. */
    @Test
    void mayStandAsAPuddle() {
      PlanInput input =
          read("vessel: {kind: flask, volume: 1 L, fill: 200 mL}\ncount: 1\n")
              .input()
              .orElseThrow();
      Flask flask = (Flask) input.load().vessel();
      assertThat(((Flask.Form.Puddle) flask.form()).area()).isCloseTo(0.0056, within(1e-4));
    }

    @Test
    void mayBelongToSeveralPeople() throws IOException {
      PlanInput input = example("shared-run.yaml");
      assertThat(input.whole().portions())
          .extracting("owner")
          .containsExactly("Ruth", "Ines", "Tomas");
      assertThat(input.whole().hazards())
          .containsExactly(new Hazard.Solvent("ethanol", 0.02), new Hazard.Biological(1));
    }

    @Test
    void mayBeSaidInEveryDetail() throws IOException {
      PlanInput input = example("every-key.yaml");
      assertThat(input.dryer().shelves().orElseThrow().edge().orElseThrow())
          .isInstanceOf(EdgeHeat.Ratio.class);
      assertThat(input.dryer().gauges()).hasSize(2);
      assertThat(input.dryer().chamber().volume()).hasValue(0.06);
      assertThat(input.wishes().steps()).isEqualTo(3);
      assertThat(input.wishes().annealing().orElseThrow().hold_s()).isEqualTo(3 * 3600);
      assertThat(input.wishes().secondary().orElseThrow().target()).isCloseTo(0.02, within(1e-12));
    }
  }

  @Nested
  class Refusals {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "vessel: {kind: bucket, fill: 3 mL} | vessel.kind",
          "vessel: {kind: tray, length: 4 cm, width: 3 cm, fill: 3 mL, volume: 1 L} |"
              + " vessel.volume",
          "vessel: {kind: flask, volume: 1 L, fill: 900 mL, frozen: shell} | vessel.fill",
          "vessel: {kind: flask, volume: 1 L, fill: 200 mL, frozen: foam} | vessel.frozen",
          "hazards: {biological: 5} | hazards.biological",
          "hazards: {solvent: acetonitrile} | hazards.solvent",
          "hazards: {azide: perhaps} | hazards.azide",
          "hazards: {acids: HCl} | hazards.acids",
          "wishes: {risk: 120 %} | wishes.risk",
          "wishes: {steps: 40} | wishes.steps",
          "wishes: {annealing: {temperature: 4 °C, hold: 2 h}} | wishes.annealing.temperature",
          "wishes: {annealing: {temperature: -10 °C, hold: 0 h}} | wishes.annealing.hold",
          "wishes: {secondary: {target: 0.1 %}} | wishes.secondary.target",
          "dryer: {edge: {ratio: 1.3, side: 4 W/m2/K, wall: 20 °C}} | dryer.edge.ratio",
          "dryer: {edge: {ratio: 0.5}} | dryer.edge.ratio",
          "dryer: {shelves: {count: 2, width: 0 mm, depth: 3 cm, clearance: 7 cm}} |"
              + " dryer.shelves.width",
          "dryer: {chamber: {volume: 0 L}} | dryer.chamber.volume",
          "dryer: {gauges: {thermal_conductivity: G, vapor_excess: 0}} | dryer.gauges.vapor_excess",
          "product: {densities: {solids: 0 kg/m3}} | product.densities.solids",
          "product: {critical_kind: fog} | product.critical_kind",
          "also: 7 | also",
          "also: [{vessel: {type: 10R, fill: 3 mL}}] | also[1].count"
        })
    void nameThePlace(String line, String path) {
      String vessel = line.startsWith("vessel") ? "" : "vessel: {type: 10R, fill: 3 mL}\n";
      PlanReading reading = read(line + "\n" + vessel + "count: 3\n");
      assertThat(reading.problems()).extracting(PlanProblem::path).contains(path);
    }
  }

  @Nested
  class Schema {
    private final JsonNode schema = PlanSchema.schema();

    @Test
    void isTheOneInTheManual() throws IOException {
      assertThat(JsonMapper.shared().readTree(Files.readString(SCHEMA)))
          .as("./firnline plan --schema > docs/plan.schema.json")
          .isEqualTo(schema);
    }

    @Test
    void refusesAnUnknownKeyAndAWrongChoice() {
      assertThat(complaints("vesel: {}\nvessel: {type: 10R}\ncount: 3\n")).isNotEmpty();
      assertThat(complaints("vessel: {kind: bucket}\ncount: 3\n")).isNotEmpty();
      assertThat(complaints("vessel: {type: 10R}\n")).isNotEmpty();
      assertThat(complaints("vessel: {type: 10R, fill: much}\ncount: 3\n")).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("org.firnline.app.planfile.WholePlanFileTest#plans")
    void acceptsEveryExampleAsTheReaderDoes(Path plan) throws IOException {
      String text = Files.readString(plan);
      assertThat(read(text).problems()).isEmpty();
      assertThat(complaints(text)).isEmpty();
    }

    private List<String> complaints(String yaml) {
      List<String> found = new ArrayList<>();
      JsonNode plan = JsonMapper.shared().valueToTree(new Yaml().load(yaml));
      check("", schema, plan, found);
      return found;
    }

    /** The part of JSON Schema that plan files need, by the words of draft 2020-12. */
    private void check(String at, JsonNode rule, JsonNode value, List<String> found) {
      if (rule.has("enum") && rule.get("enum").valueStream().noneMatch(value::equals)) {
        found.add(at + " is none of " + rule.get("enum"));
      }
      if (rule.has("pattern")
          && value.isString()
          && !java.util.regex.Pattern.compile(rule.get("pattern").asString())
              .matcher(value.asString())
              .find()) {
        found.add(at + " does not match");
      }
      if (value.isObject()) {
        rule.path("required")
            .forEach(key -> addIf(!value.has(key.asString()), at + " lacks " + key, found));
        value
            .properties()
            .forEach(
                entry -> {
                  JsonNode below = rule.path("properties").path(entry.getKey());
                  addIf(below.isMissingNode(), at + " knows no " + entry.getKey(), found);
                  check(at + "." + entry.getKey(), below, entry.getValue(), found);
                });
      }
      if (value.isArray() && rule.has("items")) {
        value.forEach(entry -> check(at + "[]", rule.get("items"), entry, found));
      }
    }

    private void addIf(boolean wrong, String complaint, List<String> found) {
      if (wrong) {
        found.add(complaint);
      }
    }
  }

  @Nested
  class Forms {

    @Test
    void keepFurtherItems() throws IOException {
      String text = Files.readString(EXAMPLES.resolve("shared-run.yaml"));
      Map<String, String> flat = PlanText.flatten(text);
      assertThat(flat.get("also")).contains("Ines").contains("Tomas");
      assertThat(read(PlanText.write(flat)).input().orElseThrow().whole().portions()).hasSize(3);
    }
  }

  @Nested
  class Starts {

    /** 2026-11-25 is a Wednesday: 20 h from 18:00 end on Thursday at 14:00. */
    @Test
    void areInTimeForSomebodyToBeThere() {
      LocalDateTime wednesday = LocalDateTime.of(2026, 11, 25, 9, 10);
      assertThat(StartBy.after(wednesday, 20 * 3600.0))
          .contains(
              new StartBy(
                  LocalDateTime.of(2026, 11, 25, 18, 0), LocalDateTime.of(2026, 11, 26, 14, 0)));
    }

    /**
     * 12 h never end in working hours of the day they start in, nor of the next if started late.
     */
    @Test
    void avoidTheNightAndTheWeekend() {
      LocalDateTime friday = LocalDateTime.of(2026, 11, 27, 9, 10);
      StartBy found = StartBy.after(friday, 20 * 3600.0).orElseThrow();
      assertThat(found.start()).isEqualTo(LocalDateTime.of(2026, 11, 30, 18, 0));
      assertThat(StartBy.after(friday, 11.9 * 3600)).isEmpty();
      assertThat(StartBy.after(friday, Double.POSITIVE_INFINITY)).isEmpty();
    }
  }
}
