import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { root } from "./run-program.mjs";

interface Locked {
  readonly version?: string;
  readonly engines?: { readonly node?: string };
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}
const read = (path: string) => readFileSync(join(root, path), "utf8");
const { packages } = JSON.parse(read("package-lock.json")) as { packages: Readonly<Record<string, Locked>> };
const rows = [...read("docs/node-ceilings.md").matchAll(/^\| `([^`]+)` \| ([\d.]+) \|/gm)];
const workspaces = Object.entries(packages).filter(([path]) => !path.includes("node_modules"));
const pins = workspaces.flatMap(([, entry]) =>
  Object.entries({ ...entry.dependencies, ...entry.devDependencies }),
);

/** Whether one clause of a range such as `^20.19.0` or `>=22.12` admits Node 20.19. */
function admits(clause: string): boolean {
  const [, sign = "", major = "0", minor = "0"] = /^\s*([^\d\s]*)\s*v?(\d+)(?:\.(\d+))?/.exec(clause) ?? [];
  const from = [Number(major), Number(minor)] as const;
  if (sign === ">" || sign === ">=") return from[0] < 20 || (from[0] === 20 && from[1] <= 19);
  if (sign === "<" || sign === "<=") return from[0] > 20;
  return from[0] === 20 && from[1] <= 19;
}
const admitsNode20 = (range: string) =>
  range
    .split("||")
    .some(
      (part) => part.trim() === "*" || (part.trim().match(/[<>=^~]*\s*v?\d[\d.x]*/g) ?? []).every(admits),
    );

it("names pins as they are locked", () => {
  expect(rows.length).toBeGreaterThan(5);
  for (const [, name = "", pin] of rows) expect(packages[`node_modules/${name}`]?.version, name).toBe(pin);
});

it("pins exact versions that run on Node 20.19", () => {
  expect(pins.length).toBeGreaterThan(30);
  for (const [name, version] of pins) {
    expect(version, name).toMatch(/^\d+\.\d+\.\d+(-[\w.]+)?$/);
    const range = packages[`node_modules/${name}`]?.engines?.node;
    if (range) expect(admitsNode20(range), `${name} ${version} runs on Node ${range}`).toBe(true);
  }
});

it("tells ranges apart", () => {
  for (const range of [">=18", "^20.19.0 || >=22.12.0", "20 || >=22", ">= 20.19", "*", ">=20.0.0 <23"]) {
    expect(admitsNode20(range), range).toBe(true);
  }
  for (const range of [">=22", "^22 || ^24", ">=20.20.1", "^18.0.0", "<20"])
    expect(admitsNode20(range), range).toBe(false);
});
