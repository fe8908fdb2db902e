import * as pests from "@sillwood/science/pests";
import { type Rule, rule, ruleOn } from "../src/rules.ts";

type Many = readonly number[] | number;
/** Lists side by side, single values for all: one answer each. */
function along<const Keys extends readonly string[]>(
  values: Readonly<Record<Keys[number], Many>>,
  keys: Keys,
  of: (row: Readonly<Record<Keys[number], number>>) => number,
): number | number[] {
  const longest = Math.max(
    ...keys.map((key) =>
      typeof values[key as Keys[number]] === "number"
        ? 0
        : (values[key as Keys[number]] as readonly number[]).length,
    ),
  );
  const at = (i: number): number =>
    of(
      Object.fromEntries(
        keys.map((key) => {
          const value = values[key as Keys[number]] as Many;
          return [key, typeof value === "number" ? value : (value[i] as number)];
        }),
      ) as Record<Keys[number], number>,
    );
  return longest === 0 ? at(0) : Array.from({ length: longest }, (_, i) => at(i));
}

const ruleAlong = <const Keys extends readonly string[]>(
  gives: string | RegExp,
  keys: Keys,
  of: (row: Readonly<Record<Keys[number], number>>) => number,
): Rule => ruleOn<Record<Keys[number], Many>>(gives, keys as never, (values) => along(values, keys, of));

const infested = (N: number, share: number): number => Math.max(1, Math.round(N * share));

export const freedomRules: readonly Rule[] = [
  ruleAlong("SeP", ["n", "pstar_frac", "se_frac"], (v) =>
    pests.sampleSensitivity_frac({ units_n: v.n, prevalence_frac: v.pstar_frac, sight_frac: v.se_frac }),
  ),
  ruleAlong("SeP", ["N", "n", "d", "se_frac"], (v) =>
    pests.batchSensitivity_frac({
      batch_n: v.N,
      units_n: v.n,
      infested_n: v.d,
      sight_frac: v.se_frac,
      method: "approximate",
    }),
  ),
  // A census: every plant of the batch was looked at, whatever its size.
  ruleAlong("SeP", ["d", "se_frac"], (v) =>
    pests.batchSensitivity_frac({
      batch_n: Math.max(1, v.d),
      units_n: Math.max(1, v.d),
      infested_n: v.d,
      sight_frac: v.se_frac,
    }),
  ),
  ruleOn<{ N: number; se_group: readonly number[]; n_group: readonly number[]; d: number }>(
    "SeP",
    ["N", "se_group", "n_group", "d"],
    ({ N, se_group, n_group, d }) => {
      const units_n = n_group.reduce((sum, n) => sum + n, 0);
      const mean = se_group.reduce((sum, se, i) => sum + se * (n_group[i] as number), 0) / units_n;
      return pests.batchSensitivity_frac({
        batch_n: N,
        units_n,
        infested_n: d,
        sight_frac: mean,
        method: "approximate",
      });
    },
  ),
  ruleAlong(
    /^p_(miss|undetected)$/,
    ["N", "n", "d"],
    (v) => 1 - pests.batchSensitivity_frac({ batch_n: v.N, units_n: v.n, infested_n: v.d }),
  ),
  ruleAlong(/^SeP$/, ["N", "n", "d"], (v) =>
    pests.batchSensitivity_frac({ batch_n: v.N, units_n: v.n, infested_n: v.d }),
  ),
  ruleAlong("n", ["SeP", "pstar_frac", "se_frac"], (v) =>
    pests.unitsForSample_n({ confidence_frac: v.SeP, prevalence_frac: v.pstar_frac, sight_frac: v.se_frac }),
  ),
  ruleAlong("n", ["SeP", "N", "d", "se_frac"], (v) =>
    pests.unitsForBatch_n({
      confidence_frac: v.SeP,
      batch_n: v.N,
      infested_n: v.d,
      sight_frac: v.se_frac,
      method: "approximate",
    }),
  ),
  ruleAlong("n", ["N", "d", "confidence"], (v) =>
    pests.unitsForBatch_n({ confidence_frac: v.confidence, batch_n: v.N, infested_n: v.d }),
  ),
  ruleAlong("n", ["N", "pstar_frac", "confidence"], (v) =>
    pests.unitsForBatch_n({
      confidence_frac: v.confidence,
      batch_n: v.N,
      infested_n: infested(v.N, v.pstar_frac),
    }),
  ),
  ruleAlong("n", ["target", "prior", "p_intro", "pstar_frac", "se_frac", "N"], (v) =>
    pests.unitsForBatch_n({
      confidence_frac: pests.sensitivityNeeded_frac({
        prior_frac: v.prior,
        target_frac: v.target,
        arrival_frac: v.p_intro,
      }),
      batch_n: v.N,
      infested_n: infested(v.N, v.pstar_frac),
      sight_frac: v.se_frac,
      method: "approximate",
    }),
  ),
  ruleAlong("n", ["target", "prior", "p_intro", "pstar_frac", "se_frac"], (v) =>
    pests.unitsForSample_n({
      confidence_frac: pests.sensitivityNeeded_frac({
        prior_frac: v.prior,
        target_frac: v.target,
        arrival_frac: v.p_intro,
      }),
      prevalence_frac: v.pstar_frac,
      sight_frac: v.se_frac,
    }),
  ),
  ruleAlong("pstar", ["n", "N", "SeP", "se_frac"], (v) =>
    pests.detectableShare_frac({ units_n: v.n, batch_n: v.N, confidence_frac: v.SeP, sight_frac: v.se_frac }),
  ),
  ruleAlong(
    "pfree_eq",
    ["SeP", "p_intro"],
    (v) => pests.freedomReached({ sensitivity_frac: v.SeP, arrival_frac: v.p_intro }).end_frac,
  ),
  ruleOn<{ SeP: number; p_intro: number; prior: number; reached_when: string }>(
    "periods_n",
    ["SeP", "p_intro", "prior", "reached_when"],
    (v) =>
      pests.freedomReached({
        sensitivity_frac: v.SeP,
        arrival_frac: v.p_intro,
        prior_frac: v.prior,
        reached_frac: Number(/>=?\s*(0?\.\d+)/.exec(v.reached_when)?.[1]),
      }).periods_n,
  ),
  ruleAlong("SeP", ["prior", "target"], (v) =>
    pests.sensitivityNeeded_frac({ prior_frac: v.prior, target_frac: v.target }),
  ),
  ruleAlong(/^p_?free$/, ["prior", "SeP"], (v) =>
    pests.freeAfterClean_frac({ prior_frac: v.prior, sensitivity_frac: v.SeP }),
  ),
  ruleAlong(/^p_?free(_discounted)?$/, ["prior", "SeP", "p_intro"], (v) =>
    pests.freeAfterClean_frac({
      prior_frac: pests.freeNextPeriod_frac({ prior_frac: v.prior, arrival_frac: v.p_intro }),
      sensitivity_frac: v.SeP,
    }),
  ),
  rule("SysSe", ["n", "hse_frac", "pstar_frac"], (v) =>
    pests.sampleSensitivity_frac({ units_n: v.n, prevalence_frac: v.pstar_frac, sight_frac: v.hse_frac }),
  ),
  rule("post_year1", ["SysSe", "prior"], (v) =>
    pests.freeAfterClean_frac({ prior_frac: v.prior, sensitivity_frac: v.SysSe }),
  ),
  rule("prior_year2", ["post_year1", "p_intro"], (v) =>
    pests.freeNextPeriod_frac({ prior_frac: v.post_year1, arrival_frac: v.p_intro }),
  ),
  ruleOn<{ se_frac: readonly number[] }>(
    "se_parallel",
    ["se_frac"],
    ({ se_frac }) => pests.waysTogether({ sights_frac: se_frac }).either_frac,
  ),
  ruleOn<{ se_frac: readonly number[] }>(
    "se_series",
    ["se_frac"],
    ({ se_frac }) => pests.waysTogether({ sights_frac: se_frac }).all_frac,
  ),
  ruleOn<{ rr: readonly number[]; ppr: readonly number[] }>(
    "ar",
    ["rr", "ppr"],
    ({ rr, ppr }) => pests.riskGroups({ risks_n: rr, shares_frac: ppr }).adjusted_n,
  ),
  ruleOn<{
    pstar_frac: number;
    rr: readonly number[];
    ppr: readonly number[];
    n: readonly number[];
    se_frac: number;
  }>(
    "SeP",
    ["pstar_frac", "rr", "ppr", "n", "se_frac"],
    (v) =>
      pests.riskGroups({
        risks_n: v.rr,
        shares_frac: v.ppr,
        prevalence_frac: v.pstar_frac,
        units_n: v.n,
        sight_frac: v.se_frac,
      }).sensitivity_frac,
  ),
  ruleAlong("SeP", ["n", "cutpoint", "se_frac", "sp_frac", "pstar_frac"], (v) =>
    pests.finds_frac({
      units_n: v.n,
      least_n: v.cutpoint,
      sight_frac: v.se_frac,
      specificity_frac: v.sp_frac,
      prevalence_frac: v.pstar_frac,
    }),
  ),
  ruleAlong("SeP", ["N", "n", "cutpoint", "se_frac", "sp_frac", "d"], (v) =>
    pests.finds_frac({
      units_n: v.n,
      least_n: v.cutpoint,
      sight_frac: v.se_frac,
      specificity_frac: v.sp_frac,
      batch_n: v.N,
      infested_n: v.d,
    }),
  ),
  // Up to so many positives are accepted: we reject from one more on, where the printed help rejects at that number.
  ruleAlong("n", ["N", "pstar_frac", "se_frac", "sp_frac", "max_accepted_positives"], (v) =>
    pests.unitsWithFalseFinds_n({
      batch_n: v.N,
      prevalence_frac: v.pstar_frac,
      sight_frac: v.se_frac,
      specificity_frac: v.sp_frac,
      accepted_n: v.max_accepted_positives,
    }),
  ),
  rule("lower", ["x", "n"], (v) => pests.exactInterval({ with_n: v.x, of_n: v.n }).low_frac),
  rule("upper", ["x", "n"], (v) => pests.exactInterval({ with_n: v.x, of_n: v.n }).high_frac),
  ruleAlong("upper_rule", ["n"], (v) => pests.noneSeen({ units_n: v.n }).rule_frac),
  ruleAlong("upper_exact", ["n"], (v) => pests.noneSeen({ units_n: v.n }).exact_frac),
  rule(
    "visits_n",
    ["p_frac", "alpha"],
    (v) => pests.cleanVisits({ found_frac: v.p_frac, left_frac: v.alpha }).visits_n,
  ),
  rule(
    "visits_n",
    ["prior_present", "p_frac"],
    (v) => pests.cleanVisits({ found_frac: v.p_frac, present_frac: v.prior_present }).visits_n,
  ),
  rule(
    "p_present",
    ["prior_present", "p_frac", "n"],
    (v) =>
      pests.cleanVisits({ found_frac: v.p_frac, present_frac: v.prior_present, made_n: v.n }).present_frac,
  ),
];
