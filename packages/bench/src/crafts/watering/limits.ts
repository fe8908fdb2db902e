import { CAPACITY, chancePast, DEPLETION, meanOf } from "@sillwood/science/water";
import type { Limit } from "../../round/task.ts";
import type { Say } from "../../words/say.ts";
import type { Sight } from "../craft.ts";
import type { WaterSlice } from "./slice.ts";
import { wateringWords } from "./words.ts";

export const CRAFT = "watering";
/** Beyond this share of the store used, feed would meet a dry medium. @source common practice, no source */
const TOO_DRY_TO_FEED_frac = 0.6;
const WILTING_frac = 0.92;
const LIKELY_frac = 0.5;
const DAY_ms = 86_400_000;

/** What the water in a pot forbids: feeding it dry, cutting it wilted, watering it drowned. None is firm. */
export function waterLimits(slice: WaterSlice, sight: Sight, say: Say): readonly Limit[] {
  const words = wateringWords(say).limit;
  const limit = (work: Limit["work"], why: string, until_ms?: number): Limit => ({
    work,
    on: sight.plant.id,
    from_ms: sight.at_ms,
    ...(until_ms === undefined ? {} : { until_ms }),
    why,
    by: CRAFT,
    firm: false,
  });
  const limits: Limit[] = [];
  const used_frac = meanOf(slice.state, DEPLETION) / meanOf(slice.state, CAPACITY);
  if (slice.droopingWet_ms !== undefined) limits.push(limit("water", words.waterDrowned));
  if (isWilted(slice)) {
    limits.push(limit("cut", words.cutWilted));
    limits.push(limit("feed", words.feedWilted, (slice.wilted_ms ?? sight.at_ms) + 2 * DAY_ms));
  } else if (used_frac > TOO_DRY_TO_FEED_frac) {
    limits.push(limit("feed", words.feedDry(used_frac)));
  }
  return limits;
}

/** Seen hanging from dryness and not seen standing since, or most likely past wilting. */
function isWilted(slice: WaterSlice): boolean {
  return slice.wilted_ms !== undefined || chancePast(slice.state, WILTING_frac) > LIKELY_frac;
}
