import * as v from "valibot";
import {
  type AcceptedEntry,
  type AcceptedKinds,
  accept,
  acceptedKinds,
  type Clock,
  CORRECTED,
  correctionSchema,
  type DeviceId,
  deviceClockSchema,
  type Entry,
  FIRST_CLOCK,
  type Json,
  REDACTED,
  redactionSchema,
  tickClock,
  uuidMaker,
} from "../src/book/index.ts";
import { type AnyEntryKind, kindRegistry } from "../src/book/kinds.ts";

/** Small seeded generator for tests (mulberry32): the same seed draws the same numbers on every machine. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const plain = (
  kind: string,
  more: Partial<AnyEntryKind> & Pick<AnyEntryKind, "schema" | "example">,
): AnyEntryKind => ({
  kind,
  v: 1,
  readers: "all",
  subject: "plant",
  onMin_n: 0,
  sentence: () => kind,
  effects: () => [],
  ...more,
});

const EXAMPLE_ID = "0193a5c8-7b1e-7abc-8def-0123456789ab";

/** A few kinds for tests, apart from the real ones: a plain note, a weighing lifted from an older shape, a price. */
export const testRegistry = kindRegistry([
  plain("test.noted", { schema: v.strictObject({ text: v.string() }), example: { text: "leaves look up" } }),
  plain("test.weighed", {
    v: 2,
    onMin_n: 1,
    schema: v.strictObject({
      mass_g: v.pipe(
        v.number("mass is not a number"),
        v.minValue(1, "at least 1 g"),
        v.maxValue(50_000, "at most 50000 g"),
      ),
    }),
    upcast: (_from, data) => ({ mass_g: (data as { mass_kg: number }).mass_kg * 1000 }),
    example: { mass_g: 412.5 },
  }),
  plain("test.paid", {
    readers: "grower",
    schema: v.strictObject({ price_minor: v.pipe(v.number(), v.integer()), currency: v.string() }),
    example: { price_minor: 1250, currency: "EUR" },
  }),
  plain(CORRECTED, { schema: correctionSchema, example: { withdrawn: true } }),
  plain(REDACTED, {
    readers: "grower",
    schema: redactionSchema,
    example: { id: EXAMPLE_ID, hash: "0".repeat(64) },
  }),
  plain("device.clock", {
    schema: deviceClockSchema,
    example: {
      device: EXAMPLE_ID,
      from_ms: 1_790_000_000_000,
      until_ms: 1_790_000_600_000,
      ahead_ms: 240_000,
    },
  }),
]);
export const testKinds: AcceptedKinds = acceptedKinds(testRegistry);

/** A device that writes entries: its own id, clock and randomness. */
export function writer(seed: number, start_ms = 1_790_000_000_000) {
  const random = seeded(seed);
  const nextId = uuidMaker();
  const device = uuidMaker()(start_ms, random) as DeviceId;
  const by = uuidMaker()(start_ms, random);
  let clock: Clock = FIRST_CLOCK;
  let now_ms = start_ms;
  return {
    device,
    random,
    see(other: Clock) {
      if (other > clock) clock = other;
    },
    /** Writes an entry a little later than the one before. */
    write(kind: string, data: Json, more: Partial<Entry> = {}): AcceptedEntry {
      now_ms += Math.floor(random() * 600_000);
      clock = tickClock(clock, now_ms);
      const entry = {
        id: nextId(now_ms, random),
        device,
        kind,
        v: testKinds.find(kind)?.v ?? 1,
        at_ms: now_ms,
        zone: "Europe/Berlin",
        atFrom: "clock",
        clock,
        by,
        on: kind === "test.weighed" ? ["plant-1"] : [],
        data,
        ...more,
      };
      return accepted(entry);
    },
  };
}

/** An entry through the gate; throws when it does not pass. */
export function accepted(entry: unknown): AcceptedEntry {
  const result = accept(entry, testKinds);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return { entry: result.entry, hash: result.hash, text: result.text };
}

/** `n` notes, weighings and prices of one device. */
export function someEntries(seed: number, n: number, start_ms?: number): AcceptedEntry[] {
  const { write, random } = writer(seed, start_ms);
  return Array.from({ length: n }, (_, i) => {
    const draw = random();
    if (draw < 0.6) return write("test.weighed", { mass_g: 200 + Math.floor(random() * 4000) / 10 });
    if (draw < 0.9) return write("test.noted", { text: `note ${i}: grünes Blatt 🌶` });
    return write("test.paid", { price_minor: Math.floor(random() * 10_000), currency: "EUR" });
  });
}
