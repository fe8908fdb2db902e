import { horizonAt_rad } from "./horizon.ts";

/** An opening seen from one point, and what lies beyond it. */
export type Window = {
  readonly facing_rad: number;
  readonly front_rad: number;
  readonly horizon_rad: Float64Array;
  readonly beamGlass_frac: Float64Array;
  readonly facadeBrightness_frac: number;
  /** left, right, bottom, top */
  readonly edges_m: readonly number[];
  readonly distance_m: number;
  readonly revealDepth_m: number;
};

const columns_n = 24;
const rows_n = 16;
const sides_n = 4;
const planes_n = 3 + sides_n;

/** Table look-up, straight between its steps. */
export const glassAt_frac = (beamGlass_frac: Float64Array, cosine: number): number => {
  const place = cosine * (beamGlass_frac.length - 1);
  const before = Math.min(beamGlass_frac.length - 2, Math.floor(place));
  const from = beamGlass_frac[before] as number;
  return from + ((beamGlass_frac[before + 1] as number) - from) * (place - before);
};

/** One column of directions: its turn from the pane's normal, its width, and what of it falls on each upright plane. */
type Column = { readonly u: number; readonly du: number; readonly upright: readonly number[] };

function columnAt(window: Window, u: number, du: number): Column {
  const sides = Array.from({ length: sides_n }, (_, side) =>
    Math.max(0, Math.cos(window.facing_rad + u - window.front_rad - (side * Math.PI) / 2)),
  );
  return { u, du, upright: [Math.cos(u), ...sides] };
}

/**
 * Add one stretch of a column, heights from low to high, for an even brightness 1/π and, where asked, for an overcast sky.
 * dΩ = cos v du dv, cos θ = cos u cos v.
 */
function addStretch(
  window: Window,
  { u, du, upright }: Column,
  low: number,
  high: number,
  weight: number,
  into: Float64Array,
  withOvercast = false,
): void {
  if (!(high > low)) return;
  const dv = (high - low) / rows_n;
  const ahead = Math.cos(u);
  let [level, crosswise, sphere, levelOvercast, crosswiseOvercast, sphereOvercast] = [0, 0, 0, 0, 0, 0];
  for (let row = 0; row < rows_n; row += 1) {
    const v = low + (row + 0.5) * dv;
    const up = Math.sin(v);
    const out = Math.cos(v);
    const part = glassAt_frac(window.beamGlass_frac, ahead * out) * out;
    const brighter = (3 / 7) * (1 + 2 * up);
    const onLevel = part * Math.max(0, up);
    level += onLevel;
    crosswise += part * out;
    sphere += part;
    levelOvercast += onLevel * brighter;
    crosswiseOvercast += part * out * brighter;
    sphereOvercast += part * brighter;
  }
  const scale = (weight * du * dv) / Math.PI;
  addPlanes(into, 0, upright, scale * level, scale * crosswise, scale * sphere);
  if (withOvercast) {
    addPlanes(
      into,
      planes_n,
      upright,
      scale * levelOvercast,
      scale * crosswiseOvercast,
      scale * sphereOvercast,
    );
  }
}

/** Planes in the order of `lightPlanes`: level, facing, sphere, then the sides. */
function addPlanes(
  into: Float64Array,
  from: number,
  upright: readonly number[],
  level: number,
  crosswise: number,
  sphere: number,
): void {
  into[from] = (into[from] as number) + level;
  into[from + 1] = (into[from + 1] as number) + crosswise * (upright[0] as number);
  into[from + 2] = (into[from + 2] as number) + sphere;
  for (let side = 1; side <= sides_n; side += 1) {
    into[from + 2 + side] = (into[from + 2 + side] as number) + crosswise * (upright[side] as number);
  }
}

/**
 * Add the factors of one point to those of the view: even and overcast sky one after the other, and the ground for an
 * albedo of 1. What is hidden by the reveal or stands opposite has the brightness of a facade. Not exported by the field.
 */
export const apertureFactors = (
  window: Window,
  weight: number,
  sky: Float64Array,
  ground: Float64Array,
): void => {
  const { edges_m, distance_m, revealDepth_m, facadeBrightness_frac } = window;
  const [left, right, bottom, top] = edges_m as [number, number, number, number];
  const inner = Math.max(distance_m, 1e-6);
  const outer = distance_m + revealDepth_m;
  const facade = new Float64Array(planes_n);
  const whole = new Float64Array(planes_n);
  const clear = new Float64Array(2 * planes_n);
  const below = new Float64Array(planes_n);
  const columns = (from_rad: number, to_rad: number, run: (column: Column) => void): void => {
    const du = (to_rad - from_rad) / columns_n;
    for (let column = 0; du > 0 && column < columns_n; column += 1) {
      run(columnAt(window, from_rad + (column + 0.5) * du, du));
    }
  };
  columns(
    Math.max(Math.atan(left / inner), Math.atan(left / outer)),
    Math.min(Math.atan(right / inner), Math.atan(right / outer)),
    (column) => {
      const { u } = column;
      const slant = Math.cos(u);
      const low = Math.max(Math.atan((bottom * slant) / inner), Math.atan((bottom * slant) / outer));
      const high = Math.min(Math.atan((top * slant) / inner), Math.atan((top * slant) / outer));
      const horizon = horizonAt_rad(window.horizon_rad, window.facing_rad + u);
      addStretch(window, column, low, Math.min(high, 0), weight, below);
      addStretch(window, column, Math.max(low, 0), Math.min(high, horizon), weight, facade);
      addStretch(window, column, Math.max(low, 0, horizon), high, weight, clear, true);
    },
  );
  if (revealDepth_m > 0) {
    columns(Math.atan(left / inner), Math.atan(right / inner), (column) => {
      const slant = Math.cos(column.u);
      const low = Math.atan((bottom * slant) / inner);
      addStretch(window, column, low, Math.atan((top * slant) / inner), weight, whole);
    });
  }
  for (let plane = 0; plane < planes_n; plane += 1) {
    const seen = (clear[plane] as number) + (facade[plane] as number) + (below[plane] as number);
    const reveal = revealDepth_m > 0 ? Math.max(0, (whole[plane] as number) - seen) : 0;
    const dim = facadeBrightness_frac * ((facade[plane] as number) + reveal);
    ground[plane] = (ground[plane] as number) + (below[plane] as number);
    sky[plane] = (sky[plane] as number) + (clear[plane] as number) + dim;
    sky[planes_n + plane] = (sky[planes_n + plane] as number) + (clear[planes_n + plane] as number) + dim;
  }
};
