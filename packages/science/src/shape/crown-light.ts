import { valuesOf } from "../assumption.ts";
import { type ShapeSettings, shapeAssumptions } from "./assumptions.ts";
import type { StemNode, Tree } from "./tree.ts";
import { type Triple, unit } from "./vector.ts";

/** Where light comes from: directions with their shares, which together make 1. */
export type Sky = readonly { readonly towards: Triple; readonly share_frac: number }[];

/** Rays of an even sky, and of light from one side: rings of the upper half, weighed by height. @source our assumption */
const RINGS = [
  { elevation_deg: 15, rays_n: 6, weight: 0.4 },
  { elevation_deg: 40, rays_n: 7, weight: 1 },
  { elevation_deg: 65, rays_n: 6, weight: 1 },
  { elevation_deg: 90, rays_n: 1, weight: 0.6 },
] as const;

/**
 * Twenty rays of light: an even sky and, by its share, light from one side.
 *
 * @param sky share that comes from one side, 0 to 1; its compass direction, from the right of the front photo to its depth
 * @returns rays, their shares together 1
 * @source our assumption
 */
export function skyRays(sky: { readonly fromSide_frac: number; readonly fromSide_deg: number }): Sky {
  const rays = RINGS.flatMap(({ elevation_deg, rays_n, weight }, ring) =>
    Array.from({ length: rays_n }, (_, ray) => {
      const around_deg = (360 * ray) / rays_n + 25 * ring;
      const up = (elevation_deg * Math.PI) / 180;
      const around = (around_deg * Math.PI) / 180;
      const towards = unit([Math.cos(up) * Math.cos(around), Math.cos(up) * Math.sin(around), Math.sin(up)]);
      const off = Math.cos(around - (sky.fromSide_deg * Math.PI) / 180);
      const aside = elevation_deg < 80 ? Math.max(0, off) ** 2 * weight : 0;
      return { towards, even: weight / rays_n, aside };
    }),
  );
  const even = rays.reduce((sum, ray) => sum + ray.even, 0);
  const aside = rays.reduce((sum, ray) => sum + ray.aside, 0);
  return rays.map((ray) => ({
    towards: ray.towards,
    share_frac:
      ((1 - sky.fromSide_frac) * ray.even) / even + (sky.fromSide_frac * ray.aside) / Math.max(1e-9, aside),
  }));
}

/**
 * The mean direction of the light of a sky.
 *
 * @source our assumption
 */
export function meanLight(sky: Sky): Triple {
  let x = 0;
  let y = 0;
  let z = 0;
  for (const { towards, share_frac } of sky) {
    x += towards[0] * share_frac;
    y += towards[1] * share_frac;
    z += towards[2] * share_frac;
  }
  return unit([x, y, z]);
}

export type CrownLight = {
  /** Light at each row's leaves over the light above the crown; of gone rows 0. */
  readonly share_frac: Float64Array;
  readonly voxel_mm: number;
};

/** Each leaf is spread over so many samples of its ellipse. */
const SAMPLES_n = 8;
const SKIP_voxels = 0.7;
const MOST_CELLS_n = 64;

/**
 * Light on the leaves of each node, by volume cells and twenty rays.
 *
 * I/I0 = Σ share exp(-Σ G × leaf density × path); the leaf's own first 0.7 cell is left out
 *
 * @param tree the plant; which rows stay; where light comes from
 * @returns share of the light above the crown, a row each
 * @source MonsiSaeki1953
 */
export function crownLight(tree: Tree, kept: Uint8Array, sky: Sky, settings: ShapeSettings = {}): CrownLight {
  const { projection } = valuesOf(shapeAssumptions, settings);
  const rows = tree.nodes.length;
  const box = boxOf(tree);
  const [nx, ny, nz] = box.cells;
  const optical = new Float32Array(nx * ny * nz);
  for (let row = 0; row < rows; row += 1) {
    if (kept[row] !== 1) continue;
    const node = tree.nodes[row] as StemNode;
    if (node.leaf_cm2 > 0) spread(optical, box, tree, row, node);
  }
  // Area in mm² a cell, to optical depth per mm of path.
  const perCell = (projection * 100) / SAMPLES_n / box.voxel_mm ** 3;
  for (let cell = 0; cell < optical.length; cell += 1) optical[cell] = (optical[cell] as number) * perCell;
  const share_frac = new Float64Array(rows);
  for (let row = 0; row < rows; row += 1) {
    if (kept[row] !== 1) continue;
    let light = 0;
    for (const { towards, share_frac: share } of sky) {
      if (share <= 0) continue;
      light += share * Math.exp(-depth(optical, box, tree.leafAt_mm[row] as Triple, towards));
    }
    share_frac[row] = Math.min(1, light);
  }
  return { share_frac, voxel_mm: box.voxel_mm };
}

type Box = {
  readonly low: Triple;
  readonly voxel_mm: number;
  readonly cells: readonly [number, number, number];
};

function boxOf(tree: Tree): Box {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  tree.nodes.forEach((node, row) => {
    const reach = node.leafLength_mm / 2 + 1;
    const at = tree.leafAt_mm[row] as Triple;
    for (let axis = 0; axis < 3; axis += 1) {
      low[axis] = Math.min(low[axis] as number, (at[axis] as number) - reach);
      high[axis] = Math.max(high[axis] as number, (at[axis] as number) + reach);
    }
  });
  const size = [0, 1, 2].map((axis) => (high[axis] as number) - (low[axis] as number));
  const tall_mm = size[2] as number;
  const voxel_mm = Math.max(tall_mm < 150 ? 5 : 10, Math.max(...size) / (MOST_CELLS_n - 1));
  const cells = size.map((each) => Math.max(1, Math.ceil(each / voxel_mm) + 1)) as [number, number, number];
  return { low: low as unknown as Triple, voxel_mm, cells };
}

/** Offsets over a leaf's ellipse, along and across, as shares of half its length. */
const OFFSETS = Array.from({ length: SAMPLES_n }, (_, sample) => {
  const out = Math.sqrt((sample + 0.5) / SAMPLES_n);
  const turn = sample * 2.39996;
  return [out * Math.cos(turn), 0.5 * out * Math.sin(turn)] as const;
});

function spread(into: Float32Array, box: Box, tree: Tree, row: number, node: StemNode): void {
  const at = tree.leafAt_mm[row] as Triple;
  const turn = ((tree.azimuths_deg[row] as number) * Math.PI) / 180;
  const cosine = Math.cos(turn);
  const sine = Math.sin(turn);
  const half = node.leafLength_mm / 2;
  for (const [ahead, aside] of OFFSETS) {
    const x = at[0] + half * (ahead * cosine - aside * sine);
    const y = at[1] + half * (ahead * sine + aside * cosine);
    const cell = cellOf(box, x, y, at[2]);
    if (cell >= 0) into[cell] = (into[cell] as number) + node.leaf_cm2;
  }
}

function cellOf(box: Box, x: number, y: number, z: number): number {
  const [nx, ny, nz] = box.cells;
  const i = Math.floor((x - box.low[0]) / box.voxel_mm);
  const j = Math.floor((y - box.low[1]) / box.voxel_mm);
  const k = Math.floor((z - box.low[2]) / box.voxel_mm);
  if (i < 0 || j < 0 || k < 0 || i >= nx || j >= ny || k >= nz) return -1;
  return (k * ny + j) * nx + i;
}

/** Optical depth from a place out of the box, in steps of one cell. */
function depth(optical: Float32Array, box: Box, from: Triple, towards: Triple): number {
  const [nx, ny, nz] = box.cells;
  const start = SKIP_voxels + 0.5;
  let i = (from[0] - box.low[0]) / box.voxel_mm + towards[0] * start;
  let j = (from[1] - box.low[1]) / box.voxel_mm + towards[1] * start;
  let k = (from[2] - box.low[2]) / box.voxel_mm + towards[2] * start;
  let sum = 0;
  for (;;) {
    const a = Math.floor(i);
    const b = Math.floor(j);
    const c = Math.floor(k);
    if (a < 0 || b < 0 || c < 0 || a >= nx || b >= ny || c >= nz) return sum * box.voxel_mm;
    sum += optical[(c * ny + b) * nx + a] as number;
    i += towards[0];
    j += towards[1];
    k += towards[2];
  }
}

/**
 * Share of the leaf that stands in less light than the crowding limit.
 *
 * @source our assumption
 */
export function crowdedShare_frac(
  tree: Tree,
  kept: Uint8Array,
  share_frac: Float64Array,
  settings: ShapeSettings = {},
): number {
  const { crowded_frac } = valuesOf(shapeAssumptions, settings);
  let all = 0;
  let crowded = 0;
  tree.nodes.forEach((node, row) => {
    if (kept[row] !== 1) return;
    all += node.leaf_cm2;
    if ((share_frac[row] as number) < crowded_frac) crowded += node.leaf_cm2;
  });
  return all > 0 ? crowded / all : 0;
}

/**
 * The leaves to pluck first: what others would gain in light over what it earns itself.
 *
 * (Σ A_i dI_ij) / (A_j I_j)
 *
 * @param most_n how many are looked into, the darkest first
 * @returns rows, the most worth plucking first, with what it gives the others over what it earns
 * @source our assumption
 */
export function leavesToPluck(
  tree: Tree,
  kept: Uint8Array,
  sky: Sky,
  most_n: number,
  settings: ShapeSettings = {},
): readonly {
  readonly row: number;
  readonly worth: number;
  readonly share_frac: number;
  readonly useless: boolean;
}[] {
  const { useless_frac } = valuesOf(shapeAssumptions, settings);
  const before = crownLight(tree, kept, sky, settings).share_frac;
  const leafy = [...kept.keys()].filter(
    (row) => kept[row] === 1 && (tree.nodes[row] as StemNode).leaf_cm2 > 0,
  );
  const darkest = leafy.toSorted((a, b) => (before[a] as number) - (before[b] as number)).slice(0, most_n);
  return darkest
    .map((row) => {
      const bare = { ...(tree.nodes[row] as StemNode), leaf_cm2: 0 };
      const nodes = tree.nodes.with(row, bare);
      const after = crownLight({ ...tree, nodes }, kept, sky, settings).share_frac;
      const gained = leafy.reduce(
        (sum, other) =>
          other === row
            ? sum
            : sum +
              (tree.nodes[other] as StemNode).leaf_cm2 *
                Math.max(0, (after[other] as number) - (before[other] as number)),
        0,
      );
      const share_frac = before[row] as number;
      const earns = (tree.nodes[row] as StemNode).leaf_cm2 * Math.max(1e-6, share_frac);
      return { row, worth: gained / earns, share_frac, useless: share_frac < useless_frac };
    })
    .toSorted((a, b) => b.worth - a.worth || a.row - b.row);
}
