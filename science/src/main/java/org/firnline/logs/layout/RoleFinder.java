package org.firnline.logs.layout;

import java.util.Map;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;

/** Decides role and unit of one column from its heading and its values. */
public final class RoleFinder {
  private static final int OUTRIGHT = 3;

  private final Vocabulary vocabulary;
  private final UnitFromValues unitFromValues;

  /** A finder with its words and units. */
  public RoleFinder(Vocabulary vocabulary, UnitSpellings units) {
    this.vocabulary = vocabulary;
    this.unitFromValues = new UnitFromValues(units);
  }

  /** Role and unit of a column, seen on its own. */
  public RoleVerdict find(ColumnFacts facts) {
    ColumnHeading heading = facts.heading();
    Map<Topic, Integer> topics = vocabulary.topicsOf(heading.name() + " " + heading.description());
    if (facts.isText()) {
      return unitless(Role.MESSAGE, sure(topics.containsKey(Topic.MESSAGE)), "it holds text");
    }
    Optional<RoleVerdict> number = pureNumber(facts, topics);
    if (number.isPresent()) {
      return number.get();
    }
    if (isPressure(heading, topics)) {
      Confidence named = strength(topics);
      boolean measured = heading.unit().isPresent() && named == Confidence.LOW;
      return withUnit(facts, pressureRole(topics), measured ? Confidence.MEDIUM : named, true);
    }
    if (heading.unit().map(ColumnUnit::isMass).orElse(false)) {
      return withUnit(facts, Role.WEIGHT, Confidence.HIGH, false);
    }
    if (heading.unit().map(ColumnUnit::isMassRate).orElse(false)) {
      return withUnit(facts, Role.VAPOR_RATE, Confidence.HIGH, false);
    }
    if (heading.unit().map(unit -> !unit.isTemperature()).orElse(false)) {
      return withUnit(facts, Role.IGNORED, Confidence.MEDIUM, false);
    }
    Role role = temperatureRole(topics);
    boolean knownUnit = heading.unit().isPresent();
    if (role == Role.UNKNOWN && !knownUnit) {
      return unitless(Role.UNKNOWN, Confidence.LOW, "neither name nor unit tell");
    }
    Confidence confidence = role == Role.UNKNOWN ? Confidence.LOW : strength(topics);
    return withUnit(facts, role, confidence, false);
  }

  /** A proposal for a column that nothing explains: low confidence, to be asked. */
  public RoleVerdict inRole(ColumnFacts facts, Role role, String reason) {
    RoleVerdict verdict = withUnit(facts, role, Confidence.LOW, role == Role.PRESSURE);
    return verdict.as(role, Confidence.LOW, reason);
  }

  private static Optional<RoleVerdict> pureNumber(ColumnFacts facts, Map<Topic, Integer> topics) {
    boolean noUnit = facts.heading().unit().isEmpty();
    boolean whole = facts.values().map(ValueShape::wholeNumbers).orElse(false);
    boolean physical =
        has(topics, Topic.SHELF) || has(topics, Topic.PRODUCT) || has(topics, Topic.PRESSURE);
    if (noUnit && whole && has(topics, Topic.STEP)) {
      return Optional.of(unitless(Role.STEP_NUMBER, Confidence.HIGH, "name and whole numbers"));
    }
    if (noUnit && whole && has(topics, Topic.RECORD) && !physical) {
      return Optional.of(unitless(Role.RECORD_NUMBER, Confidence.MEDIUM, "name and whole numbers"));
    }
    if (noUnit && whole && has(topics, Topic.MESSAGE) && !physical) {
      return Optional.of(unitless(Role.STATUS, Confidence.MEDIUM, "a status in figures"));
    }
    if (facts.values().isEmpty()) {
      return Optional.of(unitless(Role.IGNORED, Confidence.HIGH, "the column is empty"));
    }
    if (topics.getOrDefault(Topic.MACHINE, 0) == OUTRIGHT && !physical) {
      return Optional.of(unitless(Role.IGNORED, Confidence.MEDIUM, "it belongs to the machine"));
    }
    return Optional.empty();
  }

  private static boolean isPressure(ColumnHeading heading, Map<Topic, Integer> topics) {
    if (heading.unit().isPresent()) {
      return heading.unit().get().isPressure();
    }
    boolean gauge = has(topics, Topic.CAPACITANCE) || has(topics, Topic.THERMAL);
    boolean thermometer = has(topics, Topic.SHELF) || has(topics, Topic.PRODUCT);
    return (has(topics, Topic.PRESSURE) || gauge) && !thermometer;
  }

  private static Role pressureRole(Map<Topic, Integer> topics) {
    if (has(topics, Topic.SET_POINT)) {
      return Role.PRESSURE_SET_POINT;
    }
    if (has(topics, Topic.COLLECTOR) && !has(topics, Topic.CHAMBER)) {
      return Role.PRESSURE_COLLECTOR;
    }
    if (has(topics, Topic.CAPACITANCE)) {
      return Role.PRESSURE_CAPACITANCE;
    }
    return has(topics, Topic.THERMAL) ? Role.PRESSURE_THERMAL : Role.PRESSURE;
  }

  private static Role temperatureRole(Map<Topic, Integer> topics) {
    if (has(topics, Topic.DEW_POINT)) {
      return Role.DEW_POINT;
    }
    if (has(topics, Topic.SET_POINT) && !has(topics, Topic.PRODUCT)) {
      return Role.SHELF_SET_POINT;
    }
    if (has(topics, Topic.ROOM)) {
      return Role.ROOM;
    }
    if ((has(topics, Topic.SURFACE) && !has(topics, Topic.SHELF))
        || (has(topics, Topic.WALL) && has(topics, Topic.FLASK))) {
      return Role.PRODUCT_SURFACE;
    }
    if (has(topics, Topic.WALL)) {
      return Role.IGNORED;
    }
    return strongest(topics);
  }

  private static Role strongest(Map<Topic, Integer> topics) {
    int shelf = topics.getOrDefault(Topic.SHELF, 0);
    int collector = topics.getOrDefault(Topic.COLLECTOR, 0);
    int product =
        Math.max(topics.getOrDefault(Topic.PRODUCT, 0), topics.getOrDefault(Topic.FLASK, 0));
    int most = Math.max(shelf, Math.max(collector, product));
    if (most == 0) {
      return has(topics, Topic.THERMOCOUPLE) ? Role.PRODUCT : Role.UNKNOWN;
    }
    if (product == most) {
      return Role.PRODUCT;
    }
    return shelf == most ? Role.SHELF : Role.COLLECTOR;
  }

  private RoleVerdict withUnit(
      ColumnFacts facts, Role role, Confidence confidence, boolean pressure) {
    RoleVerdict bare = unitless(role, confidence, "name and unit");
    Optional<ColumnUnit> unit = facts.heading().unit();
    if (unit.isPresent()) {
      return bare.in(unit.get(), Confidence.HIGH, "the file writes it");
    }
    return unitFromValues.find(bare, facts, pressure);
  }

  private static RoleVerdict unitless(Role role, Confidence confidence, String reason) {
    return new RoleVerdict(
        role, confidence, reason, Optional.empty(), Confidence.HIGH, "a pure number or text");
  }

  private static Confidence strength(Map<Topic, Integer> topics) {
    int most = topics.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    return most >= OUTRIGHT ? Confidence.HIGH : most == 2 ? Confidence.MEDIUM : Confidence.LOW;
  }

  private static Confidence sure(boolean yes) {
    return yes ? Confidence.HIGH : Confidence.MEDIUM;
  }

  private static boolean has(Map<Topic, Integer> topics, Topic topic) {
    return topics.containsKey(topic);
  }
}
