/**
 * Water in a pot as two stores: a surface layer that dries by evaporation and a root zone that the plant drinks from.
 * Water rises from the roots to a drier surface; poured water wets the surface, percolates, and in dry medium
 * part of it runs past the root ball and out (bypass). Grams throughout (1 g = 1 mL).
 */
export interface MediumTraits {
  /** Held when just drained. */
  readonly surfaceFull_g: number;
  readonly rootFull_g: number;
  /** Held by the surface when air-dry. */
  readonly surfaceDry_g: number;
  /** Held by the root zone when the plant wilts for good. */
  readonly rootWilt_g: number;
  /** Flow to the surface at the steepest difference in wetness, g per hour. */
  readonly rise_g_h: number;
  /** Share of poured water that runs past a moist and a bone-dry root ball. */
  readonly bypassMoist_frac: number;
  readonly bypassDry_frac: number;
  /** Wetness of the surface below which evaporation falls. */
  readonly crust_frac: number;
  /** Share of roots in the surface layer. */
  readonly surfaceRoots_frac: number;
  /** Depletion of the root zone at which stomata are half shut. */
  readonly halfShut_frac: number;
}

/** Water in the two stores and under the pot; mutable, since a run steps through millions of hours. */
export interface Water {
  surface_g: number;
  root_g: number;
  saucer_g: number;
}

/** What left and entered over one step. */
interface Flow {
  evaporated_g: number;
  drunk_g: number;
}

/** Wetness of the surface, 0 air-dry to 1 just drained. */
export function surfaceWetness_frac(water: Water, medium: MediumTraits): number {
  return (water.surface_g - medium.surfaceDry_g) / (medium.surfaceFull_g - medium.surfaceDry_g);
}

/** Wetness of the root zone, 0 at lasting wilt to 1 just drained; below 0 past wilting. */
export function rootWetness_frac(water: Water, medium: MediumTraits): number {
  return (water.root_g - medium.rootWilt_g) / (medium.rootFull_g - medium.rootWilt_g);
}

/** Water between just drained and lasting wilt after an undisturbed dry-down (the surface is air-dry by then). */
export function available_g(medium: MediumTraits): number {
  return medium.surfaceFull_g - medium.surfaceDry_g + medium.rootFull_g - medium.rootWilt_g;
}

/** How far the pot has gone down from just drained, g. Never negative. */
export function depletion_g(water: Water, medium: MediumTraits): number {
  return medium.surfaceFull_g - water.surface_g + medium.rootFull_g - water.root_g;
}

/**
 * How far stomata open on what the roots find: an S-shaped fall.
 *
 * @source van Genuchten (1987), S-shaped reduction 1/(1 + (h/h50)^p), here on depletion instead of suction
 */
export function openness_frac(water: Water, medium: MediumTraits): number {
  const depletion_frac = Math.max(0, 1 - rootWetness_frac(water, medium));
  const ratio4 = (depletion_frac / medium.halfShut_frac) ** 4;
  return 1 / (1 + ratio4 * ratio4);
}

/**
 * Dries the pot over a step of at most an hour and lets the saucer be drawn up. Every gram that leaves one place
 * arrives in another or in the returned flow.
 */
export function dry(
  water: Water,
  medium: MediumTraits,
  evaporation_g_h: number,
  thirst_g_h: number,
  step_h: number,
): Flow {
  const surface_frac = surfaceWetness_frac(water, medium);
  const root_frac = Math.max(0, rootWetness_frac(water, medium));

  const difference_frac = root_frac - surface_frac;
  const rise_g =
    difference_frac >= 0
      ? medium.rise_g_h * difference_frac * root_frac * Math.sqrt(root_frac) * step_h
      : medium.rise_g_h * difference_frac * Math.max(0, surface_frac) ** 3 * step_h;
  const risen_g = clamp(
    rise_g,
    -Math.max(0, Math.min(water.surface_g - medium.surfaceDry_g, medium.rootFull_g - water.root_g)),
    Math.max(0, Math.min(water.root_g - medium.rootWilt_g, medium.surfaceFull_g - water.surface_g)),
  );
  water.surface_g += risen_g;
  water.root_g -= risen_g;

  // A dry crust still lets a twentieth through as vapour.
  const freedom_frac = Math.max(0.05, Math.min(1, surface_frac / medium.crust_frac));
  const evaporated_g = clamp(
    evaporation_g_h * freedom_frac * step_h,
    0,
    Math.max(0, water.surface_g - medium.surfaceDry_g),
  );
  water.surface_g -= evaporated_g;

  const thirst_g = thirst_g_h * step_h;
  const fromSurface_g = clamp(
    thirst_g * medium.surfaceRoots_frac * Math.max(0, surface_frac),
    0,
    Math.max(0, water.surface_g - medium.surfaceDry_g),
  );
  // Past wilting the leaves go on losing what the roots can still wring out.
  const fromRoots_g = clamp(thirst_g - fromSurface_g, 0, Math.max(0, water.root_g - 0.7 * medium.rootWilt_g));
  water.surface_g -= fromSurface_g;
  water.root_g -= fromRoots_g;

  const drawn_g = clamp(
    0.06 * (medium.rootFull_g - medium.rootWilt_g) * step_h,
    0,
    Math.min(water.saucer_g, medium.rootFull_g - water.root_g),
  );
  water.saucer_g -= drawn_g;
  water.root_g += drawn_g;
  return { evaporated_g, drunk_g: fromSurface_g + fromRoots_g };
}

/**
 * Pours water on the medium and lets it drain.
 *
 * @returns what ran out at the bottom, g
 */
export function pour(water: Water, medium: MediumTraits, volume_mL: number): number {
  const dryness_frac = clamp(1 - rootWetness_frac(water, medium), 0, 1);
  const repelled_frac = clamp((dryness_frac - 0.5) / 0.5, 0, 1) ** 1.5;
  const bypass_frac =
    medium.bypassMoist_frac + (medium.bypassDry_frac - medium.bypassMoist_frac) * repelled_frac;

  const intoSurface_g = Math.min(volume_mL * (1 - 0.5 * bypass_frac), medium.surfaceFull_g - water.surface_g);
  const passing_g = volume_mL - intoSurface_g;
  const intoRoots_g = Math.min(passing_g * (1 - bypass_frac), medium.rootFull_g - water.root_g);
  water.surface_g += intoSurface_g;
  water.root_g += intoRoots_g;
  return passing_g - intoRoots_g;
}

function clamp(value: number, low: number, high: number): number {
  return Math.max(low, Math.min(high, value));
}
