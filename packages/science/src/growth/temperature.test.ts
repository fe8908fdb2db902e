import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededGenerator } from "../chance/generator.ts";
import { QuantityError } from "../errors/index.ts";
import * as growth from "./index.ts";

const air = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyDay = fc
  .tuple(air(-20, 35), air(0, 20), air(-20, 35))
  .map(([airMin_C, range_C, airMinNext_C]) => ({ airMin_C, airMax_C: airMin_C + range_C, airMinNext_C }));
const anyMethod = fc.constantFrom(...growth.degreeDayMethods.filter((each) => each !== "three branches"));

/** What the formulas stand for, by brute force: a day of many small steps. */
function byHand(
  shape: "sine" | "triangle",
  low: number,
  high: number,
  count: (air_C: number) => number,
): number {
  const steps = 20_000;
  let sum = 0;
  for (let step = 0; step < steps; step += 1) {
    const along = (step + 0.5) / steps;
    const level = shape === "sine" ? Math.sin((along - 0.5) * Math.PI) : 2 * along - 1;
    sum += count((low + high) / 2 + ((high - low) / 2) * level);
  }
  return sum / steps;
}

describe("degree-days of a day", () => {
  const [lower_C, upper_C] = [10, 28];
  const over = (air_C: number, edge: number): number => Math.max(0, air_C - edge);
  it.each([
    ["horizontal", (air_C: number) => Math.min(over(air_C, lower_C), upper_C - lower_C)],
    ["intermediate", (air_C: number) => over(air_C, lower_C) - 2 * over(air_C, upper_C)],
    ["vertical", (air_C: number) => (air_C < upper_C ? over(air_C, lower_C) : 0)],
  ] as const)("are what a finely cut day gives, %s cutoff", (cutoff, count) => {
    for (const shape of ["sine", "triangle"] as const) {
      for (const [airMin_C, airMax_C] of [
        [4, 9],
        [4, 20],
        [12, 26],
        [5, 34],
        [20, 36],
        [29, 38],
      ] as const) {
        const method = `single ${shape}` as const;
        const ours = growth.degreeDays_Cd({ airMin_C, airMax_C, lower_C, upper_C, method, cutoff });
        expect(ours).toBeCloseTo(Math.max(0, byHand(shape, airMin_C, airMax_C, count)), 3);
      }
    }
  });
  it("rise with warmth, are never negative, and never pass the span between the thresholds", () => {
    fc.assert(
      fc.property(anyDay, anyMethod, air(0, 5), (day, method, warmer) => {
        const at = (by: number): number =>
          growth.degreeDays_Cd({
            airMin_C: day.airMin_C + by,
            airMax_C: day.airMax_C + by,
            airMinNext_C: day.airMinNext_C + by,
            lower_C,
            upper_C,
            method,
          });
        expect(at(0)).toBeGreaterThanOrEqual(0);
        expect(at(warmer)).toBeGreaterThanOrEqual(at(0) - 1e-9);
        expect(at(warmer)).toBeLessThanOrEqual(upper_C - lower_C + 1e-9);
      }),
    );
  });
  it("are the same by every method on a day that stays between the thresholds", () => {
    const day = { airMin_C: 14, airMax_C: 24, airMinNext_C: 14, lower_C };
    for (const method of growth.degreeDayMethods)
      expect(growth.degreeDays_Cd({ ...day, method })).toBeCloseTo(9, 9);
  });
  it("take the warm part of a cold day, which the clipped mean loses", () => {
    const day = { airMin_C: 2, airMax_C: 16, lower_C };
    expect(growth.degreeDays_Cd({ ...day, method: "average, mean clipped" })).toBe(0);
    expect(growth.degreeDays_Cd(day)).toBeGreaterThan(1);
  });
  it("refuse what can't be, by name, and a method asked for what it doesn't know", () => {
    const day = { airMin_C: 12, airMax_C: 26, lower_C, upper_C };
    expect(() => growth.degreeDays_Cd({ ...day, airMin_C: 27 })).toThrow("air max temperature is 26 °C");
    expect(() => growth.degreeDays_Cd({ ...day, method: "double sine" })).toThrow("air min next temperature");
    expect(() => growth.degreeDays_Cd({ ...day, upper_C: 9 })).toThrow("upper temperature is 9 °C");
    const averaged = { ...day, method: "average, ends clipped", cutoff: "vertical" } as const;
    expect(() => growth.degreeDays_Cd(averaged)).toThrow("knows a horizontal cutoff only");
    expect(() => growth.degreeDays_Cd({ ...day, method: "three branches" })).toThrow("no upper threshold");
  });
  it("add up over days; the last falls to its own lowest", () => {
    const days = { airMin_C: [8, 12], airMax_C: [20, 24], lower_C, method: "double sine" } as const;
    const first = growth.degreeDays_Cd({ ...days, airMin_C: 8, airMax_C: 20, airMinNext_C: 12 });
    expect(growth.degreeDaysSum_Cd(days)).toBeCloseTo(first + 8, 9);
    expect(() => growth.degreeDaysSum_Cd({ ...days, airMax_C: [20] })).toThrow(QuantityError);
  });
});

describe("the clock of four temperatures", () => {
  const clock = { base_C: 10, optimumLow_C: 28, optimumHigh_C: 35, max_C: 55 };
  const rate = (air_C: number): number => growth.thermalRate_frac({ air_C, ...clock });
  it("stands still at both ends and is fastest between the optima", () => {
    expect([rate(10), rate(9.9), rate(55), rate(60)]).toEqual([0, 0, 0, 0]);
    expect([rate(28), rate(31), rate(35)]).toEqual([1, 1, 1]);
    expect(rate(27.9)).toBeLessThan(1);
    expect(rate(45)).toBeCloseTo(0.5, 12);
  });
  it("agrees with the sine on even days and by the hour with itself", () => {
    expect(growth.thermalRate_Cd_per_d({ air_C: 22, ...clock })).toBe(12);
    const hours = new Array(24).fill(22);
    expect(growth.degreeDaysHourly_Cd({ air_C: hours, ...clock })).toBeCloseTo(12, 9);
    const byDay = growth.thermalTimeOfDay({ species: "annuum", airMin_C: 22, airMax_C: 22 });
    expect(byDay).toMatchObject({ thermalTime_Cd: 12, method: "single sine" });
    const logged = growth.thermalTimeOfDay({ species: "annuum", airMin_C: 8, airMax_C: 20, air_C: [8, 20] });
    expect(logged).toMatchObject({ thermalTime_Cd: 5, method: "hourly trapezoid" });
  });
  it("refuses temperatures out of order", () => {
    expect(() => growth.thermalRate_frac({ air_C: 20, ...clock, optimumLow_C: 10 })).toThrow(QuantityError);
    expect(() => growth.thermalRate_frac({ air_C: 20, ...clock, optimumHigh_C: 27 })).toThrow(QuantityError);
    expect(() => growth.thermalRate_frac({ air_C: 20, ...clock, max_C: 35 })).toThrow(QuantityError);
    expect(() => growth.degreeDaysHourly_Cd({ air_C: [], ...clock })).toThrow(QuantityError);
  });
  it("makes a chinense stall on a cool sill where an annuum goes on", () => {
    const at18 = (species: growth.SpeciesGroup): number =>
      growth.thermalRate_Cd_per_d({ air_C: 18, ...growth.developmentClock({ species }) });
    expect(at18("annuum")).toBe(8);
    expect(at18("chinense")).toBe(5);
    expect(growth.developmentClock({ species: "annuum", baseAnnuum_C: 7 }).base_C).toBe(7);
    expect(() => growth.developmentClock({ species: "annuum", baseAnnuum_C: 25 })).toThrow(QuantityError);
  });
});

describe("rates and sums", () => {
  it("never promise less than the asymptotes", () => {
    const { toFirstFlower_per_d, min_C } = growth.compactPepperRates;
    const at = (air_C: number): number =>
      growth.saturatingRate_per_d({ air_C, min_C, rateMax_per_d: toFirstFlower_per_d, curvature_per_C: 0.2 });
    expect(at(9.3)).toBe(0);
    expect(at(60)).toBeLessThan(toFirstFlower_per_d);
    expect(at(60)).toBeGreaterThan(at(30));
  });
  it("end where the temperature is above the base, and say so where it is not", () => {
    expect(growth.daysForSum_d({ thermalTime_Cd: 460, air_C: 22, base_C: 10 })).toBeCloseTo(38.33, 2);
    const warm = { thermalTime_Cd: 460, air_C: 34, base_C: 10, upper_C: 28 };
    expect(growth.daysForSum_d(warm)).toBeCloseTo(460 / 18, 9);
    expect(() => growth.daysForSum_d({ thermalTime_Cd: 460, air_C: 10, base_C: 10 })).toThrow(
      "air temperature is 10 °C",
    );
  });
  it("take the same days at one temperature on either base", () => {
    const sum = { thermalTime_Cd: 750, base_C: 10, otherBase_C: 13, air_C: 25 };
    const other = growth.sumOnOtherBase_Cd(sum);
    const days = (thermalTime_Cd: number, base_C: number): number =>
      growth.daysForSum_d({ thermalTime_Cd, base_C, air_C: 25 });
    expect(days(other, 13)).toBeCloseTo(days(750, 10), 12);
    expect(() => growth.sumOnOtherBase_Cd({ ...sum, air_C: 13 })).toThrow(QuantityError);
  });
});

describe("a base and sum fitted to batches", () => {
  const air_C = [16, 18, 20, 22, 24, 26];
  const usual = { base_C: 10, thermalTime_Cd: 400 };
  const made = (base_C: number, sum_Cd: number): number[] => air_C.map((each) => sum_Cd / (each - base_C));
  it("finds what made them, and is drawn towards the default by few batches", () => {
    const fit = growth.fitThermalTime({ air_C, days_d: made(12, 300), ...usual });
    expect(fit.fittedBase_C).toBeCloseTo(12, 9);
    expect(fit.fittedThermalTime_Cd).toBeCloseTo(300, 6);
    expect(fit.base_C).toBeGreaterThan(10);
    expect(fit.base_C).toBeLessThan(12);
    expect(fit.thermalTime_Cd).toBeGreaterThan(300);
    expect(fit.thermalTime_Cd).toBeLessThan(400);
  });
  it("gives the weighted rate at any temperature, so that base and sum stay a pair", () => {
    const fit = growth.fitThermalTime({ air_C, days_d: made(12, 300), ...usual });
    const rate = (at: number): number => (at - fit.base_C) / fit.thermalTime_Cd;
    expect(rate(21)).toBeCloseTo(0.6 * (9 / 300) + 0.4 * (11 / 400), 9);
  });
  it("refuses too few batches, too narrow a span, and batches that were faster in the cold", () => {
    expect(() => growth.fitThermalTime({ air_C: [18, 20, 22], days_d: [30, 28, 26], ...usual })).toThrow(
      QuantityError,
    );
    const narrow = { air_C: [20, 21, 22, 23], days_d: [30, 28, 26, 24], ...usual };
    expect(() => growth.fitThermalTime(narrow)).toThrow("air range is 3 °C; expected 4 to 60 °C");
    const cold = { air_C: [16, 18, 20, 22], days_d: [20, 22, 24, 26], ...usual };
    expect(() => growth.fitThermalTime(cold)).toThrow("fitted thermal time is -");
    const same = { air_C: [16, 18, 20, 22], days_d: [20, 20, 20, 20], ...usual };
    expect(() => growth.fitThermalTime(same)).toThrow(QuantityError);
  });
  it("has a range that holds the fit and widens with scatter", () => {
    const noisy = (by: number): number[] => made(12, 300).map((each, i) => each * (1 + (i % 2 ? by : -by)));
    const range = (by: number) => {
      const draw = { redraws_n: 400, tail: 0.1, uniform: seededGenerator("batches").uniform };
      return growth.fitThermalTimeRange({ air_C, days_d: noisy(by), ...usual, ...draw });
    };
    const [calm, rough] = [range(0.02), range(0.08)];
    const fit = growth.fitThermalTime({ air_C, days_d: noisy(0.08), ...usual });
    expect(rough.baseLow_C).toBeLessThan(fit.base_C);
    expect(rough.baseHigh_C).toBeGreaterThan(fit.base_C);
    expect(rough.baseHigh_C - rough.baseLow_C).toBeGreaterThan(calm.baseHigh_C - calm.baseLow_C);
    expect(calm.useful_frac).toBeGreaterThan(0.95);
  });
});

describe("what is made for many temperatures or days", () => {
  it("gives the numbers of the functions that are asked one by one", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...growth.speciesGroups),
        air(-40, 60),
        fc.double({ min: 0, max: 65, noNaN: true }),
        (species, air_C, dli_mol_m2_d) => {
          const clock = growth.developmentClock({ species });
          expect(growth.thermalPaceOf(clock)(air_C)).toBe(growth.thermalRate_Cd_per_d({ air_C, ...clock }));
          expect(growth.relativeGrowthOf({ species })(dli_mol_m2_d, air_C)).toBe(
            growth.expectedRelativeGrowth_per_d({ species, dli_mol_m2_d, air_C }),
          );
        },
      ),
    );
  });
  it("refuses a clock that goes backwards before anything is asked of it", () => {
    const clock = growth.developmentClock({ species: "annuum" });
    expect(() => growth.thermalPaceOf({ ...clock, base_C: 30 })).toThrow(QuantityError);
  });
});
