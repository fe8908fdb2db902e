import type { EntryId } from "../../book/entry.ts";
import type { PlantFacts } from "../../plants/facts.ts";
import type { Pot } from "../../plants/pot.ts";
import type { Sight } from "../craft.ts";
import type { Prepared } from "./kinds.ts";
import { massesOf, type SoluteLedger, startLedger } from "./ledger.ts";
import { availableOf, type Fill } from "./medium-of.ts";

/** What the craft keeps of one pot; it changes with entries alone. Plain data, since it is checkpointed. */
export interface PotSlice {
  readonly fill: Fill;
  readonly mediumSince_ms: number;
  readonly ledger: SoluteLedger;
  /** Capacity as learned some two months after potting, to tell a store that shrinks. */
  readonly storeThen_g?: number;
  readonly roots?: { readonly kept_frac: number; readonly at_ms: number };
  readonly looked?: { readonly rootsCircling: boolean; readonly standing_s: number; readonly at_ms: number };
  /** Steps of the potting day that is under way, or of the last one. */
  readonly day?: PottingDay;
  readonly problems: readonly { readonly entry: EntryId; readonly what: string }[];
}

export interface PottingDay {
  readonly prepared?: Prepared & { readonly at_ms: number };
  readonly lift_ms?: number;
  readonly cut_ms?: number;
  readonly wash_ms?: number;
  readonly pot_ms?: number;
  readonly drain_ms?: number;
  readonly place_ms?: number;
}

/** How the craft sees the pot of a plant now: water and salts hang on these. */
export interface PotSeen {
  readonly available_g: number;
  readonly sd_frac: number;
  readonly by: "word" | "recipe" | "test";
  readonly medium_mL: number;
  readonly air_frac: number;
  readonly drained_frac: number;
  /** water that roots can't draw, and all water at capacity, mL */
  readonly unavailable_mL: number;
  readonly capacity_mL: number;
}

const pots = new WeakMap<Pot, string>();
const kept = new Map<string, PotSeen>();
const fills = new WeakMap<Fill, Map<string, PotSeen>>();
const MOST_KEPT_n = 4000;

/** A pot by its measures, as text: benches hold many pots of few sizes. */
function sizeOf(pot: Pot): string {
  let size = pots.get(pot);
  if (size === undefined) {
    size = JSON.stringify(pot);
    pots.set(pot, size);
  }
  return size;
}

/** What a pot holds, remembered by its measures and by what fills it: readings ask for it again and again. */
export function potSeen(plant: PlantFacts, fill: Fill, sight: Pick<Sight, "assumed">): PotSeen {
  const { pot, medium } = plant;
  const { assumed } = sight;
  if (last && last.pot === pot && last.medium === medium && last.fill === fill && last.assumed === assumed)
    return last.seen;
  const seen = remembered(plant, fill, sight);
  last = { pot, medium, fill, assumed, seen };
  return seen;
}

/** The last question: a run asks of one pot at every midnight and entry. */
let last:
  | {
      readonly pot: Pot | undefined;
      readonly medium: PlantFacts["medium"];
      readonly fill: Fill;
      readonly assumed: Sight["assumed"];
      readonly seen: PotSeen;
    }
  | undefined;

function remembered(plant: PlantFacts, fill: Fill, sight: Pick<Sight, "assumed">): PotSeen {
  const wetted_frac = sight.assumed("wetted_frac");
  const unavailable_frac = sight.assumed("unavailable_frac");
  const key = `${plant.pot ? sizeOf(plant.pot) : ""}/${plant.medium}/${wetted_frac}/${unavailable_frac}`;
  let known = kept;
  if (fill.recipe || fill.test) {
    known = fills.get(fill) ?? new Map();
    fills.set(fill, known);
  }
  let seen = known.get(key);
  if (!seen) {
    if (known.size > MOST_KEPT_n) known.clear();
    seen = look(plant, fill, { wetted_frac, unavailable_frac });
    known.set(key, seen);
  }
  return seen;
}

function look(
  plant: PlantFacts,
  fill: Fill,
  set: { readonly wetted_frac: number; readonly unavailable_frac: number },
): PotSeen {
  const { value_g, sd_frac, drained, unavailable_frac, by } = availableOf(plant, fill, set);
  const unavailable_mL = unavailable_frac * drained.medium_mL;
  return {
    available_g: value_g,
    sd_frac,
    by,
    medium_mL: drained.medium_mL,
    air_frac: drained.air_frac,
    drained_frac: drained.water_frac,
    unavailable_mL,
    capacity_mL: unavailable_mL + value_g,
  };
}

/**
 * What a litre of fresh charged medium carries beside its nitrogen. @source feed sheet 9: a mix with 760 N, 116 P, 495 K, 343 Ca,
 * 59 Mg mg/L, in proportion to nitrogen; nitrogen half as nitrate is our assumption
 */
export function chargeOf(medium_mL: number, nitrogen_mg_L: number) {
  const n = (nitrogen_mg_L * medium_mL) / 1000;
  return massesOf({
    NO3N: 0.6 * n,
    NH4N: 0.4 * n,
    P: 0.153 * n,
    K: 0.651 * n,
    Ca: 0.451 * n,
    Mg: 0.078 * n,
    S: 0.3 * n,
  });
}

/** The share of a fresh charge that is left in a pot nobody tells about: most is used within weeks. @source our assumption */
const OLD_CHARGE_frac = 0.3;

/** The slice of a plant at the moment it enters the book. */
export function startSlice(plant: PlantFacts, sight: Sight): PotSlice {
  const fill: Fill = {};
  const seen = potSeen(plant, fill, sight);
  const charge = chargeOf(seen.medium_mL, OLD_CHARGE_frac * sight.assumed("chargeN_mg_L"));
  return {
    fill,
    mediumSince_ms: sight.at_ms,
    ledger: startLedger(charge, seen.capacity_mL),
    problems: [],
  };
}
