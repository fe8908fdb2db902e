import * as fruit from "@sillwood/science/fruit";
import { type SpeciesGroup, speciesGroups } from "@sillwood/science/growth";
import { type Alias, alias, type Rule, rule, ruleOn } from "../src/rules.ts";

const PPM_OF = { mg_per_g: 1000, mg_per_100g: 10, g_per_g: 1e6 } as const;

/** Contents are printed in four units: all become µg/g, for capsaicin, its companions and their sum. */
const contentAliases: readonly Alias[] = (
  ["capsaicin", "dihydrocapsaicin", "nordihydrocapsaicin", "capsaicinoids"] as const
).flatMap((name) =>
  (Object.keys(PPM_OF) as (keyof typeof PPM_OF)[]).map((unit) =>
    alias(`${name}_ppm`, `${name}_${unit}`, (value) => value * PPM_OF[unit]),
  ),
);

const scoville = (content_ug_g: number, factor = 16) => fruit.scoville({ content_ug_g, perPpm: factor });
const DRY = "moisture_factor";
const onFresh = (dry: number, factor: number) => fruit.onFreshBasis({ onDry: dry, freshPerDry_frac: factor });

/** The official weights hold where three capsaicinoids are given and no single factor. */
const heatRules: readonly Rule[] = [
  rule("shu", ["capsaicin_ppm", "factor"], (v) => scoville(v.capsaicin_ppm, v.factor)),
  rule("shu", ["capsaicinoids_ppm", "factor"], (v) => scoville(v.capsaicinoids_ppm, v.factor)),
  rule("shu", ["capsaicin_ppm", "dihydrocapsaicin_ppm", "factor"], (v) =>
    scoville(v.capsaicin_ppm + v.dihydrocapsaicin_ppm, v.factor),
  ),
  rule("shu", ["capsaicin_ppm", "dihydrocapsaicin_ppm", "nordihydrocapsaicin_ppm"], (v) =>
    fruit.scovilleWeighted({
      capsaicin_ug_g: v.capsaicin_ppm,
      dihydrocapsaicin_ug_g: v.dihydrocapsaicin_ppm,
      nordihydrocapsaicin_ug_g: v.nordihydrocapsaicin_ppm,
    }),
  ),
  rule("shu", ["capsaicin_ppm", "dihydrocapsaicin_ppm"], (v) =>
    scoville(v.capsaicin_ppm + v.dihydrocapsaicin_ppm),
  ),
  rule(/^shu_(printed|if_mg_per_g_dry)$/, ["capsaicin_ppm", "dihydrocapsaicin_ppm"], (v) =>
    scoville(v.capsaicin_ppm + v.dihydrocapsaicin_ppm),
  ),
  rule("shu_dry", ["capsaicinoids_dry_mg_per_100g", "factor"], (v) =>
    scoville(v.capsaicinoids_dry_mg_per_100g * PPM_OF.mg_per_100g, v.factor),
  ),
  rule("shu_fresh", ["shu_dry", DRY], (v) => onFresh(v.shu_dry, v.moisture_factor)),
  rule("capsaicin_fresh_mg_per_100g", ["capsaicin_dry_mg_per_100g", DRY], (v) =>
    onFresh(v.capsaicin_dry_mg_per_100g, v.moisture_factor),
  ),
  rule("dihydrocapsaicin_fresh_mg_per_100g", ["dihydrocapsaicin_dry_mg_per_100g", DRY], (v) =>
    onFresh(v.dihydrocapsaicin_dry_mg_per_100g, v.moisture_factor),
  ),
  rule("capsaicinoids_fresh_mg_per_100g", ["capsaicinoids_dry_mg_per_100g", DRY], (v) =>
    onFresh(v.capsaicinoids_dry_mg_per_100g, v.moisture_factor),
  ),
  rule(
    "capsaicinoids_dry_mg_per_100g",
    ["capsaicin_dry_mg_per_100g", "dihydrocapsaicin_dry_mg_per_100g"],
    (v) => v.capsaicin_dry_mg_per_100g + v.dihydrocapsaicin_dry_mg_per_100g,
  ),
  ruleOn<{ shu: number; class_upper_bound_SHU: Readonly<Record<string, number>> }>(
    "heat_class",
    ["shu", "class_upper_bound_SHU"],
    (v) => fruit.heatClass({ shu: v.shu, ends: Object.values(v.class_upper_bound_SHU) }),
  ),
  rule("heat_class", ["shu"], (v) => fruit.heatClass({ shu: v.shu })),
];

const stand = [
  "source_g_per_d",
  "vegetative_sink_g_per_d",
  "flowers_per_d",
  "potential_fruit_dry_mass_g",
] as const;
const standOf = (v: { readonly [K in (typeof stand)[number] | "set_threshold"]: number }) => ({
  source_g_d: v.source_g_per_d,
  vegetative_g_d: v.vegetative_sink_g_per_d,
  flowers_per_d: v.flowers_per_d,
  dryMassFull_g: v.potential_fruit_dry_mass_g,
  setThreshold: v.set_threshold,
});
const run = [...stand, "set_threshold", "duration_d", "days"] as const;
const runOf = (v: { readonly [K in (typeof run)[number]]: number }) =>
  fruit.fruitSetRun({ ...standOf(v), toRipe_d: v.duration_d, flowering_d: v.days });

const loadRules: readonly Rule[] = [
  rule("fruits_set", run, (v) => runOf(v).fruits_n),
  rule("fruit_set_pct", run, (v) => 100 * runOf(v).set_frac),
  rule("mean_fruit_dry_mass_g", run, (v) => runOf(v).dryMass_g),
  rule("fruit_set_pct", [...stand, "set_threshold"], (v) => 100 * fruit.steadySet_frac(standOf(v))),
  rule(
    "dry_matter_pct",
    ["pod_age_d", "dm_final_pct", "dm_extra_pct", "decay", "fruit_duration_d"],
    (v) =>
      100 *
      fruit.greenDryMatter_frac({
        age_d: v.pod_age_d,
        toRipe_d: v.fruit_duration_d,
        dryFinal_frac: v.dm_final_pct / 100,
        dryExtra_frac: v.dm_extra_pct / 100,
        dryDecay: v.decay,
      }),
  ),
  rule("dry_matter_pct", ["pod_age_d"], (v) => 100 * fruit.greenDryMatter_frac({ age_d: v.pod_age_d })),
  rule("crown_area_m2", ["crown_diameter_m", "leaf_area_cm2", "k"], (v) => crown(v).crownArea_m2),
  rule("lai", ["crown_diameter_m", "leaf_area_cm2", "k"], (v) => crown(v).lai),
  rule("intercepted_fraction", ["crown_diameter_m", "leaf_area_cm2", "k"], (v) => crown(v).caught_frac),
  rule(
    "source_g_per_d",
    ["crown_diameter_m", "leaf_area_cm2", "k", "dli_mol_m2_d", "MJ_per_mol", "lue_g_per_MJ"],
    (v) => {
      const { crownArea_m2, caught_frac } = crown(v);
      return fruit.source_g_d({
        lightCaught_mol_d: v.dli_mol_m2_d * crownArea_m2 * caught_frac,
        photonEnergy_MJ_mol: v.MJ_per_mol,
        lightUse_g_MJ: v.lue_g_per_MJ,
      });
    },
  ),
  rule(
    "fruits_carried",
    ["source_g_per_d", "fruit_share", "fruit_fresh_mass_g", "dry_matter_fraction", "anthesis_to_ripe_d"],
    (v) =>
      fruit.fruitsToKeep({
        source_g_d: v.source_g_per_d,
        fruitShare_frac: v.fruit_share,
        dryMassFull_g: v.fruit_fresh_mass_g * v.dry_matter_fraction,
        toRipe_d: v.anthesis_to_ripe_d,
      }).fruits_n,
  ),
  rule("lue_g_per_MJ_PAR", ["bm_e_kg_ha_per_MJ_m2"], (v) => fruit.lightUse_g_MJ(v.bm_e_kg_ha_per_MJ_m2)),
];

const crown = (v: {
  readonly crown_diameter_m: number;
  readonly leaf_area_cm2: number;
  readonly k: number;
}) =>
  fruit.crownCatch({
    crownWidth_m: v.crown_diameter_m,
    leafArea_m2: v.leaf_area_cm2 / 1e4,
    extinction: v.k,
  });

const over = (set: number, setOther: number) => fruit.setRatio({ set, setOther });
const pollenRules: readonly Rule[] = [
  rule("control_over_open", ["control_pct", "open_pct"], (v) => over(v.control_pct, v.open_pct)),
  rule("hand_over_open", ["hand_pct", "open_pct"], (v) => over(v.hand_pct, v.open_pct)),
  rule("hand_over_control", ["hand_pct", "control_pct"], (v) => over(v.hand_pct, v.control_pct)),
  ruleOn<{ bee_pct: readonly number[]; self_pct: readonly number[] }>("ratio", ["bee_pct", "self_pct"], (v) =>
    v.bee_pct.map((each, row) => over(each, v.self_pct[row] as number)),
  ),
  rule("relative_0_1", ["temp_C", "Tmin_C", "Topt_C", "Tmax_C"], (v) =>
    fruit.pollenRate_frac({ air_C: v.temp_C, base_C: v.Tmin_C, optimum_C: v.Topt_C, max_C: v.Tmax_C }),
  ),
];

const speciesOf = (name: string) => speciesGroups.find((each) => name.endsWith(each));
const seedRules: readonly Rule[] = [
  ruleOn<{ female: string; male: string }>("code", ["female", "male"], (v) => {
    const mother: SpeciesGroup | undefined = speciesOf(v.female);
    const father = speciesOf(v.male);
    return mother && father ? fruit.crossResult({ mother, father }) : undefined;
  }),
  ruleOn<{ source: string }>("crossed_seed_pct", ["source"], () => 100 * beside().seed_frac),
  ruleOn<{ source: string }>(
    "fruits_with_at_least_one_crossed_seed_pct",
    ["source"],
    () => 100 * beside().fruit_frac,
  ),
];
const beside = () => fruit.crossing({ mother: "annuum", father: "annuum", distance_m: 0, kept: "none" });

const flagRules: readonly Rule[] = [
  ruleOn<{ capsaicin_ppm: number; dihydrocapsaicin_ppm: number; shu_as_printed: number }>(
    "flag",
    ["capsaicin_ppm", "dihydrocapsaicin_ppm", "shu_as_printed"],
    (v) =>
      fruit.printedHeat({ shu: v.shu_as_printed, content_ug_g: v.capsaicin_ppm + v.dihydrocapsaicin_ppm })
        .flag,
  ),
];

export const fruitAliases: readonly Alias[] = contentAliases;
export const fruitRules: readonly Rule[] = [
  ...heatRules,
  ...loadRules,
  ...pollenRules,
  ...seedRules,
  ...flagRules,
];
