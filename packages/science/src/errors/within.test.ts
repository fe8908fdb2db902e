import { describe, expect, it } from "vitest";
import { QuantityError, unitOfName, within, wordsOfName } from "./index.ts";

describe("within", () => {
  it("words the message in one place", () => {
    expect(() => within("air_C", 95, -40, 60)).toThrow("air temperature is 95 °C; expected -40 to 60 °C");
    expect(() => within("wind_m_s", -1, 0, 40)).toThrow("wind is -1 m s⁻¹; expected 0 to 40 m s⁻¹");
  });
  it("accepts both ends and refuses just past them", () => {
    expect(() => within("air_C", -40, -40, 60)).not.toThrow();
    expect(() => within("air_C", 60, -40, 60)).not.toThrow();
    expect(() => within("air_C", 60.001, -40, 60)).toThrow(QuantityError);
    expect(() => within("air_C", -40.001, -40, 60)).toThrow(QuantityError);
  });
  it("always refuses what is not finite or no number", () => {
    for (const bad of [
      Number.NaN,
      Infinity,
      -Infinity,
      "20" as unknown as number,
      undefined as unknown as number,
    ]) {
      expect(() => within("air_C", bad, -Infinity, Infinity)).toThrow(QuantityError);
    }
  });
  it("carries the parts for callers that word it themselves", () => {
    try {
      within("vapourPressure_kPa", 30, 0, 20);
      expect.unreachable();
    } catch (error) {
      expect(error).toMatchObject({ name: "vapourPressure_kPa", value: 30, unit: "kPa", min: 0, max: 20 });
    }
  });
});

describe("names", () => {
  it("reads units out of suffixes", () => {
    expect(unitOfName("ppfd_umol_m2_s")).toBe("µmol m⁻² s⁻¹");
    expect(unitOfName("slope_kPa_per_C")).toBe("kPa °C⁻¹");
    expect(unitOfName("psychrometer_per_C")).toBe("°C⁻¹");
    expect(unitOfName("canopy_m2")).toBe("m²");
    expect(unitOfName("variance_g2")).toBe("g²");
    expect(unitOfName("humidity_frac")).toBe("");
    expect(unitOfName("albedo")).toBe("");
  });
  it("reads words out of camelCase", () => {
    expect(wordsOfName("leafArea_m2")).toBe("leaf area");
    expect(wordsOfName("dewPoint_C")).toBe("dew point");
    expect(wordsOfName("airMax_C")).toBe("air max temperature");
    expect(wordsOfName("wind2m_m_s")).toBe("wind 2m");
  });
});
