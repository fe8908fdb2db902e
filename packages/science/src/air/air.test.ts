import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import * as air from "./index.ts";

const range = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);

describe("saturation", () => {
  it("rises with temperature over the whole range, and so does its slope", () => {
    const temperatures = range(-40, 60, 0.5);
    for (let i = 1; i < temperatures.length; i += 1) {
      const [cooler = 0, warmer = 0] = [temperatures[i - 1], temperatures[i]];
      expect(air.saturationVapourPressure_kPa(warmer)).toBeGreaterThan(
        air.saturationVapourPressure_kPa(cooler),
      );
      expect(air.saturationSlope_kPa_per_C(warmer)).toBeGreaterThan(air.saturationSlope_kPa_per_C(cooler));
    }
  });
  it("has the slope that its own differences show", () => {
    for (const air_C of [-20, 0, 15, 35, 55]) {
      const h = 1e-3;
      const difference =
        (air.saturationVapourPressure_kPa(air_C + h) - air.saturationVapourPressure_kPa(air_C - h)) / (2 * h);
      expect(air.saturationSlope_kPa_per_C(air_C)).toBeCloseTo(difference, 4);
    }
  });
  it("of a day is never below that of the mean temperature", () => {
    const day = { airMax_C: 30, airMin_C: 12 };
    expect(air.meanSaturationVapourPressure_kPa(day)).toBeGreaterThan(air.saturationVapourPressure_kPa(21));
    expect(() => air.meanSaturationVapourPressure_kPa({ airMax_C: 10, airMin_C: 12 })).toThrow(QuantityError);
  });
});

describe("vapour pressure", () => {
  it("takes the best route there is and names it", () => {
    const day = { airMax_C: 25, airMin_C: 18 };
    expect(air.dailyVapourPressure(day).route).toBe("lowest temperature");
    expect(air.dailyVapourPressure({ ...day, humidityMean_frac: 0.6 }).route).toBe("mean humidity");
    expect(air.dailyVapourPressure({ ...day, humidityMax_frac: 0.8, humidityMean_frac: 0.6 }).route).toBe(
      "highest humidity",
    );
    const both = { ...day, humidityMax_frac: 0.8, humidityMin_frac: 0.5 };
    expect(air.dailyVapourPressure(both).route).toBe("humidity range");
    expect(air.dailyVapourPressure({ ...both, dewPoint_C: 14 })).toEqual({
      route: "dew point",
      vapourPressure_kPa: air.saturationVapourPressure_kPa(14),
    });
  });
  it("treats a little over saturation as saturated", () => {
    expect(air.vapourPressure_kPa({ air_C: 20, humidity_frac: 1.04 })).toBe(
      air.saturationVapourPressure_kPa(20),
    );
    expect(air.vapourPressureDeficit_kPa({ air_C: 20, humidity_frac: 1.04 })).toBe(0);
  });
  it("is drier where the climate is arid", () => {
    const humid = air.vapourPressureFromMinimum_kPa({ airMin_C: 10, arid: false });
    expect(air.vapourPressureFromMinimum_kPa({ airMin_C: 10, arid: true })).toBeLessThan(humid);
  });
});

describe("dew point and wet bulb", () => {
  it("undo the saturation curve", () => {
    for (const air_C of range(-40, 60, 5)) {
      expect(air.dewPoint_C(air.saturationVapourPressure_kPa(air_C))).toBeCloseTo(air_C, 9);
    }
  });
  it("lie in order: dew point, wet bulb, air", () => {
    for (const humidity_frac of [0.05, 0.3, 0.6, 0.95]) {
      const wet = air.wetBulb_C({ air_C: 25, humidity_frac, pressure_kPa: 100 });
      expect(wet).toBeLessThan(25);
      expect(wet).toBeGreaterThan(air.dewPoint_C(air.vapourPressure_kPa({ air_C: 25, humidity_frac })));
    }
  });
  it("meet at saturation", () => {
    expect(air.wetBulb_C({ air_C: 25, humidity_frac: 1, pressure_kPa: 100 })).toBeCloseTo(25, 6);
  });
  it("go there and back", () => {
    const wet = air.wetBulb_C({ air_C: 25, humidity_frac: 0.4, pressure_kPa: 95 });
    const back = air.vapourPressureFromWetBulb_kPa({ air_C: 25, wetBulb_C: wet, pressure_kPa: 95 });
    expect(back).toBeCloseTo(air.vapourPressure_kPa({ air_C: 25, humidity_frac: 0.4 }), 6);
  });
  it("agree with the fit within its own stated error at sea level", () => {
    for (const air_C of [0, 10, 20, 30]) {
      for (const humidity_frac of [0.2, 0.5, 0.8]) {
        const exact = air.wetBulb_C({ air_C, humidity_frac, pressure_kPa: 101.325 });
        const gap = air.wetBulbByFit_C({ air_C, humidity_frac }) - exact;
        expect(gap).toBeGreaterThan(-1);
        expect(gap).toBeLessThan(0.65);
      }
    }
  });
});

describe("deficits", () => {
  it("are averaged after, never before", () => {
    const hours = { air_C: [10, 30], humidity_frac: [0.9, 0.4] };
    const ofMeans = air.vapourPressureDeficit_kPa({ air_C: 20, humidity_frac: 0.65 });
    expect(air.meanVapourPressureDeficit_kPa(hours)).toBeGreaterThan(ofMeans);
    expect(() => air.meanVapourPressureDeficit_kPa({ air_C: [20], humidity_frac: [] })).toThrow(
      QuantityError,
    );
  });
  it("turn negative at the leaf when dew forms", () => {
    expect(air.leafVapourPressureDeficit_kPa({ leaf_C: 8, vapourPressure_kPa: 1.3 })).toBeLessThan(0);
    expect(air.dailyVapourPressureDeficit_kPa({ airMax_C: 8, airMin_C: 4, vapourPressure_kPa: 1.3 })).toBe(0);
  });
});

describe("pressure and wind", () => {
  it("fall with height and towards the ground", () => {
    expect(air.airPressure_kPa(0)).toBe(101.3);
    expect(air.airPressure_kPa(2500)).toBeLessThan(air.airPressure_kPa(500));
    expect(air.psychrometricConstant_kPa_per_C(100)).toBeGreaterThan(air.psychrometricConstant_kPa_per_C(80));
    expect(air.windAt2m_m_s({ wind_m_s: 4, height_m: 2 })).toBeCloseTo(4, 2);
    expect(air.windAt2m_m_s({ wind_m_s: 4, height_m: 10 })).toBeLessThan(4);
    expect(air.windAt2m_m_s({ wind_m_s: 0, height_m: 10 })).toBe(0);
  });
});

describe("screening", () => {
  it("is silent on a usual day", () => {
    expect(air.screenTemperatures({ airMax_C: 24, airMin_C: 17, indoors: true })).toEqual([]);
    expect(air.screenHumidity([0.4, 0.5, 1])).toEqual([]);
    expect(air.screenDewPoint({ dewPoint_C: 10, airMax_C: 24, airMin_C: 12 })).toEqual([]);
    expect(
      air.screenSolar({ solar_MJ_m2_d: 20, extraterrestrial_MJ_m2_d: 41, clearSky_MJ_m2_d: 31 }),
    ).toEqual([]);
    expect(air.screenWind(1.5)).toEqual([]);
  });
  it("refuses the impossible, NaN included, and only looks at the unusual", () => {
    const level = (notes: readonly air.ScreeningNote[]) => notes.map((note) => note.level).join();
    expect(level(air.screenTemperatures({ airMax_C: 10, airMin_C: 17, indoors: false }))).toBe("refuse");
    expect(level(air.screenTemperatures({ airMax_C: 50, airMin_C: 17, indoors: true }))).toBe("look,look");
    expect(level(air.screenTemperatures({ airMax_C: 20, airMin_C: 19.5, indoors: true }))).toBe("look");
    expect(level(air.screenHumidity([1.02]))).toBe("look");
    expect(level(air.screenHumidity(new Array(48).fill(0.51)))).toBe("look");
    expect(level(air.screenHumidity([Number.NaN]))).toBe("refuse");
    expect(level(air.screenDewPoint({ dewPoint_C: 16, airMax_C: 24, airMin_C: 12 }))).toBe("look");
    expect(level(air.screenDewPoint({ dewPoint_C: 25, airMax_C: 24, airMin_C: 12 }))).toBe("refuse");
    expect(
      level(air.screenSolar({ solar_MJ_m2_d: 36, extraterrestrial_MJ_m2_d: 41, clearSky_MJ_m2_d: 31 })),
    ).toBe("look");
    expect(
      level(air.screenSolar({ solar_MJ_m2_d: -1, extraterrestrial_MJ_m2_d: 41, clearSky_MJ_m2_d: 31 })),
    ).toBe("refuse");
    expect(level(air.screenWind(0))).toBe("look");
    expect(level(air.screenWind(55))).toBe("refuse");
  });
});
