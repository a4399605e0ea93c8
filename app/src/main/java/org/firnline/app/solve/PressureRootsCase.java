package org.firnline.app.solve;

import java.util.OptionalDouble;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.load.LoadMoment;
import org.firnline.drying.load.PressureControl;
import org.firnline.drying.load.PressureRoot;

/** Every pressure at which a fresh load meets its dryer, and where some set points lead. */
final class PressureRootsCase implements CaseKind {

  private static final int[] SET_POINTS_PA = {2, 5, 10, 20, 50, 100};

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    VaporPath path = DryerInputs.path(inputs);
    LoadMoment start = LoadMoment.start(CoupledCase.load(inputs), CoupledCase.shelf(inputs));
    CaseAnswer answer =
        new CaseAnswer()
            .put(
                "roots_at_start_Pa",
                start.roots(path).stream().map(PressureRoot::pressure).toList());
    for (int setPoint : SET_POINTS_PA) {
      put(
          answer,
          "held_from_" + setPoint + "_Pa",
          start.pressure(new PressureControl.Held(setPoint), path));
    }
    put(answer, "uncontrolled_Pa", start.pressure(new PressureControl.Floating(), path));
    return answer;
  }

  private static void put(CaseAnswer answer, String key, OptionalDouble pressure) {
    pressure.ifPresentOrElse(value -> answer.put(key, value), () -> answer.undefined(key));
  }
}
