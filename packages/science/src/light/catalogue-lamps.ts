import { byName, describeField, single } from "../catalogue/describe.ts";
import { choice, number, numbers, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  beamExponent,
  cabinetRise_C,
  costOfPots_minor,
  discLamp_umol_m2_s,
  fitLamp,
  fittedLamp_umol_m2_s,
  inverseSquareShare_frac,
  lampCost,
  lampFlux_umol_s,
  lampHours,
  lampTimes,
  photonsPerEnergy_mol_kWh,
  pointLamp_umol_m2_s,
  rectangleLamp_umol_m2_s,
  resetTimer,
  roughLamp,
  stripLamp_umol_m2_s,
} from "./index.ts";

const describe = describeField("light");
const flux = number("flux_umol_s", 0, 100_000, 100);
const height = number("height_m", 0.01, 20, 0.3);
const lateral = optional(number("lateral_m", -20, 20, 0.1));
const along = optional(number("along_m", -20, 20, 0.1));
const across = optional(number("across_m", -20, 20, 0.1));
const price = number("price_minor_per_kWh", 0, 1000, 30);

/** Lamps: their light at a spot, their hours, their cost. */
export const lampCatalogue: readonly ScienceFunction[] = [
  describe("beamExponent", single(beamExponent), {
    what: "Exponent of a beam: how fast its strength falls beside its middle.",
    source: "InverseSquare",
    inputs: [number("beam_deg", 5, 175, 120)],
  }),
  describe("pointLamp_umol_m2_s", byName(pointLamp_umol_m2_s), {
    what: "Light under a small lamp with a beam.",
    source: "InverseSquare",
    inputs: [flux, height, optional(number("beam_deg", 5, 175, 120)), lateral],
  }),
  describe("discLamp_umol_m2_s", byName(discLamp_umol_m2_s), {
    what: "Light under a round panel that shines alike in all directions downwards (Lambert).",
    source: "HowellCatalog B-13",
    inputs: [flux, number("radius_m", 0.001, 5, 0.3), height, lateral],
  }),
  describe("rectangleLamp_umol_m2_s", byName(rectangleLamp_umol_m2_s), {
    what: "Light under a rectangular panel that shines alike in all directions downwards (Lambert).",
    source: "HowellCatalog B-3",
    inputs: [
      flux,
      number("length_m", 0.001, 10, 0.6),
      number("width_m", 0.001, 10, 0.6),
      height,
      along,
      across,
    ],
  }),
  describe("stripLamp_umol_m2_s", byName(stripLamp_umol_m2_s), {
    what: "Light under a narrow strip that shines alike in all directions downwards (Lambert).",
    source: "HowellCatalog, integrated along a line",
    inputs: [flux, number("length_m", 0.001, 10, 1.2), height, along, across],
  }),
  describe("inverseSquareShare_frac", byName(inverseSquareShare_frac), {
    what: 'True light under a round lamp over what the inverse square of the distance would claim ("rule of five").',
    source: "InverseSquare",
    inputs: [number("radius_m", 0.001, 5, 0.1), height],
  }),
  describe("fitLamp", byName(fitLamp), {
    what: "Strength and size of a lamp from two readings or more under its middle.",
    source: "HowellCatalog, form of a disc on its axis; limits our assumption",
    inputs: [
      numbers("heights_m", 0.01, 20, [0.3, 0.6]),
      numbers("readings_umol_m2_s", 0.1, 10_000, [154, 66.5]),
    ],
    fields: ["quality", "strength_umol_s", "size_m", "why"],
  }),
  describe("roughLamp", byName(roughLamp), {
    what: "Strength of a lamp from one reading under its middle and its size: rough, to be labelled so.",
    source:
      "our assumption; 0.57 from the square panel of checks/sun-light.json 107, 0.37 from the strip half its length below",
    inputs: [
      choice("form", ["point", "disc", "rectangle", "strip"], "rectangle"),
      number("length_m", 0.001, 10, 0.6),
      optional(number("width_m", 0.001, 10, 0.6)),
      height,
      number("ppfd_umol_m2_s", 0.1, 10_000, 154),
    ],
    fields: ["strength_umol_s", "size_m"],
  }),
  describe("fittedLamp_umol_m2_s", byName(fittedLamp_umol_m2_s), {
    what: "Light under the middle of a lamp whose strength and size are known from readings, at another height.",
    source: "HowellCatalog, form of a disc on its axis",
    inputs: [number("strength_umol_s", 0, 100_000, 31.6), number("size_m", 0, 10, 0.34), height],
  }),
  describe("lampHours", byName(lampHours), {
    what: "Hours a lamp must burn so that daylight and lamp reach a daily light, within the hours allowed.",
    source: "our assumption; arithmetic",
    inputs: [
      number("target_mol_m2_d", 0, 80, 14),
      number("natural_mol_m2_d", 0, 80, 5),
      number("ppfd_umol_m2_s", 0, 3000, 200),
      number("cap_h", 0, 24, 16),
      optional(number("cannotOverlap_h", 0, 24, 0)),
    ],
    fields: ["state", "hours_h", "exact_h", "lamp_mol_m2_d", "shortfall_mol_m2_d", "neededPpfd_umol_m2_s"],
  }),
  describe("lampTimes", byName(lampTimes), {
    what: "When a lamp goes on and off, and how long the plant's day becomes.",
    source: "our assumption",
    inputs: [
      number("hours_h", 0, 24, 12),
      number("dawn_h", 0, 24, 7),
      number("dusk_h", 7, 24, 17),
      choice("extend", ["morning", "evening", "both"], "evening"),
    ],
    fields: ["on_h", "off_h", "dayLength_h"],
  }),
  describe("resetTimer", byName(resetTimer), {
    what: "Whether a timer should be set anew: at most once a week, unless the light is far off.",
    source: "our assumption",
    inputs: [
      number("set_h", 0, 24, 10),
      number("wanted_h", 0, 24, 11),
      number("sinceSet_d", 0, 10_000, 3),
      number("error_mol_m2_d", -80, 80, 1),
    ],
  }),
  describe("lampFlux_umol_s", byName(lampFlux_umol_s), {
    what: "Photons that leave a lamp, from its power and efficacy, less dimming and ageing.",
    source: "our assumption; loss and linear dimming from memory",
    inputs: [
      number("power_W", 0, 5000, 36),
      number("efficacy_umol_J", 0.1, 5, 2.4),
      optional(number("dimming_frac", 0, 1, 1)),
      optional(number("burnt_h", 0, 200_000, 5000)),
      optional(number("lossPer1000h_frac", 0, 0.2, 0.01)),
    ],
  }),
  describe("photonsPerEnergy_mol_kWh", single(photonsPerEnergy_mol_kWh), {
    what: "Photons a lamp gives per electricity.",
    source: "NelsonBugbee2014",
    inputs: [number("efficacy_umol_J", 0.1, 5, 2.4)],
  }),
  describe("lampCost", byName(lampCost), {
    what: "Electricity and money that lamps take.",
    source: "our assumption; arithmetic",
    inputs: [
      number("power_W", 0, 100_000, 100),
      number("hours_h", 0, 24, 14),
      number("days_n", 0, 10_000, 30),
      price,
      optional(number("cheapHours_h", 0, 24, 6)),
      optional(number("cheapPrice_minor_per_kWh", 0, 1000, 20)),
    ],
    fields: ["energy_kWh", "cost_minor"],
  }),
  describe("costOfPots_minor", byName(costOfPots_minor), {
    what: "What each pot has to bear of a cost, by its share of the photons delivered.",
    source: "our assumption",
    inputs: [number("cost_minor", 0, 1e9, 300), numbers("photons_umol_s", 0, 1e9, [10, 20])],
  }),
  describe("cabinetRise_C", byName(cabinetRise_C), {
    what: "How much warmer a ventilated cabinet becomes by its lamps: nearly all of their power ends as heat.",
    source: "our assumption; heat capacity of air at 20 °C from memory",
    inputs: [number("power_W", 0, 5000, 100), number("airflow_m3_s", 0.0001, 10, 0.02)],
  }),
];
