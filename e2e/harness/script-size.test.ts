import { randomBytes } from "node:crypto";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { firstScripts } from "../src/script-size.ts";

const folder = mkdtempSync(join(tmpdir(), "built-"));
afterAll(() => rmSync(folder, { recursive: true }));

const noise = (bytes: number) => `/*${randomBytes(bytes).toString("base64")}*/`;
const write = (path: string, text: string) => {
  mkdirSync(join(folder, path, ".."), { recursive: true });
  writeFileSync(join(folder, path), text);
};

it("counts the entry, its static imports, preloads and workers once each, and no lazy chunk", () => {
  write(
    "index.html",
    '<script type="module" crossorigin src="/a/main.js"></script><link rel="modulepreload" crossorigin href="/a/ui.js">',
  );
  write(
    "a/main.js",
    `import{x}from"./ui.js";export*from"./say.js";new Worker(new URL(new URL(\`engine.js\`,import.meta.url).href,\`\`+import.meta.url),{type:\`module\`});import("./lazy.js");x;${noise(900)}`,
  );
  write("a/ui.js", `export const x=1;${noise(3000)}`);
  write("a/say.js", "export const y=1;");
  write("a/engine.js", `import"./fold.js";${noise(6000)}`);
  write("a/fold.js", "self.z=1;");
  write("a/lazy.js", noise(90_000));
  const { files, total_bytes } = firstScripts(folder);
  expect(files.map(({ path }) => path)).toEqual([
    "a/engine.js",
    "a/ui.js",
    "a/main.js",
    "a/say.js",
    "a/fold.js",
  ]);
  expect(total_bytes).toBeGreaterThan(13_200);
  expect(total_bytes).toBeLessThan(14_000);
  write("a/engine.js.br", "packed");
  expect(firstScripts(folder).total_bytes).toBeLessThan(total_bytes - 7000);
});

it("follows the other spellings of a worker, and refuses one that it cannot follow", () => {
  write(
    "a/say.js",
    'new Worker(new URL("/a/fold.js",import.meta.url));new SharedWorker(new URL(`second.js`,import.meta.url).href)',
  );
  write("a/second.js", "self.second=1;");
  expect(firstScripts(folder).files.map(({ path }) => path)).toContain("a/second.js");
  write("a/say.js", "const from=location.hash;new Worker(from)");
  expect(() => firstScripts(folder)).toThrow("say.js starts a worker");
});

it("refuses a build that lacks what it names", () => {
  write("a/say.js", 'import"./gone.js";');
  expect(() => firstScripts(folder)).toThrow("a needs ./gone.js, which was not built");
  write("index.html", "<p>nothing");
  expect(() => firstScripts(folder)).toThrow("names no script");
});
