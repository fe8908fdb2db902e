import { byName, describeField, single } from "../catalogue/describe.ts";
import { choice, number, numbers, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  appliedWithLeaching_mm,
  convertedSalt_mS_cm,
  dissolved_mg_L,
  flushedSalt_mS_cm,
  flushPlan,
  leachByRule_mL,
  leachedShare_frac,
  pasteRatio,
  pourThroughRatio,
  saltAtDecline_mS_cm,
  saltClass,
  saltRating,
  saltYield_frac,
  steadySalt,
  watered,
  waterForExtract_mS_cm,
  wateringsFromBelow_n,
} from "./index.ts";

const describe = describeField("medium");

export const potSaltsCatalogue: readonly ScienceFunction[] = [
  describe("saltClass", byName(saltClass), {
    what: "Class of a reading of salts, by the method it was taken with.",
    source: "UMassExtension",
    inputs: [
      number("ec_mS_cm", 0, 30, 2.6),
      choice("method", ["one to two", "saturated", "pour-through"], "saturated"),
    ],
  }),
  describe("convertedSalt_mS_cm", byName(convertedSalt_mS_cm), {
    what: "A reading of salts as another method would give it, when the pot is not known.",
    source: "UMassExtension for the ends",
    inputs: [
      number("ec_mS_cm", 0, 30, 0.8),
      choice("method", ["one to two", "saturated", "pour-through"], "one to two"),
      choice("wanted", ["one to two", "saturated", "pour-through"], "saturated"),
    ],
  }),
  describe("pourThroughRatio", byName(pourThroughRatio), {
    what: "What a pour-through reads beside a saturated paste of the same pot: the paste thins what the pot holds.",
    source: "our assumption; balance of mass",
    inputs: [number("porosity_frac", 0.25, 0.99, 0.85), number("water_frac", 0.05, 0.99, 0.65)],
  }),
  describe("pasteRatio", byName(pasteRatio), {
    what: "What a saturated paste reads beside one part of medium in two of water.",
    source: "our assumption; balance of mass",
    inputs: [number("porosity_frac", 0.25, 0.99, 0.85), number("water_frac", 0, 1, 0.25)],
  }),
  describe("saltRating", single(saltRating), {
    what: "Rating of a saturated extract on the other published scale.",
    source: "Warncke",
    inputs: [number("saturated_mS_cm", 0, 30, 3)],
  }),
  describe("dissolved_mg_L", byName(dissolved_mg_L), {
    what: "Dissolved matter from conductivity.",
    source: "UMassExtension",
    inputs: [number("ec_mS_cm", 0, 30, 2), optional(number("saltFactor", 400, 900, 640))],
  }),
  describe("saltYield_frac", byName(saltYield_frac), {
    what: "Yield beside salts in the root zone, by threshold and slope. For peppers a caution, never a forecast of yield.",
    source: "Maas1990",
    inputs: [
      number("saturated_mS_cm", 0, 60, 2.2),
      optional(number("threshold_mS_cm", 0, 20, 1.5)),
      optional(number("slope_per_mS_cm", 0.005, 0.6, 0.14)),
    ],
  }),
  describe("saltAtDecline_mS_cm", byName(saltAtDecline_mS_cm), {
    what: "Salts at which the yield line has fallen by a share.",
    source: "Maas1990",
    inputs: [
      number("decline_frac", 0, 1, 0.1),
      optional(number("threshold_mS_cm", 0, 20, 1.5)),
      optional(number("slope_per_mS_cm", 0.005, 0.6, 0.14)),
    ],
  }),
  describe("waterForExtract_mS_cm", single(waterForExtract_mS_cm), {
    what: "Water that leads to a saturated extract in a field soil, at the leaching that is usual there.",
    source: "FAO29",
    inputs: [number("saturated_mS_cm", 0, 60, 1.5)],
  }),
  describe("appliedWithLeaching_mm", byName(appliedWithLeaching_mm), {
    what: "Water to give in all when a share of it must leach.",
    source: "FAO29",
    inputs: [number("used_mm", 0, 5000, 800), number("leaching_frac", 0, 0.9, 0.1)],
  }),
  describe("leachedShare_frac", byName(leachedShare_frac), {
    what: "Share of a pour that ran out below.",
    source: "ENH1268",
    inputs: [number("leachate_mL", 0, 100000, 21), number("poured_mL", 0.1, 100000, 140)],
  }),
  describe("watered", byName(watered), {
    what: "A watering of a pot: what fills it mixes with what it holds, what runs out displaces the mixture and never takes more than there is.",
    source: "our assumption; exponential displacement in a mixed pot, as of UCANR salts in pots",
    inputs: [
      numbers("held_mg", 0, 1000000000, [100, 20]),
      number("water_mL", 0.1, 1000000, 100),
      number("kept_mL", 0, 1000000, 100),
      number("leachate_mL", 0, 1000000, 30),
      numbers("poured_mg_L", 0, 1000000, [500, 10]),
      number("leachingEfficiency", 0.3, 1.5, 0.8),
    ],
    fields: ["held_mg", "drained_mg", "water_mL", "leachate_mL"],
  }),
  describe("flushedSalt_mS_cm", byName(flushedSalt_mS_cm), {
    what: "Conductivity of the water of a pot after a flush.",
    source: "our assumption; exponential displacement in a mixed pot",
    inputs: [
      number("before_mS_cm", 0, 30, 5),
      number("waterEc_mS_cm", 0, 30, 0.4),
      number("flush_mL", 0, 1000000, 1000),
      number("capacityWater_mL", 1, 1000000, 300),
      optional(number("leachingEfficiency", 0.3, 1.5, 0.8)),
    ],
  }),
  describe("flushPlan", byName(flushPlan), {
    what: "How to bring the salts of a pot down: water in a few doses with waits between, so that it wets through.",
    source: "UCANR for doses and the empty saucer; exponential displacement",
    inputs: [
      number("before_mS_cm", 0, 30, 4),
      number("goal_mS_cm", 0, 30, 1.5),
      number("waterEc_mS_cm", 0, 30, 0.5),
      number("capacityWater_mL", 1, 1000000, 250),
      optional(number("leachingEfficiency", 0.3, 1.5, 0.8)),
    ],
    fields: ["total_mL", "doses_mL", "wait_min"],
  }),
  describe("steadySalt", byName(steadySalt), {
    what: "Where the salts of a pot settle when every watering leaches the same share and the plant takes up none.",
    source: "our assumption; balance of mass",
    inputs: [
      number("waterEc_mS_cm", 0.01, 20, 1.5),
      number("capacityWater_mL", 1, 1000000, 250),
      number("refill_mL", 1, 1000000, 120),
      number("leaching_frac", 0.01, 0.9, 0.1),
      optional(number("leachingEfficiency", 0.3, 1.5, 0.8)),
    ],
    fields: ["pore_mS_cm", "leachate_mS_cm"],
  }),
  describe("wateringsFromBelow_n", byName(wateringsFromBelow_n), {
    what: "Waterings from below, which never leach, until the pore water at capacity reaches a limit.",
    source: "UCANR for why; balance of mass",
    inputs: [
      number("capacityWater_mL", 1, 1000000, 250),
      number("refill_mL", 1, 1000000, 120),
      number("waterEc_mS_cm", 0.01, 20, 0.5),
      number("pore_mS_cm", 0, 30, 0.6),
      number("limit_mS_cm", 0, 30, 2),
      number("uptake_frac", 0, 0.95, 0),
    ],
  }),
  describe("leachByRule_mL", byName(leachByRule_mL), {
    what: "Water that leaches a pot through, by the rule of thumb.",
    source: "UCANR",
    inputs: [number("medium_mL", 10, 1000000, 1183), optional(number("volumes", 0.5, 10, 2))],
  }),
];
