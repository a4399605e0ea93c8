package org.firnline.logs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.logs.layout.ColumnFacts;
import org.firnline.logs.layout.ColumnUnit;
import org.firnline.logs.layout.RoleFinder;
import org.firnline.logs.layout.RoleVerdict;
import org.firnline.logs.layout.ValueShape;

/**
 * Proposes roles for columns that neither name nor unit explains, from range and shape: what is
 * never negative beside columns that are is a pressure, the coldest thermometer is the collector's,
 * what holds and ramps without noise is a set point. Every proposal is a question.
 */
final class ProposedRoles {
  private static final double COLD_C = -35;
  private static final double APART_C = 5;
  private static final double COLDEST_C = -120;
  private static final double WARMEST_C = 110;
  private static final double WIDE = 30;

  private final RoleFinder roles;

  ProposedRoles(RoleFinder roles) {
    this.roles = roles;
  }

  /** The verdicts with proposals in place of unknown roles. */
  List<RoleVerdict> propose(List<RoleVerdict> verdicts, List<ColumnFacts> facts) {
    List<RoleVerdict> proposed = new ArrayList<>(verdicts);
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < verdicts.size(); i++) {
      if (verdicts.get(i).role() == Role.UNKNOWN && facts.get(i).values().isPresent()) {
        open.add(i);
      }
    }
    for (int i : List.copyOf(open)) {
      if (shape(facts, i).countsUp()) {
        proposed.set(
            i,
            proposed
                .get(i)
                .as(Role.RECORD_NUMBER, Confidence.MEDIUM, "its whole numbers count up evenly"));
        open.remove(Integer.valueOf(i));
      }
    }
    boolean anyCold = open.stream().anyMatch(i -> shape(facts, i).low() < 0);
    List<Integer> thermometers = new ArrayList<>();
    for (int i : open) {
      ValueShape shape = shape(facts, i);
      boolean wide = shape.low() > 0 && shape.high() > WIDE * shape.low();
      boolean positive = shape.low() >= 0 && (anyCold || wide);
      boolean usual =
          shape.low() * scale(facts, i) > COLDEST_C && shape.high() * scale(facts, i) < WARMEST_C;
      boolean thermal =
          usual || facts.get(i).heading().unit().map(ColumnUnit::isTemperature).orElse(false);
      if (positive && !facts.get(i).heading().unit().isPresent()) {
        proposed.set(i, roles.inRole(facts.get(i), Role.PRESSURE, "its values are never negative"));
      } else if (thermal) {
        thermometers.add(i);
      }
    }
    assign(thermometers, proposed, facts);
    return proposed;
  }

  private void assign(List<Integer> open, List<RoleVerdict> proposed, List<ColumnFacts> facts) {
    List<Integer> rest = new ArrayList<>(open);
    Optional<Integer> coldest =
        rest.stream().min(Comparator.comparingDouble(i -> shape(facts, i).median()));
    if (coldest.isPresent() && lacks(proposed, Role.COLLECTOR) && rest.size() > 1) {
      double median = shape(facts, coldest.get()).median();
      boolean apart =
          rest.stream()
              .filter(i -> !i.equals(coldest.get()))
              .allMatch(i -> shape(facts, i).median() > median + APART_C);
      if (median < COLD_C && apart) {
        take(rest, coldest.get(), Role.COLLECTOR, "it is the coldest", proposed, facts);
      }
    }
    for (int i : List.copyOf(rest)) {
      if (lacks(proposed, Role.SHELF_SET_POINT) && shape(facts, i).looksCommanded()) {
        take(rest, i, Role.SHELF_SET_POINT, "it holds and ramps exactly", proposed, facts);
      }
    }
    if (!rest.isEmpty() && lacks(proposed, Role.SHELF)) {
      take(rest, rest.get(0), Role.SHELF, "it stands first", proposed, facts);
    }
    for (int i : List.copyOf(rest)) {
      take(rest, i, Role.PRODUCT, "it stands beside the shelf", proposed, facts);
    }
  }

  private void take(
      List<Integer> rest,
      int column,
      Role role,
      String reason,
      List<RoleVerdict> proposed,
      List<ColumnFacts> facts) {
    rest.remove(Integer.valueOf(column));
    proposed.set(column, roles.inRole(facts.get(column), role, reason));
  }

  private static boolean lacks(List<RoleVerdict> verdicts, Role role) {
    return verdicts.stream().noneMatch(verdict -> verdict.role() == role);
  }

  private static ValueShape shape(List<ColumnFacts> facts, int column) {
    return facts.get(column).values().orElseThrow();
  }

  private static double scale(List<ColumnFacts> facts, int column) {
    return facts.get(column).heading().scale();
  }
}
