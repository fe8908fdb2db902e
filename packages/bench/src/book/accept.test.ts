import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { accepted, testKinds, writer } from "../../test/entry-maker.ts";
import { accept, acceptText, readersFrom } from "./accept.ts";
import { CORRECTED } from "./correct.ts";
import { LIMITS } from "./envelope.ts";
import { entryHash } from "./hash.ts";
import { REDACTED, redactionOf } from "./redact.ts";

const good = writer(1).write("test.weighed", { mass_g: 400 }).entry;
const problemsOf = (entry: unknown) => {
  const result = accept(entry, testKinds);
  return result.ok ? [] : result.problems;
};
const pathsOf = (entry: unknown) => problemsOf(entry).map(({ path }) => path);
const nested = (depth: number): unknown => (depth === 0 ? 1 : [nested(depth - 1)]);

describe("the gate into the book", () => {
  it("takes a good entry, with its hash and its canonical text", () => {
    const result = accept(good, testKinds);
    expect(result).toMatchObject({ ok: true, state: "known", hash: entryHash(good) });
    if (result.ok) expect(JSON.parse(result.text)).toEqual(good);
  });

  it("gives the same hash however the text was spaced and its keys ordered", () => {
    const shuffled = Object.fromEntries(Object.entries(good).reverse());
    expect(acceptText(JSON.stringify(shuffled, null, 3), testKinds)).toMatchObject({
      ok: true,
      hash: entryHash(good),
    });
  });

  it("takes what only a newer app knows, and does not judge it", () => {
    expect(accept({ ...good, kind: "future.thing", data: { x: 1 } }, testKinds)).toMatchObject({
      ok: true,
      state: "newer",
    });
    expect(accept({ ...good, v: 3, data: { mass: "?" }, on: [] }, testKinds)).toMatchObject({
      ok: true,
      state: "newer",
    });
    expect(readersFrom(testKinds)("future.thing")).toBe("grower");
  });

  it("lifts an older shape before it judges it", () => {
    expect(accept({ ...good, v: 1, data: { mass_kg: 0.4 } }, testKinds)).toMatchObject({
      ok: true,
      state: "known",
    });
    expect(pathsOf({ ...good, v: 1, data: { mass_kg: 90 } })).toEqual(["data.mass_g"]);
    expect(pathsOf({ ...good, v: 1, data: null })).toEqual(["data"]);
  });

  it("names all problems at once with field, value, limit and unit", () => {
    const problems = problemsOf({
      ...good,
      at_ms: 5,
      zone: "moon",
      clock: "now",
      data: { mass_g: 0.5 },
      nonsense: 1,
      id: "x",
      zone2: 1,
    });
    expect(problems.map(({ path }) => path).sort()).toEqual(
      ["at_ms", "clock", "data.mass_g", "id", "nonsense", "zone2"].sort(),
    );
    expect(problems.find(({ path }) => path === "at_ms")).toMatchObject({
      value: 5,
      unit: "ms",
      limit: ">=946684800000",
    });
    expect(problems.find(({ path }) => path === "data.mass_g")).toMatchObject({
      value: 0.5,
      unit: "g",
      message: "at least 1 g",
    });
  });

  it.each(Object.keys(good))("misses %s", (field) => {
    const { [field as keyof typeof good]: _gone, ...rest } = good;
    expect(pathsOf(rest)).toContain(field);
  });

  it.each([
    ["at_ms", 946_684_800_000, 946_684_799_999],
    ["at_ms", 7_258_118_400_000, 7_258_118_400_001],
    ["at_ms", 1_790_000_000_000, 1_790_000_000_000.5],
    ["v", 1000, 1001],
    ["zone", "America/Argentina/Buenos_Aires", "<b>"],
    ["kind", "future.thing", "future"],
    ["id", "0699e991-a7ff-7000-8000-000000000000", "0699e991-a800-7000-8000-000000000000"],
    ["by", good.by, "Somebody's name"],
    ["files", Array(20).fill("a".repeat(64)), Array(21).fill("a".repeat(64))],
    ["files", [], ["A".repeat(64)]],
    ["on", Array(500).fill("plant-1"), Array(501).fill("plant-1")],
    ["on", ["plant-1"], []],
    ["on", ["a".repeat(64)], ["a".repeat(65)]],
  ])("%s: the limit passes and what lies past it does not", (field, inside, outside) => {
    expect(problemsOf({ ...good, [field]: inside })).toEqual([]);
    expect(pathsOf({ ...good, [field]: outside }).some((path) => path.startsWith(field))).toBe(true);
  });

  it("keeps depth and size in bounds", () => {
    const note = (data: unknown) => problemsOf({ ...good, kind: "future.thing", data });
    expect(note(nested(LIMITS.depth_n - 1))).toEqual([]);
    expect(note(nested(LIMITS.depth_n))[0]).toMatchObject({ limit: "<=16", unit: "levels" });
    const rest_B = JSON.stringify({ ...good, kind: "future.thing", data: "" }).length;
    expect(note("x".repeat(LIMITS.entry_B - rest_B))).toEqual([]);
    expect(note("x".repeat(LIMITS.entry_B - rest_B + 1))[0]).toMatchObject({
      unit: "B",
      value: LIMITS.entry_B + 1,
    });
    expect(note("ü".repeat(LIMITS.entry_B / 2))[0]).toMatchObject({ unit: "B" });
  });

  it.each(["__proto__", "constructor", "prototype"])(
    "refuses a field called %s, wherever it stands",
    (key) => {
      const text = JSON.stringify({ ...good, kind: "future.thing", data: { a: [{ KEY: 1 }] } }).replace(
        "KEY",
        key,
      );
      expect(acceptText(text, testKinds)).toMatchObject({
        ok: false,
        problems: [{ path: `data.a.0.${key}` }],
      });
    },
  );

  it("refuses half characters and numbers that are none", () => {
    expect(pathsOf({ ...good, data: { text: "\ud83d" } })).toEqual(["data.text"]);
    expect(pathsOf({ ...good, data: { mass_g: Number.NaN } })).toEqual(["data.mass_g"]);
    expect(acceptText(JSON.stringify(good).replace("400", "1e999"), testKinds).ok).toBe(false);
  });

  it("a correction names others, and only a correction does", () => {
    const { write } = writer(3);
    expect(pathsOf({ ...good, corrects: [good.id] })).toEqual(["corrects"]);
    const correction = write(CORRECTED, { withdrawn: true }, { corrects: [good.id] }).entry;
    expect(problemsOf(correction)).toEqual([]);
    expect(pathsOf({ ...correction, corrects: [] })).toEqual(["corrects"]);
    expect(pathsOf({ ...correction, corrects: [correction.id] })).toEqual(["corrects"]);
    expect(pathsOf({ ...correction, data: { withdrawn: false } })).not.toEqual([]);
  });

  it("a redaction names an entry by id and hash", () => {
    const { write } = writer(4);
    const ref = { id: good.id, hash: entryHash(good) };
    expect(redactionOf(write(REDACTED, ref).entry)).toEqual(ref);
    expect(redactionOf(good)).toBeUndefined();
    expect(redactionOf({ ...write(REDACTED, ref).entry, data: { id: good.id } })).toBeUndefined();
  });

  it("answers anything at all, and what it takes comes back the same", () => {
    const field = fc.constantFrom(...Object.keys(good), "files", "corrects", "__proto__");
    const mutated = fc.record({ field, value: fc.jsonValue({ maxDepth: 20 }) });
    fc.assert(
      fc.property(fc.oneof(fc.anything(), fc.jsonValue(), mutated), (input) => {
        const given = input as { field?: string; value?: unknown };
        const entry = given?.field === undefined ? input : { ...good, [given.field]: given.value };
        const result = accept(entry, testKinds);
        if (result.ok) expect(accepted(JSON.parse(result.text)).hash).toBe(result.hash);
        else {
          expect(result.problems.length).toBeGreaterThan(0);
          // Problems travel as JSON themselves.
          expect(JSON.parse(JSON.stringify(result.problems))).toEqual(result.problems);
        }
      }),
    );
    fc.assert(fc.property(fc.string(), (text) => void acceptText(text, testKinds)));
  });
});
