import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import * as sun from "../sun/index.ts";
import * as light from "./index.ts";

const glazing = { panes_n: 2 };
const south = {
  facing_deg: 180,
  left_m: -0.6,
  right_m: 0.6,
  bottom_m: 0,
  top_m: 1.4,
  distance_m: 0.3,
  glazing,
} as const;
/** An opening without glass: almost no reflection is left at an index of 1.3, so glass is divided out instead. */
const openFactors = (pane: Partial<light.PaneGeometry> = {}) =>
  light.paneFactors(light.paneView({ ...south, ...pane }));

describe("glass", () => {
  it("lets less through the flatter light falls on it, and nothing at 90°", () => {
    for (const panes_n of [1, 2, 3]) {
      let before = 1;
      for (let glassAngle_deg = 0; glassAngle_deg <= 90; glassAngle_deg += 5) {
        const through = light.glazingTransmittance_frac({ glassAngle_deg, panes_n });
        expect(through).toBeLessThanOrEqual(before);
        before = through;
      }
      expect(before).toBe(0);
      expect(light.glazingTransmittance_frac({ glassAngle_deg: 120, panes_n })).toBe(0);
    }
  });
  it("keeps, sends back or lets through all of it", () => {
    for (let glassAngle_deg = 0; glassAngle_deg < 90; glassAngle_deg += 1) {
      const { transmitted_frac, reflected_frac } = light.paneAtAngle({ glassAngle_deg });
      expect(transmitted_frac + reflected_frac).toBeLessThanOrEqual(1);
      expect(Math.min(transmitted_frac, reflected_frac)).toBeGreaterThan(0);
    }
    const clearest = light.paneAtAngle({ glassAngle_deg: 40, paneTransmittance_frac: 0.9168 });
    expect(clearest.transmitted_frac + clearest.reflected_frac).toBeCloseTo(1, 3);
  });
  it("has the table of the sheet: 60, 70, 80° and even light", () => {
    const at = (panes_n: number) =>
      [60, 70, 80].map((glassAngle_deg) => light.glazingTransmittance_frac({ glassAngle_deg, panes_n }));
    for (const [panes_n, printed, even] of [
      [1, [0.82, 0.71, 0.44], 0.83],
      [2, [0.69, 0.54, 0.27], 0.72],
      [3, [0.6, 0.43, 0.19], 0.63],
    ] as const) {
      for (const [i, ours] of at(panes_n).entries()) expect(ours).toBeCloseTo(printed[i] ?? 0, 1.7);
      expect(light.diffuseTransmittance_frac({ panes_n })).toBeCloseTo(even, 2);
    }
    expect(light.diffuseTransmittance_frac(light.usualGlazings["grey tinted"])).toBeCloseTo(0.34, 2);
  });
  it("has the transmittance of its label straight on", () => {
    for (const glass of [light.usualGlazings["double low-e"], light.usualGlazings["triple low-e"]]) {
      const straight = light.glazingTransmittance_frac({ ...glass, glassAngle_deg: 0 });
      expect(straight).toBeCloseTo(glass.unitTransmittance_frac, 9);
      expect(light.diffuseTransmittance_frac(glass) / straight).toBeGreaterThan(0.8);
    }
  });
  it("refuses a pane clearer than glass can be", () => {
    expect(() => light.paneAtAngle({ glassAngle_deg: 0, paneTransmittance_frac: 0.93 })).toThrow(
      "pane transmittance is 0.93; expected 0.05 to 0.91",
    );
    expect(() => light.diffuseTransmittance_frac({ panes_n: 4 })).toThrow(QuantityError);
  });
});

describe("the view through a pane", () => {
  it("is the closed form when the glass is taken off", () => {
    for (const distance_m of [0.02, 0.1, 0.3, 1, 2, 6]) {
      const geometry = { ...south, distance_m, left_m: -0.2, right_m: 1 };
      const closed = light.openPaneFactors(geometry);
      const { even } = openFactors(geometry);
      const through = [even.level_frac / closed.level_frac, even.facing_frac / closed.facing_frac];
      // What is left is the mean transmittance over the directions, from grazing to straight on.
      for (const share of through) {
        expect(share).toBeGreaterThan(0.3);
        expect(share).toBeLessThan(0.8155);
      }
      if (distance_m === 6) expect(through[1]).toBeCloseTo(0.814, 2);
    }
  });
  it("approaches an open half space at the glass, dimmed by it", () => {
    const { even, overcast } = openFactors({ left_m: -20, right_m: 20, top_m: 20, distance_m: 0.02 });
    const diffuse = light.diffuseTransmittance_frac(glazing);
    expect(even.facing_frac).toBeCloseTo(diffuse / 2, 3);
    // The overcast sky is 0.396 of level light on an upright surface; glass favours its dimmer, lower part.
    expect(overcast.facing_frac / diffuse).toBeGreaterThan(0.36);
    expect(overcast.facing_frac / diffuse).toBeLessThan(0.4);
    expect(even.left_frac).toBeCloseTo(even.right_frac, 6);
  });
  it("loses two thirds of its sky from 0.3 to 1 m", () => {
    const share = openFactors({ distance_m: 1 }).even.level_frac / openFactors().even.level_frac;
    expect(share).toBeGreaterThan(0.3);
    expect(share).toBeLessThan(0.4);
  });
  it("is parted by the horizon: a facade is a fifth of the sky it hides", () => {
    const free = openFactors().even;
    const walled = openFactors({ horizon_deg: 90 }).even;
    expect(walled.level_frac / free.level_frac).toBeCloseTo(0.2, 6);
    const half = openFactors({ horizon_deg: 25 }).even;
    expect(half.facing_frac).toBeLessThan(free.facing_frac);
    expect(half.facing_frac).toBeGreaterThan(walled.facing_frac);
    // A house to the west only dims the right side of a crown behind a south window.
    const west = openFactors({
      horizon_deg: [0, 0, 0, 60, 60, 0, 0, 0].map((_, i) => (i === 6 || i === 5 ? 60 : 0)),
    });
    expect(west.even.right_frac).toBeLessThan(free.right_frac);
    expect(west.even.left_frac).toBeCloseTo(free.left_frac, 3);
  });
  it("sees the ground only below the leaf, and only from above it when level", () => {
    expect(openFactors().ground.facing_frac).toBe(0);
    const raised = openFactors({ bottom_m: -0.7 });
    expect(raised.ground.facing_frac).toBeGreaterThan(0.01);
    expect(raised.ground.level_frac).toBe(0);
    expect(openFactors({ bottom_m: -0.7, groundAlbedo: 0.7 }).ground.facing_frac).toBeCloseTo(
      3.5 * raised.ground.facing_frac,
      9,
    );
  });
  it("a deep reveal narrows it without a jump at depth 0", () => {
    const flat = openFactors().even.level_frac;
    expect(openFactors({ revealDepth_m: 1e-6 }).even.level_frac).toBeCloseTo(flat, 4);
    expect(openFactors({ revealDepth_m: 0.3 }).even.level_frac).toBeLessThan(flat);
    // A leaf far to the side of a deep opening sees its wall only.
    const aside = { left_m: 2, right_m: 2.4, distance_m: 0.1, revealDepth_m: 1 };
    expect(
      openFactors(aside).even.level_frac / openFactors({ ...aside, revealDepth_m: 0 }).even.level_frac,
    ).toBeCloseTo(0.2, 2);
  });
  it("turns with the crown: its front looks where it is told", () => {
    const turned = openFactors({ front_deg: 0 }).even;
    const straight = openFactors().even;
    expect(turned.front_frac).toBe(0);
    expect(turned.back_frac).toBeCloseTo(straight.front_frac, 9);
    expect(turned.left_frac).toBeCloseTo(straight.right_frac, 9);
  });
  it("needs edges in order and a leaf before the glass", () => {
    expect(() => light.paneView({ ...south, right_m: -1 })).toThrow(QuantityError);
    expect(() => light.paneView({ ...south, distance_m: 0.01 })).toThrow(
      "distance is 0.01 m; expected 0.02 to 20 m",
    );
    expect(() => light.paneView({ ...south, horizon_deg: [0, 95] })).toThrow(
      "horizon is 95 °; expected 0 to 90 °",
    );
    expect(() => light.paneView({ ...south, horizon_deg: [] })).toThrow(QuantityError);
  });
});

describe("the beam through a pane", () => {
  const sky = {
    diffuse_W_m2: 0,
    direct_W_m2: 800,
    elevation_deg: 30,
    azimuth_deg: 180,
    hourClearness_frac: 0.7,
  };
  const beam = (geometry: Partial<light.PaneGeometry>, at: Partial<typeof sky> = {}) =>
    light.paneLight([light.paneView({ ...south, ...geometry })], { ...sky, ...at }).direct;
  it("falls as sines and cosines say, less the glass", () => {
    const through = light.glazingTransmittance_frac({ ...glazing, glassAngle_deg: 30 });
    const { level_W_m2, facing_W_m2, sphere_W_m2, back_W_m2 } = beam({});
    expect(sphere_W_m2).toBeCloseTo(800 * through, 1);
    expect(level_W_m2).toBeCloseTo(800 * through * 0.5, 1);
    expect(facing_W_m2).toBeCloseTo(800 * through * Math.sqrt(0.75), 1);
    expect(back_W_m2).toBe(0);
  });
  it("misses a leaf too far back, too far aside, behind a house, behind the wall", () => {
    expect(beam({ distance_m: 3 }).level_W_m2).toBe(0);
    expect(beam({}, { azimuth_deg: 250 }).level_W_m2).toBe(0);
    expect(beam({ horizon_deg: 31 }).level_W_m2).toBe(0);
    expect(beam({ facing_deg: 0 }).level_W_m2).toBe(0);
    expect(beam({ revealDepth_m: 2 }, { elevation_deg: 60 }).level_W_m2).toBe(0);
    expect(beam({}, { elevation_deg: -2 }).level_W_m2).toBe(0);
  });
  it("lights the right side in the afternoon, seen facing out", () => {
    const { left_W_m2, right_W_m2 } = beam({}, { azimuth_deg: 220 });
    expect(right_W_m2).toBeGreaterThan(0);
    expect(left_W_m2).toBe(0);
  });
  it("leaves a wide crown by parts", () => {
    const shares = [60, 66, 69, 70, 71, 72, 74, 80].map(
      (elevation_deg) => beam({ crownWidth_m: 0.3, distance_m: 0.5 }, { elevation_deg }).sphere_W_m2,
    );
    expect(new Set(shares.map((share) => Math.sign(share))).size).toBe(2);
    expect(shares.some((share, i) => i > 0 && share > 0 && share < (shares[i - 1] ?? 0) * 0.8)).toBe(true);
  });
});

describe("days behind a window", () => {
  const view = light.paneView(south);
  const at = (dayOfYear_d: number, more: object = {}) =>
    light.windowDay({ views: [view], latitude_deg: 40, dayOfYear_d, ...more });
  it("are those of the sheet: December south 9.6 + 1.4 of 17.9, June 12 of 65", () => {
    const december = at(355, { step_min: 5 });
    expect(december.outdoors_mol_m2_d).toBeCloseTo(17.9, 1);
    expect(december.direct.level_mol_m2_d).toBeCloseTo(9.6, 1);
    expect(december.diffuse.level_mol_m2_d).toBeCloseTo(1.4, 0);
    const june = at(172, { step_min: 5 });
    expect(Math.abs(june.outdoors_mol_m2_d - 65)).toBeLessThan(1);
    expect(june.all.level_mol_m2_d).toBeCloseTo(12, 0);
  });
  it("on a dull winter day drop to 1 to 1.6", () => {
    for (const clearness of [0.15, 0.25]) {
      const { level_mol_m2_d } = at(355, { solar_MJ_m2_d: 13.3 * clearness }).all;
      expect(level_mol_m2_d).toBeGreaterThan(0.5);
      expect(level_mol_m2_d).toBeLessThan(1.7);
    }
  });
  it("keep all of the day's energy outdoors, step by step", () => {
    for (const step_min of [1, 7, 10, 60]) {
      expect(at(100, { solar_MJ_m2_d: 12, step_min }).outdoors_mol_m2_d).toBeCloseTo(12 * 0.45 * 4.57, 9);
    }
    const fine = at(355, { step_min: 1 }).all.level_mol_m2_d;
    expect(at(355).all.level_mol_m2_d / fine).toBeCloseTo(1, 1);
  });
  it("are dark in polar night and lit all round in polar day", () => {
    const polar = (dayOfYear_d: number, solar_MJ_m2_d: number) =>
      light.windowDay({ views: [view], latitude_deg: 80, dayOfYear_d, solar_MJ_m2_d });
    expect(polar(355, 0).all.sphere_mol_m2_d).toBe(0);
    expect(polar(172, 20).outdoors_mol_m2_d).toBeCloseTo(20 * 0.45 * 4.57, 9);
  });
  it("mirror across the equator and between east and west", () => {
    const north = light.paneView({ ...south, facing_deg: 0 });
    const down = light.windowDay({ views: [north], latitude_deg: -40, dayOfYear_d: 172, solar_MJ_m2_d: 6 });
    const up = at(355, { solar_MJ_m2_d: 6 });
    // The sun is nearer in the southern summer, so the same radiation is a clearer day in June.
    const ratio = down.all.level_mol_m2_d / up.all.level_mol_m2_d;
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(1.15);
    const day = (facing_deg: number) =>
      light.windowDay({
        views: [light.paneView({ ...south, facing_deg })],
        latitude_deg: 40,
        dayOfYear_d: 100,
        solar_MJ_m2_d: 15,
      }).all;
    expect(day(90).level_mol_m2_d).toBeCloseTo(day(270).level_mol_m2_d, 6);
    expect(day(90).right_mol_m2_d).toBeCloseTo(day(270).left_mol_m2_d, 6);
  });
  it("add up over the panes of a corner, and scale sky and ground by the calibration only", () => {
    const west = light.paneView({ ...south, facing_deg: 270, front_deg: 180 });
    const both = light.windowDay({
      views: [view, west],
      latitude_deg: 40,
      dayOfYear_d: 60,
      solar_MJ_m2_d: 9,
    });
    const one = at(60, { solar_MJ_m2_d: 9 });
    expect(both.all.right_mol_m2_d).toBeGreaterThan(one.all.right_mol_m2_d);
    expect(both.outdoors_mol_m2_d).toBeCloseTo(one.outdoors_mol_m2_d, 12);
    const scaled = at(60, { solar_MJ_m2_d: 9, spotRatio: 0.5 });
    expect(scaled.diffuse.level_mol_m2_d).toBeCloseTo(one.diffuse.level_mol_m2_d / 2, 12);
    expect(scaled.direct.level_mol_m2_d).toBeCloseTo(one.direct.level_mol_m2_d, 12);
  });
  it("are the same by the year as one by one, in the caller's room", () => {
    const daysOfYear_d = Array.from({ length: 365 }, (_, day) => day + 1);
    const solarDays_MJ_m2_d = daysOfYear_d.map((day) => 10 + (day % 7));
    const into = new Float64Array(light.windowDay_n * 365);
    const year = light.windowDays_mol_m2_d(
      { views: [view], latitude_deg: 48, daysOfYear_d, solarDays_MJ_m2_d },
      into,
    );
    expect(year).toBe(into);
    const one = light.windowDay({
      views: [view],
      latitude_deg: 48,
      dayOfYear_d: 200,
      solar_MJ_m2_d: 10 + (200 % 7),
    });
    const row = year.subarray(light.windowDay_n * 199, light.windowDay_n * 200);
    expect((row[0] ?? 0) + (row[7] ?? 0)).toBeCloseTo(one.all.level_mol_m2_d, 12);
    expect(row[14]).toBeCloseTo(one.outdoors_mol_m2_d, 12);
    expect(year.every((value) => Number.isFinite(value) && value >= 0)).toBe(true);
  });
  it("are the sum of the moments of a real date, whatever the longitude", () => {
    for (const [longitude_deg, date_ms] of [
      [0, Date.UTC(2025, 11, 21)],
      [-110, Date.UTC(2026, 3, 10)],
      [150, Date.UTC(2026, 7, 1)],
    ] as const) {
      const from_ms = date_ms - (longitude_deg / 15) * 3_600_000;
      let [level, outdoors] = [0, 0];
      for (let minute = 2.5; minute < 1440; minute += 5) {
        const instant_ms = from_ms + minute * 60_000;
        const stand = sun.sunPosition({ instant_ms, latitude_deg: 40, longitude_deg });
        const hourGlobal_W_m2 = sun.clearSkyGlobal_W_m2(stand.elevation_deg);
        const normalExtraterrestrial_W_m2 = sun.normalExtraterrestrialAt_W_m2(instant_ms);
        const split = sun.diffuseSplit({ ...stand, hourGlobal_W_m2, normalExtraterrestrial_W_m2 });
        const { diffuse, direct } = light.paneLight([view], { ...stand, ...split });
        level += (diffuse.level_W_m2 + direct.level_W_m2) * 300e-6 * 0.45 * 4.57;
        outdoors += hourGlobal_W_m2 * 300e-6 * 0.45 * 4.57;
      }
      const dayOfYear_d =
        Math.floor((date_ms - Date.UTC(new Date(date_ms).getUTCFullYear(), 0, 1)) / 86_400_000) + 1;
      const day = at(dayOfYear_d, { step_min: 5 });
      expect(day.outdoors_mol_m2_d / outdoors).toBeCloseTo(1, 2);
      expect(Math.abs(day.all.level_mol_m2_d / level - 1)).toBeLessThan(0.03);
    }
  });
  it("refuse what is no day", () => {
    expect(() => at(0)).toThrow("day of year is 0 d; expected 1 to 366 d");
    expect(() => at(1, { solar_MJ_m2_d: 60 })).toThrow(QuantityError);
    expect(() => at(1, { spotRatio: 0 })).toThrow("spot ratio is 0; expected 0.05 to 5");
    const days = { views: [view], latitude_deg: 48, daysOfYear_d: [1, 2], solarDays_MJ_m2_d: [1] };
    expect(() => light.windowDays_mol_m2_d(days)).toThrow(QuantityError);
  });
});
