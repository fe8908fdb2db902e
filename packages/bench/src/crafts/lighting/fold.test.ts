import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lightFold } from "./fold.ts";
import { type LightKept, lightOf } from "./kept.ts";
import { asymmetry_frac, type LightSlice } from "./slice.ts";
import { LED_BAR, type LightHouse, lightHouse, SOUTH } from "./test-kit.ts";

const sliceAt = (house: LightHouse, day_d: number): LightSlice =>
  lightOf(house.desk(day_d).view(house.ledger.plants()[0] as never)?.state.slices[1] as LightKept);

const sill = () => {
  const house = lightHouse();
  house.bench("sill", 2);
  house.write(0, "bench.window", ["sill"], SOUTH);
  house.bench("shelf", 1, { order_n: 1 });
  house.write(0, "bench.lamp", ["shelf"], LED_BAR);
  return { house, plant: house.plant(1, "sill-1") };
};

describe("the slice of a plant", () => {
  it("knows which way round it stands after any turns", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(90, 180, 270, -90, 45), { maxLength: 6 }), (turns) => {
        const { house, plant } = sill();
        turns.forEach((clockwise_deg, i) => {
          house.write(1 + i, "lighting.turned", [plant], { clockwise_deg });
        });
        const sum = turns.reduce((all, each) => all + each, 0);
        const slice = sliceAt(house, 10);
        expect(slice.turned_deg).toBe(((sum % 360) + 360) % 360);
        expect(slice.turns_n).toBe(turns.length);
      }),
      { seed: 3, numRuns: 12 },
    );
  });

  it("puts light on the side that faces the window, and on the next after a quarter turn", () => {
    const { house, plant } = sill();
    const before = sliceAt(house, 5);
    // South is the third quarter of a plant that was brought in facing north.
    expect(before.quarter2_mol_m2).toBeGreaterThan(5 * before.quarter1_mol_m2);
    house.write(5, "lighting.turned", [plant], { clockwise_deg: 90 });
    const after = sliceAt(house, 10);
    expect(after.quarter1_mol_m2).toBeGreaterThan(5 * before.quarter1_mol_m2);
    expect(after.quarter2_mol_m2).toBeLessThan(1.2 * before.quarter2_mol_m2);
  });

  it("is one-sided at a window, not at all under a lamp, and begins anew with a turn", () => {
    const { house, plant } = sill();
    expect(asymmetry_frac(sliceAt(house, 8))).toBeGreaterThan(0.9);
    house.write(8, "lighting.turned", [plant], { clockwise_deg: 90 });
    expect(sliceAt(house, 8.01).oneSided_d).toBeLessThan(0.02);
    house.write(8.1, "plant.moved", [plant], { to: "shelf-1" });
    house.write(8.1, "lighting.turned", [plant], { clockwise_deg: 90 });
    const lamp = sliceAt(house, 30);
    expect(asymmetry_frac(lamp)).toBe(0);
    expect(lamp.oneSided_d).toBe(0);
  });

  it("remembers the light before a move", () => {
    const { house, plant } = sill();
    const week = sliceAt(house, 6).week_mol_m2_d;
    house.write(6, "plant.moved", [plant], { to: "shelf-1" });
    const after = sliceAt(house, 9);
    expect(after.beforeMove_mol_m2_d).toBeCloseTo(week, 6);
    expect(after.week_mol_m2_d).toBeGreaterThan(week);
  });

  it("keeps a lean that cannot be read as a problem, and goes on", () => {
    const { house, plant } = sill();
    const desk = house.desk(2);
    const view = desk.view(plant);
    if (!view) throw new Error("no view");
    const broken = lightFold(
      view.state.slices[1] as LightKept,
      {
        entry: "e" as never,
        at_ms: 1,
        by: "p" as never,
        effects: [],
        own: { kind: "lighting.leaning", data: null },
      },
      view.outwards[1] as never,
    );
    expect(broken.known.lean).toBeUndefined();
    expect(broken.known.problems).toHaveLength(1);
  });
});

describe("light caught", () => {
  const caught = (house: LightHouse, day_d: number) => {
    const state = house.ledger.stateAt(house.ledger.plants()[0] as never, house.desk(day_d).now_ms);
    if (!state) throw new Error("no state");
    return house.ledger.runner().sight(state).read("lightCaught_mol_d");
  };

  it("is light from all around on its leaves: never more than falls on the crown, and the window's side counts once", () => {
    const { house } = sill();
    const reading = caught(house, 10);
    const slice = sliceAt(house, 10);
    expect(reading.value).toBeCloseTo(slice.around_mol_m2_d * slice.catching_m2, 12);
    const crown_m2 = (Math.PI / 4) * (0.12 * 1.4) ** 2;
    expect(slice.catching_m2).toBeLessThan(crown_m2);
    expect(reading.value).toBeLessThan(slice.around_mol_m2_d * crown_m2);
    expect(reading.value).toBeGreaterThan(0);
    expect(reading.sd).toBeGreaterThan(0);
  });

  it("rises with leaves, less than in proportion, and no turn changes it", () => {
    const { house, plant } = sill();
    house.write(1, "plant.measured", [plant], { leaves_n: 40, leafLength_cm: 5 });
    const few = caught(house, 10).value;
    house.write(10, "plant.measured", [plant], { leaves_n: 80, leafLength_cm: 5 });
    const many = caught(house, 10.01).value;
    expect(many).toBeGreaterThan(1.2 * few);
    expect(many).toBeLessThan(2 * few);
    house.write(10.02, "lighting.turned", [plant], { clockwise_deg: 180 });
    expect(caught(house, 10.03).value).toBeCloseTo(many, 3);
  });
});
