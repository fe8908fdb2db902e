import { describe, expect, it } from "vitest";
import { theRound } from "../../round/index.ts";
import { DAY_ms, LED_BAR, lightHouse, noonOf, SOUTH } from "./test-kit.ts";

/** Habits of growers that the numbers must not contradict. All: common practice, no source, unless said. */
describe("light as growers know it", () => {
  const sill = (faces_deg: number) => {
    const house = lightHouse();
    house.bench("sill", 3);
    house.write(0, "bench.window", ["sill"], { ...SOUTH, faces_deg });
    house.plant(1, "sill-2");
    return house;
  };

  it("a south sill is brighter than an east one, an east one than a north one, in winter by far", () => {
    const january = [180, 90, 0].map(
      (faces) => sill(faces).spot(1, "sill-2", { month: 1 }).light.mid_mol_m2_d,
    );
    const [south = 0, east = 0, north = 0] = january;
    expect(south).toBeGreaterThan(1.7 * east);
    expect(east).toBeGreaterThan(1.1 * north);
  });

  it("a metre from the glass costs more than half of the light a hand's breadth gets (sun-light sheet section 5)", () => {
    const house = sill(180);
    house.write(0.5, "spot.stands", ["sill-1"], { along_m: 0, fromGlass_m: 0.2 });
    house.write(0.5, "spot.stands", ["sill-3"], { along_m: 0, fromGlass_m: 1.2 });
    const at = (spot: string) => house.spot(1, spot, { month: 11 }).light;
    expect(at("sill-3").dull_mol_m2_d).toBeLessThan(0.5 * at("sill-1").dull_mol_m2_d);
  });

  it("winter days on a sill are dull or bright, not middling (section 7)", () => {
    const { light } = sill(180).spot(1, "sill-2", { month: 12 });
    expect(light.sunny_mol_m2_d).toBeGreaterThan(3 * light.dull_mol_m2_d);
  });

  it("what rests needs a third of what fruits", () => {
    const house = sill(180);
    const need = (n: number, spot: string, stage: string) => {
      house.plant(n, spot, stage);
      return house.spot(1, spot).need?.min_mol_m2_d ?? 0;
    };
    expect(need(2, "sill-1", "at rest")).toBeLessThan(need(3, "sill-3", "in fruit") / 3);
  });
});

describe("turning", () => {
  it("falls due within two weeks on a sill, for the whole bench on one day, and never as a must", () => {
    const house = lightHouse();
    house.bench("sill", 4, { windowFaces_deg: 180 });
    for (const n of [1, 2, 3, 4]) house.plant(n, `sill-${n}`);
    const turns = (day_d: number) =>
      theRound(house.desk(day_d)).benches[0]?.spots.flatMap(({ tasks }) =>
        tasks.filter(({ work }) => work === "turn"),
      ) ?? [];
    expect(turns(5)).toHaveLength(0);
    const due = Array.from({ length: 15 }, (_, day) => day).find((day) => turns(day).length > 0) ?? 99;
    expect(due).toBeLessThanOrEqual(14);
    expect(turns(due)).toHaveLength(4);
    expect(turns(due).every(({ must }) => !must)).toBe(true);
    house.write(
      due + 0.1,
      "lighting.turned",
      [1, 2, 3, 4].map((n) => house.ledger.plants()[n - 1] as string),
      {
        clockwise_deg: 90,
      },
    );
    expect(turns(due + 0.2)).toHaveLength(0);
    expect(turns(due + due + 1)).toHaveLength(4);
  });

  it("is not asked for day after day on a bench where nobody writes turns, until a lean is seen or one is written", () => {
    const house = lightHouse();
    house.bench("sill", 2, { windowFaces_deg: 180 });
    const [plant, neighbour] = [house.plant(1, "sill-1"), house.plant(2, "sill-2")];
    const asked = (day_d: number) =>
      house
        .desk(day_d)
        .view(plant)
        ?.tasks.some(({ work }) => work === "turn") ?? false;
    expect([asked(12), asked(29), asked(31), asked(90)]).toEqual([true, true, false, false]);
    expect(house.spot(90, "sill-1").turnSaid).toBe(
      "not turned for 90 days, 100 % of the light from one side",
    );
    house.write(91, "lighting.turned", [neighbour], { clockwise_deg: 90 });
    expect(asked(92)).toBe(true);
  });

  it("is not asked for under a lamp", () => {
    const house = lightHouse();
    house.bench("shelf", 1);
    house.write(0, "bench.lamp", ["shelf"], LED_BAR);
    const plant = house.plant(1, "shelf-1");
    expect(
      house
        .desk(40)
        .view(plant)
        ?.tasks.filter(({ work }) => work === "turn"),
    ).toEqual([]);
  });

  it("is asked for at once when shoots lean to the window", () => {
    const house = lightHouse();
    house.bench("sill", 1, { windowFaces_deg: 180 });
    const plant = house.plant(1, "sill-1");
    house.write(2, "lighting.leaning", [plant], { towards: "window", lean_deg: 20 });
    const turn = house
      .desk(2.1)
      .view(plant)
      ?.tasks.find(({ work }) => work === "turn");
    expect(turn?.best_ms).toBe(house.desk(2.1).now_ms);
    expect(turn?.why).toBe("leans 20° towards the window");
    house.write(2.2, "lighting.turned", [plant], { clockwise_deg: 90 });
    const next = house
      .desk(2.3)
      .view(plant)
      ?.tasks.find(({ work }) => work === "turn");
    expect((next?.best_ms ?? 0) - house.desk(2.3).now_ms).toBeGreaterThan(7 * DAY_ms);
  });
});

describe("what is wrong?", () => {
  const signs = async (stage: string, seen: readonly string[], outdoors = false) => {
    const house = lightHouse();
    house.bench("sill", 1, { windowFaces_deg: 0 });
    house.bench("yard", 1, { outdoors: true, place: "bed", order_n: 1 });
    const plant = house.plant(1, "sill-1", stage);
    if (outdoors) house.write(150, "plant.moved", [plant], { to: "yard-1" });
    const desk = house.desk(noonOf(153));
    const view = desk.view(plant);
    const [, craft] = desk.ledger.crafts;
    const [, outward] = view?.outwards ?? [];
    if (!view || !craft || !outward) throw new Error("no view");
    return (await craft.wrong?.())?.signs(view.state.slices[1], outward, seen) ?? [];
  };

  it("long shoots on a north sill: too little light, and light before feed", async () => {
    const [first] = await signs("in leaf", ["long shoots"]);
    expect(first?.key).toBe("too little light");
    expect(first?.doNot.join(" ")).toContain("feed");
    expect(first?.evidence[0]).toMatch(/light of the last week [\d.]+ of 12 needed/);
  });

  it("papery leaves days after a move into the open: scald, shade and harden off", async () => {
    const [fresh] = await signs("in leaf", ["bleached leaves"], true);
    const [old] = await signs("in leaf", ["bleached leaves"]);
    expect(fresh?.key).toBe("scald");
    expect(fresh?.weight).toBeGreaterThan((old?.weight ?? 0) * 2);
    expect(fresh?.evidence[0]).toMatch(/moved 3 days ago/);
    expect(fresh?.doNot.join(" ")).toContain("pluck");
  });

  it("a lean at a window: turn it, do not straighten it", async () => {
    const [first] = await signs("in leaf", ["leaning"]);
    expect(first?.key).toBe("light from one side");
    expect(first?.doNow.join(" ")).toContain("quarter");
  });
});
