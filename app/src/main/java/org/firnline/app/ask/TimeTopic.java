package org.firnline.app.ask;

import java.util.List;
import org.firnline.app.words.Quantities;
import org.firnline.evidence.Band;
import org.firnline.planning.Verdict;
import org.firnline.planning.ask.HowLong;
import org.firnline.planning.ask.IceLayer;
import org.firnline.units.QuantityKind;

/** How long it takes, as a band, and whether it stays cold enough meanwhile. */
final class TimeTopic implements AskTopic {

  @Override
  public String key() {
    return "time";
  }

  @Override
  public List<AskInput> inputs() {
    return List.of(
        AskInput.choice("vessel", AskVessel.SHELL, AskVessel.KINDS),
        AskVessel.FLASK_VOLUME,
        AskVessel.VIAL_SIZE,
        AskVessel.TRAY_AREA,
        AskVessel.FILL,
        AskInput.quantity("warm", QuantityKind.TEMPERATURE, "°C", "22 °C")
            .with(AskVessel.VIAL, "-20 °C")
            .with(AskVessel.TRAY, "-10 °C"),
        AskInput.quantity("pressure", QuantityKind.PRESSURE, "Pa", "10 Pa"),
        AskInput.quantity("critical", QuantityKind.TEMPERATURE, "°C", "-32 °C"));
  }

  @Override
  public AskAnswer answer(AskValues values) {
    AskVessel vessel = new AskVessel(values, AskVessel.USUAL_SOLUTION);
    IceLayer layer = vessel.layer();
    double pressure = values.number("pressure");
    HowLong question =
        new HowLong(
            layer,
            vessel.ice(),
            vessel.heatTransfer(pressure),
            values.number("warm"),
            pressure,
            HowLong.USUAL_CAKE,
            HowLong.USUAL_CAKE_FACTOR);
    HowLong.Answer answer = question.answer();
    double critical = values.number("critical");
    return answer.dries() ? dries(answer, critical) : never(answer);
  }

  private static AskAnswer dries(HowLong.Answer answer, double critical) {
    Band warmest = answer.warmest_K();
    Verdict verdict =
        warmest.best() > critical
            ? Verdict.STOP
            : warmest.high() > critical ? Verdict.WATCH : Verdict.PASS;
    Band time = answer.time_s();
    return new AskAnswer(
        verdict,
        List.of(
            new AskFigure("dryingTime", time, QuantityKind.TIME),
            new AskFigure("warmestTemperature", warmest, QuantityKind.TEMPERATURE)),
        Drawing.style(verdict),
        List.of(
            Quantities.words(time.best(), QuantityKind.TIME),
            Double.isFinite(time.high()) ? Quantities.words(time.high(), QuantityKind.TIME) : "∞",
            Quantities.words(warmest.best(), QuantityKind.TEMPERATURE),
            Quantities.words(critical, QuantityKind.TEMPERATURE)),
        BarPictures.time(time));
  }

  private static AskAnswer never(HowLong.Answer answer) {
    return new AskAnswer(
        Verdict.STOP,
        List.of(new AskFigure("dryingTime", answer.time_s(), QuantityKind.TIME)),
        "never-" + Drawing.style(answer.ending()),
        List.of(),
        BarPictures.time(answer.time_s()));
  }
}
