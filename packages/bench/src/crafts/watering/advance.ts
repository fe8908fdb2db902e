import {
  CAPACITY,
  DEPLETION,
  LEAF,
  meanOf,
  type PotNoise,
  type PotState,
  type PotStep,
  predictPot,
  type SurfaceLayer,
  sdOf,
  shifted,
  surfaceWet_frac,
  VARIANCE,
  withLook,
  withUnwrittenPour,
} from "@sillwood/science/water";
import type { AirDay } from "../../places/ahead.ts";
import { leafWidth_m } from "../../plants/facts.ts";
import { rimArea_m2, rimDiameter_cm, USUAL_POT } from "../../plants/pot.ts";
import type { Sight, Step } from "../craft.ts";
import { changed } from "./changed.ts";
import { driveOf, lossBetween_g_m2 } from "./drive.ts";
import { rain_g } from "./drive-outdoors.ts";
import { begunAnew } from "./events.ts";
import { isHabit } from "./habit.ts";
import { lookerOf, repeated, VISITED_WITHOUT_POUR } from "./look-meanings.ts";
import { type WaterSettings, waterSettings } from "./settings.ts";
import {
  believing,
  DAILY_AIR_SD_frac,
  type Ledger,
  lastFew,
  type PastPoint,
  type WaterSlice,
} from "./slice.ts";

/** Rates of one step: what air and light ask of the pot, at factors one. */
export interface WaterRates {
  readonly leafArea_m2: number;
  readonly capacityPrior_g: number;
  readonly capacityPriorSd_g: number;
  readonly leaf_g: number;
  /** From a wet surface. */
  readonly surface_g: number;
  readonly rain_g: number;
  readonly rim_m2: number;
  readonly noise: PotNoise;
}

/** Share of the leaves' use that the top layer gives, for the drying of the surface. @source our assumption */
export const TOP_ROOTS_frac = 0.25;
const SURFACE_WANDER = 0.03;
/** A learned factor fades to the model with this time: 2 · 0.6² / 0.1² days keeps the doubt at its prior. */
const FADE_d = 72;
const DRAINED_WANDER_frac = 0.005;
const DRAINED_FLOOR_g = 0.1;
const CAPACITY_WANDER_frac = 0.002;
/** How far a pot's own surprises may calm or stir the noise that is assumed of all. @source our assumption */
const CALMEST_NOISE = 0.6;
const LARGEST_NOISE = 2;
const PAST_POINTS_n = 28;

/**
 * A day's error hangs together with the next one's (0.3, as in the forecast), so that errors add up faster over a dry-down
 * than independent ones: √((1 + 0.3) / (1 − 0.3)).
 */
const MEMORY = Math.sqrt(1.3 / 0.7);

let lastNoise: PotNoise | undefined;
let noiseAsked:
  | { readonly settings: WaterSettings; readonly surprise: number; readonly airSd_frac: number }
  | undefined;

/** Noise of a pot whose surprises have been larger or smaller than stated; the same from one quiet day to the next. */
function noiseOf({ surprise }: WaterSlice, settings: WaterSettings, airSd_frac: number): PotNoise {
  if (
    lastNoise !== undefined &&
    noiseAsked?.surprise === surprise &&
    noiseAsked.airSd_frac === airSd_frac &&
    noiseAsked.settings === settings
  )
    return lastNoise;
  const inflation = Math.min(LARGEST_NOISE, Math.max(CALMEST_NOISE, Math.sqrt(surprise)));
  noiseAsked = { settings, surprise, airSd_frac };
  lastNoise = {
    day_frac:
      MEMORY * Math.hypot(settings.demandNoise_frac, Math.min(DAILY_AIR_SD_frac, airSd_frac)) * inflation,
    leaf_per_rootDay: settings.leafWander * inflation,
    surface_per_rootDay: SURFACE_WANDER,
    fade_d: FADE_d,
    drained_frac: DRAINED_WANDER_frac,
    drainedFloor_g: DRAINED_FLOOR_g,
    capacity_frac: CAPACITY_WANDER_frac,
    stressFrom_frac: settings.stressFrom_frac,
  };
  return lastNoise;
}

/** How the bare surface dries, as adjusted. */
export const surfaceLayer = (sight: Sight): SurfaceLayer => waterSettings(sight).layer;

/** What asks for water: the leaves' width and the pot's rim, and how air and light are taken. */
interface Asker {
  readonly settings: WaterSettings;
  readonly leafWidth_m: number;
  readonly rim_cm: number;
  readonly rim_m2: number;
}

/** Looked up once for all days ahead of a pot. */
export function askerOf(sight: Sight): Asker {
  const pot = sight.plant.pot ?? USUAL_POT;
  return {
    settings: waterSettings(sight),
    leafWidth_m: leafWidth_m(sight.plant),
    rim_cm: rimDiameter_cm(pot),
    rim_m2: rimArea_m2(pot),
  };
}

/** What a stretch of one day asks of a pot at factors one. */
export function demandBy(asker: Asker, day: AirDay, from_ms: number, to_ms: number, leafArea_m2: number) {
  const { settings, rim_m2 } = asker;
  const drive = driveOf(day, asker.leafWidth_m, asker.rim_cm, settings.leafLight_frac);
  const outdoors_frac = day.outdoors ? settings.outdoors_frac : 1;
  return {
    rim_m2,
    leaf_g: lossBetween_g_m2(drive.leaf, from_ms, to_ms) * leafArea_m2 * outdoors_frac,
    surface_g: lossBetween_g_m2(drive.surface, from_ms, to_ms) * rim_m2 * settings.bare_frac,
    rain_g: day.outdoors
      ? rain_g(day, rim_m2, settings.umbrella_frac) * ((to_ms - from_ms) / (day.to_ms - day.from_ms))
      : 0,
  };
}

const demandOf = (sight: Sight, day: AirDay, from_ms: number, to_ms: number, leafArea_m2: number) =>
  demandBy(askerOf(sight), day, from_ms, to_ms, leafArea_m2);

/** Rates from the state and the readings at the start of the step. */
export function waterRates(slice: WaterSlice, step: Step): WaterRates {
  const leafArea_m2 = step.read("leafArea_m2").value;
  const prior = step.read("capacityPrior_g");
  const demand = demandOf(step, step.day, step.from_ms, step.to_ms, leafArea_m2);
  return {
    leafArea_m2,
    capacityPrior_g: prior.value,
    capacityPriorSd_g: prior.sd,
    leaf_g: demand.leaf_g,
    surface_g: demand.surface_g,
    rain_g: demand.rain_g,
    rim_m2: demand.rim_m2,
    noise: noiseOf(slice, waterSettings(step), step.day.demandSd_frac),
  };
}

/** The leaf area has been read since it was trimmed or counted. */
const READ = { trimmed: false, counted: false } as const;

/** The slice at the end of the step. */
export function waterIntegrate(slice: WaterSlice, rates: WaterRates, step: Step): WaterSlice {
  const ready = withReadings(slice, rates, step);
  const looked = ready.visits.length > 0 ? withVisits(ready, step) : ready;
  if (!(step.dt_d > 0)) return changed(looked, { leafArea_m2: rates.leafArea_m2, ...READ });
  const layer = surfaceLayer(step);
  const surface_g = rates.surface_g * surfaceWet_frac(looked.surfaceLost_mm, layer);
  const next = predictPot(
    looked.state,
    { dt_d: step.dt_d, leaf_g: rates.leaf_g, surface_g, rain_g: rates.rain_g },
    rates.noise,
  );
  const drier_mm =
    (next.surfaceUse_g + TOP_ROOTS_frac * next.leafUse_g - rates.rain_g) / (1000 * rates.rim_m2);
  const signs = fadingSigns(looked, step.to_ms);
  const isDayOver = step.to_ms >= step.day.to_ms;
  // Whoever has never written a pour may not write them at all: silence then says nothing.
  const state =
    isDayOver && looked.pours.length > 0
      ? withUnwrittenPour(next.state, waterSettings(step).unwritten)
      : next.state;
  const putRight_g = (state[DEPLETION] as number) - (next.state[DEPLETION] as number);
  // Field by field: this runs at every midnight of every pot, and a spread of so many fields costs more than the filter.
  return {
    at_ms: step.to_ms,
    state,
    fresh: looked.fresh,
    prior: looked.prior,
    leafArea_m2: rates.leafArea_m2,
    trimmed: false,
    counted: false,
    surfaceLost_mm: Math.min(layer.totalEvaporable_mm, Math.max(0, looked.surfaceLost_mm + drier_mm)),
    ledger: withStep(looked.ledger, next, rates.rain_g, putRight_g),
    surprise: looked.surprise,
    seen: looked.seen,
    weights: looked.weights,
    held: looked.held,
    capacityFrom: looked.capacityFrom,
    errors: looked.errors,
    pours: looked.pours,
    demandSincePour_g: looked.demandSincePour_g + rates.leaf_g + surface_g,
    tendedBy: looked.tendedBy,
    lookDays: looked.lookDays,
    visits: looked.visits,
    visitsSincePour_n: looked.visitsSincePour_n,
    looks: looked.looks,
    droopingWet_ms: signs.droopingWet_ms,
    wilted_ms: signs.wilted_ms,
    problems: looked.problems,
    past: isDayOver
      ? lastFew(
          looked.past,
          pointOf(step.to_ms, state, looked.ledger.used_g + next.leafUse_g + next.surfaceUse_g),
          PAST_POINTS_n,
        )
      : looked.past,
    cycles: looked.cycles,
  };
}

function withStep(ledger: Ledger, step: PotStep, rain_g: number, putRight_g: number): Ledger {
  return {
    startDepletion_g: ledger.startDepletion_g,
    poured_g: ledger.poured_g,
    rain_g: ledger.rain_g + rain_g,
    used_g: ledger.used_g + step.leafUse_g + step.surfaceUse_g,
    leafUsed_g: ledger.leafUsed_g + step.leafUse_g,
    drained_g: ledger.drained_g + step.rainDrained_g,
    tipped_g: ledger.tipped_g,
    putRight_g: ledger.putRight_g + step.putRight_g + putRight_g,
  };
}

const DAY_ms = 86_400_000;
/** A plant that was watered after wilting and was not seen hanging since counts as standing after this time. */
const STANDS_AGAIN_d = 3;
const OLD_SIGN_d = 14;

type Signs = Pick<WaterSlice, "wilted_ms" | "droopingWet_ms">;

function fadingSigns(slice: WaterSlice, at_ms: number): Signs {
  const { wilted_ms, droopingWet_ms } = slice;
  if (wilted_ms === undefined && droopingWet_ms === undefined) return slice;
  const watered = wilted_ms !== undefined && (slice.pours.at(-1)?.at_ms ?? 0) > wilted_ms;
  const stands =
    wilted_ms !== undefined && at_ms - wilted_ms > (watered ? STANDS_AGAIN_d : OLD_SIGN_d) * DAY_ms;
  const old = droopingWet_ms !== undefined && at_ms - droopingWet_ms > OLD_SIGN_d * DAY_ms;
  return { wilted_ms: stands ? undefined : wilted_ms, droopingWet_ms: old ? undefined : droopingWet_ms };
}

const pointOf = (at_ms: number, state: PotState, used_g: number): PastPoint => ({
  at_ms,
  held_g: Math.max(0, meanOf(state, CAPACITY) - meanOf(state, DEPLETION)),
  used_g: Math.round(used_g * 10) / 10,
});

/**
 * A change of this ln size in the leaf area is a better count where somebody counted or measured, and better knowledge (of the kind,
 * the sowing date) where nobody did: seedlings in good light grow by a quarter in a day.
 */
const AREA_JUMP = { counted: 0.1, untold: 0.3 } as const;

/** Of a demand that was weighed so much at least is the pot's own, however long ago. @source our assumption */
const WEIGHED_frac = 0.6;

/** What changed in the readings since the last step: a new pot, a better count of the leaves, a better known capacity. */
function withReadings(slice: WaterSlice, rates: Readings, sight: Sight): WaterSlice {
  if (slice.fresh) return begunAnew(slice, sight);
  let next = slice;
  if (rates.leafArea_m2 !== slice.leafArea_m2 && slice.leafArea_m2 > 0 && rates.leafArea_m2 > 0) {
    const jump = Math.log(Math.max(1e-6, slice.leafArea_m2) / Math.max(1e-6, rates.leafArea_m2));
    const least = slice.counted ? AREA_JUMP.counted : AREA_JUMP.untold;
    if (!slice.trimmed && Math.abs(jump) > least) {
      // What was learned was the product of area and factor; a better count must not throw it away.
      const certain = 1 - Math.min(1, (sdOf(slice.state, LEAF) / 0.6) ** 2);
      const learned = slice.weights.some(({ used }) => used) ? Math.max(WEIGHED_frac, certain) : certain;
      next = believing(next, shifted(next.state, LEAF, learned * jump));
    }
  }
  if (rates.capacityPrior_g !== slice.prior.capacity_g) next = withCapacityPrior(next, rates);
  return next;
}

export interface Readings {
  readonly leafArea_m2: number;
  readonly capacityPrior_g: number;
  readonly capacityPriorSd_g: number;
}

function withCapacityPrior(slice: WaterSlice, rates: Readings): WaterSlice {
  const prior = { capacity_g: rates.capacityPrior_g, capacitySd_g: rates.capacityPriorSd_g };
  const before_sd = Math.max(1, slice.prior.capacitySd_g);
  const unlearned = Math.min(1, (sdOf(slice.state, CAPACITY) / before_sd) ** 2);
  const scale = prior.capacity_g / Math.max(1, slice.prior.capacity_g);
  const state = slice.state.slice();
  const fuller = (1 - unlearned) * meanOf(state, CAPACITY) + unlearned * prior.capacity_g;
  state[CAPACITY] = fuller;
  // The store keeps its share of water: only its size is known better.
  if (slice.seen === undefined) state[DEPLETION] = meanOf(state, DEPLETION) * (1 + unlearned * (scale - 1));
  const at = VARIANCE[CAPACITY] as number;
  const sd = sdOf(slice.state, CAPACITY) * (1 + unlearned * (prior.capacitySd_g / before_sd - 1));
  state[at] = sd ** 2;
  return changed(believing(slice, shifted(state, CAPACITY, 0)), { prior });
}

/** Visits of past days on which nobody poured: the pot did not look dry then. */
function withVisits(slice: WaterSlice, step: Step): WaterSlice {
  const { date } = step.day;
  if (!slice.visits.some((visit) => visit.date < date)) return slice;
  const over = slice.visits.filter((visit) => visit.date < date);
  const visits = slice.visits.filter((visit) => visit.date >= date);
  let { state, visitsSincePour_n } = slice;
  for (const visit of over) {
    if (isHabit(slice.pours, visit.by)) continue;
    const sinceUse_g = slice.ledger.used_g - visit.used_g;
    const meaning = repeated(VISITED_WITHOUT_POUR, visitsSincePour_n);
    state = withLook(state, false, meaning, lookerOf(slice, visit.by), sinceUse_g);
    visitsSincePour_n++;
  }
  return believing(slice, state, { visits, visitsSincePour_n });
}
