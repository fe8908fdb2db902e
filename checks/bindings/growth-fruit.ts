import type { Binding, CheckRow, CheckValue } from "../src/row.ts";
import { bindByRules } from "../src/rules.ts";
import { degreeDayAliases, degreeDayRules } from "./growth-fruit-degree-days.ts";
import { fruitAliases, fruitRules } from "./growth-fruit-fruit.ts";
import { growingPlantAliases, growingPlantRules } from "./growth-fruit-plant.ts";

/** Rows that nothing computes yet, known by a quantity that they alone hold; each goes when its craft is built. */
const later: readonly (readonly [RegExp, string])[] = [
  [/^threshold_[CF]$|^last_spring_/, "concerns frost dates, not built yet"],
  [/^sale_date$/, "concerns the season plan, not built yet"],
  [/^hours$/, "concerns shipping, not built yet"],
];

const bound = bindByRules(
  "growth-fruit",
  [...degreeDayRules, ...growingPlantRules, ...fruitRules],
  [...degreeDayAliases, ...growingPlantAliases, ...fruitAliases],
);

/** A printed heat is judged against the content beside it: the judgement must see what was printed. */
const withPrint = (row: CheckRow): CheckRow =>
  "shu_printed" in row.expect
    ? { ...row, inputs: { ...row.inputs, shu_as_printed: row.expect["shu_printed"] as CheckValue } }
    : row;

/** Every row of the table on growth, by what it gives and asks; also rows that are held back or come later. */
export const binding: Binding = {
  ...bound,
  compute: (row) => bound.compute(withPrint(row)),
  waits: (row) => later.find(([holds]) => Object.keys(row.inputs).some((key) => holds.test(key)))?.[1],
};
