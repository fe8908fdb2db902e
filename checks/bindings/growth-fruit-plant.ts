import * as growth from "@sillwood/science/growth";
import { type Alias, alias, type Rule, rule } from "../src/rules.ts";

const clockNeeds = ["temp_C", "Tb_C", "To1_C", "To2_C", "Tm_C"] as const;

const rateRules = [
  rule("thermal_days_per_day", clockNeeds, (v) =>
    growth.thermalRate_frac({
      air_C: v.temp_C,
      base_C: v.Tb_C,
      optimumLow_C: v.To1_C,
      optimumHigh_C: v.To2_C,
      max_C: v.Tm_C,
    }),
  ),
  rule("days_per_node", ["temp_C", "Tb_C", "plastochron_degC_day"], (v) =>
    growth.daysForSum_d({ thermalTime_Cd: v.plastochron_degC_day, air_C: v.temp_C, base_C: v.Tb_C }),
  ),
  rule("min_days", ["Rmax_per_day"], (v) => growth.shortestTime_d(v.Rmax_per_day)),
  rule(/^mean_temp(_if_base\d+)?_C$/, ["thermal_sum_degC_day", "days", "base_C"], (v) =>
    growth.meanTemperatureOfSum_C({
      thermalTime_Cd: v.thermal_sum_degC_day,
      days_d: v.days,
      base_C: v.base_C,
    }),
  ),
];

const seedRules = [
  rule("days_to_first_radicle", ["temp_C", "base_C", "thermal_sum_degC_day"], (v) =>
    growth.daysForSum_d({ thermalTime_Cd: v.thermal_sum_degC_day, air_C: v.temp_C, base_C: v.base_C }),
  ),
  rule(
    "days_to_emergence",
    ["soil_temp_C", "base_C", "thermal_sum_degC_day", "rate_plateau_from_C"],
    (v) =>
      growth.emergence({
        medium_C: v.soil_temp_C,
        emergenceBase_C: v.base_C,
        emergence_Cd: v.thermal_sum_degC_day,
        emergencePlateau_C: v.rate_plateau_from_C,
      }).days_d ?? undefined,
  ),
  rule(
    "emerges",
    ["soil_temp_C", "base_C"],
    (v) => growth.emergence({ medium_C: v.soil_temp_C, emergenceBase_C: v.base_C }).emerges,
  ),
  rule("emerges", ["soil_temp_C"], (v) => growth.emergence({ medium_C: v.soil_temp_C }).emerges),
  rule("normal_seedlings_pct", ["soil_temp_C"], (v) => 100 * growth.germinatedShare_frac(v.soil_temp_C)),
  rule("seeds", ["wanted", "success_probability", "certainty"], (v) =>
    growth.seedsToSow_n({
      wanted_n: v.wanted,
      success_frac: v.success_probability,
      certainty_frac: v.certainty,
    }),
  ),
];

const leafRules = [
  rule("area_through_origin_cm2", ["length_cm", "width_cm"], (v) => growth.leafArea_cm2(v)),
  rule("area_with_intercept_cm2", ["length_cm", "width_cm"], (v) => growth.leafAreaWithIntercept_cm2(v)),
  rule("area_through_origin_cm2", ["leaf_dry_mass_g", "through_origin_cm2_per_g"], (v) =>
    growth.leafAreaFromDryMass_cm2({
      leafDryMass_g: v.leaf_dry_mass_g,
      specificLeafArea_cm2_g: v.through_origin_cm2_per_g,
    }),
  ),
  rule("area_with_intercept_cm2", ["leaf_dry_mass_g", "intercept_cm2", "slope_cm2_per_g"], (v) =>
    growth.leafAreaFromDryMass_cm2({
      leafDryMass_g: v.leaf_dry_mass_g,
      specificLeafArea_cm2_g: v.slope_cm2_per_g,
      intercept_cm2: v.intercept_cm2,
    }),
  ),
  rule("leaf_mass_per_area_g_m2", ["specific_leaf_area_cm2_per_g"], (v) =>
    growth.leafMassPerArea_g_m2(v.specific_leaf_area_cm2_per_g),
  ),
];

export const growingPlantAliases: readonly Alias[] = [
  alias("Tb_C", "base_C"),
  alias("temp_C", "soil_temp_C"),
  alias("thermal_sum_degC_day", "plastochron_degC_day"),
];

export const growingPlantRules: readonly Rule[] = [...rateRules, ...seedRules, ...leafRules];
