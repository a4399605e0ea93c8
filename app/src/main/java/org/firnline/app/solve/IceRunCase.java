package org.firnline.app.solve;

import org.firnline.drying.icerun.SimulatedIceRun;
import org.firnline.drying.icerun.WeighedIceRun;
import org.firnline.drying.primary.Slab;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.matter.MurphyKoop2005Enthalpy;

/** A weighed ice run: simulated, then turned back into K_v. */
final class IceRunCase implements CaseKind {

  /** Length of the run unless a case says otherwise, s: four hours. */
  private static final double USUAL_LENGTH_S = 4 * 3600;

  private static final Provenance GIVEN = new Provenance.Stated("the case");

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    double pressure_Pa = inputs.number("pressure");
    Slab slab = ProductInputs.slab(inputs);
    SimulatedIceRun run =
        SimulatedIceRun.of(
            slab,
            ProductInputs.vessel(inputs),
            ProductInputs.supply(inputs, pressure_Pa),
            pressure_Pa,
            inputs.number("duration", USUAL_LENGTH_S));
    Estimate found =
        new WeighedIceRun(
                Estimate.exact(run.loss(), GIVEN),
                Estimate.exact(run.drive(), GIVEN),
                Estimate.exact(slab.vesselArea(), GIVEN),
                run.frontTemperature())
            .coefficient(new MurphyKoop2005Enthalpy());
    return new CaseAnswer()
        .put("loss_kg", run.loss())
        .put("integral_K_s", run.drive())
        .put("kv_W_per_m2K", found.best())
        .put("kv_true_W_per_m2K", ProductInputs.heatTransfer(inputs).at(pressure_Pa));
  }
}
