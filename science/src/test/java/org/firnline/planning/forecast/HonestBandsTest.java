package org.firnline.planning.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.firnline.drying.cycle.CycleDryer;
import org.firnline.drying.cycle.CycleRun;
import org.firnline.drying.cycle.CycleSchedule;
import org.firnline.drying.cycle.CycleSimulation;
import org.firnline.drying.cycle.CycleVessel;
import org.firnline.drying.cycle.VesselFate;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.evidence.Band;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Recipe;
import org.firnline.lab.RecipePhase;
import org.firnline.lab.RecipeStep;
import org.firnline.numerics.SeededUniform;
import org.firnline.planning.VesselVariation;
import org.firnline.planning.design.DesignExamples;
import org.junit.jupiter.api.Test;

/**
 * Bands that keep their word. Four hundred truths are drawn from the stated spreads: the load's
 * heat transfer and resistance, and every single vial's heat transfer, resistance and fill. Each
 * truth is simulated in full, as a transient cycle with heat stored in glass and ice, all vials on
 * one floating chamber; the forecast knows only the spreads and marches three vials a place,
 * quasi-steady.
 *
 * <p>A band that holds nine times in ten holds 360 of 400 truths, give or take 6 (one standard
 * deviation of the binomial); 86 to 94 % are 2.7 of these on either side.
 */
class HonestBandsTest {

  private static final int TRUTHS = 400;
  private static final int VIALS = 20;
  private static final int AT_EDGE = 6;
  private static final long SEED = 20_260_601;
  private static final double FROZEN = 233.15;
  private static final double SHELF = 246.15;
  private static final double PRESSURE = 8;
  private static final double RAMP = 0.5 / 60;
  private static final double EVACUATION_S = 900;
  private static final double PRIMARY_S = 110 * 3600;

  private static final LoadItem ITEM = DesignExamples.vials(VIALS);
  private static final VesselVariation SPREAD = VesselVariation.USUAL;

  @Test
  void bands_of_finish_and_warmest_temperature_hold_86_to_94_percent_of_400_truths() {
    LoadOutlook outlook = forecast();
    List<CycleRun> truths =
        IntStream.range(0, TRUTHS).parallel().mapToObj(HonestBandsTest::truth).toList();
    assertThat(truths).allSatisfy(run -> assertThat(run.lastEndOfIce()).isFinite());
    double finish =
        share(
            truths.stream().map(run -> run.lastEndOfIce() - EVACUATION_S).toList(),
            outlook.lastTime_s());
    double warmest =
        share(
            truths.stream()
                .map(
                    run ->
                        run.fates().stream()
                            .mapToDouble(VesselFate::warmestIce)
                            .max()
                            .orElseThrow())
                .toList(),
            outlook.warmest_K());
    assertThat(finish).as("finish of the last vial").isBetween(0.86, 0.94);
    assertThat(warmest).as("warmest ice of any vial").isBetween(0.86, 0.94);
  }

  private static LoadOutlook forecast() {
    DryingProgram program =
        new DryingProgram(
            FROZEN,
            RAMP,
            List.of(
                new DryingProgram.Leg(
                    SHELF, OptionalDouble.of(PRESSURE), Double.POSITIVE_INFINITY)));
    return new LoadForecaster(DesignExamples.sharing(ITEM)).run(program).outlook();
  }

  private static double share(List<Double> truths, Band band) {
    long held = truths.stream().filter(t -> t >= band.low() && t <= band.high()).count();
    return held / (double) truths.size();
  }

  private static CycleRun truth(int number) {
    SeededUniform chance = new SeededUniform(SEED);
    double heat =
        Math.exp(ITEM.vial().heatTransferFactor().spread() * chance.normalAt(number, 0, 9));
    double cake =
        Math.exp(ITEM.product().resistanceFactor().spread() * chance.normalAt(number, 1, 9));
    List<CycleVessel> vials = new ArrayList<>();
    for (int vial = 0; vial < VIALS; vial++) {
      double place = vial < AT_EDGE ? SPREAD.edgeFactor() : 1;
      double own = Math.exp(SPREAD.heatTransfer() * chance.normalAt(number, vial + 10, 0));
      double dense = Math.exp(SPREAD.resistance() * chance.normalAt(number, vial + 10, 1));
      double fill = 1 + SPREAD.fill() * chance.normalAt(number, vial + 10, 2);
      vials.add(vial(place * heat * own, cake * dense, fill));
    }
    return new CycleSimulation(
            vials, dryer(), CycleSchedule.of(recipe()), List.of(), CycleSimulation.QUICK_STEP)
        .run();
  }

  /** 8 g of glass, a third of it cold with the ice, and 3 g of ice. */
  private static CycleVessel vial(double heat, double cake, double fill) {
    Slab slab =
        Slab.of(
            ITEM.product().solution(),
            ITEM.fill() * fill,
            ITEM.vial().innerArea(),
            ITEM.vial().outerArea());
    return CycleVessel.of(
        1,
        new DryingVessel(slab, ITEM.product().resistance().times(cake), 0),
        ShelfHeat.of(ITEM.vial().heatTransfer().times(heat)),
        new ThermalMass(2, 6 * fill));
  }

  private static CycleDryer dryer() {
    VaporPath path =
        VaporPath.of(DesignExamples.dryer().capability(), DesignExamples.dryer().collector());
    return new CycleDryer(
        path, 0.12, 0.004, 1e-3, 1.0 / 60, 213.15, CycleDryer.Surroundings.USUAL, 0.6, 1333);
  }

  private static Recipe recipe() {
    return new Recipe(
        "invented",
        FROZEN,
        List.of(
            new RecipeStep(
                RecipePhase.EVACUATION, FROZEN, RAMP, OptionalDouble.of(PRESSURE), EVACUATION_S),
            new RecipeStep(
                RecipePhase.PRIMARY_DRYING, SHELF, RAMP, OptionalDouble.of(PRESSURE), PRIMARY_S)));
  }
}
