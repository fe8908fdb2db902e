import {
  azimuthOf_deg,
  chancesBelow,
  firstDirection,
  formOutline,
  planBench,
  plantTree,
  type StemNode,
  skyRays,
} from "@sillwood/science/shape";

const SIDES_deg = [0, 60, 120, 180, 240, 300] as const;
/** The cone's own width: nearer than this its middle lies on the bud's side. */
const CONE_deg = 20;

/** An upright leafy stem whose nodes face the same side, in even light. */
function stem(side_deg: number) {
  const nodes = Array.from(
    { length: 7 },
    (_, at): StemNode => ({
      id: `${at}`,
      ...(at === 0 ? {} : { parent: `${at - 1}` }),
      position_mm: [0, 0, 20 * at],
      caliper_mm: 4,
      wood: "green",
      leaf_cm2: at === 0 ? 0 : 8,
      leafLength_mm: at === 0 ? 0 : 45,
      azimuth_deg: (side_deg + 60 * (at - 4) + 360) % 360,
      flowers_n: 0,
      fruit_g: 0,
      bud: true,
    }),
  );
  const outline = formOutline({ form: "dome", top_mm: 140, foot_mm: 20, width_mm: 100 });
  return planBench(plantTree(nodes), outline, skyRays({ fromSide_frac: 0, fromSide_deg: 0 }));
}

/** A cut above a node: the chance to grow is highest at that node, and its shoot leaves to that bud's side, whichever it is. */
export function budBelowCutBreaks(): { readonly bud_below_cut_breaks: boolean } {
  const holds = SIDES_deg.every((side_deg) => {
    const bench = stem(side_deg);
    const buds = chancesBelow(bench, 5, 4);
    const first = buds[0];
    if (first?.row !== 4) return false;
    const off = Math.abs(((azimuthOf_deg(firstDirection(bench, first.row)) - side_deg + 540) % 360) - 180);
    return buds.slice(1).every(({ chance_frac }) => chance_frac < first.chance_frac) && off < CONE_deg;
  });
  return { bud_below_cut_breaks: holds };
}
