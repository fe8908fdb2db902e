import { describe, expect, it } from "vitest";
import { type AnyEntryKind, checkData } from "../../book/index.ts";
import { CLEAN, DAY_ms, scoutHouse } from "./test-kit.ts";

const clear = (
  day: number,
  to: number,
  house: ReturnType<typeof scoutHouse>,
  id: string,
  more: object[] = [],
) => {
  for (let at = day; at <= to; at += 7)
    for (const data of [CLEAN, ...more]) house.write(at, "scouting.looked", [id], data);
};

describe("clearance of a plant", () => {
  it("does not open without a look, and a clean look without its method is refused", () => {
    const house = scoutHouse(20);
    const id = house.plant(1);
    house.write(0, "scouting.arrived", [id], { from: "own room" });
    const now = house.reckon(1, id);
    expect(now.unseen).toHaveLength(6);
    expect(now.move.open || now.sell.open).toBe(false);
    const kind = house.ledger.kinds.find("scouting.looked") as AnyEntryKind;
    expect(checkData(kind, { way: "lens", found: [] })[0]?.message).toContain(
      "a clean look carries its method",
    );
  });

  it("rises with clean looks, holds gnats until their hidden time is over, and says which pest holds", () => {
    const house = scoutHouse(20);
    const id = house.plant(1);
    house.write(0, "scouting.arrived", [id], { from: "bought" });
    clear(7, 56, house, id, [{ way: "tap", found: [] }]);
    for (let at = 7; at <= 56; at += 7)
      house.write(at + 0.01, "scouting.card", [id], { out_d: 7, caught: [] });
    const [two, eight] = [house.reckon(14.1, id), house.reckon(56.2, id)];
    expect(two.free.mid).toBeLessThan(eight.free.mid);
    expect(two.sell.open).toBe(false);
    expect(eight.free.low).toBeLessThanOrEqual(eight.free.mid);
    expect(eight.free.high).toBeGreaterThanOrEqual(eight.free.mid);
    const gnat = two.pests.find(({ pest }) => pest === "fungus gnat");
    expect(((gnat?.floor_ms ?? 0) - house.desk(0).now_ms) / DAY_ms).toBeGreaterThan(25);
    expect(two.holder).toBeDefined();
    expect(eight.unseen).toEqual([]);
  });

  it("is nothing after a find until it is treated, and a treated plant starts again", () => {
    const house = scoutHouse(20);
    const id = house.plant(1);
    house.write(0, "scouting.arrived", [id], { from: "own room" });
    clear(7, 21, house, id);
    const before = house.reckon(21.1, id).free.mid;
    house.write(22, "scouting.looked", [id], { ...CLEAN, found: [{ pest: "aphid", count_n: 5 }] });
    expect(house.reckon(22.1, id).free.mid).toBe(0);
    expect(house.limits(22.1, id).find(({ work }) => work === "sell")).toMatchObject({ firm: true });
    for (const day of [23, 27, 31])
      house.write(day, "scouting.treated", [id], {
        tool: "soap",
        against: ["aphid"],
        product: "soap",
        reentry_h: 12,
        preharvest_d: 2,
        course_n: 3,
        every_d: 4,
      });
    const after = house.reckon(31.2, id);
    expect(after.pests[0]?.of).toMatchObject({ state: "treated", course: { given_n: 3, wanted_n: 3 } });
    expect(after.free.mid).toBeGreaterThan(0);
    expect(after.free.mid).toBeLessThan(before);
  });

  it("falls for the neighbours of a find, and a released plant is recalled", () => {
    const house = scoutHouse(20);
    const [one, other] = [house.plant(1, "q1"), house.plant(2, "q2")];
    for (const id of [one, other]) {
      house.write(0, "scouting.arrived", [id], { from: "own room" });
      clear(7, 42, house, id);
    }
    house.write(43, "scouting.released", [other], {
      to: "sell",
      free_frac: 0.99,
      low_frac: 0.9,
      high_frac: 0.999,
      looks_n: 6,
    });
    const sell = (day: number) => house.limits(day, other).filter(({ work }) => work === "sell");
    expect(sell(43.5)).toEqual([]);
    const before = house.reckon(43.9, other).free.mid;
    house.write(44, "scouting.looked", [one], { ...CLEAN, found: [{ pest: "thrips", count_n: 2 }] });
    expect(sell(44.1)[0]?.why).toContain("thrips");
    expect(house.reckon(44.1, other).free.mid).toBeLessThan(before - 0.02);
    house.write(44.2, "scouting.exposed", [other], { pest: "thrips", how: "near" });
    expect(house.reckon(44.3, other).free.mid).toBeLessThan(before - 0.1);
  });

  it("a pest without a clock holds until a clean look follows", () => {
    const house = scoutHouse();
    const id = house.plant(1);
    house.write(0, "scouting.looked", [id], { ...CLEAN, found: [{ pest: "mealybug", count_n: 1 }] });
    expect(house.reckon(1, id).held).toEqual(["mealybug"]);
    expect(house.reckon(1, id).sell.best_ms).toBeUndefined();
    house.write(20, "scouting.looked", [id], CLEAN);
    expect(house.reckon(21, id).held).toEqual([]);
  });
});

describe("labels", () => {
  it("without a re-entry time nothing is planned", () => {
    const kind = scoutHouse().ledger.kinds.find("scouting.treated") as AnyEntryKind;
    const spray = { tool: "soap", against: ["aphid"], product: "soap", preharvest_d: 1 };
    expect(checkData(kind, spray).map(({ message }) => message)).toEqual([
      "This label has no re-entry time written (reentry_h, h). Without it the spray cannot be planned.",
    ]);
    expect(checkData(kind, { ...spray, reentry_h: 12 })).toEqual([]);
  });

  it("forbid touching and picking for as long as they say, firmly", () => {
    const house = scoutHouse();
    const id = house.plant(1);
    house.write(1, "scouting.treated", [id], {
      tool: "oil",
      against: ["aphid"],
      product: "oil",
      reentry_h: 24,
      preharvest_d: 3,
    });
    const works = (day: number) =>
      house
        .limits(day, id)
        .filter(({ firm }) => firm)
        .map(({ work }) => work);
    expect(works(1.5)).toEqual(expect.arrayContaining(["touch", "pick", "water", "brush"]));
    expect(works(2.5)).not.toContain("touch");
    expect(works(2.5)).toContain("pick");
    expect(works(4.5)).not.toContain("pick");
  });
});

describe("tasks", () => {
  it("ask for looks at what is kept apart, not at a plant that nobody watches", () => {
    const house = scoutHouse();
    const [apart, quiet] = [house.plant(1, "q1"), house.plant(2, "q2")];
    house.write(0, "scouting.arrived", [apart], { from: "outdoors", washed: true });
    const tasks = (id: typeof apart, day: number) =>
      house.desk(day).view(id)?.outlooks[0]?.outlook.tasks ?? [];
    expect(tasks(apart, 1)[0]).toMatchObject({ work: "look", act: { kind: "scouting.looked" } });
    expect(tasks(quiet, 1)).toEqual([]);
    house.write(1.1, "scouting.looked", [apart], CLEAN);
    expect(tasks(apart, 3)).toEqual([]);
    expect(tasks(apart, 7.5)).toHaveLength(1);
  });
});
