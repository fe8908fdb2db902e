import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";
import { lightAssumptions } from "./assumptions.ts";
import { type Glazing, opticsOf, throughOf_frac } from "./glass.ts";
import { horizonTable_rad } from "./horizon.ts";
import { apertureFactors, type Window } from "./pane-patches.ts";
import { checkPane } from "./view-factor.ts";

/** Where light at a leaf is asked: on a level leaf, on one that faces the pane, from all around, and on the four sides of a crown. */
export const lightPlanes = ["level", "facing", "sphere", "front", "right", "back", "left"] as const;
export type LightPlane = (typeof lightPlanes)[number];
export const planes_n = lightPlanes.length;

/** One pane as a leaf sees it. Edges are counted from the leaf's foot on the glass, left and right as seen from inside. */
export type PaneGeometry = {
  /** compass direction the pane faces, outwards [°], 0 to 360 */
  readonly facing_deg: number;
  readonly left_m: number;
  readonly right_m: number;
  readonly bottom_m: number;
  readonly top_m: number;
  /** from leaf to glass, 0.02 to 20 */
  readonly distance_m: number;
  /** depth of the wall between glass and outer edge of the opening, 0 to 2; 0 when left out */
  readonly revealDepth_m?: number;
  readonly glazing: Glazing;
  /** share that passes what hangs or lies before the glass, 0.01 to 1; 1 when left out */
  readonly veil_frac?: number;
  /** height of what stands opposite [°], 0 to 90: one value, or values evenly spaced round the compass from north, clockwise */
  readonly horizon_deg?: number | readonly number[];
  /** width of the crown over which light is averaged, 0 to 3; 0 when left out: one point */
  readonly crownWidth_m?: number;
  /** compass direction in which the front of the crown looks; towards the pane when left out */
  readonly front_deg?: number;
  readonly groundAlbedo?: number;
  readonly facadeBrightness_frac?: number;
  readonly overcastBelow_frac?: number;
};

/** A pane with all that does not change with the sun worked out once: see `paneView`. */
export type PaneView = {
  readonly facing_rad: number;
  readonly front_rad: number;
  readonly overcastBelow_frac: number;
  /** light per diffuse radiation outdoors, [even sky, overcast sky][plane], facades included, glass and veil taken off */
  readonly skyFactors_frac: Float64Array;
  /** light per global radiation outdoors, from the ground [plane] */
  readonly groundFactors_frac: Float64Array;
  /** transmittance for the beam, veil included, by the cosine of the angle on the glass, evenly from 0 to 1 */
  readonly beamGlass_frac: Float64Array;
  /** [point][left, right, bottom, top over distance at the glass, then at the outer edge]: slopes that a beam must keep between */
  readonly openings: Float64Array;
  /** height of the horizon by whole degrees of the compass [rad] */
  readonly horizon_rad: Float64Array;
};

export const beamSteps_n = 256;

/** Three by three points over a level crown, or the one in its middle. */
function points(crownWidth_m: number, distance_m: number): readonly (readonly [number, number])[] {
  if (crownWidth_m === 0) return [[0, distance_m]];
  const offsets = [-crownWidth_m / 3, 0, crownWidth_m / 3];
  // A leaf that grows into the glass stands at it.
  return offsets.flatMap((across) =>
    offsets.map((off) => [across, Math.max(0.02, distance_m + off)] as const),
  );
}

/**
 * What one pane lets a leaf see of the sky, the ground and what stands opposite, worked out once for a place before it.
 *
 * Directions through the pane are summed in 24 columns of equal angle, each parted into ground, obstruction and sky:
 * E level += L τ(θ) sin a dΩ, facing += L τ(θ) cos θ dΩ, sphere += L τ(θ) dΩ, sides of the crown by their own cosine; sky even
 * L = DHI/π or overcast L = (3/7)(1 + 2 sin a) DHI/π, ground L = albedo GHI/π, obstruction and reveal 0.2 DHI/π. Averaged over
 * three by three points of the crown. Light reflected inside the room is left out: the calibration of the spot carries it
 *
 * @param pane its geometry, glass and surroundings: see `PaneGeometry` for each unit and range
 * @returns factors and tables for `paneLight`, `windowDay` and `windowDays`
 * @throws QuantityError outside those ranges
 * @source HowellCatalog for the geometry; MoonSpencer1942 for the overcast sky; DuffieBeckman2013 for the glass
 * @see checks/sun-light.json 074, 110, 112
 */
export function paneView(pane: PaneGeometry): PaneView {
  checkPane(pane);
  const { facing_deg, distance_m, revealDepth_m = 0, veil_frac = 1, crownWidth_m = 0 } = pane;
  const { front_deg = facing_deg, horizon_deg = 0 } = pane;
  within("facing_deg", facing_deg, 0, 360);
  within("front_deg", front_deg, 0, 360);
  within("revealDepth_m", revealDepth_m, 0, 2);
  within("veil_frac", veil_frac, 0.01, 1);
  within("crownWidth_m", crownWidth_m, 0, 3);
  const set = valuesOf(lightAssumptions, pane);
  const horizon_rad = horizonTable_rad(horizon_deg);
  const optics = opticsOf(pane.glazing);
  const beamGlass_frac = Float64Array.from(
    { length: beamSteps_n + 1 },
    (_, step) => veil_frac * throughOf_frac(optics, step / beamSteps_n),
  );
  const shared = {
    facing_rad: facing_deg * rad_per_deg,
    front_rad: front_deg * rad_per_deg,
    horizon_rad,
    beamGlass_frac,
    facadeBrightness_frac: set.facadeBrightness_frac,
  };
  const skyFactors_frac = new Float64Array(2 * planes_n);
  const groundFactors_frac = new Float64Array(planes_n);
  const all = points(crownWidth_m, distance_m);
  const openings = new Float64Array(8 * all.length);
  all.forEach(([across_m, from_m], at) => {
    const edges = [pane.left_m - across_m, pane.right_m - across_m, pane.bottom_m, pane.top_m];
    const window: Window = { ...shared, edges_m: edges, distance_m: from_m, revealDepth_m };
    apertureFactors(window, 1 / all.length, skyFactors_frac, groundFactors_frac);
    edges.forEach((edge_m, side) => {
      openings[8 * at + side] = edge_m / from_m;
      openings[8 * at + 4 + side] = edge_m / (from_m + revealDepth_m);
    });
  });
  for (let plane = 0; plane < planes_n; plane += 1) {
    groundFactors_frac[plane] = (groundFactors_frac[plane] ?? 0) * set.groundAlbedo;
  }
  const { facing_rad, front_rad } = shared;
  const { overcastBelow_frac } = set;
  return {
    facing_rad,
    front_rad,
    overcastBelow_frac,
    skyFactors_frac,
    groundFactors_frac,
    beamGlass_frac,
    openings,
    horizon_rad,
  };
}

/** The factors of a view by name, for workings and tests. */
export type NamedFactors = Readonly<Record<`${LightPlane}_frac`, number>>;

/**
 * The factors of a pane view by name: light at the leaf per diffuse (or, from the ground, global) radiation outdoors.
 *
 * @param view of `paneView`
 * @returns of an even sky, an overcast sky and the ground: a number per plane
 * @source our assumption
 */
export function paneFactors(view: PaneView): {
  readonly even: NamedFactors;
  readonly overcast: NamedFactors;
  readonly ground: NamedFactors;
} {
  const named = (factors: Float64Array, from: number): NamedFactors =>
    Object.fromEntries(
      lightPlanes.map((plane, at) => [`${plane}_frac`, factors[from + at] ?? 0]),
    ) as NamedFactors;
  return {
    even: named(view.skyFactors_frac, 0),
    overcast: named(view.skyFactors_frac, planes_n),
    ground: named(view.groundFactors_frac, 0),
  };
}
