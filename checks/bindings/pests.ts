import type { Binding, CheckRow } from "../src/row.ts";
import { alias, bindByRules } from "../src/rules.ts";
import { freedomRules } from "./pests-freedom.ts";
import { growthRules, treatmentRules } from "./pests-growth.ts";
import { lookRules } from "./pests-looks.ts";

const rules = bindByRules(
  "pests",
  [...growthRules, ...treatmentRules, ...lookRules, ...freedomRules],
  [
    alias("r_per_d", "rm_per_d"),
    alias("T_d", "generation_d"),
    alias("taylor_D", "D"),
    alias("leslie", /^leslie_/),
    alias("odds", "prior_odds_infested"),
  ],
);

/** A row whose printed input is the slip: its printed duration is impossible beside its own degree-days. */
const impossible = (row: CheckRow): boolean => {
  const { T0_C, K_Cd, T_d, temp_C } = row.inputs;
  return (
    row.slip === true &&
    typeof T0_C === "number" &&
    typeof K_Cd === "number" &&
    typeof T_d === "number" &&
    typeof temp_C === "number" &&
    K_Cd / (temp_C - T0_C) > T_d
  );
};

/** Every row of the table on pests, by what it gives and asks; also rows that are held back. */
export const binding: Binding = {
  field: "pests",
  compute: (row) => {
    const ours = rules.compute(row);
    // ln R0 / T is what was printed; that no generation is shorter than its own egg-to-adult time is what the slip is.
    if (row.slip === true && "T0_C" in row.inputs && "T_d" in row.inputs && !impossible(row))
      throw new Error("the row says that an input is a slip, and we can't see which");
    return ours;
  },
};
