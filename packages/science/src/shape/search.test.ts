import { describe, expect, it } from "vitest";
import { seededGenerator } from "../chance/index.ts";
import {
  bestCuts,
  crownLight,
  cutLaw,
  formOutline,
  keptRows,
  type Plan,
  planBench,
  planSearch,
  plansAlike_frac,
  planTerms,
  plantTree,
  planValue,
  playedPlans,
  type SearchAsk,
  shootGrower,
  skyRays,
  takenBy,
  weeksAhead,
} from "./index.ts";
import { testPlant } from "./test-plant.ts";

const SKY = skyRays({ fromSide_frac: 0.5, fromSide_deg: 90 });
const OUTLINE = formOutline({ form: "dome", top_mm: 190, foot_mm: 70, width_mm: 160 });
const GROWING = {
  air_C: 22,
  leafy: { base_C: 12, plastochron_Cd: 69 },
  flowering: { base_C: 12, plastochron_Cd: 101 },
  weeks_n: 8,
};
const ASK: SearchAsk = { most_frac: 0.3, protect: [], must: [], tries_n: 400 };

const bench = (seed = "one", leaves_n = 40) => planBench(plantTree(testPlant(seed, leaves_n)), OUTLINE, SKY);
const searched = (of: ReturnType<typeof bench>, ask = ASK): readonly Plan[] => {
  let found: readonly Plan[] = [];
  for (const state of planSearch(of, ask)) found = state.found;
  return found;
};

describe("the exact choice of cuts", () => {
  it("equals brute force over all sets of cuts on 500 random small trees", () => {
    for (let tree = 0; tree < 500; tree += 1) {
      const chance = seededGenerator(`tree ${tree}`);
      const rows_n = 2 + chance.index(9);
      const below = [-1];
      for (let row = 1; row < rows_n; row += 1) {
        // In order, a node grows on the one before it or on one further down.
        let at = row - 1;
        for (let back = chance.index(3); back > 0 && at > 0; back -= 1) at = below[at] as number;
        below.push(at);
      }
      const end = Array.from({ length: rows_n }, (_, row) => {
        let last = row + 1;
        while (last < rows_n && isAbove(below, last, row)) last += 1;
        return last;
      });
      const gain = Array.from({ length: rows_n }, () => chance.index(21) - 8);
      const cost_n = Array.from({ length: rows_n }, () => chance.index(12));
      const allowed = Array.from({ length: rows_n }, (_, row) => row > 0 && chance.uniform() < 0.85);
      const budget_n = chance.index(30);
      const found = bestCuts({ end, gain, cost_n, allowed, budget_n });
      expect(found.gain, `tree ${tree}`).toBe(bruteForce(end, gain, cost_n, allowed, budget_n));
      expect(found.rows.reduce((sum, row) => sum + (cost_n[row] as number), 0)).toBe(found.cost_n);
      expect(found.cost_n).toBeLessThanOrEqual(budget_n);
      expect(found.rows.every((row) => allowed[row])).toBe(true);
    }
  });
});

const isAbove = (below: readonly number[], row: number, of: number): boolean => {
  for (let at = row; at >= 0; at = below[at] as number) if (at === of) return true;
  return false;
};

function bruteForce(
  end: readonly number[],
  gain: readonly number[],
  cost: readonly number[],
  allowed: readonly boolean[],
  budget: number,
): number {
  let best = 0;
  for (let set = 0; set < 1 << gain.length; set += 1) {
    const rows = gain.flatMap((_, row) => (set & (1 << row) ? [row] : []));
    const apart = rows.every((row, at) => at === 0 || row >= (end[rows[at - 1] as number] as number));
    const fits = rows.reduce((sum, row) => sum + (cost[row] as number), 0) <= budget;
    if (apart && fits && rows.every((row) => allowed[row]))
      best = Math.max(
        best,
        rows.reduce((sum, row) => sum + (gain[row] as number), 0),
      );
  }
  return best;
}

describe("the search", () => {
  it("finds the same plans for the same plant and ask, better than nothing, within the limit", () => {
    const of = bench();
    const plans = searched(of);
    expect(searched(bench())).toEqual(plans);
    const nothing = planValue(planTerms(of, []));
    expect(plans[0]?.value).toBeGreaterThan(nothing);
    for (const { cuts, taken_frac } of plans) {
      expect(taken_frac).toBeLessThanOrEqual(ASK.most_frac + 1e-9);
      expect(takenBy(of, cuts).lit_frac).toBeCloseTo(taken_frac, 12);
      for (const cut of cuts) expect(cutLaw(of.tree, cut).legal).toBe(true);
    }
  });

  it("keeps what is protected and always takes what must go", () => {
    const of = bench();
    const must = searched(of)[5]?.cuts.slice(0, 1) ?? [];
    const protect = [of.tree.nodes.length - 1];
    for (const { cuts } of searched(of, { ...ASK, must, protect })) {
      const kept = keptRows(of.tree, cuts);
      expect(kept[protect[0] as number]).toBe(1);
      for (const row of must) expect(kept[row]).toBe(0);
    }
  });

  it("leaves the crown's shadows as they were after judging", () => {
    const of = bench();
    const before = planTerms(of, []);
    planTerms(of, [20]);
    expect(planTerms(of, [])).toEqual(before);
  });

  it("plays plans with the same chance: nothing never beats itself, and again gives the same", () => {
    const of = bench();
    const grower = shootGrower(of, GROWING, "seed");
    const plans = searched(of).slice(0, 6);
    const played = playedPlans(of, plans, grower, { left_n: 3, draws_n: 16 });
    expect(played).toHaveLength(3);
    expect(playedPlans(of, plans, shootGrower(of, GROWING, "seed"), { left_n: 3, draws_n: 16 })).toEqual(
      played,
    );
    const [nothing] = playedPlans(of, [{ cuts: [], value: 0, taken_frac: 0 }], grower, {
      left_n: 1,
      draws_n: 16,
    });
    expect(nothing?.beatsNothing_frac).toBe(0);
  });

  it("tells plans apart by what they take", () => {
    const { tree } = bench();
    expect(plansAlike_frac(tree, [10], [10])).toBe(1);
    expect(plansAlike_frac(tree, [], [])).toBe(1);
    expect(plansAlike_frac(tree, [tree.nodes.length - 1], [6])).toBeLessThan(1);
  });
});

describe("light in the crown", () => {
  it("falls below others' leaves and comes back when they go", () => {
    const { tree } = bench();
    const all = crownLight(tree, keptRows(tree, []), SKY).share_frac;
    const cut = tree.nodes.length - 4;
    const after = crownLight(tree, keptRows(tree, [cut]), SKY).share_frac;
    for (let row = 0; row < cut; row += 1)
      expect(after[row]).toBeGreaterThanOrEqual((all[row] as number) - 1e-6);
    expect(Math.max(...all)).toBeGreaterThan(0.8);
    expect(Math.min(...all.filter((_, row) => (tree.nodes[row]?.leaf_cm2 ?? 0) > 0))).toBeLessThan(0.6);
  });
});

describe("the weeks ahead", () => {
  it("grow taller and wider week by week, faster when warm, not at all in the cold", () => {
    const of = bench();
    const at = (air_C: number) =>
      weeksAhead(of, [], shootGrower(of, { ...GROWING, air_C }, "s"), { weeks_n: 8, draws_n: 20 });
    const warm = at(25);
    expect(warm.weeks[8]?.height_mm[1]).toBeGreaterThan(warm.weeks[2]?.height_mm[1] as number);
    expect(warm.weeks[8]?.height_mm[1]).toBeGreaterThan(at(18).weeks[8]?.height_mm[1] as number);
    expect(at(10).tips).toEqual([]);
    for (const { height_mm } of warm.weeks) expect(height_mm[0]).toBeLessThanOrEqual(height_mm[2]);
  });

  it("bring new shoots below a cut, towards the axil's side", () => {
    const of = bench();
    const cut = searched(of)[0]?.cuts[0] as number;
    const { tips } = weeksAhead(of, [cut], shootGrower(of, GROWING, "s"), { weeks_n: 8, draws_n: 60 });
    const shoots = tips.filter(({ isNew }) => isNew);
    expect(shoots.length).toBeGreaterThan(0);
    expect(shoots.some(({ row }) => row === of.tree.parent[cut])).toBe(true);
  });
});
