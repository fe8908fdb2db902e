import * as medium from "@sillwood/science/medium";
import { type Rule, rule, ruleOn } from "../src/rules.ts";

const percent = (share: number): number => 100 * share;
const percents = (range: readonly number[]): readonly number[] => range.map(percent);
type OneOrMany = number | readonly number[];
const each = (values: OneOrMany, of: (value: number) => unknown): unknown =>
  typeof values === "number" ? of(values) : values.map(of);

/** The treatment that does best, or all that do equally well. */
function best(treatments_C: readonly number[], of: (rootZone_C: number) => number): OneOrMany {
  const most = Math.max(...treatments_C.map(of));
  const winners = treatments_C.filter((each) => of(each) > most - 1e-9);
  return winners.length === 1 ? (winners[0] as number) : winners;
}

const ratios = (key: string): readonly Rule[] =>
  [1, 2, 3].map((day) =>
    ruleOn<Readonly<Record<string, readonly number[]>>>(
      `ratio_day${day}`,
      [key],
      (v) => medium.sharesOfFirst(v[key] as readonly number[])[day],
    ),
  );

type Charge = {
  readonly rate_lb_per_yd3: number;
  readonly N_frac: number;
  readonly pot_mL: number;
  readonly plant_uptake_mg_per_day: number;
};
const chargeNeeds = ["rate_lb_per_yd3", "N_frac", "pot_mL", "plant_uptake_mg_per_day"] as const;
const charge = (v: Charge) =>
  medium.starterCharge({
    rate_kg_m3: medium.metricRate_kg_m3(v.rate_lb_per_yd3),
    nitrogen_frac: v.N_frac,
    medium_mL: v.pot_mL,
    uptake_mg_d: v.plant_uptake_mg_per_day,
  });

/** Rows on plants, roots, warmth and what a medium becomes. */
export const plantRules: readonly Rule[] = [
  rule("biomass_ratio", ["volume_ratio", "exponent"], (v) =>
    medium.biomassRatio({ volumeRatio: v.volume_ratio, exponent: v.exponent }),
  ),
  rule("max_unrestricted_biomass_g", ["pot_volume_L"], (v) =>
    medium.unrestrictedMass_g(1000 * v.pot_volume_L),
  ),
  ruleOn<{ treatments_C: readonly number[] }>("max_shoot_dry_weight_at_C", ["treatments_C"], (v) =>
    best(v.treatments_C, (at) => medium.rootZoneGrowth(at).shoot_frac),
  ),
  ruleOn<{ treatments_C: readonly number[] }>("max_fruit_weight_at_C", ["treatments_C"], (v) =>
    best(v.treatments_C, (at) => medium.rootZoneGrowth(at).fruit_frac),
  ),
  ruleOn<{ T_C: OneOrMany }>("class", ["T_C"], (v) => each(v.T_C, medium.rootZoneClass)),
  rule(
    "T_after_C",
    [
      "pot_medium_mL",
      "bulk_density_g_mL",
      "theta_before",
      "T_medium_C",
      "water_mL",
      "T_water_C",
      "solids_heat_J_g_K",
    ],
    (v) =>
      medium.pouredTemperature_C({
        medium_mL: v.pot_medium_mL,
        bulkDensity_g_mL: v.bulk_density_g_mL,
        water_frac: v.theta_before,
        medium_C: v.T_medium_C,
        poured_mL: v.water_mL,
        water_C: v.T_water_C,
        solidsHeat_J_g_K: v.solids_heat_J_g_K,
      }),
  ),
  ...ratios("gs_mmol_m2_s"),
  ...ratios("Pn_umol_m2_s"),
  ruleOn<{ waterlogged_h: readonly number[] }>("yield_loss_pct_range", ["waterlogged_h"], (v) => {
    const losses = v.waterlogged_h.map(medium.waterloggingLoss);
    return percents([
      Math.min(...losses.map(({ low_frac }) => low_frac)),
      Math.max(...losses.map(({ high_frac }) => high_frac)),
    ]);
  }),
  ruleOn<{ treatments: readonly string[] }>("survival_difference", ["treatments"], (v) =>
    medium.survivalDifference(v.treatments),
  ),
  rule("psi_start_MPa", ["hours"], () => medium.unwateredPotential_kPa(0) / 1000),
  rule("psi_end_MPa", ["hours"], (v) => medium.unwateredPotential_kPa(v.hours) / 1000),
  rule(
    "cc_after_pct",
    ["cc_before_pct", "loss_points"],
    // The loss is what a wholly dried peat loses: our function holds that figure itself.
    (v) =>
      percent(medium.rewettedWater_frac({ water_frac: v.cc_before_pct / 100, dried_frac: 1, peat_frac: 1 })),
  ),
  rule("air_space_end_pct_if_points", ["air_space_start_pct", "container_capacity_start_pct"], (v) =>
    percent(
      medium.agedBark({
        air_frac: v.air_space_start_pct / 100,
        water_frac: v.container_capacity_start_pct / 100,
      }).air_frac,
    ),
  ),
  rule("container_capacity_end_pct_if_points", ["air_space_start_pct", "container_capacity_start_pct"], (v) =>
    percent(
      medium.agedBark({
        air_frac: v.air_space_start_pct / 100,
        water_frac: v.container_capacity_start_pct / 100,
      }).water_frac,
    ),
  ),
  rule("air_space_pct_range", ["n_blends"], (v) =>
    v.n_blends === medium.blendsSeen.blends_n ? percents(medium.blendsSeen.air_frac) : undefined,
  ),
  rule("container_capacity_pct_range", ["n_blends"], (v) =>
    v.n_blends === medium.blendsSeen.blends_n ? percents(medium.blendsSeen.water_frac) : undefined,
  ),
  rule("bulk_density_g_cm3_range", ["n_blends"], (v) =>
    v.n_blends === medium.blendsSeen.blends_n ? medium.blendsSeen.bulkDensity_g_mL : undefined,
  ),
  ruleOn<{ rate_lb_per_yd3: OneOrMany }>("rate_kg_per_m3", ["rate_lb_per_yd3"], (v) =>
    each(v.rate_lb_per_yd3, medium.metricRate_kg_m3),
  ),
  rule("N_mg_per_L_medium", chargeNeeds, (v) => charge(v).nitrogen_mg_L),
  rule("N_mg_in_pot", chargeNeeds, (v) => charge(v).nitrogen_mg),
  rule("days_supply_without_leaching", chargeNeeds, (v) => charge(v).lasts_d),
  ruleOn<{ air: OneOrMany; total_porosity: number }>("Ds_over_D0", ["air", "total_porosity"], (v) =>
    each(v.air, (air_frac) => medium.oxygenSpread({ air_frac, porosity_frac: v.total_porosity })),
  ),
  rule(
    "root_volume_frac",
    ["root_dry_g", "root_dry_matter_frac", "root_density_g_mL", "fill_volume_mL"],
    (v) =>
      medium.rootVolume_frac({
        rootDry_g: v.root_dry_g,
        rootDryMatter_frac: v.root_dry_matter_frac,
        rootDensity_g_mL: v.root_density_g_mL,
        medium_mL: v.fill_volume_mL,
      }),
  ),
  ruleOn<{ root_fraction_kept: number; gamma: number; tau_days: number; t_days: OneOrMany }>(
    "relative_water_use",
    ["root_fraction_kept", "gamma", "tau_days", "t_days"],
    (v) =>
      each(v.t_days, (since_d) =>
        medium.rootLimitedUse_frac({
          rootsKept_frac: v.root_fraction_kept,
          exponent: v.gamma,
          regrowth_d: v.tau_days,
          since_d,
        }),
      ),
  ),
  rule(
    "min_volume_mL",
    ["water_use_mL_per_day", "days_between_waterings", "available_water_frac", "allowed_depletion"],
    (v) =>
      medium.smallestPot_mL({
        use_g_d: v.water_use_mL_per_day,
        between_d: v.days_between_waterings,
        available_frac: v.available_water_frac,
        allowed_frac: v.allowed_depletion,
      }),
  ),
];
