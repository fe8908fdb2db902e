import * as medium from "@sillwood/science/medium";
import { type Alias, alias, type Rule, rule, ruleOn } from "../src/rules.ts";

const percent = (share: number): number => 100 * share;
const share = (value: number): number => value / 100;

/** A straight pot where a row says none: its shape does not matter to shares. */
const straight = (height_cm: number): medium.PotShape => ({
  form: "round",
  bottomLength_cm: 10,
  bottomWidth_cm: 10,
  topLength_cm: 10,
  topWidth_cm: 10,
  innerHeight_cm: height_cm,
});
const square = (bottom_cm: number, top_cm: number, height_cm: number): medium.PotShape => ({
  form: "rectangular",
  bottomLength_cm: bottom_cm,
  bottomWidth_cm: bottom_cm,
  topLength_cm: top_cm,
  topWidth_cm: top_cm,
  innerHeight_cm: height_cm,
});
const round = (bottom_cm: number, top_cm: number, height_cm: number): medium.PotShape => ({
  ...straight(height_cm),
  bottomLength_cm: 2 * bottom_cm,
  bottomWidth_cm: 2 * bottom_cm,
  topLength_cm: 2 * top_cm,
  topWidth_cm: 2 * top_cm,
});

const curveNeeds = ["theta_r", "theta_s", "alpha_per_cm", "n"] as const;
type CurveValues = { readonly [Name in (typeof curveNeeds)[number]]: number };
const curve = (v: CurveValues): medium.RetentionCurve => ({
  residualWater_frac: v.theta_r,
  saturatedWater_frac: v.theta_s,
  alpha_per_cm: v.alpha_per_cm,
  steepness: v.n,
});
const drained = (v: CurveValues & { readonly fill_cm: number }, under: medium.Underneath = {}) =>
  medium.drainedPot({ ...straight(v.fill_cm), ...curve(v), fill_cm: v.fill_cm, ...under });

type Ensemble = CurveValues & {
  readonly fill_cm: number;
  readonly ensemble: readonly { readonly n: number; readonly alpha_per_cm: number }[];
};
const airs = (v: Ensemble): readonly number[] =>
  v.ensemble.map((member) => drained({ ...v, ...member }).air_frac);

const roundNeeds = ["bottom_radius_cm", "top_radius_cm", "inner_height_cm"] as const;
const boxNeeds = [
  "bottom_length_cm",
  "bottom_width_cm",
  "top_length_cm",
  "top_width_cm",
  "inner_height_cm",
] as const;
type Box = { readonly [Name in (typeof boxNeeds)[number]]: number };
const boxOf = (v: Box, form: medium.PotForm): medium.PotShape => ({
  form,
  bottomLength_cm: v.bottom_length_cm,
  bottomWidth_cm: v.bottom_width_cm,
  topLength_cm: v.top_length_cm,
  topWidth_cm: v.top_width_cm,
  innerHeight_cm: v.inner_height_cm,
});
/** An oval pot is told from a rectangular one in words only. */
const formIn = (what: string): medium.PotForm => (/\boval\b|\bellip/i.test(what) ? "oval" : "rectangular");

const room = (v: Box & { freeboard_cm: number; dose_mL: number; what: string }) =>
  medium.freeboardRoom({
    ...boxOf(v, formIn(v.what)),
    freeboard_cm: v.freeboard_cm,
    dose_mL: v.dose_mL,
  });
const roomNeeds = [...boxNeeds, "freeboard_cm", "dose_mL", "what"] as const;

const shapeRules: readonly Rule[] = [
  rule("fill_volume_mL", [...roundNeeds, "freeboard_cm"], (v) =>
    medium.potVolume_mL({
      ...round(v.bottom_radius_cm, v.top_radius_cm, v.inner_height_cm),
      fill_cm: v.inner_height_cm - v.freeboard_cm,
    }),
  ),
  ruleOn<Box & { freeboard_cm: number; what: string }>(
    "fill_volume_mL",
    [...boxNeeds, "freeboard_cm", "what"],
    (v) => medium.potVolume_mL({ ...boxOf(v, formIn(v.what)), fill_cm: v.inner_height_cm - v.freeboard_cm }),
  ),
  ruleOn("freeboard_volume_mL", roomNeeds, (v: Parameters<typeof room>[0]) => room(v).room_mL),
  ruleOn("splits", roomNeeds, (v: Parameters<typeof room>[0]) => room(v).pours_n),
];

const curveRules: readonly Rule[] = [
  rule("theta", [...curveNeeds, "suction_cm"], (v) =>
    medium.waterAtSuction_frac({ ...curve(v), suction_cm: v.suction_cm }),
  ),
  rule("container_capacity", [...curveNeeds, "fill_cm"], (v) => drained(v).water_frac),
  rule(/^air_space(_free|_flat)?$/, [...curveNeeds, "fill_cm"], (v) => drained(v).air_frac),
  rule(
    "air_space_in_saucer",
    [...curveNeeds, "fill_cm", "standing_water_cm"],
    (v) => drained(v, { standing_cm: v.standing_water_cm }).air_frac,
  ),
  rule(
    "air_space",
    [...curveNeeds, "fill_cm", "base_suction_cm"],
    (v) => drained(v, { baseSuction_cm: v.base_suction_cm }).air_frac,
  ),
  rule("air_space_tilted", [...curveNeeds, "fill_cm", "length_cm", "tilt_deg"], (v) =>
    medium.tiltedAir_frac({ ...curve(v), fill_cm: v.fill_cm, length_cm: v.length_cm, tilt_deg: v.tilt_deg }),
  ),
  ruleOn<Ensemble>("air_space_low", [...curveNeeds, "fill_cm", "ensemble"], (v) => Math.min(...airs(v))),
  ruleOn<Ensemble>("air_space_high", [...curveNeeds, "fill_cm", "ensemble"], (v) => Math.max(...airs(v))),
  rule("height_cm", [...curveNeeds, "air_limit"], (v) =>
    medium.wetLayer_cm({ ...curve(v), airWanted_frac: v.air_limit }),
  ),
  rule("air_capacity", curveNeeds, (v) => medium.waterClasses(curve(v)).air_frac),
  rule("easily_available_water", curveNeeds, (v) => medium.waterClasses(curve(v)).easy_frac),
  rule("water_buffer", curveNeeds, (v) => medium.waterClasses(curve(v)).buffer_frac),
  rule("cc_ratio", [...curveNeeds, "h1_cm", "h2_cm"], (v) => {
    const at = (fill_cm: number): number => drained({ ...v, fill_cm }).water_frac;
    return at(v.h2_cm) / at(v.h1_cm);
  }),
  rule("alpha_per_cm", [...roundNeeds, "fill_cm", "theta_r", "theta_s", "n", "measured_air_space"], (v) =>
    medium.alphaFromAir_per_cm({
      ...round(v.bottom_radius_cm, v.top_radius_cm, v.inner_height_cm),
      fill_cm: v.fill_cm,
      air_frac: v.measured_air_space,
      residualWater_frac: v.theta_r,
      saturatedWater_frac: v.theta_s,
      steepness: v.n,
    }),
  ),
  rule(
    "alpha_per_cm",
    [
      "theta_r",
      "theta_s",
      "n",
      "tall_bottom_radius_cm",
      "tall_top_radius_cm",
      "tall_inner_height_cm",
      "tall_fill_cm",
      "tall_air_pct",
    ],
    (v) =>
      medium.alphaFromAir_per_cm({
        ...round(v.tall_bottom_radius_cm, v.tall_top_radius_cm, v.tall_inner_height_cm),
        fill_cm: v.tall_fill_cm,
        air_frac: share(v.tall_air_pct),
        residualWater_frac: v.theta_r,
        saturatedWater_frac: v.theta_s,
        steepness: v.n,
      }),
  ),
  rule(
    "cell_air_pct",
    [...curveNeeds, "cell_bottom_side_cm", "cell_top_side_cm", "cell_inner_height_cm", "cell_fill_cm"],
    (v) =>
      percent(
        medium.drainedPot({
          ...square(v.cell_bottom_side_cm, v.cell_top_side_cm, v.cell_inner_height_cm),
          ...curve(v),
          fill_cm: v.cell_fill_cm,
        }).air_frac,
      ),
  ),
];

const porosityNeeds = ["air_space_pct", "container_capacity_pct"] as const;
const recordNeeds = [...porosityNeeds, "total_pore_space_pct"] as const;
type Record3 = { readonly [Name in (typeof recordNeeds)[number]]: number };
const refused = (v: Record3): boolean =>
  medium
    .screenPorosity({
      air_frac: share(v.air_space_pct),
      water_frac: share(v.container_capacity_pct),
      porosity_frac: share(v.total_pore_space_pct),
    })
    .some(({ level }) => level === "refuse");

const quickNeeds = ["volume_weight_g_L", "drained_density_g_mL"] as const;
const quick = (v: { readonly [Name in (typeof quickNeeds)[number]]: number }) =>
  medium.quickPorosity({ dryMass_g_L: v.volume_weight_g_L, drainedDensity_g_mL: v.drained_density_g_mL });

const porosityRules: readonly Rule[] = [
  rule(/^total_(porosity|pore_space)_pct$/, porosityNeeds, (v) =>
    percent(
      medium.totalPorosity_frac({
        air_frac: share(v.air_space_pct),
        water_frac: share(v.container_capacity_pct),
      }),
    ),
  ),
  rule("accept", recordNeeds, (v) => !refused(v)),
  rule("pore_space_pct", quickNeeds, (v) => percent(quick(v).porosity_frac)),
  rule("air_volume_pct", quickNeeds, (v) => percent(quick(v).air_frac)),
  rule("water_volume_pct", quickNeeds, (v) => percent(quick(v).water_frac)),
  // Pores hang on the dry mass alone; any drained weight of such a medium serves.
  rule("pore_space_from_regression_pct", ["volume_weight_g_L"], (v) =>
    percent(quick({ ...v, drained_density_g_mL: 0.7 }).porosity_frac),
  ),
  rule(
    "available_frac_of_pore_space",
    ["pore_space_water_filled_frac", "available_share_of_that_water"],
    (v) =>
      medium.availableOfPores_frac({
        poresFilled_frac: v.pore_space_water_filled_frac,
        availableOfWater_frac: v.available_share_of_that_water,
      }),
  ),
  rule("pot_volume_filled_L", ["bag_L", "potting_reference_pct"], (v) =>
    medium.potsFromBag_L({ bag_L: v.bag_L, packed_frac: share(v.potting_reference_pct) }),
  ),
  ruleOn<{
    parts_v: readonly number[];
    bulk_density_parts_g_mL: readonly number[];
    bulk_density_mix_g_mL: number;
  }>("shrinkage_frac", ["parts_v", "bulk_density_parts_g_mL", "bulk_density_mix_g_mL"], (v) =>
    medium.blendShrinkage_frac({
      parts_frac: v.parts_v,
      densities_g_mL: v.bulk_density_parts_g_mL,
      bulkDensity_g_mL: v.bulk_density_mix_g_mL,
    }),
  ),
];

type Packing = { readonly bag_L: number; readonly density_in_pot_pct_of_declared: readonly number[] };
const packed = (gives: string, pick: (densities: readonly number[]) => number): Rule =>
  ruleOn<Packing>(gives, ["bag_L", "density_in_pot_pct_of_declared"], (v) =>
    medium.potsFromBag_L({
      bag_L: v.bag_L,
      packed_frac: 100 / pick(v.density_in_pot_pct_of_declared),
    }),
  );

/** Rows on pots, curves and porosity. */
export const potRules: readonly Rule[] = [
  ...shapeRules,
  ...curveRules,
  packed("pot_volume_max_L", (densities) => Math.min(...densities)),
  packed("pot_volume_min_L", (densities) => Math.max(...densities)),
  ...porosityRules,
];

export const potAliases: readonly Alias[] = [
  alias("air_space_pct", /^(air_filled_pct|air_pct)$/),
  alias("container_capacity_pct", /^(water_holding_pct|water_pct)$/),
  alias("total_pore_space_pct", /^(pore_space_pct|total_porosity_pct|printed_total_pore_space_pct)$/),
];
