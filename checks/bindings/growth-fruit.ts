import type { Binding } from "../src/row.ts";
import { bindByRules } from "../src/rules.ts";
import { degreeDayAliases, degreeDayRules } from "./growth-fruit-degree-days.ts";
import { growingPlantAliases, growingPlantRules } from "./growth-fruit-plant.ts";

/** Rows that nothing computes yet, known by a quantity that they alone hold; each goes when its craft is built. */
const later: readonly (readonly [RegExp, string])[] = [
  [/capsaicin|^shu$/, "concerns the heat of fruit, not built yet"],
  [/^threshold_[CF]$|^last_spring_/, "concerns frost dates, not built yet"],
  [/^sale_date$/, "concerns the season plan, not built yet"],
  [/^potential_fruit_|^pod_age_|^crown_diameter_|^bm_e_/, "concerns fruit set and load, not built yet"],
  [/^(open|bee)_pct$|^Topt_C$/, "concerns pollination, not built yet"],
  [/^female$|^source$/, "concerns seed saving, not built yet"],
  [/^hours$/, "concerns shipping, not built yet"],
];

/** Every row of the table on growth, by what it gives and asks; also rows that are held back or come later. */
export const binding: Binding = {
  ...bindByRules(
    "growth-fruit",
    [...degreeDayRules, ...growingPlantRules],
    [...degreeDayAliases, ...growingPlantAliases],
  ),
  waits: (row) => later.find(([holds]) => Object.keys(row.inputs).some((key) => holds.test(key)))?.[1],
};
