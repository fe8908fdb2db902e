import { within } from "../errors/index.ts";
import type { StemNode, Tree } from "./tree.ts";
import type { Triple } from "./vector.ts";

/** A corner of an outline: to the right of the trunk's foot (or, from the side, into the depth), and up. */
export type Corner = readonly [number, number];

/** What the crown is meant to fill, from the front and from the side. */
export type Outline = { readonly front: readonly Corner[]; readonly side: readonly Corner[] };

/** Classical forms of trained trees, as plain shapes. Common practice, no source. */
export const outlineForms = ["dome", "triangle", "slanting", "broad"] as const;
export type OutlineForm = (typeof outlineForms)[number];

/** Corners of a form as shares of half the width and of the height of the crown. Common practice, no source. */
const CORNERS: Readonly<Record<OutlineForm, readonly Corner[]>> = {
  dome: [
    [-1, 0.1],
    [-0.95, 0.45],
    [-0.72, 0.78],
    [-0.38, 0.95],
    [0, 1],
    [0.38, 0.95],
    [0.72, 0.78],
    [0.95, 0.45],
    [1, 0.1],
    [0.6, 0],
    [-0.6, 0],
  ],
  triangle: [
    [-1, 0.05],
    [-0.55, 0.5],
    [-0.2, 0.86],
    [0, 1],
    [0.2, 0.86],
    [0.55, 0.5],
    [1, 0.05],
    [0.7, 0],
    [-0.7, 0],
  ],
  slanting: [
    [-0.6, 0.1],
    [-0.2, 0.55],
    [0.25, 0.9],
    [0.5, 1],
    [0.8, 0.8],
    [1, 0.35],
    [0.95, 0.05],
    [0.4, 0],
    [-0.4, 0],
  ],
  broad: [
    [-1, 0.15],
    [-1, 0.55],
    [-0.75, 0.85],
    [-0.3, 1],
    [0.3, 1],
    [0.75, 0.85],
    [1, 0.55],
    [1, 0.15],
    [0.7, 0],
    [-0.7, 0],
  ],
};

/**
 * The outline of a classical form at a size.
 *
 * @param size form; height of its top and of its lower edge over the rim [mm], 10 to 3000 and 0 to 2500; full width [mm], 10 to 3000
 * @returns corners from the front and from the side; a slanting form is upright from the side
 * @throws QuantityError outside those ranges
 * @source common practice, no source
 */
export function formOutline(size: {
  readonly form: OutlineForm;
  readonly top_mm: number;
  readonly foot_mm: number;
  readonly width_mm: number;
}): Outline {
  within("top_mm", size.top_mm, 10, 3000);
  within("foot_mm", size.foot_mm, 0, 2500);
  within("foot_mm", size.foot_mm, 0, size.top_mm - 5);
  within("width_mm", size.width_mm, 10, 3000);
  const drawn = (form: OutlineForm): readonly Corner[] =>
    CORNERS[form].map(([across, up]) => [
      (across * size.width_mm) / 2,
      size.foot_mm + up * (size.top_mm - size.foot_mm),
    ]);
  return { front: drawn(size.form), side: drawn(size.form === "slanting" ? "dome" : size.form) };
}

/**
 * Whether a point lies inside a closed outline.
 *
 * @source even-odd rule, textbook
 */
function isInside(corners: readonly Corner[], across: number, up: number): boolean {
  let inside = false;
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i, i += 1) {
    const [xi, yi] = corners[i] as Corner;
    const [xj, yj] = corners[j] as Corner;
    if (yi > up !== yj > up && across < ((xj - xi) * (up - yi)) / (yj - yi) + xi) inside = !inside;
  }
  return inside;
}

/**
 * Whether a place lies inside an outline from the front and from the side.
 *
 * @source our assumption
 */
export function fitsOutline(outline: Outline, place: Triple, foot: Triple): boolean {
  const up = place[2] - foot[2];
  return isInside(outline.front, place[0] - foot[0], up) && isInside(outline.side, place[1] - foot[1], up);
}

/** The two views of a crown as pictures of cells: which cells each row's leaves and stem cover, and which the outline wants. */
export type CrownPicture = {
  readonly cells_n: number;
  /** A list of cells for each row; side cells follow the front's. */
  readonly covers: readonly Int32Array[];
  readonly wanted: Uint8Array;
  readonly wanted_n: number;
  readonly cellsOf: (place: Triple, radius_mm: number) => Int32Array;
  /** Middle of a cell over the foot: across and up, mm. */
  readonly middle: (cell: number) => {
    readonly isSide: boolean;
    readonly across_mm: number;
    readonly up_mm: number;
  };
};

/**
 * A crown and its outline as pictures of cells, front and side.
 *
 * @param size_n cells a side, 8 to 256
 * @source our assumption
 */
export function crownPicture(tree: Tree, outline: Outline, size_n: number): CrownPicture {
  within("size_n", size_n, 8, 256);
  const foot = (tree.nodes[0] as StemNode).position_mm;
  const reach = Math.max(
    20,
    ...[...outline.front, ...outline.side].map(([across, up]) => Math.max(Math.abs(across), up / 2)),
    ...tree.nodes.map(({ position_mm }) =>
      Math.max(
        Math.abs(position_mm[0] - foot[0]),
        Math.abs(position_mm[1] - foot[1]),
        (position_mm[2] - foot[2]) / 2,
      ),
    ),
  );
  const half = reach * 1.3;
  const cell_mm = (2 * half) / size_n;
  const view = size_n * size_n;
  const low_mm = -half * 0.1;
  const middle = (cell: number) => {
    const at = cell % view;
    return {
      isSide: cell >= view,
      across_mm: -half + ((at % size_n) + 0.5) * cell_mm,
      up_mm: low_mm + (Math.floor(at / size_n) + 0.5) * cell_mm,
    };
  };
  const cellsOf = (place: Triple, radius_mm: number): Int32Array => {
    const cells: number[] = [];
    const k = (place[2] - foot[2] - low_mm) / cell_mm;
    const r = Math.max(0.5, radius_mm / cell_mm);
    for (const [axis, offset] of [
      [0, 0],
      [1, view],
    ] as const) {
      const i = ((place[axis] as number) - (foot[axis] as number) + half) / cell_mm;
      for (let y = Math.max(0, Math.floor(k - r)); y <= Math.min(size_n - 1, Math.floor(k + r)); y += 1)
        for (let x = Math.max(0, Math.floor(i - r)); x <= Math.min(size_n - 1, Math.floor(i + r)); x += 1)
          if ((x + 0.5 - i) ** 2 + (y + 0.5 - k) ** 2 <= r * r + 0.25) cells.push(offset + y * size_n + x);
    }
    return Int32Array.from(cells);
  };
  const wanted = new Uint8Array(2 * view);
  let wanted_n = 0;
  for (let cell = 0; cell < wanted.length; cell += 1) {
    const { isSide, across_mm, up_mm } = middle(cell);
    if (!isInside(isSide ? outline.side : outline.front, across_mm, up_mm)) continue;
    wanted[cell] = 1;
    wanted_n += 1;
  }
  // A leaf hangs over about as wide as two thirds of its length.
  const covers = tree.nodes.map((node, row) =>
    node.leaf_cm2 > 0
      ? cellsOf(tree.leafAt_mm[row] as Triple, node.leafLength_mm * 0.5)
      : cellsOf(node.position_mm, node.caliper_mm / 2),
  );
  return { cells_n: wanted.length, covers, wanted, wanted_n, cellsOf, middle };
}

/**
 * How well covered cells match those that the outline wants: what both have over what either has.
 *
 * @source Jaccard index, textbook
 */
export function overlap_frac(picture: CrownPicture, covered: Uint8Array): number {
  let both = 0;
  let either = picture.wanted_n;
  for (let cell = 0; cell < covered.length; cell += 1) {
    if (covered[cell] !== 1) continue;
    if (picture.wanted[cell] === 1) both += 1;
    else either += 1;
  }
  return either > 0 ? both / either : 0;
}
