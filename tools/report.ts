import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fingerprint } from "./fingerprint.mjs";
import { root } from "./run-program.mjs";

/** One figure that a run found, beside what it is compared with and what it should reach. */
export interface ReportRow {
  readonly figure: string;
  readonly value: number;
  readonly unit: string;
  /** What the same run gave for the thing we compare ourselves with, in words with its number. */
  readonly reference: string;
  readonly goal: string;
  readonly holds: boolean;
}

export interface Report {
  /** Kebab-case; becomes `reports/NAME.json` and `docs/NAME.md`. */
  readonly name: string;
  readonly title: string;
  /** What was run, on what, and how to run it again. */
  readonly about: string;
  readonly seed: number;
  /** Folders and files whose content the figures depend on. */
  readonly scores: readonly string[];
  readonly rows: readonly ReportRow[];
}

/** Tests and documents change no figure. */
const without = /\.(test|test-d)\.tsx?$|\.md$/;
const treeOf = (scores: readonly string[]) => fingerprint(scores, { without });

const cell = (text: string) => text.replaceAll("|", "\\|").replaceAll("\n", " ");

/** Four significant figures are more than any of these is sure of. */
function figure(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`a report holds ${value}; expected a finite number`);
  return Math.abs(value) >= 1000 ? String(Math.round(value)) : String(Number(value.toPrecision(4)));
}

/** The page as it is committed; its second paragraph says what it was made from. */
export function reportPage(report: Report, tree: string): string {
  const rows = report.rows.map(
    (row) =>
      `| ${cell(row.figure)} | ${figure(row.value)} | ${cell(row.unit)} | ${cell(row.reference)} | ${cell(row.goal)} | ${row.holds ? "yes" : "**no**"} |`,
  );
  return [
    `# ${report.title}`,
    "",
    report.about,
    "",
    `Seed ${report.seed}; tree ${tree} of ${report.scores.map((path) => `\`${path}\``).join(", ")}.`,
    "",
    "| figure | value | unit | reference | goal | holds |",
    "|---|---|---|---|---|---|",
    ...rows,
    "",
  ].join("\n");
}

/** Writes the report for programs and for people, and returns the paths written. */
export function writeReport(report: Report, folder = root): readonly string[] {
  if (!/^[a-z][a-z0-9-]*$/.test(report.name)) throw new Error(`${report.name} is no name for a report`);
  const missing = report.scores.filter((path) => !existsSync(join(root, path)));
  if (missing.length > 0)
    throw new Error(`report ${report.name} scores what is not there: ${missing.join(", ")}`);
  const tree = treeOf(report.scores);
  const page = reportPage(report, tree);
  const files = [
    join(folder, "reports", `${report.name}.json`),
    join(folder, "docs", `${report.name}.md`),
  ] as const;
  for (const file of files) mkdirSync(join(file, ".."), { recursive: true });
  writeFileSync(files[0], `${JSON.stringify({ ...report, tree }, undefined, 2)}\n`);
  const written = existsSync(files[1]) ? writtenBelow(readFileSync(files[1], "utf8")) : "";
  writeFileSync(files[1], `${page}${written}`);
  return files;
}

/** The sections that people wrote under the table, from the first of them on; a run leaves them as they are. */
function writtenBelow(page: string): string {
  const start = page.indexOf("\n## ");
  return start < 0 ? "" : page.slice(start);
}

const madeFrom = /^Seed -?\d+; tree ([0-9a-f]+) of (`.*`)\.$/m;

/** Whether a committed page is older than what it scores; undefined when the page is no report. */
export function isStale(page: string): boolean | undefined {
  const found = madeFrom.exec(page);
  if (!found) return undefined;
  const scores = [...(found[2] ?? "").matchAll(/`([^`]+)`/g)].map(([, path = ""]) => path);
  return treeOf(scores) !== found[1];
}

/** Whether `docs/NAME.md` is older than what it scores. */
export function stale(name: string): boolean {
  const answer = isStale(readFileSync(join(root, "docs", `${name}.md`), "utf8"));
  if (answer === undefined) throw new Error(`docs/${name}.md does not say what it was made from`);
  return answer;
}

/** The names of all committed reports. */
export function reportNames(): readonly string[] {
  return readdirSync(join(root, "docs"))
    .filter((file) => file.endsWith(".md"))
    .filter((file) => madeFrom.test(readFileSync(join(root, "docs", file), "utf8")))
    .map((file) => file.slice(0, -".md".length));
}
