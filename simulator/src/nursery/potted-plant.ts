import { type Ageing, age, renew, salt, saltOpenness_frac } from "./ageing.ts";
import type { BenchAir } from "./bench-air.ts";
import { HOUR_ms } from "./calendar.ts";
import { type Growing, grow, trim, type Vigour } from "./growth.ts";
import { type LeafTraits, leafLoss_g_m2_h, wetSurfaceLoss_g_m2_h } from "./leaf.ts";
import { available_g, depletion_g, dry, type MediumTraits, openness_frac, pour } from "./medium.ts";
import { opening_cm2, type PotShape } from "./pot-shape.ts";

/** What does not change about a plant between two pottings. */
export interface PlantTraits {
  readonly leaf: LeafTraits;
  /** Leaf area over ground shaded by it. */
  readonly density: number;
  /** Growth of leaf area in the best hour, share per day. */
  readonly growth_frac_d: number;
  readonly leafAreaMax_m2: number;
  /** Fresh mass of leaf with its share of stem and root, g per m² of leaf. */
  readonly tissue_g_m2: number;
  /** Wood and fruit that come on whatever the leaves do, g per day. */
  readonly swelling_g_d: number;
  readonly vigour?: Vigour;
}

/** The vessel and what fills it, as filled at one potting. */
export interface Vessel {
  readonly shape: PotShape;
  readonly medium: MediumTraits;
  /** Pot, dry medium, stake and label. */
  readonly hardware_g: number;
  readonly saucerHolds_g: number;
}

/** Something that happens to a pot whoever looks or not; all but a sip also happen in the counterfactual. */
export type Happening =
  | {
      readonly at_ms: number;
      readonly what: "trim";
      readonly taken_frac: number;
      /** Somebody wrote something from which it can be told. */
      readonly written?: boolean;
    }
  | {
      readonly at_ms: number;
      readonly what: "move";
      readonly bench: number;
      readonly spot?: number;
      readonly light_frac: number;
      readonly written?: boolean;
    }
  /** Fruit picked, or grit, moss, wire and labels added (negative): weight without water or leaves. */
  | { readonly at_ms: number; readonly what: "lightened"; readonly taken_g: number }
  | { readonly at_ms: number; readonly what: "pot"; readonly vessel: Vessel; readonly filled_frac: number }
  | { readonly at_ms: number; readonly what: "rot"; readonly rootsLeft_frac: number }
  | { readonly at_ms: number; readonly what: "sip"; readonly volume_mL: number };

/** A pot at one instant; mutable. */
export interface Pot {
  at_ms: number;
  readonly plant: PlantTraits;
  vessel: Vessel;
  bench: number;
  /** Spot on a bench whose spots have light of their own. */
  spot?: number;
  /** Light at this spot over light on the bench, or over that of the spot where spots have their own. */
  light_frac: number;
  surface_g: number;
  root_g: number;
  saucer_g: number;
  leafArea_m2: number;
  fresh_g: number;
  /** Share of the roots that work; falls when they rot. */
  roots_frac: number;
  /** Kept by the water ledger: all water that ever came and went. */
  poured_g: number;
  evaporated_g: number;
  drunk_g: number;
  lost_g: number;
  next: number;
  readonly happenings: readonly Happening[];
  /** Day noise of this pot as factors, [day]. */
  readonly whims: Float64Array;
  readonly growing?: Growing;
  readonly ageing?: Ageing;
}

/** What the pot weighs without its saucer, g. */
export const weight_g = (pot: Pot): number =>
  pot.vessel.hardware_g + pot.fresh_g + pot.surface_g + pot.root_g;

/** What it would weigh just drained, g. */
export const fullWeight_g = (pot: Pot): number => weight_g(pot) + depletion_g(pot, pot.vessel.medium);

export const potAvailable_g = (pot: Pot): number => available_g(pot.vessel.medium);
export const potDepletion_g = (pot: Pot): number => depletion_g(pot, pot.vessel.medium);

/** A pot that can be driven on without touching the first. */
export const copyOf = (pot: Pot): Pot => ({
  ...pot,
  ...(pot.growing ? { growing: { ...pot.growing } } : {}),
  ...(pot.ageing ? { ageing: { ...pot.ageing } } : {}),
});

/** Waters a pot: what runs out fills the saucer, the rest of it is lost. */
export function water(pot: Pot, volume_mL: number): { readonly leached_g: number } {
  const held_g = pot.surface_g + pot.root_g;
  const leached_g = pour(pot, pot.vessel.medium, volume_mL);
  if (pot.ageing) salt(pot.ageing, held_g, volume_mL, leached_g);
  const caught_g = Math.min(leached_g, Math.max(0, pot.vessel.saucerHolds_g - pot.saucer_g));
  pot.saucer_g += caught_g;
  pot.poured_g += volume_mL;
  pot.lost_g += leached_g - caught_g;
  return { leached_g };
}

export function emptySaucer(pot: Pot): void {
  pot.lost_g += pot.saucer_g;
  pot.saucer_g = 0;
}

/** Drives a pot to an instant, hour by hour, with all that happens to it on the way. */
export function advance(pot: Pot, to_ms: number, benches: readonly BenchAir[], sips = true): void {
  while (pot.at_ms < to_ms) {
    const happening = pot.happenings[pot.next];
    const until_ms = Math.min(to_ms, happening ? Math.max(happening.at_ms, pot.at_ms) : to_ms);
    while (pot.at_ms < until_ms) hour(pot, until_ms, benches);
    if (happening && happening.at_ms <= until_ms) {
      pot.next++;
      happen(pot, happening, sips);
    }
  }
}

function hour(pot: Pot, until_ms: number, benches: readonly BenchAir[]): void {
  const air = benches[pot.bench] as BenchAir;
  const i = Math.min(air.hours_n - 1, Math.floor((pot.at_ms - air.from_ms) / HOUR_ms));
  const end_ms = Math.min(until_ms, air.from_ms + (i + 1) * HOUR_ms);
  const to_ms = end_ms > pot.at_ms ? end_ms : until_ms;
  const step_h = (to_ms - pot.at_ms) / HOUR_ms;
  const day = air.dayOf[i] as number;
  if (pot.ageing && pot.ageing.day !== day) age(pot, pot.ageing, day);
  const { plant, vessel } = pot;
  const lit = (pot.spot === undefined ? undefined : air.spots?.[pot.spot]) ?? air;
  const opening_m2 = opening_cm2(vessel.shape) / 10_000;
  const rain_mm = (air.rain_mm_h[i] as number) * step_h;
  if (rain_mm > 0) water(pot, rain_mm * opening_m2 * 1000 * air.throughfall_frac);

  const light = pot.light_frac;
  // Leaves shade one another and the medium (Beer's law with an extinction of 0.55).
  const shade = 0.55 * plant.density;
  const meanLight = (light * (1 - Math.exp(-shade))) / shade;
  const air_C = air.air_C[i] as number;
  const vapour_kPa = air.vapour_kPa[i] as number;
  const wind_m_s = air.wind_m_s[i] as number;
  const { pressure_kPa } = air;
  const ppfd_umol_m2_s = (lit.ppfd_umol_m2_s[i] as number) * meanLight;
  const full_W_m2 = lit.absorbed_W_m2[i] as number;
  const unsalted = openness_frac(pot, vessel.medium) * pot.roots_frac;
  const open = pot.ageing ? unsalted * saltOpenness_frac(pot, pot.ageing) : unsalted;
  // Written out instead of spread: this is the innermost loop of every run.
  const atLeaf = {
    air_C,
    vapour_kPa,
    wind_m_s,
    pressure_kPa,
    ppfd_umol_m2_s,
    absorbed_W_m2: full_W_m2 * meanLight,
  };
  const leafLoss_g_h = pot.leafArea_m2 * leafLoss_g_m2_h(atLeaf, plant.leaf, open);
  const cover_frac = Math.min(0.9, pot.leafArea_m2 / plant.density / opening_m2);
  const absorbed_W_m2 = full_W_m2 * light * (1 - cover_frac + cover_frac * Math.exp(-shade));
  const atMedium = { air_C, vapour_kPa, wind_m_s, pressure_kPa, ppfd_umol_m2_s: 0, absorbed_W_m2 };
  const surfaceLoss_g_h = opening_m2 * wetSurfaceLoss_g_m2_h(atMedium, Math.sqrt(opening_m2));
  const whim = (pot.whims[day] ?? 1) * (air.whims[day] ?? 1);
  const flow = dry(pot, vessel.medium, surfaceLoss_g_h * whim, leafLoss_g_h * whim, step_h);
  pot.evaporated_g += flow.evaporated_g;
  pot.drunk_g += flow.drunk_g;
  grow(pot, ppfd_umol_m2_s, (lit.ppfd_umol_m2_s[i] as number) * light, air_C, open, step_h);
  pot.at_ms = to_ms;
}

function happen(pot: Pot, happening: Happening, sips: boolean): void {
  switch (happening.what) {
    case "trim":
      trim(pot, happening.taken_frac);
      return;
    case "move":
      pot.bench = happening.bench;
      if (happening.spot !== undefined) pot.spot = happening.spot;
      pot.light_frac = happening.light_frac;
      return;
    case "pot": {
      const { medium } = happening.vessel;
      const held_g = pot.surface_g + pot.root_g + pot.saucer_g;
      pot.vessel = happening.vessel;
      if (pot.ageing) renew(pot.ageing, medium);
      pot.surface_g =
        medium.surfaceDry_g + (medium.surfaceFull_g - medium.surfaceDry_g) * happening.filled_frac;
      pot.root_g = medium.rootWilt_g + (medium.rootFull_g - medium.rootWilt_g) * happening.filled_frac;
      pot.saucer_g = 0;
      // The old medium leaves with its water and the new one brings its own: both stand in the ledger.
      pot.lost_g += held_g;
      pot.poured_g += pot.surface_g + pot.root_g;
      return;
    }
    case "lightened":
      // However many fruits were picked, the tree still stands.
      pot.fresh_g -= Math.min(happening.taken_g, 0.4 * pot.fresh_g);
      return;
    case "rot":
      pot.roots_frac *= happening.rootsLeft_frac;
      return;
    case "sip":
      if (sips) water(pot, happening.volume_mL);
  }
}
