import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";
import { horizonAt_rad } from "./horizon.ts";
import { glassAt_frac } from "./pane-patches.ts";
import { type LightPlane, lightPlanes, type PaneView, planes_n } from "./pane-view.ts";

/**
 * Add the light of one moment: first what comes from sky and ground for each plane, then what comes straight from the sun.
 * Allocates nothing; all angles as sines, cosines and radians. Not exported by the field.
 */
export const addPaneLight = (
  view: PaneView,
  diffuse_W_m2: number,
  direct_W_m2: number,
  sine: number,
  azimuth_rad: number,
  hourClearness_frac: number,
  weight: number,
  into: Float64Array,
): void => {
  const { skyFactors_frac, groundFactors_frac } = view;
  const from = hourClearness_frac < view.overcastBelow_frac ? planes_n : 0;
  const sky = weight * diffuse_W_m2;
  const ground = weight * (diffuse_W_m2 + direct_W_m2 * Math.max(0, sine));
  for (let plane = 0; plane < planes_n; plane += 1) {
    into[plane] =
      (into[plane] as number) +
      sky * (skyFactors_frac[from + plane] as number) +
      ground * (groundFactors_frac[plane] as number);
  }
  if (!(direct_W_m2 > 0) || sine <= 0) return;
  const turn = azimuth_rad - view.facing_rad;
  const ahead = Math.cos(turn);
  if (ahead <= 0) return;
  const out = Math.sqrt(Math.max(0, 1 - sine * sine));
  const lit = litShare_frac(view, Math.sin(turn) / ahead, sine / (out * ahead));
  if (lit === 0) return;
  if (sine <= Math.sin(horizonAt_rad(view.horizon_rad, azimuth_rad))) return;
  const beam = weight * direct_W_m2 * lit * glassAt_frac(view.beamGlass_frac, out * ahead);
  into[planes_n] = (into[planes_n] as number) + beam * sine;
  into[planes_n + 1] = (into[planes_n + 1] as number) + beam * out * ahead;
  into[planes_n + 2] = (into[planes_n + 2] as number) + beam;
  for (let side = 0; side < 4; side += 1) {
    const facing = Math.cos(azimuth_rad - view.front_rad - (side * Math.PI) / 2);
    const at = planes_n + 3 + side;
    if (facing > 0) into[at] = (into[at] as number) + beam * out * facing;
  }
};

/** Share of the crown's points that a beam reaches: it must pass the pane and the outer edge of the opening. */
function litShare_frac(view: PaneView, across: number, up: number): number {
  const { openings } = view;
  let lit = 0;
  for (let at = 0; at < openings.length; at += 8) {
    if (
      across >= (openings[at] as number) &&
      across <= (openings[at + 1] as number) &&
      up >= (openings[at + 2] as number) &&
      up <= (openings[at + 3] as number) &&
      across >= (openings[at + 4] as number) &&
      across <= (openings[at + 5] as number) &&
      up >= (openings[at + 6] as number) &&
      up <= (openings[at + 7] as number)
    ) {
      lit += 8;
    }
  }
  return lit / openings.length;
}

export type PlaneLight = Readonly<Record<`${LightPlane}_W_m2`, number>>;

/** Name the numbers of a row of planes. Not exported by the field. */
export const planesNamed = <Unit extends string>(
  row: Float64Array,
  from: number,
  unit: Unit,
): Readonly<Record<`${LightPlane}_${Unit}`, number>> =>
  Object.fromEntries(lightPlanes.map((plane, at) => [`${plane}_${unit}`, row[from + at] ?? 0])) as Readonly<
    Record<`${LightPlane}_${Unit}`, number>
  >;

/**
 * Light at a leaf behind one pane or more at one moment, from sky and ground and straight from the sun.
 *
 * Sky and ground by the factors of the view; the beam where y = d tan D, z = d tan a / cos D lies inside the pane, inside the
 * same pane at the outer edge of the opening, and above the horizon, with τ(θ), cos θ = cos a cos D
 *
 * @param views of `paneView`, of one place; sky: diffuse radiation on level ground and direct radiation facing the sun [W m⁻²], 0 to 1500; elevation [°], -90 to 90, and azimuth of the sun [°], 0 to 360; clearness of the hour, 0 to 1.5, which says how overcast the sky is
 * @returns radiation of daylight [W m⁻²] on each plane, diffuse and direct apart
 * @throws QuantityError outside those ranges
 * @source HowellCatalog; MoonSpencer1942; DuffieBeckman2013
 */
export function paneLight(
  views: readonly PaneView[],
  sky: {
    readonly diffuse_W_m2: number;
    readonly direct_W_m2: number;
    readonly elevation_deg: number;
    readonly azimuth_deg: number;
    readonly hourClearness_frac: number;
  },
): { readonly diffuse: PlaneLight; readonly direct: PlaneLight } {
  within("diffuse_W_m2", sky.diffuse_W_m2, 0, 1500);
  within("direct_W_m2", sky.direct_W_m2, 0, 1500);
  within("elevation_deg", sky.elevation_deg, -90, 90);
  within("azimuth_deg", sky.azimuth_deg, 0, 360);
  within("hourClearness_frac", sky.hourClearness_frac, 0, 1.5);
  const into = new Float64Array(2 * planes_n);
  for (const view of views) {
    addPaneLight(
      view,
      sky.diffuse_W_m2,
      sky.direct_W_m2,
      Math.sin(sky.elevation_deg * rad_per_deg),
      sky.azimuth_deg * rad_per_deg,
      sky.hourClearness_frac,
      1,
      into,
    );
  }
  return { diffuse: planesNamed(into, 0, "W_m2"), direct: planesNamed(into, planes_n, "W_m2") };
}
