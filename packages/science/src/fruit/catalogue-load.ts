import { byName, describeField, single } from "../catalogue/describe.ts";
import { assumed, choice, number, optional } from "../catalogue/input.ts";
import type { ScienceFunction, ScienceInput } from "../catalogue/types.ts";
import {
  crownCatch,
  fruitAssumptions,
  fruitCourse_frac,
  fruitParts,
  fruitSetRun,
  fruitSink_g_d,
  fruitsToKeep,
  greenDryMatter_frac,
  growthWarmth_frac,
  learnedBudget,
  lightUse_g_MJ,
  naturalLoad_n,
  potentialDryMass_g,
  sizeOfLoad,
  source_g_d,
  steadySet_frac,
} from "./index.ts";

const describe = describeField("fruit");
const settings = (...keys: readonly string[]): readonly ScienceInput[] => assumed(fruitAssumptions, ...keys);
const oneFruit = [number("dryMassFull_g", 0.001, 100, 0.36), number("toRipe_d", 5, 300, 45)] as const;
const aged: readonly ScienceInput[] = [...oneFruit, number("age_d", 0, 1000, 20)];
const bearing: readonly ScienceInput[] = [number("source_g_d", 0, 1000, 0.14), ...oneFruit];
const stand: readonly ScienceInput[] = [
  number("source_g_d", 0, 1000, 2.4),
  number("vegetative_g_d", 0, 1000, 1.9),
  number("flowers_per_d", 0.01, 100, 0.5),
  number("dryMassFull_g", 0.001, 100, 8),
  ...settings("setThreshold"),
];

/** What the light feeds and what fruit asks for. */
export const fruitLoadCatalogue: readonly ScienceFunction[] = [
  describe("lightUse_g_MJ", single(lightUse_g_MJ), {
    what: "Dry mass made of light, from the unit of crop tables.",
    source: "SWATPlus; the definition",
    inputs: [number("biomassEnergy", 1, 100, 30)],
  }),
  describe("crownCatch", byName(crownCatch), {
    what: "How leaves and ground meet in a crown, seen from above.",
    source: "DSSAT48 for the extinction; SWATPlus has 0.65",
    inputs: [
      number("crownWidth_m", 0.01, 3, 0.2),
      number("leafArea_m2", 0, 20, 0.06),
      optional(number("extinction", 0.3, 1, 0.6)),
    ],
    fields: ["crownArea_m2", "lai", "caught_frac"],
  }),
  describe("growthWarmth_frac", byName(growthWarmth_frac), {
    what: "How much of its growth a plant makes at such a day's temperatures.",
    source: "DSSAT48",
    inputs: [number("airDay_C", -40, 60, 22), optional(number("airNight_C", -40, 60, 16))],
  }),
  describe("source_g_d", byName(source_g_d), {
    what: "Dry mass that a crown makes in a day: the source.",
    source: "SWATPlus for the law; ε our assumption",
    inputs: [
      number("lightCaught_mol_d", 0, 500, 0.257),
      optional(number("warmth_frac", 0, 1, 1)),
      ...settings("lightUse_g_MJ", "photonEnergy_MJ_mol"),
    ],
  }),
  describe("potentialDryMass_g", byName(potentialDryMass_g), {
    what: "Dry mass of one fruit that lacks nothing, at an age.",
    source: "Wubs2009; the sigmoid our assumption",
    inputs: aged,
  }),
  describe("fruitSink_g_d", byName(fruitSink_g_d), {
    what: "What one fruit would take on a day if it lacked nothing: its sink.",
    source: "Wubs2009; the sigmoid our assumption",
    inputs: aged,
  }),
  describe("greenDryMatter_frac", byName(greenDryMatter_frac), {
    what: "Dry share of a green bell fruit by its age. Right for green bells only, not for thin-walled chillies.",
    source: "DSSAT48 FreshWt.for",
    inputs: [
      number("age_d", 0, 1000, 10),
      optional(number("toRipe_d", 5, 300, 40)),
      optional(number("dryFinal_frac", 0.01, 0.5, 0.05)),
      optional(number("dryExtra_frac", 0, 0.5, 0.072)),
      optional(number("dryDecay", 0.1, 50, 7.5)),
    ],
  }),
  describe("fruitCourse_frac", byName(fruitCourse_frac), {
    what: "How far the volume, water or dry mass of a bell has come after so much warmth above 0 °C since its flower opened.",
    source: "Homma2026; slopes derived from its windows",
    inputs: [number("thermalTime_Cd", 0, 10_000, 600), choice("part", fruitParts, "volume")],
  }),
  describe("fruitSetRun", byName(fruitSetRun), {
    what: "Flowers that set, and the mass that they reach, when nobody thins: the daily balance of source and demand.",
    source: "Wubs2009",
    inputs: [...stand, number("toRipe_d", 5, 300, 60), number("flowering_d", 1, 1000, 200)],
    fields: ["flowers_n", "fruits_n", "set_frac", "dryMass_g"],
  }),
  describe("steadySet_frac", byName(steadySet_frac), {
    what: "Share of flowers that set in the long run, in closed form. Fails for large fruit and for a threshold of 1, where set swings.",
    source: "our assumption, derived from Wubs2009",
    inputs: stand,
  }),
  describe("fruitsToKeep", byName(fruitsToKeep), {
    what: "How many fruits a crown can carry to full size while the plant still grows, with its range.",
    source: "our assumption; fruit share SWATPlus",
    inputs: [
      ...bearing,
      optional(number("learned", 0.05, 20, 1)),
      optional(number("learnedSpread_frac", 0.02, 1, 0.3)),
      ...settings(
        "fruitShare_frac",
        "lightUseSpread_frac",
        "lightCaughtSpread_frac",
        "fruitShareSpread_frac",
        "fruitMassSpread_frac",
        "ripeTimeSpread_frac",
      ),
    ],
    fields: ["fruits_n", "low_n", "high_n", "show_n", "spread_frac"],
  }),
  describe("naturalLoad_n", byName(naturalLoad_n), {
    what: "How many fruits a plant left alone would carry at once.",
    source: "our assumption, derived from Wubs2009",
    inputs: [...bearing, ...settings("setThreshold", "vegetativeShare_frac")],
  }),
  describe("sizeOfLoad", byName(sizeOfLoad), {
    what: "Size to which so many fruits come, and the ripe mass that they make together.",
    source: "our assumption, derived from Wubs2009",
    inputs: [...bearing, number("fruits_n", 0, 100_000, 21), ...settings("vegetativeShare_frac")],
    fields: ["size_frac", "dryMass_g"],
  }),
  describe("learnedBudget", byName(learnedBudget), {
    what: "What harvests of a plant show of its budget, drawn towards the reckoned one.",
    source: "our assumption",
    inputs: [
      number("pickedOverReckoned", 0.05, 20, 1.5),
      number("weighed_n", 1, 10_000, 4),
      ...settings("lightUseSpread_frac", "fruitShareSpread_frac"),
    ],
    fields: ["learned", "learnedSpread_frac"],
  }),
];
