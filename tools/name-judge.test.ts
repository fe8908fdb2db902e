import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ts from "typescript";
import { afterEach, expect, it } from "vitest";
import { judgeNames } from "./name-judge.ts";

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});

/** Judges sources given by path and returns the messages, each with the file it is about. */
function judged(sources: Readonly<Record<string, string>>, unitless: readonly string[] = []): string[] {
  const folder = mkdtempSync(join(tmpdir(), "names-"));
  folders.push(folder);
  const files = Object.entries(sources).map(([path, text]) => {
    const file = join(folder, path);
    mkdirSync(join(file, ".."), { recursive: true });
    writeFileSync(file, text);
    return file;
  });
  const program = ts.createProgram(files, {
    strict: true,
    noEmit: true,
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    allowImportingTsExtensions: true,
    types: [],
  });
  const verdicts = judgeNames(program, {
    science: (file) => file.startsWith(join(folder, "science")),
    entries: (file) => file.startsWith(join(folder, "bench")),
    conversions: (file) => file.endsWith("units.ts"),
    unitless: (name) => unitless.includes(name),
  });
  return verdicts.map(
    ({ file, message }) => `${file.slice(folder.length + 1)} ${message.split(" is a number")[0]}`,
  );
}

const sourced = (code: string) => `/** Half.\n * @source our assumption */\n${code}\n`;

it("passes names with units, unitless names on the list and conversion constants", () => {
  const sources = {
    "science/air/half.ts": sourced(
      "export const half_C = (air_C: number, lai: number): number => air_C / lai;",
    ),
    "science/air/index.ts": `export { half_C } from "./half.ts";`,
    "science/units.ts": "export const cm_per_inch = 2.54;",
  };
  expect(judged(sources, ["lai"])).toEqual([]);
});

it("finds a parameter, a result and a constant without a unit", () => {
  const sources = {
    "science/half.ts": "export const half = (air: number): number => air / 2;\nexport const limit = 4;",
  };
  expect(judged(sources)).toEqual(["science/half.ts air", "science/half.ts half", "science/half.ts limit"]);
});

it("looks into objects, optional fields, arrays, unions and results", () => {
  const code = `
    export interface Day { readonly warmest?: number; readonly hours: readonly { readonly light: number }[] }
    export type Cut = { readonly kind: "a"; readonly depth: number } | { readonly kind: "b"; readonly wide_cm: number };
    interface Hidden { readonly inner: number }
    export function shape(input: { readonly top: number | null; readonly hidden: Hidden }): { readonly out: Float64Array } {
      return { out: new Float64Array([input.top ?? input.hidden.inner]) };
    }`;
  const names = judged({ "science/day.ts": code }).map((message) => message.split(" ")[1]);
  expect(names.sort()).toEqual(["depth", "inner", "light", "out", "top", "warmest"]);
});

it("demands a source of what an index hands out, and of nothing else", () => {
  const sources = {
    "science/air/inner.ts": "export const inner_C = (air_C: number): number => air_C;",
    "science/air/outer.ts":
      "/** Has words, but no source. */\nexport const outer_C = (air_C: number): number => air_C;",
    "science/air/empty.ts": "/** @source */\nexport const empty_C = (air_C: number): number => air_C;",
    "science/air/index.ts": `export { outer_C } from "./outer.ts"; export * from "./empty.ts";`,
  };
  expect(judged(sources)).toEqual([
    "science/air/empty.ts empty_C has no @source in its docstring",
    "science/air/outer.ts outer_C has no @source in its docstring",
  ]);
});

it("finds a number without a unit in the schema of an entry", () => {
  const code = `
    interface Schema<Output> { readonly "~types"?: { readonly output: Output } | undefined }
    declare function object<Fields>(fields: Fields): Schema<{ readonly [K in keyof Fields]: Fields[K] }>;
    const poured = object({ amount_mL: 3 as number, weight: 4 as number, seen: "x" as string });
    export const kinds = { poured: { kind: "water.poured", schema: poured } };
    export const notAnEntry = (weight: number): number => weight;`;
  expect(judged({ "bench/watering/entries.ts": code })).toEqual(["bench/watering/entries.ts weight"]);
});
