package org.firnline.app.ask;

import java.util.List;
import org.firnline.app.words.Quantities;
import org.firnline.evidence.Band;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.planning.Verdict;
import org.firnline.planning.ask.IceLayer;
import org.firnline.planning.ask.WarmUpTime;
import org.firnline.units.QuantityKind;

/** How long until it warms to its critical temperature if power or vacuum fails. */
final class FailureTopic implements AskTopic {
  /** Less than this leaves nobody time to come; an assumption of this page. */
  private static final double SOON_S = 1_800;

  @Override
  public String key() {
    return "failure";
  }

  @Override
  public List<AskInput> inputs() {
    return List.of(
        AskInput.choice("vessel", AskVessel.SHELL, AskVessel.KINDS),
        AskVessel.FLASK_VOLUME,
        AskVessel.VIAL_SIZE,
        AskVessel.TRAY_AREA,
        AskVessel.FILL,
        AskInput.quantity("now", QuantityKind.TEMPERATURE, "°C", "-38 °C"),
        AskInput.quantity("critical", QuantityKind.TEMPERATURE, "°C", "-32 °C"),
        AskInput.quantity("warm", QuantityKind.TEMPERATURE, "°C", "22 °C")
            .with(AskVessel.VIAL, "-20 °C")
            .with(AskVessel.TRAY, "-10 °C"));
  }

  /** The valve shuts and the ice fills the chamber with its own vapor: that sets the gas. */
  @Override
  public AskAnswer answer(AskValues values) {
    AskVessel vessel = new AskVessel(values, AskVessel.USUAL_SOLUTION);
    IceLayer layer = vessel.layer();
    double critical = values.number("critical");
    WarmUpTime warming =
        new WarmUpTime(
            vessel.ice(),
            layer.heatArea(),
            vessel.heatTransfer(new WagnerEtAl2011Ice().pressure(critical)),
            values.number("now"),
            critical,
            values.number("warm"));
    Band time = warming.time_s();
    Verdict verdict =
        time.best() <= 0 ? Verdict.STOP : time.low() < SOON_S ? Verdict.WATCH : Verdict.PASS;
    String advice = Double.isInfinite(time.best()) ? "never" : "failure-" + Drawing.style(verdict);
    return new AskAnswer(
        verdict,
        List.of(new AskFigure("time", time, QuantityKind.TIME)),
        advice,
        List.of(
            spoken(time.low()),
            spoken(time.best()),
            Quantities.words(critical, QuantityKind.TEMPERATURE)),
        CurvePicture.warming(warming, time));
  }

  private static String spoken(double seconds) {
    return Double.isFinite(seconds) ? Quantities.words(seconds, QuantityKind.TIME) : "∞";
  }
}
