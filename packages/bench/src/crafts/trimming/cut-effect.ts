import {
  azimuthOf_deg,
  type Bench,
  breakTime,
  chancesBelow,
  crownLight,
  cutLaw,
  firstDirection,
  internode_mm,
  keptRows,
  planTerms,
  regrowthTime_d,
  type StemNode,
  shapeAssumptions,
  type Tree,
} from "@sillwood/science/shape";
import type { Around } from "./around.ts";
import type { CutFigures } from "./page-shape.ts";
import { fruits_n } from "./tree-of.ts";

const DAY_ms = 86_400_000;
const BUDS_n = 6;
/** Leaves whose light rises by this share of full light or more are named. */
const OPENED_frac = 0.05;
const OPENED_n = 3;
/** Fresh wood of young stems. PepperParts2018, stem density 980 kg/m³ */
const WOOD_g_cm3 = 0.98;
const leafFresh_g_cm2 = shapeAssumptions.find(({ key }) => key === "leafFresh_g_cm2")?.value ?? 0.018;

/** The numbers of one more cut on a plant from which some rows are gone already. */
export function cutFigures(
  bench: Bench,
  around: Around,
  before: readonly number[],
  cut: number,
  leafRegrowth_per_d: number,
): CutFigures {
  const { tree } = bench;
  const keptBefore = keptRows(tree, before);
  const after = [...before, cut];
  const keptAfter = keptRows(tree, after);
  const lightBefore =
    before.length === 0
      ? bench.light_frac
      : crownLight(tree, keptBefore, bench.sky, bench.settings).share_frac;
  const lightAfter = crownLight(tree, keptAfter, bench.sky, bench.settings).share_frac;
  let lit = 0;
  let litGone = 0;
  let area = 0;
  let areaGone = 0;
  let mass_g = 0;
  let flowers_n = 0;
  let fruit_n = 0;
  tree.nodes.forEach((node, row) => {
    if (keptBefore[row] !== 1) return;
    const rowLit = node.leaf_cm2 * (lightBefore[row] as number);
    lit += rowLit;
    area += node.leaf_cm2;
    if (keptAfter[row] === 1) return;
    litGone += rowLit;
    areaGone += node.leaf_cm2;
    mass_g += massOf(tree, row, node);
    flowers_n += node.flowers_n;
    fruit_n += fruits_n(tree, row);
  });
  const buds = chancesBelow({ ...bench, light_frac: lightAfter }, cut, BUDS_n).filter(
    ({ row }) => keptAfter[row] === 1,
  );
  const { early_d, late_d } = breakTime({
    air_C: around.growing.air_C,
    ...around.growing.leafy,
    ...bench.settings,
  });
  const below = tree.parent[cut] as number;
  const lit_frac = lit > 0 ? litGone / lit : 0;
  return {
    lit_frac,
    area_frac: area > 0 ? areaGone / area : 0,
    mass_g,
    flowers_n,
    fruit_n,
    shoots_n: buds.reduce((sum, { chance_frac }) => sum + chance_frac, 0),
    towards_deg: azimuthOf_deg(firstDirection(bench, below)),
    early_d,
    late_d,
    rest_d: regrowthTime_d({ removed_frac: Math.min(0.99, lit_frac), leafRegrowth_per_d }),
    outline_frac: planTerms(bench, after).outline,
    outlineBefore_frac: planTerms(bench, before).outline,
    opened: tree.nodes
      .map((node, row) => ({
        node: node.id,
        leaf: node.leaf_cm2,
        kept: keptAfter[row] === 1,
        before_frac: lightBefore[row] as number,
        after_frac: lightAfter[row] as number,
      }))
      .filter((each) => each.kept && each.leaf > 0 && each.after_frac - each.before_frac >= OPENED_frac)
      .toSorted((a, b) => b.after_frac - b.before_frac - (a.after_frac - a.before_frac))
      .slice(0, OPENED_n)
      .map(({ node, before_frac, after_frac }) => ({ node, before_frac, after_frac })),
  };
}

function massOf(tree: Tree, row: number, node: StemNode): number {
  const radius_cm = node.caliper_mm / 20;
  const wood_g = Math.PI * radius_cm ** 2 * (internode_mm(tree, row) / 10) * WOOD_g_cm3;
  return wood_g + node.leaf_cm2 * leafFresh_g_cm2 + node.fruit_g;
}

/** Why a stem may not be cut below a row; undefined where it may. */
export function againstCut(tree: Tree, row: number): "base" | "bare" | undefined {
  const law = cutLaw(tree, row);
  if (law.below < 0) return "base";
  return law.legal ? undefined : "bare";
}

export const restEnd_ms = (now_ms: number, rest_d: number): number => now_ms + rest_d * DAY_ms;
