import { expectedStage } from "@sillwood/science/growth";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { growthSettings } from "./settings.ts";
import { codeNow, stageNow } from "./stage-now.ts";
import { bed, FIRST_DATE } from "./test-kit.ts";

/** Day on which the head first shows this code or a later one. */
function firstDay(plant: ReturnType<typeof bed>, bbch: number, most_d = 200): number {
  for (let day = 1; day < most_d; day++) if (Number(plant.outlook(day).figures["bbch"]) >= bbch) return day;
  return Number.POSITIVE_INFINITY;
}

describe("the stage by the clock alone", () => {
  it("takes the days of the phase table at 22 °C (sheet growth-fruit, section 5)", () => {
    const plant = bed({ sownOn: FIRST_DATE });
    expect(firstDay(plant, 9)).toBeGreaterThanOrEqual(9);
    expect(firstDay(plant, 9)).toBeLessThanOrEqual(11);
    expect(Math.abs(firstDay(plant, 15) - 38)).toBeLessThanOrEqual(1);
    expect(Math.abs(firstDay(plant, 61) - (38 + 35))).toBeLessThanOrEqual(1);
    expect(Math.abs(firstDay(plant, 71) - (38 + 35 + 35))).toBeLessThanOrEqual(1);
    expect(Math.abs(firstDay(plant, 81) - (38 + 35 + 58))).toBeLessThanOrEqual(1);
  });

  it("takes the days at 25 °C for small fruit and chinense", () => {
    const small = bed({ sownOn: FIRST_DATE, habit: "tiny" }, { air_C: 25 });
    expect(Math.abs(firstDay(small, 81) - firstDay(small, 61) - 43)).toBeLessThanOrEqual(1);
    const lantern = bed({ sownOn: FIRST_DATE, habit: "lantern" }, { air_C: 25 });
    expect(Math.abs(firstDay(lantern, 81) - firstDay(lantern, 61) - 50)).toBeLessThanOrEqual(1);
  });

  it("shows the very code that the field expects, whatever the species, start and warmth", () => {
    const sight = bed().outward(0);
    const { clockworks } = growthSettings(sight);
    fc.assert(
      fc.property(
        fc.nat(clockworks.length - 1),
        fc.constantFrom(0, 9, 12, 17, 25, 55, 61, 65, 75),
        fc.double({ min: 0, max: 2000, noNaN: true }),
        (pepper_n, bbch, sum_Cd) => {
          const clock = {
            how: "seen",
            at_ms: 0,
            bbch,
            bbchLow: bbch,
            bbchHigh: bbch,
            sd_Cd: 0,
            fruiting_Cd: 0,
            sownOn: undefined,
          } as const;
          const growing = { pepper_n, clock, sum_Cd, rest_Cd: 0 };
          const plant = clockworks[pepper_n]?.plant ?? { species: "annuum" };
          const expected = expectedStage({ ...plant, bbchStart: bbch, thermalTime_Cd: sum_Cd });
          expect(codeNow(growing, "clocked", sight)).toBe(expected.bbch);
          const now = stageNow(growing, sight);
          expect(now.bbchLow).toBeLessThanOrEqual(now.bbch);
          expect(now.bbchHigh).toBeGreaterThanOrEqual(now.bbch);
        },
      ),
    );
  });

  it("is not known of a plant that nobody said anything of, and is not made up with time", () => {
    const plant = bed();
    expect(plant.outlook(60).head?.said).toContain("not known");
    expect(plant.read(60, "stage_bbch").origin).toBe("assumed");
    expect(plant.read(60, "stage_bbch").value).toBe(19);
    expect(plant.outlook(60).line).toBeUndefined();
  });

  it("counts days before the plant came into the book at an assumed air, with doubt that grows with them", () => {
    const old = bed({ sownOn: "2025-12-06" });
    const older = bed({ sownOn: "2025-11-06" });
    const at = (plant: ReturnType<typeof bed>) => plant.growing(0);
    expect(at(old).sum_Cd).toBeCloseTo(11 * 30, -1);
    expect(at(older).sum_Cd).toBeGreaterThan(at(old).sum_Cd);
    expect(at(older).clock.sd_Cd).toBeGreaterThan(at(old).clock.sd_Cd);
    expect(old.outlook(0).head?.working.origin).toBe("assumed");
  });

  it("gives the same for a sowing date written at once and later", () => {
    const atOnce = bed({ sownOn: "2025-12-20" });
    const later = bed();
    later.write(20, "plant.described", { sownOn: "2025-12-20" });
    expect(later.growing(40).sum_Cd).toBeCloseTo(atOnce.growing(40).sum_Cd, 6);
    const ahead = bed({ sownOn: "2026-01-15" });
    expect(ahead.growing(9).sum_Cd).toBe(0);
    expect(ahead.growing(20).sum_Cd).toBeGreaterThan(100);
  });
});

describe("a look", () => {
  it("sets the clock: in plain words, as a code, or with the other measures of the house", () => {
    const word = bed({ sownOn: FIRST_DATE });
    word.write(30, "growth.staged", { stage: "first flower" });
    expect(word.outlook(30.5).head?.said).toMatch(/^in flower \(BBCH 61\)/);
    const code = bed();
    code.write(30, "growth.staged", { bbch: 63 });
    expect(code.outlook(30.5).figures).toMatchObject({ bbch: 63, clockFrom: "seen" });
    const house = bed();
    house.write(30, "plant.measured", { stage: "in flower" });
    expect(house.outlook(30.5).figures["bbch"]).toBe(65);
    expect(house.read(30.5, "stage_bbch").origin).toBe("measured");
  });

  it("grows old: further on by warmth, wider, then too long ago to tell", () => {
    const plant = bed();
    plant.write(1, "growth.staged", { bbch: 61 });
    const wide = (day: number) => {
      const { bbchHigh, bbchLow } = plant.outlook(day).figures;
      return Number(bbchHigh) - Number(bbchLow);
    };
    expect(Number(plant.outlook(30).figures["bbch"])).toBeGreaterThan(65);
    expect(wide(30)).toBeGreaterThan(wide(4));
    expect(plant.read(30, "stage_bbch").origin).toBe("learned");
    expect(plant.outlook(150).figures["stageState"]).toBe("run out");
    expect(plant.outlook(150).head?.said).toContain("past its first ripe fruit");
    expect(plant.read(150, "stage_bbch")).toMatchObject({ value: 61, origin: "assumed" });
  });

  it("of ripe fruit stands for a month, later codes as they were seen", () => {
    const plant = bed();
    plant.write(1, "growth.staged", { stage: "ripe fruit" });
    expect(plant.outlook(10).figures).toMatchObject({ bbch: 85, stageState: "clocked" });
    expect(plant.outlook(60).figures["stageState"]).toBe("run out");
  });

  it("that makes no sense is kept and not used", () => {
    const plant = bed();
    const before = plant.growing(5).clock;
    const bad = plant.write(2, "growth.staged", { stage: "in flower" });
    plant.ledger.add([
      { ...bad, id: "01980000-0000-7000-8000-00000000bad0" as typeof bad.id, data: { bbch: 700 } },
    ]);
    expect(plant.growing(5).clock.how === before.how || plant.growing(5).clock.how === "seen").toBe(true);
    expect(Number.isFinite(plant.growing(5).sum_Cd)).toBe(true);
  });
});
