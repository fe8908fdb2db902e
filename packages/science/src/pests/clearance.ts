import { within } from "../errors/index.ts";
import { type PestResponse, VERY_MANY_n } from "./response.ts";

/** Somebody looked and saw nothing of this pest; or hung a card; or treated. Days count from the start of the watch. */
export type WatchAct =
  | {
      readonly act: "look";
      readonly day_d: number;
      /** chance to see one that can be seen (grown, or any where nothing hides), and one of the young of a pest that hides */
      readonly sight_frac: number;
      readonly youngSight_frac?: number;
      /** leaves or shoots looked at, over which the pest sits unevenly; left out for a tap or a disc */
      readonly leaves_n?: number;
      /** damage that shows some days after there were several, and the chance to see it: twisted tips of broad mites */
      readonly signs?: { readonly after_d: number; readonly seen_frac: number };
    }
  | { readonly act: "card"; readonly from_d: number; readonly day_d: number; readonly catch_per_d: number }
  | {
      readonly act: "treat";
      readonly day_d: number;
      /** share killed of each stage, coverage counted */
      readonly egg_frac: number;
      readonly young_frac: number;
      readonly pupa_frac: number;
      readonly adult_frac: number;
    };

export type PestWatch = {
  readonly response: PestResponse;
  /** day of the response on which the watch begins, its first unless given */
  readonly start_d?: number;
  /** odds that it is on the plant at the start */
  readonly odds: number;
  /** chance of an arrival on each day */
  readonly arrival_per_d: number;
  /** further arrivals of one day: a neighbour was found with it */
  readonly arrivals?: readonly { readonly day_d: number; readonly odds: number }[];
  /** in the order of days */
  readonly acts: readonly WatchAct[];
  /** expected number left by a course that ended at the start, in place of the usual founders */
  readonly left_n?: number;
  readonly founders_n?: number;
  readonly clumping?: number;
  /** what all sights and rates are multiplied by, for the ends of the band */
  readonly sightTimes?: number;
  readonly rateTimes?: number;
};

/** How unlike the printed pace a pest may live, and how unlike the usual a person may see. @source our assumption */
export const PACES = [0.78, 1, 1.25] as const;
const PACE_WEIGHTS = [0.3, 0.4, 0.3] as const;
export const EYES = [0.45, 1, 1.7] as const;
const EYE_WEIGHTS = [0.3, 0.45, 0.25] as const;
const UNKNOWNS_n = PACES.length * EYES.length;
/** Founders of an infestation that nobody saw begin. @source our assumption */
const FOUNDERS = [
  [1, 0.5],
  [2, 0.25],
  [4, 0.15],
  [8, 0.1],
] as const;
const WEEK_d = 7;
/** So many suck enough for their damage to show. @source our assumption */
const SHOWS_n = 8;
/** Share of a colony of a pest without a hidden stage that flies and can be caught. @source our assumption */
const FLYING_frac = 0.25;

/** One way in which the pest may have come: how many, when, and what became of it at each pace. */
type Hypothesis = {
  readonly animals: number;
  readonly born: number;
  readonly from: "eggs" | "mixture" | "newborn";
  /** by pace and eye */
  readonly weights: Float64Array;
  /** by pace: what treatments left of it */
  readonly kept: Float64Array;
  readonly lag: readonly number[];
};

/** A day of the watch and what is then believed. */
export type ClearancePoint = { readonly day_d: number; readonly free_frac: number };

function hypothesis(
  watch: PestWatch,
  animals: number,
  born: number,
  from: Hypothesis["from"],
  weight: number,
): Hypothesis {
  const weights = new Float64Array(UNKNOWNS_n);
  for (let i = 0; i < PACES.length; i++)
    for (let j = 0; j < EYES.length; j++)
      weights[i * EYES.length + j] = weight * (PACE_WEIGHTS[i] as number) * (EYE_WEIGHTS[j] as number);
  const times = watch.rateTimes ?? 1;
  return {
    animals,
    born,
    from,
    weights,
    kept: new Float64Array(PACES.length).fill(1),
    lag: from === "newborn" ? PACES.map((pace) => watch.response.lagGrowth(born, pace * times)) : [],
  };
}

/** A row read between its days. */
function readAt(row: Float64Array, day: number): number {
  if (day <= 0) return row[0] as number;
  const last = row.length - 1;
  if (day >= last) return row[last] as number;
  const before = Math.floor(day);
  const share = day - before;
  return (row[before] as number) * (1 - share) + (row[before + 1] as number) * share;
}

type Alive = { grown: number; young: number; egg: number; pupa: number };

/** Animals of a hypothesis at the end of a day, at one pace. */
function aliveAt(watch: PestWatch, h: Hypothesis, pace_n: number, day: number): Alive {
  const pace = (PACES[pace_n] as number) * (watch.rateTimes ?? 1);
  const kept = h.kept[pace_n] as number;
  if (day < h.born) return { grown: 0, young: 0, egg: 0, pupa: 0 };
  if (h.from === "newborn") {
    const grown = pace * (readAt(watch.response.growth, day) - (h.lag[pace_n] as number));
    return {
      grown: kept * Math.min(VERY_MANY_n, h.animals * Math.exp(Math.max(0, Math.min(20, grown)))),
      young: 0,
      egg: 0,
      pupa: 0,
    };
  }
  const run = watch.response.hiddenFrom(h.born, h.from);
  const at_d = (day - h.born) * pace;
  const times = kept * h.animals;
  const of = (row: Float64Array): number => Math.min(VERY_MANY_n, times * readAt(row, at_d));
  return {
    grown: of(run.adults_n),
    young: of(run.young_n) + of(run.pupae_n),
    egg: of(run.eggs_n),
    pupa: of(run.pupae_n),
  };
}

/** Adult-days between two days, that a card could have caught from. */
function adultDays(watch: PestWatch, h: Hypothesis, pace_n: number, from_d: number, to_d: number): number {
  const start = Math.max(from_d, h.born);
  if (to_d <= start) return 0;
  if (h.from !== "newborn") {
    const pace = (PACES[pace_n] as number) * (watch.rateTimes ?? 1);
    const run = watch.response.hiddenFrom(h.born, h.from);
    const between =
      readAt(run.adultDays_d, (to_d - h.born) * pace) - readAt(run.adultDays_d, (start - h.born) * pace);
    return (between / pace) * h.animals * (h.kept[pace_n] as number);
  }
  let sum = 0;
  for (let day = start; day < to_d; day += 1)
    sum += aliveAt(watch, h, pace_n, day).grown * Math.min(1, to_d - day);
  return sum * FLYING_frac;
}

/** What a clean look multiplies the weight of a hypothesis by, for one eye, from what one expects to see. */
function missed(expected: number, act: WatchAct & { readonly act: "look" }, clumping: number): number {
  if (act.leaves_n === undefined) return Math.exp(-expected);
  const k = clumping * act.leaves_n;
  return (1 + expected / k) ** -k;
}

function afterLook(watch: PestWatch, h: Hypothesis, act: WatchAct & { readonly act: "look" }): void {
  const { clumping = 0.3, sightTimes = 1 } = watch;
  for (let i = 0; i < PACES.length; i++) {
    const alive = aliveAt(watch, h, i, act.day_d);
    const young = act.youngSight_frac ?? 0;
    const hasSigns =
      act.signs !== undefined && aliveAt(watch, h, i, act.day_d - act.signs.after_d).grown >= SHOWS_n;
    for (let j = 0; j < EYES.length; j++) {
      const eye = (EYES[j] as number) * sightTimes;
      const expected =
        alive.grown * Math.min(0.98, act.sight_frac * eye) + alive.young * Math.min(0.98, young * eye);
      const at = i * EYES.length + j;
      const unseen = hasSigns ? 1 - (act.signs?.seen_frac ?? 0) : 1;
      h.weights[at] = (h.weights[at] as number) * missed(expected, act, clumping) * unseen;
    }
  }
}

function afterCard(watch: PestWatch, h: Hypothesis, act: WatchAct & { readonly act: "card" }): void {
  const { sightTimes = 1 } = watch;
  for (let i = 0; i < PACES.length; i++) {
    const days = adultDays(watch, h, i, act.from_d, act.day_d);
    for (let j = 0; j < EYES.length; j++) {
      const at = i * EYES.length + j;
      h.weights[at] =
        (h.weights[at] as number) * Math.exp(-act.catch_per_d * (EYES[j] as number) * sightTimes * days);
    }
  }
}

/** Survivors count, not what hides: weight goes to the free only by the chance that nothing survived. Returns that weight. */
function afterTreatment(watch: PestWatch, h: Hypothesis, act: WatchAct & { readonly act: "treat" }): number {
  let freed = 0;
  for (let i = 0; i < PACES.length; i++) {
    const alive = aliveAt(watch, h, i, act.day_d);
    const all = alive.grown + alive.young + alive.egg;
    if (all <= 0) continue;
    // A pest without a hidden stage is all ages at once: the egg's share of it takes the egg's kill.
    const left =
      h.from === "newborn"
        ? alive.grown * (0.65 * (1 - act.young_frac) + 0.35 * (1 - Math.max(act.egg_frac, 0)))
        : alive.grown * (1 - act.adult_frac) +
          (alive.young - alive.pupa) * (1 - act.young_frac) +
          alive.pupa * (1 - act.pupa_frac) +
          alive.egg * (1 - act.egg_frac);
    const died = Math.exp(-left);
    h.kept[i] = ((h.kept[i] as number) * left) / all / Math.max(1e-9, 1 - died);
    for (let j = 0; j < EYES.length; j++) {
      const at = i * EYES.length + j;
      const weight = h.weights[at] as number;
      freed += weight * died;
      h.weights[at] = weight * (1 - died);
    }
  }
  return freed;
}

const sumOf = (row: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < row.length; i++) sum += row[i] as number;
  return sum;
};

function firstHypotheses(watch: PestWatch): Hypothesis[] {
  const infested = watch.odds / (1 + watch.odds);
  const { founders_n = 3, left_n, start_d: start = 0 } = watch;
  if (watch.response.clock.stages)
    return (["eggs", "mixture"] as const).map((from) =>
      hypothesis(watch, founders_n, start, from, infested / 2),
    );
  if (left_n === undefined)
    return FOUNDERS.map(([animals, share]) => hypothesis(watch, animals, start, "newborn", infested * share));
  // Survivors of a course: at least one, by Poisson.
  const all = Math.max(1e-6, 1 - Math.exp(-left_n));
  let share = Math.exp(-left_n);
  return Array.from({ length: 8 }, (_, i) => {
    share *= left_n / (i + 1);
    return hypothesis(watch, i + 1, start, "newborn", (infested * share) / all);
  });
}

/**
 * The chance that a plant is free of a pest, as clean looks, cards and treatments add up, against arrivals.
 *
 * Free, or infested since the start or since some week, each way growing in the air of the days. A clean look multiplies each way
 * by its chance to have missed what would be there then: exp(−s N), or (1 + s N/(κ n))^(−κ n) over n leaves; a card by
 * exp(−h adult-days); a treatment leaves survivors and moves the chance of none to the free. Each day arrivals take from the free.
 * Doubt of the pest's pace and of the person's eye is carried along.
 *
 * @param watch response of the pest in that air; odds at the start, 0.0001 to 10000; chance of an arrival a day, 0 to 0.5; acts in the order of days
 * @param days_d days on which the chance is wanted [d], rising, 0 to the days of the response
 * @returns chance of being free at the end of each of them
 * @throws QuantityError outside those ranges
 * @source our assumption: Bayes with growing detectability; Martin2007 for arrivals
 * @see checks/pests.json 069-079 for its parts
 */
export function clearancePath(watch: PestWatch, days_d: readonly number[]): readonly ClearancePoint[] {
  const { arrival_per_d, acts, arrivals = [], start_d = 0 } = watch;
  within("odds", watch.odds, 0.0001, 10_000);
  within("arrival_per_d", arrival_per_d, 0, 0.5);
  const hypotheses = firstHypotheses(watch);
  let free = 1 / (1 + watch.odds);
  let reached = start_d;
  let week: Hypothesis | undefined;
  const points: ClearancePoint[] = [];
  const begin = (born: number): Hypothesis => {
    const { stages } = watch.response.clock;
    const made = hypothesis(
      watch,
      stages ? (watch.founders_n ?? 3) : 1,
      born,
      stages ? "eggs" : "newborn",
      0,
    );
    hypotheses.push(made);
    return made;
  };
  const arrive = (into: Hypothesis, share: number): void => {
    for (let i = 0; i < PACES.length; i++)
      for (let j = 0; j < EYES.length; j++) {
        const at = i * EYES.length + j;
        const part = (PACE_WEIGHTS[i] as number) * (EYE_WEIGHTS[j] as number);
        into.weights[at] = (into.weights[at] as number) + free * share * part;
      }
    free *= 1 - share;
  };
  const carry = (to: number): void => {
    while (reached < to) {
      const starts = start_d + Math.floor((reached - start_d) / WEEK_d) * WEEK_d;
      const until = Math.min(to, starts + WEEK_d);
      const born = Math.floor(starts + WEEK_d / 2);
      if (week?.born !== born) week = begin(born);
      arrive(week, 1 - (1 - arrival_per_d) ** (until - reached));
      reached = until;
    }
  };
  const ordered = [
    ...acts.map((act) => ({ day: act.day_d, act })),
    ...arrivals.map(({ day_d, odds }) => ({ day: day_d, odds })),
  ].sort((one, other) => one.day - other.day);
  let next = 0;
  for (const day_d of days_d) {
    within("day_d", day_d, 0, watch.response.days_n);
    for (let each = ordered[next]; each && each.day <= day_d; next++, each = ordered[next]) {
      carry(each.day);
      if (!("act" in each)) arrive(begin(Math.floor(each.day)), each.odds / (1 + each.odds));
      else if (each.act.act === "treat")
        for (const h of hypotheses) free += afterTreatment(watch, h, each.act);
      else if (each.act.act === "card") for (const h of hypotheses) afterCard(watch, h, each.act);
      else for (const h of hypotheses) afterLook(watch, h, each.act);
    }
    carry(day_d);
    const infested = hypotheses.reduce((sum, h) => sum + sumOf(h.weights), 0);
    points.push({ day_d, free_frac: free / (free + infested) });
  }
  return points;
}

/**
 * First day of a watch before which nothing can be declared, however clean the looks: what was laid on its first day still hides.
 *
 * hidden development (1 + 2 CV), then the first look after it
 *
 * @param response the pest in that air
 * @param spread_frac spread of development, 0.01 to 0.5
 * @param start_d day of the response on which the watch began, its first unless given
 * @returns day of the watch [d]; beyond the response's days where it is not over by then
 * @throws QuantityError outside that range
 * @source our assumption; Bradysia1998 for the gnat's time
 */
export function hiddenFloor_d(response: PestResponse, spread_frac: number, start_d = 0): number {
  within("spread_frac", spread_frac, 0.01, 0.5);
  within("start_d", start_d, 0, response.days_n);
  const end = (response.hidden[Math.floor(start_d)] as number) + 1 + 2 * spread_frac;
  for (let day = Math.floor(start_d); day <= response.days_n; day++)
    if ((response.hidden[day] as number) >= end) return day;
  return response.days_n + 1;
}
