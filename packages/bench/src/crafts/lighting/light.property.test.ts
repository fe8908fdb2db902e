import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BenchLight } from "./page-shape.ts";
import { LED_BAR, type LightHouse, lightHouse, SOUTH } from "./test-kit.ts";

const CAPS = { annuum: 16, frutescens: 13, chinense: 14, baccatum: 14, pubescens: 14, unknown: 16 } as const;

describe("lamp hours", () => {
  it("never pass the longest day of any plant of the bench, whatever the lamp, the window and the month", () => {
    fc.assert(
      fc.property(
        fc.record({
          power_W: fc.integer({ min: 2, max: 400 }),
          above_m: fc.double({ min: 0.1, max: 1.5, noNaN: true }),
          month: fc.integer({ min: 1, max: 12 }),
          window: fc.boolean(),
          species: fc.array(fc.constantFrom(...(Object.keys(CAPS) as (keyof typeof CAPS)[])), {
            minLength: 1,
            maxLength: 3,
          }),
          stage: fc.constantFrom("seedling", "in leaf", "in flower"),
        }),
        ({ power_W, above_m, month, window, species, stage }) => {
          const house = lightHouse();
          house.bench("shelf", 3);
          if (window) house.write(0, "bench.window", ["shelf"], SOUTH);
          house.write(0, "bench.lamp", ["shelf"], { ...LED_BAR, power_W, above_m });
          species.forEach((kind, i) => {
            house.write(0, "cultivar.described", [kind], { name: kind, species: kind, habit: "thin" });
            house.plant(i + 1, `shelf-${i + 1}`, stage, { cultivar: kind });
          });
          const advice = house.on(1, "shelf", { month }).advice;
          const bare = (kind: keyof typeof CAPS) =>
            kind === "frutescens" && stage === "seedling" ? 16 : CAPS[kind];
          const cap_h = Math.min(...species.map(bare));
          expect(advice?.cap_h).toBe(cap_h);
          expect(advice?.hours_h).toBeLessThanOrEqual(cap_h);
          expect(advice?.hours_h).toBeGreaterThanOrEqual(0);
          expect(advice?.draft.data).toEqual({ from_h: advice?.from_h, hours_h: advice?.hours_h });
        },
      ),
      { seed: 11, numRuns: 25 },
    );
  });
});

/** What is missing to all plants of a page, and a tenth of what is too much, mol a day. */
const unmet = (benches: readonly BenchLight[]) =>
  benches
    .flatMap(({ spots }) => spots)
    .reduce((sum, { need, light: { mid_mol_m2_d } }) => {
      if (!need) return sum;
      const over = Math.max(0, mid_mol_m2_d - need.max_mol_m2_d);
      return sum + Math.max(0, need.min_mol_m2_d - mid_mol_m2_d) + 0.1 * over;
    }, 0);

describe("better seats", () => {
  const stages = ["seedling", "in leaf", "in flower", "at rest"] as const;
  const houses = fc.record({
    power_W: fc.integer({ min: 20, max: 200 }),
    month: fc.constantFrom(1, 4, 11),
    plants: fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { minLength: 2, maxLength: 6 }),
    stages: fc.array(fc.constantFrom(...stages), { minLength: 6, maxLength: 6 }),
  });
  const build = ({
    power_W,
    plants,
    stages: seen,
  }: typeof houses extends fc.Arbitrary<infer One> ? One : never) => {
    const house = lightHouse();
    house.bench("sill", 4);
    house.write(0, "bench.window", ["sill"], SOUTH);
    house.bench("shelf", 3, { order_n: 1 });
    house.write(0, "bench.lamp", ["shelf"], { ...LED_BAR, power_W });
    house.write(0, "bench.timer", ["shelf"], { from_h: 6, hours_h: 14 });
    plants.forEach((seat, i) => {
      house.plant(i + 1, seat < 4 ? `sill-${seat + 1}` : `shelf-${seat - 3}`, seen[i]);
    });
    return house;
  };
  const worth = (house: LightHouse, month: number) => unmet(house.page(1, { month }).benches);

  it("are never worse than staying, and each swap gives what it says", () => {
    fc.assert(
      fc.property(houses, (drawn) => {
        const house = build(drawn);
        const { seats } = house.page(1, { month: drawn.month });
        expect(seats.allGain_mol_m2_d).toBeGreaterThanOrEqual(0);
        let before = worth(house, drawn.month);
        let day_d = 1;
        for (const swap of seats.swaps) {
          expect(swap.gain_mol_m2_d).toBeGreaterThanOrEqual(1.5);
          day_d += 0.01;
          for (const { kind, on, data } of swap.drafts) house.write(day_d, kind, on, data as object);
          const after = unmet(house.page(2, { month: drawn.month }).benches);
          expect(after).toBeLessThan(before);
          before = after;
        }
      }),
      { seed: 5, numRuns: 15 },
    );
  });

  it("let what rests and what flowers change places, in one step that says both", () => {
    const house = lightHouse();
    house.bench("dark", 1, { windowFaces_deg: 0 });
    house.write(0, "bench.window", ["dark"], { ...SOUTH, faces_deg: 0 });
    house.bench("shelf", 1, { order_n: 1 });
    house.write(0, "bench.lamp", ["shelf"], LED_BAR);
    house.write(0, "bench.timer", ["shelf"], { from_h: 6, hours_h: 14 });
    const flowering = house.plant(1, "dark-1", "in flower");
    const resting = house.plant(2, "shelf-1", "at rest");
    const { seats } = house.page(1);
    expect(seats.swaps).toHaveLength(1);
    const [swap] = seats.swaps;
    expect(swap?.said).toMatch(/101 and 102|102 and 101/);
    expect(swap?.gain_mol_m2_d).toBeCloseTo(seats.allGain_mol_m2_d, 6);
    expect(swap?.drafts.map(({ kind, on, data }) => [kind, on[0], data])).toEqual(
      expect.arrayContaining([
        ["plant.moved", flowering, { to: "shelf-1" }],
        ["plant.moved", resting, { to: "dark-1" }],
      ]),
    );
    expect(seats.allMoves_n).toBe(2);
  });

  it("fill a free bright seat with who needs it", () => {
    const house = lightHouse();
    house.bench("dark", 2);
    house.write(0, "bench.window", ["dark"], { ...SOUTH, faces_deg: 0 });
    house.bench("shelf", 1, { order_n: 1 });
    house.write(0, "bench.lamp", ["shelf"], LED_BAR);
    house.plant(1, "dark-1", "at rest");
    const flowering = house.plant(2, "dark-2", "in flower");
    const { swaps } = house.page(1).seats;
    expect(swaps.map(({ plant, to, other }) => [plant, to, other])).toEqual([
      [flowering, "shelf-1", undefined],
    ]);
  });

  it("leave who stands in quarantine, outdoors, or before a window nobody described where it is", () => {
    const house = lightHouse();
    house.bench("dark", 1, { windowFaces_deg: 0 });
    house.bench("apart", 1, { order_n: 1, quarantine: true });
    house.write(0, "bench.lamp", ["apart"], LED_BAR);
    house.bench("yard", 1, { order_n: 2, outdoors: true, place: "bed" });
    house.bench("somewhere", 1, { order_n: 3 });
    house.plant(1, "dark-1", "in flower");
    expect(house.page(1).seats.swaps).toEqual([]);
  });
});

describe("every number in the sentence of a spot", () => {
  const saidOf = (change: (house: LightHouse) => void) => {
    const house = lightHouse();
    house.bench("sill", 3);
    house.write(0, "bench.window", ["sill"], SOUTH);
    house.plant(1, "sill-2", "in leaf");
    change(house);
    return house.spot(1, "sill-2").said;
  };
  const numbers = (said: string) => said.match(/[\d.]+(?=\D)/g) ?? [];
  const base = numbers(saidOf(() => {}));

  it("changes with its input: light and its range with the window, need with the stage and with the assumption", () => {
    expect(base).toHaveLength(6);
    const [spot, pot, light, need, dull, sunny] = base;
    const smaller = numbers(
      saidOf((house) => house.write(0.5, "bench.window", ["sill"], { ...SOUTH, height_m: 0.5 })),
    );
    expect(smaller.slice(0, 2)).toEqual([spot, pot]);
    expect([smaller[2] === light, smaller[4] === dull, smaller[5] === sunny]).toEqual([false, false, false]);
    expect(smaller[3]).toBe(need);
    const plant = (house: LightHouse) => house.ledger.plants().slice(0, 1);
    const resting = numbers(
      saidOf((house) => house.write(0.5, "plant.measured", plant(house), { stage: "at rest" })),
    );
    expect(resting[2]).toBe(light);
    expect(resting[3]).not.toBe(need);
    const modest = numbers(
      saidOf((house) => house.write(0.5, "assumption.set", [], { key: "lightTraining_mol_m2_d", value: 12 })),
    );
    expect(modest[3]).toBe("8");
    const other = numbers(
      saidOf((house) => house.write(0.5, "plant.numbered", plant(house), { number: 555 })),
    );
    expect(other[1]).toBe("555");
  });
});
