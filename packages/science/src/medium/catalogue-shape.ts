import { byName, describeField, single } from "../catalogue/describe.ts";
import { anyNumber, choice, number, numbers, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  alphaFromAir_per_cm,
  availableOfPores_frac,
  blendAir,
  blendDensity_g_mL,
  blendShrinkage_frac,
  drainedPot,
  freeboardRoom,
  porosityTest,
  potArea_cm2,
  potsFromBag_L,
  potVolume_mL,
  quickPorosity,
  screenPorosity,
  tiltedAir_frac,
  totalPorosity_frac,
  usualFreeboard_cm,
  waterAtSuction_frac,
  waterClasses,
  wetLayer_cm,
} from "./index.ts";

const describe = describeField("medium");

/** A pot by its inner measures. */
const shape = [
  choice("form", ["round", "rectangular", "oval"], "round"),
  number("bottomLength_cm", 1, 200, 8),
  number("bottomWidth_cm", 1, 200, 8),
  number("topLength_cm", 1, 200, 11),
  number("topWidth_cm", 1, 200, 11),
  number("innerHeight_cm", 1, 100, 10),
  optional(number("cornerRadius_cm", 0, 100, 0)),
];
/** How a medium holds water. */
const curve = [
  number("residualWater_frac", 0, 0.6, 0.15),
  number("saturatedWater_frac", 0.25, 1, 0.8),
  number("alpha_per_cm", 0.01, 30, 0.18),
  number("steepness", 1.05, 10, 1.5),
];

export const mediumInPotCatalogue: readonly ScienceFunction[] = [
  describe("potArea_cm2", byName(potArea_cm2), {
    what: "Inner area of a pot at a height above its floor.",
    source: "our assumption; elementary geometry",
    inputs: [...shape, number("height_cm", 0, 100, 4)],
  }),
  describe("potVolume_mL", byName(potVolume_mL), {
    what: "Volume of a pot up to a height, by the prismoidal rule.",
    source: "our assumption; elementary geometry",
    inputs: [...shape, number("fill_cm", 0, 100, 8)],
  }),
  describe("freeboardRoom", byName(freeboardRoom), {
    what: "Room for water above the medium, and into how many pours a dose must be parted to fit it.",
    source: "our assumption; elementary geometry",
    inputs: [...shape, number("freeboard_cm", 0.1, 20, 1), number("dose_mL", 0, 20000, 150)],
    fields: ["room_mL", "pours_n"],
  }),
  describe("usualFreeboard_cm", single(usualFreeboard_cm), {
    what: "Usual empty height between medium and rim.",
    source: "common practice, no source",
    inputs: [number("innerHeight_cm", 1, 100, 9)],
  }),
  describe("waterAtSuction_frac", byName(waterAtSuction_frac), {
    what: "Share of a medium's volume that is water at a suction.",
    source: "VanGenuchten1980",
    inputs: [...curve, number("suction_cm", 0, 20000, 10)],
  }),
  describe("wetLayer_cm", byName(wetLayer_cm), {
    what: "Height above the drain hole below which a drained medium holds less air than a limit: the wet layer.",
    source: "VanGenuchten1980, solved for height",
    inputs: [...curve, number("airWanted_frac", 0.001, 0.9, 0.1)],
  }),
  describe("waterClasses", byName(waterClasses), {
    what: "Classes of water of the laboratory: air at 10 cm of suction, water easily had, and the buffer behind it.",
    source: "DeBoodtVerdonck1972 for the classes",
    inputs: [...curve],
    fields: ["air_frac", "easy_frac", "buffer_frac"],
  }),
  describe("drainedPot", byName(drainedPot), {
    what: "Water and air of a medium in a pot once it has drained: the same medium holds less air the lower it stands.",
    source: "MilksFontenoLarson1989; VanGenuchten1980 for the curve",
    inputs: [
      ...shape,
      number("fill_cm", 0.5, 100, 8),
      ...curve,
      optional(number("standing_cm", 0, 50, 0)),
      optional(number("baseSuction_cm", 0, 100, 0)),
    ],
    fields: ["medium_mL", "water_frac", "air_frac"],
  }),
  describe("tiltedAir_frac", byName(tiltedAir_frac), {
    what: "Air of a shallow tray that is stood on its edge after watering: the far side comes to hang high above the hole.",
    source: "MilksFontenoLarson1989 for the equilibrium; tilting is common practice, no source",
    inputs: [
      ...curve,
      number("fill_cm", 0.5, 100, 4),
      number("length_cm", 1, 200, 12),
      number("tilt_deg", 0, 80, 45),
    ],
  }),
  describe("alphaFromAir_per_cm", byName(alphaFromAir_per_cm), {
    what: "The α of a medium's curve from the air measured in one pot.",
    source: "VanGenuchten1980, fitted as of MilksFontenoLarson1989",
    inputs: [
      ...shape,
      number("fill_cm", 0.5, 100, 8),
      number("air_frac", 0.001, 0.9, 0.11),
      number("residualWater_frac", 0, 0.6, 0.15),
      number("saturatedWater_frac", 0.25, 1, 0.8),
      number("steepness", 1.05, 10, 1.5),
    ],
  }),
  describe("porosityTest", byName(porosityTest), {
    what: "What a porosity test at home says of a medium: two weighings, a third after drying.",
    source: "PurdueExtension for the fill and drain procedure",
    inputs: [
      number("medium_mL", 10, 100000, 500),
      number("saturated_g", 1, 200000, 520),
      number("drained_g", 1, 200000, 460),
      number("dry_g", 1, 200000, 60),
    ],
    fields: ["air_frac", "water_frac", "porosity_frac", "bulkDensity_g_mL"],
  }),
  describe("totalPorosity_frac", byName(totalPorosity_frac), {
    what: "Total porosity of a drained medium: its air and its water together.",
    source: "our assumption; definition",
    inputs: [number("air_frac", 0, 2, 0.28), number("water_frac", 0, 2, 0.57)],
  }),
  describe("screenPorosity", byName(screenPorosity), {
    what: "Look over a record of porosity: parts that miss their total, or sums that no medium has, are refused.",
    source: "our assumption",
    inputs: [
      anyNumber("air_frac", 0.2),
      anyNumber("water_frac", 0.6),
      anyNumber("porosity_frac", 0.8),
      optional(anyNumber("bulkDensity_g_mL", 0.12)),
    ],
  }),
  describe("quickPorosity", byName(quickPorosity), {
    what: "A quick estimate of porosity from dry and drained weights of a medium without closed pores.",
    source: "ActaHort294",
    inputs: [number("dryMass_g_L", 20, 900, 100), number("drainedDensity_g_mL", 0.1, 1.6, 0.75)],
    fields: ["porosity_frac", "air_frac", "water_frac"],
  }),
  describe("potsFromBag_L", byName(potsFromBag_L), {
    what: "Volume of pots that a bag fills.",
    source: "Verhagen2017",
    inputs: [number("bag_L", 0.1, 5000, 50), optional(number("packed_frac", 0.4, 1.1, 0.8))],
  }),
  describe("availableOfPores_frac", byName(availableOfPores_frac), {
    what: "Water of a drained pot that its plant can draw, from how much of the pores holds water and how much of that is available.",
    source: "UMassExtension",
    inputs: [number("poresFilled_frac", 0, 1, 0.65), number("availableOfWater_frac", 0, 1, 0.7)],
  }),
  describe("blendShrinkage_frac", byName(blendShrinkage_frac), {
    what: "How much smaller a mix is than its parts, from masses: fine parts slip between coarse ones.",
    source: "BrownPokorny1975 for shrinkage; balance of mass",
    inputs: [
      numbers("parts_frac", 0, 1, [0.6, 0.4]),
      numbers("densities_g_mL", 0.02, 2, [0.09, 0.11]),
      number("bulkDensity_g_mL", 0.02, 2, 0.108),
    ],
  }),
  describe("blendDensity_g_mL", byName(blendDensity_g_mL), {
    what: "Dry density of a mix from its parts and its shrinkage. Mass, cost and nutrients may be added up so; air and water may not.",
    source: "BrownPokorny1975",
    inputs: [
      numbers("parts_frac", 0, 1, [0.6, 0.4]),
      numbers("densities_g_mL", 0.02, 2, [0.09, 0.11]),
      number("shrinkage_frac", 0, 0.3, 0.05),
    ],
  }),
  describe("blendAir", byName(blendAir), {
    what: "A guess at the air of a mix nobody has tested: the mean of its parts, less what fine parts take, with a wide band.",
    source: "our assumption; GabrielAltlandOwen2009 found that air does not blend in a line",
    inputs: [
      numbers("parts_frac", 0, 1, [0.6, 0.4]),
      numbers("airs_frac", 0, 0.9, [0.1, 0.3]),
      optional(number("loss_frac", 0, 0.2, 0.04)),
    ],
    fields: ["air_frac", "low_frac", "high_frac"],
  }),
];
