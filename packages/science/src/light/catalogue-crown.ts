import { byName, describeField } from "../catalogue/describe.ts";
import { number, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import { lightCaught_mol_d } from "./index.ts";

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
];
