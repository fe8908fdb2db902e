import { Body, Equator, Horizon, Observer, SearchRiseSet } from "astronomy-engine";
import { getPosition, getTimes } from "suncalc";
import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import * as sun from "./index.ts";

const sites = [
  ["Fredonia", 36.95, -112.5167],
  ["far north", 69.6, 18.9],
  ["south", -33.9, 151.2],
  ["equator", 0.5, 101.4],
  ["date line", -13.8, -171.8],
] as const;
const instants = Array.from({ length: 40 }, (_, i) => Date.UTC(2026, 0, 3, 1) + i * 9.37 * 86_400_000);

describe("sun position beside two other programs", () => {
  it.each(sites)("agrees at %s", (_name, latitude_deg, longitude_deg) => {
    const observer = new Observer(latitude_deg, longitude_deg, 0);
    for (const instant_ms of instants) {
      const at = new Date(instant_ms);
      const ours = sun.sunPosition({ instant_ms, latitude_deg, longitude_deg });
      const place = Equator(Body.Sun, at, observer, true, true);
      const engine = Horizon(at, observer, place.ra, place.dec);
      expect(Math.abs(ours.elevation_deg - engine.altitude)).toBeLessThan(0.015);
      // Near the zenith a hair of height is a wide turn.
      const turn = Math.cos((engine.altitude * Math.PI) / 180);
      const apart = ((ours.azimuth_deg - engine.azimuth + 540) % 360) - 180;
      expect(Math.abs(apart) * turn).toBeLessThan(0.015);
      const other = getPosition(at, latitude_deg, longitude_deg);
      if (ours.elevation_deg > 5) {
        expect(Math.abs(ours.apparentElevation_deg - other.altitude)).toBeLessThan(0.03);
      }
    }
  });

  it("rises and sets with them, to a quarter of a minute", () => {
    for (const [, latitude_deg, longitude_deg] of sites) {
      const observer = new Observer(latitude_deg, longitude_deg, 0);
      for (let day = 0; day < 365; day += 13) {
        const noon_ms = Date.UTC(2026, 0, 1, 12) + day * 86_400_000 - (longitude_deg / 15) * 3_600_000;
        const ours = sun.sunDay({ noon_ms, latitude_deg, longitude_deg });
        const rise = SearchRiseSet(Body.Sun, observer, 1, new Date(ours.transit_ms - 43_200_000), 1);
        if (ours.rise_ms === null || ours.set_ms === null) continue;
        const set = SearchRiseSet(Body.Sun, observer, -1, new Date(ours.transit_ms), 1);
        // Where the sun skims the horizon, a hair of refraction is minutes.
        const skims = Math.abs(latitude_deg) > 60 ? 4 : 0.3;
        expect(Math.abs(ours.rise_ms - (rise?.date.getTime() ?? 0)) / 60_000).toBeLessThan(skims);
        expect(Math.abs(ours.set_ms - (set?.date.getTime() ?? 0)) / 60_000).toBeLessThan(skims);
        if (Math.abs(latitude_deg) < 60) {
          const other = getTimes(new Date(noon_ms), latitude_deg, longitude_deg);
          const dawn = sun.sunDay({
            noon_ms,
            latitude_deg,
            longitude_deg,
            threshold_deg: sun.civilElevation_deg,
          });
          expect(Math.abs((dawn.rise_ms ?? 0) - (other.dawn?.getTime() ?? 0)) / 60_000).toBeLessThan(1);
        }
      }
    }
  });
});

describe("the day of the sun", () => {
  it("is a state beyond the polar circles, never NaN", () => {
    const at = (month: number) =>
      sun.sunDay({ noon_ms: Date.UTC(2026, month, 21, 12), latitude_deg: 78, longitude_deg: 15 });
    expect(at(11)).toMatchObject({ state: "polar night", rise_ms: null, set_ms: null, daylight_h: 0 });
    expect(at(5)).toMatchObject({ state: "polar day", rise_ms: null, set_ms: null, daylight_h: 24 });
    expect(at(2).state).toBe("rises and sets");
    for (let day = 0; day < 366; day += 1) {
      for (const latitude_deg of [-90, -66.5, 66.5, 67.4, 90]) {
        const noon_ms = Date.UTC(2026, 0, 1, 12) + day * 86_400_000;
        const { daylight_h, noonElevation_deg } = sun.sunDay({ noon_ms, latitude_deg, longitude_deg: 0 });
        expect(daylight_h).toBeGreaterThanOrEqual(0);
        expect(daylight_h).toBeLessThanOrEqual(24);
        expect(Number.isFinite(noonElevation_deg)).toBe(true);
      }
    }
  });
  it("counts twilight as day when asked: 8.07 h and 9.36 h at 50° in December", () => {
    const day = { noon_ms: Date.UTC(2025, 11, 21, 12), latitude_deg: 50, longitude_deg: 0 };
    expect(sun.sunDay(day).daylight_h).toBeCloseTo(8.07, 1);
    expect(sun.sunDay({ ...day, threshold_deg: sun.civilElevation_deg }).daylight_h).toBeCloseTo(9.36, 1);
  });
  it("keeps the evening of a western site with its own date", () => {
    const noon_ms = Date.UTC(2015, 7, 2, 12) + 7 * 3_600_000;
    const { set_ms } = sun.sunDay({ noon_ms, latitude_deg: 39.742476, longitude_deg: -105.1786 });
    expect(new Date(set_ms ?? 0).toISOString().slice(0, 16)).toBe("2015-08-03T02:12");
  });
  it("has neither earliest sunrise nor latest sunset on the longest day", () => {
    const clock = (day: number) => {
      const noon_ms = Date.UTC(2026, 5, day, 12);
      const { rise_ms, set_ms } = sun.sunDay({ noon_ms, latitude_deg: 45, longitude_deg: 0 });
      return [(rise_ms ?? 0) % 86_400_000, (set_ms ?? 0) % 86_400_000] as const;
    };
    expect(clock(14)[0]).toBeLessThan(clock(21)[0]);
    expect(clock(27)[1]).toBeGreaterThan(clock(21)[1]);
  });
  it("refuses what no place has", () => {
    const day = { noon_ms: 0, latitude_deg: 91, longitude_deg: 0 };
    expect(() => sun.sunDay(day)).toThrow("latitude is 91 °; expected -90 to 90 °");
    expect(() => sun.sunDay({ ...day, latitude_deg: 0, longitude_deg: 181 })).toThrow(QuantityError);
    expect(() => sun.sunPosition({ ...day, instant_ms: Number.NaN })).toThrow(QuantityError);
  });
});

describe("the air's lift", () => {
  it("joins at its seams, lifts half a degree at the horizon and is never large", () => {
    for (const seam of [-0.575, 5, 85]) {
      const [below, above] = [-1e-6, 1e-6].map((step) => sun.atmosphericRefraction_deg(seam + step));
      expect(Math.abs((below ?? 0) - (above ?? 0))).toBeLessThan(0.01);
    }
    for (let elevation_deg = -90; elevation_deg <= 90; elevation_deg += 0.5) {
      const lift = sun.atmosphericRefraction_deg(elevation_deg);
      expect(lift).toBeGreaterThanOrEqual(0);
      expect(lift).toBeLessThan(0.65);
    }
  });
});

describe("radiation hour by hour", () => {
  it("a clear sky rises with the sun and is dark without it", () => {
    expect(sun.clearSkyGlobal_W_m2(-5)).toBe(0);
    expect(sun.clearSkyGlobal_W_m2(60)).toBeGreaterThan(sun.clearSkyGlobal_W_m2(30));
  });
  it("splits into parts that add up, without a beam from a sun near the horizon", () => {
    for (const elevation_deg of [4, 20, 60]) {
      for (const hourGlobal_W_m2 of [20, 200, 700]) {
        const hour = { hourGlobal_W_m2, elevation_deg, normalExtraterrestrial_W_m2: 1361 };
        const { diffuse_W_m2, direct_W_m2 } = sun.diffuseSplit(hour);
        const sine = Math.sin((elevation_deg * Math.PI) / 180);
        expect(diffuse_W_m2 + direct_W_m2 * sine).toBeCloseTo(hourGlobal_W_m2, 6);
      }
    }
    const low = { hourGlobal_W_m2: 40, elevation_deg: 2.9, normalExtraterrestrial_W_m2: 1361 };
    expect(sun.diffuseSplit(low).direct_W_m2).toBe(0);
    expect(sun.diffuseSplit({ ...low, hourGlobal_W_m2: 0, elevation_deg: -30 })).toMatchObject({
      diffuse_W_m2: 0,
      direct_W_m2: 0,
    });
  });
  it("adds up to the day, and both shapes nearly do unscaled", () => {
    for (const latitude_deg of [0, 45, 66]) {
      for (const dayOfYear_d of [15, 105, 196, 349]) {
        const hours = sun.hoursOfDay_MJ_m2_h({ latitude_deg, dayOfYear_d, solar_MJ_m2_d: 12 });
        const sum = hours.reduce((all, hour) => all + hour, 0);
        expect(sum).toBeCloseTo(12, 9);
      }
    }
    const sunsetHourAngle_rad = 1.4;
    const sums = [sun.globalOfHour_frac, sun.diffuseOfHour_frac].map((share) => {
      let sum = 0;
      for (let minute = 0; minute < 1440; minute += 1) {
        const hourAngle_rad = ((minute + 0.5) / 1440) * 2 * Math.PI - Math.PI;
        sum += share({ hourAngle_rad, sunsetHourAngle_rad }) / 60;
      }
      return sum;
    });
    expect(sums[0]).toBeGreaterThan(0.99);
    expect(sums[0]).toBeLessThan(1.01);
    expect(sums[1]).toBeCloseTo(1, 5);
  });
  it("is none in polar night", () => {
    const hours = sun.hoursOfDay_MJ_m2_h({ latitude_deg: 80, dayOfYear_d: 355, solar_MJ_m2_d: 0 });
    expect(hours).toEqual(new Array(24).fill(0));
  });
});

describe("clearness", () => {
  it("of days has the mean of the month, dull days and bright ones", () => {
    for (const clearness_frac of [0.2, 0.3, 0.45, 0.6, 0.75]) {
      for (const days_n of [1, 5, 31]) {
        const days = sun.clearnessOfDays_frac({ clearness_frac, days_n });
        expect(days.reduce((sum, day) => sum + day, 0) / days_n).toBeCloseTo(clearness_frac, 6);
        expect(days.toSorted((a, b) => a - b)).toEqual(days);
      }
    }
    const dull = sun.clearnessOfDays_frac({ clearness_frac: 0.35, days_n: 30 });
    expect(dull[0]).toBeLessThan(0.08);
    expect(dull[29]).toBeGreaterThan(0.65);
  });
  it("is duller in winter, also in the south", () => {
    const at = (latitude_deg: number, dayOfYear_d: number) =>
      sun.usualClearness({ climate: "dull temperate", latitude_deg, dayOfYear_d }).middle_frac;
    expect(at(50, 355)).toBeCloseTo(0.35, 3);
    expect(at(50, 172)).toBeCloseTo(0.5, 3);
    expect(at(-40, 172)).toBeCloseTo(0.35, 3);
  });
});

describe("the ladder of what is known", () => {
  const place = { latitude_deg: 45, dayOfYear_d: 172 };
  it("takes the best rung", () => {
    const all = {
      ...place,
      hoursGlobal_W_m2: new Array(24).fill(100),
      solar_MJ_m2_d: 20,
      sunshine_h: 8,
      airMax_C: 25,
      airMin_C: 12,
      clearness_frac: 0.4,
    };
    expect(sun.solarFromKnown(all)).toMatchObject({ rung: "hours" });
    expect(sun.solarFromKnown(all).solar_MJ_m2_d).toBeCloseTo(8.64, 9);
    const rungs = ["hoursGlobal_W_m2", "solar_MJ_m2_d", "sunshine_h", "airMax_C"] as const;
    const left: Record<string, unknown> = { ...all };
    const seen = rungs.map((rung) => {
      delete left[rung];
      return sun.solarFromKnown(left as typeof place).rung;
    });
    expect(seen).toEqual(["day", "sunshine", "temperature range", "clearness"]);
    expect(() => sun.solarFromKnown(place)).toThrow("clearness is missing");
  });
});

describe("screening", () => {
  it("finds swapped and mirrored coordinates by the clock of the zone", () => {
    const site = { latitude_deg: 47.6, longitude_deg: -122.3, zoneOffset_h: -8 };
    expect(sun.screenSite(site)).toEqual([]);
    expect(sun.screenSite({ ...site, longitude_deg: 122.3 })[0]?.likelyCause).toContain("wrong sign");
    expect(sun.screenSite({ latitude_deg: 47.6, longitude_deg: 12, zoneOffset_h: 9 })[0]?.level).toBe("look");
    expect(sun.screenSite({ latitude_deg: -172, longitude_deg: -13.8, zoneOffset_h: 13 })[0]?.level).toBe(
      "refuse",
    );
    // Places beyond the date line keep a clock of the other side.
    expect(sun.screenSite({ latitude_deg: -13.8, longitude_deg: -172, zoneOffset_h: 13 })).toEqual([]);
  });
  it("finds other units in a run of days", () => {
    const extraterrestrialDays_MJ_m2_d = new Array(14).fill(30);
    const say = (solar: number[]) =>
      sun.screenSolarDays({ solarDays_MJ_m2_d: solar, extraterrestrialDays_MJ_m2_d })[0]?.likelyCause;
    const days = [3, 8, 20, 21, 15, 4, 9, 13, 22, 20, 17, 5, 8, 12];
    expect(say(days)).toBeUndefined();
    expect(say(days.map((day) => day * 100))).toContain("J/cm²");
    expect(say(days.map((day) => day / 3.6))).toContain("kWh");
    expect(say(days.map((day) => day + 4))).toContain("wrong day");
    expect(say([-1, ...days.slice(1)])).toContain("gap");
  });
  it("finds an hour brighter than the sky", () => {
    const hour = { hourGlobal_W_m2: 500, apparentElevation_deg: 30 };
    expect(sun.screenHourlySolar(hour)).toEqual([]);
    expect(sun.screenHourlySolar({ ...hour, apparentElevation_deg: 10 })[0]?.level).toBe("look");
    expect(sun.screenHourlySolar({ hourGlobal_W_m2: 50, apparentElevation_deg: -10 })[0]?.what).toContain(
      "down",
    );
    expect(sun.screenHourlySolar({ ...hour, hourGlobal_W_m2: -9 })[0]?.level).toBe("refuse");
    expect(sun.screenHourlySolar({ ...hour, hourGlobal_W_m2: 9000 })[0]?.level).toBe("refuse");
  });
});
