import type { Effect } from "../../book/effects.ts";
import type { EntryId, Json, PersonId, PlantId } from "../../book/entry.ts";
import type { AirDay, Spell } from "../../places/ahead.ts";
import type { PlantFacts } from "../../plants/facts.ts";
import { type ReadingName, readingKinds } from "../../readings.ts";
import { noRounds } from "../../round/round-facts.ts";
import type { Language, UnitSystem } from "../../words/say.ts";
import { sayFor } from "../../words/say-for.ts";
import type { Happening, Outward, Sight, Step } from "../craft.ts";
import { wateringAssumptions } from "./assumptions.ts";
import { watering } from "./index.ts";
import { LOOKED, type Looked, WATERED, type Watered, WEIGHED, type Weighed } from "./kinds.ts";
import type { WaterSlice } from "./slice.ts";

/**
 * A bench for tests: one plant, constant air, midnights in UTC, dates as counted days. It cuts time as the house does:
 * at entries and at midnights, rates first, then integrate, then the entry.
 */
export const DAY_ms = 86_400_000;
export const HOUR_ms = 3_600_000;
/** A midnight, 5 January 2026 in UTC. */
export const START_ms = 20_458 * DAY_ms;
export const GROWER = "grower" as PersonId;
export const HELPER = "helper" as PersonId;

export interface Room {
  readonly lit_h?: number;
  readonly ppfd_umol_m2_s?: number;
  readonly light?: Spell["light"];
  readonly air_C?: number;
  readonly humidity_frac?: number;
  readonly outdoors?: boolean;
  readonly rain_mm?: number;
  readonly demandSd_frac?: number;
}

export interface PotKit {
  readonly plant: PlantFacts;
  sight(at_ms: number, plant?: PlantFacts): Sight;
  outward(now_ms: number, more?: Partial<Outward>): Outward;
  start(at_ms?: number): WaterSlice;
  /** Folds entries in order and goes on to an instant. */
  live(slice: WaterSlice, happenings: readonly Happening[], to_ms: number): WaterSlice;
}

const testPlant = (facts: Partial<PlantFacts> = {}): PlantFacts => ({
  id: "plant-1" as PlantId,
  number: 127,
  habit: "thin",
  broughtAt_ms: START_ms,
  pot: { form: "round", top_cm: 12, depth_cm: 9 },
  medium: "spongy",
  spot: "sill-1",
  leavesKept_frac: 1,
  photos: [],
  rounds: noRounds,
  ...facts,
});

const dateOf = (at_ms: number): string => String(Math.floor(at_ms / DAY_ms)).padStart(7, "0");

export function potKit(facts: Partial<PlantFacts> = {}, room: Room | ((day_n: number) => Room) = {}): PotKit {
  const plant = testPlant(facts);
  const days = new Map<string, AirDay>();
  const airAt = (spot: string | undefined, date: string): AirDay => {
    let day = days.get(date);
    if (!day) {
      day = airDay(spot ?? "", Number(date), typeof room === "function" ? room(Number(date)) : room);
      days.set(date, day);
    }
    return day;
  };
  const values = new Map<string, number>(wateringAssumptions.map(({ key, value }) => [key, value]));
  const assumed = (key: string): number => {
    const value = values.get(key);
    if (value === undefined) throw new Error(`no assumption is called ${key}`);
    return value;
  };
  const sight = (at_ms: number, of = plant): Sight => ({
    plant: of,
    at_ms,
    read: (name: ReadingName) => readingKinds[name].usual(of, at_ms),
    airAt,
    dateOf,
    site: {
      name: "test",
      latitude_deg: 47,
      longitude_deg: 9,
      elevation_m: 400,
      zone: "UTC",
      currency: "EUR",
      assumed: false,
    },
    assumed,
  });
  const stepTo = (slice: WaterSlice, from_ms: number, to_ms: number): WaterSlice => {
    const day = airAt(plant.spot, dateOf(from_ms));
    const step: Step = {
      ...sight(from_ms),
      from_ms,
      to_ms,
      dt_d: (to_ms - from_ms) / DAY_ms,
      day,
      spells: day.spells,
    };
    return watering.integrate(slice, watering.rates(slice, step), step);
  };
  return {
    plant,
    sight,
    outward: (now_ms, more = {}) => ({
      ...sight(now_ms),
      now_ms,
      visits_ms: [],
      pooled: undefined,
      seed: `${plant.id}/${dateOf(now_ms)}`,
      say: testSay("en"),
      datesAhead: Array.from({ length: 31 }, (_, ahead_d) => dateOf(now_ms + ahead_d * DAY_ms)),
      ...more,
    }),
    start: (at_ms = START_ms) => watering.start(plant, sight(at_ms)),
    live(slice, happenings, to_ms) {
      let next = slice;
      let at_ms = slice.at_ms;
      const goTo = (until_ms: number) => {
        while (at_ms < until_ms) {
          const end_ms = Math.min(until_ms, (Math.floor(at_ms / DAY_ms) + 1) * DAY_ms);
          next = stepTo(next, at_ms, end_ms);
          at_ms = end_ms;
        }
      };
      for (const happening of happenings) {
        goTo(happening.at_ms);
        next = watering.fold(next, happening, sight(at_ms));
      }
      goTo(to_ms);
      return next;
    },
  };
}

export const testSay = (language: Language, units: UnitSystem = "metric") =>
  sayFor({ language, units, zone: "UTC", nameOf: () => "127" });

function airDay(place: string, day_n: number, room: Room): AirDay {
  const from_ms = day_n * DAY_ms;
  const lit_h = room.lit_h ?? 10;
  const air = {
    air_C: room.air_C ?? 21,
    humidity_frac: room.humidity_frac ?? 0.5,
    wind_m_s: 0.08,
  };
  const sunrise_ms = from_ms + (12 - lit_h / 2) * HOUR_ms;
  const sunset_ms = from_ms + (12 + lit_h / 2) * HOUR_ms;
  const ppfd_umol_m2_s = room.ppfd_umol_m2_s ?? 170;
  const dli_mol_m2_d = (ppfd_umol_m2_s * lit_h * 3600) / 1e6;
  return {
    place,
    date: String(day_n).padStart(7, "0"),
    dayOfYear_d: 1 + (day_n % 365),
    from_ms,
    to_ms: from_ms + DAY_ms,
    outdoors: room.outdoors ?? false,
    spells: [
      { from_ms, to_ms: sunrise_ms, ...air, ppfd_umol_m2_s: 0, light: "none" },
      { from_ms: sunrise_ms, to_ms: sunset_ms, ...air, ppfd_umol_m2_s, light: room.light ?? "window" },
      { from_ms: sunset_ms, to_ms: from_ms + DAY_ms, ...air, ppfd_umol_m2_s: 0, light: "none" },
    ],
    dli_mol_m2_d,
    daylight: {
      window_mol_m2_d: dli_mol_m2_d,
      lamp_mol_m2_d: 0,
      sky_mol_m2_d: 0,
      dull_mol_m2_d: dli_mol_m2_d,
      sunny_mol_m2_d: dli_mol_m2_d,
      sd_frac: 0.15,
      around_mol_m2_d: dli_mol_m2_d,
      fromSide_deg: 180,
      fromSide_frac: 1,
      dayLength_h: lit_h,
      lamp_h: 0,
      lamp_umol_m2_s: 0,
      outdoors_mol_m2_d: dli_mol_m2_d * 3,
    },
    ...(room.outdoors
      ? { weather: { tMax_C: 24, tMin_C: 13, rain_mm: room.rain_mm ?? 0, wind_m_s: 2, humidity_frac: 0.6 } }
      : {}),
    latitude_deg: 47,
    elevation_m: 400,
    demandSd_frac: room.demandSd_frac ?? 0.12,
    air: { origin: "measured", from: () => "test air" },
    light: { origin: "measured", from: () => "test light" },
  };
}

let entries_n = 0;
function happening(
  at_ms: number,
  effects: readonly Effect[],
  by: PersonId,
  own?: Happening["own"],
): Happening {
  entries_n++;
  return { entry: `entry-${entries_n}` as EntryId, at_ms, by, effects, ...(own ? { own } : {}) };
}

export function poured(at_ms: number, data: Watered, by: PersonId = GROWER): Happening {
  const kind = watering.kinds[0];
  return happening(at_ms, kind.effects(data), by, { kind: WATERED, data: data as unknown as Json });
}

export function weighed(at_ms: number, data: Weighed, by: PersonId = GROWER): Happening {
  return happening(at_ms, [], by, { kind: WEIGHED, data: data as unknown as Json });
}

export function looked(at_ms: number, data: Looked, by: PersonId = GROWER): Happening {
  return happening(at_ms, [], by, { kind: LOOKED, data: data as unknown as Json });
}

/** An effect of another craft or of the house. */
export function other(at_ms: number, effect: Effect, by: PersonId = GROWER): Happening {
  return happening(at_ms, [effect], by);
}
