import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { exportText } from "./book/export-text.ts";
import type { Line } from "./book/line.ts";
import { demoBook } from "./demo.ts";

const NOW_ms = Date.parse("2026-01-14T15:00:00Z");
const demo = demoBook({ now_ms: NOW_ms, seed: 1 });
const lines = demo.entries.map((text) => JSON.parse(text) as Line);
const of = (kind: string) => lines.filter((line) => line.kind === kind);
const plantOf = (number: number) =>
  of("plant.brought").find((line) => (line.data as { number: number }).number === number)?.on[0];

describe("the demo book", () => {
  test("is the same for the same seed and another for another", () => {
    expect(demoBook({ now_ms: NOW_ms, seed: 1 }).entries).toEqual(demo.entries);
    expect(demoBook({ now_ms: NOW_ms, seed: 2 }).entries).not.toEqual(demo.entries);
  });

  test("has about 40 plants on four benches, one outdoors and one in quarantine", () => {
    const ended = new Set(of("plant.ended").flatMap((line) => line.on));
    const living = of("plant.brought").filter((line) => !ended.has(line.on[0] as string));
    expect(living.length).toBeGreaterThanOrEqual(38);
    expect(living.length).toBeLessThanOrEqual(46);
    const benches = of("bench.laid").map((line) => line.data as { outdoors: boolean; quarantine?: boolean });
    expect(benches).toHaveLength(4);
    expect(benches.filter((bench) => bench.outdoors)).toHaveLength(1);
    expect(benches.filter((bench) => bench.quarantine)).toHaveLength(1);
    expect(demo.truth.filter(({ bench }) => bench === "south-sill")).toHaveLength(14);
    expect(demo.truth.filter(({ bench }) => bench === "lamp-shelf-a")).toHaveLength(19);
    const numbers = of("plant.brought").map((line) => (line.data as { number: number }).number);
    expect(new Set(numbers).size).toBe(numbers.length);
  });

  test("covers five months to the day before, nothing later than now", () => {
    const times = lines.filter((line) => line.kind.startsWith("watering.")).map((line) => line.at_ms);
    expect((NOW_ms - Math.min(...times)) / 86_400_000).toBeGreaterThan(145);
    expect(Math.max(...lines.map((line) => line.at_ms))).toBeLessThanOrEqual(NOW_ms);
    for (const line of lines) expect(line.clock.slice(0, 24) <= new Date(NOW_ms).toISOString()).toBe(true);
  });

  test("ids are of version 7 and unique, clocks rise, the text is canonical", () => {
    expect(new Set(lines.map((line) => line.id)).size).toBe(lines.length);
    for (const [i, line] of lines.entries()) {
      expect(line.id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
      expect(line.clock).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z\/[0-9a-f]{4}$/);
      if (i > 0) expect(line.clock > (lines[i - 1]?.clock ?? "")).toBe(true);
      const keys = Object.keys(line);
      expect(keys).toEqual([...keys].sort());
    }
  });

  test("whatever it names was introduced before", () => {
    const known = new Set<string>(["book"]);
    for (const line of lines) {
      if (/\.(joined|described|laid|started|brought|bought)$/.test(line.kind))
        for (const id of line.on) known.add(id);
      for (const id of line.on) expect(known.has(id), `${line.kind} names ${id}`).toBe(true);
      if (line.kind === "bench.laid")
        for (const spot of (line.data as unknown as { spots: { id: string }[] }).spots) known.add(spot.id);
      const to = (line.data as { to?: string; spot?: string }).to ?? (line.data as { spot?: string }).spot;
      if (to) expect(known.has(to)).toBe(true);
      known.add(line.id);
      for (const id of line.corrects ?? []) expect(known.has(id)).toBe(true);
    }
  });

  test("holds the slips: a corrected amount, a weight put under the right pot, one withdrawn entry, one brought back", () => {
    const said = of("book.corrected").map((line) =>
      Object.keys(line.data as object)
        .sort()
        .join(),
    );
    expect(said.filter((keys) => keys === "data")).toHaveLength(2);
    expect(said).toContain("data,on");
    expect(said.filter((keys) => keys === "withdrawn")).toHaveLength(2);
    expect(said).toContain("restored");
  });

  test("holds a weight of another pot that nobody has confirmed", () => {
    const weights = of("watering.weighed")
      .filter((line) => line.on[0] === plantOf(121))
      .map((line) => (line.data as { weight_g: number }).weight_g);
    const usual = [...weights].sort((a, b) => a - b)[Math.floor(weights.length / 2)] as number;
    expect(Math.max(...weights)).toBeGreaterThan(usual + 150);
  });

  test("holds the stories: sold, died, moved, released, lost seedlings, a repotting, hanging while heavy, supplies", () => {
    expect(
      of("plant.ended")
        .map((line) => (line.data as { how: string }).how)
        .sort(),
    ).toEqual(["died", "sold"]);
    expect(of("plant.moved")).toHaveLength(2);
    expect(of("batch.lost").length).toBeGreaterThan(0);
    expect(of("plant.potted")).toHaveLength(1);
    expect(of("supply.bought").length).toBeGreaterThanOrEqual(5);
    const looks = of("watering.looked")
      .filter((line) => line.on[0] === plantOf(107))
      .map((line) => (line.data as { look: string }).look);
    expect(looks).toContain("drooping");
    expect(looks).toContain("heavy");
    expect(of("round.skipped")).toHaveLength(1);
  });

  test("nothing is done to a plant after it ended", () => {
    for (const end of of("plant.ended")) {
      const later = lines.filter(
        (line) =>
          line.at_ms > end.at_ms && line.on.includes(end.on[0] as string) && line.kind !== "book.corrected",
      );
      expect(later).toEqual([]);
    }
  });

  test("both people write, each on one device; the helper has the sill", () => {
    const writers = new Map(lines.map((line) => [line.by, line.device]));
    expect(new Set(writers.keys())).toEqual(new Set([demo.people.grower, demo.people.helper]));
    const walks = of("round.walked").filter(
      (line) => (line.data as { bench: string }).bench === "south-sill",
    );
    for (const walk of walks) expect(walk.by).toBe(demo.people.helper);
  });

  test("files are named by their content and cut at the day before", () => {
    const named = of("series.part").flatMap((line) => line.files ?? []);
    expect(new Set(named)).toEqual(new Set(demo.files.keys()));
    for (const [hash, text] of demo.files) expect(createHash("sha256").update(text).digest("hex")).toBe(hash);
    const weather = of("series.part").filter((line) => (line.data as { what: string }).what === "weather");
    expect(Math.max(...weather.map((line) => (line.data as { to_ms: number }).to_ms))).toBe(
      Date.parse("2026-01-13T20:00:00Z"),
    );
    const last = weather.at(-1);
    const rows =
      demo.files
        .get(last?.files?.[0] ?? "")
        ?.trim()
        .split("\n") ?? [];
    expect(rows[0]).toBe("instant,rain_mm,tMax_C,tMin_C,wind_m_s");
    // The record's 13 January 2015.
    expect(rows.at(-1)).toBe("2026-01-13T20:00:00.000Z,0,9.4,2.8,2.7");
    expect((last?.data as { rows_n: number } | undefined)?.rows_n).toBe(rows.length - 1);
  });

  test("the export counts what it holds", () => {
    const text = exportText("demo", demo).trim().split("\n");
    expect(JSON.parse(text[0] as string)).toEqual({ sillwood: "book", format: 1, book: "demo" });
    expect(JSON.parse(text.at(-1) as string)).toEqual({
      end: { entries_n: demo.entries.length, redacted_n: 0, files_n: demo.files.size },
    });
  });
});

describe("on the demo day at least 12 pots of the south sill are due and none has wilted", () => {
  test.each([
    "2026-01-14T15:00:00Z",
    "2026-04-10T20:00:00Z",
    "2026-07-20T14:00:00Z",
    "2026-11-25T14:00:00Z",
    "2028-02-29T16:00:00Z",
    "2028-03-15T15:00:00Z",
    "2027-03-01T15:00:00Z",
    "2026-12-31T23:30:00Z",
    "2027-01-01T09:00:00Z",
  ])("%s", (now) => {
    const { truth, entries } = demoBook({ now_ms: Date.parse(now), seed: 1 });
    const sill = truth
      .filter(({ bench }) => bench === "south-sill")
      .map(({ depletion_g, available_g }) => depletion_g / available_g);
    expect(sill.filter((gone_frac) => gone_frac >= 0.55).length).toBeGreaterThanOrEqual(12);
    expect(Math.max(...sill)).toBeLessThan(1.05);
    expect(entries.length).toBeGreaterThan(2000);
    for (const text of entries) expect(text).not.toMatch(/null|NaN/);
  });
});

test("a present outside the record's reach is refused by name", () => {
  expect(() => demoBook({ now_ms: Number.NaN, seed: 1 })).toThrow(/now is NaN/);
});
