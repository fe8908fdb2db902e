import { RIPE_LEAST_d, scoville, wayOfColour_frac } from "@sillwood/science/fruit";
import type { Happening, Sight } from "../craft.ts";
import { fruitSettings } from "./assumptions.ts";
import {
  type Aimed,
  type Assayed,
  type Brushed,
  type Coloured,
  type Counted,
  type Dropped,
  type Flowered,
  kinds,
  type Picked,
  type Seeded,
  type Tagged,
  type Tested,
  type Thinned,
} from "./kinds.ts";
import { pepperOf } from "./pepper.ts";
import type { Cohort, CountOf, FruitProblem, FruitSlice } from "./slice.ts";
import { warmthBetween_Cd } from "./warmth.ts";

const DAY_ms = 86_400_000;
const NOON_ms = DAY_ms / 2;
const KEPT = { brushes: 4, problems: 5, cohorts: 60, own: 40, lots: 40 } as const;

/** What happened to the plant, folded into the slice. Total: what makes no sense becomes a problem of the slice. */
export function fruitFold(slice: FruitSlice, happening: Happening, sight: Sight): FruitSlice {
  let next = slice;
  for (const effect of happening.effects) {
    if (effect.effect === "moved") next = movedTo(next, effect.to, happening.at_ms, sight);
    // Its own entries say more than their effects do.
    else if (happening.own === undefined && effect.effect === "fruit")
      next = fewer(next, "fruits", effect.change_n);
    else if (happening.own === undefined && effect.effect === "flowers")
      next = fewer(next, "open", effect.change_n);
  }
  if (!happening.own) return next;
  try {
    return own(next, happening, sight);
  } catch {
    // Data that passed no gate (an older book, a foreign hand) must not stop the fold.
    return withProblem(next, happening, "cannot be read");
  }
}

const withProblem = (
  slice: FruitSlice,
  { entry, at_ms }: Happening,
  what: FruitProblem["what"],
  days_n?: number,
): FruitSlice => ({
  ...slice,
  problems: [
    ...slice.problems.slice(1 - KEPT.problems),
    { entry, at_ms, what, ...(days_n === undefined ? {} : { days_n }) },
  ],
});

/** Warmth behind a cohort at an instant. */
export const behind_Cd = (cohort: Cohort, slice: FruitSlice, at_ms: number, sight: Sight): number =>
  cohort.banked_Cd +
  (at_ms > cohort.from_ms
    ? warmthBetween_Cd(pepperOf(sight.plant, sight), sight, slice.spot, cohort.from_ms, at_ms)
    : 0);

/** What a fruit had where it stood stays with it. */
function movedTo(slice: FruitSlice, spot: string, at_ms: number, sight: Sight): FruitSlice {
  if (slice.spot === spot) return slice;
  return {
    ...slice,
    spot,
    cohorts: slice.cohorts.map((cohort) => ({
      ...cohort,
      banked_Cd: behind_Cd(cohort, slice, at_ms, sight),
      from_ms: Math.max(cohort.from_ms, at_ms),
    })),
  };
}

function fewer(slice: FruitSlice, what: "fruits" | "open", change_n: number): FruitSlice {
  const counted = slice[what];
  if (!counted || !Number.isFinite(change_n)) return slice;
  return { ...slice, [what]: { ...counted, n: Math.max(0, counted.n + change_n) } };
}

function countOf(n: unknown, at_ms: number, roughly?: boolean): CountOf {
  if (!(typeof n === "number" && n >= 0 && n < 1e5)) throw new RangeError("not a count");
  return { n, at_ms, ...(roughly ? { roughly: true } : {}) };
}

/** Counted on one branch: the plant's count is the sum of its branches, where they were counted within two weeks. */
const TOGETHER_ms = 14 * DAY_ms;
function onBranch(
  by: Readonly<Record<string, CountOf>>,
  branch: string,
  counted: CountOf,
): { readonly by: Readonly<Record<string, CountOf>>; readonly all: CountOf } {
  const next = { ...by, [branch]: counted };
  const recent = Object.values(next).filter(({ at_ms }) => counted.at_ms - at_ms <= TOGETHER_ms);
  return { by: next, all: { ...counted, n: recent.reduce((sum, { n }) => sum + n, 0) } };
}

function lessOn(
  by: Readonly<Record<string, CountOf>>,
  branch: string | undefined,
  fewer_n: number,
): Readonly<Record<string, CountOf>> {
  const counted = branch === undefined ? undefined : by[branch];
  return counted && branch !== undefined
    ? { ...by, [branch]: { ...counted, n: Math.max(0, counted.n - fewer_n) } }
    : by;
}

function own(slice: FruitSlice, happening: Happening, sight: Sight): FruitSlice {
  const { at_ms } = happening;
  const { kind, data } = happening.own as NonNullable<Happening["own"]>;
  switch (kind) {
    case kinds.flowered.kind: {
      const { open_n, buds_n, branch, roughly } = data as unknown as Flowered;
      const open = countOf(open_n, at_ms, roughly);
      const buds = buds_n === undefined ? {} : { buds: countOf(buds_n, at_ms, roughly) };
      if (branch === undefined) return { ...slice, ...buds, open, openBy: {} };
      const { by, all } = onBranch(slice.openBy, branch, open);
      return { ...slice, open: all, openBy: by };
    }
    case kinds.brushed.kind: {
      const { open_n } = data as unknown as Brushed;
      const brushes_ms = [...slice.brushes_ms.slice(1 - KEPT.brushes), at_ms];
      const isNews = !slice.open || slice.open.n < open_n;
      return { ...slice, brushes_ms, ...(isNews ? { open: countOf(open_n, at_ms) } : {}) };
    }
    case kinds.counted.kind: {
      const { fruits_n, branch, roughly } = data as unknown as Counted;
      const fruits = countOf(fruits_n, at_ms, roughly);
      if (branch === undefined) return { ...slice, fruits, fruitsBy: {} };
      const { by, all } = onBranch(slice.fruitsBy, branch, fruits);
      return { ...slice, fruits: all, fruitsBy: by };
    }
    case kinds.thinned.kind: {
      const { what, removed_n, branch } = data as unknown as Thinned;
      return taken(slice, what, removed_n, branch);
    }
    case kinds.dropped.kind: {
      const { what, dropped_n, branch } = data as unknown as Dropped;
      return {
        ...taken(slice, what, dropped_n, branch),
        dropped: { ...slice.dropped, [what]: slice.dropped[what] + dropped_n },
        droppedAt_ms: at_ms,
      };
    }
    case kinds.tagged.kind:
      return tagged(slice, data as unknown as Tagged, happening, sight);
    case kinds.coloured.kind:
      return coloured(slice, data as unknown as Coloured, happening, sight);
    case kinds.picked.kind:
      return picked(slice, data as unknown as Picked, happening, sight);
    case kinds.aimed.kind: {
      const { aim } = data as unknown as Aimed;
      return { ...slice, aim: aim === "many" ? "many" : "full" };
    }
    case kinds.assayed.kind: {
      const { content_ug_g, heat_n, basis, water_frac, method } = data as unknown as Assayed;
      return {
        ...slice,
        assay: {
          heat_n: heat_n ?? scoville({ content_ug_g: content_ug_g ?? 0 }),
          basis,
          ...(water_frac === undefined ? {} : { water_frac }),
          ...(method === undefined ? {} : { method }),
          at_ms,
        },
      };
    }
    case kinds.seeded.kind: {
      const { lot, fruits_n, seeds_n, kept } = data as unknown as Seeded;
      const lots = slice.lots.filter((each) => each.lot !== lot).slice(1 - KEPT.lots);
      const taken = { lot, at_ms, fruits_n, kept, ...(seeds_n === undefined ? {} : { seeds_n }) };
      return { ...slice, lots: [...lots, taken] };
    }
    case kinds.tested.kind: {
      const { lot, tested_n, germinated_n } = data as unknown as Tested;
      const tested = { tested_n, germinated_n, testedAt_ms: at_ms };
      const isKnown = slice.lots.some((each) => each.lot === lot);
      const lots = isKnown
        ? slice.lots.map((each) => (each.lot === lot ? { ...each, ...tested } : each))
        : [...slice.lots.slice(1 - KEPT.lots), { lot, at_ms, fruits_n: 0, kept: "none" as const, ...tested }];
      return { ...slice, lots };
    }
    default:
      return slice;
  }
}

function taken(
  slice: FruitSlice,
  what: "buds" | "flowers" | "fruits",
  removed_n: number,
  branch: string | undefined,
): FruitSlice {
  if (what === "fruits")
    return { ...fewer(slice, "fruits", -removed_n), fruitsBy: lessOn(slice.fruitsBy, branch, removed_n) };
  if (what === "flowers")
    return { ...fewer(slice, "open", -removed_n), openBy: lessOn(slice.openBy, branch, removed_n) };
  const { buds } = slice;
  return buds ? { ...slice, buds: { ...buds, n: Math.max(0, buds.n - removed_n) } } : slice;
}

function tagged(slice: FruitSlice, data: Tagged, happening: Happening, sight: Sight): FruitSlice {
  const { fruits_n, openedOn, tag, branch } = data;
  const { at_ms } = happening;
  const opened_ms = openedOn === undefined ? at_ms : sight.airAt(slice.spot, openedOn).from_ms + NOON_ms;
  if (!Number.isFinite(opened_ms)) throw new RangeError("not a date");
  if (opened_ms > at_ms + DAY_ms) return withProblem(slice, happening, "opens later");
  const id = tag ?? `${slice.cohorts.length + slice.picked_n + 1}`;
  const cohort: Cohort = {
    id,
    fruits_n,
    ...(branch === undefined ? {} : { branch }),
    opened_ms,
    ...(openedOn === undefined ? { isGuessed: true as const } : {}),
    banked_Cd: 0,
    from_ms: opened_ms,
  };
  const others = slice.cohorts.filter((each) => each.id !== id);
  return { ...slice, cohorts: [...others.slice(1 - KEPT.cohorts), cohort] };
}

/** The cohort with that tag; without one, the oldest. */
const meant = (slice: FruitSlice, tag: string | undefined): Cohort | undefined =>
  tag === undefined
    ? slice.cohorts.toSorted((a, b) => a.opened_ms - b.opened_ms)[0]
    : slice.cohorts.find(({ id }) => id === tag);

/** Colours that tell how far a fruit is; before, it only grows. */
const TELLS = ["breaker", "turning", "colouring", "ripe"];

function coloured(slice: FruitSlice, data: Coloured, happening: Happening, sight: Sight): FruitSlice {
  const { colour, tag } = data;
  const cohort = meant(slice, tag);
  const { at_ms } = happening;
  if (!cohort) return colour === "ripe" ? { ...slice, ripeFrom_ms: at_ms } : slice;
  const warm_Cd = behind_Cd(cohort, slice, at_ms, sight);
  const seen: Cohort = { ...cohort, colour, colouredAt_Cd: warm_Cd, colouredAt_ms: at_ms };
  const cohorts = slice.cohorts.map((each) => (each === cohort ? seen : each));
  const next = { ...slice, cohorts };
  if (colour !== "ripe" && colour !== "over-ripe") return next;
  return ownSum(next, cohort, seen, happening);
}

/** Ripe at last: between the look before and this one its colour came. What the clock makes of it is its own sum. */
function ownSum(slice: FruitSlice, before: Cohort, seen: Cohort, happening: Happening): FruitSlice {
  const days = (happening.at_ms - seen.opened_ms) / DAY_ms;
  if (days < RIPE_LEAST_d) return withProblem(slice, happening, "ripe too soon", Math.floor(days));
  if (before.colour === "ripe" || before.isGuessed) return slice;
  const { colouredAt_Cd: now_Cd = 0 } = seen;
  const from_Cd =
    before.colour !== undefined && TELLS.includes(before.colour) ? before.colouredAt_Cd : undefined;
  if (from_Cd === undefined) return slice;
  const sum_Cd = (from_Cd + now_Cd) / 2;
  if (!(sum_Cd > 100 && sum_Cd < 4000)) return slice;
  return { ...slice, own_Cd: [...slice.own_Cd.slice(1 - KEPT.own), sum_Cd] };
}

function picked(slice: FruitSlice, data: Picked, happening: Happening, sight: Sight): FruitSlice {
  const { fruits_n, mass_g, colour, tag, branch } = data;
  let next =
    colour === undefined
      ? slice
      : coloured(slice, { colour, ...(tag === undefined ? {} : { tag }) }, happening, sight);
  const cohort =
    tag === undefined && colour !== "ripe" && colour !== undefined ? undefined : meant(next, tag);
  if (cohort) {
    const left_n = cohort.fruits_n - fruits_n;
    next = {
      ...next,
      cohorts: next.cohorts.flatMap((each) =>
        each !== cohort ? [each] : left_n > 0 ? [{ ...each, fruits_n: left_n }] : [],
      ),
    };
  }
  next = {
    ...fewer(next, "fruits", -fruits_n),
    fruitsBy: lessOn(next.fruitsBy, branch ?? cohort?.branch, fruits_n),
  };
  const { ripeFrom_ms: _gone, ...rest } = next;
  return {
    ...rest,
    picked_n: next.picked_n + fruits_n,
    picked_g: next.picked_g + (mass_g ?? 0),
    ...(mass_g === undefined
      ? {}
      : { weighed_n: next.weighed_n + fruits_n, weighed_g: next.weighed_g + mass_g }),
  };
}

/** Share of the way from flower to ripe that lies behind such a colour. */
export const wayOf = (cohort: Cohort, sight: Sight): number | undefined =>
  cohort.colour !== undefined && TELLS.includes(cohort.colour)
    ? wayOfColour_frac({ colour: cohort.colour, ...fruitSettings(sight) })
    : undefined;
