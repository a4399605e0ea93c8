package org.firnline.app.solve;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.MurphyKoop2005Ice;
import org.firnline.matter.WagnerEtAl2011Ice;

/** Properties of ice over lists of temperatures or pressures. */
final class PropertyCase implements CaseKind {

  private final WagnerEtAl2011Ice ice = new WagnerEtAl2011Ice();
  private final MurphyKoop2005Ice secondOpinion = new MurphyKoop2005Ice();
  private final MurphyKoop2005Enthalpy enthalpy = new MurphyKoop2005Enthalpy();

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    CaseAnswer answer = new CaseAnswer();
    if (inputs.has("pressure_Pa")) {
      return answer.put(
          "temperature_K", each(inputs.numbers("pressure_Pa"), ice::saturationTemperature));
    }
    List<Double> temperatures = inputs.numbers("temperature_K");
    return answer
        .put("pressure_Pa", each(temperatures, ice::pressure))
        .put("murphy_koop_Pa", each(temperatures, secondOpinion::pressure))
        .put("molar_J_per_mol", each(temperatures, enthalpy::molar))
        .put("specific_J_per_kg", each(temperatures, enthalpy::specific));
  }

  private static List<Double> each(List<Double> values, DoubleUnaryOperator property) {
    return values.stream().map(property::applyAsDouble).toList();
  }
}
