import { expectedStage, stageReached_frac } from "@sillwood/science/growth";
import type { Sight } from "../craft.ts";
import { type Clockwork, codesFrom, growthSettings, waitFor } from "./settings.ts";
import type { Clock, Growing } from "./slice.ts";
import { LAST_CLOCKED } from "./stages.ts";

/** Beyond nine chances in ten of ripe fruit a clock tells no more: flowers, fruit and new leaves go on side by side. @source our assumption */
const SCORE_90 = 1.2815515655446004;
/** Warmth for which ripe fruit that was seen is still the news. @source our assumption: about a month at 22 °C */
const RIPENING_Cd = 350;

/** Guessed, not known; told by the clock; standing until buds break; or past all that a clock knows. */
export type StageState = "guess" | "clocked" | "resting" | "run out";

/** Stage of a plant as its clock has it. */
export interface StageNow {
  readonly state: StageState;
  readonly bbch: number;
  readonly bbchLow: number;
  readonly bbchHigh: number;
}

export const clockworkOf = (
  { pepper_n }: Pick<Growing, "pepper_n">,
  sight: Pick<Sight, "assumed">,
): Clockwork => growthSettings(sight).clockworks[pepper_n] as Clockwork;

/** What the clock of a plant rests on. */
type Clocked = Pick<Growing, "pepper_n" | "clock" | "sum_Cd" | "rest_Cd">;

export function stateNow(
  { pepper_n, clock, sum_Cd, rest_Cd }: Clocked,
  sight: Pick<Sight, "assumed">,
): StageState {
  if (clock.how === "guess") return "guess";
  if (rest_Cd > 0) return "resting";
  const runsOut_Cd =
    clock.bbch >= LAST_CLOCKED ? RIPENING_Cd : runsOutAt_Cd(clock, clockworkOf({ pepper_n }, sight));
  return sum_Cd < runsOut_Cd ? "clocked" : "run out";
}

function runsOutAt_Cd({ bbch, sd_Cd }: Clock, clockwork: Clockwork): number {
  const { median_Cd, sd_ln } = waitFor(clockwork, bbch, LAST_CLOCKED);
  const share = sd_Cd / median_Cd;
  return median_Cd * Math.exp(SCORE_90 * Math.sqrt(Math.log(Math.exp(sd_ln * sd_ln) + share * share)));
}

/** The code in the middle of the range; cheap, since every pour asks for it. */
export function codeNow(growing: Clocked, state: StageState, sight: Pick<Sight, "assumed">): number {
  const { clock, sum_Cd } = growing;
  if (state === "resting") return 0;
  if (state === "guess" || clock.bbch >= LAST_CLOCKED) return clock.bbch;
  const { codes, from_Cd } = codesFrom(clockworkOf(growing, sight), clock.bbch);
  let low = 0;
  let high = codes.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((from_Cd[middle] as number) <= sum_Cd) low = middle;
    else high = middle - 1;
  }
  return Math.max(clock.bbch, codes[low] as number);
}

export function stageNow(growing: Clocked, sight: Pick<Sight, "assumed">): StageNow {
  const { clock, sum_Cd } = growing;
  const state = stateNow(growing, sight);
  const bbch = codeNow(growing, state, sight);
  if (state === "resting") return { state, bbch, bbchLow: bbch, bbchHigh: bbch };
  // No clock goes on from ripe fruit: it stands as it was seen.
  if (state === "guess" || clock.bbch >= LAST_CLOCKED)
    return { state, bbch, bbchLow: clock.bbchLow, bbchHigh: clock.bbchHigh };
  const { plant } = clockworkOf(growing, sight);
  const passed = { thermalTime_Cd: sum_Cd, thermalTimeSd_Cd: clock.sd_Cd };
  const low = expectedStage({ ...plant, ...passed, bbchStart: clock.bbchLow });
  const high =
    clock.bbchHigh === clock.bbchLow
      ? low
      : expectedStage({ ...plant, ...passed, bbchStart: Math.min(LAST_CLOCKED, clock.bbchHigh) });
  return { state, bbch, bbchLow: Math.min(bbch, low.bbchLow), bbchHigh: Math.max(bbch, high.bbchHigh) };
}

/** Chance that a stage has been reached, over the codes between which the plant was when the clock was set. */
export function reached_frac(growing: Clocked, bbch: number, sight: Pick<Sight, "assumed">): number {
  const { clock, sum_Cd, rest_Cd } = growing;
  const { plant } = clockworkOf(growing, sight);
  const from = (bbchStart: number): number => {
    if (bbchStart >= bbch) return 1;
    if (rest_Cd > 0) return 0;
    return stageReached_frac({
      ...plant,
      bbch,
      bbchStart,
      thermalTime_Cd: sum_Cd,
      thermalTimeSd_Cd: clock.sd_Cd,
    });
  };
  const { bbchLow, bbchHigh } = clock;
  if (bbchLow === bbchHigh) return from(clock.bbch);
  return (from(bbchLow) + from(clock.bbch) + from(bbchHigh)) / 3;
}
