import { GROWER, plantId, START_ms, TEST_SITE, testPen } from "../../../test/toy.ts";
import type { Entry, Json, PlantId } from "../../book/index.ts";
import { createLedger, type Ledger } from "../../house/index.ts";
import { type Desk, deskAt } from "../../pages/index.ts";
import { worldOf } from "../../pages/world.ts";
import type { Language } from "../../words/say.ts";
import type { AnyCraft, World } from "../craft.ts";
import { crafts as registry } from "../registry.ts";
import { lighting } from "./index.ts";
import type { LightKept } from "./kept.ts";
import type { BenchLight, LightPage, SpotLit } from "./page-shape.ts";

export const DAY_ms = 86_400_000;
export const SOUTH = { faces_deg: 180, width_m: 1.2, height_m: 1.4, sill_m: 0, glazing: "double" } as const;
export const LED_BAR = {
  form: "strip",
  source: "white LED",
  length_m: 1.1,
  width_m: 0.06,
  power_W: 110,
  efficacy_umol_J: 2.4,
  above_m: 0.35,
} as const;

/** A house for tests of light: entries are written at days after the start, and pages asked at days. */
export interface LightHouse {
  readonly ledger: Ledger;
  write(day_d: number, kind: string, on: readonly string[], data: object, more?: object): Entry;
  bench(id: string, spots_n: number, more?: object): void;
  /** A plant at a spot, seen at a stage. */
  plant(n: number, spot: string, stage?: string, more?: object): PlantId;
  desk(day_d: number, language?: Language): Desk;
  page(day_d: number, ask?: Json, language?: Language): LightPage;
  /** One bench of the page. */
  on(day_d: number, bench: string, ask?: object): BenchLight;
  spot(day_d: number, spot: string, ask?: object): SpotLit;
}

/** Of the other crafts the one that gives rounds their tasks; crafts don't import one another, so it is found by name. */
export const watering = registry.find(({ name }) => name === "watering") as AnyCraft;

const drawn = await lighting.page();

export function lightHouse(crafts: readonly AnyCraft[] = [watering, lighting]): LightHouse {
  const ledger = createLedger({ crafts, site: TEST_SITE });
  const pen = testPen(ledger, GROWER);
  const write: LightHouse["write"] = (day_d, kind, on, data, more = {}) => {
    const entry = pen.at(24 * day_d, { kind, on, data: data as Json, ...more });
    ledger.add([entry]);
    return entry;
  };
  const desk = (day_d: number, language: Language = "en") =>
    deskAt(ledger, { now_ms: START_ms + day_d * DAY_ms, language, units: "metric" });
  const page: LightHouse["page"] = (day_d, ask = {}, language = "en") =>
    drawn(worldOf(desk(day_d, language), crafts.indexOf(lighting)) as World<LightKept>, ask);
  const on: LightHouse["on"] = (day_d, bench, ask = {}) => {
    const found = page(day_d, { bench, ...ask } as Json).benches[0];
    if (!found) throw new Error(`no bench ${bench}`);
    return found;
  };
  return {
    ledger,
    write,
    bench(id, spots_n, more = {}) {
      const spots = Array.from({ length: spots_n }, (_, i) => ({ id: `${id}-${i + 1}`, name: `${i + 1}` }));
      write(0, "bench.laid", [id], { name: id, place: "sill", outdoors: false, order_n: 0, spots, ...more });
    },
    plant(n, spot, stage, more = {}) {
      const id = plantId(n);
      write(0.01 + n / 1e4, "plant.brought", [id], {
        number: 100 + n,
        habit: "thin",
        medium: "spongy",
        spot,
        pot: { form: "round", top_cm: 12, depth_cm: 9 },
        ...more,
      });
      if (stage) write(0.02 + n / 1e4, "plant.measured", [id], { stage });
      return id;
    },
    desk,
    page,
    on,
    spot(day_d, spot, ask = {}) {
      const bench = ledger.house().places.benchOfSpot.get(spot) ?? "";
      const found = on(day_d, bench, ask).spots.find((one) => one.spot === spot);
      if (!found) throw new Error(`no spot ${spot}`);
      return found;
    },
  };
}

/** Hours at noon UTC of a day after the start, which is a morning at seven. */
export const noonOf = (day_d: number): number => Math.floor(day_d) + 5 / 24;
