import { GROWER, plantId, START_ms, TEST_SITE, testPen } from "../../../test/toy.ts";
import type { Entry, Json, PlantId } from "../../book/index.ts";
import { createLedger, type Ledger } from "../../house/index.ts";
import { type Desk, deskAt } from "../../pages/index.ts";
import type { Limit } from "../../round/task.ts";
import type { Language } from "../../words/say.ts";
import { scouting } from "./index.ts";
import { type Reckoned, reckoned } from "./reckon.ts";
import type { ScoutSlice } from "./slice.ts";

export const DAY_ms = 86_400_000;

/** A house for tests of scouting: a bench of some spots, plants on it, entries at days after the start. */
export interface ScoutHouse {
  readonly ledger: Ledger;
  write(day_d: number, kind: string, on: readonly string[], data: object): Entry;
  plant(n: number, spot?: string): PlantId;
  desk(day_d: number, language?: Language): Desk;
  reckon(day_d: number, plant: PlantId): Reckoned;
  limits(day_d: number, plant: PlantId): readonly Limit[];
}

export function scoutHouse(air_C?: number): ScoutHouse {
  const ledger = createLedger({ crafts: [scouting], site: TEST_SITE });
  const pen = testPen(ledger, GROWER);
  const write: ScoutHouse["write"] = (day_d, kind, on, data) => {
    const entry = pen.at(24 * day_d, { kind, on, data: data as Json });
    ledger.add([entry]);
    return entry;
  };
  const spots = Array.from({ length: 6 }, (_, i) => ({ id: `q${i + 1}`, name: `${i + 1}` }));
  write(-1, "bench.laid", ["q"], {
    name: "Quarantine",
    place: "table",
    outdoors: false,
    order_n: 0,
    spots,
    quarantine: true,
  });
  if (air_C !== undefined)
    write(-0.9, "bench.air", ["q"], { dayAir_C: air_C, nightAir_C: air_C, humidity_frac: 0.5 });
  const desk = (day_d: number, language: Language = "en") =>
    deskAt(ledger, { now_ms: START_ms + day_d * DAY_ms, language, units: "metric" });
  const view = (day_d: number, plant: PlantId) => {
    const seen = desk(day_d).view(plant);
    if (!seen) throw new Error("no such plant");
    return seen;
  };
  return {
    ledger,
    write,
    plant(n, spot = "q1") {
      write(-0.5 + n / 1e4, "plant.brought", [plantId(n)], {
        number: 100 + n,
        habit: "thin",
        medium: "spongy",
        spot,
      });
      return plantId(n);
    },
    desk,
    reckon(day_d, plant) {
      const { state, outwards } = view(day_d, plant);
      const made = reckoned(state.slices[0] as ScoutSlice, outwards[0] as NonNullable<(typeof outwards)[0]>);
      if (!made) throw new Error("nobody watches it");
      return made;
    },
    limits: (day_d, plant) => view(day_d, plant).limits,
  };
}

export const CLEAN = { way: "lens", tips_n: 3, leaves_n: 6, stem: true, found: [] } as const;
