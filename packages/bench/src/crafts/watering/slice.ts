import type { PotState } from "@sillwood/science/water";
import { DEPLETION, EYE_SD_frac, potState } from "@sillwood/science/water";
import type { EntryId, PersonId } from "../../book/entry.ts";
import { mediumVolume_mL, USUAL_POT } from "../../plants/pot.ts";
import type { Sight } from "../craft.ts";
import { booked, copied } from "./changed.ts";

/** Everything the craft keeps of one pot: small, plain and immutable, since it is checkpointed. */
export interface WaterSlice {
  readonly at_ms: number;
  readonly state: PotState;
  /** Pot or medium are new since the last step: the next look at the readings begins the pot anew. */
  readonly fresh: boolean;
  /** What pot and medium promised when the state was begun or last re-centred. */
  readonly prior: { readonly capacity_g: number; readonly capacitySd_g: number };
  readonly leafArea_m2: number;
  /** A trim was written since the leaf area was last read: its change is real, not a better count. */
  readonly trimmed: boolean;
  /** Leaves were counted or measured since then: the change is a better count, not growth. */
  readonly counted: boolean;
  /** Water lost from the surface layer, mm. */
  readonly surfaceLost_mm: number;
  readonly ledger: Ledger;
  /** Running mean of squared standardised surprises; 1 when the noise fits. */
  readonly surprise: number;
  /** Last time that something told how wet the pot is, and the use up to then. */
  readonly seen: { readonly at_ms: number; readonly used_g: number } | undefined;
  readonly weights: readonly Weight[];
  /** Weights that surprise too much: kept, not used, until somebody says that they are true. */
  readonly held: readonly HeldWeight[];
  readonly capacityFrom: "pot" | "dry-down";
  /** Latest errors of the demand, for pooling over the bench. */
  readonly errors: readonly DemandError[];
  readonly pours: readonly PastPour[];
  /** What the models asked since the last pour, to tell habit from looking. */
  readonly demandSincePour_g: number;
  /** Who last looked or poured: their eye is the one that the state learns. */
  readonly tendedBy: PersonId | undefined;
  /** Day of the latest counted look by person: at most one look per person, pot and day. */
  readonly lookDays: Readonly<Record<PersonId, string>>;
  readonly visits: readonly PendingVisit[];
  /** Visits counted since the last pour: one eye at one pot repeats itself, so each says less than the one before. */
  readonly visitsSincePour_n: number;
  readonly looks: readonly PastLook[];
  /** Seen drooping while the pot is wet: the roots want a look, not water. */
  readonly droopingWet_ms: number | undefined;
  readonly wilted_ms: number | undefined;
  readonly problems: readonly WaterProblem[];
  /** Water held at past midnights and cuts, for the chart. */
  readonly past: readonly PastPoint[];
  readonly cycles: Cycles;
}

/** Every gram since the start: poured + rain - drained - used - putRight = what the pot gained. */
export interface Ledger {
  readonly startDepletion_g: number;
  readonly poured_g: number;
  readonly rain_g: number;
  readonly used_g: number;
  readonly leafUsed_g: number;
  readonly drained_g: number;
  /** Taken out otherwise than by plant, surface or drain. */
  readonly tipped_g: number;
  /** What observations changed in the belief of the depletion: nobody poured or used it. */
  readonly putRight_g: number;
}

export interface Weight {
  readonly entry: EntryId;
  readonly at_ms: number;
  readonly weight_g: number;
  readonly state: "as found" | "just drained" | "at lasting wilt";
  readonly used: boolean;
}

export interface HeldWeight {
  readonly entry: EntryId;
  readonly at_ms: number;
  readonly weight_g: number;
  readonly low_g: number;
  readonly high_g: number;
}

export interface DemandError {
  readonly at_ms: number;
  readonly ln: number;
  readonly variance: number;
}

export interface PastPour {
  readonly entry: EntryId;
  readonly at_ms: number;
  readonly by: PersonId;
  readonly volume_mL: number;
  readonly drained: "yes" | "no" | "unknown";
  /** Days and model demand since the pour before; 0 for the first. */
  readonly since_d: number;
  readonly demand_g: number;
}

export interface PendingVisit {
  readonly at_ms: number;
  readonly by: PersonId;
  readonly date: string;
  readonly used_g: number;
}

export interface PastLook {
  readonly at_ms: number;
  readonly look: string;
  readonly yes: boolean;
}

export interface PastPoint {
  readonly at_ms: number;
  readonly held_g: number;
  /** Used since the start, to a tenth of a gram. */
  readonly used_g: number;
}

/** Dry-downs from pour to pour: the open one, and the closed ones that forecasts are scored against. */
export interface Cycles {
  readonly open:
    | {
        readonly from_ms: number;
        /** Used since the start, at that pour. */
        readonly used_g: number;
        /** How long the dry-down before it took, ms. */
        readonly lasted_ms?: number;
      }
    | undefined;
  readonly closed: readonly PastCycle[];
  /** Closed ones of which nothing was weighed or seen towards their end. */
  readonly unseen_n: number;
}

export interface PastCycle {
  readonly from_ms: number;
  readonly done_ms: number;
  /** When it reached its threshold, or would have. */
  readonly due_ms: number;
  readonly sd_ms: number;
  readonly how: "weighed" | "looked";
  readonly lasted_ms?: number;
}

export type WaterProblem = {
  readonly entry: EntryId;
  readonly at_ms: number;
} & (
  | {
      readonly what: "held weight";
      readonly weight_g: number;
      readonly low_g: number;
      readonly high_g: number;
    }
  | { readonly what: "two weights"; readonly weight_g: number; readonly other_g: number }
  | { readonly what: "gained without water"; readonly weight_g: number; readonly gain_g: number }
  | { readonly what: "more than it holds"; readonly volume_mL: number; readonly capacity_g: number }
  | { readonly what: "drained weight rising"; readonly weight_g: number; readonly gain_frac: number }
  | { readonly what: "cannot be read" }
);

/** Doubt of the ln leaf factor beside the doubt of the leaf area: stomata, air at the leaf. @source our assumption */
const LEAF_MODEL_SD = 0.35;
const SURFACE_MODEL_SD = 0.45;
const GROWTH_SD = 0.01;
/** A pot nobody has told about may be anywhere between wet and dry. */
const START_DEPLETION = { mean_frac: 0.4, sd_frac: 0.28 };
/** Just drained weight of pot and medium, per mL of medium, before any weighing. @source our assumption */
const DRAINED_PER_VOLUME = 1.0;
const DRAINED_SD_frac = 0.35;

/** Doubt of a day's air and light above this share is a lasting guess, not the luck of a day. @source our assumption */
export const DAILY_AIR_SD_frac = 0.15;

/** Prior sd of the ln leaf factor by the doubt of the leaf area, and of air and light where these are guessed. */
export function leafFactorSd(sight: Sight): number {
  const area = sight.read("leafArea_m2");
  const relative = area.value > 0 ? Math.min(1, area.sd / area.value) : 1;
  return Math.hypot(LEAF_MODEL_SD, relative, lastingAirSd(sight));
}

function lastingAirSd(sight: Sight): number {
  const { demandSd_frac } = sight.airAt(sight.plant.spot, sight.dateOf(sight.at_ms));
  return demandSd_frac > DAILY_AIR_SD_frac ? Math.min(0.6, demandSd_frac) : 0;
}

export const surfaceFactorSd = (): number => SURFACE_MODEL_SD;

/** What is believed of a pot of which nothing is known but its pot, medium and kind. */
export function newPotState(sight: Sight): PotState {
  const capacity = sight.read("capacityPrior_g");
  const drained_g = mediumVolume_mL(sight.plant.pot ?? USUAL_POT) * DRAINED_PER_VOLUME;
  return potState([
    { mean: START_DEPLETION.mean_frac * capacity.value, sd: START_DEPLETION.sd_frac * capacity.value },
    { mean: 0, sd: leafFactorSd(sight) },
    { mean: 0, sd: surfaceFactorSd() },
    { mean: drained_g, sd: DRAINED_SD_frac * drained_g },
    { mean: sight.assumed("growthPerWater"), sd: GROWTH_SD },
    { mean: capacity.value, sd: Math.max(0.02 * capacity.value, capacity.sd) },
    { mean: 0, sd: EYE_SD_frac },
  ]);
}

/** The slice of a plant at the moment it enters the book. */
export function startSlice(sight: Sight): WaterSlice {
  const state = newPotState(sight);
  const capacity = sight.read("capacityPrior_g");
  return {
    at_ms: sight.at_ms,
    state,
    fresh: false,
    prior: { capacity_g: capacity.value, capacitySd_g: capacity.sd },
    leafArea_m2: sight.read("leafArea_m2").value,
    trimmed: false,
    counted: false,
    surfaceLost_mm: 0,
    ledger: {
      startDepletion_g: state[DEPLETION] as number,
      poured_g: 0,
      rain_g: 0,
      used_g: 0,
      leafUsed_g: 0,
      drained_g: 0,
      tipped_g: 0,
      putRight_g: 0,
    },
    surprise: 1,
    seen: undefined,
    weights: [],
    held: [],
    capacityFrom: "pot",
    errors: [],
    pours: [],
    demandSincePour_g: 0,
    tendedBy: undefined,
    lookDays: {},
    visits: [],
    visitsSincePour_n: 0,
    looks: [],
    droopingWet_ms: undefined,
    wilted_ms: undefined,
    problems: [],
    past: [],
    cycles: { open: undefined, closed: [], unseen_n: 0 },
  };
}

/** The same slice with another belief of the pot; what that changes in the depletion is written down as put right. */
export function believing(slice: WaterSlice, state: PotState, parts?: Partial<WaterSlice>): WaterSlice {
  const change_g = (state[DEPLETION] as number) - (slice.state[DEPLETION] as number);
  const next = copied(slice);
  next.state = state;
  if (change_g !== 0) next.ledger = booked(slice.ledger, { putRight_g: slice.ledger.putRight_g + change_g });
  return parts ? Object.assign(next, parts) : next;
}

/** The last few of a list with one more at the end. */
export function lastFew<Item>(items: readonly Item[], item: Item, most_n: number): readonly Item[] {
  if (items.length < most_n) return [...items, item];
  // Moved up within one copy: a list that is cut and then grown would be copied twice, at every midnight of every pot.
  const next = items.slice(items.length - most_n);
  for (let i = 1; i < most_n; i++) next[i - 1] = next[i] as Item;
  next[most_n - 1] = item;
  return next;
}
