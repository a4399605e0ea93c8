package org.firnline.app.solve;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Every kind of question the batch door answers. */
final class CaseKinds {

  private static final Map<String, CaseKind> KINDS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("property", new PropertyCase()),
              Map.entry("frozen-product", new FrozenProductCase()),
              Map.entry("primary", new PrimaryCase()),
              Map.entry("dryer", new DryerCase()),
              Map.entry("coupled", new CoupledCase()),
              Map.entry("pressure-roots", new PressureRootsCase()),
              Map.entry("batch-gauge", new BatchGaugeCase()),
              Map.entry("recipe", new RecipeCase()),
              Map.entry("monte-carlo", new MonteCarloCase()),
              Map.entry("best-point", new BestPointCase()),
              Map.entry("secondary", new SecondaryCase()),
              Map.entry("closed-form", new ClosedFormCase()),
              Map.entry("pressure-rise", new PressureRiseCase()),
              Map.entry("leak", new LeakCase()),
              Map.entry("ice-run", new IceRunCase())));

  private CaseKinds() {}

  static Optional<CaseKind> find(String kind) {
    return Optional.ofNullable(KINDS.get(kind));
  }

  /** The known kinds, in a sentence. */
  static String known() {
    return String.join(", ", KINDS.keySet());
  }
}
