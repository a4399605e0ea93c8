package org.firnline.app.ask;

import java.util.List;
import org.firnline.app.words.Quantities;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.firnline.planning.Verdict;
import org.firnline.planning.ask.CollectorFit;
import org.firnline.units.QuantityKind;

/** Whether the water fits the collector, in amount and in rate. */
final class CollectorTopic implements AskTopic {
  private static final double DENSITY = 1_020;
  private static final double MOST = 1e6;

  @Override
  public String key() {
    return "collector";
  }

  @Override
  public List<AskInput> inputs() {
    return List.of(
        AskInput.quantity("count", QuantityKind.NUMBER, "", "120"),
        AskInput.quantity("fill", QuantityKind.VOLUME, "mL", "3 mL"),
        AskInput.quantity("solids", QuantityKind.FRACTION, "%", "5 %"),
        AskInput.quantity("hours", QuantityKind.TIME, "h", "24 h"),
        AskInput.quantity("capacity", QuantityKind.MASS, "kg", "4 kg"),
        AskInput.quantity("rate", QuantityKind.MASS_FLOW, "kg/d", "2 kg/d"));
  }

  @Override
  public AskAnswer answer(AskValues values) {
    double count = values.number("count");
    if (count != Math.rint(count) || count < 1 || count > MOST) {
      throw new InvalidInputException(
          new Problem(
              "count-range",
              "how many '" + values.text("count") + "'",
              "count",
              "must be a whole number from 1",
              "write for instance 120"));
    }
    CollectorFit fit =
        new CollectorFit(
            (int) count,
            DENSITY * values.number("fill"),
            values.number("solids"),
            values.number("hours"),
            values.number("capacity"),
            values.number("rate"));
    boolean amount = fit.capacityShare() >= fit.rateShare();
    Verdict verdict = amount ? fit.amountVerdict() : fit.rateVerdict();
    String advice =
        verdict == Verdict.PASS ? "pass" : (amount ? "amount-" : "rate-") + Drawing.style(verdict);
    return new AskAnswer(
        verdict,
        List.of(
            AskFigure.exact("water", fit.water_kg(), QuantityKind.MASS),
            AskFigure.exact("capacityShare", fit.capacityShare(), QuantityKind.FRACTION),
            AskFigure.exact("peakRate", fit.peakRate_kg_per_s(), QuantityKind.MASS_FLOW),
            AskFigure.exact("rateShare", fit.rateShare(), QuantityKind.FRACTION)),
        advice,
        List.of(
            Quantities.words(fit.water_kg(), QuantityKind.MASS),
            Quantities.words(fit.capacityShare(), QuantityKind.FRACTION),
            Quantities.words(fit.peakRate_kg_per_s(), QuantityKind.MASS_FLOW),
            Quantities.words(fit.rateShare(), QuantityKind.FRACTION),
            String.valueOf(fit.mostVessels())),
        BarPictures.collector(fit));
  }
}
