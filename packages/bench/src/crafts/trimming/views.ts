import { formOutline, keptRows, type Tree, type Triple } from "@sillwood/science/shape";
import type { Aimed, Traced } from "./kinds.ts";
import type { Mark, Point, View } from "./page-shape.ts";
import type { TracePhoto } from "./trace-fields.ts";

/** From a place on the plant to a point of a view, and how many units a millimetre is there. */
export interface Projection {
  readonly width: number;
  readonly height: number;
  readonly photo?: string;
  point(place: Triple): Point;
  scale(place: Triple): number;
}

const UNIT_PER_mm = 10;
const MARGIN_mm = 25;

/** The two views of a traced plant: over its photos where they are there, else drawn from far away. */
export function projectionsOf(
  trace: Traced,
  tree: Tree,
): { readonly front: Projection; readonly side: Projection } {
  const reach = reachOf(tree);
  return {
    front: trace.front
      ? photo(
          trace,
          trace.front,
          (place) => place[0],
          (place) => place[1],
        )
      : drawn(reach, (place) => place[0]),
    side: trace.side
      ? photo(
          trace,
          trace.side,
          (place) => -place[1],
          (place) => place[0],
        )
      : drawn(reach, (place) => -place[1]),
  };
}

const round = (value: number) => Math.round(value * 10) / 10;

function photo(
  { distance_mm, focal_px }: Traced,
  frame: TracePhoto,
  across: (place: Triple) => number,
  depth: (place: Triple) => number,
): Projection {
  const scale = (place: Triple) => focal_px / Math.max(20, distance_mm + depth(place));
  // The base of the trunk need not stand in the middle of the photo: perspective is about the middle.
  const base_mm = {
    across: ((frame.baseX_px - frame.width_px / 2) * distance_mm) / focal_px,
    up: ((frame.height_px / 2 - frame.baseY_px) * distance_mm) / focal_px,
  };
  return {
    width: frame.width_px,
    height: frame.height_px,
    photo: frame.photo,
    scale,
    point: (place) => [
      round(frame.width_px / 2 + scale(place) * (across(place) + base_mm.across)),
      round(frame.height_px / 2 - scale(place) * (place[2] + base_mm.up)),
    ],
  };
}

function drawn(
  reach: { readonly side_mm: number; readonly up_mm: number },
  across: (place: Triple) => number,
): Projection {
  const half = (reach.side_mm + MARGIN_mm) * UNIT_PER_mm;
  const height = (reach.up_mm + 2 * MARGIN_mm) * UNIT_PER_mm;
  return {
    width: Math.round(2 * half),
    height: Math.round(height),
    scale: () => UNIT_PER_mm,
    point: (place) => [
      round(half + across(place) * UNIT_PER_mm),
      round(height - (MARGIN_mm + place[2]) * UNIT_PER_mm),
    ],
  };
}

function reachOf(tree: Tree) {
  let side_mm = 40;
  let up_mm = 60;
  tree.nodes.forEach(({ position_mm }, row) => {
    for (const place of [position_mm, tree.leafAt_mm[row] as Triple]) {
      side_mm = Math.max(side_mm, Math.abs(place[0]), Math.abs(place[1]));
      up_mm = Math.max(up_mm, place[2]);
    }
  });
  return { side_mm: side_mm * 1.4, up_mm: up_mm * 1.35 };
}

/** Stems, leaves and the outline aimed at, as one view shows them. */
export function viewOf(tree: Tree, to: Projection, aim: Aimed | undefined, which: "front" | "side"): View {
  const corners = aim ? formOutline(aim)[which] : [];
  const foot = tree.nodes[0]?.position_mm ?? [0, 0, 0];
  return {
    width: to.width,
    height: to.height,
    ...(to.photo === undefined ? {} : { photo: to.photo }),
    stems: tree.nodes.flatMap((node, row) => {
      const below = tree.parent[row] as number;
      if (below < 0) return [];
      const from = tree.nodes[below]?.position_mm as Triple;
      return [
        {
          node: node.id,
          from: to.point(from),
          to: to.point(node.position_mm),
          thick: round(node.caliper_mm * to.scale(node.position_mm)),
        },
      ];
    }),
    leaves: tree.nodes.flatMap((node, row) => {
      const at = tree.leafAt_mm[row] as Triple;
      return node.leaf_cm2 > 0
        ? [{ node: node.id, at: to.point(at), radius: round(node.leafLength_mm * 0.4 * to.scale(at)) }]
        : [];
    }),
    aim: corners.map(([across, up]) =>
      to.point(
        which === "front"
          ? [foot[0] + across, foot[1], foot[2] + up]
          : [foot[0], foot[1] - across, foot[2] + up],
      ),
    ),
  };
}

const BAR_mm = 9;

/** A slanted bar a third of the way up the internode that is cut. */
export function markOf(tree: Tree, gone: number, to: Projection): Mark {
  const below = tree.nodes[tree.parent[gone] as number]?.position_mm as Triple;
  const above = tree.nodes[gone]?.position_mm as Triple;
  const at = below.map((each, axis) => each + ((above[axis] as number) - each) * 0.33) as unknown as Triple;
  const [x, y] = to.point(at);
  const half = (BAR_mm * to.scale(at)) / 2;
  return { from: [round(x - half), round(y + half * 0.6)], to: [round(x + half), round(y - half * 0.6)] };
}

/** Ids of what goes with cuts. */
export function goneIds(tree: Tree, cuts: readonly number[]): readonly string[] {
  const kept = keptRows(tree, cuts);
  return tree.ids.filter((_, row) => kept[row] !== 1);
}
