import {
  type DeviceId,
  type Entry,
  type PersonId,
  type PlantId,
  penOf,
  type Written,
} from "../src/book/index.ts";
import type { AnyCraft, Craft } from "../src/crafts/craft.ts";
import { createLedger, type Ledger } from "../src/house/index.ts";
import type { Site } from "../src/places/index.ts";

/** A site for tests, so that nothing depends on where the tests run. */
export const TEST_SITE: Site = {
  name: "test yard",
  latitude_deg: 47,
  longitude_deg: 9,
  elevation_m: 400,
  zone: "Europe/Zurich",
  currency: "EUR",
  assumed: false,
};

export interface CounterSlice {
  /** Hours of light that passed: shows how steps were cut. */
  readonly lit_h: number;
  readonly elapsed_d: number;
  readonly steps_n: number;
  readonly happenings: readonly string[];
  readonly water_mL: number;
}

/** A craft that only keeps account of what the house tells it. */
export const counter: Craft<CounterSlice, { lit_h: number }> = {
  name: "counter",
  kinds: [],
  assumptions: [],
  start: () => ({ lit_h: 0, elapsed_d: 0, steps_n: 0, happenings: [], water_mL: 0 }),
  fold: (slice, happening) => ({
    ...slice,
    happenings: [...slice.happenings, happening.entry],
    water_mL: happening.effects.reduce(
      (sum, effect) => sum + (effect.effect === "water in" ? effect.volume_mL : 0),
      slice.water_mL,
    ),
  }),
  rates: (_slice, step) => ({
    lit_h: step.spells.reduce(
      (sum, spell) => sum + (spell.ppfd_umol_m2_s > 0 ? (spell.to_ms - spell.from_ms) / 3_600_000 : 0),
      0,
    ),
  }),
  integrate: (slice, rates, step) => ({
    ...slice,
    lit_h: slice.lit_h + rates.lit_h,
    elapsed_d: slice.elapsed_d + step.dt_d,
    steps_n: slice.steps_n + 1,
  }),
  offers: {},
  limits: () => [],
  outlook: () => ({ tasks: [], workings: [], problems: [], figures: {} }),
};

export const GROWER = "01980000-0000-7000-8000-0000000000f1" as PersonId;
export const START_ms = Date.UTC(2026, 0, 5, 7);

/** Random numbers of a test: the same from the same seed (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export function testLedger(
  crafts: readonly AnyCraft[] = [counter],
  options: { at_ms?: number } = {},
): Ledger {
  return createLedger({ crafts, site: TEST_SITE, ...options });
}

/** A pen for tests: time moves only when told. */
export function testPen(
  ledger: Ledger,
  by: PersonId = GROWER,
  seed = 1,
  device = "01980000-0000-7000-8000-0000000000d1",
) {
  let now_ms = START_ms;
  const pen = penOf({
    device: device as DeviceId,
    by,
    zone: TEST_SITE.zone,
    kinds: ledger.kinds,
    now_ms: () => now_ms,
    random: seeded(seed),
  });
  return {
    /** Writes as of some hours after the start. */
    at(hours_h: number, written: Written): Entry {
      now_ms = START_ms + hours_h * 3_600_000;
      return pen.write(written);
    },
  };
}

export const plantId = (n: number) => `01980000-0000-7000-8000-${String(n).padStart(12, "0")}` as PlantId;
