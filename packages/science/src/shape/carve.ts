import { within } from "../errors/index.ts";
import type { Triple } from "./vector.ts";

/** A photo as inside (1) or outside (0), row by row from its upper left, with the camera that took it. */
export type Silhouette = {
  readonly mask: Uint8Array;
  readonly width_px: number;
  readonly height_px: number;
  /** Turn of the plant against the first photo, towards the side that the second photo of a pair shows. */
  readonly turn_deg: number;
  readonly distance_mm: number;
  readonly focal_px: number;
  /** How far the camera looks down. */
  readonly down_deg: number;
  /** Pixel of the axis' middle: from the left and from the top. */
  readonly middleX_px: number;
  readonly middleY_px: number;
};

export type CarveAsk = {
  /** Edge of the cube around the plant, its middle on the axis. */
  readonly cube_mm: number;
  /** Height of the cube's middle over the point at which the cameras look. */
  readonly lift_mm: number;
  /** Cells a side: a power of two. */
  readonly cells_n: number;
  /** How many photos may miss a cell. */
  readonly misses_n: number;
};

export type Hull = {
  readonly volume_cm3: number;
  readonly cell_mm: number;
  /** Full cells as cubes: corner and edge in cells. */
  readonly cubes: readonly (readonly [number, number, number, number])[];
  /** Height above the lowest full cell and greatest width. */
  readonly height_mm: number;
  readonly width_mm: number;
};

type View = {
  readonly sums: Int32Array;
  readonly width: number;
  readonly height: number;
  readonly rows: readonly [Triple, Triple, Triple];
  readonly distance: number;
  readonly focal: number;
  readonly x: number;
  readonly y: number;
};

/**
 * The visual hull of a plant: all that no photo rules out. It over-fills always; it is never a leaf area.
 *
 * An octree over the cube: a block whose box of pixels is empty goes, one whose box is full stays, others are parted; the smallest
 * are judged at their middle
 *
 * @param views 2 to 120, masks as large as they say
 * @param ask cube [mm], 10 to 5000; cells a side, 8 to 1024, a power of two; photos that may miss, 0 to 10
 * @returns volume, the blocks, height and width
 * @throws QuantityError outside those ranges
 * @source Scharr2017
 */
export function carvedHull(views: readonly Silhouette[], ask: CarveAsk): Hull {
  within("views_n", views.length, 2, 120);
  within("cube_mm", ask.cube_mm, 10, 5000);
  within("lift_mm", ask.lift_mm, -5000, 5000);
  within("cells_n", ask.cells_n, 8, 1024);
  within("misses_n", ask.misses_n, 0, 10);
  if ((ask.cells_n & (ask.cells_n - 1)) !== 0)
    throw new RangeError(`cells_n is ${ask.cells_n}; expected a power of two`);
  const ready = views.map(viewOf);
  const cell_mm = ask.cube_mm / ask.cells_n;
  const cubes: [number, number, number, number][] = [];
  const half = ask.cube_mm / 2;
  const look = (x: number, y: number, z: number, size: number): void => {
    const reach = size * cell_mm;
    const cx = x * cell_mm + reach / 2 - half;
    const cy = y * cell_mm + reach / 2 - half;
    const cz = z * cell_mm + reach / 2 - half + ask.lift_mm;
    const verdict =
      size === 1 ? point(ready, cx, cy, cz, ask.misses_n) : block(ready, cx, cy, cz, reach, ask.misses_n);
    if (verdict === EMPTY) return;
    if (verdict === FULL) {
      cubes.push([x, y, z, size]);
      return;
    }
    const next = size / 2;
    for (let corner = 0; corner < 8; corner += 1)
      look(x + (corner & 1) * next, y + ((corner >> 1) & 1) * next, z + (corner >> 2) * next, next);
  };
  look(0, 0, 0, ask.cells_n);
  return measured(cubes, cell_mm);
}

const EMPTY = 0;
const FULL = 1;
const MIXED = 2;

function viewOf(photo: Silhouette): View {
  const { mask, width_px: width, height_px: height, turn_deg, down_deg } = photo;
  within("width_px", width, 8, 20_000);
  within("height_px", height, 8, 20_000);
  within("maskPixels_n", mask.length, width * height, width * height);
  within("turn_deg", turn_deg, -720, 720);
  within("down_deg", down_deg, -80, 80);
  within("distance_mm", photo.distance_mm, 50, 20_000);
  within("focal_px", photo.focal_px, 50, 50_000);
  const sums = new Int32Array((width + 1) * (height + 1));
  for (let y = 0; y < height; y += 1) {
    let line = 0;
    const above = y * (width + 1);
    const here = above + width + 1;
    for (let x = 0; x < width; x += 1) {
      line += mask[y * width + x] as number;
      sums[here + x + 1] = (sums[above + x + 1] as number) + line;
    }
  }
  const turn = (turn_deg * Math.PI) / 180;
  const down = (down_deg * Math.PI) / 180;
  // The plant turned so that its right goes away from the camera after a quarter: the camera goes round the other way.
  const right: Triple = [Math.cos(turn), -Math.sin(turn), 0];
  const away: Triple = [Math.sin(turn), Math.cos(turn), 0];
  const ahead: Triple = [away[0] * Math.cos(down), away[1] * Math.cos(down), -Math.sin(down)];
  const up: Triple = [away[0] * Math.sin(down), away[1] * Math.sin(down), Math.cos(down)];
  return {
    sums,
    width,
    height,
    rows: [right, ahead, up],
    distance: photo.distance_mm,
    focal: photo.focal_px,
    x: photo.middleX_px,
    y: photo.middleY_px,
  };
}

function point(views: readonly View[], x: number, y: number, z: number, misses: number): number {
  let missed = 0;
  for (const view of views) {
    const [right, ahead, up] = view.rows;
    const scale = view.focal / (view.distance + ahead[0] * x + ahead[1] * y + ahead[2] * z);
    const u = Math.floor(view.x + scale * (right[0] * x + right[1] * y));
    const v = Math.floor(view.y - scale * (up[0] * x + up[1] * y + up[2] * z));
    if (u < 0 || v < 0 || u >= view.width || v >= view.height) missed += 1;
    else {
      const at = v * (view.width + 1) + u;
      const next = at + view.width + 1;
      const inside =
        (view.sums[next + 1] as number) -
        (view.sums[next] as number) -
        (view.sums[at + 1] as number) +
        (view.sums[at] as number);
      if (inside === 0) missed += 1;
    }
    if (missed > misses) return EMPTY;
  }
  return FULL;
}

const RADIUS = Math.sqrt(3) / 2;

function block(
  views: readonly View[],
  x: number,
  y: number,
  z: number,
  size: number,
  misses: number,
): number {
  const radius = size * RADIUS;
  let missed = 0;
  let full = true;
  for (const view of views) {
    const [right, ahead, up] = view.rows;
    const depth = view.distance + ahead[0] * x + ahead[1] * y + ahead[2] * z;
    if (depth - radius < 1) {
      full = false;
      continue;
    }
    const scale = view.focal / depth;
    const u = view.x + scale * (right[0] * x + right[1] * y);
    const v = view.y - scale * (up[0] * x + up[1] * y + up[2] * z);
    // A ball near the camera looks larger than its radius over its depth.
    const off = Math.max(Math.abs(u - view.x), Math.abs(v - view.y)) / view.focal;
    const r = (view.focal * radius * (1 + off)) / (depth - radius);
    const left = Math.floor(u - r);
    const top = Math.floor(v - r);
    const edgeX = Math.floor(u + r) + 1;
    const edgeY = Math.floor(v + r) + 1;
    const x0 = Math.max(0, left);
    const y0 = Math.max(0, top);
    const x1 = Math.min(view.width, edgeX);
    const y1 = Math.min(view.height, edgeY);
    let inside = 0;
    if (x0 < x1 && y0 < y1) {
      const line = view.width + 1;
      inside =
        (view.sums[y1 * line + x1] as number) -
        (view.sums[y1 * line + x0] as number) -
        (view.sums[y0 * line + x1] as number) +
        (view.sums[y0 * line + x0] as number);
    }
    if (inside === 0) {
      missed += 1;
      if (missed > misses) return EMPTY;
    }
    if (inside !== (edgeX - left) * (edgeY - top)) full = false;
  }
  return full ? FULL : MIXED;
}

function measured(cubes: readonly (readonly [number, number, number, number])[], cell_mm: number): Hull {
  let cells = 0;
  let low = Infinity;
  let high = -Infinity;
  let left = Infinity;
  let right = -Infinity;
  for (const [x, , z, size] of cubes) {
    cells += size ** 3;
    low = Math.min(low, z);
    high = Math.max(high, z + size);
    left = Math.min(left, x);
    right = Math.max(right, x + size);
  }
  const has = cubes.length > 0;
  return {
    volume_cm3: (cells * cell_mm ** 3) / 1000,
    cell_mm,
    cubes,
    height_mm: has ? (high - low) * cell_mm : 0,
    width_mm: has ? (right - left) * cell_mm : 0,
  };
}
