import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as air from "../air/index.ts";
import * as chance from "../chance/index.ts";
import * as errors from "../errors/index.ts";
import * as feed from "../feed/index.ts";
import * as fruit from "../fruit/index.ts";
import * as growth from "../growth/index.ts";
import * as light from "../light/index.ts";
import * as medium from "../medium/index.ts";
import * as pests from "../pests/index.ts";
import * as shape from "../shape/index.ts";
import * as sun from "../sun/index.ts";
import * as units from "../units/index.ts";
import * as water from "../water/index.ts";
import { catalogue } from "./index.ts";

const source = new URL("../", import.meta.url);
const files = readdirSync(source, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".test.ts"))
  .map((file) => [file, readFileSync(new URL(file, source), "utf8")] as const);

describe.each(files)("%s", (file, text) => {
  it("uses no clock, no hidden chance and nothing from outside", () => {
    expect(text).not.toMatch(/\bDate\b|Math\.random|performance\.|globalThis|process\./);
    for (const [, from = ""] of text.matchAll(/from "([^"]+)"/g)) expect(from).toMatch(/^\.{1,2}\//);
  });
  it("stays short enough to be read at one sitting", () => {
    expect(text.split("\n").length).toBeLessThanOrEqual(400);
  });
  it("documents and cites every function it exports", () => {
    const described = text.match(/\*\/\s*export function \w+/g)?.length ?? 0;
    const exported = text.match(/^export function \w+/gm)?.length ?? 0;
    expect(described, file).toBe(exported);
    for (const [, doc = ""] of text.matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export function/g)) {
      expect(doc).toContain("@source ");
    }
  });
});

const shared: Readonly<Record<string, unknown>> = {
  ...air,
  ...chance,
  ...errors,
  ...feed,
  ...fruit,
  ...growth,
  ...light,
  ...medium,
  ...pests,
  ...shape,
  ...sun,
  ...units,
  ...water,
};
const examples = files.flatMap(([file, text]) =>
  [...text.matchAll(/@example (.+?) \/\/ (.+)$/gm)].map(
    ([, code = "", printed = ""]) => [code, printed, file] as const,
  ),
);

describe("examples of the docstrings", () => {
  it("are there", () => expect(examples.length).toBeGreaterThan(90));
  it.each(examples)("%s gives %s", async (code, printed, file) => {
    // A file's own exports too: not every function with an example leaves its field.
    const own = (await import(/* @vite-ignore */ new URL(file, source).href)) as Readonly<
      Record<string, unknown>
    >;
    const scope = { ...shared, ...own };
    const names = Object.keys(scope);
    const result: unknown = new Function(...names, `return ${code}`)(...Object.values(scope));
    if (typeof result !== "number") return expect(result).toEqual(JSON.parse(printed));
    const digits = printed.split(".")[1]?.length ?? 0;
    return expect(Math.abs(result - Number(printed))).toBeLessThanOrEqual(0.5000001 * 10 ** -digits);
  });
});

describe("the page of quantities", () => {
  const page = readFileSync(new URL("../quantities.md", source), "utf8");
  const named = new Set([...page.matchAll(/`(\w+)`/g)].map(([, name]) => name));
  it("knows every numeric input of the catalogue", () => {
    const inputs = catalogue.flatMap((entry) =>
      entry.inputs.filter((input) => input.kind.startsWith("number")),
    );
    const unknown = inputs.map((input) => input.name).filter((name) => !named.has(name));
    expect([...new Set(unknown)]).toEqual([]);
  });
});
