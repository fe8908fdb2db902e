import { byName, describeField, single } from "../catalogue/describe.ts";
import { number, numbers, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import { bestTurn_n, lightAfterTurns_mol_m2, lightCaught_mol_d, oneSidedness } from "./index.ts";

const describe = describeField("light");

/** What a crown makes of the light that reaches it. */
export const crownCatalogue: readonly ScienceFunction[] = [
  describe("lightCaught_mol_d", byName(lightCaught_mol_d), {
    what: "Photons that the leaves of a lone crown catch in a day.",
    source: "MonsiSaeki1953; extinction 0.5 to 0.7 as crop models have it",
    inputs: [
      number("dli_mol_m2_d", 0, 65, 12),
      number("leafArea_m2", 0, 20, 0.06),
      number("crownArea_m2", 0.0001, 20, 0.0314),
      optional(number("extinction", 0.3, 1, 0.6)),
    ],
  }),
  describe("oneSidedness", single(oneSidedness), {
    what: "How one-sided the light on a crown is, and where it comes from.",
    source: "our assumption",
    inputs: [numbers("sides_mol_m2_d", 0, 10_000, [10, 5, 1, 5])],
    fields: ["oneSided_frac", "from_deg"],
  }),
  describe("lightAfterTurns_mol_m2", byName(lightAfterTurns_mol_m2), {
    what: "Light that each side of a crown has received after a row of quarter turns.",
    source: "our assumption",
    inputs: [
      numbers("sides_mol_m2_d", 0, 10_000, [8, 2, 0, 2]),
      numbers("quarters_n", 0, 3, [0, 1, 2, 3]),
      numbers("spells_d", 0, 10_000, [7, 7, 7, 7]),
    ],
  }),
  describe("bestTurn_n", byName(bestTurn_n), {
    what: "The quarter turn that would best even out what the sides of a crown have received.",
    source: "our assumption; quarter turns are common practice",
    inputs: [
      numbers("received_mol_m2", 0, 10_000, [56, 14, 0, 14]),
      numbers("sides_mol_m2_d", 0, 10_000, [8, 2, 0, 2]),
      number("keep_d", 0.1, 365, 7),
    ],
  }),
];
