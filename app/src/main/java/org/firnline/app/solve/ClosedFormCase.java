package org.firnline.app.solve;

import org.firnline.drying.freezing.Plank1913;

/** Freezing time of a layer from one side. */
final class ClosedFormCase implements CaseKind {

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    Plank1913 plank =
        new Plank1913(
            inputs.number("rho") * inputs.number("latent"),
            inputs.number("freezing_point"),
            inputs.number("shelf"),
            inputs.number("K"),
            inputs.number("k_frozen"));
    return new CaseAnswer().put("freezing_time_s", plank.oneSided(inputs.number("depth")));
  }
}
