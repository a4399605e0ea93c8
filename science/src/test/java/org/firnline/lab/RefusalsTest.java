package org.firnline.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** No noun of the lab can be built invalid, and each refusal says what would be right. */
class RefusalsTest {

  private static final double NAN = Double.NaN;
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private static Arguments of(String code, String where, ThrowingCallable building) {
    return Arguments.of(code, where, building);
  }

  private static Estimate about(double best) {
    return new Estimate(best, 0, Examples.STATED);
  }

  private static Vial vial(double outer, double wall, double height, double brimful) {
    return new Vial("v", outer, wall, height, brimful, Vial.UNEVEN_BOTTOM, Examples.FACTOR);
  }

  private static Tray tray(double length, double width, double height) {
    return new Tray(
        "t", length, width, height, Vial.UNEVEN_BOTTOM, Examples.FACTOR, Optional.empty());
  }

  private static Flask flask(double volume, double wall, double glass, double room, double port) {
    return new Flask(
        "f", volume, new Flask.Form.Puddle(0.01), wall, glass, about(room), about(port));
  }

  private static LoadItem item(double fill, int count, double edgeShare) {
    return new LoadItem(Examples.PRODUCT, Examples.VIAL, fill, count, edgeShare);
  }

  private static RecipeStep step(
      RecipePhase phase, double shelf, double ramp, double pressure, double hold) {
    OptionalDouble set = pressure == 0 ? OptionalDouble.empty() : OptionalDouble.of(pressure);
    return new RecipeStep(phase, shelf, ramp, set, hold);
  }

  static Stream<Arguments> vessels() {
    return Stream.of(
        of("no-name", "vial name", () -> Vial.moulded(" ", 0.02, 0.001, 0.04, 1e-5)),
        of("not-positive", "outer diameter of the vial", () -> vial(0, 0.001, 0.04, 1e-5)),
        of("not-positive", "wall thickness of the vial", () -> vial(0.02, -1, 0.04, 1e-5)),
        of("not-positive", "height of the vial", () -> vial(0.02, 0.001, NAN, 1e-5)),
        of("not-positive", "brimful volume of the vial", () -> vial(0.02, 0.001, 0.04, INFINITE)),
        of("wall-too-thick", "wall thickness of the vial", () -> vial(0.02, 0.01, 0.04, 1e-5)),
        of("not-positive", "length of the tray", () -> tray(0, 0.3, 0.02)),
        of("not-positive", "width of the tray", () -> tray(0.3, 0, 0.02)),
        of("not-positive", "inner height of the tray", () -> tray(0.3, 0.3, 0)),
        of("not-positive", "volume of the flask", () -> flask(0, 0.002, 1, 7, 0)),
        of("not-positive", "wall thickness of the flask", () -> flask(1e-3, 0, 1, 7, 0)),
        of("not-positive", "glass conductivity", () -> flask(1e-3, 0.002, 0, 7, 0)),
        of("not-positive", "heat transfer from the room", () -> flask(1e-3, 0.002, 1, 0, 0)),
        of("negative", "port resistance", () -> flask(1e-3, 0.002, 1, 7, -1)),
        of("not-positive", "inner radius of the flask", () -> new Flask.Form.Shell(0, 0.1)),
        of("not-positive", "height of the frozen shell", () -> new Flask.Form.Shell(0.05, 0)),
        of("not-positive", "area of the frozen puddle", () -> new Flask.Form.Puddle(0)),
        of("shell-too-thick", "fill volume", () -> Examples.SHELL_FLASK.frozenThickness(1.5e-3)),
        of("no-name", "piece name", () -> new Piece("", 0.01, 0.1, Examples.ABOVE)),
        of("not-positive", "thickness of the piece", () -> new Piece("p", 0, 1, Examples.ABOVE)),
        of("not-positive", "face area of the piece", () -> new Piece("p", 1, 0, Examples.ABOVE)),
        of("not-positive", "heat transfer from above", () -> new HeatFromAbove(about(0), 0.04)),
        of("not-positive", "cake conductivity", () -> new HeatFromAbove(about(5), 0)),
        of("negative", "contact heat transfer", () -> new HeatTransfer(-1, 1, 0)),
        of("negative", "gas heat transfer", () -> new HeatTransfer(1, -1, 0)),
        of("negative", "leveling of gas heat transfer", () -> new HeatTransfer(1, 1, NAN)));
  }

  static Stream<Arguments> products() {
    return Stream.of(
        of("not-positive", "solution density", () -> Solution.typical(0, 0.05)),
        of("negative", "solids", () -> Solution.typical(1000, -0.05)),
        of("no-ice", "solids", () -> Solution.typical(1000, 1)),
        of("negative", "unfrozen water", () -> solution(-1, 2.3)),
        of("no-ice", "solids", () -> solution(2, 2.3)),
        of("not-positive", "frozen conductivity", () -> solution(0.2, 0)),
        of("not-positive", "ice density", () -> new PhaseDensities(0, 1, 1)),
        of("not-positive", "solids density", () -> new PhaseDensities(1, 0, 1)),
        of("not-positive", "density of unfrozen water", () -> new PhaseDensities(1, 1, 0)),
        of("negative", "initial cake resistance", () -> new CakeResistance(-1, 1, 0)),
        of("negative", "growth of cake resistance", () -> new CakeResistance(1, -1, 0)),
        of("negative", "leveling of cake resistance", () -> new CakeResistance(1, 1, -1)),
        of("no-name", "product name", () -> product("", 1)),
        of("not-positive", "cake resistance factor", () -> product("p", 0)),
        of("critical-temperature-range", "critical temperature", () -> critical(273.2)),
        of("critical-temperature-range", "critical temperature", () -> critical(-31)));
  }

  static Stream<Arguments> loads() {
    return Stream.of(
        of("not-positive", "fill volume", () -> item(0, 1, 0)),
        of("fill-too-large", "fill volume", () -> item(7e-6, 1, 0)),
        of("count-range", "count", () -> item(3e-6, 0, 0)),
        of("share-range", "share at an edge", () -> item(3e-6, 1, 1.1)),
        of("share-range", "share at an edge", () -> item(3e-6, 1, NAN)),
        of("no-name", "owner", () -> new Portion(item(3e-6, 1, 0), "", List.of())),
        of("empty-load", "load", () -> new Load(List.of())),
        of("share-range", "share of solvent", () -> new Hazard.Solvent("ethanol", 0)),
        of("no-name", "solvent name", () -> new Hazard.Solvent("", 0.3)),
        of("no-name", "name of the corrosive", () -> new Hazard.Corrosive("")),
        of("no-name", "name of the energetic material", () -> new Hazard.Energetic("")),
        of("risk-group-range", "risk group", () -> new Hazard.Biological(5)));
  }

  static Stream<Arguments> dryers() {
    return Stream.of(
        of("range-order", "range", () -> new Range(2, 1)),
        of("range-order", "range", () -> new Range(NAN, 1)),
        of("no-name", "dryer name", () -> Dryer.inRoomAir("", Examples.DUCT, Examples.COLLECTOR)),
        of("not-positive", "lowest chamber pressure", () -> dryer(new Range(0, 1))),
        of("same-name", "gauges", RefusalsTest::twoGaugesOfOneName),
        of("not-positive", "lowest shelf temperature", () -> Shelves.of(new Range(0, 1), 1)),
        of("not-positive", "shelf ramp", () -> Shelves.of(new Range(230, 310), 0)),
        of("count-range", "number of shelves", () -> new ShelfLayout(0, 1, 1, 1)),
        of("not-positive", "shelf width", () -> new ShelfLayout(1, 0, 1, 1)),
        of("not-positive", "shelf depth", () -> new ShelfLayout(1, 1, 0, 1)),
        of("not-positive", "clearance above a shelf", () -> new ShelfLayout(1, 1, 1, 0)),
        of("edge-ratio-range", "edge ratio", () -> new EdgeHeat.Ratio(about(0.9), 10)),
        of("not-positive", "pressure of the edge ratio", () -> new EdgeHeat.Ratio(about(1.3), 0)),
        of("not-positive", "side heat transfer", () -> new EdgeHeat.Side(about(0), 278)),
        of("not-positive", "wall temperature", () -> new EdgeHeat.Side(about(4), 0)),
        of("not-positive", "chamber volume", () -> Chamber.of(0, 1)),
        of("not-positive", "pumping speed", () -> Chamber.of(1, 0)),
        of("no-name", "gauge name", () -> new Gauge.Capacitance("")),
        of("no-name", "gauge name", () -> new Gauge.ThermalConductivity("", about(0.6))),
        of(
            "not-positive",
            "vapor excess of the gauge",
            () -> new Gauge.ThermalConductivity("g", about(0))),
        of("not-positive", "collector capacity", () -> new Collector(0, 1, 218)),
        of("not-positive", "collector rate", () -> new Collector(4, 0, 218)),
        of("collector-temperature-range", "collector temperature", () -> new Collector(4, 1, -55)),
        of("not-positive", "duct area", () -> new Capability.Duct(0, 0.8, 293)),
        of("not-positive", "discharge coefficient", () -> new Capability.Duct(1, 0, 293)),
        of("discharge-range", "discharge coefficient", () -> new Capability.Duct(1, 1.1, 293)),
        of("not-positive", "vapor temperature", () -> new Capability.Duct(1, 0.8, 0)),
        of("not-positive", "slope of the capability line", () -> new Capability.Line(0, 0)),
        of("negative", "threshold of the capability line", () -> new Capability.Line(1, -1)),
        of("not-positive", "vessel diameter", () -> ShelfPacking.fullest(0, 1, 1)));
  }

  static Stream<Arguments> recipes() {
    RecipePhase primary = RecipePhase.PRIMARY_DRYING;
    RecipePhase freezing = RecipePhase.FREEZING;
    return Stream.of(
        of("not-positive", "shelf target", () -> step(primary, -20, 1, 10, 1)),
        of("not-positive", "shelf ramp", () -> step(primary, 250, 0, 10, 1)),
        of("not-positive", "chamber pressure", () -> step(primary, 250, 1, -10, 1)),
        of("pressure-at-atmosphere", "chamber pressure", () -> step(freezing, 250, 1, 10, 1)),
        of("negative", "hold time", () -> step(primary, 250, 1, 10, -1)),
        of("not-finite", "hold time", () -> step(primary, 250, 1, 10, INFINITE)),
        of("no-name", "recipe name", () -> new Recipe("", 290, List.of())),
        of("no-steps", "recipe", () -> new Recipe("r", 290, List.of())),
        of("not-positive", "shelf temperature at the start", () -> new Recipe("r", 0, List.of())),
        of(
            "phase-order",
            "step 2",
            () ->
                new Recipe(
                    "r",
                    290,
                    List.of(step(primary, 250, 1, 10, 1), step(freezing, 250, 1, 0, 1)))));
  }

  private static Solution solution(double unfrozen, double conductivity) {
    return new Solution(1020, 0.5, unfrozen, PhaseDensities.TYPICAL, conductivity);
  }

  private static Product product(String name, double factor) {
    return new Product(
        name,
        Examples.SOLUTION,
        new CakeResistance(1, 1, 0),
        about(factor),
        Examples.PRODUCT.critical());
  }

  private static CriticalTemperature critical(double kelvin) {
    return new CriticalTemperature(CriticalTemperature.Kind.COLLAPSE, about(kelvin));
  }

  private static Dryer dryer(Range pressure) {
    return new Dryer("d", new Range(230, 310), pressure, 0.01, Examples.DUCT, Examples.COLLECTOR);
  }

  private static void twoGaugesOfOneName() {
    Examples.DRYER.with(
        Chamber.UNKNOWN,
        List.of(new Gauge.Capacitance("g"), Gauge.ThermalConductivity.unlearned("g")));
  }

  @ParameterizedTest(name = "{0} at {1}")
  @MethodSource({"vessels", "products", "loads", "dryers", "recipes"})
  void areWholeSentences(String code, String where, ThrowingCallable building) {
    var refusal = catchThrowableOfType(InvalidInputException.class, building);
    assertThat(refusal).isNotNull();
    Problem problem = refusal.problems().get(0);
    assertThat(problem.code()).isEqualTo(code);
    assertThat(problem.where()).isEqualTo(where);
    assertThat(List.of(problem.what(), problem.rule(), problem.advice()))
        .noneMatch(String::isBlank);
  }

  @Test
  void leavePlausibleNounsAlone() {
    assertThatCode(() -> item(6.75e-6, 1, 0.3)).doesNotThrowAnyException();
    assertThatCode(() -> new Collector(4, INFINITE, 218)).doesNotThrowAnyException();
    assertThatCode(() -> new HeatTransfer(INFINITE, 0, 0)).doesNotThrowAnyException();
    assertThatCode(() -> new Range(1, 1)).doesNotThrowAnyException();
  }
}
