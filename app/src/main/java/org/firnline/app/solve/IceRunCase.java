package org.firnline.app.solve;

import org.firnline.drying.icerun.SimulatedIceRun;
import org.firnline.drying.icerun.WeighedIceRun;
import org.firnline.drying.primary.HeatSupply;
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
    double length_s = inputs.number("duration", USUAL_LENGTH_S);
    HeatSupply supply = ProductInputs.supply(inputs, pressure_Pa);
    SimulatedIceRun run =
        SimulatedIceRun.of(slab, ProductInputs.vessel(inputs), supply, pressure_Pa, length_s);
    double shelf = inputs.number("shelf");
    double drive = run.drive() + (shelf - supply.temperature()) * length_s;
    Estimate found =
        new WeighedIceRun(
                Estimate.exact(run.loss(), GIVEN),
                Estimate.exact(drive, GIVEN),
                Estimate.exact(slab.vesselArea(), GIVEN),
                run.frontTemperature())
            .coefficient(new MurphyKoop2005Enthalpy());
    double side =
        inputs.has("k_side")
            ? inputs.number("k_side") * (drive + (inputs.number("t_wall") - shelf) * length_s)
            : 0;
    return new CaseAnswer()
        .put("loss_kg", run.loss())
        .put("integral_K_s", drive)
        .put("kv_W_per_m2K", found.best() - side / drive)
        .put("kv_true_W_per_m2K", ProductInputs.heatTransfer(inputs).at(pressure_Pa));
  }
}
