import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";

/**
 * Writes `seattle.generated.ts` from the weather record of the vega-datasets package, so that a bundled program
 * carries it. One line a day: rain, highest, lowest, wind, each times ten; consecutive days from the first date.
 */
export function compactSeattle(csv: string): { readonly first: string; readonly text: string } {
  const rows = csv.trim().split("\n").slice(1);
  const tenths = (cell: string | undefined) => String(Math.round(Number(cell) * 10));
  return {
    first: (rows[0] as string).slice(0, 10),
    text: rows
      .map((row) => {
        const [, rain, high, low, wind] = row.split(",");
        return [rain, high, low, wind].map(tenths).join(" ");
      })
      .join(","),
  };
}

/** The record as the package holds it. */
export function seattleCsv(): string {
  // The package exports its code only; the data lie beside it.
  const code = createRequire(import.meta.url).resolve("vega-datasets");
  const root = code.slice(0, code.lastIndexOf("vega-datasets/build") + "vega-datasets".length);
  return readFileSync(`${root}/data/seattle-weather.csv`, "utf8");
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { first, text } = compactSeattle(seattleCsv());
  const lines = [
    "// Made by generate-seattle.ts from seattle-weather.csv of vega-datasets 3.2.1; do not edit.",
    `export const FIRST_DATE = ${JSON.stringify(first)};`,
    "/** Days in order, comma between; in each: rain mm, highest °C, lowest °C, wind m/s, all times ten. */",
    `export const DAYS_TENTHS = ${JSON.stringify(text)};`,
    "",
  ];
  writeFileSync(new URL("./seattle.generated.ts", import.meta.url), lines.join("\n"));
}
