import { normalProbability, normalQuantile } from "@sillwood/science/chance";
import { refitRipening, ripening } from "@sillwood/science/fruit";
import type { Sight } from "../craft.ts";
import { fruitSettings } from "./assumptions.ts";
import { behind_Cd, wayOf } from "./fold.ts";
import { pepperOf } from "./pepper.ts";
import type { Cohort, FruitSlice } from "./slice.ts";
import type { Course } from "./warmth.ts";

const DATES_n = 20;
/** Spread of the sum between fruits. Derived from the range of published days; the field growth holds the same. */
const SPREAD_frac = 0.12;
/** Doubt of a colour's place on the way: from first colour to ripe takes 10 to 20 days, 8 times in 10. @source common practice, no source */
const COLOUR_SD_ln = 0.07;
/** Published bases lie so far about ours: it matters the more, the further the air is from where the sums were made. */
const BASE_SD_C = 2;
const SUMS_MADE_C = 24;
/** The air of the weeks ahead is another than expected by about so much. @source our assumption */
const AHEAD_SD_C = 1;
/** A day of opening that nobody wrote down may be off by about so many days. @source our assumption */
const GUESSED_d = 3;

export interface Ripening {
  readonly toRipe_Cd: number;
  readonly spread_frac: number;
  /** Fruits of its own that the sum was drawn towards. */
  readonly own_n: number;
  readonly usual_Cd: number;
}

/** Warmth from flower to ripe of this plant's fruit: of its kind, drawn towards what its own fruits took. */
export function ripeningOf({ own_Cd }: FruitSlice, sight: Sight): Ripening {
  const usual_Cd = pepperOf(sight.plant, sight).ripe_Cd;
  if (own_Cd.length === 0) return { toRipe_Cd: usual_Cd, spread_frac: SPREAD_frac, own_n: 0, usual_Cd };
  const { toRipe_Cd, spread_frac } = refitRipening({
    own_Cd,
    default_Cd: usual_Cd,
    spread_frac: SPREAD_frac,
  });
  return { toRipe_Cd, spread_frac, own_n: own_Cd.length, usual_Cd };
}

export interface Ripe {
  readonly cohort: Cohort;
  readonly behind_Cd: number;
  /** Of the whole sum, its middle. */
  readonly sum_Cd: number;
  readonly sd_ln: number;
  readonly state: "ripe" | "on its way" | "cannot ripen";
  /** Twenty equally likely instants, ascending; none where it cannot ripen. */
  readonly dates_ms: readonly number[];
  /** The coolest air in which it can. */
  readonly floor_C: number;
}

/** When a cohort is ripe: its sum, of which so much lies behind it, walked forward through the air expected. */
export function ripeDates(
  cohort: Cohort,
  slice: FruitSlice,
  course: Course,
  sight: Sight,
  now_ms: number,
): Ripe {
  const known_Cd = ripeningOf(slice, sight);
  const { clock } = pepperOf(sight.plant, sight);
  const warm_Cd = behind_Cd(cohort, slice, now_ms, sight);
  const belief = beliefOf(cohort, known_Cd, warm_Cd, course, sight);
  const isRipe = cohort.colour === "ripe" || cohort.colour === "over-ripe";
  const floor = ripening({
    ...clock,
    air_C: Math.min(60, Math.max(-40, course.month_C)),
    toRipe_Cd: known_Cd.toRipe_Cd,
    ...fruitSettings(sight),
  });
  const known = {
    cohort,
    behind_Cd: warm_Cd,
    sum_Cd: belief.sum_Cd,
    sd_ln: belief.sd_ln,
    floor_C: floor.floor_C,
  };
  if (isRipe) {
    const ripe_ms = Math.min(now_ms, cohort.colouredAt_ms ?? now_ms);
    return { ...known, state: "ripe", dates_ms: new Array<number>(DATES_n).fill(ripe_ms) };
  }
  // It was not ripe when it was last looked at: what would have been ripe by then is out.
  const seen_Cd = cohort.colour === undefined ? 0 : (cohort.colouredAt_Cd ?? 0);
  const out = seen_Cd > 0 ? normalProbability(Math.log(seen_Cd / belief.sum_Cd) / belief.sd_ln) : 0;
  const dates: number[] = [];
  for (let draw = 0; draw < DATES_n; draw += 1) {
    const share = Math.min(0.9999, out + (1 - out) * ((draw + 0.5) / DATES_n));
    const whole_Cd = belief.sum_Cd * Math.exp(belief.sd_ln * normalQuantile(share));
    const at_ms = course.reaches_ms(whole_Cd - warm_Cd);
    if (at_ms === undefined) break;
    dates.push(at_ms);
  }
  const isStuck = dates.length < DATES_n || (!floor.ripens && warm_Cd < belief.sum_Cd);
  return isStuck
    ? { ...known, state: "cannot ripen", dates_ms: [] }
    : { ...known, state: "on its way", dates_ms: dates };
}

/** The sum of one cohort: its kind's, and what its colour says of it, weighed by how sure each is. */
function beliefOf(
  cohort: Cohort,
  { toRipe_Cd, spread_frac, own_n }: Ripening,
  warm_Cd: number,
  course: Course,
  sight: Sight,
) {
  const { base_C } = pepperOf(sight.plant, sight).clock;
  const over_C = Math.max(2, course.month_C - base_C);
  const left = Math.min(1, Math.max(0, 1 - warm_Cd / toRipe_Cd));
  const air = (left * AHEAD_SD_C) / over_C;
  // What its own fruits took, they took in its own air: the base matters no more.
  const base = own_n > 0 ? 0 : BASE_SD_C * Math.abs(1 / over_C - 1 / (SUMS_MADE_C - base_C));
  const opening = cohort.isGuessed ? (GUESSED_d * course.month_Cd_d) / toRipe_Cd : 0;
  const kind_sd = Math.hypot(spread_frac, opening, base);
  const way = wayOf(cohort, sight);
  if (way === undefined || cohort.colour === "ripe" || !cohort.colouredAt_Cd)
    return { sum_Cd: toRipe_Cd, sd_ln: Math.hypot(kind_sd, air) };
  const seen = Math.log(cohort.colouredAt_Cd / way);
  const weight = kind_sd ** 2 / (kind_sd ** 2 + COLOUR_SD_ln ** 2);
  return {
    sum_Cd: Math.exp((1 - weight) * Math.log(toRipe_Cd) + weight * seen),
    sd_ln: Math.hypot(Math.sqrt(1 / (1 / kind_sd ** 2 + 1 / COLOUR_SD_ln ** 2)), air),
  };
}
