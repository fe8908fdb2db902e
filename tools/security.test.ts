import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "./run-program.mjs";

/** Level 1 of the OWASP Application Security Verification Standard 5.0.0, all of it. */
const LEVEL_1 =
  "1.2.1 1.2.2 1.2.3 1.2.4 1.2.5 1.3.1 1.3.2 1.5.1 2.1.1 2.2.1 2.2.2 2.3.1 3.2.1 3.2.2 3.3.1 3.4.1 3.4.2 3.5.1 3.5.2 3.5.3 4.1.1 4.4.1 5.2.1 5.2.2 5.3.1 5.3.2 6.1.1 6.2.1 6.2.2 6.2.3 6.2.4 6.2.5 6.2.6 6.2.7 6.2.8 6.3.1 6.3.2 6.4.1 6.4.2 7.2.1 7.2.2 7.2.3 7.2.4 7.4.1 7.4.2 8.1.1 8.2.1 8.2.2 8.3.1 9.1.1 9.1.2 9.1.3 9.2.1 10.4.1 10.4.2 10.4.3 10.4.4 10.4.5 11.3.1 11.3.2 11.4.1 12.1.1 12.2.1 12.2.2 13.4.1 14.2.1 14.3.1 15.1.1 15.2.1 15.3.1".split(
    " ",
  );

const page = readFileSync(join(root, "docs/security.md"), "utf8");

interface Row {
  readonly items: readonly string[];
  readonly test: string;
}
const rows = page
  .split("\n")
  .filter((line) => /^\| \d/.test(line))
  .map((line): Row => {
    const cells = line.split("|").map((cell) => cell.trim());
    return { items: (cells[1] ?? "").split(", "), test: cells.at(-2) ?? "" };
  });
const left = [...page.matchAll(/^- ([\d., ]+): \S/gm)].flatMap(([, items = ""]) => items.split(", "));

/** What is wrong with where a row says that its test is; undefined when the test stands there. */
function missing(test: string): string | undefined {
  const [, path = "", title = ""] = /^`([^`]+)`: (.+)$/.exec(test) ?? [];
  if (path === "") return `“${test}” names no test`;
  if (!existsSync(join(root, path))) return `there is no ${path}`;
  return readFileSync(join(root, path), "utf8").includes(title)
    ? undefined
    : `${path} has no test “${title}”`;
}

describe("docs/security.md", () => {
  it("has a test for every row", () => {
    expect(rows.length).toBeGreaterThan(20);
    expect(rows.flatMap(({ test, items }) => (missing(test) ? `${items}: ${missing(test)}` : []))).toEqual(
      [],
    );
  });

  it("notices a row without one", () => {
    expect(missing("")).toContain("names no test");
    expect(
      missing("`tools/security.test.ts`: no such title here ".trim().replace("here", "anywhere")),
    ).toBeDefined();
    expect(missing("`tools/nowhere.test.ts`: x")).toContain("there is no");
  });

  it("speaks of every item of level 1 once", () => {
    const said = [...rows.flatMap(({ items }) => items), ...left];
    expect([...said].sort()).toEqual([...LEVEL_1].sort());
  });
});

describe("what no source of ours does", () => {
  const sources = (folder: string): string[] =>
    readdirSync(join(root, folder)).flatMap((name) => {
      const path = `${folder}/${name}`;
      if (/^(dist|node_modules)$/.test(name)) return [];
      if (statSync(join(root, path)).isDirectory()) return sources(path);
      return /\.(ts|tsx|mjs)$/.test(name) && !/\.test\.tsx?$/.test(name) && path.includes("/src/")
        ? [path]
        : [];
    });
  const all = sources("packages").map((path) => [path, readFileSync(join(root, path), "utf8")] as const);
  const holding = (pattern: RegExp) => all.flatMap(([path, text]) => (pattern.test(text) ? [path] : []));

  it("runs a text as a program, or writes a text into a page as HTML", () => {
    expect(all.length).toBeGreaterThan(200);
    expect(
      holding(/\beval\(|new Function\(|dangerouslySetInnerHTML|\.innerHTML\b|document\.write\(/),
    ).toEqual([]);
  });

  it("starts a shell, or reads XML", () => {
    expect(holding(/child_process|shell: true|DOMParser|text\/xml|XMLHttpRequest/)).toEqual([]);
  });

  it("uses a broken hash or an unkeyed cipher", () => {
    expect(holding(/createHash\("(md5|sha1)"\)|createCipher|"aes-\d+-(ecb|cbc)"/i)).toEqual([]);
  });
});
