import { leafArea_cm2 } from "@sillwood/science/growth";
import { plantTree, type StemNode, type Tree, type Wood } from "@sillwood/science/shape";
import type { Traced } from "./kinds.ts";
import type { TraceNode } from "./trace-fields.ts";

/** Stems this thick are taken as woody, half-woody, where nobody said. @source our assumption */
const WOODY_mm = 6;
const SEMI_mm = 3.5;
/** A stem that nobody measured is so much thinner than the one below it. @source our assumption */
const TAPER_frac = 0.88;
const USUAL_TRUNK_mm = 8;
const USUAL_LEAF_mm = 45;
const LEAF_WIDTH_frac = 0.5;
const FRUIT_g = 2;

const woodOf = (caliper_mm: number): Wood =>
  caliper_mm >= WOODY_mm ? "woody" : caliper_mm >= SEMI_mm ? "semi" : "green";

/** The traced plant as the science of shape takes it; what was not measured is filled in from what was. */
export function treeOf(trace: Traced): Tree {
  const byId = new Map(trace.nodes.map((node) => [node.id, node]));
  const calipers = new Map<string, number>();
  const caliperOf = (node: TraceNode): number => {
    const known = node.caliper_mm ?? calipers.get(node.id);
    if (known !== undefined) return known;
    const below = node.below === undefined ? undefined : byId.get(node.below);
    const caliper = below ? Math.max(0.8, caliperOf(below) * TAPER_frac) : USUAL_TRUNK_mm;
    calipers.set(node.id, caliper);
    return caliper;
  };
  const usual_mm = usualLeaf_mm(trace.nodes);
  return plantTree(
    trace.nodes.map((node): StemNode => {
      const caliper_mm = caliperOf(node);
      const leaves_n = node.leaves_n ?? 0;
      const length_mm = node.leafLength_mm ?? usual_mm;
      const width_mm = Math.min(1.2 * length_mm, node.leafWidth_mm ?? length_mm * LEAF_WIDTH_frac);
      return {
        id: node.id,
        ...(node.below === undefined ? {} : { parent: node.below }),
        position_mm: [node.right_mm, node.away_mm, node.up_mm],
        caliper_mm,
        wood: node.wood ?? woodOf(caliper_mm),
        leaf_cm2:
          leaves_n > 0 ? leaves_n * leafArea_cm2({ length_cm: length_mm / 10, width_cm: width_mm / 10 }) : 0,
        leafLength_mm: leaves_n > 0 ? length_mm : 0,
        ...(node.leafTowards_deg === undefined ? {} : { azimuth_deg: node.leafTowards_deg }),
        flowers_n: node.flowers_n ?? 0,
        fruit_g: (node.fruit_n ?? 0) * FRUIT_g,
        bud: node.blind !== true,
      };
    }),
  );
}

function usualLeaf_mm(nodes: readonly TraceNode[]): number {
  const lengths = nodes.flatMap(({ leafLength_mm }) => leafLength_mm ?? []).toSorted((a, b) => a - b);
  return lengths[Math.floor(lengths.length / 2)] ?? USUAL_LEAF_mm;
}

/** Fruits at a row, counted. */
export const fruits_n = (tree: Tree, row: number): number =>
  Math.round((tree.nodes[row]?.fruit_g ?? 0) / FRUIT_g);
