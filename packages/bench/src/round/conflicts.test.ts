import { describe, expect, it } from "vitest";
import { plantId } from "../../test/toy.ts";
import { apartRules, inHandOrder, keepApart, orderRules } from "./conflicts.ts";
import { fitMinutes } from "./fit.ts";
import { type Task, type Work, works } from "./task.ts";

const task = (work: Work, over: Partial<Task> = {}): Task => ({
  id: `t:${work}:${over.latest_ms ?? 0}`,
  craft: "t",
  work,
  plant: plantId(1),
  earliest_ms: 0,
  best_ms: 0,
  latest_ms: 100,
  minutes: 2,
  must: false,
  title: work,
  said: work,
  why: "",
  act: { kind: "t.t", data: {} },
  working: {
    title: "",
    result: "",
    unit: "",
    origin: "assumed",
    formula: "",
    sum: "",
    inputs: [],
    source: "",
    notes: [],
  },
  ...over,
});

describe("rules of work as data", () => {
  it("name works that exist, with a reason in every language", () => {
    for (const { before, after, why } of orderRules) {
      expect(works).toContain(before);
      expect(works).toContain(after);
      expect(why.en && why.de).toBeTruthy();
    }
    for (const { one, other } of apartRules) expect(works.includes(one) && works.includes(other)).toBe(true);
  });

  it("have no circle", () => {
    const reach = (from: Work, seen: readonly Work[] = []): boolean =>
      orderRules
        .filter(({ before }) => before === from)
        .some(({ after }) => seen.includes(after) || reach(after, [...seen, after]));
    for (const work of works) expect(reach(work, [work])).toBe(false);
  });

  it("put picking before spraying and weighing before watering, whatever is due first", () => {
    const order = inHandOrder([
      task("spray", { latest_ms: 1 }),
      task("pick", { latest_ms: 9 }),
      task("water", { latest_ms: 0 }),
      task("weigh", { latest_ms: 5 }),
    ]);
    const at = (work: Work) => order.findIndex((one) => one.work === work);
    expect(at("pick")).toBeLessThan(at("spray"));
    expect(at("weigh")).toBeLessThan(at("water"));
    expect(order).toHaveLength(4);
  });

  it("let what can wait wait, and never a must for a can", () => {
    const { today, waits } = keepApart([
      task("spray", { must: true, latest_ms: 9 }),
      task("brush", { latest_ms: 1 }),
    ]);
    expect(today.map(({ work }) => work)).toEqual(["spray"]);
    expect(waits[0]?.task.work).toBe("brush");
  });
});

describe("fitting the minutes", () => {
  const next_ms = 50;
  it("keeps every must and everything whose latest date would pass, though minutes run out", () => {
    const tasks = [
      task("water", { must: true, minutes: 10 }),
      task("look", { latest_ms: 20, minutes: 10 }),
      task("cut", { latest_ms: 90, minutes: 10 }),
    ];
    const { today, moved } = fitMinutes(tasks, 5, next_ms);
    expect(today.map(({ work }) => work)).toEqual(["water", "look"]);
    expect(moved.map(({ work }) => work)).toEqual(["cut"]);
  });

  it("says what the musts alone take when that is more than there are minutes, and only then", () => {
    const tasks = [
      task("water", { must: true, minutes: 10 }),
      task("look", { latest_ms: 20, minutes: 12 }),
      task("cut", { latest_ms: 90, minutes: 10 }),
    ];
    expect(fitMinutes(tasks, 21, next_ms).pressing_min).toBe(22);
    expect(fitMinutes(tasks, 22, next_ms).pressing_min).toBeUndefined();
    expect(fitMinutes(tasks, undefined, next_ms).pressing_min).toBeUndefined();
  });

  it("drops nothing: what is not today is moved", () => {
    const tasks = works.map((work, i) => task(work, { latest_ms: 60 + i, minutes: 3 }));
    const { today, moved, minutes } = fitMinutes(tasks, 10, next_ms);
    expect(new Set([...today, ...moved])).toEqual(new Set(tasks));
    expect(minutes).toBeLessThanOrEqual(10);
  });

  it("moves nothing when there is no limit", () => {
    expect(fitMinutes([task("cut")], undefined, next_ms).moved).toEqual([]);
  });
});
