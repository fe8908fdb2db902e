import {
  CAPACITY,
  DEPLETION,
  DRAINED,
  drainedBelief,
  type Measured,
  meanOf,
  measured,
  mixed,
  notEmpty,
  type PotState,
  setAnew,
  withMoreDoubt,
} from "@sillwood/science/water";
import type { Happening, Sight } from "../craft.ts";
import { changed } from "./changed.ts";
import type { Weighed } from "./kinds.ts";
import { believing, lastFew, type WaterProblem, type WaterSlice } from "./slice.ts";

/** Weights tell depletion and drained weight; the capacity is not theirs to move. */
const WEIGHT = { weights: [-1, 0, 0, 1], considered: [CAPACITY] };
/** But at lasting wilt it is the capacity that the weight tells. */
const WEIGHT_AT_WILT = { weights: [-1, 0, 0, 1] };
const AT_WILT = { weights: [1, 0, 0, 0, 0, -1] };
/** A weight further off than this many sd is held until somebody says that it is true. */
const GATE_sd = 4;
/** A scale reads to its step, and to about this share of the weight. @source air-water sheet F4 */
const SCALE_SD_frac = 0.003;
/** Lasting wilt is seen within about this share of the capacity. @source air-water sheet S1 */
const WILT_SD_frac = 0.08;
/** From here on a heavier pot is compared with one that was watered without a word. */
const UNLIKELY_sd = 1;
/** Between two weights this share of pots got water that nobody wrote down. @source our assumption */
const UNWRITTEN_frac = 0.05;
const UNWRITTEN_POUR_frac = 0.5;
const SURPRISE_MEMORY = 0.8;
const MOST_SURPRISE = 9;
const WEIGHTS_n = 8;
const HELD_n = 4;
const ERRORS_n = 4;
const PROBLEMS_n = 8;
/** Errors of the demand are only worth telling the neighbours once so much of the store was used. */
const WORTH_TELLING_frac = 0.05;
const MINUTE_ms = 60_000;
/** A pot weighed as just drained within this time of a pour drained from that pour. @source our assumption */
const DRAINED_AT_frac = 0.05;
const DRAINED_SD_frac = 0.08;
const DRAINING_ms = 6 * 3_600_000;
const MONTH_ms = 30 * 86_400_000;

/** A weight (F4): c - D seen through the scale; a surprising one is held and not used. */
export function withWeighing(slice: WaterSlice, happening: Happening, sight: Sight): WaterSlice {
  const data = happening.own?.data as unknown as Weighed;
  const at = changed(slice, { at_ms: Math.max(slice.at_ms, happening.at_ms) });
  const told = withState(at, data, happening.at_ms);
  const sd_g = Math.max(sight.assumed("scaleStep_g"), SCALE_SD_frac * data.weight_g);
  const sum = data.state === "at lasting wilt" ? WEIGHT_AT_WILT : WEIGHT;
  let seen = measured(told.state, sum, data.weight_g, sd_g);
  const sd_all_g = Math.sqrt(seen.innovationVariance);
  const surprise = Math.abs(seen.innovation) / sd_all_g;
  if (surprise > GATE_sd) {
    if (data.confirmed !== true) return withHeld(slice, happening, data, seen, sd_all_g);
    // Looked at again and true: something was put on, taken off or never known, so the drained weight gives way.
    const open = withMoreDoubt(told.state, DRAINED, Math.abs(seen.innovation));
    seen = measured(open, sum, data.weight_g, sd_g);
  }
  const stands = data.state !== "at lasting wilt" && told.wilted_ms === undefined;
  const weighedState = unwritten(told.state, seen, data, sd_g);
  const next = believing(told, stands ? notEmpty(weighedState) : weighedState);
  const used_g = told.ledger.used_g - (told.seen?.used_g ?? Number.NaN);
  const telling =
    data.state === "as found" &&
    used_g > WORTH_TELLING_frac * meanOf(told.state, CAPACITY) &&
    surprise <= GATE_sd;
  const weight = {
    entry: happening.entry,
    at_ms: happening.at_ms,
    weight_g: data.weight_g,
    state: data.state,
    used: true,
  };
  return changed(next, {
    surprise:
      data.state === "as found"
        ? SURPRISE_MEMORY * told.surprise + (1 - SURPRISE_MEMORY) * Math.min(MOST_SURPRISE, surprise ** 2)
        : told.surprise,
    seen: { at_ms: happening.at_ms, used_g: told.ledger.used_g },
    weights: lastFew(told.weights, weight, WEIGHTS_n),
    held: told.held.filter((each) => each.at_ms < happening.at_ms - MONTH_ms * 12),
    errors: telling
      ? lastFew(
          told.errors,
          {
            at_ms: happening.at_ms,
            ln: Math.max(-1.5, Math.min(1.5, -seen.innovation / used_g)),
            variance: seen.innovationVariance / used_g ** 2,
          },
          ERRORS_n,
        )
      : told.errors,
    problems: problemsWith(told, happening, data),
  });
}

/**
 * A pot heavier than expected may have been watered without a word: then the weight speaks of the water in it and not of
 * how little the plant uses. Both readings are weighed by how well they explain the number.
 */
function unwritten(before: PotState, seen: Measured, data: Weighed, sd_g: number): PotState {
  if (data.state !== "as found" || seen.innovation < UNLIKELY_sd * Math.sqrt(seen.innovationVariance)) {
    return seen.state;
  }
  const open = withMoreDoubt(before, DEPLETION, UNWRITTEN_POUR_frac * meanOf(before, CAPACITY));
  const poured = measured(open, WEIGHT, data.weight_g, sd_g);
  const plain = likelihood(seen) * (1 - UNWRITTEN_frac);
  const other = likelihood(poured) * UNWRITTEN_frac;
  return mixed(seen.state, poured.state, other / (plain + other));
}

const likelihood = ({ innovation, innovationVariance }: Measured): number =>
  Math.exp(-0.5 * (innovation ** 2 / innovationVariance)) / Math.sqrt(innovationVariance);

/** What the state in which it was weighed says by itself. */
function withState(slice: WaterSlice, data: Weighed, at_ms: number): WaterSlice {
  const capacity_g = meanOf(slice.state, CAPACITY);
  if (data.state === "just drained") {
    const pour = slice.pours.at(-1);
    if (pour && pour.drained !== "no" && at_ms - pour.at_ms < DRAINING_ms) {
      // The pour is written and has said its part; that somebody calls it drained rules out that it ran past.
      const told = measured(
        slice.state,
        { weights: [1] },
        DRAINED_AT_frac * capacity_g,
        DRAINED_SD_frac * capacity_g,
      );
      return believing(slice, told.state);
    }
    return changed(believing(slice, setAnew(slice.state, DEPLETION, drainedBelief(slice.state))), {
      surfaceLost_mm: 0,
    });
  }
  if (data.state === "at lasting wilt") {
    const wilted = measured(slice.state, AT_WILT, 0, WILT_SD_frac * capacity_g);
    return changed(believing(slice, wilted.state), { capacityFrom: "dry-down" });
  }
  return slice;
}

function withHeld(
  slice: WaterSlice,
  happening: Happening,
  data: Weighed,
  seen: { readonly innovation: number },
  sd_g: number,
): WaterSlice {
  const expected_g = data.weight_g - seen.innovation;
  const band = { low_g: expected_g - 1.2816 * sd_g, high_g: expected_g + 1.2816 * sd_g };
  const of = { entry: happening.entry, at_ms: happening.at_ms };
  return changed(slice, {
    held: lastFew(slice.held, { ...of, weight_g: data.weight_g, ...band }, HELD_n),
    weights: lastFew(
      slice.weights,
      { ...of, weight_g: data.weight_g, state: data.state, used: false },
      WEIGHTS_n,
    ),
    problems: lastFew(
      slice.problems,
      { ...of, what: "held weight", weight_g: data.weight_g, ...band },
      PROBLEMS_n,
    ),
  });
}

/** Wrong-looking weights that are used all the same (air-water sheet, bad input). */
function problemsWith(slice: WaterSlice, happening: Happening, data: Weighed): readonly WaterProblem[] {
  const of = { entry: happening.entry, at_ms: happening.at_ms };
  const last = slice.weights.filter((weight) => weight.used).at(-1);
  if (!last) return slice.problems;
  const problems: WaterProblem[] = [];
  const poured = slice.pours.some((pour) => pour.at_ms > last.at_ms - MINUTE_ms);
  // Weighed, watered and weighed again within a minute is a habit, not a slip.
  const again = !poured && data.state === last.state && happening.at_ms - last.at_ms < MINUTE_ms;
  if (again && Math.abs(data.weight_g - last.weight_g) > 5) {
    problems.push({ ...of, what: "two weights", weight_g: data.weight_g, other_g: last.weight_g });
  }
  const gain_g = data.weight_g - last.weight_g;
  const noticeable_g = Math.max(5, 0.02 * data.weight_g);
  if (!poured && data.state === "as found" && gain_g > noticeable_g && slice.ledger.rain_g === 0) {
    problems.push({ ...of, what: "gained without water", weight_g: data.weight_g, gain_g });
  }
  const drained = slice.weights.find((weight) => weight.used && weight.state === "just drained");
  if (data.state === "just drained" && drained && happening.at_ms > drained.at_ms) {
    const months = (happening.at_ms - drained.at_ms) / MONTH_ms;
    const gain_frac = data.weight_g / drained.weight_g - 1;
    if (months > 0.5 && gain_frac / months > 0.05) {
      problems.push({ ...of, what: "drained weight rising", weight_g: data.weight_g, gain_frac });
    }
  }
  return problems.reduce((all, problem) => lastFew(all, problem, PROBLEMS_n), slice.problems);
}
