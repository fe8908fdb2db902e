import { describe, expect, it } from "vitest";
import { START_ms } from "../../../test/toy.ts";
import { theRound } from "../../round/index.ts";
import { AIMED, BENT, BITTEN, CUT, PLANNED, SKETCHED, SPROUTED, TRACED } from "./kinds.ts";
import type { CutShown, PlansShown } from "./page-shape.ts";
import { DAY_ms, PLANT, TRACE, trimHouse } from "./test-kit.ts";

const AIM = { form: "dome", top_mm: 130, foot_mm: 40, width_mm: 110 } as const;

function traced() {
  const house = trimHouse();
  house.write(1, TRACED, TRACE);
  house.write(1.1, AIMED, AIM);
  return house;
}
const plansOf = (house: ReturnType<typeof trimHouse>, tries_n = 3000) =>
  house.shape(2, { tries_n }).plans as PlansShown;

describe("what is known of a plant", () => {
  it("grows from nothing over a sketch to a trace", () => {
    const house = trimHouse();
    expect(house.shape(1).level).toBe("nothing");
    expect(house.shape(1).levelSaid).toContain("quarter turn");
    house.write(2, SKETCHED, { height_mm: 180, trunk_mm: 10, branches_mm: [5, 4, 3], leaves_n: 60 });
    const sketch = house.shape(3);
    expect(sketch.sketch?.shares[0]).toBe("branch 1 carries about 50 % of the leaf");
    house.write(4, TRACED, TRACE);
    const page = house.shape(5);
    expect(page.level).toBe("traced");
    expect(page.nodes).toHaveLength(TRACE.nodes.length);
    expect(page.nodes.map(({ name }) => name)).toContain("branch 1, joint 1");
    expect(page.views?.front.stems).toHaveLength(TRACE.nodes.length - 1);
  });

  it("refuses a plant, a node and a trace that are not there, by name", () => {
    const house = traced();
    expect(() => house.page(2, { plant: "nobody" })).toThrow('plant is "nobody"');
    expect(() => house.shape(2, { node: "77" })).toThrow('node is "77"; expected one of 1, 2, 3');
    expect(() => house.shape(2, { trace: { ...TRACE, distance_mm: 5 } })).toThrow(
      "distance of the camera is 5 mm; expected 50 to 20000 mm",
    );
    expect(() => house.page(2, { tries_n: 0 })).toThrow("tries_n is 0; expected 1 to 20000");
  });
});

describe("what a cut does", () => {
  it("is said as a share, a direction, a number, dates and what is lost", () => {
    const cut = traced().shape(2, { node: "7" }).node as CutShown;
    expect(cut.isLegal).toBe(true);
    expect(cut.goneNodes).toEqual(["7"]);
    expect(cut.takes).toMatch(/^\d+ % of lit leaf, \d+ % of all leaf, limit \d+ %$/);
    expect(cut.brings).toMatch(/shoots?, first to the (left|right|front|back)/);
    expect(cut.brings).toMatch(/in \d+ to \d+ days$/);
    expect(cut.loses).toMatch(/^1 open flower, /);
    expect(cut.again).toMatch(/^not before /);
  });

  it("centres on the axil's side of the first node below, whose bud is the likeliest", () => {
    for (const leafTowards_deg of [0, 90, 180, 270]) {
      const house = traced();
      const nodes = TRACE.nodes.map((node) => (node.id === "6" ? { ...node, leafTowards_deg } : node));
      const { figures } = house.shape(2, { node: "7", trace: { ...TRACE, nodes } }).node as CutShown;
      const off = Math.abs(((figures.towards_deg - leafTowards_deg + 540) % 360) - 180);
      expect(off).toBeLessThan(50);
    }
  });

  it("says why a stem may not be cut", () => {
    const { node, nodes } = traced().shape(2, { node: "1" });
    expect(node?.isLegal).toBe(false);
    expect(node?.why).toBe("The trunk is not cut at its base.");
    expect(nodes.find(({ id }) => id === "4")?.isLegal).toBe(true);
  });
});

describe("plans", () => {
  it("stand beside nothing, differ, keep to the limit, and are the same again", () => {
    const house = traced();
    const { plans, isDone } = plansOf(house, 20_000);
    expect(isDone).toBe(true);
    expect(plans[0]?.key).toBe("nothing");
    expect(plans.map(({ key }) => key)).toContain("middle");
    expect(plans.length).toBeGreaterThanOrEqual(3);
    expect(new Set(plans.map(({ goneNodes }) => goneNodes.join())).size).toBe(plans.length);
    const middle = plans.find(({ key }) => key === "middle");
    expect(middle?.taken_frac).toBeLessThanOrEqual(0.25 + 1e-9);
    for (const plan of plans) expect(plan.weeks).toHaveLength(9);
    expect(plansOf(traced(), 20_000).plans).toEqual(plans);
  });

  it("found in parts are those found at once", () => {
    const parts = traced();
    plansOf(parts, 1);
    plansOf(parts, 3);
    expect(plansOf(parts, 20_000)).toEqual(plansOf(traced(), 20_000));
    expect(plansOf(traced(), 1).said).toMatch(/^\d+ of about \d+ tried: best of the first \d+\.$/);
  });

  it("of the grower's own are judged like the others; cuts that may not be are refused", () => {
    const house = traced();
    const own = house.shape(2, { own: ["7", "11"] }).plans?.plans[0];
    expect(own?.cuts.map(({ letter }) => letter)).toEqual(["A", "B"]);
    expect(own?.draft?.data).toMatchObject({ plan: "own" });
    expect(() => house.shape(2, { own: ["1"] })).toThrow("The trunk is not cut at its base.");
  });
});

describe("from plan to cut", () => {
  it("a kept plan cuts nothing; its cuts are made one by one and leave the structure", () => {
    const house = traced();
    const own = house.shape(2, { own: ["7", "11"] }).plans?.plans[0];
    house.write(2.1, PLANNED, own?.draft?.data as object);
    const before = house.desk(3).view(PLANT);
    expect(
      before?.outlooks.flatMap(({ outlook }) => outlook.tasks).find(({ work }) => work === "cut")?.title,
    ).toBe("CUT A");
    expect(house.shape(3).nodes).toHaveLength(11);
    const task = theRound(house.desk(3)).benches[0]?.spots[0]?.tasks.find(({ work }) => work === "cut");
    expect(task?.act.kind).toBe(CUT);
    house.write(3, CUT, task?.act.data as object);
    expect(house.shape(3.1).nodes.map(({ id }) => id)).not.toContain("7");
    expect(house.shape(3.1).nodes.map(({ id }) => id)).toContain("11");
    expect(
      house
        .desk(3.1)
        .view(PLANT)
        ?.outlooks.flatMap(({ outlook }) => outlook.tasks)
        .find(({ work }) => work === "cut")?.title,
    ).toBe("CUT B");
    house.write(3.2, CUT, own?.cuts[1]?.draft.data as object);
    expect(house.shape(4).nodes.map(({ id }) => id)).not.toContain("11");
  });

  it("holds the next cut until the leaf is back, and any hard cut after roots were washed", () => {
    const house = traced();
    house.write(2, CUT, { kept_frac: 0.75, lit_frac: 0.25 });
    expect(house.shape(4).held[0]).toMatch(/^No cut before .*: cut on /);
    expect(house.shape(2 + 9).held).toHaveLength(1);
    expect(house.shape(2 + 10.5).held).toHaveLength(0);
  });

  it("learns from what grew", () => {
    const house = traced();
    const before = house.shape(2, { node: "7" }).node?.figures.shoots_n as number;
    house.write(2.5, SPROUTED, { watched_n: 12, grown_n: 0 });
    expect(house.shape(3, { node: "7" }).node?.figures.shoots_n as number).toBeLessThan(before * 0.5);
  });
});

describe("bends", () => {
  it("are looked at, come off when set, and at once when they bite", () => {
    const house = traced();
    house.write(2, BENT, { node: "7", by: "wire", wood: "green", target_deg: 70 });
    const tasks = (day: number) =>
      house
        .desk(day)
        .view(PLANT)
        ?.outlooks.flatMap(({ outlook }) => outlook.tasks)
        .filter(({ craft }) => craft === "trimming") ?? [];
    expect(tasks(3)[0]?.work).toBe("look");
    expect(tasks(3)[0]?.earliest_ms).toBe(START_ms + 9 * DAY_ms);
    house.write(9, BITTEN, { node: "7", bites: false });
    house.write(16, BITTEN, { node: "7", bites: false });
    expect(tasks(17)[0]?.work).toBe("bend");
    house.write(18, BITTEN, { node: "7", bites: true });
    expect(tasks(18.5)[0]?.must).toBe(true);
  });
});
