import { appendFileSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { isStale, type Report, reportPage, writeReport } from "./report.ts";

const folder = mkdtempSync(join(tmpdir(), "report-"));
afterAll(() => rmSync(folder, { recursive: true }));

const report: Report = {
  name: "coverage",
  title: "Coverage",
  about: "Made in a test.",
  seed: 7,
  scores: ["tools/report.ts", "biome.json"],
  rows: [
    {
      figure: "held | caught",
      value: 0.80312,
      unit: "share",
      reference: "0.5 by guessing",
      goal: "0.75 to 0.85",
      holds: true,
    },
    { figure: "entries", value: 123456.7, unit: "1/s", reference: "none", goal: "200000", holds: false },
  ],
};

it("writes rows for programs and a table for people", () => {
  const [json = "", page = ""] = writeReport(report, folder);
  expect(JSON.parse(readFileSync(json, "utf8"))).toMatchObject({ seed: 7, rows: report.rows });
  const text = readFileSync(page, "utf8");
  expect(text).toContain("| held \\| caught | 0.8031 | share | 0.5 by guessing | 0.75 to 0.85 | yes |");
  expect(text).toContain("| entries | 123457 | 1/s | none | 200000 | **no** |");
  expect(text).toMatch(/^Seed 7; tree [0-9a-f]{16} of `tools\/report\.ts`, `biome\.json`\.$/m);
  expect(isStale(text)).toBe(false);
});

it("leaves the sections that people wrote under the table as they are, run after run", () => {
  const section = "\n## What it rests on\n\nWritten by hand.\n\n## And more\n\nText.\n";
  const [, page = ""] = writeReport({ ...report, name: "explained" }, folder);
  appendFileSync(page, section);
  for (const seed of [8, 9]) {
    writeReport({ ...report, name: "explained", seed }, folder);
    const text = readFileSync(page, "utf8");
    expect(text).toContain(`Seed ${seed}; tree`);
    expect(text.endsWith(`| **no** |\n${section}`)).toBe(true);
    expect(text.split("## What it rests on")).toHaveLength(2);
  }
});

it("calls a page stale whose tree is another, and knows a page that is no report", () => {
  expect(isStale(reportPage(report, "0123456789abcdef"))).toBe(true);
  expect(isStale("# A page\n")).toBeUndefined();
});

it("refuses figures that are no numbers, and scores of nothing", () => {
  const row = { ...(report.rows[0] as Report["rows"][number]), value: Number.NaN };
  expect(() => writeReport({ ...report, rows: [row] }, folder)).toThrow("a report holds NaN");
  expect(() => writeReport({ ...report, scores: ["no/such/folder"] }, folder)).toThrow("no/such/folder");
});
