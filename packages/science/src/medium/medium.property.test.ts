import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  curveFromTwoFills,
  drainedPot,
  type PotShape,
  potForms,
  potVolume_mL,
  type RetentionCurve,
  tiltedAir_frac,
  waterAtSuction_frac,
  watered,
  wetLayer_cm,
} from "./index.ts";

const RUNS = { numRuns: 150, seed: 5 };
const length = fc.double({ min: 2, max: 40, noNaN: true });
const shape: fc.Arbitrary<PotShape> = fc.record({
  form: fc.constantFrom(...potForms),
  bottomLength_cm: length,
  bottomWidth_cm: length,
  topLength_cm: length,
  topWidth_cm: length,
  innerHeight_cm: fc.double({ min: 2, max: 40, noNaN: true }),
});
const curve: fc.Arbitrary<RetentionCurve> = fc.record({
  residualWater_frac: fc.double({ min: 0, max: 0.2, noNaN: true }),
  saturatedWater_frac: fc.double({ min: 0.3, max: 0.98, noNaN: true }),
  alpha_per_cm: fc.double({ min: 0.05, max: 5, noNaN: true }),
  steepness: fc.double({ min: 1.15, max: 3, noNaN: true }),
});
const filled = fc.double({ min: 0.5, max: 1, noNaN: true });

describe("the integral over a pot", () => {
  // With n = 2 the mean water has a closed form for every tapered pot: A = a0 + a1 z + a2 z² against 1/√(1 + (α z)²).
  it("agrees with the closed form of n = 2 to a millionth, for straight and tapered pots", () => {
    fc.assert(
      fc.property(shape, curve, filled, (pot, of, share) => {
        const fill_cm = pot.innerHeight_cm * share;
        const { alpha_per_cm: a, residualWater_frac, saturatedWater_frac } = of;
        const round = pot.form === "rectangular" ? 1 : Math.PI / 4;
        const [slopeL, slopeW] = [
          (pot.topLength_cm - pot.bottomLength_cm) / pot.innerHeight_cm,
          (pot.topWidth_cm - pot.bottomWidth_cm) / pot.innerHeight_cm,
        ];
        const terms = [
          pot.bottomLength_cm * pot.bottomWidth_cm,
          slopeL * pot.bottomWidth_cm + slopeW * pot.bottomLength_cm,
          slopeL * slopeW,
        ].map((term) => term * round) as [number, number, number];
        const root = Math.sqrt(1 + (a * fill_cm) ** 2);
        const moments = [
          Math.asinh(a * fill_cm) / a,
          (root - 1) / a ** 2,
          (fill_cm * root) / (2 * a ** 2) - Math.asinh(a * fill_cm) / (2 * a ** 3),
        ] as const;
        const held = terms[0] * moments[0] + terms[1] * moments[1] + terms[2] * moments[2];
        const volume = potVolume_mL({ ...pot, fill_cm });
        const closed = residualWater_frac + ((saturatedWater_frac - residualWater_frac) * held) / volume;
        const ours = drainedPot({ ...pot, ...of, steepness: 2, fill_cm }).water_frac;
        expect(Math.abs(ours - closed)).toBeLessThan(1e-6);
      }),
      RUNS,
    );
  });

  it("keeps water and air together at the porosity, whatever the shape, standing water or wick", () => {
    fc.assert(
      fc.property(shape, curve, filled, length, length, (pot, of, share, standing, suction) => {
        const fill_cm = pot.innerHeight_cm * share;
        const at = { ...pot, ...of, fill_cm };
        const { water_frac, air_frac } = drainedPot(at);
        expect(water_frac + air_frac).toBeCloseTo(of.saturatedWater_frac, 12);
        expect(air_frac).toBeGreaterThanOrEqual(-1e-12);
        expect(water_frac).toBeGreaterThanOrEqual(of.residualWater_frac - 1e-9);
        expect(drainedPot({ ...at, standing_cm: standing }).air_frac).toBeLessThanOrEqual(air_frac + 1e-9);
        expect(drainedPot({ ...at, baseSuction_cm: suction }).air_frac).toBeGreaterThanOrEqual(
          air_frac - 1e-9,
        );
      }),
      RUNS,
    );
  });

  it("holds less air in a shallower fill of the same straight pot, and more on its edge", () => {
    fc.assert(
      fc.property(curve, filled, length, (of, share, tray_cm) => {
        const straight = { form: "rectangular", bottomLength_cm: 10, bottomWidth_cm: 10 } as const;
        const pot = { ...straight, topLength_cm: 10, topWidth_cm: 10, innerHeight_cm: 20 };
        const deep = drainedPot({ ...pot, ...of, fill_cm: 20 }).air_frac;
        const low = drainedPot({ ...pot, ...of, fill_cm: 18 * share }).air_frac;
        expect(low).toBeLessThanOrEqual(deep + 1e-9);
        const flat = tiltedAir_frac({ ...of, fill_cm: 4, length_cm: tray_cm, tilt_deg: 0 });
        const level = drainedPot({ ...pot, ...of, fill_cm: 4 }).air_frac;
        expect(flat).toBeCloseTo(level, 7);
      }),
      { ...RUNS, numRuns: 40 },
    );
  });
});

describe("the wet layer", () => {
  it("ends where the local air reaches the limit", () => {
    fc.assert(
      fc.property(curve, (of) => {
        const airWanted_frac = (of.saturatedWater_frac - of.residualWater_frac) * 0.3;
        const height = wetLayer_cm({ ...of, airWanted_frac });
        fc.pre(height < 20_000);
        const local = of.saturatedWater_frac - waterAtSuction_frac({ ...of, suction_cm: height });
        expect(local).toBeCloseTo(airWanted_frac, 8);
      }),
      RUNS,
    );
  });
});

describe("a curve from two fills", () => {
  it("finds again the curve that made them", () => {
    const pot = { form: "round", bottomLength_cm: 9, bottomWidth_cm: 9, topLength_cm: 11 } as const;
    const whole = { ...pot, topWidth_cm: 11, innerHeight_cm: 12 };
    const made = { residualWater_frac: 0.15, saturatedWater_frac: 0.8, alpha_per_cm: 0.2, steepness: 1.6 };
    const fills = [11, 5].map((fill_cm) => ({
      ...whole,
      fill_cm,
      air_frac: drainedPot({ ...whole, ...made, fill_cm }).air_frac,
    }));
    const found = curveFromTwoFills({
      ...made,
      deeper: fills[0] as (typeof fills)[0],
      shallower: fills[1] as (typeof fills)[0],
    });
    expect(found.steepness).toBeCloseTo(1.6, 6);
    expect(found.alpha_per_cm).toBeCloseTo(0.2, 4);
  });
});

describe("solutes through waterings", () => {
  it("loses nothing: held and drained are what was held and poured, to a billionth, over a year", () => {
    const watering = fc.record({
      use: fc.double({ min: 5, max: 80, noNaN: true }),
      leach: fc.double({ min: 0, max: 400, noNaN: true }),
      poured: fc.array(fc.double({ min: 0, max: 400, noNaN: true }), { minLength: 3, maxLength: 3 }),
      efficiency: fc.double({ min: 0.5, max: 0.9, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(watering, { minLength: 120, maxLength: 120 }), (year) => {
        const held = [10, 20, 30];
        const balance = [...held];
        let water_mL = 250;
        let now: readonly number[] = held;
        for (const { use, leach, poured, efficiency } of year) {
          water_mL -= use;
          const after = watered({
            held_mg: now,
            water_mL,
            kept_mL: use,
            leachate_mL: leach,
            poured_mg_L: poured,
            leachingEfficiency: efficiency,
          });
          for (let i = 0; i < 3; i += 1) {
            const in_mg = ((poured[i] as number) * (use + leach)) / 1000;
            balance[i] = (balance[i] as number) + in_mg - (after.drained_mg[i] as number);
            expect(after.held_mg[i]).toBeGreaterThanOrEqual(0);
          }
          now = after.held_mg;
          water_mL = after.water_mL;
        }
        for (let i = 0; i < 3; i += 1)
          expect(Math.abs((now[i] as number) - (balance[i] as number))).toBeLessThan(1e-9);
      }),
      { numRuns: 25, seed: 5 },
    );
  });
});
