import { byName, describeField, single } from "../catalogue/describe.ts";
import { choice, number, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  atomicMass_g_mol,
  balancedFeed_mg_L,
  coatedLife_d,
  coatedReleased_frac,
  demand_mg,
  demanded,
  doseConcentration_mg_L,
  doseForConcentration_g_L,
  doseSpread_mg_L,
  elementShare_frac,
  injectorConventions,
  labelBases,
  labelDays,
  liquidContent_mg_mL,
  molarMass_g_mol,
  seldomFeed_mg_L,
  stockDose_mL_L,
  stockStrength_g_L,
  thinning,
} from "./index.ts";

const describe = describeField("feed");

/** Oxides, ions and salts of labels. */
const formulas = [
  "P2O5",
  "K2O",
  "CaO",
  "MgO",
  "SO3",
  "NO3",
  "NH4",
  "SO4",
  "PO4",
  "H3BO3",
  "KNO3",
  "Ca(NO3)2.4H2O",
  "5Ca(NO3)2.NH4NO3.10H2O",
  "KH2PO4",
  "NH4H2PO4",
  "MgSO4.7H2O",
  "K2SO4",
  "(NH4)2SO4",
  "NH4NO3",
  "CO(NH2)2",
  "CaSO4.2H2O",
  "CaCl2.2H2O",
  "Mg(NO3)2.6H2O",
  "NaCl",
] as const;

export const feedDoseCatalogue: readonly ScienceFunction[] = [
  describe("doseConcentration_mg_L", byName(doseConcentration_mg_L), {
    what: "Concentration that a dose gives. Exact; the rule of 75 for ounces in 100 gallons is this, rounded.",
    source: "our assumption, the definition; UMassFeed in ounces and gallons",
    inputs: [
      number("dose_g_L", 0, 1000, 1),
      number("content_frac", 0, 1, 0.2),
      optional(number("water_mg_L", 0, 10000, 0)),
    ],
  }),
  describe("doseForConcentration_g_L", byName(doseForConcentration_g_L), {
    what: "Dose of a product for a wanted concentration, less what the water brings; never below nothing.",
    source: "our assumption, the definition; UMassFeed in ounces and gallons",
    inputs: [
      number("wanted_mg_L", 0, 100000, 200),
      number("content_frac", 1e-6, 1, 0.2),
      optional(number("water_mg_L", 0, 10000, 0)),
    ],
  }),
  describe("thinning", byName(thinning), {
    what: "How many times a stock is thinned by an injector or by hand at 1:R.",
    source: "MattsonPractice; pages disagree on the convention, so it is an argument",
    inputs: [
      number("injectorParts", 1, 10000, 100),
      optional(choice("convention", injectorConventions, "one in")),
    ],
  }),
  describe("stockStrength_g_L", byName(stockStrength_g_L), {
    what: "Strength of a stock that an injector thins to the wanted concentration.",
    source: "MattsonPractice question 1",
    inputs: [
      number("wanted_mg_L", 0, 100000, 150),
      number("content_frac", 1e-6, 1, 0.2),
      number("injectorParts", 1, 10000, 100),
      optional(choice("convention", injectorConventions, "one in")),
    ],
  }),
  describe("stockDose_mL_L", byName(stockDose_mL_L), {
    what: "Stock to measure by hand into a litre of feed.",
    source: "MattsonPractice",
    inputs: [
      number("injectorParts", 1, 10000, 100),
      optional(choice("convention", injectorConventions, "one in")),
    ],
  }),
  describe("liquidContent_mg_mL", byName(liquidContent_mg_mL), {
    what: "What a millilitre of a liquid holds. A label by volume has its density in it already.",
    source: "our assumption, the definition",
    inputs: [
      number("content_frac", 0, 1.5, 0.09),
      choice("basis", labelBases, "by mass"),
      number("density_g_mL", 0.7, 2.2, 1.2),
    ],
  }),
  describe("doseSpread_mg_L", byName(doseSpread_mg_L), {
    what: "Doubt of a concentration by how it was measured out: the step of the tool, the label, the volume made up.",
    source: "our assumption; a step's error is even, step/√12",
    inputs: [
      number("content_mg", 0, 1000, 30),
      number("dose", 0, 100000, 3),
      number("step", 0, 1000, 0.5),
      number("volume_L", 0.01, 10000, 4),
      optional(number("dose_frac", 0, 1, 0.05)),
      optional(number("volume_frac", 0, 1, 0)),
    ],
  }),
  describe("elementShare_frac", byName(elementShare_frac), {
    what: "Share by mass of an element in a formula: turns oxides, ions and salts into elements.",
    source: "IUPAC2013",
    inputs: [choice("formula", formulas, "P2O5"), choice("atom", Object.keys(atomicMass_g_mol), "P")],
  }),
  describe("molarMass_g_mol", single(molarMass_g_mol), {
    what: "Molar mass of a formula, waters of crystallisation after a point.",
    source: "IUPAC2013",
    inputs: [choice("formula", formulas, "KNO3")],
  }),
  describe("balancedFeed_mg_L", byName(balancedFeed_mg_L), {
    what: "Concentration of a feed that carries to the roots just what new growth holds, whatever the pace of growth.",
    source: "our assumption, a mass balance",
    inputs: [
      number("tissue_frac", 0, 0.2, 0.0248),
      number("growth_g_L", 0.5, 12, 3),
      optional(number("taken_frac", 0.3, 1, 0.85)),
    ],
  }),
  describe("demand_mg", byName(demand_mg), {
    what: "What a plant takes up of an element over a time, from the water it used and the fruit it filled.",
    source: "FieldPepper for tissue, UsdaFood for fruit",
    inputs: [
      choice("of", demanded, "N"),
      number("transpired_L", 0, 1000, 1),
      optional(number("fruit_g", 0, 100000, 0)),
      optional(number("growth_g_L", 0.5, 12, 3)),
    ],
  }),
  describe("seldomFeed_mg_L", byName(seldomFeed_mg_L), {
    what: "Strength of a feed given with every n-th watering that brings as much as a weaker one with each.",
    source: "our assumption, equal mass; the cap common practice, no source",
    inputs: [
      number("each_mg_L", 0, 1000, 100),
      number("every_n", 1, 30, 2),
      optional(number("most_mg_L", 10, 1000, 300)),
    ],
  }),
  describe("labelDays", byName(labelDays), {
    what: "Thermal time of a coated fertiliser: days at the label's temperature that a day at another one counts for.",
    source: "common practice, no source; 21 °C as in Nackley2023",
    inputs: [
      number("medium_C", -10, 50, 25),
      optional(number("label_C", 15, 30, 21)),
      optional(number("q10", 1.2, 3, 2)),
    ],
  }),
  describe("coatedLife_d", byName(coatedLife_d), {
    what: "How long a coated fertiliser lasts at a constant temperature.",
    source: "common practice, no source; 21 °C as in Nackley2023",
    inputs: [
      number("life_d", 20, 800, 180),
      number("medium_C", -10, 50, 25),
      optional(number("label_C", 15, 30, 21)),
      optional(number("q10", 1.2, 3, 2)),
    ],
  }),
  describe("coatedReleased_frac", byName(coatedReleased_frac), {
    what: "Share of a coated fertiliser that is out after so many days of the label: nine tenths at its age.",
    source: "common practice, no source: nine tenths at the label's age",
    inputs: [number("life_d", 20, 800, 180), number("labelDays_d", 0, 5000, 90)],
  }),
];
