import { createHash } from "node:crypto";
import {
  type AcceptedEntry,
  canonical,
  type DeviceId,
  type Entry,
  type Json,
  type Pen,
  type PlantId,
  penOf,
  uuidMaker,
  type Written,
} from "@sillwood/bench/book";
import { bigKinds } from "./big-kinds.ts";
import { type BigPot, bigPot, depthOf_cm, passDay } from "./big-pots.ts";
import { BIG_DAY_ms, type BigSeries, bigSeries } from "./big-series.ts";
import { seeded } from "./seeded.ts";

/** How large an invented book is. */
export interface BigBookSize {
  readonly seed: number;
  readonly plants_n: number;
  readonly entries_n: number;
  readonly spots_n: number;
  readonly days_n: number;
  /** The last day ends here; also "now" of whoever asks. */
  readonly until_ms: number;
}

/** A book for measuring: its series as files, its entries in the order in which they were written, in portions. */
export interface BigBook {
  readonly series: readonly BigSeries[];
  portions(): Generator<readonly AcceptedEntry[]>;
}

const BENCHES_n = 10;
const PORTION_n = 5000;
const MINUTE_ms = 60_000;
const ZONE = "America/Los_Angeles";
const SPOTS_LIT_APART_n = 10;
/** The round starts at this hour of UTC: early morning in the book's zone. */
const ROUND_UTC_h = 15;
/** Every third day each bench's walk is written, with all plants that were passed. */
const WALKED_EVERY_d = 3;
const WEIGHED_frac = 0.55;

/**
 * A year (or what is asked) of a grower and a helper: plants on benches, one of them outdoors on a weather record, one with
 * a logger; waterings by each pot's own dry-down, weights before them, walks of whole benches, and looks up to exactly the
 * number of entries asked for. The same seed gives the same bytes.
 */
export function bigBook(size: BigBookSize): BigBook {
  const start_ms = size.until_ms - size.days_n * BIG_DAY_ms;
  const series = bigSeries(size.seed, start_ms, size.days_n);
  return { series, portions: () => portionsOf(size, start_ms, series) };
}

function* portionsOf(size: BigBookSize, start_ms: number, series: readonly BigSeries[]) {
  const random = seeded(size.seed);
  const pens = pensOf(random);
  let portion: AcceptedEntry[] = [];
  let written_n = 0;
  for (const { at_ms, by, written } of happenings(size, start_ms, series, random)) {
    if (written_n === size.entries_n) break;
    pens.now_ms = at_ms;
    portion.push(sealed((by === "helper" ? pens.helper : pens.grower).write(written)));
    written_n++;
    if (portion.length === PORTION_n) {
      yield portion;
      portion = [];
    }
  }
  if (portion.length > 0) yield portion;
}

interface Happened {
  readonly at_ms: number;
  readonly by: "grower" | "helper";
  readonly written: Written;
}

function* happenings(
  size: BigBookSize,
  start_ms: number,
  series: readonly BigSeries[],
  random: () => number,
): Generator<Happened> {
  const nextId = uuidMaker();
  const pots = Array.from({ length: size.plants_n }, (_, i) => {
    const spot = i % size.spots_n;
    return bigPot(nextId(start_ms, random) as PlantId, spot % BENCHES_n, `spot-${spot}`, random);
  });
  let at_ms = start_ms;
  let written_n = 0;
  const by = (kind: string, on: readonly string[], data: Json, helper = false, files?: readonly string[]) => {
    written_n++;
    const written: Written = { kind, on, data, ...(files ? { files } : {}) };
    return { at_ms, by: helper ? ("helper" as const) : ("grower" as const), written };
  };
  for (const [kind, on, data] of places(size.spots_n)) yield by(kind, on, data);
  for (const [i, pot] of pots.entries()) {
    at_ms += 10;
    yield by("plant.brought", [pot.plant], { number: 100 + i, ...described(pot) });
  }
  for (const { on, data, file } of series) yield by("series.part", on, data, false, [file]);
  for (let day = 1; day <= size.days_n - 1; day++) {
    at_ms = start_ms + day * BIG_DAY_ms;
    // The first instant of the site's day is not that of UTC; the round stands well inside it.
    at_ms += (ROUND_UTC_h - new Date(at_ms).getUTCHours()) * 60 * MINUTE_ms;
    const pace_ms = Math.floor((3 * 60 * MINUTE_ms) / pots.length);
    const helper = random() < 0.4;
    for (const pot of pots) {
      at_ms += pace_ms;
      passDay(pot, random);
      if (pot.depletion_g < pot.wateredAt_frac * pot.capacity_g * (0.9 + 0.2 * random())) continue;
      if (random() < WEIGHED_frac) yield by("watering.weighed", [pot.plant], weighed(pot, random), helper);
      yield by("watering.watered", [pot.plant], watered(pot, random), helper);
    }
    if (day % WALKED_EVERY_d === 0)
      for (let bench = 0; bench < BENCHES_n; bench++) {
        const passed = pots.filter((pot) => pot.bench === bench).map(({ plant }) => plant);
        // An entry names at most 500 plants; a bench of more is walked in parts.
        for (let i = 0; i < passed.length; i += 400)
          yield by(
            "round.walked",
            passed.slice(i, i + 400),
            { bench: `bench-${bench}`, minutes: 30 },
            helper,
          );
      }
    const due_n = Math.floor((size.entries_n * (day + 1)) / size.days_n);
    while (written_n < due_n) {
      at_ms += 20;
      const pot = pots[Math.floor(random() * pots.length)] as BigPot;
      yield random() < 0.1
        ? by("plant.noted", [pot.plant], { text: "new leaves, a little pale" }, helper)
        : by("watering.looked", [pot.plant], looked(pot, random), helper);
    }
  }
}

function* places(spots_n: number): Generator<[kind: string, on: readonly string[], data: Json]> {
  yield ["person.joined", [GROWER], { role: "grower" }];
  yield ["person.joined", [HELPER], { role: "helper" }];
  const site = { name: "Test yard", latitude_deg: 47.6, longitude_deg: -122.3, elevation_m: 20 };
  yield ["site.described", ["site"], { ...site, zone: ZONE, currency: "USD" }];
  for (let bench = 0; bench < BENCHES_n; bench++) {
    const spots = Array.from({ length: spots_n }, (_, i) => i)
      .filter((i) => i % BENCHES_n === bench)
      .map((i) => ({ id: `spot-${i}`, name: `${i + 1}` }));
    const outdoors = bench === OUTDOOR_BENCH;
    const sill = bench < 3 && !outdoors ? { windowFaces_deg: 90 + 45 * bench } : {};
    const laid = { name: `Bench ${bench + 1}`, place: outdoors ? "table" : "sill", outdoors, order_n: bench };
    yield ["bench.laid", [`bench-${bench}`], { ...laid, spots, ...sill }];
    if (!outdoors)
      yield [
        "bench.air",
        [`bench-${bench}`],
        { dayAir_C: 19 + (bench % 4), nightAir_C: 16, humidity_frac: 0.45 },
      ];
  }
  for (let i = 0; i < Math.min(SPOTS_LIT_APART_n, spots_n); i++)
    yield ["bench.lit", [`spot-${i}`], { dli_mol_m2_d: 4 + (i % 8), light: "lamp", hours_h: 14 }];
}

const OUTDOOR_BENCH = 9;

const described = (pot: BigPot): { readonly [name: string]: Json } => ({
  habit: pot.habit,
  medium: pot.medium,
  pot: { form: "round", top_cm: pot.top_cm, depth_cm: depthOf_cm(pot.top_cm) },
  spot: pot.spot,
});

function weighed(pot: BigPot, random: () => number): Json {
  const weight_g = Math.max(1, Math.round(pot.drained_g - pot.depletion_g + 4 * (random() - 0.5)));
  return { weight_g, state: "as found" };
}

/** Fills the pot; a fifth of the waterings fall short and nothing runs out. */
function watered(pot: BigPot, random: () => number): Json {
  const short = random() < 0.2;
  const missing_g = pot.depletion_g;
  pot.depletion_g = short ? 0.2 * missing_g : 0.02 * pot.capacity_g;
  const volume_mL = Math.max(5, Math.round(((short ? 0.8 : 1.15) * missing_g) / 5) * 5);
  return { volume_mL, drained: short ? "no" : "yes" };
}

function looked(pot: BigPot, random: () => number): Json {
  const dry = pot.depletion_g / pot.capacity_g > pot.wateredAt_frac;
  return { look: random() < 0.5 ? "light" : "dry", yes: random() < 0.1 ? !dry : dry };
}

const GROWER = "01980000-0000-7000-8000-0000000000f1";
const HELPER = "01980000-0000-7000-8000-0000000000f2";

function pensOf(random: () => number) {
  const hand = { now_ms: 0 };
  const pen = (by: string, device: string): Pen =>
    penOf({ device: device as DeviceId, by, zone: ZONE, kinds: bigKinds, now_ms: () => hand.now_ms, random });
  return Object.assign(hand, {
    grower: pen(GROWER, "01980000-0000-7000-8000-0000000000d1"),
    helper: pen(HELPER, "01980000-0000-7000-8000-0000000000d2"),
  });
}

/** What the gate gives back, without asking it: a million entries would take minutes. A test asks it about a sample. */
function sealed(entry: Entry): AcceptedEntry {
  const text = canonical(entry as unknown as Json);
  return { entry, text, hash: createHash("sha256").update(text).digest("hex") };
}
