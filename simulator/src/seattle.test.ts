import { describe, expect, test } from "vitest";
import { compactSeattle, seattleCsv } from "./generate-seattle.ts";
import { DAYS_TENTHS, FIRST_DATE } from "./seattle.generated.ts";
import { seattleRecord, shiftedSeattle, shiftTo } from "./seattle.ts";

describe("the Seattle record", () => {
  test("is the one in vega-datasets, row by row", () => {
    expect(compactSeattle(seattleCsv())).toEqual({ first: FIRST_DATE, text: DAYS_TENTHS });
    const record = seattleRecord();
    const rows = seattleCsv().trim().split("\n").slice(1);
    expect(record.size).toBe(rows.length);
    for (const row of rows) {
      const [date = "", rain, high, low, wind] = row.split(",");
      expect(record.get(date)).toEqual({
        date,
        rain_mm: Number(rain),
        tMax_C: Number(high),
        tMin_C: Number(low),
        wind_m_s: Number(wind),
      });
    }
  });

  test("shifted by whole years keeps day and month", () => {
    expect(shiftTo("2026-11-25")).toBe(11);
    const [day] = shiftedSeattle("2026-11-25", 1, 11);
    expect(day).toEqual({ ...seattleRecord().get("2015-11-25"), date: "2026-11-25" });
  });

  test("a 29 February whose counterpart has none takes the record's only one", () => {
    const days = shiftedSeattle("2028-02-28", 3, shiftTo("2028-03-15"));
    expect(days.map(({ date }) => date)).toEqual(["2028-02-28", "2028-02-29", "2028-03-01"]);
    expect(days[1]).toEqual({ ...seattleRecord().get("2012-02-29"), date: "2028-02-29" });
  });

  test("the record's own 29 February falls out in a year that has none, and no day is doubled", () => {
    const days = shiftedSeattle("2023-02-27", 4, 11);
    expect(days.map(({ date }) => date)).toEqual(["2023-02-27", "2023-02-28", "2023-03-01", "2023-03-02"]);
    expect(days[2]).toEqual({ ...seattleRecord().get("2012-03-01"), date: "2023-03-01" });
  });

  test("says so when it does not reach", () => {
    expect(() => shiftedSeattle("2027-01-01", 1, 11)).toThrow(RangeError);
  });
});
