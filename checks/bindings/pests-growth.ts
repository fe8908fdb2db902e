import * as pests from "@sillwood/science/pests";
import { type Rule, rule, ruleOn } from "../src/rules.ts";

type Numbers = readonly number[];
const each = (values: Numbers | number, of: (value: number, i: number) => number): number | number[] =>
  typeof values === "number" ? of(values, 0) : values.map(of);

const rate = (R0: number, T: number): number =>
  pests.intrinsicRate_per_d({ netReproduction_n: R0, generation_d: T });

/** Degree-days of several stages, each above its own threshold, named K1, T0_1 and so on. */
const stagesDuration = (row: Readonly<Record<string, number>>, air_C: number): number =>
  Object.keys(row)
    .filter((key) => /^K\d+_Cd$/.test(key))
    .reduce(
      (sum, key) =>
        sum +
        1 /
          pests.stageRate_per_d({
            air_C,
            base_C: row[`T0_${key.slice(1, -3)}_C`] as number,
            stage_Cd: row[key] as number,
          }),
      0,
    );

/** A key such as `rm_15C_per_d` beside `doubling_15C_d`; the name of the one tells the other. */
const namedRates = ["15C", "19C", "20C", "22C", "25C", "29C", "30C", "persicae", "gossypii"].flatMap(
  (name) => [
    rule(`doubling_${name}_d`, [`rm_${name}_per_d`], (v) =>
      pests.doublingTime_d(v[`rm_${name}_per_d`] as number),
    ),
    rule(`doubling_${name}_d`, [`r_${name}_per_d`], (v) =>
      pests.doublingTime_d(v[`r_${name}_per_d`] as number),
    ),
  ],
);

const durationsAt = ["15", "18", "20", "22", "25", "30"].flatMap((air) => [
  rule(
    `d_${air}C`,
    ["T0_C", "K_Cd"],
    (v) => 1 / pests.stageRate_per_d({ air_C: Number(air), base_C: v.T0_C, stage_Cd: v.K_Cd }),
  ),
  rule(
    `d_${air}C`,
    ["base_F", "adult_DDF"],
    (v) =>
      1 /
      pests.stageRate_per_d({
        air_C: Number(air),
        base_C: (v.base_F - 32) / 1.8,
        stage_Cd: v.adult_DDF / 1.8,
      }),
  ),
  ruleOn<{ temps_C: Numbers; egg_d: Numbers; larva_d: Numbers; pupa_d: Numbers }>(
    `total_${air}C_d`,
    ["temps_C", "egg_d", "larva_d", "pupa_d"],
    ({ temps_C, egg_d, larva_d, pupa_d }) =>
      [egg_d, larva_d, pupa_d].reduce(
        (sum, durations_d) =>
          sum + pests.tabledDuration_d({ air_C: Number(air), temperatures_C: temps_C, durations_d }),
        0,
      ),
  ),
]);

export const growthRules: readonly Rule[] = [
  rule(/^rm?_per_(d|wk)$/, ["R0_offspring", "T_d"], (v) => rate(v.R0_offspring, v.T_d)),
  rule(/^lambda_per_d$/, ["r_per_d"], (v) => pests.multiplication_n({ rate_per_d: v.r_per_d })),
  rule(/^lambda_per_d$/, ["rm_per_d"], (v) => pests.multiplication_n({ rate_per_d: v.rm_per_d })),
  rule(/^doubling_d$/, ["r_per_d"], (v) => pests.doublingTime_d(v.r_per_d)),
  rule(/^doubling_d$/, ["rm_per_d"], (v) => pests.doublingTime_d(v.rm_per_d)),
  rule(
    "daily_increase_percent",
    ["r_per_d"],
    (v) => 100 * (pests.multiplication_n({ rate_per_d: v.r_per_d }) - 1),
  ),
  rule("multiplication_x", ["r_per_d", "days_d"], (v) =>
    pests.multiplication_n({ rate_per_d: v.r_per_d, days_d: v.days_d }),
  ),
  ...namedRates,
  ...durationsAt,
  {
    gives: /^nymphal_duration_.*_d$/,
    needs: ["K1_Cd", "T0_1_C", "K2_Cd", "T0_2_C", "K3_Cd", "T0_3_C", "K4_Cd", "T0_4_C", "temp_C"],
    compute: (v) => stagesDuration(v as Record<string, number>, v["temp_C"] as number),
  },
  rule(
    /^(egg_adult|duration)_d$/,
    ["T0_C", "K_Cd", "temp_C"],
    (v) => 1 / pests.stageRate_per_d({ air_C: v.temp_C, base_C: v.T0_C, stage_Cd: v.K_Cd }),
  ),
  rule("mean_temp_C", ["T0_C", "K_Cd", "duration_d"], (v) =>
    pests.temperatureOfDuration_C({ base_C: v.T0_C, stage_Cd: v.K_Cd, duration_d: v.duration_d }),
  ),
  ruleOn<{ temps_C: Numbers; durations_d: Numbers }>(
    "T0_C",
    ["temps_C", "durations_d"],
    (v) => pests.thermalConstants({ temperatures_C: v.temps_C, durations_d: v.durations_d }).base_C,
  ),
  ruleOn<{ temps_C: Numbers; durations_d: Numbers }>(
    "K_Cd",
    ["temps_C", "durations_d"],
    (v) => pests.thermalConstants({ temperatures_C: v.temps_C, durations_d: v.durations_d }).stage_Cd,
  ),
  ruleOn<{ temps_C: Numbers; durations_d: Numbers; T0_C: number }>(
    "K_mean_Cd",
    ["temps_C", "durations_d", "T0_C"],
    (v) => pests.meanStageSum_Cd({ temperatures_C: v.temps_C, durations_d: v.durations_d, base_C: v.T0_C }),
  ),
  ruleOn<{ air_C: number; temps_C: Numbers; durations_d: Numbers }>(
    /^(duration|larva|egg|pupa)_d$/,
    ["air_C", "temps_C", "durations_d"],
    (v) => pests.tabledDuration_d({ air_C: v.air_C, temperatures_C: v.temps_C, durations_d: v.durations_d }),
  ),
  rule("base_C", ["base_F"], (v) => (v.base_F - 32) / 1.8),
  rule("nymph_Cd", ["nymph_DDF"], (v) => v.nymph_DDF / 1.8),
  rule("adult_Cd", ["adult_DDF"], (v) => v.adult_DDF / 1.8),
  ...(["R0", "r_per_wk", "r_per_d"] as const).flatMap((key) =>
    [["age_wk"], ["age_d"]].map(([age = ""]) =>
      ruleOn<Record<string, Numbers>>(key, [age, "lx", "mx_female_eggs"], (v) => {
        const life = pests.lifeTableRate({
          ages_d: v[age] as Numbers,
          alive_frac: v["lx"] as Numbers,
          daughters_n: v["mx_female_eggs"] as Numbers,
        });
        return key === "R0" ? life.netReproduction_n : life.rate_per_d;
      }),
    ),
  ),
  ...(["R0", "r_per_d"] as const).map((key) =>
    rule(
      key,
      ["eggs_per_female", "hatch_frac", "emergence_frac", "female_frac", "egg_to_adult_d", "female_life_d"],
      (v) => {
        const more = v as Readonly<Record<string, number>>;
        const life = pests.vitalRate({
          eggs_n: v.eggs_per_female,
          hatch_frac: v.hatch_frac,
          emergence_frac: v.emergence_frac,
          female_frac: v.female_frac,
          eggToAdult_d: v.egg_to_adult_d,
          femaleLife_d: v.female_life_d,
          ...(more["laying_points"] === undefined ? {} : { points_n: more["laying_points"] }),
        });
        return key === "R0" ? life.netReproduction_n : life.rate_per_d;
      },
    ),
  ),
  ...(["r_simple_per_d", "r_corrected_per_d", "T_d"] as const).map((key) =>
    rule(key, ["d_d", "Md_n", "coef", "bias_frac"], (v) => {
      const simple = pests.simpleRate({
        firstBirth_d: v.d_d,
        young_n: v.Md_n,
        coefficient: v.coef,
        simpleBias_frac: v.bias_frac,
      });
      return key === "T_d"
        ? simple.generation_d
        : key === "r_simple_per_d"
          ? simple.rate_per_d
          : simple.corrected_per_d;
    }),
  ),
  ...(["N_leslie", "N_rule", "r_per_d"] as const).map((key) =>
    ruleOn<Record<string, number | Numbers>>(
      key,
      ["d_d", "nymphs_per_d", "reproductive_d", "survival_frac", "t_d"],
      (v) => {
        const at = (time_d: number) =>
          pests.aphidColony({
            firstBirth_d: v["d_d"] as number,
            young_per_d: v["nymphs_per_d"] as number,
            bearing_d: v["reproductive_d"] as number,
            survival_frac: v["survival_frac"] as number,
            time_d,
          });
        if (key === "r_per_d") return at(1).rate_per_d;
        return each(v["t_d"] as Numbers, (t) => (key === "N_leslie" ? at(t).byRun_n : at(t).byRule_n));
      },
    ),
  ),
];

type Leslie = Readonly<Record<string, number>>;
const classes = (leslie: Leslie): pests.DailyClasses => ({
  eggClasses_n: leslie["egg_classes"] as number,
  larvaClasses_n: leslie["larva_classes"] as number,
  pupaClasses_n: leslie["pupa_classes"] as number,
  adultClasses_n: leslie["adult_classes"] as number,
  daughters_per_d: leslie["female_eggs_per_d"] as number,
  hatch_frac: leslie["hatch_frac"] as number,
  emergence_frac: leslie["emergence_frac"] as number,
});

/** Keys such as `pupae_d21`: the stage and the day. */
const onDay = /^(eggs|larvae|pupae|adults)_d(\d+)$/;
const days = [7, 14, 21, 28, 35, 40, 42, 60].flatMap((day) =>
  (["eggs", "larvae", "pupae", "adults"] as const).map((stage) =>
    ruleOn<{
      leslie: Leslie;
      n0_females: number;
      card_daily: number;
      larvicide_kill: number;
      larvicide_days_d: Numbers;
    }>(
      `${stage}_d${day}`,
      ["leslie", "n0_females", "card_daily", "larvicide_kill", "larvicide_days_d"],
      (v) =>
        [
          {},
          { capture_frac: v.card_daily },
          { kill_frac: v.larvicide_kill, killDays_d: v.larvicide_days_d },
          { capture_frac: v.card_daily, kill_frac: v.larvicide_kill, killDays_d: v.larvicide_days_d },
        ].map(
          (removal) =>
            pests.gnatsByDay({ ...classes(v.leslie), ...removal, females_n: v.n0_females, days_d: day })[
              `${stage}_n`
            ],
        ),
    ),
  ),
);
if (days.some(({ gives }) => !onDay.test(String(gives)))) throw new Error("a key of a day is misspelt");

export const treatmentRules: readonly Rule[] = [
  ...days,
  ruleOn<{ leslie: Leslie }>(
    /^(lambda(_per_d)?)$/,
    ["leslie"],
    ({ leslie }) => pests.steadyGnats(classes(leslie)).multiplication_n,
  ),
  ruleOn<{ leslie: Leslie }>(
    /^r_per_d$/,
    ["leslie"],
    ({ leslie }) => pests.steadyGnats(classes(leslie)).rate_per_d,
  ),
  ruleOn<{ leslie: Leslie }>(/^doubling_d$/, ["leslie"], ({ leslie }) =>
    pests.doublingTime_d(pests.steadyGnats(classes(leslie)).rate_per_d),
  ),
  ruleOn<{ leslie: Leslie }>(
    /^R0$/,
    ["leslie"],
    ({ leslie }) => pests.steadyGnats(classes(leslie)).netReproduction_n,
  ),
  ruleOn<{ leslie: Leslie }>(/^daily_capture$/, ["leslie"], ({ leslie }) =>
    pests.captureToHold_frac(classes(leslie)),
  ),
  ruleOn<{ leslie: Leslie; card_daily: number }>(
    /^lambda(_per_d)?(_with_card)?$/,
    ["leslie", "card_daily"],
    ({ leslie, card_daily }) =>
      pests.steadyGnats({ ...classes(leslie), capture_frac: card_daily }).multiplication_n,
  ),
  ruleOn<{ r_per_d: Numbers | number; tau_d: Numbers | number }>(
    "kill",
    ["r_per_d", "tau_d"],
    ({ r_per_d, tau_d }) => {
      const at = (rate_per_d: number) =>
        each(tau_d, (interval_d) => pests.breakEvenKill_frac({ rate_per_d, interval_d }));
      return typeof r_per_d === "number" ? at(r_per_d) : r_per_d.map(at);
    },
  ),
  ruleOn<{ N0: number; target: number; kill: number; tau_d: number; r_per_d: Numbers | number }>(
    "n",
    ["N0", "target", "kill", "tau_d", "r_per_d"],
    (v) =>
      each(
        v.r_per_d,
        (rate_per_d) =>
          pests.treatmentsNeeded_n({
            animals_n: v.N0,
            aim_n: v.target,
            kill_frac: v.kill,
            interval_d: v.tau_d,
            rate_per_d,
          }) ?? Number.NaN,
      ),
  ),
  ...(["mu", "p_cleared"] as const).map((key) =>
    ruleOn<{ N0: number; kill: number; tau_d: number; r_per_d: number; n_sprays: Numbers | number }>(
      key,
      ["N0", "kill", "tau_d", "r_per_d", "n_sprays"],
      (v) =>
        each(v.n_sprays, (treatments_n) => {
          const kappa = (v as Readonly<Record<string, unknown>>)["kappa"];
          const course = pests.courseCleared({
            animals_n: v.N0,
            kill_frac: v.kill,
            treatments_n,
            interval_d: v.tau_d,
            rate_per_d: v.r_per_d,
            ...(typeof kappa === "number" ? { survivalClumping: kappa } : {}),
          });
          return key === "mu" ? course.survivors_n : course.cleared_frac;
        }),
    ),
  ),
  ruleOn<{ mu: Numbers | number; kappa: number }>(/^p_cleared(_clumped)?$|^p0$/, ["mu", "kappa"], (v) =>
    each(v.mu, (mu) => (1 + mu / v.kappa) ** -v.kappa),
  ),
  rule("applications_n", ["pupa_d", "female_life_d", "egg_d", "tau_d"], (v) =>
    pests.courseLength_n({
      pupa_d: v.pupa_d,
      femaleLife_d: v.female_life_d,
      egg_d: v.egg_d,
      interval_d: v.tau_d,
    }),
  ),
  rule("per_pot", ["rate_per_m2", "pot_diameter_m"], (v) =>
    pests.agentsPerPot_n({ rate_per_m2: v.rate_per_m2, surfaceDiameter_m: v.pot_diameter_m }),
  ),
  rule(
    "percent_printed",
    ["tbsp_mL", "quart_mL"],
    (v) => 100 * pests.mixStrength({ concentrate_mL: v.tbsp_mL, water_mL: v.quart_mL }).perWater_frac,
  ),
  rule(
    "percent_of_total",
    ["tbsp_mL", "quart_mL"],
    (v) => 100 * pests.mixStrength({ concentrate_mL: v.tbsp_mL, water_mL: v.quart_mL }).ofTotal_frac,
  ),
  ruleOn<{ percent: Numbers | number; volume_mL: number }>(
    /^(concentrate_)?mL(_per_L)?$|^concentrate_mL$/,
    ["percent", "volume_mL"],
    (v) =>
      each(
        v.percent,
        (percent) =>
          pests.concentrate({ total_mL: v.volume_mL, strength_frac: percent / 100 }).concentrate_mL,
      ),
  ),
  ruleOn<{ percent: Numbers | number }>(/^mL_per_L$/, ["percent"], (v) =>
    each(
      v.percent,
      (percent) => pests.concentrate({ total_mL: 1000, strength_frac: percent / 100 }).concentrate_mL,
    ),
  ),
  ruleOn<{ percent: Numbers | number }>(/^(fl_?oz_per_(US_)?gal(lon)?)$/, ["percent"], (v) =>
    each(
      v.percent,
      (percent) =>
        pests.concentrate({ total_mL: 3785.411784, strength_frac: percent / 100 }).concentrate_mL /
        29.5735295625,
    ),
  ),
  ruleOn<{ percent: Numbers | number }>(/^tbsp_per_(US_)?gal(lon)?$/, ["percent"], (v) =>
    each(
      v.percent,
      (percent) =>
        pests.concentrate({ total_mL: 3785.411784, strength_frac: percent / 100 }).concentrate_mL /
        14.78676478125,
    ),
  ),
  rule(
    /^(final_)?active_percent$/,
    ["concentrate_active_percent", "dilution_percent"],
    (v) => (v.concentrate_active_percent * v.dilution_percent) / 100,
  ),
];
