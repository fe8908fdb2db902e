import loadHighs from "highs";
import { describe, expect, it } from "vitest";
import {
  bestLinearMix,
  bestMix,
  isMade,
  type Mix,
  type MixProblem,
  relaxedMix,
  shortfalls,
} from "./index.ts";
import { conductivityAt_mS_cm, isAllowed, misfitAt, TIE } from "./mix-measure.ts";
import { compiledMix } from "./mix-problem.ts";

/** Every mix of at most so many products tried: what an exact search must give. */
function byTryingAll(problem: MixProblem): readonly number[] | undefined {
  const mix = compiledMix(problem);
  const steps = new Int32Array(mix.products.length);
  const kept: { misfit: number; used: number; steps: number[] }[] = [];
  const go = (place: number, used: number) => {
    if (place === steps.length) {
      if (isAllowed(mix, steps)) kept.push({ misfit: misfitAt(mix, steps), used, steps: [...steps] });
      return;
    }
    go(place + 1, used);
    if (used < (problem.products_n ?? 4))
      for (let step = mix.least[place] as number; step <= (mix.most[place] as number); step++) {
        steps[place] = step;
        go(place + 1, used + 1);
      }
    steps[place] = 0;
  };
  go(0, 0);
  const least = Math.min(...kept.map(({ misfit }) => misfit));
  const ties = kept.filter(({ misfit }) => misfit <= least + TIE);
  const few = Math.min(...ties.map(({ used }) => used));
  const lean = ties
    .filter(({ used }) => used === few)
    .map((each) => ({ ...each, carries: conductivityAt_mS_cm(mix, each.steps) }));
  const lowest = Math.min(...lean.map(({ carries }) => carries));
  return lean
    .filter(({ carries }) => carries <= lowest + TIE)
    .map((each) => each.steps)
    .toSorted((one, other) => {
      const place = one.findIndex((step, index) => step !== other[index]);
      return place < 0 ? 0 : (one[place] as number) - (other[place] as number);
    })[0];
}

/** A stream of even numbers from 0 to 1, the same for a seed. */
function evenNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296;
    return state / 4_294_967_296;
  };
}

const pick = <Each>(from: readonly Each[], at: number): Each => from[Math.floor(at * from.length)] as Each;

/** A small problem by chance: bands and limits are there or not. */
function chanceProblem(next: () => number, products = 4, most = 6): MixProblem {
  const hasBands = next() < 0.5;
  return {
    products: Array.from({ length: products }, (_, place) => ({
      id: `product ${place}`,
      contents_mg: Object.fromEntries(
        (["NO3N", "NH4N", "ureaN", "P", "K", "Ca", "Mg", "S", "Na", "Cl"] as const).flatMap((of) =>
          next() < 0.4 ? [[of, Math.round(next() * 150)]] : [],
        ),
      ),
      step: pick([0.1, 0.5, 1], next()),
      most_n: most,
      least_n: pick([1, 1, 2], next()),
    })),
    volume_L: pick([1, 2, 4], next()),
    water_mg_L: { Ca: 30 * next(), Mg: 10 * next(), Na: 10, Cl: 10, HCO3: 90 },
    aims: (["N", "P", "K", "Ca", "Mg"] as const).map((of) => {
      const aim_mg_L = of === "P" ? 15 : 50 + next() * 100;
      const band = hasBands ? { low_mg_L: aim_mg_L * 0.7, high_mg_L: aim_mg_L * 1.4 } : {};
      return { of, aim_mg_L, weight: pick([1, 2, 3], next()), ...band };
    }),
    limits: {
      ...(next() < 0.5 ? { ammoniumShare_frac: 0.1 + next() * 0.4 } : {}),
      ...(next() < 0.5 ? { conductivity_mS_cm: 0.6 + next() * 1.5 } : {}),
      ...(next() < 0.3 ? { Cl_mg_L: 30 } : {}),
      ...(next() < 0.3 ? { potassiumToCalcium: 1.8 } : {}),
    },
    products_n: 3,
  };
}

const best = (problem: MixProblem): Mix => {
  const table = bestMix(problem);
  if (!isMade(table)) throw new Error(`water breaks ${table.broken.join(", ")}`);
  return table.byProducts.at(-1) as Mix;
};
const stepsOf = (problem: MixProblem, mix: Mix): readonly number[] =>
  compiledMix(problem).products.map(({ id }) => mix.doses.find((dose) => dose.id === id)?.steps_n ?? 0);
const feasible = (seed: number, count: number, products?: number, most?: number): MixProblem[] => {
  const next = evenNumbers(seed);
  const found: MixProblem[] = [];
  while (found.length < count) {
    const problem = chanceProblem(next, products, most);
    if (isMade(bestMix({ ...problem, products_n: 0 }))) found.push(problem);
  }
  return found;
};

describe("the best mix of whole steps", () => {
  it("is the one that trying all finds, ties and all, on 500 small problems", () => {
    for (const problem of feasible(12_345, 500))
      expect(stepsOf(problem, best(problem))).toEqual(byTryingAll(problem));
  });

  it("is no better than doses of any fraction", () => {
    for (const problem of feasible(7, 40)) {
      const { conductivity_mS_cm: _, ...limits } = problem.limits ?? {};
      const relaxed = relaxedMix({ ...problem, limits });
      expect(relaxed.residual).toBeLessThan(1e-5);
      expect(relaxed.misfit).toBeLessThanOrEqual(best(problem).misfit + 1e-9);
    }
  });

  it("is the same for twice the volume and twice the steps", () => {
    for (const problem of feasible(3, 40)) {
      const twice = {
        ...problem,
        volume_L: 2 * problem.volume_L,
        products: problem.products.map((product) => ({ ...product, step: 2 * product.step })),
      };
      expect(stepsOf(twice, best(twice))).toEqual(stepsOf(problem, best(problem)));
      expect(best(twice).misfit).toBeCloseTo(best(problem).misfit, 12);
    }
  });

  it("does not change with a product that brings nothing, nor with the order of the shelf", () => {
    for (const problem of feasible(5, 40)) {
      const mix = best(problem);
      const useless = { id: "product 9", contents_mg: {}, step: 1, most_n: 5 };
      expect(best({ ...problem, products: [...problem.products, useless] }).doses).toEqual(mix.doses);
      expect(best({ ...problem, products: problem.products.toReversed() }).doses).toEqual(mix.doses);
    }
  });

  it("never gets better under a tighter limit", () => {
    for (const problem of feasible(11, 40)) {
      const loose = best({ ...problem, limits: { ...problem.limits, Na_mg_L: 60 } }).misfit;
      const tight = best({ ...problem, limits: { ...problem.limits, Na_mg_L: 20 } }).misfit;
      expect(tight).toBeGreaterThanOrEqual(loose - 1e-9);
    }
  });

  it("is refused when the water alone breaks a limit that no product undoes, with its name", () => {
    const [problem] = feasible(1, 1) as [MixProblem];
    const salty = { ...problem, water_mg_L: { ...problem.water_mg_L, Na: 90 }, limits: { Na_mg_L: 50 } };
    expect(bestMix(salty)).toEqual({ broken: ["Na"] });
  });

  it("says what no mix can reach, and nothing where one can", () => {
    const [problem] = feasible(2, 1) as [MixProblem];
    const bottle = { id: "potash", contents_mg: { K: 100 }, step: 0.1, most_n: 100 };
    const aims = [
      { of: "K", aim_mg_L: 100, weight: 1 },
      { of: "Ca", aim_mg_L: 100, weight: 1 },
    ] as const;
    const only = { ...problem, products: [bottle], water_mg_L: { Ca: 25 }, aims, limits: {} };
    expect(shortfalls(only)).toEqual([{ name: "Ca", kind: "too little", by_frac: expect.closeTo(0.75, 6) }]);
    expect(shortfalls({ ...only, aims: [aims[0]] })).toEqual([]);
  });
});

/** The same problem in the language of a mixed-integer program. */
function asProgram(problem: MixProblem): string {
  const mix = compiledMix(problem);
  const sum = (steps: Float64Array) =>
    [...steps].map((factor, place) => `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} k${place}`).join(" ");
  const rows = [
    ...mix.aims.flatMap((aim, place) => [
      `over${place}: ${sum(aim.steps)} - d${place} <= ${aim.high - aim.base}`,
      `under${place}: ${sum(aim.steps)} + d${place} >= ${aim.low - aim.base}`,
    ]),
    ...mix.limits.map((row, place) => `limit${place}: ${sum(row.steps)} <= ${-row.base}`),
    ...mix.products.map((_, place) => `use${place}: k${place} - ${mix.most[place]} y${place} <= 0`),
    `few: ${mix.products.map((_, place) => `y${place}`).join(" + ")} <= ${problem.products_n}`,
  ];
  return [
    "Minimize",
    `miss: ${mix.aims.map((aim, place) => `${aim.linearWeight} d${place}`).join(" + ")}`,
    "Subject To",
    ...rows,
    "Bounds",
    ...mix.products.map((_, place) => `0 <= k${place} <= ${mix.most[place]}`),
    "General",
    mix.products.map((_, place) => `k${place}`).join(" "),
    "Binary",
    mix.products.map((_, place) => `y${place}`).join(" "),
    "End",
  ].join("\n");
}

describe("the linear variant", () => {
  it("agrees with an open mixed-integer solver", async () => {
    const highs = await loadHighs();
    for (const problem of feasible(21, 12, 5, 20)) {
      const { conductivity_mS_cm: _, ...limits } = problem.limits ?? {};
      const linear = { ...problem, limits };
      const solved = highs.solve(asProgram(linear), { mip_rel_gap: 0, mip_abs_gap: 1e-9 });
      expect(solved.Status).toBe("Optimal");
      expect(bestLinearMix(linear)?.misfit).toBeCloseTo(solved.ObjectiveValue, 5);
    }
  });
});
