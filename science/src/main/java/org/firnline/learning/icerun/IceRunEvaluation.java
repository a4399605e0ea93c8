package org.firnline.learning.icerun;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.firnline.evidence.Problem;
import org.firnline.learning.uncertainty.Budget;
import org.firnline.learning.uncertainty.MeasuredInput;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.SublimationEnthalpy;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.matter.Water;

/**
 * K_v of every position class of a weighed ice run: K_v = ΔH Δm/(A_v (T_shelf − T_bottom) t), Δm
 * the mean loss of the class.
 *
 * <p>Doubt by the law of propagation: the scatter of the losses divided by the square root of their
 * number (type A; never below what the balance alone would give), and time, both temperatures and
 * area (type B), which every vessel shares. ΔH is taken at the temperature of ice in equilibrium
 * with the chamber pressure; a kelvin changes it by less than 0.03 %.
 *
 * <p>Valid: while ice covers the base, about the first third of it. Neighboring walls are not taken
 * off: that is what position classes are for.
 *
 * <p>Source: gravimetric method of Pikal, Roy &amp; Shah, J. Pharm. Sci. 73, 1224 (1984) (from
 * memory); JCGM 100:2008, 4.2 and 5.1.
 */
public final class IceRunEvaluation {

  /** Until this share of the ice is gone it covers the base; common practice. */
  private static final double COVERED_SHARE = 1.0 / 3;

  private static final double LEAST_DRIVE_K = 5;
  private static final double CLEAR_LOSS = 10;

  private final SublimationEnthalpy enthalpy;

  /** With the enthalpy of reference. */
  public IceRunEvaluation() {
    this(new MurphyKoop2005Enthalpy());
  }

  public IceRunEvaluation(SublimationEnthalpy enthalpy) {
    this.enthalpy = enthalpy;
  }

  /** What the run tells, class by class in the order of the sheet. */
  public IceRunAnswer evaluate(IceRun run) {
    Map<String, List<WeighedVessel>> classes = new LinkedHashMap<>();
    for (WeighedVessel vessel : run.vessels()) {
      classes.computeIfAbsent(vessel.position(), any -> new ArrayList<>()).add(vessel);
    }
    List<PositionHeatTransfer> answers = new ArrayList<>();
    classes.forEach((position, vessels) -> answers.add(ofClass(run, position, vessels)));
    return new IceRunAnswer(run, answers, warnings(run, answers));
  }

  private PositionHeatTransfer ofClass(IceRun run, String position, List<WeighedVessel> vessels) {
    double[] losses = vessels.stream().mapToDouble(WeighedVessel::loss).toArray();
    double mean = mean(losses);
    double scatter = deviation(losses, mean);
    double weighing = run.balance().ofLoss();
    double heat = enthalpy(run);
    Budget budget =
        Budget.of(
            in -> heat * in[0] / (in[1] * (in[2] - in[3]) * in[4]), inputs(run, losses, mean));
    double own = Math.sqrt(Math.max(0, scatter * scatter - weighing * weighing)) / mean;
    return new PositionHeatTransfer(
        position,
        budget,
        losses.length == 1 ? Double.NaN : own,
        vessels.stream()
            .map(
                vessel ->
                    new PositionHeatTransfer.OfVessel(
                        vessel, budget.value() * vessel.loss() / mean))
            .toList());
  }

  private static List<MeasuredInput> inputs(IceRun run, double[] losses, double mean) {
    int count = losses.length;
    double scatter = deviation(losses, mean);
    double weighing = run.balance().ofLoss();
    boolean scatters = count > 1 && scatter > weighing;
    double loss = (scatters ? scatter : weighing) / Math.sqrt(count);
    return List.of(
        new MeasuredInput("loss", mean, loss, scatters ? count - 1 : Double.POSITIVE_INFINITY),
        MeasuredInput.known("time", run.time().best(), run.time().spread()),
        MeasuredInput.known("shelf", run.shelf().best(), run.shelf().spread()),
        MeasuredInput.known("bottom", run.bottom().best(), run.bottom().spread()),
        MeasuredInput.known("area", run.area().best(), run.area().spread()));
  }

  private double enthalpy(IceRun run) {
    double pressure = Math.min(run.pressure().best(), Water.TRIPLE_POINT_PRESSURE);
    return enthalpy.specific(new WagnerEtAl2011Ice().saturationTemperature(pressure));
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static double deviation(double[] values, double mean) {
    double sum = 0;
    for (double value : values) {
      sum += (value - mean) * (value - mean);
    }
    return values.length == 1 ? 0 : Math.sqrt(sum / (values.length - 1));
  }

  private static List<Problem> warnings(IceRun run, List<PositionHeatTransfer> classes) {
    List<Problem> warnings = new ArrayList<>();
    List<String> bare = new ArrayList<>();
    List<String> unclear = new ArrayList<>();
    for (WeighedVessel vessel : run.vessels()) {
      if (vessel.loss() > COVERED_SHARE * run.iceAtStart()) {
        bare.add(vessel.name());
      }
      if (vessel.loss() < CLEAR_LOSS * run.balance().ofLoss()) {
        unclear.add(vessel.name());
      }
    }
    if (!bare.isEmpty()) {
      warnings.add(
          warning(
              run,
              "base-may-be-bare",
              "more than a third of the ice is gone in " + String.join(", ", bare),
              "ice covers the base for about the first third only",
              "stop the next run earlier; these coefficients may be too low"));
    }
    if (!unclear.isEmpty()) {
      warnings.add(
          warning(
              run,
              "loss-near-the-balance",
              "the loss is less than ten times the doubt of weighing in "
                  + String.join(", ", unclear),
              "the balance decides, not the vessel",
              "run longer or weigh on a finer balance"));
    }
    if (run.drive() < LEAST_DRIVE_K) {
      warnings.add(
          warning(
              run,
              "small-drive",
              "the shelf was warmer than the ice by a few kelvin only",
              "an error of the thermometers counts heavily",
              "use a warmer shelf"));
    }
    for (PositionHeatTransfer position : classes) {
      if (position.vessels().size() == 1) {
        warnings.add(
            warning(
                run,
                "single-vessel",
                "one vessel only at the " + position.position(),
                "how much vessels differ from each other cannot be seen",
                "weigh three or more of each position"));
      }
    }
    return warnings;
  }

  private static Problem warning(IceRun run, String code, String what, String rule, String advice) {
    return new Problem(code, what, "ice run " + run.name(), rule, advice);
  }
}
