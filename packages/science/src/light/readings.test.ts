import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import * as light from "./index.ts";

/** CIE 015:2018, illuminants LED-V1 and FL10, 400 to 780 nm in steps of 20 nm taken from the tables of 5 nm below. */
const from400 = (values: string): { wavelengths_nm: number[]; spectralPower: number[] } => {
  const spectralPower = values.split(" ").map(Number);
  return { wavelengths_nm: spectralPower.map((_, i) => 400 + 5 * i), spectralPower };
};
const ledV1 = from400(
  "2.62 8.43 16.51 17.9 11.26 5.94 3.31 2.25 2.07 2.29 2.68 3.15 3.64 4.18 4.83 5.57 6.4 7.27 8.08 8.73 9.21 9.54 9.75 9.91 10.06 10.26 10.51 10.82 11.17 11.55 11.92 12.3 12.68 13.07 13.52 14.06 14.7 15.46 16.38 17.39 18.5 19.51 20.52 21.52 22.38 23.07 23.51 23.71 23.67 23.35 22.81 22.01 21.03 19.91 18.69 17.39 16.05 14.69 13.36 12.04 10.8 9.62 8.54 7.57 6.68 5.86 5.12",
);
const fl10 = from400(
  "1.48 12.16 2.12 2.7 3.74 5.14 6.75 34.39 14.86 10.4 10.76 10.67 10.11 9.27 8.29 7.29 7.91 16.64 16.73 10.44 5.94 3.34 2.35 1.88 1.59 1.47 1.8 5.71 40.98 73.69 33.61 8.24 3.38 2.47 2.14 4.86 11.45 14.79 12.16 8.97 6.52 8.31 44.12 34.55 12.09 12.15 10.52 4.43 1.95 2.19 3.19 2.77 2.29 2 1.52 1.35 1.47 1.79 1.74 1.02 1.14 3.32 4.49 2.05 0.49 0.24 0.21",
);
const ledB2 = from400(
  "0.02 0.05 0.11 0.24 0.5 0.96 1.71 2.82 4.71 7.87 10.56 10.24 7.94 6.25 5.23 4.36 4 4.17 4.59 5.21 5.96 6.72 7.44 8.11 8.74 9.39 10.06 10.75 11.49 12.25 13.05 13.86 14.7 15.5 16.28 17 17.69 18.31 18.83 19.24 19.51 19.59 19.48 19.19 18.72 18.1 17.34 16.47 15.51 14.49 13.42 12.33 11.26 10.24 9.25 8.3 7.42 6.6 5.85 5.17 4.55 3.99 3.49 3.04 2.65 2.31 2.01",
);

describe("units of light", () => {
  it("integrates standard spectra to the constants it carries", () => {
    for (const [spectrum, carried] of [
      [ledV1, light.standardSpectra["LED-V1"]],
      [fl10, light.standardSpectra.FL10],
      [ledB2, light.standardSpectra["LED-B2"]],
    ] as const) {
      const { light_lx_per_umol, photons_umol_J } = light.lightOfSpectrum(spectrum);
      expect(Math.abs(light_lx_per_umol - carried.light_lx_per_umol)).toBeLessThan(0.3);
      expect(Math.abs(photons_umol_J - carried.photons_umol_J)).toBeLessThan(0.02);
    }
    // One colour alone: photons per joule are its wavelength over 119.6.
    const green = { wavelengths_nm: [399, 400, 549, 550, 551, 700], spectralPower: [0, 0, 0, 1, 0, 0] };
    expect(light.lightOfSpectrum(green).photons_umol_J).toBeCloseTo(550 / 119.627, 3);
  });
  it("refuses a spectrum with gaps, backwards or dark", () => {
    const flat = { wavelengths_nm: [400, 700], spectralPower: [1, 1] };
    expect(() => light.lightOfSpectrum({ ...flat, wavelengths_nm: [420, 700] })).toThrow(QuantityError);
    expect(() => light.lightOfSpectrum({ ...flat, wavelengths_nm: [700, 400] })).toThrow(QuantityError);
    expect(() => light.lightOfSpectrum({ ...flat, spectralPower: [0, 0] })).toThrow(QuantityError);
  });
  it("goes to lux and back, and not at all for red and blue", () => {
    for (const source of Object.keys(light.lightSourceRatios) as light.LightSource[]) {
      const illuminance_lx = light.luxFromPpfd_lx({ ppfd_umol_m2_s: 123, source });
      expect(light.ppfdFromLux_umol_m2_s({ illuminance_lx, source })).toBeCloseTo(123, 9);
      const { light_lx_per_umol, low_lx_per_umol, high_lx_per_umol } = light.lightSourceRatios[source];
      expect(light_lx_per_umol).toBeGreaterThanOrEqual(low_lx_per_umol);
      expect(light_lx_per_umol).toBeLessThanOrEqual(high_lx_per_umol);
    }
    const blurple = { illuminance_lx: 3000, source: "red and blue" } as const;
    expect(() => light.ppfdFromLux_umol_m2_s(blurple)).toThrow("no lux constant is safe");
    expect(light.ppfdFromLux_umol_m2_s({ ...blurple, light_lx_per_umol: 30 })).toBe(100);
    expect(() => light.luxFromPpfd_lx({ ppfd_umol_m2_s: 1, source: "red and blue" })).toThrow(QuantityError);
  });
  it("adds up a day of steps as a steady light", () => {
    const steps_umol_m2_s = new Array(144).fill(100);
    expect(light.lightOfSteps_mol_m2_d({ steps_umol_m2_s, step_min: 10 })).toBeCloseTo(8.64, 9);
    expect(light.dailyLight_mol_m2_d({ ppfd_umol_m2_s: 100, lit_h: 24 })).toBeCloseTo(8.64, 9);
    expect(light.dailyLight_mol_m2_d({ ppfd_umol_m2_s: 1, lit_h: 24 })).toBeCloseTo(0.0864, 12);
    expect(() => light.lightOfSteps_mol_m2_d({ steps_umol_m2_s, step_min: 30 })).toThrow(QuantityError);
  });
});

describe("calibration of a spot", () => {
  const views = [
    light.paneView({
      facing_deg: 90,
      left_m: -0.6,
      right_m: 0.6,
      bottom_m: 0,
      top_m: 1.4,
      distance_m: 0.3,
      glazing: { panes_n: 2 },
    }),
  ];
  it("is 1 when the reading is the model, whatever the meter's gain", () => {
    const modelled_frac = light.overcastShare_frac(views);
    for (const gain of [0.3, 1, 60]) {
      const spot = { readInside: gain * 100 * modelled_frac, readOutside: gain * 100, modelled_frac };
      expect(light.spotCalibration(spot)).toMatchObject({ state: "accepted", ask: "" });
      expect(light.spotCalibration(spot).spotRatio).toBeCloseTo(1, 12);
    }
  });
  it("asks when it is not to be believed", () => {
    const spot = { readInside: 100, readOutside: 5000, modelled_frac: 0.2 };
    expect(light.spotCalibration(spot)).toMatchObject({ state: "ask" });
    expect(light.spotCalibration(spot).ask).toContain("tree");
    expect(light.spotCalibration({ ...spot, readInside: 2000 }).ask).toContain("declination");
    expect(() => light.spotCalibration({ ...spot, readInside: 6000 })).toThrow(
      "read inside is 6000; expected 0.01 to 5000",
    );
  });
  it("of a meter wants a high sun", () => {
    expect(() => light.meterGain({ apparentElevation_deg: 25, reading: 800, inLux: false })).toThrow(
      QuantityError,
    );
    const one = light.meterGain({ apparentElevation_deg: 50, reading: 800, inLux: false });
    const lux = light.meterGain({ apparentElevation_deg: 50, reading: 800 * 54, inLux: true });
    expect(lux.gain).toBeCloseTo(one.gain, 12);
  });
});

describe("readings", () => {
  const usual = { reading: 4000, inLux: true, apparentElevation_deg: 40, indoors: true };
  const level = (more: Partial<Parameters<typeof light.screenLightReading>[0]>) =>
    light.screenLightReading({ ...usual, ...more }).map((note) => note.level);
  it("are refused when no sun gives them, or the sensor was held wrong", () => {
    expect(level({})).toEqual([]);
    expect(level({ reading: 131_000, indoors: false })).toEqual(["refuse"]);
    expect(level({ reading: 2400, inLux: false, indoors: false })).toEqual(["refuse"]);
    expect(level({ reading: Number.NaN })).toEqual(["refuse"]);
    expect(level({ offLevel_deg: 11 })).toEqual(["refuse"]);
    expect(level({ fromShadow_m: 0.05 })).toEqual(["refuse"]);
    expect(level({ reading: 100_000 })).toEqual(["refuse"]);
    expect(level({ reading: 6, inLux: false, apparentElevation_deg: -20 })).toEqual(["look"]);
    expect(level({ reading: 4, inLux: false, apparentElevation_deg: -20 })).toEqual([]);
  });
  it("with a flat top come from a meter at its end", () => {
    expect(light.screenFlatTop([1, 5, 9, 9, 9, 2])).toHaveLength(1);
    expect(light.screenFlatTop([1, 5, 9, 9, 2])).toEqual([]);
    expect(light.screenFlatTop([])).toEqual([]);
  });
});

describe("the error of light", () => {
  it("is the root of squares, names the largest and what halving it leaves", () => {
    const terms = light.windowErrors({ outdoors: "station", calibrated: false, measured: true });
    const budget = light.errorBudget(terms);
    expect(budget.largest).toBe("split and sky at a window");
    expect(budget.halved_frac).toBeLessThan(budget.error_frac);
    expect(budget.error_frac).toBeCloseTo(Math.hypot(0.05, 0.04, 0.15, 0.05, 0.05), 12);
    expect(budget.low_frac).toBeGreaterThan(0);
    expect(budget.low_frac * budget.high_frac).toBeCloseTo(1, 12);
    const calibrated = light.errorBudget(
      light.windowErrors({ outdoors: "station", calibrated: true, measured: true }),
    );
    expect(calibrated.error_frac).toBeLessThan(budget.error_frac);
    const forecast = light.windowErrors({
      outdoors: "forecast of the next day",
      calibrated: true,
      measured: true,
    });
    expect(light.errorBudget(forecast).largest).toContain("forecast");
    expect(() => light.errorBudget([])).toThrow(QuantityError);
  });
  it("covers 80 % of a normal spread when small", () => {
    expect(light.combinedError([0.03, 0.04])).toMatchObject({ largest_n: 1 });
    expect(light.combinedError([0.03, 0.04]).high_frac).toBeCloseTo(1 + 1.2816 * 0.05, 2);
  });
});

describe("needs", () => {
  it("leave four hours dark and keep frutescens to short days for flowers", () => {
    for (const species of Object.keys(light.dayLengthCaps) as (keyof typeof light.dayLengthCaps)[]) {
      for (const flowersWanted of [true, false]) {
        const { cap_h, limit_h } = light.dayLengthCap({ species, flowersWanted });
        expect(cap_h).toBeLessThanOrEqual(limit_h);
        expect(limit_h).toBeLessThanOrEqual(20);
      }
    }
    expect(light.dayLengthCap({ species: "annuum", flowersWanted: true, ownCap_h: 24 }).cap_h).toBe(20);
    expect(light.dayLengthCap({ species: "frutescens", flowersWanted: true }).cap_h).toBe(13);
  });
  it("rise from holding over training to fruit, and scale with the grower's own aim", () => {
    const { holding, training, fruiting } = light.lightNeeds;
    expect(holding.aim_mol_m2_d).toBeLessThan(training.aim_mol_m2_d);
    expect(training.aim_mol_m2_d).toBeLessThan(fruiting.aim_mol_m2_d);
    const at = (light_mol_m2_d: number, own?: number) =>
      light.lightVerdict({ stage: "training", light_mol_m2_d, ...(own ? { ownAim_mol_m2_d: own } : {}) });
    expect(at(9)).toMatchObject({ verdict: "short", short_mol_m2_d: 3 });
    expect(at(9, 9).verdict).toBe("enough");
    expect(at(30)).toMatchObject({ verdict: "more than useful", over_mol_m2_d: 5 });
    expect(at(12).verdict).toBe("enough");
  });
});

describe("a leaf in light", () => {
  const net = (ppfd_umol_m2_s: number) => light.leafPhotosynthesis_umol_m2_s({ ppfd_umol_m2_s });
  it("breathes out in the dark, breaks even near 20 and is nearly full at 500 to 800", () => {
    expect(net(0)).toBe(-1);
    const even = light.compensationLight_umol_m2_s({});
    expect(net(even)).toBeCloseTo(0, 9);
    expect(even).toBeGreaterThan(19);
    expect(even).toBeLessThan(22);
    expect((net(800) + 1) / 15).toBeGreaterThan(0.83);
    for (let ppfd = 0; ppfd < 3000; ppfd += 50) expect(net(ppfd + 50)).toBeGreaterThan(net(ppfd));
  });
  it("is credited with no more than its cap", () => {
    expect(light.creditedLight_umol_m2_s({ ppfd_umol_m2_s: 999 })).toBe(999);
    expect(light.creditedLight_umol_m2_s({ ppfd_umol_m2_s: 2000, creditedMost_umol_m2_s: 800 })).toBe(800);
  });
});

describe("turning a crown", () => {
  it("is even after four quarters and names the side that is behind", () => {
    const sides_mol_m2_d = [8, 2, 0, 3];
    const full = light.lightAfterTurns_mol_m2({
      sides_mol_m2_d,
      quarters_n: [0, 1, 2, 3],
      spells_d: [7, 7, 7, 7],
    });
    expect(full).toEqual([91, 91, 91, 91]);
    const once = light.lightAfterTurns_mol_m2({ sides_mol_m2_d, quarters_n: [0], spells_d: [7] });
    expect(once).toEqual([56, 14, 0, 21]);
    expect(light.bestTurn_n({ received_mol_m2: once, sides_mol_m2_d, keep_d: 7 })).toBe(2);
    expect(light.bestTurn_n({ received_mol_m2: [9, 9, 9, 9], sides_mol_m2_d: [1, 1, 1, 1], keep_d: 7 })).toBe(
      0,
    );
  });
  it("knows where light comes from", () => {
    expect(light.oneSidedness([10, 0, 0, 0])).toEqual({ oneSided_frac: 1, from_deg: 0 });
    expect(light.oneSidedness([0, 0, 0, 5]).from_deg).toBe(270);
    expect(light.oneSidedness([4, 4, 4, 4]).oneSided_frac).toBe(0);
    expect(light.oneSidedness([0, 0, 0, 0])).toEqual({ oneSided_frac: 0, from_deg: 0 });
    expect(() => light.oneSidedness([1, 2, 3])).toThrow(QuantityError);
  });
});

describe("under the open sky", () => {
  const day = (more: object, place: Parameters<typeof light.openSkyViews>[0] = {}) =>
    light.windowDay({ views: light.openSkyViews(place), latitude_deg: 45, dayOfYear_d: 172, ...more });
  it("a level leaf has all the light of a station", () => {
    for (const solar_MJ_m2_d of [3, 12, 28]) {
      const { all, outdoors_mol_m2_d } = day({ solar_MJ_m2_d });
      expect(all.level_mol_m2_d / outdoors_mol_m2_d).toBeCloseTo(1, 2);
      expect(all.sphere_mol_m2_d).toBeGreaterThan(2 * 0.95 * outdoors_mol_m2_d * 0.5);
    }
  });
  it("half of the light from all around is level light under an even sky", () => {
    const sky = {
      diffuse_W_m2: 200,
      direct_W_m2: 0,
      elevation_deg: 40,
      azimuth_deg: 10,
      hourClearness_frac: 0.5,
    };
    const { diffuse } = light.paneLight(light.openSkyViews({ groundAlbedo: 0 }), sky);
    expect(diffuse.sphere_W_m2 / 2).toBeCloseTo(200, 0);
    expect(diffuse.level_W_m2).toBeCloseTo(200, 0);
    expect(diffuse.front_W_m2).toBeCloseTo(100, 0);
    const dull = light.paneLight(light.openSkyViews({ groundAlbedo: 0 }), {
      ...sky,
      hourClearness_frac: 0.2,
    });
    expect(dull.diffuse.right_W_m2 / dull.diffuse.level_W_m2).toBeCloseTo(0.396, 2);
  });
  it("has the beam once, from whatever quarter the sun shines", () => {
    for (let azimuth_deg = 0; azimuth_deg <= 360; azimuth_deg += 15) {
      const sky = {
        diffuse_W_m2: 0,
        direct_W_m2: 500,
        elevation_deg: 30,
        azimuth_deg,
        hourClearness_frac: 0.7,
      };
      const { direct } = light.paneLight(light.openSkyViews({ front_deg: 20 }), sky);
      expect(direct.sphere_W_m2).toBeCloseTo(500, 9);
      expect(direct.level_W_m2).toBeCloseTo(250, 9);
      const sides = [direct.front_W_m2, direct.right_W_m2, direct.back_W_m2, direct.left_W_m2];
      expect(Math.hypot(...sides)).toBeCloseTo(500 * Math.cos(Math.PI / 6), 6);
    }
  });
  it("is dimmed by what stands around", () => {
    expect(day({ solar_MJ_m2_d: 20 }, { horizon_deg: 30 }).all.level_mol_m2_d).toBeLessThan(
      day({ solar_MJ_m2_d: 20 }).all.level_mol_m2_d,
    );
  });
});

describe("the band of a month", () => {
  it("parts dull days from sunny ones and keeps its mean", () => {
    const views = [
      light.paneView({
        facing_deg: 180,
        left_m: -0.6,
        right_m: 0.6,
        bottom_m: 0,
        top_m: 1.4,
        distance_m: 0.3,
        glazing: { panes_n: 2 },
      }),
    ];
    const band = light.windowBand({ views, latitude_deg: 48, dayOfYear_d: 349, clearness_frac: 0.35 });
    expect(band.low_mol_m2_d).toBeLessThan(band.timer_mol_m2_d);
    expect(band.timer_mol_m2_d).toBeLessThan(band.median_mol_m2_d);
    expect(band.high_mol_m2_d).toBeGreaterThan(2 * band.low_mol_m2_d);
    expect(band.mean_mol_m2_d).toBeGreaterThan(band.low_mol_m2_d);
    expect(band.mean_mol_m2_d).toBeLessThan(band.high_mol_m2_d);
    const clearer = light.windowBand({ views, latitude_deg: 48, dayOfYear_d: 349, clearness_frac: 0.5 });
    expect(clearer.median_mol_m2_d).toBeGreaterThan(band.median_mol_m2_d);
  });
});
