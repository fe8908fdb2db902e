import type { EntryId, Json, PersonId } from "@sillwood/bench/book";
import type { Happening, Outward } from "@sillwood/bench/crafts";
import { freeByDay, type ScoutSlice, scoutFold, scouting } from "@sillwood/bench/crafts/scouting";
import { exactInterval } from "@sillwood/science/pests";
import {
  type Origin,
  origins,
  type WatchedPlant,
  type WatchedRun,
  watchedRun,
} from "@sillwood/simulator/pests";

const DAY_ms = 86_400_000;
const DAY0_ms = Date.UTC(2025, 0, 1);
/** What a treated plant's find and course took before the watch began. */
const BEFORE_d = 40;
const HABIT_d = 14;
const values = new Map(scouting.assumptions.map(({ key, value }) => [key, value]));

/** A day of a plant on which nothing had been found yet: what was said, and what was so. */
export interface PlantDay {
  readonly origin: Origin;
  readonly run: number;
  readonly plant: number;
  readonly day: number;
  readonly said_frac: number;
  readonly isFree: boolean;
  readonly clean_d: number;
}

const at = (day: number, hour = 12) => DAY0_ms + (day + BEFORE_d) * DAY_ms + hour * 3_600_000;

/** What its people would have written into the book. */
function entriesOf(plant: WatchedPlant): { day: number; kind: string; data: Json }[] {
  const entries: { day: number; kind: string; data: Json }[] = [];
  const add = (day: number, kind: string, data: object) =>
    entries.push({ day, kind: `scouting.${kind}`, data: data as Json });
  if (plant.treated) {
    const { name, counted_n, sprays_n, every_d } = plant.treated;
    const first = -(sprays_n - 1) * every_d;
    add(first - 1, "looked", {
      way: "lens",
      tips_n: 3,
      leaves_n: 12,
      found: [{ pest: name, count_n: counted_n }],
    });
    for (let spray = 0; spray < sprays_n; spray++)
      add(first + spray * every_d, "treated", {
        tool: "soap",
        against: [name],
        product: "soap",
        reentry_h: 0,
        preharvest_d: 0,
        coverage_frac: 0.85,
        course_n: sprays_n,
        every_d,
      });
  } else
    add(0, "arrived", {
      from: { quiet: "own room", exposed: "outdoors", bought: "bought", treated: "own room" }[plant.origin],
    });
  for (const { day, way, out_d, found } of plant.acts) {
    const seen = Object.entries(found).map(([pest, count_n]) => ({ pest, count_n }));
    if (way === "card") add(day, "card", { out_d, cards_n: 1, caught: seen });
    else if (way === "tap" || way === "disc") add(day, "looked", { way, found: seen });
    else add(day, "looked", { way, tips_n: 3, leaves_n: 12, stem: true, found: seen });
  }
  return entries;
}

/** The moment as the craft sees it, in the air of the run. */
function sightOf(run: WatchedRun, now_ms: number): Outward {
  const days = new Map<string, object>();
  const dateOf = (ms: number) => new Date(ms).toISOString().slice(0, 10);
  const airAt = (_spot: string | undefined, date: string) => {
    let day = days.get(date);
    if (!day) {
      const from_ms = Date.parse(`${date}T00:00:00Z`);
      const n = Math.round((from_ms - DAY0_ms) / DAY_ms) - BEFORE_d;
      const mean = run.means_C[Math.min(run.means_C.length - 1, Math.max(0, n))] as number;
      const spells = Array.from({ length: 6 }, (_, i) => ({
        from_ms: from_ms + i * 4 * 3_600_000,
        to_ms: from_ms + (i + 1) * 4 * 3_600_000,
        air_C: mean + run.swing_C * Math.sin((2 * Math.PI * (i - 1)) / 6),
        humidity_frac: 0.6,
      }));
      day = { date, from_ms, to_ms: from_ms + DAY_ms, spells, outdoors: false };
      days.set(date, day);
    }
    return day as never;
  };
  return {
    plant: { id: "plant", spot: "spot" },
    at_ms: now_ms,
    now_ms,
    dateOf,
    airAt,
    assumed: (key: string) => values.get(key) ?? Number.NaN,
    pooled: undefined,
  } as unknown as Outward;
}

/** Every day of every plant of some runs until something was found on it. */
export function plantDays(seeds: readonly number[], plants_n: number, days_n: number): PlantDay[] {
  return seeds.flatMap((seed) => {
    const run = watchedRun(seed, plants_n, days_n);
    const sight = sightOf(run, at(days_n - 1, 20));
    return run.plants.flatMap((plant, i) => daysOf(plant, sight, seed, i, days_n));
  });
}

function daysOf(plant: WatchedPlant, sight: Outward, run: number, i: number, days_n: number): PlantDay[] {
  const found = plant.acts.find((act) => Object.keys(act.found).length > 0);
  const until = found ? found.day : days_n;
  if (until === 0) return [];
  const entries = entriesOf(plant).filter(({ day }) => day < until);
  const slice = entries.reduce<ScoutSlice>(
    (before, { day, kind, data }, n) =>
      scoutFold(before, {
        entry: `e${n}` as EntryId,
        at_ms: at(day),
        by: "p" as PersonId,
        effects: [],
        own: { kind, data },
      } satisfies Happening),
    { acts: [], stood: [], problems: [] },
  );
  if (slice.problems.length > 0) throw new Error("an act of the nursery could not be written into a book");
  const days = Array.from({ length: until }, (_, day) => day);
  const said = freeByDay(
    slice,
    sight,
    days.map((day) => at(day, 20)),
  );
  const start = plant.treated ? 0 : 0;
  return days.map((day) => ({
    origin: plant.origin,
    run,
    plant: i,
    day,
    said_frac: said[day] as number,
    isFree: Object.values(plant.isOn).every((isOn) => !isOn[day]),
    clean_d: day - start,
  }));
}

export interface Bin {
  readonly origin: Origin | "all";
  readonly from: number;
  readonly to: number;
  readonly cases_n: number;
  readonly plants_n: number;
  readonly said_frac: number;
  readonly found_frac: number;
  readonly low_frac: number;
  readonly high_frac: number;
  readonly holds: boolean;
}

const EDGES = [0, 0.5, 0.7, 0.8, 0.9, 0.95, 0.98, 0.99, 1.0001];

/** Stated chance against the share that was truly free; the interval counts plants, since days of one plant are one case. */
export function reliability(days: readonly PlantDay[]): readonly Bin[] {
  return (["all", ...origins] as const).flatMap((origin) =>
    EDGES.slice(1).flatMap((to, i): Bin[] => {
      const from = EDGES[i] as number;
      const inside = days.filter(
        (day) => (origin === "all" || day.origin === origin) && day.said_frac >= from && day.said_frac < to,
      );
      if (inside.length < 100) return [];
      const said_frac = inside.reduce((sum, day) => sum + day.said_frac, 0) / inside.length;
      const found_frac = inside.filter(({ isFree }) => isFree).length / inside.length;
      const plants_n = new Set(inside.map(({ run, plant }) => `${run}/${plant}`)).size;
      const { low_frac, high_frac } = exactInterval({
        with_n: Math.round(found_frac * plants_n),
        of_n: plants_n,
      });
      return [
        {
          origin,
          from,
          to: Math.min(1, to),
          cases_n: inside.length,
          plants_n,
          said_frac,
          found_frac,
          low_frac,
          high_frac,
          holds: said_frac >= low_frac && said_frac <= high_frac,
        },
      ];
    }),
  );
}

const logScore = (pairs: readonly (readonly [number, boolean])[]): number =>
  pairs.reduce((sum, [said, isSo]) => sum - Math.log(Math.max(1e-4, isSo ? said : 1 - said)), 0) /
  pairs.length;

/** Mean log score (lower is better) of what we say, of the base rate, and of two clean weeks, each told its own best shares. */
export function logScores(days: readonly PlantDay[]): {
  readonly ours: number;
  readonly base: number;
  readonly habit: number;
} {
  const share = (of: readonly PlantDay[]) =>
    of.filter(({ isFree }) => isFree).length / Math.max(1, of.length);
  const base = share(days);
  const [early, late] = [
    share(days.filter(({ clean_d }) => clean_d < HABIT_d)),
    share(days.filter(({ clean_d }) => clean_d >= HABIT_d)),
  ];
  return {
    ours: logScore(days.map(({ said_frac, isFree }) => [said_frac, isFree])),
    base: logScore(days.map(({ isFree }) => [base, isFree])),
    habit: logScore(days.map(({ clean_d, isFree }) => [clean_d < HABIT_d ? early : late, isFree])),
  };
}

export interface RuleScore {
  readonly rule: string;
  readonly released_n: number;
  readonly held_d: number;
  readonly infestedSold_frac: number;
  /** Share of plants truly free to the end that were never released. */
  readonly falseHolds_frac: number;
}

/** What each rule would have let go, when, and what went with it. */
export function rulesOf(days: readonly PlantDay[]): readonly RuleScore[] {
  const plants = new Map<string, PlantDay[]>();
  for (const day of days) {
    const key = `${day.run}/${day.plant}`;
    plants.set(key, [...(plants.get(key) ?? []), day]);
  }
  const rules: readonly (readonly [string, (day: PlantDay) => boolean])[] = [
    ["sell at 0.99", ({ said_frac }) => said_frac >= 0.99],
    ["sell at 0.98", ({ said_frac }) => said_frac >= 0.98],
    ["move at 0.95", ({ said_frac }) => said_frac >= 0.95],
    ["two clean weeks", ({ clean_d }) => clean_d >= HABIT_d],
  ];
  return rules.map(([rule, lets]) => {
    const gone = [...plants.values()].flatMap((of) => of.find((day) => day.day >= 1 && lets(day)) ?? []);
    const free = [...plants.values()].filter((of) => of.every(({ isFree }) => isFree));
    const held = gone.map(({ day }) => day).sort((a, b) => a - b);
    return {
      rule,
      released_n: gone.length,
      held_d: held[Math.floor(held.length / 2)] ?? Number.NaN,
      infestedSold_frac: gone.filter(({ isFree }) => !isFree).length / Math.max(1, gone.length),
      falseHolds_frac:
        free.filter((of) => !of.some((day) => day.day >= 1 && lets(day))).length / Math.max(1, free.length),
    };
  });
}
