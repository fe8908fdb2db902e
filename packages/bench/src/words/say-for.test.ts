import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sayFor } from "./say-for.ts";

const metric = sayFor({ language: "en", units: "metric", zone: "Europe/Berlin", nameOf: (id) => id });
const us = sayFor({ language: "en", units: "us", zone: "America/New_York", nameOf: (id) => id });
const german = sayFor({ language: "de", units: "metric", zone: "Europe/Berlin", nameOf: (id) => id });
const plain = (said: string) => said.replace(/[\u2009\u202f\u00a0]/g, " ");

describe("how amounts are said", () => {
  it("millilitres to 5 below 100, to 10 above, litres from two", () => {
    expect(plain(metric.volume(63))).toBe("65 mL");
    expect(plain(metric.volume(183))).toBe("180 mL");
    expect(plain(metric.volume(7480))).toBe("7.5 L");
    expect(plain(german.volume(7480))).toBe("7,5 L");
  });
  it("fluid ounces to the half below 16, then cups and gallons", () => {
    expect(plain(us.volume(192))).toBe("6½ fl oz");
    expect(plain(us.volume(10))).toBe("½ fl oz");
    expect(plain(us.volume(946))).toBe("4 cups");
    expect(plain(us.volume(7570))).toBe("2 US gal");
  });
  it("temperature, length and money in the person's units", () => {
    expect(plain(us.temperature(21))).toBe("70 °F");
    expect(plain(us.length(30.48))).toBe("12 in");
    expect(plain(us.length(9.8))).toBe("3⅞ in");
    expect(plain(metric.illuminance(1437))).toBe("1,437 lux");
    expect(plain(german.illuminance(1437))).toBe("1.437 Lux");
    expect(plain(us.illuminance(1399))).toBe("130 fc");
    expect(plain(metric.temperature(-3))).toBe("−3 °C");
    expect(plain(metric.money(1290, "EUR"))).toBe("€12.90");
    expect(plain(metric.money(500, "JPY"))).toMatch(/500/);
  });
  it("never says NaN, whatever comes", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (value) => {
        for (const say of [metric, us, german])
          for (const said of [say.volume(value), say.mass(value), say.length(value), say.minutes(value)])
            expect(said).not.toMatch(/NaN|undefined|Infinity/);
      }),
      {},
    );
  });
});

describe("how dates are said", () => {
  const now = Date.UTC(2026, 0, 14, 7);
  it("by name within two days, by date after, by month past eight weeks", () => {
    expect(metric.day(now + 86_400_000, now)).toBe("tomorrow");
    expect(metric.day(Date.UTC(2026, 0, 14, 18), now)).toBe("this evening");
    expect(metric.day(Date.UTC(2026, 0, 16, 9), now)).toBe("Fri 16 Jan");
    expect(metric.day(Date.UTC(2026, 1, 9, 9), now)).toBe("about 9 Feb");
    expect(metric.day(Date.UTC(2026, 5, 9, 9), now)).toBe("June");
    expect(german.day(now + 86_400_000, now)).toBe("morgen");
  });
  it("with the year where it lies far off", () => {
    expect(metric.date("2028-01-31")).toBe("31 Jan 2028");
    expect(us.date("2028-01-31")).toBe("Jan 31, 2028");
    expect(german.date("2028-01-31")).toBe("31. Jan. 2028");
  });
  it("ranges in words", () => {
    expect(metric.days(Date.UTC(2026, 0, 14, 9), Date.UTC(2026, 0, 17, 9))).toBe("We to Sa");
    expect(metric.days(now, now)).toBe("Wed 14 Jan");
  });
  it("time on the clock of the unit system", () => {
    expect(metric.time(now)).toBe("08:00");
    expect(plain(us.time(now))).toMatch(/2:00 am/i);
  });
});
