import * as v from "valibot";
import { plantId, START_ms, TEST_SITE, testPen } from "../../../test/toy.ts";
import type { Effect } from "../../book/effects.ts";
import type { Entry, Json } from "../../book/entry.ts";
import type { EntryKind } from "../../book/kinds.ts";
import { createLedger, type Ledger } from "../../house/index.ts";
import { deskAt } from "../../pages/index.ts";
import type { Language, UnitSystem } from "../../words/say.ts";
import type { AnyCraft, Outlook, Outward } from "../craft.ts";
import { growth } from "./index.ts";
import { type Growing, type GrowthSlice, growingAt } from "./slice.ts";

export const DAY_ms = 86_400_000;
/** The sixth of January 2026, when the test plants come into the book. */
export const FIRST_DATE = "2026-01-05";

interface Cut {
  readonly kept_frac: number;
  readonly what: "cut" | "plucked";
}

/** A craft that only cuts: growth hears of cuts by their effects alone. */
const shears: AnyCraft = {
  name: "shears",
  kinds: [
    {
      kind: "shears.used",
      v: 1,
      readers: "all",
      subject: "plant",
      onMin_n: 1,
      schema: v.strictObject({ kept_frac: v.number(), what: v.picklist(["cut", "plucked"]) }),
      sentence: () => "used shears",
      effects: ({ kept_frac, what }): readonly Effect[] => [
        ...(what === "cut" ? [{ effect: "structure", what: "cut" } as const] : []),
        { effect: "leaf area", kept_frac },
      ],
      example: { kept_frac: 0.3, what: "cut" },
    } satisfies EntryKind<Cut>,
  ],
  assumptions: [],
  start: () => ({}),
  fold: (slice) => slice,
  rates: () => ({}),
  integrate: (slice) => slice,
  offers: {},
  limits: () => [],
  outlook: () => ({ tasks: [], workings: [], problems: [], figures: {} }),
};

export interface Bed {
  readonly ledger: Ledger;
  readonly entries: readonly Entry[];
  write(day: number, kind: string, data: Json, on?: string): Entry;
  growing(day: number): Growing;
  outlook(day: number, language?: Language, units?: UnitSystem): Outlook;
  outward(day: number): Outward;
  read(day: number, name: Parameters<Outward["read"]>[0]): ReturnType<Outward["read"]>;
}

const ME = plantId(1);

/** One plant on a bench of constant air and light. */
export function bed(
  plant: Record<string, Json> = {},
  air: { readonly air_C?: number; readonly night_C?: number; readonly dli_mol_m2_d?: number } = {},
): Bed {
  const { air_C = 22, night_C = air_C, dli_mol_m2_d = 10 } = air;
  const ledger = createLedger({ crafts: [growth, shears], site: TEST_SITE });
  const pen = testPen(ledger);
  const entries: Entry[] = [];
  const write = (day: number, kind: string, data: Json, on: string = ME) => {
    const entry = pen.at(24 * day, { kind, on: [on], data });
    ledger.add([entry]);
    entries.push(entry);
    return entry;
  };
  write(
    0,
    "bench.laid",
    { name: "Bench", place: "table", outdoors: false, order_n: 0, spots: [{ id: "s", name: "1" }] },
    "b",
  );
  write(0, "bench.air", { dayAir_C: air_C, nightAir_C: night_C }, "b");
  write(0, "bench.lit", { dli_mol_m2_d, light: "lamp", hours_h: 12 }, "b");
  write(0, "plant.brought", {
    number: 1,
    habit: "thin",
    medium: "spongy",
    pot: { form: "round", top_cm: 12, depth_cm: 9 },
    spot: "s",
    ...plant,
  });
  const at = (day: number) => START_ms + day * DAY_ms;
  const view = (day: number, language: Language = "en", units: UnitSystem = "metric") => {
    const found = deskAt(ledger, { now_ms: at(day), language, units }).view(ME);
    if (!found) throw new Error("the plant is not in the book");
    return found;
  };
  return {
    ledger,
    entries,
    write,
    growing: (day) => growingAt(ledger.stateAt(ME, at(day))?.slices[0] as GrowthSlice, at(day)),
    outlook: (day, language, units) => view(day, language, units).outlooks[0]?.outlook as Outlook,
    outward: (day) => view(day).outwards[0] as Outward,
    read: (day, name) => (view(day).outwards[0] as Outward).read(name),
  };
}
