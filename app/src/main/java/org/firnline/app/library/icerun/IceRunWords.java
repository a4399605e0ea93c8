package org.firnline.app.library.icerun;

import java.util.Comparator;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Words;
import org.firnline.learning.icerun.IceRunAnswer;
import org.firnline.learning.icerun.PositionHeatTransfer;
import org.firnline.learning.icerun.PressureLaw;
import org.firnline.learning.uncertainty.Budget;
import org.firnline.units.Figures;
import org.firnline.units.QuantityKind;

/** The figures of an ice run in words. */
final class IceRunWords {
  private static final double COVERAGE = 0.95;

  private final Words words;

  IceRunWords(Words words) {
    this.words = words;
  }

  String title(IceRunAnswer answer) {
    return words.say(
        "icerun.title-line",
        answer.run().name(),
        answer.run().vessel(),
        Quantities.words(answer.run().pressure().best(), QuantityKind.PRESSURE),
        Quantities.words(answer.run().drive(), QuantityKind.TEMPERATURE_DIFFERENCE));
  }

  String count(PositionHeatTransfer position) {
    return words.say("icerun.vessels", position.vessels().size());
  }

  /** "18.4 ± 1.1 W/(m² K)", the interval of 95 %. */
  String value(PositionHeatTransfer position) {
    Budget budget = position.budget();
    double expanded = budget.expanded(COVERAGE);
    int decimals = Math.min(2, Figures.decimalsFor(expanded));
    return words.say(
        "icerun.value",
        Figures.decimals(budget.value(), decimals),
        Figures.decimals(expanded, decimals));
  }

  String between(PositionHeatTransfer position) {
    return Double.isNaN(position.betweenVessels())
        ? words.say("icerun.between.unknown")
        : words.say(
            "icerun.between", Quantities.words(position.betweenVessels(), QuantityKind.FRACTION));
  }

  /** The input that adds most to the doubt. */
  String largest(PositionHeatTransfer position) {
    Budget budget = position.budget();
    Budget.Part most =
        budget.parts().stream()
            .max(Comparator.comparingDouble(part -> Math.abs(part.change())))
            .orElseThrow();
    double share = Math.pow(most.change() / budget.uncertainty(), 2);
    return budget.uncertainty() == 0
        ? ""
        : words.say(
            "icerun.most",
            words.say("icerun.input." + most.input().name()),
            Quantities.words(share, QuantityKind.FRACTION));
  }

  /** "a = 10.1 ± 0.8, …", with what the points do not show. */
  String law(PressureLaw law) {
    String constants =
        words.say(
            "icerun.law.constants",
            withDoubt(law.heatTransfer().contact(), law.deviations().get(0)),
            withDoubt(law.heatTransfer().gas(), law.deviations().get(1)),
            withDoubt(law.heatTransfer().leveling(), law.deviations().get(2)),
            Quantities.words(law.lowest(), QuantityKind.PRESSURE),
            Quantities.words(law.highest(), QuantityKind.PRESSURE));
    return constants + " " + words.say("icerun.law." + law.form().label());
  }

  private static String withDoubt(double value, double deviation) {
    return deviation == 0
        ? Figures.significant(value, 3)
        : Figures.significant(value, 3) + " ± " + Figures.significant(deviation, 2);
  }
}
