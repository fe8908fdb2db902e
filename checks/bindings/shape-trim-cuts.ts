import * as growth from "@sillwood/science/growth";
import * as shape from "@sillwood/science/shape";
import { type Alias, alias, type Rule, rule, ruleOn } from "../src/rules.ts";

const each = <Value>(values: readonly Value[], of: (value: Value, at: number) => unknown) => values.map(of);

const leafRules = [
  rule("ratioForm_cm2", ["length_cm", "width_cm"], (v) => growth.leafArea_cm2(v)),
  rule("interceptForm_cm2", ["length_cm", "width_cm"], (v) => growth.leafAreaWithIntercept_cm2(v)),
];

type Phases = { readonly phase: readonly (keyof typeof shape.printedPlastochrons)[] };
const nodeRules = [
  ruleOn<Phases>("Tb_C", ["phase"], (v) => each(v.phase, (phase) => shape.printedPlastochrons[phase].base_C)),
  ruleOn<Phases>("plastochron_degCd", ["phase"], (v) =>
    each(v.phase, (phase) => shape.printedPlastochrons[phase].plastochron_Cd),
  ),
  rule("days", ["Tb_C", "plastochron_degCd", "T_C"], (v) =>
    growth.daysForSum_d({ thermalTime_Cd: v.plastochron_degCd, air_C: v.T_C, base_C: v.Tb_C }),
  ),
  ruleOn<{
    readonly days: number;
    readonly T_C: number;
    readonly sets: readonly (readonly [number, number])[];
  }>("nodes", ["days", "T_C", "sets"], (v) =>
    each(v.sets, ([base_C, plastochron_Cd]) => {
      const one_d = growth.daysForSum_d({ thermalTime_Cd: plastochron_Cd, air_C: v.T_C, base_C });
      return v.days / one_d;
    }),
  ),
];

const turnRules = [
  rule("divergence_deg", [], () => shape.goldenAngle_deg()),
  ruleOn<{ readonly az0_deg: number; readonly n: readonly number[]; readonly hand: number }>(
    "az_deg",
    ["az0_deg", "n", "hand"],
    (v) =>
      each(v.n, (node_n) =>
        shape.leafAzimuth_deg({ azimuth0_deg: v.az0_deg, node_n, leftHanded: v.hand > 0 }),
      ),
  ),
  ruleOn<{ readonly fraction: readonly string[] }>("deg", ["fraction"], (v) =>
    each(v.fraction, (text) => {
      const [turns_n = 0, leavesPerTurns_n = 0] = text.split("/").map(Number);
      return shape.divergence_deg({ turns_n, leavesPerTurns_n });
    }),
  ),
];

const shootRules = [
  ruleOn<{ readonly A0_deg: number; readonly s_over_Lc: readonly number[] }>(
    "A_deg",
    ["A0_deg", "s_over_Lc"],
    (v) => each(v.s_over_Lc, (stretches) => shape.shootAngle_deg({ start_deg: v.A0_deg, stretches })),
  ),
  ruleOn<{ readonly M: readonly number[]; readonly lightFromVertical_deg: readonly number[] }>(
    "A_deg",
    ["M", "lightFromVertical_deg"],
    (v) =>
      each(v.M, (lightPull, at) =>
        shape.setAngle_deg({ lightPull, lightFromVertical_deg: v.lightFromVertical_deg[at] as number }),
      ),
  ),
];

const forkNeeds = ["v", "lambda", "Q_main", "Q_lateral"] as const;
const split = (v: Readonly<Record<(typeof forkNeeds)[number], number>>) =>
  shape.resourceSplit({
    strength: v.v,
    mainShare_frac: v.lambda,
    lightMain: v.Q_main,
    lightSide: v.Q_lateral,
  });

const caliperRules = [
  rule("v_main", forkNeeds, (v) => split(v).main),
  rule("v_lateral", forkNeeds, (v) => split(v).side),
  ruleOn<{ readonly d_mm: readonly number[]; readonly exponent: number }>(
    "share",
    ["d_mm", "exponent"],
    (v) => shape.leafShares_frac({ calipers_mm: v.d_mm, pipeExponent: v.exponent }),
  ),
  ruleOn<{ readonly d_mm: readonly number[] }>("share", ["d_mm"], (v) =>
    shape.leafShares_frac({ calipers_mm: v.d_mm }),
  ),
  ruleOn<{ readonly parent_mm: number; readonly daughters_mm: readonly number[] }>(
    "Delta",
    ["parent_mm", "daughters_mm"],
    (v) => shape.forkExponent({ below_mm: v.parent_mm, arms_mm: v.daughters_mm }).exponent,
  ),
  ruleOn<{ readonly daughters_mm: readonly number[]; readonly Delta: number }>(
    /^parent_mm$/,
    ["daughters_mm", "Delta"],
    (v) => shape.forkCaliper_mm({ arms_mm: v.daughters_mm, pipeExponent: v.Delta }),
  ),
  ruleOn<{ readonly daughters_mm: readonly number[] }>(/^parent_mm$/, ["daughters_mm"], (v) =>
    shape.forkCaliper_mm({ arms_mm: v.daughters_mm }),
  ),
  ruleOn<{ readonly caliper_mm: number | readonly number[] }>(/^height_mm$/, ["caliper_mm"], (v) => {
    const heights = [v.caliper_mm].flat().map((caliper) => shape.trainedHeight(caliper));
    return heights.length === 1
      ? [heights[0]?.low_mm, heights[0]?.high_mm]
      : [heights[0]?.low_mm, heights.at(-1)?.high_mm];
  }),
];

const columnNeeds = ["B2", "E_Pa", "rho_kg_m3", "d_m", "g_m_s2"] as const;
const column = (v: Readonly<Record<(typeof columnNeeds)[number], number>>) =>
  shape.columnHeight({
    stiffness_Pa: v.E_Pa,
    density_kg_m3: v.rho_kg_m3,
    diameter_m: v.d_m,
    gravity_m_s2: v.g_m_s2,
    bessel: v.B2,
  });
const columnRules = [
  rule("q_crit_L3_over_EI", columnNeeds, (v) => column(v).loadNumber),
  rule("coefficient", columnNeeds, (v) => column(v).coefficient),
  rule("H_m", columnNeeds, (v) => column(v).height_m),
];

const lightRules = [
  ruleOn<{ readonly x: readonly number[]; readonly zenith_deg: readonly number[] }>(
    "k",
    ["x", "zenith_deg"],
    (v) =>
      each(v.x, (ellipsoid, at) =>
        shape.beamExtinction({ ellipsoid, zenith_deg: v.zenith_deg[at] as number }),
      ),
  ),
  ruleOn<{ readonly k: readonly number[]; readonly LAI: readonly number[] }>("T", ["k", "LAI"], (v) =>
    each(v.k, (extinction, at) => shape.passedLight_frac({ extinction, lai: v.LAI[at] as number })),
  ),
  rule("I_over_I0", ["G", "LAD_m2_m3", "path_m"], (v) =>
    shape.pathLight_frac({ shadow_frac: v.G, leafDensity_m2_m3: v.LAD_m2_m3, path_m: v.path_m }),
  ),
  rule(/^cells(PerLeaf|_per_leaf|_n)?$/, ["qmax"], (v) => shape.shadowCells_n(v.qmax)),
  ruleOn<{ readonly f: readonly number[]; readonly R_per_d: number }>("days", ["f", "R_per_d"], (v) =>
    each(v.f, (removed_frac) => shape.regrowthTime_d({ removed_frac, leafRegrowth_per_d: v.R_per_d })),
  ),
];

const budNeeds = ["p1", "rho_nodes", "nodesBelow"] as const;
const chances = (v: Readonly<Record<(typeof budNeeds)[number], number>>) =>
  Array.from({ length: v.nodesBelow }, (_, at) =>
    shape.budBreak_frac({
      rank_n: at + 1,
      light_frac: 1,
      wood: "green",
      leafy: true,
      otherArm: false,
      firstBreak_frac: v.p1,
      breakFade_n: v.rho_nodes,
    }),
  );

type CutRow = {
  readonly parent: Readonly<Record<string, number>>;
  readonly area: Readonly<Record<string, number>>;
  readonly gainPerNode: Readonly<Record<string, number>>;
  readonly cutCost: number;
  readonly budget: number;
};
const cutNeeds = ["parent", "area", "gainPerNode", "cutCost", "budget"] as const;

/** The row's tree as rows in order; node 0 stays. */
function best(v: CutRow) {
  const order: number[] = [];
  const end = new Map<number, number>();
  const walk = (node: number): void => {
    order.push(node);
    for (const [child, parent] of Object.entries(v.parent)) if (parent === node) walk(Number(child));
    end.set(node, order.length);
  };
  walk(0);
  const over = (table: Readonly<Record<string, number>>, row: number): number =>
    order.slice(row, end.get(order[row] as number)).reduce((sum, node) => sum + (table[node] as number), 0);
  const found = shape.bestCuts({
    end: order.map((node) => end.get(node) as number),
    gain: order.map((_, row) => over(v.gainPerNode, row) - v.cutCost),
    cost_n: order.map((_, row) => over(v.area, row)),
    allowed: order.map((node) => node !== 0),
    budget_n: v.budget,
  });
  return { ...found, nodes: found.rows.map((row) => order[row] as number).toSorted((a, b) => a - b) };
}

const searchRules = [
  rule("p", budNeeds, chances),
  rule("expectedShoots", budNeeds, (v) => chances(v).reduce((sum, chance) => sum + chance, 0)),
  ruleOn<CutRow>("bestValue", cutNeeds, (v) => best(v).gain),
  ruleOn<CutRow>("areaUsed", cutNeeds, (v) => best(v).cost_n),
  ruleOn<CutRow>("cuts", cutNeeds, (v) => best(v).nodes),
];

export const cutRules: readonly Rule[] = [
  ...leafRules,
  ...nodeRules,
  ...turnRules,
  ...shootRules,
  ...caliperRules,
  ...columnRules,
  ...lightRules,
  ...searchRules,
];
export const cutAliases: readonly Alias[] = [alias("length_cm", "L_cm"), alias("width_cm", "W_cm")];
