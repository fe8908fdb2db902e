import { byName, describeField, single } from "../catalogue/describe.ts";
import { number, numbers, optional, yesOrNo } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  agedAir_frac,
  agedBark,
  airless_h,
  airlessBand,
  biomassRatio,
  largestPot_mL,
  leavesToLeave_frac,
  metricRate_kg_m3,
  oxygenSpread,
  potBound,
  pouredTemperature_C,
  rewettedWater_frac,
  rootLimitedUse_frac,
  rootRegrowth_d,
  rootsCarry_d,
  rootVolume_frac,
  rootZoneClass,
  rootZoneGrowth,
  sharesOfFirst,
  smallestPot_mL,
  standingTime_min,
  standsFirm,
  starterCharge,
  unrestrictedMass_g,
  unwateredPotential_kPa,
  waterloggingLoss,
} from "./index.ts";

const describe = describeField("medium");

export const potLifeCatalogue: readonly ScienceFunction[] = [
  describe("airless_h", byName(airless_h), {
    what: "How long a pot stays short of air after a full watering.",
    source: "Verhagen2013 for the air wanted; the bands are our assumption",
    inputs: [
      number("air_frac", 0, 0.9, 0.1),
      number("medium_mL", 10, 1000000, 600),
      number("use_g_d", 0.1, 100000, 40),
      optional(number("airWanted_frac", 0.05, 0.4, 0.2)),
    ],
  }),
  describe("airlessBand", single(airlessBand), {
    what: "What so many airless hours mean.",
    source: "our assumption; bands after GuhKuk1996",
    inputs: [number("airless_h", 0, 10000, 30)],
  }),
  describe("oxygenSpread", byName(oxygenSpread), {
    what: "How easily oxygen spreads through a medium beside open air, to rank media by.",
    source: "MillingtonQuirk1961",
    inputs: [number("air_frac", 0, 0.95, 0.2), number("porosity_frac", 0.25, 0.99, 0.8)],
  }),
  describe("sharesOfFirst", single(sharesOfFirst), {
    what: "Each of a run of readings as a share of the first.",
    source: "our assumption; definition",
    inputs: [numbers("readings", 0, 1000000000, [145, 78, 18])],
  }),
  describe("waterloggingLoss", single(waterloggingLoss), {
    what: "Yield that peppers lost after standing in water at 25 °C.",
    source: "GuhKuk1996",
    inputs: [number("waterlogged_h", 12, 48, 24)],
    fields: ["low_frac", "high_frac"],
  }),
  describe("rewettedWater_frac", byName(rewettedWater_frac), {
    what: "What a peat medium holds once it has been dry: it never takes up as much again until it is soaked.",
    source: "Bartley2023",
    inputs: [number("water_frac", 0, 1, 0.65), number("dried_frac", 0, 1, 1), number("peat_frac", 0, 1, 0.7)],
  }),
  describe("agedBark", byName(agedBark), {
    what: "Pine bark after half a year in the heap, as volume points: an order of magnitude, for the two changes do not cancel.",
    source: "PineBark2012",
    inputs: [number("air_frac", 0.172, 0.9, 0.33), number("water_frac", 0, 0.78, 0.475)],
    fields: ["air_frac", "water_frac"],
  }),
  describe("agedAir_frac", byName(agedAir_frac), {
    what: "Air of a medium that has aged in its pot.",
    source: "our assumption",
    inputs: [
      number("air_frac", 0, 0.9, 0.2),
      number("age_d", 0, 4000, 365),
      number("yearlyLoss_frac", 0, 0.8, 0.15),
    ],
  }),
  describe("rootVolume_frac", byName(rootVolume_frac), {
    what: "Share of a pot that its roots fill; half of it is taken from the air, half from the water.",
    source: "our assumption; dry matter of fine roots is from memory",
    inputs: [
      number("rootDry_g", 0, 10000, 6),
      number("rootDryMatter_frac", 0.05, 0.3, 0.1),
      number("medium_mL", 10, 1000000, 500),
      optional(number("rootDensity_g_mL", 0.8, 1.2, 1)),
    ],
  }),
  describe("potBound", byName(potBound), {
    what: "How pot-bound a plant is: one point each of four signs, and one for age; two and more want repotting soon.",
    source: "our assumption; signs are common practice, no source",
    inputs: [
      number("dryDown_frac", 0, 5, 0.7),
      number("capacityLeft_frac", 0, 2, 0.9),
      yesOrNo("rootsCircling", false),
      number("standing_s", 0, 3600, 10),
      yesOrNo("runsThrough", false),
      number("age_d", 0, 4000, 300),
    ],
    fields: ["score", "biggerPot", "freshMedium"],
  }),
  describe("smallestPot_mL", byName(smallestPot_mL), {
    what: "The least volume of medium for a wanted time between waterings.",
    source: "our assumption; balance of water",
    inputs: [
      number("use_g_d", 0.1, 100000, 60),
      number("between_d", 0.5, 60, 2),
      number("available_frac", 0.05, 0.7, 0.4),
      number("allowed_frac", 0.2, 0.9, 0.6),
    ],
  }),
  describe("largestPot_mL", byName(largestPot_mL), {
    what: "The greatest volume that still dries and breathes in the first month after repotting.",
    source: "our assumption; balance of water",
    inputs: [
      number("use_g_d", 0.1, 100000, 30),
      number("longest_d", 2, 30, 7),
      number("available_frac", 0.05, 0.7, 0.4),
      number("allowed_frac", 0.2, 0.9, 0.6),
      number("air_frac", 0, 0.9, 0.15),
    ],
  }),
  describe("biomassRatio", byName(biomassRatio), {
    what: "How much more a plant grows in a larger pot.",
    source: "Poorter2012",
    inputs: [number("volumeRatio", 0.05, 20, 2), optional(number("exponent", 0.1, 1, 0.516))],
  }),
  describe("unrestrictedMass_g", single(unrestrictedMass_g), {
    what: "Dry mass that a pot carries without holding its plant back: trained plants exceed it by far, which is what keeps them small.",
    source: "Poorter2012",
    inputs: [number("medium_mL", 10, 1000000, 500)],
  }),
  describe("standsFirm", byName(standsFirm), {
    what: "How firmly a pot stands: weight over its base against the crown leaning by 10°.",
    source: "our assumption",
    inputs: [
      number("whole_g", 10, 1000000, 900),
      number("halfBase_cm", 0.5, 100, 4),
      number("crown_g", 0.1, 100000, 150),
      number("centre_cm", 1, 300, 25),
    ],
  }),
  describe("rootRegrowth_d", single(rootRegrowth_d), {
    what: "Pace of new roots after root work.",
    source: "our assumption",
    inputs: [number("medium_C", 0, 50, 22)],
  }),
  describe("rootLimitedUse_frac", byName(rootLimitedUse_frac), {
    what: "Water use of a plant with fewer roots, as a share of what it used before.",
    source: "our assumption; g and τ are learned from weights of the pot",
    inputs: [
      number("rootsKept_frac", 0.05, 1, 0.5),
      number("since_d", 0, 400, 7),
      optional(number("exponent", 0.3, 1, 0.5)),
      optional(number("regrowth_d", 3, 60, 10)),
    ],
  }),
  describe("rootsCarry_d", byName(rootsCarry_d), {
    what: "Days until the roots carry so much of the former use again.",
    source: "our assumption",
    inputs: [
      number("rootsKept_frac", 0.05, 1, 0.5),
      number("useWanted_frac", 0.1, 0.99, 0.85),
      optional(number("exponent", 0.3, 1, 0.5)),
      optional(number("regrowth_d", 3, 60, 10)),
    ],
  }),
  describe("leavesToLeave_frac", byName(leavesToLeave_frac), {
    what: "Leaves that cut roots can carry on the day of root work.",
    source: "our assumption",
    inputs: [
      number("rootsKept_frac", 0.05, 1, 0.5),
      optional(number("washed_frac", 0.5, 1, 0.8)),
      optional(number("exponent", 0.3, 1, 0.5)),
    ],
  }),
  describe("unwateredPotential_kPa", single(unwateredPotential_kPa), {
    what: "Water potential of fresh pepper transplants that nobody waters, at 30 °C by day and 25 °C by night.",
    source: "HortSci1991",
    inputs: [number("dry_h", 0, 48, 24)],
  }),
  describe("pouredTemperature_C", byName(pouredTemperature_C), {
    what: "Temperature of a pot into which water was poured.",
    source: "our assumption; balance of heat",
    inputs: [
      number("medium_mL", 10, 1000000, 500),
      number("bulkDensity_g_mL", 0.02, 2, 0.12),
      number("water_frac", 0, 1, 0.35),
      number("medium_C", 0, 60, 20),
      number("poured_mL", 0, 100000, 120),
      number("water_C", 0, 60, 8),
      optional(number("solidsHeat_J_g_K", 0.5, 3, 1.9)),
    ],
  }),
  describe("standingTime_min", byName(standingTime_min), {
    what: "How long cold water must stand in a room until it is warm enough.",
    source: "our assumption; Newton's law of cooling",
    inputs: [
      number("water_C", 0, 60, 9),
      number("wanted_C", 0, 60, 15),
      number("room_C", -10, 50, 21),
      optional(number("pace_h", 0.1, 12, 1)),
    ],
  }),
  describe("rootZoneClass", single(rootZoneClass), {
    what: "What a temperature does to roots of warm-country plants.",
    source: "HandreckBlack1984; the lower limits are our assumption",
    inputs: [number("rootZone_C", -20, 90, 22)],
  }),
  describe("rootZoneGrowth", single(rootZoneGrowth), {
    what: "Growth of peppers by the warmth of their roots, as a share of the best.",
    source: "GosselinTrudel1986 for where the best lies; the lines between are our assumption",
    inputs: [number("rootZone_C", -20, 90, 22)],
    fields: ["shoot_frac", "fruit_frac"],
  }),
  describe("metricRate_kg_m3", single(metricRate_kg_m3), {
    what: "A rate in pounds for each cubic yard as kilograms for each cubic metre.",
    source: "our assumption; definition of the units",
    inputs: [number("poundsPerYard", 0, 1000, 10)],
  }),
  describe("starterCharge", byName(starterCharge), {
    what: "A starter charge of nitrogen in a medium, and how long it lasts when nothing is washed out.",
    source: "UMassExtension for the practice; balance of mass",
    inputs: [
      number("rate_kg_m3", 0, 20, 0.6),
      number("nitrogen_frac", 0, 0.5, 0.155),
      number("medium_mL", 10, 1000000, 400),
      number("uptake_mg_d", 0.01, 1000, 4),
    ],
    fields: ["nitrogen_mg_L", "nitrogen_mg", "lasts_d"],
  }),
];
