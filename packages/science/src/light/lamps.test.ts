import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import * as light from "./index.ts";

const flux_umol_s = 100;

describe("shapes of lamps", () => {
  it("all look like a point from afar", () => {
    const far = { flux_umol_s, height_m: 15 };
    const point = light.pointLamp_umol_m2_s(far);
    expect(light.discLamp_umol_m2_s({ ...far, radius_m: 0.3 }) / point).toBeCloseTo(1, 2);
    expect(light.rectangleLamp_umol_m2_s({ ...far, length_m: 0.6, width_m: 0.3 }) / point).toBeCloseTo(1, 2);
    expect(light.stripLamp_umol_m2_s({ ...far, length_m: 1.2 }) / point).toBeCloseTo(1, 2);
  });
  it("send all their photons through a plane below", () => {
    const lamps: readonly light.LampShape[] = [
      { shape: "point" },
      { shape: "point", beam_deg: 60 },
      { shape: "disc", radius_m: 0.25 },
      { shape: "rectangle", length_m: 0.6, width_m: 0.3 },
      { shape: "strip", length_m: 1.2 },
    ];
    for (const shape of lamps) {
      const lamp = { ...shape, flux_umol_s, x_m: 0, y_m: 0, z_m: 0.5 };
      const floor = { fromX_m: -14, toX_m: 14, fromY_m: -14, toY_m: 14, z_m: 0 };
      // A grid of 0.7 m is coarse under a lamp at 0.5 m: sum by rings of a finer one.
      let sum = 0;
      for (let ring = 0; ring < 300; ring += 1) {
        const radius = 0.0005 * (ring + 0.5) ** 2;
        const width = 0.001 * (ring + 0.5);
        for (let turn = 0; turn < 24; turn += 1) {
          const angle = (turn * Math.PI) / 12;
          const spot = { x_m: radius * Math.cos(angle), y_m: radius * Math.sin(angle), z_m: 0 };
          sum += light.lampsLevel_umol_m2_s([lamp], spot) * radius * width * (Math.PI / 12);
        }
      }
      expect(sum / flux_umol_s, shape.shape).toBeGreaterThan(0.97);
      expect(sum / flux_umol_s, shape.shape).toBeLessThan(1.005);
      expect(
        light.lampUtilisation_frac([lamp], {
          ...floor,
          fromX_m: -0.5,
          toX_m: 0.5,
          fromY_m: -0.3,
          toY_m: 0.3,
        }),
      ).toBeLessThan(1);
    }
  });
  it("agree with the small pieces that stand for them around a crown", () => {
    for (const shape of [
      { shape: "disc", radius_m: 0.3 },
      { shape: "rectangle", length_m: 0.6, width_m: 0.4 },
      { shape: "strip", length_m: 1.2 },
    ] as const) {
      const lamp = { ...shape, flux_umol_s, x_m: 0.2, y_m: -0.1, z_m: 0.45 };
      const spot = { x_m: 0, y_m: 0.3, z_m: 0.05 };
      const {
        level_umol_m2_s,
        sphere_umol_m2_s,
        front_umol_m2_s,
        back_umol_m2_s,
        left_umol_m2_s,
        right_umol_m2_s,
      } = light.lampsPlanes([lamp], spot);
      expect(sphere_umol_m2_s).toBeGreaterThan(level_umol_m2_s);
      // The lamp hangs behind the spot and to its right.
      expect(back_umol_m2_s).toBeGreaterThan(front_umol_m2_s);
      expect(right_umol_m2_s).toBeGreaterThan(left_umol_m2_s);
      const turned = light.lampsPlanes([lamp], spot, 180);
      expect(turned.front_umol_m2_s).toBeCloseTo(back_umol_m2_s, 9);
      expect(turned.left_umol_m2_s).toBeCloseTo(right_umol_m2_s, 9);
    }
  });
  it("are even on all sides under the middle, and nothing past the lamp", () => {
    const lamp = {
      shape: "rectangle",
      length_m: 0.6,
      width_m: 0.6,
      flux_umol_s,
      x_m: 0,
      y_m: 0,
      z_m: 0.4,
    } as const;
    const under = light.lampsPlanes([lamp], { x_m: 0, y_m: 0, z_m: 0 });
    expect(under.front_umol_m2_s).toBeCloseTo(under.left_umol_m2_s, 9);
    expect(light.lampsLevel_umol_m2_s([lamp], { x_m: 0, y_m: 0, z_m: 0.5 })).toBe(0);
    expect(light.lampsPlanes([lamp], { x_m: 0, y_m: 0, z_m: 0.5 }).sphere_umol_m2_s).toBe(0);
  });
  it("narrow beams are brighter in the middle", () => {
    const at = (beam_deg: number) => light.pointLamp_umol_m2_s({ flux_umol_s, height_m: 0.5, beam_deg });
    expect(at(60)).toBeGreaterThan(at(120));
    expect(at(120)).toBeCloseTo(100 / (Math.PI * 0.25), 9);
  });
  it("below a panel of 0.6 m at 0.3 m the inverse square claims 2.3 times too much", () => {
    const claimed = light.pointLamp_umol_m2_s({ flux_umol_s, height_m: 0.3 });
    const panel = light.rectangleLamp_umol_m2_s({ flux_umol_s, length_m: 0.6, width_m: 0.6, height_m: 0.3 });
    expect(claimed / panel).toBeCloseTo(2.3, 1);
  });
  it("refuse what is no lamp", () => {
    expect(() => light.discLamp_umol_m2_s({ flux_umol_s, radius_m: 0, height_m: 1 })).toThrow(
      "radius is 0 m; expected 0.001 to 5 m",
    );
    expect(() => light.stripLamp_umol_m2_s({ flux_umol_s: -1, length_m: 1, height_m: 1 })).toThrow(
      QuantityError,
    );
  });
});

describe("a lamp from readings", () => {
  const panel = (height_m: number) =>
    light.rectangleLamp_umol_m2_s({ flux_umol_s, length_m: 0.6, width_m: 0.6, height_m });
  it("of two heights foretells others to a percent", () => {
    const heights_m = [0.3, 0.6];
    const fit = light.fitLamp({ heights_m, readings_umol_m2_s: heights_m.map(panel) });
    expect(fit.quality).toBe("fitted");
    const { strength_umol_s, size_m } = fit;
    for (const height_m of [0.25, 0.45, 0.8, 1]) {
      const told = light.fittedLamp_umol_m2_s({
        strength_umol_s: strength_umol_s ?? 0,
        size_m: size_m ?? 0,
        height_m,
      });
      expect(Math.abs(told / panel(height_m) - 1)).toBeLessThan(0.02);
    }
  });
  it("of many heights weighs them all", () => {
    const heights_m = [0.2, 0.3, 0.4, 0.6, 0.8];
    const noise = [1.03, 0.98, 1.01, 0.97, 1.02];
    const fit = light.fitLamp({
      heights_m,
      readings_umol_m2_s: heights_m.map((h, i) => panel(h) * (noise[i] ?? 1)),
    });
    expect(fit.size_m).toBeGreaterThan(0.25);
    expect(fit.size_m).toBeLessThan(0.42);
  });
  it("is rejected where the light rises, falls too fast, or the heights are one", () => {
    const say = (readings_umol_m2_s: number[], heights_m = [0.3, 0.6]) =>
      light.fitLamp({ heights_m, readings_umol_m2_s });
    expect(say([100, 120]).why).toContain("walls reflect");
    expect(say([400, 20]).why).toContain("faster than from a point");
    expect(say([100, 90], [0.3, 0.305]).quality).toBe("rejected");
    // A little too fast is the reading's error: a point.
    expect(say([400, 99])).toMatchObject({ quality: "point-like", size_m: 0 });
    expect(() => say([100])).toThrow(QuantityError);
  });
  it("of one height is rough: within 5 % near it for each form", () => {
    for (const [form, length_m, at] of [
      ["rectangle", 0.6, panel],
      [
        "disc",
        0.5,
        (height_m: number) => light.discLamp_umol_m2_s({ flux_umol_s, radius_m: 0.25, height_m }),
      ],
      [
        "strip",
        1.2,
        (height_m: number) => light.stripLamp_umol_m2_s({ flux_umol_s, length_m: 1.2, height_m }),
      ],
      ["point", 0.1, (height_m: number) => light.pointLamp_umol_m2_s({ flux_umol_s, height_m })],
    ] as const) {
      const rough = light.roughLamp({ form, length_m, height_m: 0.5, ppfd_umol_m2_s: at(0.5) });
      const told = light.fittedLamp_umol_m2_s({ ...rough, height_m: 0.6 });
      expect(Math.abs(told / at(0.6) - 1), form).toBeLessThan(0.05);
    }
  });
});

describe("the map of a bench", () => {
  const readings = [
    { x_m: 0, y_m: 0, ratio: 1.2 },
    { x_m: 0.6, y_m: 0, ratio: 0.9 },
    { x_m: 0, y_m: 0.5, ratio: 1.1 },
    { x_m: 0.6, y_m: 0.5, ratio: 0.95 },
  ];
  it("leans to the nearest reading and forgets them all from a metre off", () => {
    expect(light.mapRatio(readings, { x_m: 0, y_m: 0 })).toBeGreaterThan(1.1);
    expect(light.mapRatio(readings, { x_m: 0.6, y_m: 0 })).toBeLessThan(0.97);
    expect(light.mapRatio(readings, { x_m: 3, y_m: 3 })).toBe(1);
    expect(light.mapRatio([], { x_m: 0, y_m: 0 })).toBe(1);
    const seam = [1.0999, 1.1001].map((x_m) => light.mapRatio(readings, { x_m, y_m: 0 }));
    expect(seam[0]).toBeCloseTo(seam[1] ?? 0, 3);
  });
  it("says how sure it is, never better than a tenth, and is rings until the fourth reading", () => {
    expect(light.mapError(readings)).toMatchObject({ state: "map" });
    expect(light.mapError(readings.slice(0, 3)).state).toBe("rings");
    const even = readings.map((reading) => ({ ...reading, ratio: 1.1 }));
    expect(light.mapError(even).error_frac).toBe(0.1);
    const wild = readings.map((reading, i) => ({ ...reading, ratio: i % 2 === 0 ? 2 : 0.5 }));
    expect(light.mapError(wild).error_frac).toBeGreaterThan(0.5);
    expect(() => light.mapError([{ x_m: 0, y_m: 0, ratio: 0 }])).toThrow("ratio is 0; expected 0.01 to 100");
  });
});

describe("hours of a lamp", () => {
  const lamp = { target_mol_m2_d: 14, natural_mol_m2_d: 5, ppfd_umol_m2_s: 200, cap_h: 16 };
  it("close the gap, to the quarter of an hour", () => {
    expect(light.lampHours(lamp)).toMatchObject({ state: "enough", hours_h: 12.5, shortfall_mol_m2_d: 0 });
    expect(light.lampHours({ ...lamp, natural_mol_m2_d: 14 })).toMatchObject({ state: "off", hours_h: 0 });
    expect(light.lampHours({ ...lamp, natural_mol_m2_d: 20 }).state).toBe("off");
  });
  it("stop at the cap and say what is short and what would do", () => {
    const short = light.lampHours({ ...lamp, ppfd_umol_m2_s: 100 });
    expect(short).toMatchObject({ state: "short", hours_h: 16 });
    expect(short.lamp_mol_m2_d + short.shortfall_mol_m2_d).toBeCloseTo(9, 9);
    const would = light.lampHours({ ...lamp, ppfd_umol_m2_s: short.neededPpfd_umol_m2_s });
    expect(would).toMatchObject({ state: "enough", hours_h: 16 });
    expect(light.lampHours({ ...lamp, cannotOverlap_h: 10 }).hours_h).toBe(6);
    expect(light.lampHours({ ...lamp, ppfd_umol_m2_s: 0 })).toMatchObject({
      state: "short",
      lamp_mol_m2_d: 0,
    });
    expect(light.lampHours({ ...lamp, cannotOverlap_h: 20 })).toMatchObject({
      hours_h: 0,
      neededPpfd_umol_m2_s: 0,
    });
  });
  it("lie in the day first and extend it at the end asked for", () => {
    const times = (hours_h: number, extend: "morning" | "evening" | "both") =>
      light.lampTimes({ hours_h, dawn_h: 7, dusk_h: 17, extend });
    expect(times(8, "evening")).toEqual({ on_h: 9, off_h: 17, dayLength_h: 10 });
    expect(times(8, "morning")).toEqual({ on_h: 7, off_h: 15, dayLength_h: 10 });
    expect(times(14, "morning")).toEqual({ on_h: 3, off_h: 17, dayLength_h: 14 });
    expect(times(14, "both")).toEqual({ on_h: 5, off_h: 19, dayLength_h: 14 });
    expect(times(18, "evening")).toEqual({ on_h: 7, off_h: 1, dayLength_h: 18 });
  });
  it("are set anew once a week at most, sooner only when far off", () => {
    const timer = { set_h: 10, wanted_h: 11, sinceSet_d: 6, error_mol_m2_d: 3 };
    expect(light.resetTimer(timer)).toBe(false);
    expect(light.resetTimer({ ...timer, sinceSet_d: 7 })).toBe(true);
    expect(light.resetTimer({ ...timer, error_mol_m2_d: -3.1 })).toBe(true);
    expect(light.resetTimer({ ...timer, sinceSet_d: 30, wanted_h: 10.2 })).toBe(false);
  });
});

describe("power of a lamp", () => {
  it("becomes photons, money and heat", () => {
    expect(light.lampFlux_umol_s({ power_W: 100, efficacy_umol_J: 2.5, burnt_h: 10_000 })).toBeCloseTo(
      225,
      9,
    );
    expect(light.lampFlux_umol_s({ power_W: 100, efficacy_umol_J: 2.5, dimming_frac: 0 })).toBe(0);
    expect(light.lampFlux_umol_s({ power_W: 100, efficacy_umol_J: 2, burnt_h: 200_000 })).toBe(100);
    const plain = { power_W: 100, hours_h: 10, days_n: 10, price_minor_per_kWh: 30 };
    expect(light.lampCost(plain)).toEqual({ energy_kWh: 10, cost_minor: 300 });
    expect(light.lampCost({ ...plain, cheapHours_h: 5, cheapPrice_minor_per_kWh: 10 }).cost_minor).toBe(200);
    expect(() => light.lampCost({ ...plain, cheapHours_h: 11 })).toThrow(QuantityError);
    expect(light.cabinetRise_C({ power_W: 100, airflow_m3_s: 0.01 })).toBeCloseTo(8.29, 2);
  });
  it("is shared by the light that reaches each pot, to the last hundredth", () => {
    const shares = light.costOfPots_minor({ cost_minor: 500, photons_umol_s: [3, 1, 0, 6] });
    expect(shares).toEqual([150, 50, 0, 300]);
    expect(light.costOfPots_minor({ cost_minor: 10, photons_umol_s: [0, 0] })).toEqual([5, 5]);
  });
});
