import { describe, expect, test } from "vitest";
import { chanceOf } from "../nursery/chance.ts";
import { bookWriter } from "./book-writer.ts";
import { lineText } from "./line.ts";
import { byMonth, seriesFile } from "./series-file.ts";

const AT_ms = Date.parse("2026-01-14T15:00:00.123Z");
const plain = { kind: "plant.noted", on: ["a"], data: { text: "x" }, by: "p", device: "d" };

describe("the writer of the book", () => {
  test("stamps ids with the time, counts within a millisecond, and never sets its clock back", () => {
    const book = bookWriter("America/Los_Angeles", chanceOf(1));
    for (const at_ms of [AT_ms, AT_ms, AT_ms - 5000, AT_ms + 1]) book.write({ ...plain, at_ms });
    const ids = book.lines.map((line) => line.id);
    expect(Number.parseInt(ids[0]?.replace("-", "").slice(0, 12) ?? "", 16)).toBe(AT_ms);
    expect([...ids].sort()).toEqual(ids);
    expect(book.lines.map((line) => line.clock)).toEqual([
      "2026-01-14T15:00:00.123Z/0000",
      "2026-01-14T15:00:00.123Z/0001",
      "2026-01-14T15:00:00.123Z/0002",
      "2026-01-14T15:00:00.124Z/0000",
    ]);
    expect(book.lines[2]?.at_ms).toBe(AT_ms - 5000);
  });

  test("what was typed later says so, and nothing can be typed before it happened", () => {
    const book = bookWriter("America/Los_Angeles", chanceOf(1));
    book.write({ ...plain, at_ms: AT_ms, typed_ms: AT_ms + 3_600_000 });
    expect(book.lines[0]).toMatchObject({
      atFrom: "typed",
      at_ms: AT_ms,
      clock: "2026-01-14T16:00:00.123Z/0000",
    });
    expect(() => book.write({ ...plain, at_ms: AT_ms, typed_ms: AT_ms - 1 })).toThrow(/typed before/);
  });

  test("text has its keys in order, leaves out what is undefined and refuses what is no number", () => {
    const book = bookWriter("America/Los_Angeles", chanceOf(1));
    book.write({ ...plain, at_ms: AT_ms, data: { b: 1, a: undefined, A: [2, { d: null, c: "ü" }] } });
    const text = lineText(book.lines[0] as (typeof book.lines)[number]);
    expect(text).toContain('"data":{"A":[2,{"c":"ü","d":null}],"b":1}');
    expect(() =>
      lineText({ ...(book.lines[0] as (typeof book.lines)[number]), data: { x: Number.NaN } }),
    ).toThrow(/NaN/);
  });
});

test("a series file is a table by instant, one part a month", () => {
  const rows = [0, 31, 32].map((day) => ({ at_ms: Date.UTC(2026, 0, 1 + day, 20), values: [day, 0.5] }));
  const parts = byMonth(rows, ({ at_ms }) => new Date(at_ms).toISOString().slice(0, 7));
  expect(parts.map((part) => part.length)).toEqual([1, 2]);
  const file = seriesFile(["air_C", "humidity_frac"], rows);
  expect(file.text.split("\n").slice(0, 2)).toEqual([
    "instant,air_C,humidity_frac",
    "2026-01-01T20:00:00.000Z,0,0.5",
  ]);
  expect(file.text.endsWith("\n")).toBe(true);
  expect(file.rows_n).toBe(3);
  expect(() => seriesFile(["air_C"], [])).toThrow(/row/);
});
