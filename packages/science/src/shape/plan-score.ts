import { valuesOf } from "../assumption.ts";
import { type ShapeSettings, shapeAssumptions } from "./assumptions.ts";
import { budBreak_frac } from "./bud-break.ts";
import { crownLight, meanLight, type Sky } from "./crown-light.ts";
import { budsBelow, cutLaw, keptRows } from "./cuts.ts";
import { type CrownPicture, crownPicture, fitsOutline, type Outline, overlap_frac } from "./outline.ts";
import { type Shadows, shadowPyramid } from "./shadow-pyramid.ts";
import { armsOf, internode_mm, type StemNode, stemDirection, type Tree } from "./tree.ts";
import { preferredDirection, shootStart } from "./tropism.ts";
import { dot, minus, radialAt, type Triple, unit } from "./vector.ts";

/** What a plan is judged by, each 0 to 1, and what they weigh. Our assumption; the grower may change the weights. */
export const planWeights = {
  outline: 0.3,
  inside: 0.1,
  light: 0.15,
  uncrowded: 0.15,
  balance: 0.08,
  taper: 0.1,
  regrowth: 0.07,
  fruit: 0.05,
} as const;
export type PlanTerm = keyof typeof planWeights;
export type PlanTerms = Readonly<Record<PlanTerm, number>>;

/** A plant as the plans are judged on it: worked out once, asked thousands of times. */
export type Bench = {
  readonly tree: Tree;
  readonly outline: Outline;
  readonly sky: Sky;
  readonly settings: ShapeSettings;
  readonly picture: CrownPicture;
  readonly shadows: Shadows;
  /** Light at each row now, by volume cells. */
  readonly light_frac: Float64Array;
  readonly lit_cm2: Float64Array;
  readonly litAll_cm2: number;
  readonly fruitAll: number;
  /** Length of stem outside the outline, a row each, and in all. */
  readonly outside_mm: Float64Array;
  readonly length_mm: Float64Array;
  /** Stems that break a rule of taper: thicker than half the stem they grow on. */
  readonly breaksRule: Uint8Array;
};

/** Cells a side while searching. */
const SEARCH_CELLS_n = 64;
const FLOWER_g = 0.5;

/**
 * Make ready for judging plans on a plant.
 *
 * @source our assumption
 */
export function planBench(tree: Tree, outline: Outline, sky: Sky, settings: ShapeSettings = {}): Bench {
  const foot = (tree.nodes[0] as StemNode).position_mm;
  const light_frac = crownLight(tree, keptRows(tree, []), sky, settings).share_frac;
  const lit_cm2 = new Float64Array(tree.nodes.length);
  const outside_mm = new Float64Array(tree.nodes.length);
  const length_mm = new Float64Array(tree.nodes.length);
  const breaksRule = new Uint8Array(tree.nodes.length);
  const shadows = shadowPyramid(tree);
  let litAll_cm2 = 0;
  let fruitAll = 0;
  tree.nodes.forEach((node, row) => {
    lit_cm2[row] = node.leaf_cm2 * (light_frac[row] as number);
    litAll_cm2 += lit_cm2[row] as number;
    fruitAll += node.fruit_g + FLOWER_g * node.flowers_n;
    length_mm[row] = internode_mm(tree, row);
    const below = tree.parent[row] as number;
    const clear = node.position_mm[2] - foot[2] > 0;
    if (clear && tree.axis[row] !== 0 && !fitsOutline(outline, node.position_mm, foot))
      outside_mm[row] = length_mm[row] as number;
    if (below >= 0 && tree.axis[row] !== tree.axis[below])
      breaksRule[row] = node.caliper_mm > 0.5 * (tree.nodes[below] as StemNode).caliper_mm ? 1 : 0;
    shadows.add(row, 1);
  });
  const picture = crownPicture(tree, outline, SEARCH_CELLS_n);
  return {
    tree,
    outline,
    sky,
    settings,
    picture,
    shadows,
    light_frac,
    lit_cm2,
    litAll_cm2,
    fruitAll,
    outside_mm,
    length_mm,
    breaksRule,
  };
}

/**
 * Judge a set of cuts on the plant as it stands: quick, without growth.
 *
 * J = Σ weight × term; outline over front and side, light kept, crowding by pyramids of shadow
 *
 * @source our assumption
 */
export function planTerms(bench: Bench, cuts: readonly number[]): PlanTerms {
  const { tree, picture, shadows, settings } = bench;
  const { crowded_frac } = valuesOf(shapeAssumptions, settings);
  const kept = keptRows(tree, cuts);
  const covered = new Uint8Array(picture.cells_n);
  for (let row = 0; row < kept.length; row += 1) {
    if (kept[row] === 1) {
      const cells = picture.covers[row] as Int32Array;
      for (let at = 0; at < cells.length; at += 1) covered[cells[at] as number] = 1;
    } else shadows.add(row, -1);
  }
  const foot = (tree.nodes[0] as StemNode).position_mm;
  let leaf = 0;
  let crowded = 0;
  let inside = 0;
  let outside = 0;
  let fruit = 0;
  let branches = 0;
  let broken = 0;
  let x = 0;
  let y = 0;
  let arm = 0;
  for (let row = 0; row < kept.length; row += 1) {
    if (kept[row] !== 1) continue;
    const node = tree.nodes[row] as StemNode;
    if (node.leaf_cm2 > 0) {
      const exposure = shadows.exposure(row);
      leaf += node.leaf_cm2;
      if (exposure < crowded_frac) crowded += node.leaf_cm2;
      const dx = node.position_mm[0] - foot[0];
      const dy = node.position_mm[1] - foot[1];
      x += node.leaf_cm2 * dx;
      y += node.leaf_cm2 * dy;
      arm += node.leaf_cm2 * Math.hypot(dx, dy);
    }
    const out = bench.outside_mm[row] as number;
    outside += out;
    inside += (bench.length_mm[row] as number) - out;
    fruit += node.fruit_g + FLOWER_g * node.flowers_n;
    const below = tree.parent[row] as number;
    if (below >= 0 && tree.axis[row] !== tree.axis[below]) {
      branches += 1;
      broken += bench.breaksRule[row] as number;
    }
  }
  for (let row = 0; row < kept.length; row += 1) if (kept[row] !== 1) shadows.add(row, 1);
  return {
    outline: overlap_frac(picture, covered),
    inside: inside + outside > 0 ? inside / (inside + outside) : 1,
    light: bench.litAll_cm2 > 0 ? keptLight(bench, kept) : 1,
    uncrowded: leaf > 0 ? 1 - crowded / leaf : 1,
    balance: arm > 0 ? 1 - Math.hypot(x, y) / arm : 1,
    taper: branches > 0 ? 1 - broken / branches : 1,
    regrowth: regrowthUse(bench, cuts, covered),
    fruit: bench.fruitAll > 0 ? fruit / bench.fruitAll : 1,
  };
}

/** Light that the kept leaves had, over all: what is gained by less shade comes on top and is not counted here. */
function keptLight(bench: Bench, kept: Uint8Array): number {
  let sum = 0;
  for (let row = 0; row < kept.length; row += 1) if (kept[row] === 1) sum += bench.lit_cm2[row] as number;
  return sum / bench.litAll_cm2;
}

/** Mean over the cuts: chance of the first bud times how far its shoot points to the nearest empty part of the outline. */
function regrowthUse(bench: Bench, cuts: readonly number[], covered: Uint8Array): number {
  if (cuts.length === 0) return 0;
  const { picture, tree } = bench;
  let sum = 0;
  for (const cut of cuts) {
    const below = tree.parent[cut] as number;
    const node = tree.nodes[below] as StemNode;
    const start = firstDirection(bench, below);
    const goal = emptyNear(picture, covered, tree, node.position_mm);
    if (!goal) continue;
    sum += firstChance(bench, cut) * Math.max(0, dot(start, unit(minus(goal, node.position_mm))));
  }
  return sum / cuts.length;
}

/** Middle of the empty wanted cells around a place, each counted less the further it is. */
function emptyNear(picture: CrownPicture, covered: Uint8Array, tree: Tree, from: Triple): Triple | undefined {
  const foot = (tree.nodes[0] as StemNode).position_mm;
  const sums = [0, 0, 0, 0, 0];
  for (let cell = 0; cell < covered.length; cell += 3) {
    if (picture.wanted[cell] !== 1 || covered[cell] === 1) continue;
    const { isSide, across_mm, up_mm } = picture.middle(cell);
    const far = Math.hypot(
      across_mm - (from[isSide ? 1 : 0] - foot[isSide ? 1 : 0]),
      up_mm - (from[2] - foot[2]),
    );
    const weight = 1 / (20 + far) ** 2;
    const at = isSide ? 1 : 0;
    sums[at] = (sums[at] as number) + weight * across_mm;
    sums[at + 2] = (sums[at + 2] as number) + weight;
    sums[4] = (sums[4] as number) + weight * up_mm;
  }
  const [x = 0, y = 0, front = 0, side = 0, z = 0] = sums;
  if (front + side === 0) return undefined;
  return [
    front > 0 ? foot[0] + x / front : from[0],
    side > 0 ? foot[1] + y / side : from[1],
    foot[2] + z / (front + side),
  ];
}

/**
 * Direction in which the shoot of a node's axil is expected to leave.
 *
 * @source our assumption
 */
export function firstDirection(bench: Pick<Bench, "tree" | "sky" | "settings">, row: number): Triple {
  const { insertion_deg, lightPull } = valuesOf(shapeAssumptions, bench.settings);
  const tangent = stemDirection(bench.tree, row);
  const radial = radialAt(tangent, bench.tree.azimuths_deg[row] as number);
  const start = shootStart(tangent, radial, (insertion_deg * Math.PI) / 180);
  // The first centimetre still points as the axil does; half a straightening length on it has begun to turn.
  const preferred = preferredDirection(meanLight(bench.sky), lightPull);
  return unit([start[0] + 0.3 * preferred[0], start[1] + 0.3 * preferred[1], start[2] + 0.3 * preferred[2]]);
}

/**
 * Chance that the bud just below a cut grows.
 *
 * @source our assumption
 */
function firstChance(bench: Bench, cut: number): number {
  return chancesBelow(bench, cut, 1)[0]?.chance_frac ?? 0;
}

/**
 * The buds below a cut with their chances, nearest first.
 *
 * @source our assumption
 */
export function chancesBelow(
  bench: Pick<Bench, "tree" | "settings" | "light_frac">,
  cut: number,
  most_n: number,
): readonly { readonly row: number; readonly chance_frac: number }[] {
  const { tree, settings, light_frac } = bench;
  const buds = budsBelow(tree, cut, most_n);
  const below = tree.parent[cut] as number;
  const leafy = buds.some((row) => (tree.nodes[row] as StemNode).leaf_cm2 > 0);
  const otherArm = armsOf(tree, below).some((arm) => arm !== cut);
  return buds.map((row, at) => {
    const node = tree.nodes[row] as StemNode;
    const chance_frac = node.bud
      ? budBreak_frac({
          rank_n: at + 1,
          light_frac: light_frac[row] as number,
          wood: node.wood,
          leafy,
          otherArm,
          ...settings,
        })
      : 0;
    return { row, chance_frac };
  });
}

/**
 * The weighed sum of the terms.
 *
 * @source our assumption
 */
export function planValue(terms: PlanTerms, weights: PlanTerms = planWeights): number {
  let sum = 0;
  for (const term of Object.keys(planWeights) as PlanTerm[]) sum += weights[term] * terms[term];
  return sum;
}

/**
 * Share of lit leaf and of leaf that cuts take.
 *
 * f = Σ removed A I / Σ A I
 *
 * @source our assumption
 */
export function takenBy(
  bench: Bench,
  cuts: readonly number[],
): { readonly lit_frac: number; readonly area_frac: number } {
  const kept = keptRows(bench.tree, cuts);
  let lit = 0;
  let area = 0;
  let all = 0;
  bench.tree.nodes.forEach((node, row) => {
    all += node.leaf_cm2;
    if (kept[row] === 1) return;
    lit += bench.lit_cm2[row] as number;
    area += node.leaf_cm2;
  });
  return { lit_frac: bench.litAll_cm2 > 0 ? lit / bench.litAll_cm2 : 0, area_frac: all > 0 ? area / all : 0 };
}

/** Live nodes that must stay below a cut on its stem in a plan: one may be blind. Common practice, no source. */
const LIVE_BELOW_n = 2;

/**
 * Whether a plan may hold this cut: legal, with two live nodes left below it unless the whole branch goes.
 *
 * @source common practice, no source
 */
export function mayPlan(tree: Tree, row: number): boolean {
  const law = cutLaw(tree, row);
  return (
    law.legal && (law.wholeBranch ? tree.axis[law.below] === 0 || law.live_n > 0 : law.live_n >= LIVE_BELOW_n)
  );
}
