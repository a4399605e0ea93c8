package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;

/**
 * The end of drying from weighings: weight is constant when nothing more leaves. Weighings within
 * two steps of the balance count as equal.
 *
 * <p>Source: weighing to constant weight, common practice, no published source.
 */
final class WeightEnd {
  private static final double SAME_STEPS = 2;

  /** A loss smaller than this share of the start is none of ice. */
  private static final double SMALLEST_LOSS = 0.02;

  /** One good weighing. */
  private record Weighing(double second, double kilogram) {}

  private WeightEnd() {}

  /** What each weighed channel says. */
  static List<Endpoint> find(Log log) {
    List<Endpoint> ends = new ArrayList<>();
    for (Channel channel : log.channels()) {
      if (channel.role() == Role.WEIGHT) {
        end(log, channel).ifPresent(ends::add);
      }
    }
    return ends;
  }

  /** Water lost between the first and the last weighing and the step of the balance, kg. */
  static Optional<double[]> lost(Log log, Channel channel) {
    List<Weighing> all = weighings(log, channel);
    return all.size() < 2
        ? Optional.empty()
        : Optional.of(
            new double[] {all.get(0).kilogram() - all.get(all.size() - 1).kilogram(), step(all)});
  }

  private static Optional<Endpoint> end(Log log, Channel channel) {
    List<Weighing> all = weighings(log, channel);
    if (all.size() < 3) {
      return Optional.empty();
    }
    double last = all.get(all.size() - 1).kilogram();
    double lost = all.get(0).kilogram() - last;
    if (lost < SMALLEST_LOSS * all.get(0).kilogram()) {
      return Optional.empty();
    }
    double same = SAME_STEPS * step(all);
    int constant = all.size() - 1;
    while (constant > 0 && all.get(constant - 1).kilogram() - last <= same) {
      constant--;
    }
    if (constant == 0) {
      return Optional.empty(); // all weighings are the same to this balance: no loss to speak of
    }
    if (constant == all.size() - 1) {
      return Optional.of(
          Endpoint.ofLoadNotReached(
              channel.name(), Endpoint.Method.WEIGHT, ReviewWords.say("weight.falls")));
    }
    Weighing before = all.get(constant - 1);
    Weighing after = all.get(constant);
    return Optional.of(
        new Endpoint(
            Optional.empty(),
            channel.name(),
            Endpoint.Method.WEIGHT,
            Optional.of(
                log.time().instant(0).plusMillis(Math.round(1_000 * reached(all, constant)))),
            Optional.of(at(log, before)),
            Optional.of(at(log, after)),
            Confidence.MEDIUM,
            ReviewWords.say("weight.constant", Spoken.digits(1_000 * same))));
  }

  private static java.time.Instant at(Log log, Weighing weighing) {
    return log.time().instant(0).plusMillis(Math.round(1_000 * weighing.second()));
  }

  /** When the loss at the pace before would have reached the constant weight, s. */
  private static double reached(List<Weighing> all, int constant) {
    Weighing before = all.get(constant - 1);
    Weighing after = all.get(constant);
    double middle = (before.second() + after.second()) / 2;
    if (constant < 2) {
      return middle;
    }
    Weighing earlier = all.get(constant - 2);
    double pace = (earlier.kilogram() - before.kilogram()) / (before.second() - earlier.second());
    double rest = before.kilogram() - all.get(all.size() - 1).kilogram();
    double reached = before.second() + rest / pace;
    return reached > before.second() && reached < after.second() ? reached : middle;
  }

  private static List<Weighing> weighings(Log log, Channel channel) {
    List<Weighing> all = new ArrayList<>();
    for (int i = 0; i < log.time().size(); i++) {
      double value = channel.series().value(i);
      if (!Double.isNaN(value)) {
        all.add(new Weighing(log.time().elapsed_s(i), value));
      }
    }
    return all;
  }

  /** The smallest difference between two weighings: what the balance can show, kg. */
  private static double step(List<Weighing> all) {
    double step = Double.POSITIVE_INFINITY;
    for (int i = 1; i < all.size(); i++) {
      double difference = Math.abs(all.get(i).kilogram() - all.get(i - 1).kilogram());
      step = difference > 1e-9 ? Math.min(step, difference) : step;
    }
    return Double.isInfinite(step) ? 0 : Math.min(step, 0.01 * all.get(0).kilogram());
  }
}
