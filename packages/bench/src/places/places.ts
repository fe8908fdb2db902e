import type { Entry, EntryId, Sha256 } from "../book/entry.ts";
import {
  type AirData,
  type BenchData,
  type HabitsData,
  type LitData,
  placeKinds,
  type SeriesData,
  type SiteData,
} from "./kinds.ts";
import { foldLight, type LightSaid, nothingSaid } from "./light/said.ts";
import type { Site } from "./site.ts";

/** Something said of a place, in force from an instant on. */
export interface From<Data> {
  readonly at_ms: number;
  readonly data: Data;
  readonly entry: EntryId;
}

export interface Bench extends BenchData {
  readonly id: string;
}

/** A part of a series that an entry has named. */
export interface SeriesPart extends SeriesData {
  readonly entry: EntryId;
  readonly clock: string;
  readonly benches: readonly string[];
  readonly file: Sha256;
}

/** Where plants stand, with their own light and air: the house's slice for places. */
export interface Places {
  readonly site: Site;
  readonly habits: HabitsData;
  readonly habitsAssumed: boolean;
  readonly benches: ReadonlyMap<string, Bench>;
  /** Spot to bench. */
  readonly benchOfSpot: ReadonlyMap<string, string>;
  readonly air: ReadonlyMap<string, readonly From<AirData>[]>;
  /** By bench or spot. */
  readonly lit: ReadonlyMap<string, readonly From<LitData>[]>;
  /** Windows, lamps and what was read under them. */
  readonly light: LightSaid;
  readonly series: readonly SeriesPart[];
}

/** Until somebody says better: a round of an hour every morning. @source our assumption */
const USUAL_HABITS: HabitsData = { minutes: 60, weekdays: [0, 1, 2, 3, 4, 5, 6], hour_h: 7.5 };

export function noPlaces(site: Site): Places {
  return {
    site,
    habits: USUAL_HABITS,
    habitsAssumed: true,
    benches: new Map(),
    benchOfSpot: new Map(),
    air: new Map(),
    lit: new Map(),
    light: nothingSaid,
    series: [],
  };
}

/** What the house learns of its places from one entry. Kinds of others leave it as it is. */
export function foldPlaces(places: Places, entry: Entry): Places {
  switch (entry.kind) {
    case placeKinds.site.kind:
      return { ...places, site: { ...(entry.data as SiteData), assumed: false } };
    case placeKinds.habits.kind:
      return { ...places, habits: entry.data as unknown as HabitsData, habitsAssumed: false };
    case placeKinds.bench.kind:
      return entry.on.reduce((all, id) => layBench(all, id, entry.data as unknown as BenchData), places);
    case placeKinds.air.kind:
      return { ...places, air: saidOf(places.air, entry) };
    case placeKinds.lit.kind:
      return { ...places, lit: saidOf(places.lit, entry) };
    case placeKinds.series.kind: {
      const parts = (entry.files ?? []).map((file) => ({
        ...(entry.data as unknown as SeriesData),
        entry: entry.id,
        clock: entry.clock,
        benches: entry.on,
        file,
      }));
      return { ...places, series: [...places.series, ...parts] };
    }
    default: {
      const light = foldLight(places.light, entry);
      return light === places.light ? places : { ...places, light };
    }
  }
}

function layBench(places: Places, id: string, data: BenchData): Places {
  const benches = new Map(places.benches).set(id, { ...data, id });
  // A spot that left the bench keeps its history: plants that stood there still find their air.
  const benchOfSpot = new Map(places.benchOfSpot);
  for (const spot of data.spots) benchOfSpot.set(spot.id, id);
  return { ...places, benches, benchOfSpot };
}

function saidOf<Data>(
  said: ReadonlyMap<string, readonly From<Data>[]>,
  entry: Entry,
): ReadonlyMap<string, readonly From<Data>[]> {
  const next = new Map(said);
  for (const id of entry.on) {
    next.set(id, [
      ...(said.get(id) ?? []),
      { at_ms: entry.at_ms, data: entry.data as Data, entry: entry.id },
    ]);
  }
  return next;
}

/** What was in force at an instant: the last said before it, else the first said after (a bench described late). */
export function inForceAt<Data>(
  said: readonly From<Data>[] | undefined,
  at_ms: number,
): From<Data> | undefined {
  if (!said) return undefined;
  for (let i = said.length - 1; i >= 0; i--) {
    const one = said[i] as From<Data>;
    if (one.at_ms <= at_ms) return one;
  }
  return said[0];
}

/** Benches in the order in which they are walked: clean before suspect, then the grower's order, then by name. */
export function benchesInOrder(places: Places): readonly Bench[] {
  return [...places.benches.values()].sort(
    (a, b) =>
      Number(a.quarantine ?? false) - Number(b.quarantine ?? false) ||
      a.order_n - b.order_n ||
      (a.name < b.name ? -1 : 1),
  );
}
