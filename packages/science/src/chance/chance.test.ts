import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import * as chance from "./index.ts";

describe("normal distribution", () => {
  it("has the values of the tables", () => {
    // Textbook values to 10 digits or more, from memory.
    expect(chance.normalProbability(0)).toBe(0.5);
    expect(chance.normalProbability(1)).toBeCloseTo(0.841344746068543, 14);
    expect(chance.normalProbability(-2)).toBeCloseTo(0.0227501319481792, 15);
    expect(chance.normalProbability(-6) / 9.865876450376946e-10).toBeCloseTo(1, 12);
    expect(chance.normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 14);
  });
  it("is the integral of its density", () => {
    for (const z of [-5.9, -3, -0.66, -0.3, 0.2, 0.663, 2.5]) {
      const h = 1e-4;
      const difference = (chance.normalProbability(z + h) - chance.normalProbability(z - h)) / (2 * h);
      expect(difference / chance.normalDensity(z)).toBeCloseTo(1, 6);
    }
  });
  it("is undone by its quantile, far into the tails", () => {
    for (const p of [1e-200, 1e-30, 1e-9, 0.001, 0.07, 0.075, 0.3, 0.5, 0.93, 0.999, 1 - 1e-9]) {
      expect(chance.normalProbability(chance.normalQuantile(p)) / p).toBeCloseTo(1, 9);
    }
    expect(() => chance.normalQuantile(0)).toThrow(QuantityError);
    expect(() => chance.normalQuantile(1)).toThrow(QuantityError);
  });
  it("has a tail ratio that neither jumps nor underflows", () => {
    for (const z of [-0.9999999, -1, -1.0000001, -5, -30]) {
      if (z > -8) {
        expect(chance.inverseMillsRatio(z)).toBeCloseTo(
          chance.normalDensity(z) / chance.normalProbability(z),
          10,
        );
      }
    }
    expect(chance.inverseMillsRatio(-300)).toBeCloseTo(300 + 1 / 300, 4);
  });
});

describe("a look", () => {
  const belief = { mean: 100, variance: 400, threshold: 120, spread: 30 };
  it("moves the mean towards the answer and always narrows", () => {
    const yes = chance.probitUpdate({ ...belief, yes: true });
    const no = chance.probitUpdate({ ...belief, yes: false });
    expect(yes.mean).toBeGreaterThan(100);
    expect(no.mean).toBeLessThan(100);
    expect(yes.variance).toBeLessThan(400);
    expect(no.variance).toBeLessThan(400);
    expect(yes.probability + no.probability).toBeCloseTo(1, 14);
    // What will be learned averages out to what is believed now.
    expect(yes.probability * yes.mean + no.probability * no.mean).toBeCloseTo(100, 9);
  });
  it("agrees with brute-force integration", () => {
    let weight = 0;
    let first = 0;
    let second = 0;
    for (let x = -100; x <= 300; x += 0.05) {
      const w = chance.normalDensity((x - 100) / 20) * chance.normalProbability((x - 120) / 30);
      weight += w;
      first += w * x;
      second += w * x * x;
    }
    const yes = chance.probitUpdate({ ...belief, yes: true });
    expect(yes.mean).toBeCloseTo(first / weight, 6);
    expect(yes.variance).toBeCloseTo(second / weight - (first / weight) ** 2, 4);
  });
  it("survives an answer that was all but impossible", () => {
    const odd = chance.probitUpdate({ mean: 0, variance: 1, threshold: 4000, spread: 1, yes: true });
    expect(Number.isFinite(odd.mean)).toBe(true);
    expect(odd.mean).toBeGreaterThan(1000);
    expect(odd.variance).toBeGreaterThanOrEqual(0);
  });
});

describe("a reading", () => {
  const belief = {
    mean: [66, 3, 850],
    covariance: [
      [75, 1, 0.5],
      [1, 0.05, 0],
      [0.5, 0, 9],
    ],
  };
  const weights = [-1, 0, 1];
  it("narrows every variance and keeps the covariance symmetric", () => {
    const { belief: after, accepted } = chance.linearUpdate({ belief, weights, value: 785, variance: 4 });
    expect(accepted).toBe(true);
    for (let i = 0; i < 3; i += 1) {
      expect(after.covariance[i]?.[i]).toBeLessThanOrEqual(belief.covariance[i]?.[i] ?? 0);
      for (let j = 0; j < 3; j += 1) {
        expect(after.covariance[i]?.[j]).toBeCloseTo(after.covariance[j]?.[i] ?? NaN, 12);
      }
    }
  });
  it("is set aside beyond the gate, and only beyond it", () => {
    const first = chance.linearUpdate({ belief, weights, value: 784, variance: 4 });
    const sd = Math.sqrt(first.innovationVariance);
    const inside = chance.linearUpdate({ belief, weights, value: 784 + 3.99 * sd, variance: 4 });
    const outside = chance.linearUpdate({ belief, weights, value: 784 + 4.01 * sd, variance: 4 });
    expect(inside.accepted).toBe(true);
    expect(outside.accepted).toBe(false);
    expect(outside.belief).toBe(belief);
  });
  it("demands sizes that fit", () => {
    expect(() => chance.linearUpdate({ belief, weights: [1], value: 1, variance: 1 })).toThrow(QuantityError);
    expect(() => chance.linearUpdate({ belief, weights, value: Number.NaN, variance: 1 })).toThrow(
      QuantityError,
    );
  });
  it("teaches the other quantities just what a reading of one would", () => {
    const direct = chance.linearUpdate({ belief, weights: [1, 0, 0], value: 70, variance: 30 }).belief;
    const carried = chance.carryToOthers({
      belief,
      index_n: 0,
      learnedMean: direct.mean[0] ?? NaN,
      learnedVariance: direct.covariance[0]?.[0] ?? NaN,
    });
    for (let i = 0; i < 3; i += 1) {
      expect(carried.mean[i]).toBeCloseTo(direct.mean[i] ?? NaN, 10);
      for (let j = 0; j < 3; j += 1) {
        expect(carried.covariance[i]?.[j]).toBeCloseTo(direct.covariance[i]?.[j] ?? NaN, 10);
      }
    }
  });
});

describe("mixtures", () => {
  it("are as wide as their parts lie apart", () => {
    expect(chance.momentMatch([{ weight: 2, mean: 5, variance: 3 }])).toEqual({ mean: 5, variance: 3 });
    const two = chance.momentMatch([
      { weight: 0.25, mean: 0, variance: 1 },
      { weight: 0.75, mean: 8, variance: 2 },
    ]);
    expect(two.mean).toBe(6);
    expect(two.variance).toBeCloseTo(1.75 + 0.25 * 0.75 * 64, 12);
    expect(() => chance.momentMatch([{ weight: 0, mean: 1, variance: 1 }])).toThrow(QuantityError);
  });
});

describe("generator", () => {
  it("repeats itself by seed and not otherwise", () => {
    const draw = (seed: string) => {
      const { uniform } = chance.seededGenerator(seed);
      return Array.from({ length: 5 }, uniform);
    };
    expect(draw("pot 127, 2026-11-25")).toEqual(draw("pot 127, 2026-11-25"));
    expect(draw("pot 127, 2026-11-25")).not.toEqual(draw("pot 127, 2026-11-26"));
    expect(draw("")).not.toEqual(draw(" "));
  });
  it("draws with the moments it promises", () => {
    const g = chance.seededGenerator("moments");
    const n = 40_000;
    let sum = 0;
    let squares = 0;
    let uniforms = 0;
    let heavy = 0;
    const bins = new Array<number>(10).fill(0);
    for (let i = 0; i < n; i += 1) {
      const z = g.normal();
      sum += z;
      squares += z * z;
      const u = g.uniform();
      uniforms += u;
      const bin = g.index(10);
      bins[bin] = (bins[bin] ?? 0) + 1;
      heavy += g.studentT(5) ** 2;
    }
    expect(Math.abs(sum / n)).toBeLessThan(0.02);
    expect(squares / n).toBeCloseTo(1, 1);
    expect(uniforms / n).toBeCloseTo(0.5, 2);
    expect(heavy / n).toBeCloseTo(5 / 3, 0);
    for (const count of bins) expect(Math.abs(count - n / 10)).toBeLessThan(5 * Math.sqrt(n / 10));
  });
  it("gives unlike streams for neighbouring seeds", () => {
    const firsts = Array.from({ length: 2000 }, (_, i) => chance.seededGenerator(`pot ${i}`).uniform());
    expect(chance.sampleQuantile({ sample: firsts, probability: 0.5 })).toBeCloseTo(0.5, 1);
    expect(new Set(firsts).size).toBe(2000);
  });
});

describe("samples", () => {
  it("have quantiles between their ends, in order", () => {
    const sample = [5, 1, 4];
    expect(chance.sampleQuantiles({ sample, probabilities: [0, 0.25, 0.5, 1] })).toEqual([1, 2.5, 4, 5]);
    expect(sample).toEqual([5, 1, 4]);
    expect(() => chance.sampleQuantile({ sample: [], probability: 0.5 })).toThrow(QuantityError);
    expect(() => chance.sampleQuantile({ sample: [1, Number.NaN], probability: 0.5 })).toThrow(QuantityError);
  });
  it("are redrawn in blocks that stay together", () => {
    const { uniform } = chance.seededGenerator("blocks");
    const indices = chance.blockBootstrapIndices({ items_n: 100, block_n: 10, uniform });
    expect(indices).toHaveLength(100);
    for (let i = 1; i < 100; i += 1) {
      if (i % 10 !== 0) expect(indices[i]).toBe(((indices[i - 1] ?? 0) + 1) % 100);
    }
  });
  it("show how sure a mean is by redrawing groups", () => {
    const { uniform, normal } = chance.seededGenerator("groups");
    const groups = Array.from({ length: 50 }, () => {
      const shared = normal();
      return Array.from({ length: 20 }, () => shared + 0.1 * normal());
    });
    const { mean, low, high } = chance.groupBootstrapMean({ groups, redraws_n: 500, tail: 0.05, uniform });
    expect(low).toBeLessThan(mean);
    expect(high).toBeGreaterThan(mean);
    // Fifty groups that each err as one: the 90 % range is near 2 × 1.64 / √50, not near the 0.1 of 1000 values.
    expect(high - low).toBeGreaterThan(0.3);
  });
});

describe("scores", () => {
  it("of a sample approach those of the distribution it was drawn from", () => {
    const sample = Array.from({ length: 2000 }, (_, i) => 3 + 0.6 * chance.normalQuantile((i + 0.5) / 2000));
    const exact = chance.crpsOfNormal({ mean: 3, sd: 0.6, observed: 4 });
    expect(chance.crpsOfSample({ sample, observed: 4 })).toBeCloseTo(exact, 3);
  });
  it("of a bare point are its absolute error", () => {
    expect(chance.crpsOfNormal({ mean: 3, sd: 0, observed: 5 })).toBe(2);
    expect(chance.crpsOfSample({ sample: [3], observed: 5 })).toBe(2);
    expect(chance.crpsOfNormal({ mean: 0, sd: 1e-9, observed: 5 })).toBeCloseTo(5, 6);
  });
  it("of a cut event do not look beyond the cut", () => {
    const early = chance.crpsOfSampleCut({ sample: [6, 7], observed: 5, cut: 5 });
    const late = chance.crpsOfSampleCut({ sample: [60, 70], observed: 5, cut: 5 });
    expect(early).toBe(late);
    expect(chance.crpsOfSampleCut({ sample: [1, 2], observed: 5, cut: 5 })).toBeGreaterThan(0);
  });
  it("count ties by the draw and ends as held", () => {
    expect(chance.probabilityTransform({ sample: [1, 2, 2, 3], observed: 2, tie: 0 })).toBe(0.25);
    expect(chance.probabilityTransform({ sample: [1, 2, 2, 3], observed: 2, tie: 1 })).toBe(0.75);
    expect(chance.coverage_frac({ low: [1], high: [2], observed: [2] })).toBe(1);
    expect(chance.pinballLoss({ forecast: 5, observed: 3, probability: 0.2 })).toBeCloseTo(1.6, 12);
    expect(() => chance.coverage_frac({ low: [], high: [2], observed: [2] })).toThrow(QuantityError);
  });
});
