package org.firnline.app.solve;

import static org.firnline.units.QuantityKind.*;

import java.util.Map;
import java.util.Optional;
import org.firnline.units.QuantityKind;

/** What the inputs of a case measure, so that a wrong unit is refused instead of converted. */
final class CaseKeys {

  private static final Map<String, QuantityKind> KINDS =
      Map.ofEntries(
          Map.entry("area_product", AREA),
          Map.entry("area_vessel", AREA),
          Map.entry("duct_area", AREA),
          Map.entry("fill", VOLUME),
          Map.entry("volume", VOLUME),
          Map.entry("wall_radius", LENGTH),
          Map.entry("height", LENGTH),
          Map.entry("diameter", LENGTH),
          Map.entry("depth", LENGTH),
          Map.entry("glass", LENGTH),
          Map.entry("rho_solution", DENSITY),
          Map.entry("rho_ice", DENSITY),
          Map.entry("rho_solid", DENSITY),
          Map.entry("rho_water", DENSITY),
          Map.entry("rho", DENSITY),
          Map.entry("solids", FRACTION),
          Map.entry("unfrozen", FRACTION),
          Map.entry("k_frozen", CONDUCTIVITY),
          Map.entry("k_cake", CONDUCTIVITY),
          Map.entry("k_glass", CONDUCTIVITY),
          Map.entry("kv_a", HEAT_TRANSFER),
          Map.entry("kv_b", HEAT_TRANSFER_PER_PRESSURE),
          Map.entry("kv_c", PER_PRESSURE),
          Map.entry("k_side", HEAT_TRANSFER),
          Map.entry("h_room", HEAT_TRANSFER),
          Map.entry("h_top", HEAT_TRANSFER),
          Map.entry("K", HEAT_TRANSFER),
          Map.entry("rp_r0", CAKE_RESISTANCE),
          Map.entry("rp", CAKE_RESISTANCE),
          Map.entry("rp_a1", CAKE_RESISTANCE_PER_DEPTH),
          Map.entry("rp_a2", PER_LENGTH),
          Map.entry("mouth", MOUTH_RESISTANCE),
          Map.entry("shelf", TEMPERATURE),
          Map.entry("room", TEMPERATURE),
          Map.entry("t_wall", TEMPERATURE),
          Map.entry("t_top", TEMPERATURE),
          Map.entry("front", TEMPERATURE),
          Map.entry("limit", TEMPERATURE),
          Map.entry("collector", TEMPERATURE),
          Map.entry("gas_temperature", TEMPERATURE),
          Map.entry("freezing_point", TEMPERATURE),
          Map.entry("shelf_start", TEMPERATURE),
          Map.entry("product_start", TEMPERATURE),
          Map.entry("hold", TEMPERATURE),
          Map.entry("tg_solid", TEMPERATURE),
          Map.entry("tg_water", TEMPERATURE),
          Map.entry("shelf_range", TEMPERATURE),
          Map.entry("pressure_range", PRESSURE),
          Map.entry("pressure", PRESSURE),
          Map.entry("line_p0", PRESSURE),
          Map.entry("line_slope", MASS_FLOW_PER_PRESSURE),
          Map.entry("collector_rate", MASS_FLOW),
          Map.entry("pumping_speed", VOLUME_FLOW),
          Map.entry("heat_capacity_vessel", HEAT_CAPACITY),
          Map.entry("heat_capacity_frozen", HEAT_CAPACITY),
          Map.entry("latent", SPECIFIC_ENERGY),
          Map.entry("k0", PER_TIME),
          Map.entry("Ea", MOLAR_ENERGY),
          Map.entry("c0", FRACTION),
          Map.entry("c_eq", FRACTION),
          Map.entry("target", FRACTION),
          Map.entry("dried_share", FRACTION),
          Map.entry("ramp", TEMPERATURE_RATE),
          Map.entry("hold_time", TIME),
          Map.entry("run_sd_kv", FRACTION),
          Map.entry("run_sd_rp", FRACTION),
          Map.entry("vessel_sd_kv", FRACTION),
          Map.entry("vessel_sd_rp", FRACTION),
          Map.entry("vessel_sd_fill", FRACTION),
          Map.entry("count", NUMBER),
          Map.entry("per_class", NUMBER),
          Map.entry("discharge", NUMBER),
          Map.entry("gamma", NUMBER),
          Map.entry("gt_k", NUMBER));

  private CaseKeys() {}

  static Optional<QuantityKind> kindOf(String key) {
    return Optional.ofNullable(KINDS.get(key));
  }
}
