import { byName, describeField, single } from "../catalogue/describe.ts";
import { assumed, choice, number, numbers, optional, yesOrNo } from "../catalogue/input.ts";
import type { ScienceFunction, ScienceInput } from "../catalogue/types.ts";
import { phaseAssumptions } from "./assumptions-phases.ts";
import { temperatureSettings } from "./catalogue-temperature.ts";
import {
  emergedShare_frac,
  emergence,
  emergenceClock,
  expectedLeafArea,
  expectedRelativeGrowth_per_d,
  expectedStage,
  fruitClasses,
  germinatedShare_frac,
  growthAssumptions,
  leafArea_cm2,
  leafAreaAfter_m2,
  leafAreaFromDryMass_cm2,
  leafAreaWithIntercept_cm2,
  leafMassPerArea_g_m2,
  nodeClock,
  nodeRate_per_d,
  nodesMade,
  phaseSums,
  plantLeafArea,
  relativeGrowth_per_d,
  seedsToSow_n,
  speciesGroups,
  stageReached_frac,
  stageSum_Cd,
} from "./index.ts";

const describe = describeField("growth");

const settings = (...keys: readonly string[]): readonly ScienceInput[] => assumed(growthAssumptions, ...keys);
const species = choice("species", speciesGroups, "annuum");
const pepper: readonly ScienceInput[] = [species, optional(choice("fruit", fruitClasses, "long"))];
const pepperSettings: readonly ScienceInput[] = [
  ...temperatureSettings,
  ...settings(...phaseAssumptions.map(({ key }) => key)),
];
const seedSettings = settings(
  "emergenceBase_C",
  "emergencePlateau_C",
  "emergence_Cd",
  "emergenceSlow_Cd",
  "emergenceSpread_frac",
  "emergenceSlowSpread_frac",
);
const nodeSettings = settings(
  "leafRate_per_d",
  "plastochron_Cd",
  "plastochronFruiting_Cd",
  "fruitingSlows_frac",
  "optimumChinense_C",
  "plateau_C",
  "ceiling_C",
);
const growing: readonly ScienceInput[] = [species, yesOrNo("fruiting", false)];
const nodeSource = "BiquinhoPlastochron for chinense, DSSAT48 for annuum; other species our assumption";
const stageSource = "our assumption; sums and spreads as in phaseSums, codes Feller1995";
const leaf: readonly ScienceInput[] = [number("length_cm", 0.1, 40, 8), number("width_cm", 0.05, 25, 4)];

export const growingPlantCatalogue: readonly ScienceFunction[] = [
  describe("phaseSums", byName(phaseSums), {
    what: "Thermal sums of the phases of a plant, on the clock of its species.",
    source: "our assumption, derived from published days and rates; emergence from Knott1997",
    inputs: [...pepper, ...pepperSettings],
    fields: [
      "radicle_Cd",
      "emergence_Cd",
      "cotyledon_Cd",
      "transplant_Cd",
      "flower_Cd",
      "set_Cd",
      "fullSize_Cd",
      "ripe_Cd",
      "budbreak_Cd",
    ],
  }),
  describe("stageSum_Cd", byName(stageSum_Cd), {
    what: "Thermal time after which a stage is reached, from sowing or from a stage that was seen.",
    source: stageSource,
    inputs: [
      ...pepper,
      number("bbch", 0, 81, 61),
      optional(number("bbchStart", 0, 81, 0)),
      optional(number("probability", 0.001, 0.999, 0.5)),
      ...pepperSettings,
    ],
  }),
  describe("stageReached_frac", byName(stageReached_frac), {
    what: "Chance that a stage has been reached after so much thermal time, from sowing or from a stage that was seen.",
    source: stageSource,
    inputs: [
      ...pepper,
      number("bbch", 0, 81, 61),
      number("thermalTime_Cd", 0, 20_000, 900),
      optional(number("thermalTimeSd_Cd", 0, 5000, 0)),
      optional(number("bbchStart", 0, 81, 0)),
      ...pepperSettings,
    ],
  }),
  describe("expectedStage", byName(expectedStage), {
    what: "Stage to be expected after so much thermal time, from sowing or from a stage that was seen.",
    source: stageSource,
    inputs: [
      ...pepper,
      number("thermalTime_Cd", 0, 20_000, 900),
      optional(number("thermalTimeSd_Cd", 0, 5000, 0)),
      optional(number("bbchStart", 0, 81, 0)),
      ...pepperSettings,
    ],
    fields: ["bbch", "bbchLow", "bbchHigh", "stage", "flowering_frac", "ripe_frac"],
  }),
  describe("germinatedShare_frac", single(germinatedShare_frac), {
    what: "Share of good seed that gives a normal seedling, by the temperature of the medium.",
    source: "Knott1997",
    inputs: [number("medium_C", -10, 60, 24)],
  }),
  describe("emergenceClock", byName(emergenceClock), {
    what: "Clock of emergence: the temperatures of the medium between which seed moves.",
    source: "Knott1997 for the plateau; maximum our assumption",
    inputs: settings("emergenceBase_C", "emergencePlateau_C"),
    fields: ["base_C", "optimumLow_C", "optimumHigh_C", "max_C"],
  }),
  describe("emergence", byName(emergence), {
    what: "Days to emergence at a constant temperature of the medium, their range, and the share that comes.",
    source: "Knott1997",
    inputs: [number("medium_C", -10, 60, 24), optional(species), ...seedSettings],
    fields: ["emerges", "rate_per_d", "days_d", "low_d", "high_d", "germinated_frac"],
  }),
  describe("emergedShare_frac", byName(emergedShare_frac), {
    what: "Share of sown seed that has emerged after so much thermal time of the medium; for one seed, the chance that it has.",
    source: "our assumption for the spread; sum from Knott1997",
    inputs: [
      number("thermalTime_Cd", 0, 5000, 118),
      number("germinated_frac", 0, 1, 0.9),
      optional(species),
      ...seedSettings,
    ],
  }),
  describe("seedsToSow_n", byName(seedsToSow_n), {
    what: "Seeds to sow so that enough keepers come of them, with a certainty.",
    source: "our assumption; the binomial distribution",
    inputs: [
      number("wanted_n", 1, 10_000, 10),
      number("success_frac", 0.01, 1, 0.7),
      optional(number("certainty_frac", 0.5, 0.999, 0.9)),
    ],
  }),
  describe("nodeClock", byName(nodeClock), {
    what: "Plastochron of a species group, with the clock that it belongs to: neither means anything without the other.",
    source: nodeSource,
    inputs: [...growing, ...nodeSettings],
    fields: ["base_C", "optimumLow_C", "optimumHigh_C", "max_C", "plastochron_Cd"],
  }),
  describe("nodeRate_per_d", byName(nodeRate_per_d), {
    what: "Nodes that a shoot makes in a day at a constant temperature.",
    source: nodeSource,
    inputs: [...growing, number("air_C", -40, 60, 22), ...nodeSettings],
  }),
  describe("nodesMade", byName(nodesMade), {
    what: "Nodes that a shoot has made in a thermal time on the clock of its nodes.",
    source: "BiquinhoPlastochron for chinense, DSSAT48 for annuum; spread our assumption",
    inputs: [
      ...growing,
      number("thermalTime_Cd", 0, 20_000, 400),
      ...nodeSettings,
      ...settings("nodeSpread_frac"),
    ],
    fields: ["nodes_n", "low_n", "high_n"],
  }),
  describe("leafArea_cm2", byName(leafArea_cm2), {
    what: "Area of a leaf from its length and width: the line through the origin.",
    source: "Salau2008",
    inputs: [...leaf, ...settings("leafShape")],
  }),
  describe("leafAreaWithIntercept_cm2", byName(leafAreaWithIntercept_cm2), {
    what: "Area of a leaf from its length and width: the line with an intercept. Not for leaves under 3 cm².",
    source: "Salau2008",
    inputs: leaf,
  }),
  describe("leafAreaFromDryMass_cm2", byName(leafAreaFromDryMass_cm2), {
    what: "Area of leaves from their dry mass.",
    source: "Salau2008",
    inputs: [
      number("leafDryMass_g", 0, 1000, 0.2),
      optional(number("specificLeafArea_cm2_g", 30, 1000, 151.62)),
      optional(number("intercept_cm2", -50, 50, 0)),
    ],
  }),
  describe("leafMassPerArea_g_m2", single(leafMassPerArea_g_m2), {
    what: "Leaf dry mass per area, the inverse of specific leaf area.",
    source: "DSSAT48 and Salau2008 for the values; the definition",
    inputs: [number("specificLeafArea_cm2_g", 30, 1000, 250)],
  }),
  describe("plantLeafArea", byName(plantLeafArea), {
    what: "Leaf area of a plant from the number of its leaves and a few that were measured.",
    source: "Salau2008; scatter our assumption",
    inputs: [
      number("leaves_n", 1, 20_000, 100),
      numbers("length_cm", 0.1, 40, [6, 7]),
      numbers("width_cm", 0.05, 25, [3, 3.5]),
      ...settings("leafShape", "leafSpread_frac"),
    ],
    fields: ["leafArea_m2", "sd_m2"],
  }),
  describe("relativeGrowth_per_d", byName(relativeGrowth_per_d), {
    what: "Relative growth of leaf area between two measurements.",
    source: "our assumption; the definition",
    inputs: [
      number("leafAreaStart_m2", 0.00001, 20, 0.01),
      number("leafAreaEnd_m2", 0.00001, 20, 0.02),
      number("days_d", 0.5, 1000, 7),
    ],
  }),
  describe("expectedRelativeGrowth_per_d", byName(expectedRelativeGrowth_per_d), {
    what: "Relative growth of leaf area of a young plant that is short of nothing but light and warmth.",
    source:
      "our assumption, set to growth from memory: 0.03 to 0.08 on a winter sill, 0.10 to 0.18 at 10 to 15 mol",
    inputs: [
      species,
      number("dli_mol_m2_d", 0, 65, 12),
      number("air_C", -40, 60, 22),
      ...settings("growthMax_per_d", "growthHalfLight_mol_m2_d"),
      ...nodeSettings,
    ],
  }),
  describe("leafAreaAfter_m2", byName(leafAreaAfter_m2), {
    what: "Leaf area after a time of growth that slows as the plant fills its place.",
    source: "our assumption; logistic growth",
    inputs: [
      number("leafArea_m2", 0, 20, 0.01),
      number("leafAreaMax_m2", 0.00001, 20, 0.1),
      number("relativeGrowth_per_d", 0, 1, 0.1),
      number("days_d", 0, 1000, 7),
    ],
  }),
  describe("expectedLeafArea", byName(expectedLeafArea), {
    what: "Leaf area to be expected after days at one daily light and temperature, with its range.",
    source: "our assumption; logistic growth at a relative growth from memory",
    inputs: [
      species,
      number("dli_mol_m2_d", 0, 65, 12),
      number("air_C", -40, 60, 22),
      number("leafAreaMax_m2", 0.00001, 20, 0.1),
      number("days_d", 0, 1000, 28),
      optional(number("leafArea_m2", 0, 20, 0.01)),
      ...settings("cotyledonArea_cm2", "growthMax_per_d", "growthHalfLight_mol_m2_d", "growthSpread_frac"),
      ...nodeSettings,
    ],
    fields: ["leafArea_m2", "low_m2", "high_m2"],
  }),
];
