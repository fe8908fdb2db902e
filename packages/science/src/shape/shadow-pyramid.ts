import { within } from "../errors/index.ts";
import type { StemNode, Tree } from "./tree.ts";
import type { Triple } from "./vector.ts";

/** Shadow of a leaf in its own cell, its fade by level, and how many levels it reaches down. @source our assumption; form of Palubicki2009 */
const SHADOW = 0.2;
const FADE = 2;
const LEVELS_n = 8;
const CELL_mm = 10;
const USUAL_LEAF_cm2 = 8;

const FADED = Array.from({ length: LEVELS_n + 1 }, (_, level) => SHADOW * FADE ** -level);

/**
 * Cells that one leaf's pyramid of shadow touches.
 *
 * Σ (2q+1)² over the levels
 *
 * @param levels_n deepest level, 0 to 100
 * @returns cells
 * @throws QuantityError outside that range
 * @source Palubicki2009
 * @example shadowCells_n(8) // 969
 */
export function shadowCells_n(levels_n: number): number {
  within("levels_n", levels_n, 0, 100);
  let cells = 0;
  for (let level = 0; level <= levels_n; level += 1) cells += (2 * level + 1) ** 2;
  return cells;
}

/** A crown's shadows, quick to take leaves out of and to put back: what the search of plans looks at. */
export type Shadows = {
  /** Adds (1) or takes out (-1) the leaves of a row. */
  readonly add: (row: number, sign: 1 | -1) => void;
  /** Exposure of a row's leaves, 0 to 1. */
  readonly exposure: (row: number) => number;
};

/**
 * Shadows of the leaves of a crown by pyramids: quick, rough, in the order of truth.
 *
 * A leaf in cell (i, j, k) adds a b^-q to the (2q+1)² cells q levels below; exposure = max(0, 1 - s + a)
 *
 * @source Palubicki2009
 */
export function shadowPyramid(tree: Tree): Shadows {
  const cells = tree.leafAt_mm.map(
    (at): Triple => [Math.floor(at[0] / CELL_mm), Math.floor(at[1] / CELL_mm), Math.floor(at[2] / CELL_mm)],
  );
  const low = [0, 1, 2].map((axis) => Math.min(...cells.map((cell) => cell[axis] as number)) - LEVELS_n);
  const high = [0, 1, 2].map((axis) => Math.max(...cells.map((cell) => cell[axis] as number)) + LEVELS_n);
  const [nx, ny, nz] = [0, 1, 2].map((axis) => (high[axis] as number) - (low[axis] as number) + 1) as [
    number,
    number,
    number,
  ];
  const shadow = new Float32Array(nx * ny * nz);
  const strengths = tree.nodes.map((node: StemNode) => node.leaf_cm2 / USUAL_LEAF_cm2);
  const at = cells.map((cell) => cell.map((each, axis) => each - (low[axis] as number)) as unknown as Triple);
  const add = (row: number, sign: 1 | -1): void => {
    const strength = (strengths[row] as number) * sign;
    if (strength === 0) return;
    const [i, j, k] = at[row] as Triple;
    for (let level = 0; level <= LEVELS_n; level += 1) {
      const plane = k - level;
      if (plane < 0) return;
      const dark = (FADED[level] as number) * strength;
      for (let y = j - level; y <= j + level; y += 1) {
        const line = (plane * ny + y) * nx;
        for (let x = i - level; x <= i + level; x += 1)
          shadow[line + x] = (shadow[line + x] as number) + dark;
      }
    }
  };
  const exposure = (row: number): number => {
    const [i, j, k] = at[row] as Triple;
    const own = SHADOW * (strengths[row] as number);
    return Math.max(0, Math.min(1, 1 - (shadow[(k * ny + j) * nx + i] as number) + own));
  };
  return { add, exposure };
}
