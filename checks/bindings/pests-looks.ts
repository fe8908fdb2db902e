import * as pests from "@sillwood/science/pests";
import { type Rule, rule, ruleOn } from "../src/rules.ts";

type Numbers = readonly number[];
const each = <Out>(values: Numbers | number, of: (value: number) => Out): Out | Out[] =>
  typeof values === "number" ? of(values) : values.map(of);
const asFlag = (isTrue: boolean): number => (isTrue ? 1 : 0);

const thresholds = [1, 2, 10, 15, 18, 30, 40].map((threshold) =>
  rule(`exceeds_${threshold}`, ["count_n", "cards_n", "days_d"], (v) =>
    asFlag(pests.cardRate_n(v) > threshold),
  ),
);

type Taylor = { taylor_a: number; taylor_b: number };
const taylorNeeds = ["taylor_a", "taylor_b"] as const;
const taylorOf = ({ taylor_a, taylor_b }: Taylor) => ({ taylorA: taylor_a, taylorB: taylor_b });

const trend = (["slope_per_d", "se_per_d", "z", "dispersion", "doubling_d"] as const).map((key) =>
  ruleOn<{ t_d: Numbers; count_n: Numbers; card_days: Numbers }>(
    key,
    ["t_d", "count_n", "card_days"],
    (v) => pests.cardTrend({ times_d: v.t_d, counts_n: v.count_n, exposures_d: v.card_days })[key],
  ),
);

type Periods = { count_n: Numbers; exposure: Numbers; what: string };
const periods = (v: Periods) =>
  pests.twoPeriods({
    first_n: v.count_n[0] as number,
    firstExposure_d: v.exposure[0] as number,
    second_n: v.count_n[1] as number,
    secondExposure_d: v.exposure[1] as number,
  });

const wald = (["slope", "h_accept", "h_reject", "n_accept_at_0"] as const).map((key) =>
  rule(key, ["p0", "p1", "alpha", "beta"], (v) => {
    const test = pests.sequentialLooks({
      fine_frac: v.p0,
      tooMany_frac: v.p1,
      falseAlarm_frac: v.alpha,
      falseCalm_frac: v.beta,
    });
    return {
      slope: test.slope,
      h_accept: test.accept_n,
      h_reject: test.reject_n,
      n_accept_at_0: test.cleanInARow_n,
    }[key];
  }),
);

/** How a growing or hidden pest is seen: several shapes that give the same two numbers. */
const clearance = (["lambda", "p_free"] as const).flatMap((key) => [
  ruleOn<{ r_per_d: number; lag_d: number; sight: number; n0: number; inspect_d: Numbers; odds: number }>(
    key,
    ["r_per_d", "lag_d", "sight", "n0", "inspect_d", "odds"],
    (v) => {
      const course = pests.growingExposure({
        rate_per_d: v.r_per_d,
        lag_d: v.lag_d,
        sight_frac: v.sight,
        founders_n: v.n0,
        looks_d: v.inspect_d,
        odds: v.odds,
      });
      return key === "lambda" ? course.exposure : course.free_frac;
    },
  ),
  ruleOn<{
    egg_to_adult_d: number;
    adult_life_d: number;
    m_eggs: number;
    h_per_adult_d: number;
    odds: number;
    t_d: Numbers | number;
  }>(key, ["egg_to_adult_d", "adult_life_d", "m_eggs", "h_per_adult_d", "odds", "t_d"], (v) =>
    each(v.t_d, (day_d) => {
      const seen = pests.cohortOnCard({
        eggToAdult_d: v.egg_to_adult_d,
        adultLife_d: v.adult_life_d,
        founders_n: v.m_eggs,
        catch_per_d: v.h_per_adult_d,
        day_d,
        odds: v.odds,
      });
      return key === "lambda" ? seen.exposure : seen.free_frac;
    }),
  ),
]);

export const lookRules: readonly Rule[] = [
  ...thresholds,
  ...trend,
  ...wald,
  ...clearance,
  ...["s_per_aphid", "s_per_mite", "s_per_thrips", "s_per_pest", "s_per_animal"].map((from) =>
    rule("sight", [from], (v) => v[from]),
  ),
  ruleOn<{ odds: Numbers | number; target_c: Numbers | number }>("lambda", ["odds", "target_c"], (v) =>
    each(v.odds, (odds) => each(v.target_c, (target_frac) => pests.exposureNeeded({ odds, target_frac }))),
  ),
  rule("per_card_week", ["count_n", "cards_n", "days_d"], (v) => pests.cardRate_n(v)),
  rule("cards_n", ["area_m2", "density_per_1000ft2"], (v) =>
    pests.cardsForRoom_n({ floor_m2: v.area_m2, cardsPer1000ft2_n: v.density_per_1000ft2 }),
  ),
  ...(["p_miss", "p_miss_poisson"] as const).map((key) =>
    rule(key, ["mean_per_leaf", "s", "k", "n_leaves"], (v) => {
      const miss = pests.leafMiss({
        perLeaf_n: v.mean_per_leaf,
        sight_frac: v.s,
        leaves_n: v.n_leaves,
        clumping: v.k,
      });
      return key === "p_miss" ? miss.missed_frac : miss.missedStrewn_frac;
    }),
  ),
  ruleOn<Taylor & { taylor_D: number; mean_n: Numbers | number }>(
    "n",
    [...taylorNeeds, "taylor_D", "mean_n"],
    (v) =>
      each(v.mean_n, (mean_n) => pests.unitsToCount_n({ ...taylorOf(v), mean_n, precision: v.taylor_D })),
  ),
  ruleOn<Taylor & { taylor_D: number; n: Numbers | number }>("T_n", [...taylorNeeds, "taylor_D", "n"], (v) =>
    each(v.n, (units_n) => pests.stopCount_n({ ...taylorOf(v), units_n, precision: v.taylor_D })),
  ),
  ruleOn<Taylor & { mean_n: Numbers | number }>("p", [...taylorNeeds, "mean_n"], (v) =>
    each(v.mean_n, (mean_n) => pests.infestedShare_frac({ ...taylorOf(v), mean_n })),
  ),
  ruleOn<Taylor & { p: Numbers | number }>("mean_n", [...taylorNeeds, "p"], (v) =>
    each(v.p, (infested_frac) => pests.meanOfInfested_n({ ...taylorOf(v), infested_frac })),
  ),
  ...(["taylor_a", "taylor_b", "kappa"] as const).map((key) =>
    ruleOn<{ mean_n: Numbers; var_n: Numbers }>(key, ["mean_n", "var_n"], (v) => {
      const law = pests.taylorLaw({ means_n: v.mean_n, variances_n: v.var_n });
      return { taylor_a: law.taylorA, taylor_b: law.taylorB, kappa: law.clumping }[key];
    }),
  ),
  ruleOn<Periods>("rate_ratio", ["count_n", "exposure", "what"], (v) => periods(v).rateRatio),
  ruleOn<Periods>("p_value", ["count_n", "exposure", "what"], (v) =>
    /twice the smaller tail/.test(v.what) ? periods(v).luckTwiceTail_frac : periods(v).luck_frac,
  ),
  rule("p_value", ["n_sightings", "t_last_d", "T_d"], (v) =>
    pests.silence_frac({ catches_n: v.n_sightings, last_d: v.t_last_d, watched_d: v.T_d }),
  ),
  rule("two_weeks_enough", ["latent_max_d", "clean_days_d"], (v) => asFlag(v.clean_days_d >= v.latent_max_d)),
  ruleOn<{ temp_C: Numbers | number }>("can_germinate", ["temp_C"], (v) =>
    each(v.temp_C, (leaf_C) => asFlag(pests.mildewGerminates(leaf_C))),
  ),
  ruleOn<{ prior: number; lr: Numbers; weights_by_lr: Numbers }>(
    "posterior",
    ["prior", "lr", "weights_by_lr"],
    (v) => pests.movedBelief_frac({ prior_frac: v.prior, ratios_n: v.lr, weights_frac: v.weights_by_lr }),
  ),
  ruleOn<{ prior: number; lr: Numbers }>("posterior", ["prior", "lr"], (v) =>
    pests.movedBelief_frac({ prior_frac: v.prior, ratios_n: v.lr }),
  ),
  ...(["gain_of_waiting", "release_bool"] as const).map((key) =>
    rule(key, ["p_infested", "delta_next_detect", "cost_escape", "cost_treat", "cost_inspect"], (v) => {
      // Money is in hundredths inside; the rows speak of whole ones.
      const choice = pests.releaseNow({
        infested_frac: v.p_infested,
        nextFinds_frac: v.delta_next_detect,
        escape_minor: v.cost_escape * 100,
        treat_minor: v.cost_treat * 100,
        look_minor: v.cost_inspect * 100,
      });
      return key === "gain_of_waiting" ? choice.gain_minor / 100 : asFlag(choice.release);
    }),
  ),
  rule("n_star", ["cost_survey", "cost_escape", "r_present_given_unseen"], (v) =>
    pests.surveysWorth_n({
      survey_minor: v.cost_survey * 100,
      escape_minor: v.cost_escape * 100,
      presentUnseen_frac: v.r_present_given_unseen,
    }),
  ),
];
