import { describe, expect, it } from "vitest";
import { asksOf } from "../../round/asks.ts";
import { LED_BAR, type LightHouse, lightHouse, SOUTH } from "./test-kit.ts";

const TARIFF = { price_minor_kWh: 30, cheapPrice_minor_kWh: 20, cheapFrom_h: 0, cheapHours_h: 6 };

/** A lamp over a south sill with two plants in leaf. */
function lamped(cultivar?: string): LightHouse {
  const house = lightHouse();
  house.bench("sill", 2);
  house.write(0, "bench.window", ["sill"], SOUTH);
  house.write(0, "bench.lamp", ["sill"], LED_BAR);
  if (cultivar)
    house.write(0, "cultivar.described", ["kind"], { name: "Kind", species: cultivar, habit: "tiny" });
  const more = cultivar ? { cultivar: "kind" } : {};
  house.plant(1, "sill-1", "in leaf", more);
  house.plant(2, "sill-2", "in leaf", more);
  return house;
}

describe("lamp hours", () => {
  it("close what a dull winter day leaves open, and stay off in summer when daylight does", () => {
    const { advice } = lamped().on(1, "sill");
    const gap = (advice?.target_mol_m2_d ?? 0) - (advice?.natural_mol_m2_d ?? 0);
    expect((advice?.hours_h ?? 0) * 0.0036 * (advice?.ppfd_umol_m2_s ?? 0)).toBeGreaterThan(gap - 0.2);
    expect(advice?.hours_h).toBeGreaterThan(6);
    const summer = lamped();
    for (const plant of summer.ledger.plants())
      summer.write(0.5, "plant.measured", [plant], { stage: "at rest" });
    expect(summer.on(1, "sill", { month: 7 }).advice).toMatchObject({
      hours_h: 0,
      said: "lamp off: daylight is enough",
    });
  });

  it("know the quarter of an hour", () => {
    const { advice } = lamped().on(1, "sill");
    for (const hour of [advice?.hours_h ?? 0.1, advice?.from_h ?? 0.1]) expect((hour * 4) % 1).toBe(0);
  });

  it("keep to the day that the species bears, and say what is left open", () => {
    const dim = (species?: string) => {
      const house = lamped(species);
      house.write(0.5, "bench.lamp", ["sill"], { ...LED_BAR, power_W: 30 });
      return house.on(1, "sill").advice;
    };
    expect(dim()?.hours_h).toBe(16);
    expect(dim("frutescens")?.hours_h).toBe(13);
    expect(dim("chinense")?.hours_h).toBe(14);
    expect(dim()?.shortSaid).toMatch(
      /mol a day stay open within a day of 16 h; \d+ µmol\/m²s at the leaves would do\./,
    );
    const house = lamped();
    house.write(0.5, "bench.lamp", ["sill"], { ...LED_BAR, power_W: 30 });
    house.write(0.6, "assumption.set", [], { key: "dayAnnuum_h", value: 12 });
    expect(house.on(1, "sill").advice?.hours_h).toBe(12);
  });

  it("burn at the cheaper end", () => {
    const house = lamped();
    house.write(0.5, "bench.lamp", ["sill"], { ...LED_BAR, power_W: 60 });
    house.write(0.5, "supply.tariff", [], TARIFF);
    const early = house.on(1, "sill").advice;
    house.write(1.5, "supply.tariff", [], { ...TARIFF, cheapFrom_h: 18 });
    const late = house.on(2, "sill").advice;
    expect(early?.from_h).toBeLessThan((late?.from_h ?? 0) - 1);
    expect(early?.energy.cost_minor_d).toBeLessThan(0.3 * (early?.energy.kWh_d ?? 0) * 100);
  });

  it("cost what the tariff says, and nothing is said of money where no price is written", () => {
    const house = lamped();
    house.write(0.5, "bench.timer", ["sill"], { from_h: 8, hours_h: 10 });
    expect(house.on(1, "sill").energy).toMatchObject({ power_W: 110, kWh_d: 1.1, said: "1.1 kWh a day" });
    expect(house.on(1, "sill").energy?.cost_minor_d).toBeUndefined();
    house.write(1, "supply.tariff", [], { price_minor_kWh: 30 });
    const energy = house.on(2, "sill").energy;
    expect(energy?.cost_minor_d).toBeCloseTo(33, 9);
    expect(energy?.costPerPlant_minor_month).toBeCloseTo((33 * 30) / 2, 9);
    expect(energy?.said).toContain("€0.33");
  });
});

describe("what the round asks", () => {
  const asked = (house: LightHouse, day_d: number) =>
    asksOf(house.desk(day_d)).find(({ key }) => key.startsWith("lamp:"));

  it("is to set the timer, with the entry that does it; then it is quiet for a week", () => {
    const house = lamped();
    house.write(0.5, "bench.timer", ["sill"], { from_h: 8, hours_h: 2 });
    const ask = asked(house, 9);
    expect(ask?.said).toMatch(
      /^Set the lamp of sill: \d\d:\d\d to \d\d:\d\d\. Now set 08:00 to 10:00, 2 h\./,
    );
    const [draft] = ask?.answers[0]?.entries ?? [];
    if (!draft) throw new Error("no way out");
    house.write(9, draft.kind, draft.on, draft.data as object);
    expect(asked(house, 9.1)).toBeUndefined();
    expect(house.on(9.1, "sill").advice?.change).toBe(false);
  });

  it("is nothing when the change is small, or the timer was set this week", () => {
    const house = lamped();
    const wanted_h = house.on(1, "sill").advice?.hours_h ?? 0;
    house.write(1.5, "bench.timer", ["sill"], { from_h: 6, hours_h: wanted_h - 0.25 });
    expect(asked(house, 12)).toBeUndefined();
    house.write(12, "bench.timer", ["sill"], { from_h: 6, hours_h: wanted_h - 1.5 });
    expect(asked(house, 13)).toBeUndefined();
    expect(house.on(13, "sill").advice?.waitSaid).toContain("at most one change a week");
    expect(asked(house, 20)?.said).toContain("Set the lamp");
  });
});

describe("when a spot is short", () => {
  it("offers lamp hours only within the day that its kind bears, and says why not in the working", () => {
    const house = lamped();
    house.write(0.5, "bench.timer", ["sill"], { from_h: 8, hours_h: 0 });
    const strong = house.spot(1, "sill-1").short;
    expect(strong?.lamp_h).toBeGreaterThan(0);
    expect(strong?.lamp_h).toBeLessThanOrEqual(16);
    expect(strong?.said).toContain(`: ${strong?.lamp_h} h lamp`);
    house.write(1.5, "bench.lamp", ["sill"], { ...LED_BAR, power_W: 50 });
    const weak = house.spot(2, "sill-1").short;
    expect(weak?.lamp_h).toBeUndefined();
    expect(weak?.working.notes.join(" ")).toMatch(/but its kind bears a day of 16 h: a stronger lamp/);
  });
});

describe("a lamp that is out", () => {
  it("makes a debt that grows, is said with its day, and may be made up within the longest day", () => {
    const house = lightHouse();
    house.bench("shelf", 1);
    house.write(0, "bench.lamp", ["shelf"], { ...LED_BAR, power_W: 140 });
    house.write(0, "bench.timer", ["shelf"], { from_h: 6, hours_h: 13 });
    const plant = house.plant(1, "shelf-1");
    const debt = (day_d: number) =>
      house.desk(day_d).view(plant)?.outlooks[1]?.outlook.figures["debt_mol_m2"] as number;
    expect(debt(10)).toBe(0);
    house.write(10, "bench.outage", ["shelf"], { what: "lamps", is: "out" });
    expect(debt(12)).toBeGreaterThan(18);
    expect(debt(13)).toBeGreaterThan(debt(12));
    const spot = house.spot(13, "shelf-1");
    expect(spot.debtSaid).toMatch(
      /mol behind; the lamp is out since .*16 h of lamp a day make it up in about \d+ days\./,
    );
    expect(house.on(13, "shelf").timer?.said).toContain("out since");
    house.write(13, "bench.outage", ["shelf"], { what: "lamps", is: "back" });
    expect(debt(25)).toBeLessThan(debt(13));
  });
});
