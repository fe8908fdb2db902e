import { type MediumName, mediumNames } from "@sillwood/science/medium";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Aim, compose, judged, partsIn } from "./compose.ts";

const aim = (depth_cm: number, more: Partial<Aim> = {}): Aim => ({
  shape: {
    form: "oval",
    bottomLength_cm: 18,
    bottomWidth_cm: 14,
    topLength_cm: 18,
    topWidth_cm: 14,
    innerHeight_cm: depth_cm,
  },
  fill_cm: 0.88 * depth_cm,
  airWanted_frac: 0.15,
  wetted_frac: 0.87,
  unavailable_frac: 0.3,
  scoops_n: 5,
  ...more,
});

/** Every row of scoops from 0 to the most, however many bags: slow and plain. */
function rows(bags_n: number, most: number): number[][] {
  if (bags_n === 0) return [[]];
  return rows(bags_n - 1, most).flatMap((row) =>
    Array.from({ length: most + 1 }, (_, n) => [...row, n]).filter(
      (next) => next.reduce((sum, each) => sum + each, 0) <= most,
    ),
  );
}

describe("the composer", () => {
  it("is never worse than trying every row of scoops, on small shelves", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...mediumNames), { minLength: 1, maxLength: 4 }),
        fc.double({ min: 3, max: 20, noNaN: true }),
        fc.double({ min: 0.05, max: 0.3, noNaN: true }),
        (bags, depth_cm, airWanted_frac) => {
          const wanted = aim(depth_cm, { airWanted_frac });
          const parts = partsIn(bags, wanted);
          const all = rows(bags.length, wanted.scoops_n).filter((row) => row.some((each) => each > 0));
          const best = Math.max(...all.map((row) => judged(parts, row, wanted).worth));
          expect(compose(bags, wanted)[0]?.worth).toBeCloseTo(best, 12);
        },
      ),
      { seed: 5, numRuns: 20 },
    );
  });

  it("looks at ten bags without leaving one out, each mix once", () => {
    const bags = mediumNames.slice(-10) as MediumName[];
    const found = compose(bags, aim(5, { scoops_n: 6 }), 50);
    expect(found).toHaveLength(50);
    const seen = new Set(
      found.map(({ recipe }) => {
        const all = recipe.reduce((sum, { scoops_n }) => sum + scoops_n, 0);
        return recipe.map(({ part, scoops_n }) => `${part} ${scoops_n / all}`).join();
      }),
    );
    expect(seen.size).toBe(50);
  });

  it("wants grains in a shallow tray and lets peat into a deep pot", () => {
    const bags: MediumName[] = ["peat and perlite 70:30", "pumice", "bark"];
    const share = (depth_cm: number) => {
      const { recipe = [] } = compose(bags, aim(depth_cm))[0] ?? {};
      const all = recipe.reduce((sum, { scoops_n }) => sum + scoops_n, 0);
      return (recipe.find(({ part }) => part === "peat and perlite 70:30")?.scoops_n ?? 0) / all;
    };
    expect(share(4)).toBeLessThan(share(20));
  });
});
