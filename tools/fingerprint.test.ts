import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { fingerprint } from "./fingerprint.mjs";
import { root } from "./run-program.mjs";

// The fingerprint reads the working tree of the house itself, so the trial folder lies in it, under a name of its own.
const trial = `tools/fingerprint-trial-${process.pid}`;
mkdirSync(join(root, trial));
afterAll(() => rmSync(join(root, trial), { recursive: true }));
const write = (name: string, text: string) => writeFileSync(join(root, trial, name), text);
const now = (options = {}) => fingerprint([trial], { alsoUntracked: true, ...options });

it("follows the content, not the time of a file", () => {
  write("a.ts", "one");
  write("a.test.ts", "one");
  const before = now();
  write("a.ts", "one");
  expect(now()).toBe(before);
  write("a.ts", "two");
  expect(now()).not.toBe(before);
  write("a.ts", "one");
  expect(now()).toBe(before);
});

it("leaves out what it is told to, and what git does not know unless asked", () => {
  const without = /\.test\.ts$/;
  const before = now({ without });
  write("a.test.ts", "two");
  expect(now({ without })).toBe(before);
  expect(fingerprint([trial])).toBe(fingerprint(["tools/no-such-folder"]));
});
