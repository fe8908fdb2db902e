import { describe, expect, it } from "vitest";
import type { Working } from "../../working/working.ts";
import type { Outlook } from "../craft.ts";
import { measurable } from "./amount.ts";
import { decide } from "./decide.ts";
import { forecastOf } from "./forecast.ts";
import { WATERED } from "./kinds.ts";
import { waterLimits } from "./limits.ts";
import { waterOutlook } from "./outlook.ts";
import { waterSigns } from "./signs.ts";
import { DAY_ms, HOUR_ms, looked, potKit, poured, START_ms, testSay, weighed } from "./test-kit.ts";

const kit = potKit();
const morning = (day: number) => START_ms + day * DAY_ms + 8 * HOUR_ms;
const fresh = poured(morning(0), { volume_mL: 250, drained: "yes" });
const at = (day: number, more: Parameters<typeof kit.live>[1] = []) =>
  kit.live(kit.start(), [fresh, ...more], morning(day));
const outlookAt = (day: number, more: Parameters<typeof kit.live>[1] = []): Outlook =>
  waterOutlook(at(day, more), kit.outward(morning(day)));
const water = (outlook: Outlook) => {
  const task = outlook.tasks.find(({ work }) => work === "water");
  if (!task) throw new Error("no water task");
  return task;
};

describe("outlook", () => {
  it("a wet pot waits, a dry one is due; the dates come nearer as it dries", () => {
    expect(water(outlookAt(0)).earliest_ms).toBeGreaterThan(morning(0));
    expect(water(outlookAt(7)).earliest_ms).toBe(morning(7));
    const middle = (day: number) => (outlookAt(day).line?.dates_ms[10] as number) - morning(day);
    expect(middle(3)).toBeLessThan(middle(1));
  });

  it("DONE writes what is said: the amount and that it drained", () => {
    const task = water(outlookAt(6));
    expect(task.act).toEqual({ kind: WATERED, data: { volume_mL: task.amount?.value, drained: "yes" } });
    expect(task.said).toContain(String(task.amount?.value));
    expect(task.then).toContain("saucer");
    expect(task.why).toMatch(/% left, uses \d+.g a day/);
  });

  it("the same book gives the same numbers; another day other draws", () => {
    expect(outlookAt(4)).toEqual(outlookAt(4));
    const slice = at(4);
    const other = waterOutlook(slice, kit.outward(morning(4), { seed: "another" }));
    expect(other.figures["dates_ms"]).not.toEqual(outlookAt(4).figures["dates_ms"]);
  });

  it("a pot never seen has an honest, wide range", () => {
    const unseen = waterOutlook(kit.start(), kit.outward(morning(0)));
    const dates = unseen.line?.dates_ms ?? [];
    expect((dates[1] as number) - morning(0)).toBeLessThan(DAY_ms);
    expect((dates[18] as number) - morning(0)).toBeGreaterThan(4 * DAY_ms);
    expect(unseen.head?.working.origin).toBe("assumed");
    expect(unseen.line?.origin).toBe("assumed");
  });

  it.each(["metric", "us"] as const)(
    "what the pot holds is a sum of the inputs named beside it, %s",
    (units) => {
      const seen = [2, 4, 6].map((day) =>
        weighed(morning(day), { weight_g: 700 - 40 * day, state: "as found" }),
      );
      const sight = kit.outward(morning(7), { say: testSay("en", units) });
      const { workings } = waterOutlook(at(7, seen), sight);
      const capacity = workings.find(({ formula }) => formula === "C = C₀ + Δ");
      const [model, change] = ["C₀", "Δ"].map((symbol) =>
        capacity?.inputs.find(({ name }) => name.startsWith(symbol)),
      );
      expect(change?.value).not.toBe(0);
      const number = (said = "") => Number(said.replace("−", "-").replace(/[^-\d.]/g, ""));
      expect(number(model?.said) + number(change?.said)).toBeCloseTo(number(capacity?.result), 6);
      expect(capacity?.sum).toContain(`${model?.said} `);
    },
  );

  it("flowers want water earlier", () => {
    const flowering = potKit({ stage: { value: "in flower", at_ms: 0, entry: "e" as never } });
    const early = waterOutlook(at(1), flowering.outward(morning(1))).line?.dates_ms[10] as number;
    expect(early).toBeLessThan(outlookAt(1).line?.dates_ms[10] as number);
  });

  it("every number of a task has a working down to its inputs, in both languages", () => {
    for (const language of ["en", "de"] as const) {
      const outlook = waterOutlook(at(6), kit.outward(morning(6), { say: testSay(language) }));
      const check = (working: Working) => {
        expect(working.formula).not.toBe("");
        expect(working.sum).toMatch(/\d/);
        expect(working.source).not.toBe("");
        for (const input of working.inputs) {
          expect(input.said).toMatch(/\d/);
          expect(input.from.length).toBeGreaterThan(3);
          if (input.working) check(input.working);
        }
      };
      expect(outlook.workings).toHaveLength(5);
      outlook.workings.forEach(check);
      expect(outlook.workings[0]?.movesMost).toMatch(/[a-z]/);
      expect(JSON.stringify(outlook.tasks)).not.toMatch(/undefined|NaN/);
    }
  });

  it("every number in the advice moves with its input", () => {
    const hot = potKit({}, { air_C: 28, humidity_frac: 0.35, ppfd_umol_m2_s: 400 });
    const usual = water(outlookAt(4));
    const warm = water(waterOutlook(hot.live(hot.start(), [fresh], morning(4)), hot.outward(morning(4))));
    expect(warm.why).not.toBe(usual.why);
    expect(warm.amount?.value).toBeGreaterThan(usual.amount?.value as number);
  });

  it("keeps its seams with the round: must only when harm follows, never earlier than now", () => {
    expect(water(outlookAt(1)).must).toBe(false);
    expect(water(outlookAt(14)).must).toBe(true);
    for (const day of [0, 3, 6, 14]) {
      const task = water(outlookAt(day));
      expect(task.earliest_ms).toBeLessThanOrEqual(task.best_ms);
      expect(task.best_ms).toBeLessThanOrEqual(task.latest_ms);
      expect(task.best_ms).toBeGreaterThanOrEqual(morning(day));
    }
  });
});

describe("deciding on a visit", () => {
  const weights = [
    weighed(morning(0) + 1000, { weight_g: 700, state: "just drained" }),
    weighed(morning(1), { weight_g: 662, state: "as found" }),
  ] as const;
  const forecast = forecastOf(at(1, weights), kit.outward(morning(1)));

  it("waits while the pot is most likely moist, however wide the range", () => {
    const yesterday = forecastOf(at(1), kit.outward(morning(1)));
    expect(decide(yesterday, kit.outward(morning(1))).best_ms).toBeGreaterThan(morning(1));
  });
  it("rare visits water earlier: the next one would be too late", () => {
    const daily = decide(forecast, kit.outward(morning(1)));
    const rare = kit.outward(morning(1), { visits_ms: [morning(8), morning(15)] });
    expect(daily.best_ms).toBeGreaterThan(morning(1));
    expect(decide(forecast, rare).best_ms).toBe(morning(1));
    expect(decide(forecast, rare).chanceBeforeNext_frac).toBeGreaterThan(0.2);
  });
  it("less risk accepted, earlier water", () => {
    const withRisk = (risk: number) =>
      decide(
        forecast,
        kit.outward(morning(1), {
          assumed: (key) => (key === "waterRisk_frac" ? risk : kit.sight(0).assumed(key)),
        }),
      ).best_ms;
    expect(withRisk(0.02)).toBeLessThanOrEqual(withRisk(0.2));
    expect(withRisk(0.2)).toBeLessThan(withRisk(0.6));
  });
});

describe("limits and signs", () => {
  const works = (day: number, more: Parameters<typeof kit.live>[1] = []) =>
    waterLimits(at(day, more), kit.sight(morning(day)), testSay("en")).map(({ work }) => work);

  it("a moist pot holds nothing; a dry one is not fed; a wilting one not cut", () => {
    expect(works(1)).toEqual([]);
    expect(works(9)).toContain("feed");
    // Long silence may mean that somebody watered: that it wilts is known once it was seen to hang.
    expect(works(16, [looked(morning(15.5), { look: "drooping", yes: true })])).toContain("cut");
  });

  it("hangs though wet: do not water, a look at the roots, nothing firm", () => {
    const droops = looked(morning(0.2), { look: "drooping", yes: true });
    const limits = waterLimits(at(0.2, [droops]), kit.sight(morning(0.2)), testSay("en"));
    expect(limits).toHaveLength(1);
    expect(limits[0]).toMatchObject({ work: "water", firm: false });
    const look = outlookAt(0.2, [droops]).tasks.find(({ work }) => work === "look");
    expect(look?.said).toContain("roots");
    expect(look?.must).toBe(true);
    const stands = looked(morning(0.2) + HOUR_ms, { look: "drooping", yes: false });
    expect(works(1, [droops, stands])).toEqual([]);
  });

  it("the droop of a wet pot does not make it dry", () => {
    const droops = looked(morning(0.2), { look: "drooping", yes: true });
    expect(at(0.2, [droops]).state).toEqual(at(0.2).state);
  });

  it("hung, then found heavy: the same", () => {
    const hung = [
      looked(morning(4), { look: "drooping", yes: true }),
      looked(morning(4), { look: "heavy", yes: true }),
    ];
    expect(works(4, hung)).toContain("water");
  });

  it("hung when dry, was watered and hangs wet: one look, at the roots", () => {
    const story = [
      looked(morning(16), { look: "drooping", yes: true }),
      poured(morning(16) + HOUR_ms, { volume_mL: 900, drained: "yes" }),
      poured(morning(16) + 2 * HOUR_ms, { volume_mL: 900, drained: "yes" }),
      looked(morning(16.5), { look: "drooping", yes: true }),
    ];
    const looks = outlookAt(16.5, story).tasks.filter(({ work }) => work === "look");
    expect(looks.map(({ said }) => said)).toEqual([expect.stringContaining("roots")]);
  });

  it("never says in one breath to water and not to water, lifted or not", () => {
    const hot = potKit({}, { air_C: 35 });
    for (const [bench, day] of [0, 2, 4, 8, 12, 16, 20].flatMap((one) => [
      [kit, one] as const,
      [hot, one] as const,
    ]))
      for (const felt of [[], ["light pot"], ["heavy pot"], ["dry medium"], ["wet medium"]]) {
        const slice = bench.live(bench.start(), [], morning(day));
        for (const { key, doNow, doNot } of waterSigns(slice, bench.outward(morning(day)), [
          "droops",
          ...felt,
        ]))
          expect(
            doNow.some((line) => /^(water it|rewet it)/.test(line)) && doNot.includes("do not water"),
            `${key}, day ${day}, ${felt}`,
          ).toBe(false);
      }
  });

  it("what dusk shows moves heat: the question is not for nothing", () => {
    const slice = at(4);
    const rank = (seen: readonly string[]) => {
      const signs = waterSigns(slice, kit.outward(morning(4)), ["droops", ...seen]);
      return signs.findIndex(({ key }) => key === "heat");
    };
    expect(rank(["stands at dusk"])).toBe(0);
    expect(rank(["hangs at dusk"])).toBe(2);
  });

  it("the desk asks for one lift, and each answer leads to one act", () => {
    const slice = at(4);
    const desk = (seen: readonly string[]) => waterSigns(slice, kit.outward(morning(4)), seen);
    const unsettled = desk(["droops"]);
    expect(unsettled.length).toBeGreaterThanOrEqual(3);
    expect(unsettled.some(({ lookApart }) => lookApart?.question.includes("Lift"))).toBe(true);
    expect(unsettled.find(({ key }) => key === "thirst")?.doNot.join()).toContain("do not water");
    expect(desk(["droops", "light pot"])[0]?.key).toBe("thirst");
    const heavy = desk(["droops", "heavy pot"])[0];
    expect(heavy?.key).toBe("wet roots");
    expect(heavy?.doNow.join()).toContain("roots");
    expect(heavy?.doNot).toContain("do not water");
    expect(desk([])).toEqual([]);
  });

  it("the book's own record counts: just watered and hanging is not thirst", () => {
    const [first] = waterSigns(at(0), kit.outward(morning(0)), ["droops"]);
    expect(first?.key).toBe("wet roots");
    const [later] = waterSigns(at(14), kit.outward(morning(14)), ["droops"]);
    expect(later?.key).toBe("thirst");
  });
});

describe("amounts in the hand", () => {
  it.each([
    [73, "metric", 75],
    [104, "metric", 100],
    [187, "metric", 190],
    [2, "metric", 5],
  ] as const)("%d mL %s is poured as %d", (exact, units, said) =>
    expect(measurable(exact, units)).toBe(said),
  );
  it("half fluid ounces for US hands", () => {
    expect(measurable(118, "us") / 29.5735295625).toBeCloseTo(4, 9);
    expect(measurable(1e9, "us")).toBeLessThanOrEqual(20_000);
  });
});
