import { byName, describeField, single } from "../catalogue/describe.ts";
import { choice, number, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  conductivity_mS_cm,
  conductivityAt25_mS_cm,
  conductivityByCations_mS_cm,
  conductivityRead_mS_cm,
  dissolved,
  dissolvingSalts,
  feedDrift,
  gypsumIndex,
  halfYieldSalt,
  ionImbalance_frac,
  meterReading,
  meterScales,
  mixedPotSalt,
  potentialAcidity_mg_g,
  pureShare_frac,
  softenerAdds_mg_L,
  solubility_g_L,
  sulphuricAcid,
} from "./index.ts";

const describe = describeField("feed");

export const feedSaltCatalogue: readonly ScienceFunction[] = [
  describe("conductivity_mS_cm", byName(conductivity_mS_cm), {
    what: "Electrical conductivity at 25 °C as the sum of what each ion carries, with activities and the pairs CaSO4 and MgSO4.",
    source: "Appelo2010 with the constants of PHREEQC",
    inputs: [
      optional(number("K_mmol_L", 0, 500, 3)),
      optional(number("Na_mmol_L", 0, 500, 0)),
      optional(number("NH4_mmol_L", 0, 500, 0.5)),
      optional(number("Ca_mmol_L", 0, 500, 2)),
      optional(number("Mg_mmol_L", 0, 500, 1)),
      optional(number("Cl_mmol_L", 0, 500, 0)),
      optional(number("NO3_mmol_L", 0, 500, 7)),
      optional(number("SO4_mmol_L", 0, 500, 1)),
      optional(number("HCO3_mmol_L", 0, 500, 0)),
      optional(number("H2PO4_mmol_L", 0, 500, 0.5)),
      optional(number("H_mmol_L", 0, 500, 0)),
    ],
  }),
  describe("conductivityByCations_mS_cm", single(conductivityByCations_mS_cm), {
    what: "Conductivity of a feed by the charge of its cations alone: a rough second opinion for feeds from 1 to 3 mS/cm.",
    source: "Sonneveld1999",
    inputs: [number("cations_mmol_L", 0, 100, 10)],
  }),
  describe("meterReading", byName(meterReading), {
    what: "What a meter of a scale shows at a conductivity.",
    source: "our assumption, the definition of the scales",
    inputs: [number("conductivity_mS_cm", 0, 100, 1.5), choice("scale", meterScales, "mS/cm")],
  }),
  describe("conductivityRead_mS_cm", byName(conductivityRead_mS_cm), {
    what: "Conductivity that a number on a meter's display means.",
    source: "our assumption, the definition of the scales",
    inputs: [number("reading", 0, 100000, 750), choice("scale", meterScales, "ppm 500")],
  }),
  describe("conductivityAt25_mS_cm", byName(conductivityAt25_mS_cm), {
    what: "Conductivity at 25 °C from one read without compensation at another temperature.",
    source: "common practice, no source; 2 % a degree, ions 2 to 3 %",
    inputs: [number("conductivity_mS_cm", 0, 100, 1.5), number("water_C", 5, 35, 18)],
  }),
  describe("ionImbalance_frac", byName(ionImbalance_frac), {
    what: "How far the charges of a water report are from balance: above 0.1 something is wrong or missing, above 0.05 look again.",
    source: "StandardMethods, as quoted",
    inputs: [
      optional(number("Ca_mg_L", 0, 5000, 40)),
      optional(number("Mg_mg_L", 0, 5000, 11)),
      optional(number("K_mg_L", 0, 5000, 2)),
      optional(number("Na_mg_L", 0, 5000, 13)),
      optional(number("Cl_mg_L", 0, 5000, 14)),
      optional(number("sulphateS_mg_L", 0, 5000, 8)),
      optional(number("nitrateN_mg_L", 0, 5000, 0)),
      optional(number("P_mg_L", 0, 5000, 0)),
      optional(number("B_mg_L", 0, 5000, 0)),
      optional(number("Fe_mg_L", 0, 5000, 0)),
      optional(number("alkalinity_mg_L", 0, 5000, 130)),
    ],
  }),
  describe("softenerAdds_mg_L", byName(softenerAdds_mg_L), {
    what: "Sodium, or potassium where that salt regenerates it, that a softener puts in for the hardness it takes out.",
    source: "our assumption, exchange by charge: 22.99 or 39.098 over 50.04",
    inputs: [
      number("hardness_mg_L", 0, 1500, 150),
      optional(choice("salt", ["sodium", "potassium"], "sodium")),
    ],
  }),
  describe("pureShare_frac", byName(pureShare_frac), {
    what: "Least share of pure water (rain, reverse osmosis) that brings one component of a tap water down to its limit.",
    source: "our assumption, the mixing of two waters",
    inputs: [
      number("tap_mg_L", 0, 5000, 200),
      number("most_mg_L", 0, 5000, 50),
      optional(number("pure_mg_L", 0, 5000, 0)),
    ],
  }),
  describe("potentialAcidity_mg_g", byName(potentialAcidity_mg_g), {
    what: "Acidity that a product leaves behind in a field, as calcium carbonate needed to undo it; negative where it is a base.",
    source: "Pierre1933, half of the nitrogen counted",
    inputs: [
      optional(number("N_frac", 0, 1, 0.2)),
      optional(number("P_frac", 0, 1, 0.044)),
      optional(number("K_frac", 0, 1, 0.166)),
      optional(number("Ca_frac", 0, 1, 0)),
      optional(number("Mg_frac", 0, 1, 0)),
      optional(number("S_frac", 0, 1, 0)),
      optional(number("Cl_frac", 0, 1, 0)),
      optional(number("Na_frac", 0, 1, 0)),
    ],
  }),
  describe("feedDrift", byName(feedDrift), {
    what: "Where pH goes under a feed: alkalinity of the water against the acidity of the products.",
    source: "Pierre1933; the lines between directions our assumption",
    inputs: [number("alkalinity_mg_L", 0, 1000, 130), number("acidity_mg_L", -1000, 1000, 50)],
    fields: ["net_mmol_L", "drift"],
  }),
  describe("sulphuricAcid", byName(sulphuricAcid), {
    what: "What sulphuric acid does to a water. For checking a professional's sheet: not for windowsills.",
    source: "UMassFeed; two charges a molecule",
    inputs: [
      number("acid_mL_L", 0, 1, 0.05),
      number("acid_frac", 0.1, 0.98, 0.93),
      number("density_g_mL", 1.05, 1.85, 1.83),
    ],
    fields: ["S_mg_L", "alkalinity_mg_L"],
  }),
  describe("solubility_g_L", byName(solubility_g_L), {
    what: "How much of a salt dissolves in a litre, straight between the temperatures of the table.",
    source:
      "common practice, no source: handbook values as growers' pages quote them; magnesium sulphate from memory",
    inputs: [choice("salt", dissolvingSalts, "potassium nitrate"), number("water_C", 0, 45, 15)],
  }),
  describe("dissolved", byName(dissolved), {
    what: "What of an attempted stock dissolves, and what lies at the bottom.",
    source: "our assumption, the definition",
    inputs: [number("attempted_g_L", 0, 3000, 300), number("dissolves_g_L", 0, 3000, 209)],
    fields: ["dissolved_g_L", "left_g_L"],
  }),
  describe("gypsumIndex", byName(gypsumIndex), {
    what: "Saturation of gypsum: below 0 it stays dissolved, above it falls out.",
    source: "PHREEQC; activities by Davies",
    inputs: [
      number("Ca_mmol_L", 0, 5000, 500),
      number("SO4_mmol_L", 0, 5000, 200),
      optional(number("Mg_mmol_L", 0, 5000, 200)),
      optional(number("K_mmol_L", 0, 5000, 0)),
      optional(number("NO3_mmol_L", 0, 5000, 0)),
    ],
  }),
  describe("halfYieldSalt", byName(halfYieldSalt), {
    what: "Conductivity at which half the yield is lost, by the straight line and by the smooth curve.",
    source: "Steppuhn2005",
    inputs: [number("threshold_mS_cm", 0, 20, 1.5), number("slope_cm_per_mS", 0.01, 1, 0.14)],
    fields: ["line_mS_cm", "curve_mS_cm"],
  }),
  describe("mixedPotSalt", byName(mixedPotSalt), {
    what: "What no plant takes up (sodium, chloride), after a number of equal waterings of a pot that mixes.",
    source: "our assumption, a mixed vessel; its steady state is c/LF",
    inputs: [
      number("feed_mg_L", 0, 10000, 30),
      number("pour_mL", 1, 100000, 125),
      number("use_mL", 0, 100000, 100),
      number("holds_mL", 1, 100000, 180),
      number("start_mg_L", 0, 100000, 30),
      number("waterings_n", 0, 10000, 10),
    ],
    fields: ["after_mg_L", "steady_mg_L"],
  }),
];
