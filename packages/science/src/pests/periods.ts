import { within } from "../errors/index.ts";

/**
 * Chance that a plant or batch is free after a clean look.
 *
 * π / (1 − (1 − π) Se)
 *
 * @param look chance of being free before, 0 to 1; chance that the look would have shown it, 0 to 1
 * @returns chance
 * @throws QuantityError outside those ranges
 * @source Martin2007
 * @see checks/pests.json 054
 * @example freeAfterClean_frac({ prior_frac: 0.5, sensitivity_frac: 0.6325 }) // 0.7313
 */
export function freeAfterClean_frac(look: {
  readonly prior_frac: number;
  readonly sensitivity_frac: number;
}): number {
  within("prior_frac", look.prior_frac, 0, 1);
  within("sensitivity_frac", look.sensitivity_frac, 0, 1);
  const rest = 1 - (1 - look.prior_frac) * look.sensitivity_frac;
  return rest > 0 ? look.prior_frac / rest : 0;
}

/**
 * The same chance after a time in which something may have come in.
 *
 * P (1 − p)
 *
 * @param period chance of being free before, 0 to 1; chance of an arrival in the period, 0 to 1
 * @returns chance
 * @throws QuantityError outside those ranges
 * @source Martin2007
 * @example freeNextPeriod_frac({ prior_frac: 0.7313, arrival_frac: 0.01 }) // 0.724
 */
export function freeNextPeriod_frac(period: {
  readonly prior_frac: number;
  readonly arrival_frac: number;
}): number {
  within("prior_frac", period.prior_frac, 0, 1);
  within("arrival_frac", period.arrival_frac, 0, 1);
  return period.prior_frac * (1 - period.arrival_frac);
}

/**
 * Chance of an arrival within some days from the chance of one.
 *
 * 1 − (1 − h)^days
 *
 * @param period chance of an arrival a day, 0 to 1; days [d], 0 to 10000
 * @returns chance
 * @throws QuantityError outside those ranges
 * @source our assumption; independent days
 * @example arrivalWithin_frac({ arrival_per_d: 0.01, days_d: 7 }) // 0.0679
 */
export function arrivalWithin_frac(period: {
  readonly arrival_per_d: number;
  readonly days_d: number;
}): number {
  within("arrival_per_d", period.arrival_per_d, 0, 1);
  within("days_d", period.days_d, 0, 10_000);
  return 1 - (1 - period.arrival_per_d) ** period.days_d;
}

/**
 * The chance of being free that looking again and again comes to, against arrivals; and after how many periods.
 *
 * (1 − p/Se)/(1 − p); periods are counted until the chance is within a thousandth, the prior discounted before each.
 *
 * @param plan chance that the looks of a period would show it, 0.001 to 1; chance of an arrival in it, 0 to 0.9; chance of being free at the start, 0.001 to 0.999, 0.5 unless given; chance to be reached, 0.001 to 1, the end less half a thousandth unless given
 * @returns chance at the end, and periods (0 where it is never reached)
 * @throws QuantityError outside those ranges
 * @source RSurveillance
 * @see checks/pests.json 044, 052
 * @example freedomReached({ sensitivity_frac: 0.6, arrival_frac: 0.02, reached_frac: 0.986 }).periods_n // 9
 */
export function freedomReached(plan: {
  readonly sensitivity_frac: number;
  readonly arrival_frac: number;
  readonly prior_frac?: number;
  readonly reached_frac?: number;
}): { readonly end_frac: number; readonly periods_n: number } {
  const { sensitivity_frac, arrival_frac, prior_frac = 0.5 } = plan;
  within("sensitivity_frac", sensitivity_frac, 0.001, 1);
  within("arrival_frac", arrival_frac, 0, 0.9);
  within("prior_frac", prior_frac, 0.001, 0.999);
  const end_frac = Math.max(0, (1 - arrival_frac / sensitivity_frac) / (1 - arrival_frac));
  const { reached_frac = Math.max(0.001, end_frac - 0.0005) } = plan;
  within("reached_frac", reached_frac, 0.001, 1);
  let free = prior_frac;
  for (let period = 1; period <= 10_000; period++) {
    free = freeAfterClean_frac({ prior_frac: free * (1 - arrival_frac), sensitivity_frac });
    if (free >= reached_frac) return { end_frac, periods_n: period };
  }
  return { end_frac, periods_n: 0 };
}

/**
 * What a look must be able to show so that a clean one brings a chance of being free up to a target.
 *
 * (1 − π/target)/(1 − π), the prior discounted first where something may have come in
 *
 * @param aim chance of being free before, 0.001 to 0.999; chance aimed at, 0.001 to 0.99999; chance of an arrival, 0 to 0.9, none unless given
 * @returns sensitivity, 0 where it is there already
 * @throws QuantityError outside those ranges
 * @source RSurveillance
 * @see checks/pests.json 045, 046
 * @example sensitivityNeeded_frac({ prior_frac: 0.5, target_frac: 0.8 }) // 0.75
 */
export function sensitivityNeeded_frac(aim: {
  readonly prior_frac: number;
  readonly target_frac: number;
  readonly arrival_frac?: number;
}): number {
  const { prior_frac, target_frac, arrival_frac = 0 } = aim;
  within("prior_frac", prior_frac, 0.001, 0.999);
  within("target_frac", target_frac, 0.001, 0.99999);
  within("arrival_frac", arrival_frac, 0, 0.9);
  const prior = prior_frac * (1 - arrival_frac);
  return Math.max(0, (1 - prior / target_frac) / (1 - prior));
}

/**
 * Clean visits after which a pest is taken not to be there, and what is believed after some.
 *
 * ln α / ln(1 − p); with a prior ψ: ln(α/(1 − α) (1 − ψ)/ψ) / ln(1 − p); after n visits ψ(1 − p)^n / (ψ(1 − p)^n + 1 − ψ)
 *
 * @param visits chance to find it at one, 0.001 to 0.999; chance left that it is there, 0.0001 to 0.5, 0.05 unless given; chance that it is there beforehand, 0.001 to 0.999 (none: the plain rule); clean visits made, 0 to 10000, 0 unless given
 * @returns visits needed, rounded up, and chance that it is there after those made
 * @throws QuantityError outside those ranges
 * @source Kery2002; Wintle2012 with a prior
 * @see checks/pests.json 066, 067
 * @example cleanVisits({ found_frac: 0.46 }).visits_n // 5
 */
export function cleanVisits(visits: {
  readonly found_frac: number;
  readonly left_frac?: number;
  readonly present_frac?: number;
  readonly made_n?: number;
}): { readonly visits_n: number; readonly present_frac: number } {
  const { found_frac, left_frac = 0.05, present_frac, made_n = 0 } = visits;
  within("found_frac", found_frac, 0.001, 0.999);
  within("left_frac", left_frac, 0.0001, 0.5);
  if (present_frac !== undefined) within("present_frac", present_frac, 0.001, 0.999);
  within("made_n", made_n, 0, 10_000);
  const prior = present_frac ?? 0.5;
  const odds = present_frac === undefined ? left_frac : (left_frac / (1 - left_frac)) * ((1 - prior) / prior);
  const unseen = prior * (1 - found_frac) ** made_n;
  return {
    visits_n: Math.max(0, Math.ceil(Math.log(odds) / Math.log(1 - found_frac) - 1e-9)),
    present_frac: unseen / (unseen + 1 - prior),
  };
}

/**
 * Detection exposure that clean looks must add up to.
 *
 * Λ = ln(odds c/(1 − c))
 *
 * @param aim odds of being infested, 0.0001 to 10000; chance of being free that is aimed at, 0.01 to 0.99999
 * @returns exposure, 0 where it is there already
 * @throws QuantityError outside those ranges
 * @source our assumption; Bayes with exp(−Λ) as the chance to have missed it
 * @see checks/pests.json 068
 * @example exposureNeeded({ odds: 1, target_frac: 0.95 }) // 2.944
 */
export function exposureNeeded(aim: { readonly odds: number; readonly target_frac: number }): number {
  within("odds", aim.odds, 0.0001, 10_000);
  within("target_frac", aim.target_frac, 0.01, 0.99999);
  return Math.max(0, Math.log((aim.odds * aim.target_frac) / (1 - aim.target_frac)));
}

/**
 * Whether one more look is worth its price before a plant goes.
 *
 * gain of waiting P δ (C_escape − C_treat); release where it is below the price of the look
 *
 * @param choice chance of being infested, 0 to 1; chance that the next look finds it, 0 to 1; cost of an escape, of a treatment, of a look, in hundredths of the currency, 0 to 1000000000
 * @returns gain of waiting, and whether to release
 * @throws QuantityError outside those ranges
 * @source Regan2006 for the idea; our assumption for one look ahead
 * @see checks/pests.json 080
 * @example releaseNow({ infested_frac: 0.02, nextFinds_frac: 0.8, escape_minor: 6000, treat_minor: 500, look_minor: 150 }).gain_minor // 88
 */
export function releaseNow(choice: {
  readonly infested_frac: number;
  readonly nextFinds_frac: number;
  readonly escape_minor: number;
  readonly treat_minor: number;
  readonly look_minor: number;
}): { readonly gain_minor: number; readonly release: boolean } {
  within("infested_frac", choice.infested_frac, 0, 1);
  within("nextFinds_frac", choice.nextFinds_frac, 0, 1);
  for (const name of ["escape_minor", "treat_minor", "look_minor"] as const)
    within(name, choice[name], 0, 1e9);
  const gain_minor =
    choice.infested_frac * choice.nextFinds_frac * (choice.escape_minor - choice.treat_minor);
  return { gain_minor, release: gain_minor < choice.look_minor };
}

/**
 * Clean surveys after which looking on costs more than it saves.
 *
 * n* = ln(−Cs/(Ce ln r)) / ln r
 *
 * @param survey cost of a survey and of an escape, in hundredths of the currency, 0.01 to 1000000000; chance that it is there though unseen in a survey, 0.001 to 0.999
 * @returns number, not rounded, 0 where none is worth it
 * @throws QuantityError outside those ranges
 * @source Regan2006
 * @see checks/pests.json 081
 * @example surveysWorth_n({ survey_minor: 150, escape_minor: 6000, presentUnseen_frac: 0.5 }) // 4.79
 */
export function surveysWorth_n(survey: {
  readonly survey_minor: number;
  readonly escape_minor: number;
  readonly presentUnseen_frac: number;
}): number {
  within("survey_minor", survey.survey_minor, 0.01, 1e9);
  within("escape_minor", survey.escape_minor, 0.01, 1e9);
  within("presentUnseen_frac", survey.presentUnseen_frac, 0.001, 0.999);
  const ln = Math.log(survey.presentUnseen_frac);
  return Math.max(0, Math.log(-survey.survey_minor / (survey.escape_minor * ln)) / ln);
}

/**
 * A belief moved by likelihood ratios, each weakened where signs hang together.
 *
 * odds' = odds Π LR^w
 *
 * @param belief chance before, 0.0001 to 0.9999; ratios, 0.0001 to 10000, 0 to 100 of them; weights, 0 to 1, one for each, 1 unless given
 * @returns chance after
 * @throws QuantityError outside those ranges
 * @source Yuen2006
 * @see checks/pests.json 113
 * @example movedBelief_frac({ prior_frac: 0.2, ratios_n: [6, 0.5], weights_frac: [0.7, 0.7] }) // 0.3504
 */
export function movedBelief_frac(belief: {
  readonly prior_frac: number;
  readonly ratios_n: readonly number[];
  readonly weights_frac?: readonly number[];
}): number {
  const { prior_frac, ratios_n, weights_frac } = belief;
  within("prior_frac", prior_frac, 0.0001, 0.9999);
  within("ratiosCount_n", ratios_n.length, 0, 100);
  for (const each of ratios_n) within("ratios_n", each, 0.0001, 10_000);
  if (weights_frac) {
    within("weightsCount_n", weights_frac.length, ratios_n.length, ratios_n.length);
    for (const each of weights_frac) within("weights_frac", each, 0, 1);
  }
  const odds = ratios_n.reduce(
    (product, each, i) => product * each ** (weights_frac?.[i] ?? 1),
    prior_frac / (1 - prior_frac),
  );
  return odds / (1 + odds);
}
