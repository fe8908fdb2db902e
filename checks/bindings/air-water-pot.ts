import * as chance from "@sillwood/science/chance";
import * as water from "@sillwood/science/water";
import { type Rule, rule, ruleOn } from "../src/rules.ts";

const share = (percent: number): number => percent / 100;

const climateNeeds = ["u2_m_s", "rhmin_pct", "h_m"] as const;
type Climate = { readonly [Name in (typeof climateNeeds)[number]]: number };
const climate = (v: Climate) => ({
  wind2m_m_s: v.u2_m_s,
  humidityMin_frac: share(v.rhmin_pct),
  height_m: v.h_m,
});

const crop = (gives: string, pick: (of: typeof water.sweetPepperCrop) => number): Rule =>
  ruleOn<{ crop: string }>(gives, ["crop"], (v) =>
    /pepper/.test(v.crop) ? pick(water.sweetPepperCrop) : undefined,
  );

type Stages = (typeof water.sweetPepperStages)[keyof typeof water.sweetPepperStages];
const stage = (gives: string, pick: (of: Stages) => number): Rule =>
  ruleOn<{ crop: string; variant: string }>(gives, ["crop", "variant"], (v) => {
    const stages = water.sweetPepperStages;
    return pick(/arid/.test(v.variant) ? stages["arid, long season"] : stages["Europe and Mediterranean"]);
  });

const cropRules = [
  crop("kc_ini", (of) => of.cropCoefficientInitial),
  crop("kc_mid", (of) => of.cropCoefficientMiddle),
  crop("kc_end", (of) => of.cropCoefficientEnd),
  crop("kcb_ini", (of) => of.basalInitial),
  crop("kcb_mid", (of) => of.basalMiddle),
  crop("kcb_end", (of) => of.basalEnd),
  crop("h_max_m", (of) => of.height_m),
  crop("p", (of) => of.depletion_frac),
  crop("zr_min_m", (of) => of.rootDepthMin_m),
  stage("ini_d", (of) => of.initial_d),
  stage("dev_d", (of) => of.development_d),
  stage("mid_d", (of) => of.middle_d),
  stage("late_d", (of) => of.late_d),
  stage("total_d", (of) => of.initial_d + of.development_d + of.middle_d + of.late_d),
  rule(/^kcb?(_mid|_end|_adj|_adjusted)?$/, ["kc_tab", ...climateNeeds], (v) =>
    water.adjustedCropCoefficient({ ...climate(v), cropCoefficient: v.kc_tab }),
  ),
  rule(/^kcb(_mid|_end|_adj|_adjusted)?$/, ["kcb_tab", ...climateNeeds], (v) =>
    water.adjustedCropCoefficient({ ...climate(v), cropCoefficient: v.kcb_tab }),
  ),
  rule(/^kc_?max$/, ["kcb", ...climateNeeds], (v) =>
    water.maximumCropCoefficient({ ...climate(v), basalCoefficient: v.kcb }),
  ),
  rule("kcb_dev", ["kcb_ini", "kcb_mid", "stage_fraction"], (v) =>
    between(v.kcb_ini, v.kcb_mid, v.stage_fraction),
  ),
  rule("kcb_late", ["kcb_mid", "kcb_end", "stage_fraction"], (v) =>
    between(v.kcb_mid, v.kcb_end, v.stage_fraction),
  ),
  rule("kr", ["tew_mm", "rew_mm", "de_mm"], (v) =>
    water.evaporationReduction({
      evaporated_mm: v.de_mm,
      totalEvaporable_mm: v.tew_mm,
      readilyEvaporable_mm: v.rew_mm,
    }),
  ),
  rule("ke", ["kr", "kc_max", "kcb", "few"], (v) =>
    water.evaporationCoefficient({
      evaporationReduction: v.kr,
      coefficientMax: v.kc_max,
      basalCoefficient: v.kcb,
      exposed_frac: v.few,
    }),
  ),
];

const between = (coefficientStart: number, coefficientEnd: number, stage_frac: number): number =>
  water.coefficientWithinStage({ coefficientStart, coefficientEnd, stage_frac });

const soilNeeds = ["theta_fc", "theta_wp", "zr_m", "p"] as const;
const soil = (v: { readonly [Name in (typeof soilNeeds)[number]]: number }) =>
  water.soilStore({
    fieldCapacity_frac: v.theta_fc,
    wiltingWater_frac: v.theta_wp,
    rootDepth_m: v.zr_m,
    depletionFreely_frac: v.p,
  });

const dryDownNeeds = ["taw_mm", "p", "eto_mm_d", "kc", "dr0_mm", "series_n"] as const;
const series = (v: { readonly [Name in (typeof dryDownNeeds)[number]]: number }) =>
  water.dryDown({
    store: v.taw_mm,
    depletionStart: v.dr0_mm,
    usePerDay: v.eto_mm_d * v.kc,
    threshold_frac: v.p,
    days_n: v.series_n,
  });

const threshold = (full: number, decline: number, stop: number): number =>
  water.useDeclineThreshold_frac({ fullWater_frac: full, declineWater_frac: decline, stopWater_frac: stop });

const storeRules = [
  rule("taw_mm", soilNeeds, (v) => soil(v).total_mm),
  rule("raw_mm", soilNeeds, (v) => soil(v).freely_mm),
  rule("ks", dryDownNeeds, (v) => series(v).stressCoefficients),
  rule("dr_mm", dryDownNeeds, (v) => series(v).depletions),
  rule("ks", ["taw_mm", "dr_mm", "p"], (v) =>
    water.stressCoefficient({ depletion_frac: v.dr_mm / v.taw_mm, threshold_frac: v.p }),
  ),
  rule("ks", ["taw_mm", "raw_mm", "dr_mm"], (v) =>
    water.stressCoefficient({ depletion_frac: v.dr_mm / v.taw_mm, threshold_frac: v.raw_mm / v.taw_mm }),
  ),
  rule("ks", ["r", "p_t"], (v) => water.stressCoefficient({ depletion_frac: v.r, threshold_frac: v.p_t })),
  rule("p", ["p_tab", "etc_mm_d"], (v) =>
    water.adjustedFieldDepletion_frac({ depletionTable_frac: v.p_tab, cropEt_mm_d: v.etc_mm_d }),
  ),
  rule("surface_m2", ["et_mL_d", "et_mm_d"], (v) =>
    water.surfaceOfDepth_m2({ water_g: v.et_mL_d, depth_mm: v.et_mm_d }),
  ),
  rule(
    "depth_m",
    ["et_L", "surface_m2"],
    (v) => water.depthOnSurface_mm({ water_g: v.et_L * 1000, surface_m2: v.surface_m2 }) / 1000,
  ),
  rule("evap_mm_d", ["evap_mL_d", "surface_m2"], (v) =>
    water.depthOnSurface_mm({ water_g: v.evap_mL_d, surface_m2: v.surface_m2 }),
  ),
  rule("p_hydrangea", ["vwc_full_assumed", "vwc_decline_hydrangea", "vwc_stop_hydrangea"], (v) =>
    threshold(v.vwc_full_assumed, v.vwc_decline_hydrangea, v.vwc_stop_hydrangea),
  ),
  rule("p_gardenia", ["vwc_full_assumed", "vwc_decline_gardenia", "vwc_stop_gardenia"], (v) =>
    threshold(v.vwc_full_assumed, v.vwc_decline_gardenia, v.vwc_stop_gardenia),
  ),
  rule("suction_top_kPa", ["pot_height_mm"], (v) => water.suctionAtHeight_kPa(v.pot_height_mm / 10)),
  rule(/^(taw|store)_g$/, ["volume_mL", "theta_cc", "theta_w"], (v) =>
    water.potStore_g({ medium_mL: v.volume_mL, drainedWater_frac: v.theta_cc, wiltingWater_frac: v.theta_w }),
  ),
  rule(/^(taw|store)_g$/, ["volume_L", "theta_cc", "theta_w"], (v) =>
    water.potStore_g({
      medium_mL: v.volume_L * 1000,
      drainedWater_frac: v.theta_cc,
      wiltingWater_frac: v.theta_w,
    }),
  ),
  rule(
    "pour_g",
    ["depletion_g", "lf_target"],
    (v) => water.pourFor({ depletion_g: v.depletion_g, leaching_frac: v.lf_target }).pour_g,
  ),
  rule(
    "leachate_g",
    ["depletion_g", "lf_target"],
    (v) => water.pourFor({ depletion_g: v.depletion_g, leaching_frac: v.lf_target }).leachate_g,
  ),
  rule("lr", ["ecw_dS_m", "ece_threshold_dS_m"], (v) =>
    water.leachingRequirement_frac({ waterEc_mS_cm: v.ecw_dS_m, saltThreshold_mS_cm: v.ece_threshold_dS_m }),
  ),
];

const leafNeeds = [
  "t_C",
  "rh_pct",
  "absorbed_shortwave_W_m2",
  "air_speed_m_s",
  "leaf_dimension_m",
  "gs_lower_mol_m2_s",
  "gs_upper_mol_m2_s",
  "free_convection_dT_C",
  "pressure_kPa",
] as const;
const leaf = (v: { readonly [Name in (typeof leafNeeds)[number]]: number }) =>
  water.leafTranspiration({
    air_C: v.t_C,
    humidity_frac: share(v.rh_pct),
    absorbed_W_m2: v.absorbed_shortwave_W_m2,
    airSpeed_m_s: v.air_speed_m_s,
    dimension_m: v.leaf_dimension_m,
    lowerStomata_mol_m2_s: v.gs_lower_mol_m2_s,
    upperStomata_mol_m2_s: v.gs_upper_mol_m2_s,
    leafAirDifference_C: v.free_convection_dT_C,
    pressure_kPa: v.pressure_kPa,
  });

const mediumNeeds = [
  "t_C",
  "rh_pct",
  "absorbed_shortwave_W_m2",
  "air_speed_m_s",
  "pot_diameter_m",
  "pressure_kPa",
] as const;
const medium = (v: { readonly [Name in (typeof mediumNeeds)[number]]: number }) =>
  water.mediumEvaporation({
    potDiameter_cm: v.pot_diameter_m * 100,
    air_C: v.t_C,
    humidity_frac: share(v.rh_pct),
    absorbed_W_m2: v.absorbed_shortwave_W_m2,
    airSpeed_m_s: v.air_speed_m_s,
    pressure_kPa: v.pressure_kPa,
  });

const leafRules = [
  rule("gb_heat_one_side_mol_m2_s", leafNeeds, (v) => leaf(v).boundary_mol_m2_s),
  rule("gv_mol_m2_s", leafNeeds, (v) => leaf(v).vapour_mol_m2_s),
  rule("g_radiative_one_side_mol_m2_s", leafNeeds, (v) => leaf(v).radiative_mol_m2_s),
  rule("transpiration_mmol_m2_s", leafNeeds, (v) => 1000 * leaf(v).transpiration_mol_m2_s),
  rule("transpiration_g_m2_h", leafNeeds, (v) => leaf(v).transpiration_g_m2_h),
  rule("pot_diameter_m", ["pot_diameter_cm"], (v) => v.pot_diameter_cm / 100),
  rule("pot_diameter_m", ["pot_diameter_mm"], (v) => v.pot_diameter_mm / 1000),
  rule(/^(evap|evaporation)_mm_d$/, mediumNeeds, (v) => medium(v).evaporation_mm_d),
  rule(/^(evap|evaporation)_g_d$/, mediumNeeds, (v) => medium(v).evaporation_g_d),
];

/** The pot's state before a step, as the table writes it. */
const stepNeeds = [
  "depletion_g",
  "ln_k",
  "drained_weight_g",
  "var_depletion",
  "var_ln_k",
  "var_drained",
  "driver",
  "dt_d",
  "sigma_day",
  "q_lnk",
  "q_drained_g",
  "biomass_drift_g_d",
] as const;
type StepValues = { readonly [Name in (typeof stepNeeds)[number]]: number };
const stepOf = (v: StepValues) =>
  water.depletionStep({
    belief: {
      mean: [v.depletion_g, v.ln_k, v.drained_weight_g],
      covariance: [
        [v.var_depletion, 0, 0],
        [0, v.var_ln_k, 0],
        [0, 0, v.var_drained],
      ],
    },
    driver_g_d: v.driver,
    length_d: v.dt_d,
    dayError_frac: v.sigma_day,
    lnUseWalk_sqrtd: v.q_lnk,
    drainedWalk_g_sqrtd: v.q_drained_g,
    drainedDrift_g_d: v.biomass_drift_g_d,
  });
const afterStep = (gives: string | RegExp, pick: (of: ReturnType<typeof stepOf>) => unknown): Rule =>
  rule(gives, stepNeeds, (v) => pick(stepOf(v)));

type Weighing = {
  readonly weight_g: number;
  readonly sigma_scale_g: number;
  readonly before_step: StepValues;
};
const weighed = (gives: string | RegExp, pick: (of: chance.LinearUpdate) => unknown): Rule =>
  ruleOn<Weighing>(gives, ["weight_g", "sigma_scale_g", "before_step"], (v) =>
    pick(
      chance.linearUpdate({
        belief: stepOf(v.before_step).belief,
        weights: [-1, 0, 1],
        value: v.weight_g,
        variance: v.sigma_scale_g ** 2,
      }),
    ),
  );

const beliefRules = [
  afterStep(/^use(_g)?$/, (of) => of.use_g),
  afterStep("depletion_g", (of) => of.belief.mean[0]),
  afterStep("ln_k", (of) => of.belief.mean[1]),
  afterStep("drained_weight_g", (of) => of.belief.mean[2]),
  afterStep("var_depletion", (of) => of.belief.covariance[0]?.[0]),
  afterStep(/^cov_(depletion_ln_?k|d_ln_?k|ln_?k_depletion)$/, (of) => of.belief.covariance[0]?.[1]),
  afterStep(/^cov_(depletion_drained|drained_depletion)$/, (of) => of.belief.covariance[0]?.[2]),
  afterStep(/^var_ln_?k$/, (of) => of.belief.covariance[1]?.[1]),
  afterStep("var_drained", (of) => of.belief.covariance[2]?.[2]),
  weighed("innovation_g", (of) => of.innovation),
  weighed("innovation_var", (of) => of.innovationVariance),
  weighed("gain_depletion", (of) => of.gain[0]),
  weighed("depletion_g", (of) => of.belief.mean[0]),
  weighed("ln_k", (of) => of.belief.mean[1]),
  weighed("drained_weight_g", (of) => of.belief.mean[2]),
  weighed("var_depletion", (of) => of.belief.covariance[0]?.[0]),
  weighed(/^var_ln_?k$/, (of) => of.belief.covariance[1]?.[1]),
  weighed("var_drained", (of) => of.belief.covariance[2]?.[2]),
];

type Look = {
  readonly mean_g: number;
  readonly var_g2: number;
  readonly threshold_g: number;
  readonly spread_g: number;
  readonly what: string;
};
const looked = (gives: string, pick: (of: chance.ProbitUpdate) => number): Rule =>
  ruleOn<Look>(gives, ["mean_g", "var_g2", "threshold_g", "spread_g", "what"], (v) =>
    pick(
      chance.probitUpdate({
        mean: v.mean_g,
        variance: v.var_g2,
        threshold: v.threshold_g,
        spread: v.spread_g,
        // The table tells a yes from a no only in its words.
        yes: !/\bnot\b|\bno\b/.test(v.what),
      }),
    ),
  );

const outlookNeeds = ["remaining_g", "k_median_g_d", "sd_ln_k", "driver"] as const;
const outlook = (v: { readonly [Name in (typeof outlookNeeds)[number]]: number }) => ({
  remaining_g: v.remaining_g,
  use_g_d: v.k_median_g_d * v.driver,
  sdLnUse: v.sd_ln_k,
});

type Forecasts = {
  readonly mu: readonly number[];
  readonly sd: readonly number[];
  readonly observed: readonly number[];
};
const crps = (gives: string, i: number): Rule =>
  ruleOn<Forecasts>(gives, ["mu", "sd", "observed"], (v) => {
    const [mean, sd, observed] = [v.mu[i], v.sd[i], v.observed[i]];
    if (mean === undefined || sd === undefined || observed === undefined) return undefined;
    return chance.crpsOfNormal({ mean, sd, observed });
  });

const dateRules = [
  looked("probability", (of) => of.probability),
  looked("mean_g", (of) => of.mean),
  looked("var_g2", (of) => of.variance),
  rule("median_d", outlookNeeds, (v) => water.wateringDate(outlook(v)).median_d),
  rule("q10_d", outlookNeeds, (v) => water.wateringDate(outlook(v)).q10_d),
  rule("q20_d", outlookNeeds, (v) => water.wateringDate(outlook(v)).q20_d),
  rule("q90_d", outlookNeeds, (v) => water.wateringDate(outlook(v)).q90_d),
  rule("p_within_2d", outlookNeeds, (v) => water.dryWithin({ ...outlook(v), within_d: 2 })),
  crps("crps_a", 0),
  crps("crps_b", 1),
  rule("quantile", ["cost_early", "cost_late"], (v) =>
    water.checkQuantile({ costEarly: v.cost_early, costLate: v.cost_late }),
  ),
];

/** Rows about crops, stores, leaves, pots, beliefs and dates. */
export const potRules: readonly Rule[] = [
  ...cropRules,
  ...storeRules,
  ...leafRules,
  ...beliefRules,
  ...dateRules,
];
