import { describe, expect, it } from "vitest";
import { seededGenerator } from "../chance/index.ts";
import {
  CAPACITY,
  chancePast,
  covarianceIndex,
  DEPLETION,
  DRAINED,
  type DryDown,
  dryDownDraws,
  equallyLikely,
  LEAF,
  meanOf,
  measured,
  mixed,
  notEmpty,
  OTHER_LOOKER,
  type PotNoise,
  type PotState,
  potState,
  predictPot,
  quantileOf,
  sdOf,
  sdOfSum,
  setAnew,
  shareUpTo,
  shifted,
  surfaceWet_frac,
  VARIANCE,
  withLook,
  withMoreDoubt,
  withPour,
  withSign,
} from "./pot-filter.ts";
import { dayLuck, drawKey, firstScore, secondScore } from "./pot-filter-luck.ts";
import { evaporationReduction } from "./surface-drying.ts";

const sure = (mean: number) => ({ mean, sd: 0 });
const pot = (
  depletion: { mean: number; sd: number },
  more: Partial<Record<"leaf" | "drained" | "capacity" | "eye", { mean: number; sd: number }>> = {},
): PotState =>
  potState([
    depletion,
    more.leaf ?? { mean: 0, sd: 0.4 },
    { mean: 0, sd: 0.3 },
    more.drained ?? { mean: 600, sd: 5 },
    { mean: 0.01, sd: 0.005 },
    more.capacity ?? { mean: 300, sd: 50 },
    more.eye ?? { mean: 0, sd: 0.11 },
  ]);

const QUIET: PotNoise = {
  day_frac: 0,
  leaf_per_rootDay: 0,
  surface_per_rootDay: 0,
  fade_d: Number.POSITIVE_INFINITY,
  drained_frac: 0,
  drainedFloor_g: 0,
  capacity_frac: 0,
  stressFrom_frac: 0.65,
};
const DAY = { dt_d: 1, leaf_g: 30, surface_g: 10, rain_g: 0 };

describe("predict", () => {
  it("adds the use to the depletion and the growth to the drained weight", () => {
    const { state, leafUse_g, surfaceUse_g } = predictPot(pot({ mean: 20, sd: 5 }), DAY, QUIET);
    expect(leafUse_g + surfaceUse_g).toBeCloseTo(40, 9);
    expect(meanOf(state, DEPLETION)).toBeCloseTo(60, 9);
    expect(meanOf(state, DRAINED)).toBeCloseTo(600 + 0.01 * 30, 9);
  });

  it("does nothing in no time", () => {
    const before = pot({ mean: 20, sd: 5 });
    expect(predictPot(before, { ...DAY, dt_d: 0 }, QUIET).state).toEqual(before);
  });

  it("two half days carry the daily error of one day, not more", () => {
    const noise = { ...QUIET, day_frac: 0.25 };
    const start = pot({ mean: 0, sd: 0.1 }, { leaf: sure(0) });
    const whole = predictPot(start, DAY, noise).state;
    const half = { dt_d: 0.5, leaf_g: 15, surface_g: 5, rain_g: 0 };
    const halves = predictPot(predictPot(start, half, noise).state, half, noise).state;
    expect(sdOf(halves, DEPLETION) / sdOf(whole, DEPLETION)).toBeCloseTo(1, 2);
  });

  it("doubt of the demand becomes doubt of the depletion, together with it", () => {
    const { state } = predictPot(pot({ mean: 0, sd: 0.1 }), DAY, QUIET);
    expect(state[covarianceIndex(DEPLETION, LEAF)]).toBeGreaterThan(0);
    expect(sdOf(state, DEPLETION)).toBeCloseTo(Math.hypot(30 * 0.4, 10 * 0.3, 0.1), 1);
  });

  it("leaves use less beyond the stress threshold, and nothing at lasting wilt", () => {
    const at = (share: number) =>
      predictPot(pot({ mean: 300 * share, sd: 1 }), { ...DAY, leaf_g: 3, surface_g: 0 }, QUIET).leafUse_g;
    expect(at(0.6)).toBeCloseTo(3, 9);
    expect(at(0.825)).toBeCloseTo(1.5, 1);
    expect(at(1)).toBe(0);
  });

  it("keeps what rain the pot can take and drains the rest", () => {
    const { state, rainKept_g, rainDrained_g } = predictPot(
      pot({ mean: 20, sd: 5 }),
      { ...DAY, rain_g: 100 },
      QUIET,
    );
    expect(rainKept_g).toBeCloseTo(60, 9);
    expect(rainDrained_g).toBeCloseTo(40, 9);
    expect(meanOf(state, DEPLETION)).toBe(0);
  });

  it("a learned factor fades to the model, slowly", () => {
    const { state } = predictPot(pot({ mean: 20, sd: 5 }, { leaf: { mean: 0.8, sd: 0.1 } }), DAY, {
      ...QUIET,
      fade_d: 200,
    });
    expect(meanOf(state, LEAF)).toBeCloseTo(0.8 * Math.exp(-1 / 200), 9);
  });

  it("survives nonsense", () => {
    const broken = pot({ mean: 20, sd: 5 }).map((value, i) => (i === 9 ? Number.NaN : value));
    const { state } = predictPot(broken, { ...DAY, leaf_g: 1e9 }, QUIET);
    for (const value of state) expect(Number.isFinite(value)).toBe(true);
    expect(meanOf(state, DEPLETION)).toBeLessThanOrEqual(1.2 * meanOf(state, CAPACITY));
  });
});

describe("measure", () => {
  it("is the scalar Kalman update", () => {
    const before = pot({ mean: 100, sd: 20 }, { drained: { mean: 600, sd: 15 } });
    const { state, innovation, innovationVariance } = measured(before, { weights: [-1, 0, 0, 1] }, 480, 5);
    expect(innovation).toBeCloseTo(-20, 9);
    expect(innovationVariance).toBeCloseTo(400 + 225 + 25, 9);
    expect(meanOf(state, DEPLETION)).toBeCloseTo(100 + (20 * 400) / 650, 6);
    expect(meanOf(state, DRAINED)).toBeCloseTo(600 - (20 * 225) / 650, 6);
    expect(sdOf(state, DEPLETION) ** 2).toBeCloseTo(400 - 400 ** 2 / 650, 6);
  });

  it("never widens a doubt, and moves a considered state not at all", () => {
    const before = predictPot(pot({ mean: 250, sd: 20 }), DAY, QUIET).state;
    const { state } = measured(before, { weights: [-1, 0, 0, 1], considered: [CAPACITY] }, 300, 2);
    for (let i = 0; i < 7; i++) expect(sdOf(state, i)).toBeLessThanOrEqual(sdOf(before, i) + 1e-9);
    expect(meanOf(state, CAPACITY)).toBe(meanOf(before, CAPACITY));
    expect(sdOf(state, CAPACITY)).toBe(sdOf(before, CAPACITY));
  });
});

describe("looks", () => {
  it("reproduces the printed moments of a yes and a no (checks/air-water.json 115, 116)", () => {
    const before = pot({ mean: 100, sd: 20 }, { capacity: { mean: 240, sd: 0.5 } });
    const meaning = { at_frac: 0.5, spread_frac: 0.125 };
    const yes = withSign(before, true, meaning);
    expect(meanOf(yes, DEPLETION)).toBeCloseTo(113.106, 1);
    expect(sdOf(yes, DEPLETION) ** 2).toBeCloseTo(308.89, 0);
    const no = withSign(before, false, meaning);
    expect(meanOf(no, DEPLETION)).toBeCloseTo(94.659, 1);
    expect(sdOf(no, DEPLETION) ** 2).toBeCloseTo(338.6, 0);
  });

  it("an early yes tells of the water and of the eye, as far as each is in doubt, and leaves the capacity as it was", () => {
    const before = pot({ mean: 90, sd: 4 });
    const after = withLook(before, true, { at_frac: 0.5, spread_frac: 0.17 });
    expect(meanOf(after, DEPLETION)).toBeGreaterThan(90);
    expect(meanOf(after, CAPACITY)).toBe(meanOf(before, CAPACITY));
    expect(sdOf(after, CAPACITY)).toBe(sdOf(before, CAPACITY));
    expect(after[6]).toBeLessThan(0);
  });

  it("a stranger's look says less", () => {
    const before = pot({ mean: 90, sd: 30 });
    const meaning = { at_frac: 0.5, spread_frac: 0.17 };
    const own = meanOf(withLook(before, true, meaning), DEPLETION);
    const strange = meanOf(withLook(before, true, meaning, OTHER_LOOKER), DEPLETION);
    expect(own).toBeGreaterThan(strange);
    expect(strange).toBeGreaterThan(90);
  });

  it("a plant that stands bounds the capacity from below", () => {
    const before = pot({ mean: 320, sd: 10 });
    expect(meanOf(notEmpty(before), CAPACITY)).toBeGreaterThan(310);
    const moist = pot({ mean: 50, sd: 10 });
    expect(notEmpty(moist)).toBe(moist);
  });

  it("chance past a threshold is a half at it", () => {
    expect(chancePast(pot({ mean: 150, sd: 20 }, { capacity: { mean: 300, sd: 1 } }), 0.5)).toBeCloseTo(
      0.5,
      6,
    );
  });
});

describe("pours", () => {
  it.each(["yes", "no", "unknown"] as const)("drained %s: poured = kept + drained", (drained) => {
    for (const volume_mL of [1, 60, 180, 400, 20_000]) {
      for (const mean of [0, 60, 180, 290]) {
        const before = pot({ mean, sd: 25 });
        const { kept_g, drained_g, putRight_g, state } = withPour(before, { volume_mL, drained });
        expect(kept_g + drained_g).toBeCloseTo(volume_mL, 6);
        expect(drained_g).toBeGreaterThanOrEqual(0);
        expect(meanOf(state, DEPLETION) - mean).toBeCloseTo(putRight_g - kept_g, 6);
      }
    }
  });

  it("drained fills the pot and forgets how it came to be dry", () => {
    const before = predictPot(pot({ mean: 100, sd: 20 }), DAY, QUIET).state;
    const { state } = withPour(before, { volume_mL: 180, drained: "yes" });
    expect(meanOf(state, DEPLETION)).toBeLessThan(0.08 * 300);
    expect(Math.abs(state[covarianceIndex(DEPLETION, LEAF)] as number)).toBeLessThan(1);
  });

  it("nothing ran out: at least the volume was missing", () => {
    const { state } = withPour(pot({ mean: 100, sd: 40 }), { volume_mL: 150, drained: "no" });
    expect(meanOf(state, DEPLETION)).toBeLessThan(60);
    expect(meanOf(state, DEPLETION)).toBeGreaterThan(0);
  });

  it("ran out after little: no more than that was missing", () => {
    const wet = withPour(pot({ mean: 150, sd: 40 }), { volume_mL: 40, drained: "yes", leachate_mL: 20 });
    const demand = predictPot(pot({ mean: 100, sd: 5 }), DAY, QUIET).state;
    const told = withPour(demand, { volume_mL: 60, drained: "yes" });
    expect(wet.kept_g).toBeLessThanOrEqual(40);
    // The pot was fuller than thought, so the leaves use less than thought.
    expect(meanOf(told.state, LEAF)).toBeLessThan(0);
  });

  it("a very dry pot may have let it run past, unless it was soaked", () => {
    const dry = pot({ mean: 285, sd: 10 });
    const poured = withPour(dry, { volume_mL: 300, drained: "yes" }).state;
    const soaked = withPour(dry, { volume_mL: 300, drained: "yes", soaked: true }).state;
    expect(sdOf(poured, DEPLETION)).toBeGreaterThan(2.5 * sdOf(soaked, DEPLETION));
    expect(meanOf(poured, DEPLETION)).toBeGreaterThan(meanOf(soaked, DEPLETION));
  });
});

describe("the state", () => {
  it("a mixture has the mean of both and the spread between them", () => {
    const one = pot({ mean: 100, sd: 10 });
    const other = pot({ mean: 200, sd: 10 });
    const half = mixed(one, other, 0.5);
    expect(meanOf(half, DEPLETION)).toBeCloseTo(150, 9);
    expect(sdOf(half, DEPLETION)).toBeCloseTo(Math.hypot(10, 50), 9);
    expect(mixed(one, other, 0)).toEqual(one);
  });

  it("setting anew forgets what was in common; doubt grows up to its bound; shifts shift", () => {
    const before = predictPot(pot({ mean: 100, sd: 20 }), DAY, QUIET).state;
    expect(setAnew(before, DEPLETION, { mean: 5, sd: 2 })[covarianceIndex(DEPLETION, LEAF)]).toBe(0);
    expect(sdOf(withMoreDoubt(before, LEAF, 0.35, 0.45), LEAF)).toBeCloseTo(0.45, 6);
    expect(sdOf(withMoreDoubt(before, LEAF, 0.35, 0.1), LEAF)).toBeCloseTo(sdOf(before, LEAF), 9);
    expect(meanOf(shifted(before, DRAINED, -12), DRAINED)).toBeCloseTo(meanOf(before, DRAINED) - 12, 9);
    expect(sdOfSum(before, [1])).toBeCloseTo(sdOf(before, DEPLETION), 9);
    expect(VARIANCE).toHaveLength(7);
  });
});

const steady = (state: PotState, more: Partial<DryDown> = {}): DryDown => ({
  state,
  days: [{ dt_d: 1, leaf_g: 20, surface_g: 0, rain_g: 0, sd_frac: 0 }],
  threshold_frac: 0.5,
  wilt_frac: 0.98,
  thresholdSd: 0,
  stressFrom_frac: 0.65,
  leaf_per_rootDay: 0,
  surface: {
    lost_mm: 0,
    layer: { readilyEvaporable_mm: 6, totalEvaporable_mm: 15 },
    rim_m2: 0.011,
    rootShare_frac: 0.25,
  },
  draws_n: 4000,
  fan: { draws_n: 200, days_n: 14 },
  horizon_d: 60,
  chance: seededGenerator("test"),
  ...more,
});

describe("dry-down", () => {
  // 60 g left, 20 g a day known to 20 %: checks/air-water.json 117.
  const state = pot({ mean: 40, sd: 0.1 }, { leaf: { mean: 0, sd: 0.2 }, capacity: { mean: 200, sd: 0.5 } });

  it("agrees with the closed form of a steady demand", () => {
    const { dry_d } = dryDownDraws(steady(state));
    expect(quantileOf(dry_d, 0.5)).toBeCloseTo(3, 1);
    expect(quantileOf(dry_d, 0.1)).toBeCloseTo(2.32, 1);
    expect(quantileOf(dry_d, 0.9)).toBeCloseTo(3.88, 1);
    expect(shareUpTo(dry_d, 2)).toBeCloseTo(0.0213, 1);
  });

  it("gives the same dates from the same seed and others from another", () => {
    const first = equallyLikely(dryDownDraws(steady(state, { chance: seededGenerator("a") })).dry_d);
    expect(equallyLikely(dryDownDraws(steady(state, { chance: seededGenerator("a") })).dry_d)).toEqual(first);
    expect(equallyLikely(dryDownDraws(steady(state, { chance: seededGenerator("b") })).dry_d)).not.toEqual(
      first,
    );
    expect(first).toHaveLength(20);
  });

  it("every doubt widens the range: threshold, day, factor, capacity", () => {
    const width = (dryDown: DryDown) => {
      const { dry_d } = dryDownDraws(dryDown);
      return quantileOf(dry_d, 0.9) - quantileOf(dry_d, 0.1);
    };
    const narrow = width(steady(state));
    expect(width(steady(state, { thresholdSd: 0.2 }))).toBeGreaterThan(1.2 * narrow);
    const noisy = [{ dt_d: 1, leaf_g: 20, surface_g: 0, rain_g: 0, sd_frac: 0.5 }];
    expect(width(steady(state, { days: noisy }))).toBeGreaterThan(1.2 * narrow);
    expect(width(steady(state, { leaf_per_rootDay: 0.2 }))).toBeGreaterThan(1.2 * narrow);
    expect(width(steady(withMoreDoubt(state, CAPACITY, 40)))).toBeGreaterThan(1.2 * narrow);
  });

  it("a pot past its threshold wants water now; one that does not dry is later than the horizon", () => {
    const past = dryDownDraws(steady(setAnew(state, DEPLETION, { mean: 190, sd: 1 })));
    expect(quantileOf(past.dry_d, 1)).toBe(0);
    const still = [{ dt_d: 1, leaf_g: 0, surface_g: 0, rain_g: 0, sd_frac: 0 }];
    expect(quantileOf(dryDownDraws(steady(state, { days: still })).dry_d, 0)).toBe(60);
  });

  it("that may have been watered begins so in that share of its draws, and in no other", () => {
    const dry = setAnew(state, DEPLETION, { mean: 190, sd: 1 });
    const wet = setAnew(state, DEPLETION, { mean: 10, sd: 1 });
    const { dry_d, wiltedBy_frac } = dryDownDraws(
      steady(dry, { otherwise: { state: wet, lost_mm: 0, chance_frac: 0.3 } }),
    );
    expect(shareUpTo(dry_d, 0)).toBeCloseTo(0.7, 2);
    expect(wiltedBy_frac(2)).toBeLessThanOrEqual(0.7);
    const alone = dryDownDraws(steady(wet)).dry_d;
    expect(quantileOf(dry_d, 0.85)).toBeCloseTo(quantileOf(alone, 0.5), 0);
  });

  it("wilts after it wants water, and the fan only falls", () => {
    const days = Array.from({ length: 14 }, () => ({
      dt_d: 1,
      leaf_g: 20,
      surface_g: 4,
      rain_g: 0,
      sd_frac: 0.2,
    }));
    const { dry_d, wilt_d, held_g } = dryDownDraws(steady(state, { days }));
    for (const p of [0.1, 0.5, 0.9]) expect(quantileOf(wilt_d, p)).toBeGreaterThan(quantileOf(dry_d, p));
    for (let day = 1; day < held_g.length; day++) {
      expect(quantileOf(held_g[day] as Float64Array, 0.5)).toBeLessThanOrEqual(
        quantileOf(held_g[day - 1] as Float64Array, 0.5),
      );
    }
  });

  it("says the same of wilt whenever and however it is asked, and of dryness whether or not it was", () => {
    const days = [{ dt_d: 0.6, leaf_g: 14, surface_g: 3, rain_g: 0, sd_frac: 0.2 }];
    const asked = () => dryDownDraws(steady(state, { days, leaf_per_rootDay: 0.05 }));
    const [first, later] = [asked(), asked()];
    const dry_d = [...first.dry_d];
    const { wilt_d } = first;
    for (const wait_d of [3, 5, 7, 6, 12, 30]) {
      expect(later.wiltedBy_frac(wait_d)).toBe(shareUpTo(wilt_d, wait_d));
      expect(later.wiltedBy_frac(wait_d)).toBeLessThanOrEqual(shareUpTo(later.dry_d, wait_d));
    }
    expect(first.wiltedBy_frac(7)).toBe(later.wiltedBy_frac(7));
    expect([...later.wilt_d]).toEqual([...wilt_d]);
    expect([...later.dry_d]).toEqual(dry_d);
    expect(later.held_g).toEqual(first.held_g);
    expect(shareUpTo(wilt_d, 12)).toBeGreaterThan(0.1);
  });

  it("draws the luck of days as independent normal scores", () => {
    const scores: number[] = [];
    let together = 0;
    let nextDay = 0;
    for (let draw = 0; draw < 200; draw++) {
      for (let day = 0; day < 50; day++) {
        const key = drawKey(12_345, draw);
        const first = firstScore(dayLuck(key, day));
        const second = secondScore(dayLuck(key, day));
        scores.push(first, second);
        together += first * second;
        nextDay += first * firstScore(dayLuck(key, day + 1));
      }
    }
    scores.sort((a, b) => a - b);
    const n = scores.length;
    expect(scores.reduce((sum, score) => sum + score, 0) / n).toBeCloseTo(0, 1);
    expect(scores.reduce((sum, score) => sum + score ** 2, 0) / n).toBeCloseTo(1, 1);
    expect(scores[Math.floor(0.1 * n)]).toBeCloseTo(-1.2816, 1);
    expect(scores[Math.floor(0.975 * n)]).toBeCloseTo(1.96, 1);
    expect(Math.abs(together / 10_000)).toBeLessThan(0.04);
    expect(Math.abs(nextDay / 10_000)).toBeLessThan(0.04);
  });

  it("dries its surface as the checked function says", () => {
    const layer = { readilyEvaporable_mm: 8, totalEvaporable_mm: 18 };
    for (const lost of [0, 8, 13, 18, 40]) {
      expect(surfaceWet_frac(lost, layer)).toBeCloseTo(
        evaporationReduction({ ...layer, evaporated_mm: lost }),
        12,
      );
    }
  });
});
