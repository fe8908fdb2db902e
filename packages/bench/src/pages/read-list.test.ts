import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plantId, START_ms, testLedger, testPen } from "../../test/toy.ts";
import { crafts } from "../crafts/registry.ts";
import { calendarOf } from "../places/time.ts";
import { cellDate_ms, cellNumber } from "./cells.ts";
import { type Desk, deskAt } from "./desk.ts";
import { type ListKind, readList } from "./index.ts";

function deskWithPlants(): Desk {
  const ledger = testLedger(crafts);
  const pen = testPen(ledger);
  ledger.add([
    pen.at(0, {
      kind: "bench.laid",
      on: ["b"],
      data: { name: "Sill", place: "sill", outdoors: false, order_n: 0, spots: [{ id: "s1", name: "1" }] },
    }),
    pen.at(0.1, {
      kind: "plant.brought",
      on: [plantId(1)],
      data: { number: 101, habit: "thin", medium: "spongy", spot: "s1" },
    }),
  ]);
  return deskAt(ledger, { now_ms: START_ms + 86_400_000, language: "en", units: "metric" });
}
let next = 0;
const newId = () => `new-${++next}`;
const cut = (text: string) =>
  text
    .trim()
    .split("\n")
    .map((line) => line.split(";"));
const read = (kind: ListKind, text: string, bench?: string) =>
  readList(deskWithPlants(), kind, cut(text), { newId, ...(bench ? { bench } : {}) });

describe("a list of plants", () => {
  it("becomes benches, cultivars and plants, each written once", () => {
    const list = read(
      "plants",
      "Nr;Sorte;Breite;Tiefe;Bank;Platz\n110;Ember Thread;12;9;Lamp shelf;1\n111;Ember Thread;12,5;9;Lamp shelf;2\n112;;14;8;Sill;2",
    );
    expect(list.problems).toEqual([]);
    expect(list.drafts.map(({ kind }) => kind)).toEqual([
      "bench.laid",
      "bench.laid",
      "cultivar.described",
      "plant.brought",
      "plant.brought",
      "plant.brought",
    ]);
    expect(list.drafts[4]?.data).toMatchObject({ number: 111, pot: { top_cm: 12.5 } });
    expect(list.firstRows).toHaveLength(3);
  });

  it("names line and column of every mistake, and keeps nothing then", () => {
    const list = read("plants", "number;width;depth\n101;12;9\nx;12;90");
    expect(list.problems.map(({ line, column }) => `${line} ${column}`)).toEqual([
      "2 number",
      "3 number",
      "3 pot.depth_cm",
    ]);
    expect(list.problems[2]?.message).toBe("pot depth is 90 cm; expected 2 to 60 cm");
    expect(list.drafts).toEqual([]);
  });

  it("asks for a column that is needed", () => {
    expect(read("weighings", "number;when\n101;2026-01-05 08:00").problems[0]?.message).toContain("grams");
  });
});

describe("a list of weighings", () => {
  it("is read with what was poured after", () => {
    const list = read("weighings", "pot;date;weight;poured\n101;2026-01-05 08:00;412;180");
    expect(list.problems).toEqual([]);
    expect(list.drafts.map(({ kind }) => kind)).toEqual(["watering.weighed", "watering.watered"]);
  });
});

describe("a logger file", () => {
  it("becomes parts of a series, humidity in per cent turned into a share", () => {
    const list = read(
      "logger",
      "timestamp;temp;rh\n2026-01-05T08:00:00Z;20,5;55\n2026-01-05T09:00:00Z;21;0.5",
      "b",
    );
    expect(list.problems).toEqual([]);
    expect(list.files[0]?.text).toContain("2026-01-05T08:00:00.000Z,20.5,0.55");
    expect(list.drafts[0]).toMatchObject({ kind: "series.part", on: ["b"], data: { rows_n: 2 } });
  });
});

describe("a weather record", () => {
  it("becomes parts for a bench outdoors; a highest below the lowest is asked about", () => {
    const list = read(
      "weather",
      "date;temp_max;temp_min;precipitation;wind\n2026-01-03;9.1;2;0.5;3\n2026-01-04;8;1.5;0;2",
      "b",
    );
    expect(list.problems).toEqual([]);
    expect(list.drafts[0]?.data).toMatchObject({ what: "weather", rows_n: 2 });
    expect(list.files[0]?.text.split("\n")[0]).toBe("instant,tMax_C,tMin_C,rain_mm,wind_m_s");
    expect(read("weather", "date;temp_max;temp_min\n2026-01-03;1;9", "b").problems[0]?.message).toContain(
      "Columns swapped?",
    );
  });
});

describe("cells", () => {
  const berlin = calendarOf("Europe/Berlin");
  it("are read as people and loggers write them", () => {
    expect(cellNumber("412 g")).toBe(412);
    expect(cellNumber("1.234,5")).toBe(null);
    expect(cellNumber("-3,5")).toBe(-3.5);
    expect(cellDate_ms("30.4.2026 8:15", berlin)).toBe(Date.UTC(2026, 3, 30, 6, 15));
    expect(cellDate_ms("2026-04-30T08:15:00Z", berlin)).toBe(Date.UTC(2026, 3, 30, 8, 15));
    expect(cellDate_ms("2026-02-30", berlin)).toBeUndefined();
    expect(cellDate_ms("4/30/2026", berlin)).toBeUndefined();
  });
  it("never crash the reader, whatever a file holds", () => {
    const cell = fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.constantFrom("number", "date", "weight", "101", "", "1e999", "__proto__", "2026-13-01", "-0"),
    );
    fc.assert(
      fc.property(
        fc.constantFrom<ListKind>("plants", "weighings", "logger", "weather"),
        fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 8 }),
        (kind, cells) => {
          const list = readList(deskWithPlants(), kind, cells, { newId, bench: "b" });
          expect(JSON.stringify(list.drafts)).not.toContain("null");
          for (const { message, line } of list.problems) expect(message.length > 3 && line >= 1).toBe(true);
        },
      ),
      { numRuns: 150 },
    );
  });
});
