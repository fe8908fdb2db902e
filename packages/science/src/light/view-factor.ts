import { within } from "../errors/index.ts";

/** B-3 for a corner; its sign follows a and b, so that rectangles anywhere are sums of four corners. Not exported by the field. */
export const cornerOf_frac = (a: number, b: number, c: number): number => {
  const x = a / c;
  const y = b / c;
  const rootX = Math.sqrt(1 + x * x);
  const rootY = Math.sqrt(1 + y * y);
  return ((x / rootX) * Math.atan(y / rootX) + (y / rootY) * Math.atan(x / rootY)) / (2 * Math.PI);
};

/** B-4 for a rectangle that stands on the element's plane, its foot at the corner. */
const wallOf_frac = (width: number, height: number, distance: number): number => {
  const slant = Math.hypot(distance, height);
  return (Math.atan(width / distance) - (distance / slant) * Math.atan(width / slant)) / (2 * Math.PI);
};

/**
 * Share of what leaves a small surface that meets a rectangle parallel to it, one corner straight above it.
 *
 * X = a/c, Y = b/c; F = [X/√(1+X²) atan(Y/√(1+X²)) + Y/√(1+Y²) atan(X/√(1+Y²))] / 2π
 *
 * @param rectangle sides [m], 0.0001 to 1000; distance [m], 0.0001 to 1000
 * @returns configuration factor, 0 to 0.25
 * @throws QuantityError outside those ranges
 * @source HowellCatalog B-3
 * @see checks/sun-light.json 071, 072
 * @example parallelCornerFactor_frac({ sideLength_m: 1, sideWidth_m: 1, distance_m: 1 }) // 0.13853
 */
export function parallelCornerFactor_frac(rectangle: {
  readonly sideLength_m: number;
  readonly sideWidth_m: number;
  readonly distance_m: number;
}): number {
  within("sideLength_m", rectangle.sideLength_m, 0.0001, 1000);
  within("sideWidth_m", rectangle.sideWidth_m, 0.0001, 1000);
  within("distance_m", rectangle.distance_m, 0.0001, 1000);
  return cornerOf_frac(rectangle.sideLength_m, rectangle.sideWidth_m, rectangle.distance_m);
}

/**
 * Share of what leaves a small level surface that meets an upright rectangle standing on its plane, foot at a corner.
 *
 * F = [atan(b/d) − d/√(d²+h²) atan(b/√(d²+h²))] / 2π
 *
 * @param rectangle width and height [m], 0.0001 to 1000; distance [m], 0.0001 to 1000
 * @returns configuration factor, 0 to 0.25
 * @throws QuantityError outside those ranges
 * @source HowellCatalog B-4
 * @see checks/sun-light.json 073
 * @example wallCornerFactor_frac({ sideWidth_m: 0.6, sideHeight_m: 1.4, distance_m: 0.5 }) // 0.118895
 */
export function wallCornerFactor_frac(rectangle: {
  readonly sideWidth_m: number;
  readonly sideHeight_m: number;
  readonly distance_m: number;
}): number {
  within("sideWidth_m", rectangle.sideWidth_m, 0.0001, 1000);
  within("sideHeight_m", rectangle.sideHeight_m, 0.0001, 1000);
  within("distance_m", rectangle.distance_m, 0.0001, 1000);
  return wallOf_frac(rectangle.sideWidth_m, rectangle.sideHeight_m, rectangle.distance_m);
}

/**
 * What an open window pane is to a leaf under an even sky: for a level leaf and for one that faces the window.
 *
 * Sums of corner factors over the parts left and right, above and below the foot of the leaf on the pane; what lies below
 * the leaf's plane counts for the leaf that faces the window only
 *
 * @param pane edges from the leaf's foot on the glass [m]: left and right, seen from inside, -20 to 20, bottom and top, -20 to 20; distance to the glass [m], 0.02 to 20
 * @returns configuration factors, 0 to 0.5 level and 0 to 1 facing
 * @throws QuantityError outside those ranges, or when an edge lies beyond its opposite
 * @source HowellCatalog B-3 and B-4
 * @see checks/sun-light.json 074
 * @example openPaneFactors({ left_m: -0.6, right_m: 0.6, bottom_m: 0, top_m: 1.4, distance_m: 0.3 }).level_frac // 0.3259
 */
export function openPaneFactors(pane: {
  readonly left_m: number;
  readonly right_m: number;
  readonly bottom_m: number;
  readonly top_m: number;
  readonly distance_m: number;
}): { readonly level_frac: number; readonly facing_frac: number } {
  const { left_m, right_m, bottom_m, top_m, distance_m } = pane;
  checkPane(pane);
  const wall = (edge_m: number, height_m: number): number =>
    wallOf_frac(edge_m, Math.max(0, height_m), distance_m);
  const corner = (edge_m: number, height_m: number): number => cornerOf_frac(edge_m, height_m, distance_m);
  return {
    level_frac: wall(right_m, top_m) - wall(left_m, top_m) - wall(right_m, bottom_m) + wall(left_m, bottom_m),
    facing_frac:
      corner(right_m, top_m) - corner(left_m, top_m) - corner(right_m, bottom_m) + corner(left_m, bottom_m),
  };
}

/** Edges in order and a leaf before the glass. Not exported by the field. */
export const checkPane = (pane: {
  readonly left_m: number;
  readonly right_m: number;
  readonly bottom_m: number;
  readonly top_m: number;
  readonly distance_m: number;
}): void => {
  within("left_m", pane.left_m, -20, 20);
  within("right_m", pane.right_m, -20, 20);
  within("bottom_m", pane.bottom_m, -20, 20);
  within("top_m", pane.top_m, -20, 20);
  within("distance_m", pane.distance_m, 0.02, 20);
  within("right_m", pane.right_m, pane.left_m, 20);
  within("top_m", pane.top_m, pane.bottom_m, 20);
};

/**
 * Light on an upright surface over that on level ground under a standard overcast sky, the horizon free.
 *
 * Sky L = Lz (1 + 2 sin a)/3: (3/7)(1/2 + 4/(3π)) = 0.396; an even sky gives 0.5
 *
 * @param overcast whether the sky is overcast, else even
 * @returns ratio
 * @source MoonSpencer1942
 * @see checks/sun-light.json 064
 * @example uprightOverLevel_frac(true) // 0.396
 */
export function uprightOverLevel_frac(overcast: boolean): number {
  return overcast ? (3 / 7) * (1 / 2 + 4 / (3 * Math.PI)) : 0.5;
}
