import * as medium from "@sillwood/science/medium";
import { leachingRequirement_frac } from "@sillwood/science/water";
import { type Rule, rule, ruleOn } from "../src/rules.ts";

const lineNeeds = ["threshold_dS_m", "slope_pct_per_dS_m"] as const;
type Line = { readonly [Name in (typeof lineNeeds)[number]]: number };
const line = (v: Line) => ({
  threshold_mS_cm: v.threshold_dS_m,
  slope_per_mS_cm: v.slope_pct_per_dS_m / 100,
});

/** How far a line has fallen stands in the key: ECe_at_25_pct_decline_dS_m. */
const atDecline = (decline_pct: number): Rule =>
  rule(`ECe_at_${decline_pct}_pct_decline_dS_m`, lineNeeds, (v) =>
    medium.saltAtDecline_mS_cm({ ...line(v), decline_frac: decline_pct / 100 }),
  );

/** For one value or each of a list. */
const each = (values: unknown, of: (value: number) => unknown): unknown =>
  Array.isArray(values) ? values.map((value) => of(value as number)) : of(values as number);

type OneOrMany = number | readonly number[];

const methodRules = (
  [
    ["1to2", "one to two"],
    ["SME", "saturated"],
    ["PourThru", "pour-through"],
  ] as const
).flatMap(([key, method], _at, all) => [
  ruleOn<{ EC_mS_cm: OneOrMany }>(`class_${key}`, ["EC_mS_cm"], (v) =>
    each(v.EC_mS_cm, (ec_mS_cm) => medium.saltClass({ ec_mS_cm, method })),
  ),
  ...all
    .filter(([other]) => other !== key)
    .map(([other, wanted]) =>
      ruleOn<Readonly<Record<string, OneOrMany>>>(`EC_${other}_mS_cm`, [`EC_${key}_mS_cm`], (v) =>
        each(v[`EC_${key}_mS_cm`], (ec_mS_cm) => medium.convertedSalt_mS_cm({ ec_mS_cm, method, wanted })),
      ),
    ),
]);

const steadyNeeds = [
  "water_at_capacity_mL",
  "refill_mL",
  "leaching_fraction",
  "EC_in_mS_cm",
  "leaching_efficiency",
] as const;
const steady = (v: { readonly [Name in (typeof steadyNeeds)[number]]: number }) =>
  medium.steadySalt({
    waterEc_mS_cm: v.EC_in_mS_cm,
    capacityWater_mL: v.water_at_capacity_mL,
    refill_mL: v.refill_mL,
    leaching_frac: v.leaching_fraction,
    leachingEfficiency: v.leaching_efficiency,
  });

/** Rows on salts: responses, methods, leaching and flushes. */
export const saltRules: readonly Rule[] = [
  ruleOn<Line & { ECe_dS_m: OneOrMany }>("relative_yield_pct", ["ECe_dS_m", ...lineNeeds], (v) =>
    each(v.ECe_dS_m, (saturated_mS_cm) => 100 * medium.saltYield_frac({ ...line(v), saturated_mS_cm })),
  ),
  ...[0, 10, 25, 50, 75, 90, 100].map(atDecline),
  ruleOn<{ ECe_dS_m: OneOrMany }>("ECw_dS_m", ["ECe_dS_m"], (v) =>
    each(v.ECe_dS_m, medium.waterForExtract_mS_cm),
  ),
  ruleOn<{ ECw_dS_m: OneOrMany; ECe_dS_m: number }>("leaching_requirement", ["ECw_dS_m", "ECe_dS_m"], (v) =>
    each(v.ECw_dS_m, (waterEc_mS_cm) =>
      leachingRequirement_frac({ waterEc_mS_cm, saltThreshold_mS_cm: v.ECe_dS_m }),
    ),
  ),
  rule("applied_water_mm", ["leaching_requirement", "crop_ET_mm"], (v) =>
    medium.appliedWithLeaching_mm({ used_mm: v.crop_ET_mm, leaching_frac: v.leaching_requirement }),
  ),
  ...methodRules,
  rule("ratio", ["total_porosity", "container_capacity"], (v) =>
    medium.pourThroughRatio({ porosity_frac: v.total_porosity, water_frac: v.container_capacity }),
  ),
  rule("ratio", ["total_porosity", "sample_theta"], (v) =>
    medium.pasteRatio({ porosity_frac: v.total_porosity, water_frac: v.sample_theta }),
  ),
  ruleOn<{ EC_SME_mS_cm: OneOrMany }>("rating", ["EC_SME_mS_cm"], (v) =>
    each(v.EC_SME_mS_cm, medium.saltRating),
  ),
  rule("tds_mg_L", ["EC_mS_cm", "factor"], (v) =>
    medium.dissolved_mg_L({ ec_mS_cm: v.EC_mS_cm, saltFactor: v.factor }),
  ),
  rule(
    "leach_water_cups",
    ["pot_volume_cups", "multiple", "mL_per_US_cup"],
    (v) =>
      medium.leachByRule_mL({ medium_mL: v.pot_volume_cups * v.mL_per_US_cup, volumes: v.multiple }) /
      v.mL_per_US_cup,
  ),
  rule(
    "leach_water_L",
    ["pot_volume_cups", "multiple", "mL_per_US_cup"],
    (v) =>
      medium.leachByRule_mL({ medium_mL: v.pot_volume_cups * v.mL_per_US_cup, volumes: v.multiple }) / 1000,
  ),
  rule(
    "EC_after_mS_cm",
    ["EC0_mS_cm", "EC_in_mS_cm", "flush_mL", "water_at_capacity_mL", "leaching_efficiency"],
    (v) =>
      medium.flushedSalt_mS_cm({
        before_mS_cm: v.EC0_mS_cm,
        waterEc_mS_cm: v.EC_in_mS_cm,
        flush_mL: v.flush_mL,
        capacityWater_mL: v.water_at_capacity_mL,
        leachingEfficiency: v.leaching_efficiency,
      }),
  ),
  rule(
    /^(flush_mL|flush_volume_mL|V_flush_mL)$/,
    ["EC0_mS_cm", "EC_in_mS_cm", "EC_goal_mS_cm", "water_at_capacity_mL", "leaching_efficiency"],
    (v) =>
      medium.flushPlan({
        before_mS_cm: v.EC0_mS_cm,
        goal_mS_cm: v.EC_goal_mS_cm,
        waterEc_mS_cm: v.EC_in_mS_cm,
        capacityWater_mL: v.water_at_capacity_mL,
        leachingEfficiency: v.leaching_efficiency,
      }).total_mL,
  ),
  rule("EC_pore_at_capacity_mS_cm", steadyNeeds, (v) => steady(v).pore_mS_cm),
  rule("EC_mean_leachate_mS_cm", steadyNeeds, (v) => steady(v).leachate_mS_cm),
  rule(
    "waterings",
    [
      "water_at_capacity_mL",
      "refill_mL",
      "EC_in_mS_cm",
      "EC_start_mS_cm",
      "pore_limit_at_capacity_mS_cm",
      "uptake_fraction",
    ],
    (v) =>
      medium.wateringsFromBelow_n({
        capacityWater_mL: v.water_at_capacity_mL,
        refill_mL: v.refill_mL,
        waterEc_mS_cm: v.EC_in_mS_cm,
        pore_mS_cm: v.EC_start_mS_cm,
        limit_mS_cm: v.pore_limit_at_capacity_mS_cm,
        uptake_frac: v.uptake_fraction,
      }),
  ),
  rule(
    "leaching_fraction_pct",
    ["leachate_mL", "applied_mL"],
    (v) => 100 * medium.leachedShare_frac({ leachate_mL: v.leachate_mL, poured_mL: v.applied_mL }),
  ),
];
