import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plantId, START_ms, TEST_SITE } from "../../../test/toy.ts";
import type { Json } from "../../book/index.ts";
import { createLedger } from "../../house/index.ts";
import { stageNames } from "./stages.ts";
import { bed, DAY_ms } from "./test-kit.ts";

const anyAct: fc.Arbitrary<readonly [string, Json]> = fc.oneof(
  fc.constantFrom(...stageNames).map((stage) => ["growth.staged", { stage }] as const),
  fc.nat(99).map((bbch) => ["growth.staged", { bbch }] as const),
  fc
    .record({ leaves_n: fc.integer({ min: 1, max: 400 }) })
    .map(({ leaves_n }) => ["growth.leaves", { leaves_n, leafLength_cm: 6, leafWidth_cm: 3 }] as const),
  fc.nat(40).map((nodes_n) => ["growth.nodes", { nodes_n }] as const),
  fc.integer({ min: 0, max: 300 }).map((leaves_n) => ["plant.measured", { leaves_n }] as const),
  fc
    .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom("cut", "plucked"))
    .map(([kept_frac, what]) => ["shears.used", { kept_frac, what }] as const),
  fc.constantFrom("2025-10-01", "2026-01-20").map((sownOn) => ["plant.described", { sownOn }] as const),
  fc.constantFrom("thin", "lantern", "tiny").map((habit) => ["plant.described", { habit }] as const),
  fc.constant(["plant.noted", { text: "seen" }] as const),
);
const anyLife = fc.array(fc.record({ day: fc.double({ min: 0.2, max: 60, noNaN: true }), act: anyAct }), {
  maxLength: 12,
});
const anyAir = fc.record({
  air_C: fc.double({ min: -5, max: 45, noNaN: true }),
  dli_mol_m2_d: fc.double({ min: 0, max: 60, noNaN: true }),
});
const lived = (life: readonly { day: number; act: readonly [string, Json] }[], air = {}) => {
  const plant = bed({ sownOn: "2025-12-01" }, air);
  for (const { day, act } of [...life].sort((a, b) => a.day - b.day)) plant.write(day, ...act);
  return plant;
};

describe("growth", () => {
  it("counts the same warmth however a history is cut by entries, and never less with time", () => {
    fc.assert(
      fc.property(
        anyAir,
        fc.array(fc.double({ min: 0.1, max: 40, noNaN: true }), { maxLength: 8 }),
        (air, cuts) => {
          const whole = bed({ sownOn: "2025-12-01" }, air);
          const cut = bed({ sownOn: "2025-12-01" }, air);
          for (const day of [...cuts].sort((a, b) => a - b))
            cut.write(day, "plant.noted", { text: "passed" });
          const [one, other] = [whole.growing(41), cut.growing(41)];
          for (const key of ["sum_Cd", "book_Cd", "made_n", "leafArea_m2"] as const)
            expect(Math.abs(one[key] - other[key])).toBeLessThanOrEqual(1e-9 * Math.max(1, one[key]));
          expect(whole.growing(20).sum_Cd).toBeLessThanOrEqual(one.sum_Cd);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("gives the same state whatever the order in which entries arrive", () => {
    fc.assert(
      fc.property(anyLife, fc.infiniteStream(fc.nat()), (life, shuffle) => {
        const plant = lived(life);
        const shuffled = plant.entries
          .map((entry) => ({ entry, key: shuffle.next().value as number }))
          .sort((a, b) => a.key - b.key);
        const other = createLedger({ crafts: plant.ledger.crafts, site: TEST_SITE });
        const now_ms = START_ms + 70 * DAY_ms;
        for (const { entry } of shuffled) {
          other.add([entry]);
          other.stateAt(plantId(1), now_ms);
        }
        expect(other.stateAt(plantId(1), now_ms)).toEqual(plant.ledger.stateAt(plantId(1), now_ms));
      }),
      { numRuns: 40 },
    );
  });

  it("stays finite and within bounds, and says so without a hole in both languages", () => {
    fc.assert(
      fc.property(anyLife, anyAir, (life, air) => {
        const plant = lived(life, air);
        const { sum_Cd, rest_Cd, leafArea_m2, made_n } = plant.growing(65);
        for (const value of [sum_Cd, rest_Cd, leafArea_m2, made_n]) {
          expect(Number.isFinite(value)).toBe(true);
          expect(value).toBeGreaterThanOrEqual(0);
        }
        for (const language of ["en", "de"] as const) {
          const { head, line, workings, question, figures, tasks } = plant.outlook(65, language);
          const text = JSON.stringify({ head, line, workings, question, figures, tasks });
          expect(text).not.toMatch(/NaN|undefined|Infinity|null/);
          const dates = line?.dates_ms ?? [];
          for (let i = 1; i < dates.length; i++)
            expect(dates[i]).toBeGreaterThanOrEqual(dates[i - 1] as number);
        }
        const { value, sd } = plant.read(65, "stage_bbch");
        expect(value).toBeGreaterThanOrEqual(0);
        expect(sd).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });
});
