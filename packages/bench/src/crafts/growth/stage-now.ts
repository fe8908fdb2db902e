import { expectedStage, stageReached_frac } from "@sillwood/science/growth";
import type { Sight } from "../craft.ts";
import { type Clockwork, growthSettings } from "./settings.ts";
import type { GrowthSlice } from "./slice.ts";
import { LAST_CLOCKED } from "./stages.ts";

/** Beyond this chance of ripe fruit a clock tells no more: flowers, fruit and new leaves go on side by side. @source our assumption */
const RUN_OUT_frac = 0.9;
/** Warmth for which ripe fruit that was seen is still the news. @source our assumption: about a month at 22 °C */
const RIPENING_Cd = 350;

/** Stage of a plant as its clock has it. */
export interface StageNow {
  /** Guessed, not known; told by the clock; standing until buds break; or past all that a clock knows. */
  readonly state: "guess" | "clocked" | "resting" | "run out";
  readonly bbch: number;
  readonly bbchLow: number;
  readonly bbchHigh: number;
}

export const clockworkOf = (slice: GrowthSlice, sight: Pick<Sight, "assumed">): Clockwork =>
  growthSettings(sight).clockworks[slice.pepper_n] as Clockwork;

export function stageNow(slice: GrowthSlice, sight: Pick<Sight, "assumed">): StageNow {
  const { clock, sum_Cd } = slice;
  const { bbch, bbchLow, bbchHigh } = clock;
  if (clock.how === "guess") return { state: "guess", bbch, bbchLow, bbchHigh };
  if (slice.rest_Cd > 0) return { state: "resting", bbch: 0, bbchLow: 0, bbchHigh: 0 };
  // No clock goes on from ripe fruit: it stands as it was seen.
  if (bbch >= LAST_CLOCKED)
    return { state: sum_Cd < RIPENING_Cd ? "clocked" : "run out", bbch, bbchLow, bbchHigh };
  const { plant } = clockworkOf(slice, sight);
  const passed = { thermalTime_Cd: sum_Cd, thermalTimeSd_Cd: clock.sd_Cd };
  const middle = expectedStage({ ...plant, ...passed, bbchStart: bbch });
  const low = bbchLow === bbch ? middle : expectedStage({ ...plant, ...passed, bbchStart: bbchLow });
  const high =
    bbchHigh === bbch
      ? middle
      : expectedStage({ ...plant, ...passed, bbchStart: Math.min(LAST_CLOCKED, bbchHigh) });
  return {
    state: middle.ripe_frac >= RUN_OUT_frac ? "run out" : "clocked",
    bbch: middle.bbch,
    bbchLow: low.bbchLow,
    bbchHigh: high.bbchHigh,
  };
}

/** Chance that a stage has been reached, over the codes between which the plant was when the clock was set. */
export function reached_frac(slice: GrowthSlice, bbch: number, sight: Pick<Sight, "assumed">): number {
  const { clock, sum_Cd, rest_Cd } = slice;
  const { plant } = clockworkOf(slice, sight);
  const from = (bbchStart: number): number =>
    bbchStart >= bbch
      ? 1
      : rest_Cd > 0
        ? 0
        : stageReached_frac({
            ...plant,
            bbch,
            bbchStart,
            thermalTime_Cd: sum_Cd,
            thermalTimeSd_Cd: clock.sd_Cd,
          });
  const { bbchLow, bbchHigh } = clock;
  if (bbchLow === bbchHigh) return from(clock.bbch);
  return (from(bbchLow) + from(clock.bbch) + from(bbchHigh)) / 3;
}
