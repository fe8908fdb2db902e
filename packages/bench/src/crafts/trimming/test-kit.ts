import { GROWER, plantId, START_ms, TEST_SITE, testPen } from "../../../test/toy.ts";
import type { Entry, Json, PlantId } from "../../book/index.ts";
import { createLedger, type Ledger } from "../../house/index.ts";
import { type Desk, deskAt } from "../../pages/index.ts";
import { worldOf } from "../../pages/world.ts";
import type { Language } from "../../words/say.ts";
import type { AnyCraft, World } from "../craft.ts";
import { crafts as registry } from "../registry.ts";
import { trimming } from "./index.ts";
import type { Traced } from "./kinds.ts";
import type { PlantTrim, TrimAsk, TrimPage } from "./page-shape.ts";
import type { TraceNode } from "./trace-fields.ts";

export const DAY_ms = 86_400_000;
export const PLANT = plantId(1);
const watering = registry.find(({ name }) => name === "watering") as AnyCraft;
const drawn = await trimming.page();

/** A trunk, a fork, two branches with leaves and a twig that stands out: small enough to follow by hand. */
export const TRACE: Traced = {
  nodes: [
    node("1", undefined, 0, 0, 0, { caliper_mm: 10 }),
    node("2", "1", 1, 0, 25, { caliper_mm: 9.5, leaves_n: 1, leafTowards_deg: 180 }),
    node("3", "2", 2, 1, 50, { caliper_mm: 9 }),
    node("4", "3", 18, 4, 70, { caliper_mm: 5, leaves_n: 1, leafTowards_deg: 0 }),
    node("5", "4", 32, 8, 92, { caliper_mm: 4.5, leaves_n: 2, leafTowards_deg: 140, flowers_n: 1 }),
    node("6", "5", 44, 12, 118, { caliper_mm: 4, leaves_n: 2, leafTowards_deg: 280 }),
    node("7", "6", 60, 16, 160, { caliper_mm: 3, leaves_n: 2, leafTowards_deg: 60, flowers_n: 1 }),
    node("8", "3", -14, -6, 72, { caliper_mm: 4, leaves_n: 2, leafTowards_deg: 200 }),
    node("9", "8", -28, -12, 95, { caliper_mm: 3.5, leaves_n: 2, leafTowards_deg: 330, fruit_n: 1 }),
    node("10", "9", -40, -20, 120, { caliper_mm: 3, leaves_n: 2, leafTowards_deg: 100 }),
    node("11", "5", 60, -10, 95, { caliper_mm: 2.5, leaves_n: 2, leafTowards_deg: 300 }),
  ],
  distance_mm: 900,
  focal_px: 1600,
  frontFaces_deg: 180,
  error_mm: 1.4,
};

function node(
  id: string,
  below: string | undefined,
  right_mm: number,
  away_mm: number,
  up_mm: number,
  more: Partial<TraceNode>,
): TraceNode {
  return {
    id,
    ...(below === undefined ? {} : { below }),
    right_mm,
    away_mm,
    up_mm,
    leafLength_mm: 45,
    leafWidth_mm: 22,
    ...more,
  };
}

export interface TrimHouse {
  readonly ledger: Ledger;
  readonly plant: PlantId;
  write(day_d: number, kind: string, data: object): Entry;
  desk(day_d: number, language?: Language): Desk;
  page(day_d: number, ask?: TrimAsk, language?: Language): TrimPage;
  shape(day_d: number, ask?: TrimAsk, language?: Language): PlantTrim;
}

/** A plant at a south window. */
export function trimHouse(): TrimHouse {
  const crafts = [watering, trimming];
  const ledger = createLedger({ crafts, site: TEST_SITE });
  const pen = testPen(ledger, GROWER);
  const write: TrimHouse["write"] = (day_d, kind, data) => {
    const entry = pen.at(24 * day_d, { kind, on: [PLANT], data: data as Json });
    ledger.add([entry]);
    return entry;
  };
  ledger.add([
    pen.at(0, {
      kind: "bench.laid",
      on: ["b"],
      data: {
        name: "Sill",
        place: "sill",
        outdoors: false,
        order_n: 0,
        spots: [{ id: "s", name: "1" }],
        windowFaces_deg: 180,
      },
    }),
  ]);
  write(0.1, "plant.brought", {
    number: 127,
    habit: "thin",
    medium: "spongy",
    spot: "s",
    pot: { form: "round", top_cm: 12, depth_cm: 9 },
  });
  const desk = (day_d: number, language: Language = "en") =>
    deskAt(ledger, { now_ms: START_ms + day_d * DAY_ms, language, units: "metric" });
  const page: TrimHouse["page"] = (day_d, ask = {}, language = "en") =>
    drawn(worldOf(desk(day_d, language), crafts.indexOf(trimming)) as World, ask as Json);
  return {
    ledger,
    plant: PLANT,
    write,
    desk,
    page,
    shape: (day_d, ask = {}, language = "en") =>
      page(day_d, { plant: PLANT, ...ask }, language).plant as PlantTrim,
  };
}
