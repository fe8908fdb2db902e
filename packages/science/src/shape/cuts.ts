import { armsOf, type StemNode, type Tree } from "./tree.ts";

/** A cut through the internode below a row: that row and all above it go. */
export type CutLaw = {
  readonly legal: boolean;
  /** Row of the node just below the cut, whose bud is to grow. */
  readonly below: number;
  /** Live nodes that stay below it on its stem, or on the trunk where the whole branch goes at its base. */
  readonly live_n: number;
  readonly wholeBranch: boolean;
};

const isLive = (node: StemNode): boolean => node.bud || node.leaf_cm2 > 0;

/**
 * Whether a stem may be cut just below a row.
 *
 * A bud or leaf axil must stay alive below on that stem, or the whole branch goes at its base; the trunk is never cut below its
 * lowest live axil
 *
 * @source common practice, no source
 */
export function cutLaw(tree: Tree, row: number): CutLaw {
  const below = tree.parent[row] as number;
  if (below < 0) return { legal: false, below, live_n: 0, wholeBranch: false };
  const wholeBranch = tree.axis[row] !== tree.axis[below];
  let live_n = 0;
  // Where the branch goes at its base, the stem it grew on has to stay alive.
  for (let at = below; at >= 0 && tree.axis[at] === tree.axis[below]; at = tree.parent[at] as number)
    if (isLive(tree.nodes[at] as StemNode)) live_n += 1;
  const otherArm = armsOf(tree, below).some((arm) => arm !== row);
  return { legal: wholeBranch || live_n > 0 || otherArm, below, live_n, wholeBranch };
}

/**
 * Which rows stay after cuts: 1 kept, 0 gone.
 *
 * @source our assumption
 */
export function keptRows(tree: Tree, cuts: readonly number[]): Uint8Array {
  const kept = new Uint8Array(tree.nodes.length).fill(1);
  for (const cut of cuts) kept.fill(0, cut, tree.end[cut] as number);
  return kept;
}

/**
 * The cuts without those that lie in a part that another takes off already, in order.
 *
 * @source our assumption
 */
export function topmostOnly(tree: Tree, cuts: readonly number[]): readonly number[] {
  const sorted = [...new Set(cuts)].sort((a, b) => a - b);
  const kept: number[] = [];
  let until = -1;
  for (const cut of sorted) {
    if (cut < until) continue;
    kept.push(cut);
    until = tree.end[cut] as number;
  }
  return kept;
}

/**
 * The nodes below a cut whose buds may grow, nearest first, down to the foot of the stem that stays.
 *
 * @source our assumption
 */
export function budsBelow(tree: Tree, row: number, most_n: number): readonly number[] {
  const below = tree.parent[row] as number;
  const buds: number[] = [];
  for (let at = below; at >= 0 && buds.length < most_n; at = tree.parent[at] as number) {
    if (tree.axis[at] !== tree.axis[below]) break;
    buds.push(at);
  }
  return buds;
}
