import { normalProbability, normalQuantile } from "../chance/normal.ts";
import { within } from "../errors/index.ts";
import type { GrowthSettings } from "./assumptions.ts";
import { type PrincipalStage, principalOf } from "./bbch.ts";
import type { FruitClass } from "./phases.ts";
import type { SpeciesGroup } from "./species.ts";
import { bbchAt, lastBbch, sdBetween_Cd, type Timeline, timelineOf, whenReached_Cd } from "./timeline.ts";

const score80 = normalQuantile(0.9);

/** A plant on its way, and the code that was seen at the start. */
type Underway = {
  readonly species: SpeciesGroup;
  readonly fruit?: FruitClass;
  readonly bbchStart?: number;
} & GrowthSettings;
/** A thermal time that may itself be in doubt: days that nobody logged. */
type Passed = { readonly thermalTime_Cd: number; readonly thermalTimeSd_Cd?: number };

function refuseOtherTime({ thermalTime_Cd, thermalTimeSd_Cd = 0 }: Passed): void {
  within("thermalTime_Cd", thermalTime_Cd, 0, 20_000);
  within("thermalTimeSd_Cd", thermalTimeSd_Cd, 0, 5000);
}

function refuseOtherStart(bbchStart: number): void {
  within("bbchStart", bbchStart, 0, lastBbch);
}

/** Thermal time from the start to a code: its median, and the standard deviation of its logarithm. */
function wait(timeline: Timeline, bbchStart: number, bbch: number, thermalTimeSd_Cd = 0) {
  const from_Cd = whenReached_Cd(timeline, bbchStart);
  const to_Cd = whenReached_Cd(timeline, bbch);
  const median_Cd = Math.max(0, to_Cd - from_Cd);
  const sd_Cd = Math.hypot(sdBetween_Cd(timeline, from_Cd, to_Cd), thermalTimeSd_Cd);
  const share = median_Cd > 0 ? sd_Cd / median_Cd : 0;
  return { median_Cd, sdLn: Math.sqrt(Math.log(1 + share * share)) };
}

/**
 * Thermal time after which a stage is reached, from sowing or from a stage that was seen.
 *
 * Median: sum of the phases between. Spread: lognormal, with the independent spreads of those phases. For a plant that was cut
 * back hard start at code 15 on the day of the first new leaf, not at the cut.
 *
 * @param plant species group and fruit; code to reach, 0 to 81; code seen at the start, 0 (sown) unless given, 0 to 81; probability, 0.001 to 0.999, 0.5 unless given; any of the field's temperature and phase assumptions
 * @returns thermal time [°C d] on the clock of the species; 0 for a code that was reached at the start
 * @throws QuantityError outside those ranges
 * @source our assumption; sums and spreads as in phaseSums, codes Feller1995
 * @example stageSum_Cd({ species: "annuum", bbch: 61 }) // 880
 */
export function stageSum_Cd(
  plant: Underway & { readonly bbch: number; readonly probability?: number },
): number {
  const { bbch, bbchStart = 0, probability = 0.5 } = plant;
  within("bbch", bbch, 0, lastBbch);
  refuseOtherStart(bbchStart);
  within("probability", probability, 0.001, 0.999);
  const { median_Cd, sdLn } = wait(timelineOf(plant), bbchStart, bbch);
  return median_Cd * Math.exp(normalQuantile(probability) * sdLn);
}

function chance(timeline: Timeline, bbchStart: number, bbch: number, passed: Passed): number {
  const { thermalTime_Cd, thermalTimeSd_Cd } = passed;
  const { median_Cd, sdLn } = wait(timeline, bbchStart, bbch, thermalTimeSd_Cd);
  if (median_Cd <= 0) return 1;
  if (thermalTime_Cd <= 0) return 0;
  if (sdLn <= 0) return thermalTime_Cd >= median_Cd ? 1 : 0;
  // Of the first instant after the start nothing is left in the ratio.
  const ratio = thermalTime_Cd / median_Cd;
  return ratio > 0 ? normalProbability(Math.log(ratio) / sdLn) : 0;
}

/**
 * Chance that a stage has been reached after so much thermal time, from sowing or from a stage that was seen.
 *
 * @param plant species group and fruit; code, 0 to 81; thermal time since the start [°C d], 0 to 20000, on the clock of the species; standard deviation of that thermal time [°C d], 0 to 5000, 0 unless given; code seen at the start, 0 (sown) unless given; any of the field's temperature and phase assumptions
 * @returns chance, 0 to 1; rises with thermal time
 * @throws QuantityError outside those ranges
 * @source our assumption; sums and spreads as in phaseSums, codes Feller1995
 * @example stageReached_frac({ species: "annuum", bbch: 61, thermalTime_Cd: 880 }) // 0.5
 */
export function stageReached_frac(plant: Underway & Passed & { readonly bbch: number }): number {
  const { bbch, bbchStart = 0 } = plant;
  within("bbch", bbch, 0, lastBbch);
  refuseOtherTime(plant);
  refuseOtherStart(bbchStart);
  return chance(timelineOf(plant), bbchStart, bbch, plant);
}

export type ExpectedStage = {
  readonly bbch: number;
  readonly bbchLow: number;
  readonly bbchHigh: number;
  readonly stage: PrincipalStage;
  readonly flowering_frac: number;
  readonly ripe_frac: number;
};

/**
 * Stage to be expected after so much thermal time, from sowing or from a stage that was seen.
 *
 * Median code, and the codes of a plant that is slower or faster than nine in ten. Codes after 81 are seen, not computed; side
 * shoots (21 to 29) run beside the buds and are not named.
 *
 * @param plant species group and fruit; thermal time since the start [°C d], 0 to 20000, on the clock of the species; standard deviation of that thermal time [°C d], 0 to 5000, 0 unless given; code seen at the start, 0 (sown) unless given, 0 to 81; any of the field's temperature and phase assumptions
 * @returns code, its 80 % range, name of the principal stage, and the chances that a flower has opened and that a fruit is ripe
 * @throws QuantityError outside those ranges
 * @source our assumption; sums and spreads as in phaseSums, codes Feller1995
 * @example expectedStage({ species: "annuum", thermalTime_Cd: 900 }).bbch // 61
 */
export function expectedStage(plant: Underway & Passed): ExpectedStage {
  const { thermalTime_Cd, thermalTimeSd_Cd = 0, bbchStart = 0 } = plant;
  refuseOtherTime(plant);
  refuseOtherStart(bbchStart);
  const timeline = timelineOf(plant);
  const from_Cd = whenReached_Cd(timeline, bbchStart);
  const sd_Cd = Math.hypot(sdBetween_Cd(timeline, from_Cd, from_Cd + thermalTime_Cd), thermalTimeSd_Cd);
  const share = thermalTime_Cd > 0 ? sd_Cd / thermalTime_Cd : 0;
  const factor = Math.exp(score80 * Math.sqrt(Math.log(1 + share * share)));
  // What was seen stays seen, also where its code falls on a later one of the clock (side shoots).
  const after = (sum_Cd: number): number =>
    Math.max(Math.floor(bbchStart), bbchAt(timeline, from_Cd + sum_Cd));
  const bbch = after(thermalTime_Cd);
  return {
    bbch,
    bbchLow: after(thermalTime_Cd / factor),
    bbchHigh: after(thermalTime_Cd * factor),
    stage: principalOf(bbch),
    flowering_frac: chance(timeline, bbchStart, 61, plant),
    ripe_frac: chance(timeline, bbchStart, 81, plant),
  };
}
