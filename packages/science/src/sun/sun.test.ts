import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import * as sun from "./index.ts";

describe("the day", () => {
  it("is the same everywhere at the equinox and mirrors across the equator", () => {
    for (const latitude_deg of [-50, -20, 0, 35, 60]) {
      expect(sun.daylight_h({ latitude_deg, dayOfYear_d: 81 })).toBeCloseTo(12, 0);
      const june = sun.daylight_h({ latitude_deg, dayOfYear_d: 172 });
      const juneMirrored = sun.daylight_h({ latitude_deg: -latitude_deg, dayOfYear_d: 172 });
      expect(june + juneMirrored).toBeCloseTo(24, 9);
    }
  });
  it("has ends beyond the polar circles and never NaN", () => {
    expect(sun.daylight_h({ latitude_deg: 80, dayOfYear_d: 355 })).toBe(0);
    expect(sun.extraterrestrialRadiation_MJ_m2_d({ latitude_deg: 80, dayOfYear_d: 355 })).toBe(0);
    for (let dayOfYear_d = 1; dayOfYear_d <= 366; dayOfYear_d += 1) {
      for (const latitude_deg of [-90, -66.6, 0, 66.6, 90]) {
        expect(sun.extraterrestrialRadiation_MJ_m2_d({ latitude_deg, dayOfYear_d })).toBeGreaterThanOrEqual(
          0,
        );
        expect(Number.isFinite(sun.daylight_h({ latitude_deg, dayOfYear_d }))).toBe(true);
      }
    }
  });
  it("is the sum of its hours", () => {
    for (const [latitude_deg, dayOfYear_d] of [
      [45, 172],
      [-33, 172],
      [70, 172],
      [0, 1],
    ] as const) {
      let sum = 0;
      for (let hour = 0; hour < 24; hour += 1) {
        const hourAngle_rad = (Math.PI / 12) * (hour + 0.5 - 12);
        sum += sun.hourlyExtraterrestrialRadiation_MJ_m2({ latitude_deg, dayOfYear_d, hourAngle_rad });
      }
      expect(sum).toBeCloseTo(sun.extraterrestrialRadiation_MJ_m2_d({ latitude_deg, dayOfYear_d }), 9);
    }
  });
});

describe("hours", () => {
  it("put the sun highest at noon and alike before and after", () => {
    const at = (hourAngle_rad: number) =>
      sun.sunElevation_rad({ latitude_deg: 45, dayOfYear_d: 100, hourAngle_rad });
    expect(at(0)).toBeGreaterThan(at(0.3));
    expect(at(-0.7)).toBeCloseTo(at(0.7), 12);
    expect(at(Math.PI)).toBeLessThan(0);
  });
  it("run ahead towards the east of the zone", () => {
    const at = (longitude_deg: number) =>
      sun.solarHourAngle_rad({ standardClock_h: 12, longitude_deg, zoneMeridian_deg: 15, dayOfYear_d: 100 });
    expect(at(20)).toBeGreaterThan(at(10));
    expect(at(30) - at(15)).toBeCloseTo(Math.PI / 12, 3);
  });
});

describe("radiation at the ground", () => {
  it("goes from a quarter to three quarters with the sunshine", () => {
    const day = { extraterrestrial_MJ_m2_d: 40, daylight_h: 16 };
    expect(sun.solarFromSunshine_MJ_m2_d({ ...day, sunshine_h: 0 })).toBe(10);
    expect(sun.solarFromSunshine_MJ_m2_d({ ...day, sunshine_h: 16 })).toBe(30);
    expect(() => sun.solarFromSunshine_MJ_m2_d({ ...day, sunshine_h: 17 })).toThrow(QuantityError);
    expect(sun.solarFromSunshine_MJ_m2_d({ extraterrestrial_MJ_m2_d: 0, daylight_h: 0, sunshine_h: 0 })).toBe(
      0,
    );
  });
  it("from temperatures never exceeds a clear day", () => {
    const day = { extraterrestrial_MJ_m2_d: 40, clearSky_MJ_m2_d: 30, airMin_C: 0 };
    expect(sun.solarFromTemperatureRange_MJ_m2_d({ ...day, airMax_C: 40 })).toBe(30);
    expect(sun.solarFromTemperatureRange_MJ_m2_d({ ...day, airMax_C: 0 })).toBe(0);
    expect(sun.clearSkyRadiation_MJ_m2({ extraterrestrial_MJ_m2: 40, elevation_m: 1000 })).toBeCloseTo(
      30.8,
      9,
    );
  });
});

describe("guess of the light on a sill", () => {
  const sill = (azimuth_deg: number, dayOfYear_d: number, latitude_deg = 45) =>
    sun.guessedSillLight_mol_m2_d({ latitude_deg, dayOfYear_d, azimuth_deg });
  it("favours the side where the sun stands, in both hemispheres", () => {
    expect(sill(180, 355)).toBeGreaterThan(sill(90, 355));
    expect(sill(90, 355)).toBeGreaterThan(sill(0, 355));
    expect(sill(0, 172, -35)).toBeGreaterThan(sill(180, 172, -35));
  });
  it("is the same east and west, and the same at 0 and 360", () => {
    expect(sill(90, 200)).toBeCloseTo(sill(270, 200), 6);
    expect(sill(0, 200)).toBeCloseTo(sill(360, 200), 9);
  });
  it("stays below what reaches open ground", () => {
    for (const azimuth_deg of [0, 90, 180, 270]) {
      for (const day of [15, 105, 196, 288, 355]) {
        const open =
          0.4 * 2.06 * sun.extraterrestrialRadiation_MJ_m2_d({ latitude_deg: 45, dayOfYear_d: day });
        expect(sill(azimuth_deg, day)).toBeGreaterThan(0);
        expect(sill(azimuth_deg, day)).toBeLessThan(open);
      }
    }
  });
  it("follows what the grower sets, inside the range that is allowed", () => {
    const window = { latitude_deg: 45, dayOfYear_d: 355, azimuth_deg: 180 };
    expect(sun.guessedSillLight_mol_m2_d({ ...window, glass_frac: 0.35 })).toBeCloseTo(sill(180, 355) / 2, 9);
    expect(() => sun.guessedSillLight_mol_m2_d({ ...window, glass_frac: 1.2 })).toThrow(QuantityError);
  });
});
