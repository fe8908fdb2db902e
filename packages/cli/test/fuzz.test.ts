import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "@sillwood/science/catalogue";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kinds } from "../src/book/kinds.ts";
import { shell } from "./shell.ts";

const text = fc.oneof(
  fc.string({ maxLength: 20 }),
  fc.constantFrom(
    "1",
    "-1",
    "1e309",
    "NaN",
    "",
    "95",
    "1,5",
    "0x10",
    "yes",
    "__proto__",
    "constructor",
    "volume_constructor",
    "2026-02-30",
    "12x9",
    "@",
    "new",
    "=",
    "6.5floz",
  ),
);

/** Whatever is typed, the answer is an exit code and words: no stack, no stumble; NaN only where somebody typed it. */
function sane({ code, out, err }: { code: number; out: string; err: string }) {
  expect([0, 1, 2]).toContain(code);
  expect(`${out}${err}`).not.toMatch(/stumbled|undefined|\[object/);
  if (code === 0) expect(out).not.toMatch(/\bNaN\b/);
  if (code !== 0) expect(err.length).toBeGreaterThan(5);
}

describe("typed nonsense", () => {
  it("into enter: never a crash, always a reason", async () => {
    const sh = shell();
    await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9");
    const names = kinds.all.map(({ kind }) => kind);
    const key = fc.oneof(
      fc.constantFrom(
        "volume",
        "weight_g",
        "habit",
        "pot",
        "when",
        "name",
        "to",
        "text",
        "look",
        "yes",
        "minutes",
        "constructor",
        "volume_constructor",
      ),
      text,
    );
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(fc.constantFrom(...names), text),
        fc.array(text, { maxLength: 2 }),
        fc.array(fc.tuple(key, text), { maxLength: 4 }),
        async (kind, on, pairs) => {
          const argv = ["enter", kind, ...on, ...pairs.map(([name, value]) => `${name}=${value}`)].filter(
            (word) => !word.startsWith("-"),
          );
          sane(await sh.run(...argv));
        },
      ),
      { numRuns: 60 },
    );
  }, 120_000);

  it("into reckon: every formula refuses with field, value, limit and unit", async () => {
    const sh = shell();
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...catalogue),
        fc.array(text, { minLength: 6, maxLength: 6 }),
        async (one, values) => {
          sane(
            await sh.run(
              "reckon",
              one.name,
              ...one.inputs.map(({ name }, i) => `${name}=${values[i % values.length]}`),
            ),
          );
        },
      ),
      { numRuns: 250 },
    );
    const hot = await sh.run("reckon", "saturationVapourPressure_kPa", "air_C=95");
    expect(hot.err).toBe("air temperature is 95 °C; expected -40 to 60 °C. Meant °F? That is 35 °C.\n");
  });

  it("in a table of inputs or a list of plants: named by line and column", async () => {
    const sh = shell();
    await fc.assert(
      fc.asyncProperty(fc.array(fc.array(text, { maxLength: 5 }), { maxLength: 6 }), async (cells) => {
        writeFileSync(
          join(sh.home, "t.csv"),
          cells.map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(",")).join("\n"),
        );
        sane(await sh.run("reckon", "dewPoint_C", "--table", "t.csv"));
        for (const kind of ["plants", "weighings", "logger"]) {
          const read = await sh.run("read", kind, "t.csv");
          expect([0, 1, 2]).toContain(read.code);
          expect(read.err).not.toMatch(/stumbled/);
        }
      }),
      { numRuns: 40 },
    );
    writeFileSync(join(sh.home, "rows.csv"), "air_C\n20\n95\n21\n");
    const table = await sh.run("reckon", "saturationVapourPressure_kPa", "--table", "rows.csv");
    expect(table.code).toBe(1);
    expect(table.err).toContain("line 3, air_C: air temperature is 95 °C");
    expect(table.out.split("\n")).toHaveLength(5);
  }, 120_000);

  it("in files of entries and whole books: every line is taken or named, and nothing half", async () => {
    const sh = shell();
    await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9");
    const log_n = async () => ((await sh.run("book", "log", "--json")).json()["lines"] as unknown[]).length;
    const value = fc.oneof(
      text,
      fc.double(),
      fc.boolean(),
      fc.constant(null),
      fc.array(fc.integer(), { maxLength: 2 }),
    );
    const line = fc.oneof(
      text,
      fc
        .record({
          kind: fc.oneof(fc.constantFrom("watering.weighed", "plant.noted", "book.corrected"), text),
          on: fc.array(fc.oneof(fc.constant("1"), text), { maxLength: 2 }),
          when: text,
          data: fc.dictionary(fc.constantFrom("weight_g", "state", "text", "__proto__"), value),
        })
        .map((entry) => JSON.stringify(entry)),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(line, { maxLength: 4 }),
        fc.array(fc.array(text, { minLength: 3, maxLength: 3 }), { maxLength: 4 }),
        async (lines, cells) => {
          writeFileSync(join(sh.home, "e.ndjson"), lines.join("\n"));
          writeFileSync(
            join(sh.home, "e.csv"),
            ["when,weight,state", ...cells.map((row) => row.join(","))].join("\n"),
          );
          for (const argv of [
            ["enter", "--from", "e.ndjson"],
            ["enter", "watering.weighed", "1", "--from", "e.csv"],
            ["enter", "--from", "e.csv"],
            ["book", "import", "e.ndjson"],
          ]) {
            const before_n = await log_n();
            const result = await sh.run(...argv);
            sane(result);
            if (result.code !== 0) expect(await log_n()).toBe(before_n);
          }
        },
      ),
      { seed: 14, numRuns: 25 },
    );
    writeFileSync(join(sh.home, "e.csv"), "when,weight\n2026-03-12 07:00,600\n2026-03-12 08:00,600000\n");
    const { err } = await sh.run("enter", "weighed", "1", "--from", "e.csv");
    expect(err).toBe("line 3, weight: weight is 600000 g; expected 1 to 100000 g. Meant 60000 g?\n");
  }, 120_000);
});
