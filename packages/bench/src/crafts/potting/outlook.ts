import { once } from "../../working/once.ts";
import type { Outlook, Outward } from "../craft.ts";
import { heldHere, repotDue, saltsDue } from "./due.ts";
import { DRIEST_frac } from "./offers.ts";
import { type PotSlice, potSeen } from "./slice.ts";
import { flushTask, repotTask } from "./tasks.ts";
import { pottingWords } from "./words.ts";
import { capacityWorking, repotWorking, saltWorking } from "./workings.ts";

const DAY_ms = 86_400_000;
/** Days ahead on which the plant page and the round still say that a pot is due. */
const AHEAD_d = 14;
/** How much wider the next pot may be. @source common practice, no source */
const WIDER_AT_MOST_cm = 5;

/** What potting says of a plant now. */
export function potOutlook(slice: PotSlice, sight: Outward): Outlook {
  const due = repotDue(slice, sight);
  const salts = once(() => saltsDue(slice, sight, DRIEST_frac));
  const isDue = due.due_ms - sight.now_ms < AHEAD_d * DAY_ms && !heldHere(slice, sight, "repot");
  const repot = isDue ? repotTask(due, slice, sight) : undefined;
  const flush = flushTask(salts(), slice, sight);
  return {
    tasks: [...(flush ? [flush] : []), ...(repot ? [repot] : [])],
    get workings() {
      return [
        capacityWorking(slice, sight),
        saltWorking(salts(), slice, sight),
        repotWorking(due, slice, sight),
      ];
    },
    problems: slice.problems.map(({ entry }) => ({ entry, message: pottingWords(sight.say).cannotRead })),
    get figures() {
      const seen = potSeen(sight.plant, slice.fill, sight);
      const { refill_mS_cm, driest_mS_cm, extract_mS_cm } = salts();
      return {
        medium_mL: seen.medium_mL,
        airDrained_frac: seen.air_frac,
        waterDrained_frac: seen.drained_frac,
        capacityPrior_g: seen.available_g,
        mediumAge_d: due.age_d,
        potBound_n: due.score,
        repotDue_ms: due.due_ms,
        widerAtMost_cm: WIDER_AT_MOST_cm,
        saltAtRefill_mS_cm: refill_mS_cm,
        saltAtDriest_mS_cm: driest_mS_cm,
        saltExtract_mS_cm: extract_mS_cm,
      };
    },
  };
}
