import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import * as water from "./index.ts";

const day: water.ReferenceDay = {
  airMax_C: 28,
  airMin_C: 14,
  vapourPressure_kPa: 1.4,
  solar_MJ_m2_d: 22,
  wind2m_m_s: 2,
  latitude_deg: 45,
  elevation_m: 200,
  dayOfYear_d: 190,
};

describe("daily reference ET", () => {
  it("rises with light, wind and heat, and falls with moist air", () => {
    const base = water.referenceEtDaily_mm_d(day);
    expect(water.referenceEtDaily_mm_d({ ...day, solar_MJ_m2_d: 25 })).toBeGreaterThan(base);
    expect(water.referenceEtDaily_mm_d({ ...day, wind2m_m_s: 4 })).toBeGreaterThan(base);
    expect(water.referenceEtDaily_mm_d({ ...day, airMax_C: 33 })).toBeGreaterThan(base);
    expect(water.referenceEtDaily_mm_d({ ...day, vapourPressure_kPa: 1.9 })).toBeLessThan(base);
    expect(water.referenceEtDaily_mm_d({ ...day, soilHeat_MJ_m2_d: 2 })).toBeLessThan(base);
  });
  it("is split into shares that add up", () => {
    const working = water.referenceEtWorking(day);
    expect(working.light_mm_d + working.dryAir_mm_d).toBeCloseTo(water.referenceEtDaily_mm_d(day), 12);
    expect(working.referenceEt_mm_d).toBeCloseTo(water.referenceEtDaily_mm_d(day), 12);
  });
  it("is 0, not negative and not NaN, in polar night", () => {
    const night = {
      ...day,
      airMax_C: -20,
      airMin_C: -30,
      vapourPressure_kPa: 0.05,
      solar_MJ_m2_d: 0,
      latitude_deg: 80,
      dayOfYear_d: 355,
    };
    const result = water.referenceEtDaily_mm_d(night);
    expect(Number.isFinite(result)).toBe(true);
    expect(result).toBeGreaterThanOrEqual(0);
  });
  it("over the tall surface is above the short one in dry wind", () => {
    const tall = water.standardisedEtDaily_mm_d({ ...day, surface: "tall" });
    const short = water.standardisedEtDaily_mm_d({ ...day, surface: "short" });
    expect(tall).toBeGreaterThan(short);
    expect(short).toBeCloseTo(water.referenceEtDaily_mm_d(day), 2);
  });
  it("gives the same from arrays as one by one, and leaves the inputs alone", () => {
    const n = 50;
    const make = (at: (i: number) => number) => Float64Array.from({ length: n }, (_, i) => at(i));
    const days = {
      airMax_C: make((i) => 15 + (i % 20)),
      airMin_C: make((i) => 5 + (i % 9)),
      vapourPressure_kPa: make((i) => 0.8 + 0.01 * i),
      solar_MJ_m2_d: make((i) => 8 + (i % 15)),
      wind2m_m_s: make((i) => 0.5 + (i % 5)),
      dayOfYear_d: make((i) => 1 + 7 * i),
      latitude_deg: 40,
      elevation_m: 300,
    };
    const before = days.airMax_C.slice();
    const result = new Float64Array(n);
    water.referenceEtDailyArray(days, result);
    expect(days.airMax_C).toEqual(before);
    for (let i = 0; i < n; i += 1) {
      const one = water.referenceEtDaily_mm_d({
        airMax_C: days.airMax_C[i] ?? NaN,
        airMin_C: days.airMin_C[i] ?? NaN,
        vapourPressure_kPa: days.vapourPressure_kPa[i] ?? NaN,
        solar_MJ_m2_d: days.solar_MJ_m2_d[i] ?? NaN,
        wind2m_m_s: days.wind2m_m_s[i] ?? NaN,
        dayOfYear_d: days.dayOfYear_d[i] ?? NaN,
        latitude_deg: 40,
        elevation_m: 300,
      });
      expect(result[i]).toBe(one);
    }
  });
});

describe("the ladder of missing data", () => {
  const least = { airMax_C: 28, airMin_C: 14, latitude_deg: 45, elevation_m: 200, dayOfYear_d: 190 };
  it("says what stood in for what, and grows less sure with each substitute", () => {
    const full = water.referenceEtFromKnown({
      ...least,
      solar_MJ_m2_d: 22,
      humidityMean_frac: 0.6,
      wind2m_m_s: 2,
    });
    const noSun = water.referenceEtFromKnown({
      ...least,
      sunshine_h: 9,
      humidityMean_frac: 0.6,
      wind2m_m_s: 2,
    });
    const noWind = water.referenceEtFromKnown({ ...least, sunshine_h: 9, humidityMean_frac: 0.6 });
    const bare = water.referenceEtFromKnown(least);
    expect([full.sd_frac, noSun.sd_frac, noWind.sd_frac, bare.sd_frac]).toEqual(
      [full.sd_frac, noSun.sd_frac, noWind.sd_frac, bare.sd_frac].toSorted(),
    );
    expect(full.notes).toEqual([]);
    expect(noSun.solarRoute).toBe("sunshine");
    expect(noWind.windRoute).toBe("taken as 2 m s⁻¹");
    expect(bare.method).toBe("reduced-set Penman-Monteith");
    expect(bare.notes).toHaveLength(3);
  });
  it("uses temperatures alone for sums", () => {
    expect(water.referenceEtFromKnown({ ...least, forSum: true }).method).toBe("Hargreaves-Samani");
    expect(water.referenceEtFromKnown({ ...least, forSum: true, wind2m_m_s: 2 }).method).toBe(
      "Penman-Monteith",
    );
  });
  it("holds a still day at half a metre a second, aloud", () => {
    const known = { ...least, solar_MJ_m2_d: 22, humidityMean_frac: 0.6 };
    const still = water.referenceEtFromKnown({ ...known, wind2m_m_s: 0 });
    expect(still.referenceEt_mm_d).toBe(
      water.referenceEtFromKnown({ ...known, wind2m_m_s: 0.5 }).referenceEt_mm_d,
    );
    expect(still.notes).toContain("wind held at 0.5 m s⁻¹");
  });
});

describe("hours", () => {
  const hour = {
    air_C: 25,
    vapourPressure_kPa: 1.4,
    solar_MJ_m2_h: 2,
    wind2m_m_s: 2,
    elevation_m: 200,
    cloudFactor: 0.8,
  };
  it("tell day from night by the sign of net radiation", () => {
    const night = water.referenceEtHourly({ ...hour, solar_MJ_m2_h: 0, surface: "short" });
    expect(night.netRadiation_MJ_m2_h).toBeLessThan(0);
    expect(night.soilHeat_MJ_m2_h).toBeCloseTo(0.5 * night.netRadiation_MJ_m2_h, 12);
    const noon = water.referenceEtHourly({ ...hour, surface: "short" });
    expect(noon.soilHeat_MJ_m2_h).toBeCloseTo(0.1 * noon.netRadiation_MJ_m2_h, 12);
    expect(noon.referenceEt_mm_h).toBeGreaterThan(night.referenceEt_mm_h);
  });
  it("lose more under a clear night sky", () => {
    const loss = (cloudFactor: number) =>
      water.referenceEtHourly({ ...hour, cloudFactor, surface: "short" }).netLongwave_MJ_m2_h;
    expect(loss(1)).toBeGreaterThan(loss(0.1));
    expect(water.cloudFactor({ solar_MJ_m2_h: 0, clearSky_MJ_m2_h: 2 })).toBe(0.05);
    expect(water.cloudFactor({ solar_MJ_m2_h: 5, clearSky_MJ_m2_h: 2 })).toBe(1);
  });
  const station = (cloudy: boolean): (water.StationHour | undefined)[] =>
    Array.from({ length: 24 }, (_, i) => ({
      standardClock_h: i + 0.5,
      air_C: 18 + 8 * Math.sin((Math.PI * (i - 8)) / 12),
      vapourPressure_kPa: 1.4,
      solar_MJ_m2_h:
        Math.max(0, (cloudy ? 1 : 2.8) * Math.sin((Math.PI * (i + 0.5 - 5)) / 15)) *
        (i > 4 && i < 20 ? 1 : 0),
      wind2m_m_s: 2,
    }));
  const site = {
    latitude_deg: 45,
    longitude_deg: 15,
    zoneMeridian_deg: 15,
    elevation_m: 200,
    dayOfYear_d: 190,
    surface: "short",
  } as const;
  it("sum to a day like the daily formula's, and carry the evening's cloud through the night", () => {
    const clear = water.referenceEtOfHours({ ...site, hours: station(false), cloudFactorBefore: 0.8 });
    expect(clear.hours_n).toBe(24);
    expect(clear.referenceEt_mm_d).toBeGreaterThan(3);
    expect(clear.referenceEt_mm_d).toBeLessThan(9);
    const dull = water.referenceEtOfHours({ ...site, hours: station(true), cloudFactorBefore: 0.8 });
    expect(dull.cloudFactorAfter).toBeLessThan(clear.cloudFactorAfter);
    const before = water.referenceEtOfHours({ ...site, hours: station(false), cloudFactorBefore: 0.05 });
    expect(before.referenceEt_mm_d).not.toBe(clear.referenceEt_mm_d);
    expect(before.cloudFactorAfter).toBe(clear.cloudFactorAfter);
  });
  it("give no day from fewer than 22 of them", () => {
    const gaps = (count: number) => station(false).map((each, i) => (i < count ? undefined : each));
    expect(
      water.referenceEtOfHours({ ...site, hours: gaps(3), cloudFactorBefore: 0.8 }).referenceEt_mm_d,
    ).toBeNull();
    expect(
      water.referenceEtOfHours({ ...site, hours: gaps(2), cloudFactorBefore: 0.8 }).referenceEt_mm_d,
    ).not.toBeNull();
  });
});

describe("other reference forms", () => {
  it("stay at or above 0", () => {
    expect(water.hargreavesEt_mm_d({ airMax_C: -20, airMin_C: -30, extraterrestrial_MJ_m2_d: 5 })).toBe(0);
    const cover = {
      netRadiation_MJ_m2_d: -5,
      air_C: 5,
      saturation_kPa: 0.9,
      vapourPressure_kPa: 0.9,
      pressure_kPa: 101,
    };
    expect(water.referenceEtUnderCover_mm_d(cover)).toBe(0);
  });
  it("under cover grow with light and dryness", () => {
    const cover = {
      netRadiation_MJ_m2_d: 8,
      air_C: 22,
      saturation_kPa: 2.8,
      vapourPressure_kPa: 1.6,
      pressure_kPa: 101,
    };
    const base = water.referenceEtUnderCover_mm_d(cover);
    expect(water.referenceEtUnderCover_mm_d({ ...cover, netRadiation_MJ_m2_d: 9 })).toBeGreaterThan(base);
    expect(water.referenceEtUnderCover_mm_d({ ...cover, vapourPressure_kPa: 1.2 })).toBeGreaterThan(base);
  });
  it("of a bench have a light and a dry-air term", () => {
    const bench = { global_W_m2: 200, lai: 2, deficit_kPa: 1 };
    expect(water.benchTranspiration({ ...bench, global_W_m2: 0 }).latent_W_m2).toBe(50);
    expect(water.benchTranspiration({ ...bench, lai: 0 }).latent_W_m2).toBe(0);
    expect(() => water.benchTranspiration({ ...bench, lai: 11 })).toThrow(QuantityError);
    expect(water.closedRoomResistance_s_m(0)).toBe(450);
    expect(water.closedRoomResistance_s_m(600)).toBeLessThan(water.closedRoomResistance_s_m(100));
  });
});
