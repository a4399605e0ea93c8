package org.firnline.app.ask;

import java.util.List;
import org.firnline.app.words.Quantities;
import org.firnline.planning.ask.PressureReach;
import org.firnline.units.QuantityKind;

/** Whether the pressure can be what the product needs, given pump and collector. */
final class PressureTopic implements AskTopic {

  @Override
  public String key() {
    return "pressure";
  }

  @Override
  public List<AskInput> inputs() {
    return List.of(
        AskInput.quantity("critical", QuantityKind.TEMPERATURE, "°C", "-32 °C"),
        AskInput.quantity("margin", QuantityKind.TEMPERATURE_DIFFERENCE, "K", "3 K"),
        AskInput.quantity("collector", QuantityKind.TEMPERATURE, "°C", "-55 °C"),
        AskInput.quantity("pressure", QuantityKind.PRESSURE, "Pa", "6 Pa"));
  }

  @Override
  public AskAnswer answer(AskValues values) {
    PressureReach reach =
        new PressureReach(
            values.number("critical") - values.number("margin"),
            values.number("collector"),
            values.number("pressure"));
    PressureReach.Finding finding = reach.finding();
    return new AskAnswer(
        finding.verdict(),
        List.of(
            pressure("usualLow", reach.usualLow_Pa()),
            pressure("usualHigh", reach.usualHigh_Pa()),
            pressure("productIce", reach.productIce_Pa()),
            pressure("collectorFloor", reach.floor_Pa()),
            AskFigure.exact("coldestDrying", reach.coldestDrying_K(), QuantityKind.TEMPERATURE),
            AskFigure.exact("colder", reach.colder_K(), QuantityKind.TEMPERATURE_DIFFERENCE)),
        Drawing.style(finding),
        List.of(
            pascal(reach.pressure()),
            pascal(reach.usualLow_Pa()),
            pascal(reach.usualHigh_Pa()),
            pascal(reach.productIce_Pa()),
            pascal(reach.floor_Pa()),
            Quantities.words(reach.colder_K(), QuantityKind.TEMPERATURE_DIFFERENCE)),
        BarPictures.pressure(reach));
  }

  private static AskFigure pressure(String name, double pascal) {
    return AskFigure.exact(name, pascal, QuantityKind.PRESSURE);
  }

  private static String pascal(double pressure) {
    return Quantities.words(pressure, QuantityKind.PRESSURE);
  }
}
