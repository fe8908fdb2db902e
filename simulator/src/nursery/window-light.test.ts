import { describe, expect, test } from "vitest";
import { spotDailyLight_mol_m2_d } from "./bench-air.ts";
import { type LocalDay, localDays } from "./calendar.ts";
import { chanceOf } from "./chance.ts";
import { lampHours, lampShare_frac, type ShelfLamp } from "./lamp-light.ts";
import { livedInRoom } from "./lived-in-room.ts";
import { outdoorAir } from "./outdoor-air.ts";
import { glassPasses_frac, type Opposite, type Pane, type WindowPlace, windowLight } from "./window-light.ts";

const ZONE = "America/Los_Angeles";
const ground = { latitude_deg: 47.6, longitude_deg: -122.3, elevation_m: 50 };
const days = localDays(ZONE, "2026-01-10", 12);
const weather = days.map(({ date }) => ({ date, rain_mm: 0, tMax_C: 9, tMin_C: 1, wind_m_s: 2 }));
const sky = outdoorAir(days, weather, ground, chanceOf("sky"));
const pane: Pane = {
  faces_deg: 180,
  width_m: 1.4,
  height_m: 1.3,
  foot_m: -0.15,
  reveal_m: 0.1,
  panes_n: 2,
  extinction: 0.02,
  clear_frac: 0.85,
  heat_frac: 0.8,
};
const opposite: Opposite = { roofs_deg: 8, brow_deg: 90, ground_frac: 0.2, walls_frac: 0.3 };
const indoors = { surfaces_m2: 60, reflectance_frac: 0.5 };
const near: WindowPlace = { aside_m: 0, back_m: 0.15 };

const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
function light(change: { pane?: Partial<Pane>; opposite?: Partial<Opposite>; place?: Partial<WindowPlace> }) {
  const place = { ...near, ...change.place };
  const [one] = windowLight(
    sky,
    ground,
    { ...pane, ...change.pane },
    { ...opposite, ...change.opposite },
    indoors,
    [place],
    0.3,
  );
  return sum(one?.level_W_m2 ?? new Float64Array());
}

describe("glass", () => {
  test("straight through one clear pane passes 0.92, two 0.85; less when slanting, nearly none along it", () => {
    expect(glassPasses_frac(1, 1, 0)).toBeCloseTo(0.918, 2);
    expect(glassPasses_frac(1, 2, 0)).toBeCloseTo(0.849, 2);
    const by = [0, 30, 60, 75, 89].map((deg) => glassPasses_frac(Math.cos((deg * Math.PI) / 180), 2, 0.02));
    expect([...by].sort((a, b) => b - a)).toEqual(by);
    expect(by[4]).toBeLessThan(0.15);
  });
});

describe("light at a window", () => {
  test("a great bare hole with the place in it gives half of the even sky, less what slants on the glass", () => {
    const open = { faces_deg: 0, width_m: 40, height_m: 40, foot_m: -20, reveal_m: 0, extinction: 0 };
    const hole = { ...pane, ...open, panes_n: 1 as const, clear_frac: 1 };
    const bare = { roofs_deg: 0, brow_deg: 90, ground_frac: 0, walls_frac: 0 };
    const still = { surfaces_m2: 60, reflectance_frac: 0 };
    const [one] = windowLight(sky, ground, hole, bare, still, [{ aside_m: 0, back_m: 0.02 }], 0);
    // North in January: no sun gets in, only the half of the sky before the wall. Of that a meter that lies level gets two
    // thirds through one pane, since rays from high up slant on it (0.335 by integrating on a much finer grid).
    const share = sum(one?.level_W_m2 ?? new Float64Array()) / sum(sky.diffuse_W_m2);
    expect(share).toBeGreaterThan(0.325);
    expect(share).toBeLessThan(0.345);
  });

  test("falls with distance, with roofs and brows, with curtains, and behind the wall; grows with the pane", () => {
    // Northwards, where no sun gets in: a low sun reaches deep into a room.
    const north = (change: Parameters<typeof light>[0]) =>
      light({ ...change, pane: { ...change.pane, faces_deg: 0 } });
    const usual = north({});
    expect(north({ place: { back_m: 0.6 } })).toBeLessThan(0.6 * usual);
    expect(north({ place: { aside_m: 1 } })).toBeLessThan(0.6 * usual);
    expect(north({ opposite: { roofs_deg: 35 } })).toBeLessThan(0.85 * usual);
    expect(north({ opposite: { brow_deg: 40 } })).toBeLessThan(0.8 * usual);
    expect(north({ pane: { clear_frac: 0.425 } })).toBeCloseTo(usual / 2, 6);
    expect(north({ pane: { width_m: 2, height_m: 2 } })).toBeGreaterThan(1.05 * usual);
  });

  test("in winter comes from the south, and a house to one side takes the sun of its hours only", () => {
    expect(light({ pane: { faces_deg: 0 } })).toBeLessThan(0.4 * light({}));
    const side = (from_deg: number, to_deg: number) => ({ side: { from_deg, to_deg, height_deg: 50 } });
    expect(light({ opposite: side(-30, 30) })).toBeLessThan(light({ opposite: side(-85, -60) }));
  });
});

describe("light under a lamp", () => {
  const lamp: ShelfLamp = {
    ppfd_umol_m2_s: 200,
    hangs_m: 0.4,
    thrownBack_frac: 0.2,
    fades_frac_y: 0.1,
    on_h: 18,
    burns_h: 12,
    slipsPerDay: 0,
  };
  const burning = (change: Partial<ShelfLamp>) =>
    lampHours({ ...lamp, ...change }, days, sky.air.dayOf, sky.air.from_ms, chanceOf("clock"));

  test("is that under the middle less towards the edge, never under what walls throw back", () => {
    expect(lampShare_frac(lamp, 0)).toBe(1);
    expect(lampShare_frac(lamp, 0.4)).toBeCloseTo(0.2 + 0.8 / 4, 9);
    expect(lampShare_frac(lamp, 9)).toBeGreaterThan(0.2);
  });

  test("burns its hours past midnight, fades, changes hours on its day, and goes wrong when its clock does", () => {
    const usual = burning({});
    const lit = usual.filter((on) => on > 0).length / days.length;
    expect(lit).toBeCloseTo(12, 6);
    expect(usual[usual.length - 1]).toBeLessThan(usual[1] as number);
    const changed = burning({ change: { day: 6, on_h: 18, burns_h: 8 } });
    expect(changed.filter((on) => on > 0).length / days.length).toBeCloseTo(10, 0);
    expect(burning({ slipsPerDay: 0.5 })).not.toEqual(usual);
  });
});

describe("a room that people live in", () => {
  const room = {
    day_C: 21,
    night_C: 16,
    wakes_h: 7,
    sleeps_h: 22,
    outAtWork_C: 0,
    heatsBelow_C: 14,
    gains_C: 2,
    slow_h: 12,
    leaks_frac: 0.3,
    chill_frac: 0,
    radiator_C: 0,
    moisture_kPa: 0.2,
    airs_per_h: 0.5,
    wind_m_s: 0.1,
    fan_m_s: 0,
    lampWarmth_C: 0,
  };
  const air = (change: Partial<typeof room>, by: readonly LocalDay[] = days, under = sky) =>
    livedInRoom(by, under, { ...room, ...change }, { stray_frac: 0.02 }, 2, chanceOf("room"));
  const mean = (column: Float64Array) => sum(column) / column.length;

  test("is held by the heating in winter, colder by night and at a cold pane, warmer over a radiator", () => {
    const usual = air({});
    expect(mean(usual.air_C)).toBeGreaterThan(16);
    expect(mean(usual.air_C)).toBeLessThan(21.5);
    expect(mean(air({ night_C: 12, slow_h: 5 }).air_C)).toBeLessThan(mean(usual.air_C));
    expect(mean(air({ chill_frac: 0.25 }).air_C)).toBeLessThan(mean(usual.air_C) - 2);
    expect(mean(air({ radiator_C: 3 }).air_C)).toBeGreaterThan(mean(usual.air_C) + 0.3);
    expect(mean(air({ outAtWork_C: 4, slow_h: 4 }).air_C)).toBeLessThan(mean(usual.air_C));
  });

  test("follows the outside when nobody heats, and is damp as the outside is", () => {
    const summer = localDays(ZONE, "2026-07-10", 12);
    const warm = (tMax_C: number) =>
      outdoorAir(
        summer,
        summer.map(({ date }) => ({ date, rain_mm: 0, tMax_C, tMin_C: tMax_C - 10, wind_m_s: 2 })),
        ground,
        chanceOf("summer"),
      );
    const [mild, hot] = [air({}, summer, warm(24)), air({}, summer, warm(32))];
    expect(mean(hot.air_C)).toBeGreaterThan(mean(mild.air_C) + 6);
    expect(mean(hot.vapour_kPa)).toBeGreaterThan(mean(mild.vapour_kPa));
  });

  test("gives each spot its light and the bench their mean", () => {
    const bench = air({});
    const spots = (bench.spots ?? []).map((spot) => spotDailyLight_mol_m2_d(bench, spot, days.length));
    expect(spots).toHaveLength(2);
    expect(spots[0]?.every((light_mol) => light_mol > 0)).toBe(true);
    expect(sum(bench.ppfd_umol_m2_s)).toBeCloseTo(
      sum(bench.spots?.[0]?.level_umol_m2_s ?? new Float64Array()),
      6,
    );
  });
});
