import { describe, expect, it } from "vitest";
import { testPen } from "../../../test/toy.ts";
import { craftPage, logPage } from "../../pages/index.ts";
import { theRound } from "../../round/index.ts";
import { PageError } from "../craft.ts";
import { LED_BAR, lightHouse, noonOf, SOUTH, watering } from "./test-kit.ts";

const guessed = () => {
  const house = lightHouse();
  house.bench("sill", 3, { windowFaces_deg: 180 });
  house.plant(1, "sill-2", "seedling");
  return house;
};

describe("a reading inside and outside", () => {
  it("turns an assumed window into a measured one, narrows the band, moves the date, and keeps the old one", () => {
    const house = guessed();
    const before = house.spot(10, "sill-2");
    expect(before.light.origin).toBe("assumed");
    expect(before.short?.from).toBeDefined();
    expect(before.short?.before).toBeUndefined();
    const pair = house.write(11, "light.pair", ["sill-2"], {
      inside_lux: 2600,
      outside_lux: 9000,
      sky: "evenly grey",
    });
    const after = house.spot(12, "sill-2");
    expect(after.light.origin).toBe("measured");
    const width = ({ light }: typeof before) => Math.log(light.high_mol_m2_d / light.low_mol_m2_d);
    expect(width(after)).toBeLessThan(width(before) / 2);
    expect(after.short?.until?.date).not.toBe(before.short?.until?.date);
    expect(after.short?.before?.entry).toBe(pair.id);
    expect(after.short?.before?.until?.date).toBe(before.short?.until?.date);
    const notes = after.short?.working.notes.join(" ") ?? "";
    expect(notes).toContain(after.short?.before?.said);
    expect(notes).toContain("2,600 lux");
  });

  it("says before it is written what it would change, and does change just that", () => {
    const house = guessed();
    const data = { inside_lux: 2300, outside_lux: 9000, sky: "evenly grey" } as const;
    const now = noonOf(11);
    const { reading } = house.page(now, {
      bench: "sill",
      read: { spot: "sill-2", kind: "light.pair", data },
    });
    house.write(now, "light.pair", ["sill-2"], data);
    const after = house.spot(now, "sill-2");
    expect(reading?.state).toBe("good");
    expect(reading?.then?.light.mid_mol_m2_d).toBeCloseTo(after.light.mid_mol_m2_d, 9);
    expect(reading?.then?.until?.date).toBe(after.short?.until?.date);
  });

  it.each([
    [
      "inside brighter than a clear sky",
      { inside_lux: 60_000, outside_lux: 9400, sky: "evenly grey" },
      "refused",
      "brighter than the sky",
    ],
    [
      "inside brighter than outside",
      { inside_lux: 9000, outside_lux: 1400, sky: "evenly grey" },
      "refused",
      "inside than outside",
    ],
    [
      "outside brighter than the sun",
      { inside_lux: 900, outside_lux: 140_000, sky: "clear" },
      "refused",
      "Outdoors 140,000 lux",
    ],
    [
      "a sky too bright to be grey",
      { inside_lux: 2000, outside_lux: 38_000, sky: "evenly grey" },
      "doubtful",
      "too bright for an evenly grey sky",
    ],
    [
      "hardly anything inside",
      { inside_lux: 100, outside_lux: 9000, sky: "evenly grey" },
      "doubtful",
      "curtain",
    ],
  ])("is looked over: %s", (_what, data, state, said) => {
    const { reading } = guessed().page(noonOf(11), { read: { spot: "sill-2", kind: "light.pair", data } });
    expect(reading?.state).toBe(state);
    expect(reading?.said).toContain(said);
    expect(reading?.then === undefined).toBe(state === "refused");
  });

  it("is put the right way round by one key where the two were swapped", () => {
    const { reading } = guessed().page(noonOf(11), {
      read: {
        spot: "sill-2",
        kind: "light.pair",
        data: { inside_lux: 9000, outside_lux: 1400, sky: "broken" },
      },
    });
    expect(reading?.answers[0]?.drafts).toEqual([
      { kind: "light.pair", on: ["sill-2"], data: { inside_lux: 1400, outside_lux: 9000, sky: "broken" } },
    ]);
  });

  it("needs the sun", () => {
    const data = { inside_lux: 100, outside_lux: 900, sky: "evenly grey" } as const;
    const at = (day_d: number) =>
      guessed().page(day_d, { read: { spot: "sill-2", kind: "light.pair", data } }).reading;
    expect(at(11 + 12 / 24)?.said).toContain("The sun is down");
    expect(at(11 + 0.3 / 24)?.state).toBe("doubtful");
  });

  it("is refused in lux under red and blue lamps", () => {
    const house = lightHouse();
    house.bench("shelf", 2);
    house.write(0, "bench.lamp", ["shelf"], { ...LED_BAR, source: "red and blue" });
    const { reading } = house.page(1, {
      read: { spot: "shelf-1", kind: "light.lamp", data: { under_lux: 4000 } },
    });
    expect(reading?.state).toBe("refused");
    expect(reading?.said).toContain("µmol");
  });

  it("far off the lamp's label is asked about, near it is good", () => {
    const house = lightHouse();
    house.bench("shelf", 2);
    house.write(0, "bench.lamp", ["shelf"], LED_BAR);
    const at = (ppfd_umol_m2_s: number) =>
      house.page(1, { read: { spot: "shelf-1", kind: "light.lamp", data: { ppfd_umol_m2_s } } }).reading
        ?.state;
    expect(at(20)).toBe("doubtful");
    expect(at(230)).toBe("good");
  });
});

describe("a house without this craft", () => {
  it("has no page of it, walks the round, and keeps its entries for later", async () => {
    const house = lightHouse([watering]);
    house.bench("sill", 1, { windowFaces_deg: 180 });
    house.plant(1, "sill-1");
    const { ledger } = guessed();
    const [plant] = ledger.plants();
    const turned = testPen(ledger).at(48, {
      kind: "lighting.turned",
      on: [plant as string],
      data: { clockwise_deg: 90 },
    });
    house.ledger.add([turned]);
    expect(await craftPage(house.desk(3), "lighting", {})).toBeUndefined();
    expect(theRound(house.desk(3)).said).toMatch(/\d/);
    expect(logPage(house.desk(3)).find(({ id }) => id === turned.id)?.state).toBe("newer");
  });
});

describe("the page", () => {
  it("is empty in words without a bench", () => {
    const page = lightHouse().page(1);
    expect(page.said).toContain("A windowsill is a bench.");
    expect(page.benches).toEqual([]);
  });

  it.each([
    [{ month: 13 }, "month is 13; expected 1 to 12"],
    [{ month: 2.5 }, "month is 2.5; expected 1 to 12"],
    [{ bench: "attic" }, 'bench is "attic"; expected one of sill'],
    [{ shelf: "sill" }, "shelf is asked of light; expected bench, month or read"],
    [{ read: { spot: "nowhere", kind: "light.pair", data: {} } }, 'read.spot is "nowhere"'],
    [
      { read: { spot: "sill-1", kind: "light.sun", data: {} } },
      'read.kind is "light.sun"; expected light.pair or light.lamp',
    ],
    [
      {
        read: {
          spot: "sill-1",
          kind: "light.pair",
          data: { inside_lux: -4, outside_lux: 9000, sky: "clear" },
        },
      },
      "light at the leaf is -4 lux; expected 1 to 150000 lux",
    ],
    ["sill", "expected {bench, month, read}"],
  ])("refuses %j and says why", (ask, message) => {
    const house = guessed();
    expect(() => house.page(1, ask)).toThrow(PageError);
    expect(() => house.page(1, ask)).toThrow(message);
  });

  it("draws the window, the lamp and the spots in standing order", () => {
    const house = lightHouse();
    house.bench("sill", 3);
    house.write(0, "bench.window", ["sill"], SOUTH);
    house.write(0, "bench.lamp", ["sill"], LED_BAR);
    house.write(0, "spot.stands", ["sill-3"], { along_m: 0.4, fromGlass_m: 0.5 });
    const bench = house.on(1, "sill");
    expect(bench.windowSaid).toBe("window south, double glass");
    expect(bench.windows[0]).toMatchObject({
      width_m: 1.2,
      height_m: 1.4,
      facesSaid: "south",
      origin: "measured",
    });
    expect(bench.lamps[0]).toMatchObject({ above_m: 0.35, power_W: 110, form: "strip" });
    expect(bench.spots.map(({ name, along_m }) => [name, along_m])).toEqual([
      ["1", -0.16],
      ["2", 0],
      ["3", 0.4],
    ]);
    expect(bench.spots[2]?.placeOrigin).toBe("measured");
    const { contours, plan } = bench;
    expect(contours?.light_mol_m2_d).toHaveLength(contours?.fromGlass_m.length ?? 0);
    expect(contours?.along_m[0]).toBeCloseTo(plan.left_m, 9);
    const [nearest, ...others] = contours?.light_mol_m2_d ?? [];
    expect(Math.max(...(nearest ?? []))).toBeGreaterThan(Math.max(...(others.at(-1) ?? [])));
  });

  it("shows two cases where nobody knows which way the window faces, and the reading that parts them", () => {
    const house = lightHouse();
    house.bench("sill", 2);
    const { unsure } = house.on(1, "sill");
    const [south, north] = unsure?.cases ?? [];
    expect(south?.noon_lux).toBeGreaterThan(4 * (north?.noon_lux ?? 0));
    expect(unsure?.ask).toMatch(/noon of a clear day/);
    house.write(2, "bench.laid", ["sill"], {
      name: "sill",
      place: "sill",
      outdoors: false,
      order_n: 0,
      spots: [{ id: "sill-1", name: "1" }],
      windowFaces_deg: 90,
    });
    expect(house.on(3, "sill").unsure).toBeUndefined();
  });

  it("names the reading worth most until it is taken", () => {
    const house = guessed();
    const worth = house.on(10, "sill").worth;
    expect(worth?.kind).toBe("light.pair");
    expect(worth?.sdThen_frac).toBeLessThan(worth?.sdNow_frac ?? 0);
    expect(worth?.said).toMatch(/would become about/);
    house.write(11, "light.pair", ["sill-2"], { inside_lux: 2600, outside_lux: 9000, sky: "evenly grey" });
    expect(house.on(12, "sill").worth).toBeUndefined();
  });

  it("keeps to open sky outdoors", () => {
    const house = lightHouse();
    house.bench("yard", 2, { outdoors: true, place: "bed" });
    house.plant(1, "yard-1");
    const bench = house.on(1, "yard", { month: 6 });
    expect(bench.windowSaid).toBe("open sky");
    expect(bench.contours).toBeUndefined();
    expect(bench.spots[0]?.state).toBe("enough");
    expect(bench.spots[0]?.turnSaid).toBeUndefined();
  });

  it("says the same in German, with no hole and no English left", () => {
    const house = guessed();
    house.bench("shelf", 2, { order_n: 1 });
    house.write(0, "bench.lamp", ["shelf"], LED_BAR);
    house.plant(2, "shelf-1");
    const texts = (value: unknown): string[] =>
      typeof value === "string"
        ? [value]
        : typeof value === "object" && value !== null
          ? Object.values(value).flatMap(texts)
          : [];
    for (const language of ["en", "de"] as const)
      for (const text of texts(house.page(10, {}, language)))
        expect(text).not.toMatch(/undefined|NaN|\[object/);
    const page = house.page(10, {}, "de");
    expect(page.monthSaid).toBe("Januar");
    expect(page.benches[0]?.spots[1]?.said).toMatch(
      /^Platz 2, Topf 101: .* von .* nötigen, von .* bis .*\.$/,
    );
    expect(page.said).not.toMatch(/\b(the|light|lamp|short)\b/);
  });
});
