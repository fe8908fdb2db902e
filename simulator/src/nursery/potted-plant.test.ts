import { describe, expect, test } from "vitest";
import { drawRun } from "../skill/draw-run.ts";
import { emptyAir } from "./bench-air.ts";
import { DAY_ms, HOUR_ms } from "./calendar.ts";
import { chanceOf } from "./chance.ts";
import { firstTimeAt } from "./counterfactual.ts";
import { runNursery } from "./nursery.ts";
import {
  advance,
  copyOf,
  fullWeight_g,
  type Pot,
  potAvailable_g,
  potDepletion_g,
  water,
  weight_g,
} from "./potted-plant.ts";

const drawn = (seed: number) => drawRun(0, 6, 60, 40, chanceOf(`pots ${seed}`));

/** Water that the ledger cannot account for, g. */
function ledgerGap_g(before: Pot, pot: Pot): number {
  const held = (one: Pot) => one.surface_g + one.root_g + one.saucer_g;
  return held(before) + pot.poured_g - pot.evaporated_g - pot.drunk_g - pot.lost_g - held(pot);
}

describe("a pot over two months of people, weather, cuts, moves and sips", () => {
  const run = drawn(1);
  const before = run.tended.map(({ pot }) => copyOf(pot));
  runNursery(run.benches, run.tended, run.visits, [], chanceOf("people"));

  test("closes its water ledger to 1e-9", () => {
    for (const [i, { pot }] of run.tended.entries()) {
      expect(pot.poured_g).toBeGreaterThan(100);
      expect(Math.abs(ledgerGap_g(before[i] as Pot, pot)) / pot.poured_g).toBeLessThan(1e-9);
    }
  });

  test("and the ledger sees a planted leak of a thousandth of the root zone", () => {
    const pot = copyOf(run.tended[0]?.pot as Pot);
    pot.root_g *= 0.999;
    expect(Math.abs(ledgerGap_g(before[0] as Pot, pot)) / pot.poured_g).toBeGreaterThan(1e-6);
  });
});

describe("a pot", () => {
  test("only loses weight by itself but for growth, and what it lost is what was evaporated and drunk", () => {
    const { benches, tended } = drawn(2);
    const pot = { ...copyOf(tended[0]?.pot as Pot), happenings: [], saucer_g: 0 };
    const start = copyOf(pot);
    advance(pot, pot.at_ms + 5 * DAY_ms, benches);
    const lost_g = weight_g(start) - weight_g(pot) + (pot.fresh_g - start.fresh_g);
    expect(lost_g).toBeGreaterThan(1);
    expect(lost_g).toBeCloseTo(pot.evaporated_g + pot.drunk_g, 9);
    expect(fullWeight_g(pot) - weight_g(pot)).toBeCloseTo(potDepletion_g(pot), 9);
  });

  test("outdoors rain wets it and as much more rain as it holds runs out", () => {
    const { benches, tended } = drawn(3);
    const base = benches[0];
    const hours = emptyAir(base?.from_ms ?? 0, 48);
    hours.air_C.fill(12);
    hours.vapour_kPa.fill(1.38);
    hours.wind_m_s.fill(0.2);
    hours.rain_mm_h.fill(4);
    const rain = {
      ...hours,
      outdoors: true,
      pressure_kPa: 101,
      whims: new Float64Array(1).fill(1),
      throughfall_frac: 0.7,
    };
    const pot = { ...copyOf(tended[0]?.pot as Pot), bench: 0, happenings: [] };
    const start_g = potDepletion_g(pot);
    advance(pot, pot.at_ms + 48 * HOUR_ms, [rain]);
    expect(potDepletion_g(pot)).toBeLessThan(start_g);
    expect(pot.lost_g + pot.saucer_g).toBeGreaterThan(0);
  });

  test("stepped by the hour or by odd minutes uses the same to a hundredth", () => {
    const { benches, tended } = drawn(4);
    const still = { ...copyOf(tended[1]?.pot as Pot), happenings: [] };
    const coarse = copyOf(still);
    const fine = copyOf(still);
    const end_ms = still.at_ms + 4 * DAY_ms;
    advance(coarse, end_ms, benches);
    for (let at_ms = still.at_ms; at_ms < end_ms; at_ms += 7 * 60_000)
      advance(fine, Math.min(end_ms, at_ms + 7 * 60_000), benches);
    expect(fine.drunk_g / coarse.drunk_g).toBeCloseTo(1, 2);
  });

  test("a soaked pot weighs its full weight", () => {
    const { tended } = drawn(5);
    const pot = copyOf(tended[2]?.pot as Pot);
    for (let i = 0; i < 8; i++) water(pot, potAvailable_g(pot) * 3);
    expect(weight_g(pot)).toBeCloseTo(fullWeight_g(pot), 6);
  });
});

describe("the date without further watering", () => {
  test("agrees with walking the pot on minute by minute", () => {
    const { benches, tended } = drawn(6);
    for (const { pot } of tended) {
      const from = copyOf(pot);
      water(from, potAvailable_g(from) * 1.5);
      const truth_ms = firstTimeAt(from, 0.55, benches, 40);
      const brute = copyOf(from);
      const asked_g = () => potDepletion_g(brute) - 0.55 * potAvailable_g(brute);
      while (asked_g() < 0 && brute.at_ms < from.at_ms + 40 * DAY_ms)
        advance(brute, brute.at_ms + 60_000, benches, false);
      expect(truth_ms).toBeDefined();
      // Hours against minutes: the steps differ, the hour must be the same.
      expect(Math.abs((truth_ms ?? 0) - brute.at_ms)).toBeLessThan(1.5 * HOUR_ms);
    }
  });

  test("leaves the pot as it was, ignores later sips, is now when already past, and is nothing beyond the horizon", () => {
    const { benches, tended } = drawn(7);
    const pot = copyOf(tended[0]?.pot as Pot);
    water(pot, 2000);
    const kept = { ...pot };
    const plain_ms = firstTimeAt({ ...pot, happenings: [] }, 0.5, benches, 40);
    const sip = { at_ms: pot.at_ms + DAY_ms, what: "sip" as const, volume_mL: 500 };
    expect(firstTimeAt({ ...pot, happenings: [sip] }, 0.5, benches, 40)).toBeCloseTo(plain_ms ?? 0, -4);
    expect(pot).toEqual(kept);
    expect(firstTimeAt(pot, 0, benches, 40)).toBe(pot.at_ms);
    expect(firstTimeAt(pot, 0.99, benches, 0.01)).toBeUndefined();
  });
});
