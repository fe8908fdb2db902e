import type { Binding, CheckRow } from "../src/row.ts";
import { bindByRules } from "../src/rules.ts";
import { doseAliases, doseRules } from "./feed-doses.ts";
import { ofMixes } from "./feed-mixes.ts";
import { ofAcidity, ofFactors, ofIons, ofRecipe, saltRules } from "./feed-salts.ts";

const byRules = bindByRules("feed", [...doseRules, ...saltRules], doseAliases);

/** What takes whichever members of a family a row names: ions, salts, contents, products. */
function ofFamilies(row: CheckRow): Readonly<Record<string, unknown>> {
  const { inputs } = row;
  return {
    ...ofFactors(inputs),
    ...ofRecipe(inputs),
    EC25_mS_cm: ofIons(inputs),
    ...("lb_CaCO3_per_ton" in row.expect ? { lb_CaCO3_per_ton: ofAcidity(inputs) } : {}),
    ...ofMixes(row),
  };
}

export const binding: Binding = {
  field: "feed",
  compute(row) {
    const families = ofFamilies(row);
    return Object.fromEntries(
      Object.entries(byRules.compute(row)).map(([key, value]) => [key, families[key] ?? value]),
    );
  },
};
