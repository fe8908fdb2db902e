import { within } from "../errors/index.ts";
import { type Wood, woods } from "./bud-break.ts";
import { along, azimuthOf_deg, levelDirection, minus, norm, type Triple, unit } from "./vector.ts";

/** A joint as it was traced: where it is and what hangs on it. Its internode is the stretch of stem below it. */
export type StemNode = {
  readonly id: string;
  /** Undefined for the base of the trunk alone. */
  readonly parent?: string | undefined;
  readonly position_mm: Triple;
  /** Thickness of the stem just below it. */
  readonly caliper_mm: number;
  readonly wood: Wood;
  /** Leaves that stand on it: their area together, and length of one. */
  readonly leaf_cm2: number;
  readonly leafLength_mm: number;
  /** Direction of its leaf, seen from above, from the right of the front photo to its depth; unknown where no photo shows it. */
  readonly azimuth_deg?: number | undefined;
  readonly flowers_n: number;
  readonly fruit_g: number;
  /** Whether a bud can still grow in its axil; one that sprouted twice may have none left. */
  readonly bud: boolean;
};

/**
 * A plant as rows, each stem before what grows on it, the stronger arm of a fork first: the part above node i is rows i to end[i].
 */
export type Tree = {
  readonly ids: readonly string[];
  readonly nodes: readonly StemNode[];
  /** Row of the node below; -1 for the base. */
  readonly parent: Int32Array;
  readonly end: Int32Array;
  /** Which stem: 0 the trunk, then branches in order from below. */
  readonly axis: Int32Array;
  /** How many nodes up its stem, from 1. */
  readonly rank: Int32Array;
  /** Middle of the leaves of each node, mm. */
  readonly leafAt_mm: readonly Triple[];
  readonly azimuths_deg: Float64Array;
};

const GOLDEN_deg = 137.508;

/**
 * Put traced nodes in order: stems, branches, what lies above what.
 *
 * The trunk goes on where a fork's arm is thickest; of equal arms the one with more nodes above
 *
 * @param nodes 1 to 5000, each but the base naming the node below it
 * @returns the tree
 * @throws QuantityError for counts and sizes out of range; RangeError for two bases, an unknown node below, or a ring
 * @source our assumption
 */
export function plantTree(nodes: readonly StemNode[]): Tree {
  within("nodes_n", nodes.length, 1, 5000);
  const byId = new Map<string, StemNode>();
  const above = new Map<string, StemNode[]>();
  let base: StemNode | undefined;
  for (const node of nodes) {
    if (byId.has(node.id)) throw new RangeError(`two nodes are called ${node.id}`);
    byId.set(node.id, node);
    checkNode(node);
  }
  for (const node of nodes) {
    if (node.parent === undefined) {
      if (base)
        throw new RangeError(`${base.id} and ${node.id} are both without a node below; expected one base`);
      base = node;
      continue;
    }
    if (!byId.has(node.parent))
      throw new RangeError(`the node below ${node.id} is ${node.parent}, which is not there`);
    const siblings = above.get(node.parent);
    if (siblings) siblings.push(node);
    else above.set(node.parent, [node]);
  }
  if (!base) throw new RangeError("no node is without a node below; expected one base");
  return inOrder(base, above, nodes.length);
}

function checkNode(node: StemNode): void {
  for (const axis of node.position_mm) within("position_mm", axis, -5000, 5000);
  within("caliper_mm", node.caliper_mm, 0.2, 300);
  within("leaf_cm2", node.leaf_cm2, 0, 20_000);
  within("leafLength_mm", node.leafLength_mm, 0, 400);
  within("flowers_n", node.flowers_n, 0, 1000);
  within("fruit_g", node.fruit_g, 0, 10_000);
  if (node.azimuth_deg !== undefined) within("azimuth_deg", node.azimuth_deg, -360, 720);
  if (!woods.includes(node.wood)) throw new RangeError(`wood is ${node.wood}; expected ${woods.join(", ")}`);
}

function inOrder(base: StemNode, above: ReadonlyMap<string, readonly StemNode[]>, count: number): Tree {
  const sizes = sizesOf(base, above);
  if (sizes.size !== count) throw new RangeError("some nodes hang on one another in a ring, not on the base");
  const rows: StemNode[] = [];
  const parent = new Int32Array(count);
  const end = new Int32Array(count);
  const axis = new Int32Array(count);
  const rank = new Int32Array(count);
  let axes = 0;
  const open: { node: StemNode; below: number; on: number; up: number }[] = [
    { node: base, below: -1, on: 0, up: 1 },
  ];
  for (let next = open.pop(); next; next = open.pop()) {
    const row = rows.length;
    const isNewAxis = next.below >= 0 && next.on < 0;
    if (isNewAxis) axes += 1;
    const on = isNewAxis ? axes : next.on;
    rows.push(next.node);
    parent[row] = next.below;
    axis[row] = on;
    rank[row] = next.up;
    end[row] = row + (sizes.get(next.node.id) as number);
    const arms = [...(above.get(next.node.id) ?? [])].sort(
      (a, b) =>
        b.caliper_mm - a.caliper_mm ||
        (sizes.get(b.id) as number) - (sizes.get(a.id) as number) ||
        (a.id < b.id ? -1 : 1),
    );
    for (let arm = arms.length - 1; arm >= 0; arm -= 1)
      open.push({
        node: arms[arm] as StemNode,
        below: row,
        on: arm === 0 ? on : -1,
        up: arm === 0 ? next.up + 1 : 1,
      });
  }
  const azimuths_deg = azimuthsOf(rows, parent);
  return {
    ids: rows.map(({ id }) => id),
    nodes: rows,
    parent,
    end,
    axis,
    rank,
    azimuths_deg,
    leafAt_mm: rows.map((node, row) =>
      along(
        along(node.position_mm, levelDirection(azimuths_deg[row] as number), node.leafLength_mm * 0.7),
        [0, 0, 1],
        node.leafLength_mm * 0.1,
      ),
    ),
  };
}

/** Nodes at and above each node that hangs on the base. */
function sizesOf(
  base: StemNode,
  above: ReadonlyMap<string, readonly StemNode[]>,
): ReadonlyMap<string, number> {
  const order: StemNode[] = [base];
  for (let at = 0; at < order.length; at += 1) order.push(...(above.get((order[at] as StemNode).id) ?? []));
  const sizes = new Map<string, number>();
  for (const node of order.toReversed())
    sizes.set(
      node.id,
      (above.get(node.id) ?? []).reduce((sum, { id }) => sum + (sizes.get(id) as number), 1),
    );
  return sizes;
}

/** Where no photo shows a leaf, the spiral fills in from the node below. */
function azimuthsOf(rows: readonly StemNode[], parent: Int32Array): Float64Array {
  const azimuths = new Float64Array(rows.length);
  rows.forEach((node, row) => {
    const below = parent[row] as number;
    azimuths[row] = node.azimuth_deg ?? (below < 0 ? 0 : ((azimuths[below] as number) + GOLDEN_deg) % 360);
  });
  return azimuths;
}

/**
 * Direction of the stem at a node, from the node below it; upright at the base.
 *
 * @source our assumption
 */
export function stemDirection(tree: Tree, row: number): Triple {
  const below = tree.parent[row] as number;
  if (below < 0) return [0, 0, 1];
  return unit(minus((tree.nodes[row] as StemNode).position_mm, (tree.nodes[below] as StemNode).position_mm));
}

/**
 * Length of the internode below a node, 0 at the base.
 *
 * @source our assumption
 */
export function internode_mm(tree: Tree, row: number): number {
  const below = tree.parent[row] as number;
  return below < 0
    ? 0
    : norm(minus((tree.nodes[row] as StemNode).position_mm, (tree.nodes[below] as StemNode).position_mm));
}

/**
 * Rows that grow on a node, the stronger first.
 *
 * @source our assumption
 */
export function armsOf(tree: Tree, row: number): readonly number[] {
  const arms: number[] = [];
  for (let at = row + 1; at < (tree.end[row] as number); at = tree.end[at] as number) arms.push(at);
  return arms;
}

/**
 * Compass direction from the trunk's foot to a node, where it stands off the middle by a millimetre at least.
 *
 * @source our assumption
 */
export function sideOf_deg(tree: Tree, row: number): number | undefined {
  const foot = (tree.nodes[0] as StemNode).position_mm;
  const off = minus((tree.nodes[row] as StemNode).position_mm, foot);
  return Math.hypot(off[0], off[1]) < 1 ? undefined : azimuthOf_deg(off);
}
