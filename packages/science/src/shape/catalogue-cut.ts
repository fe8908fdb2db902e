import { byName, describeField, single } from "../catalogue/describe.ts";
import { assumed, choice, number, numbers, optional, yesOrNo } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import { shapeAssumptions } from "./assumptions.ts";
import {
  breakTime,
  budBreak_frac,
  columnHeight,
  divergence_deg,
  forkCaliper_mm,
  forkExponent,
  goldenAngle_deg,
  leafAzimuth_deg,
  leafShares_frac,
  learntBreak_frac,
  regrowthTime_d,
  removedShare,
  resourceSplit,
  setAngle_deg,
  shootAngle_deg,
  trainedHeight,
  wireTime,
  woods,
} from "./index.ts";

const describe = describeField("shape");
const set = (...keys: readonly string[]) => assumed(shapeAssumptions, ...keys);

/** Stems, cuts and what follows them. */
export const cutCatalogue: readonly ScienceFunction[] = [
  describe("goldenAngle_deg", () => goldenAngle_deg(), {
    what: "The golden angle, between one leaf and the next around a stem.",
    source: "Okabe2019",
    inputs: [],
  }),
  describe("leafAzimuth_deg", byName(leafAzimuth_deg), {
    what: "Compass direction of a node's leaf where no photo shows it.",
    source: "Okabe2019",
    inputs: [number("azimuth0_deg", -360, 720, 0), number("node_n", 0, 1000, 3), yesOrNo("leftHanded", true)],
  }),
  describe("divergence_deg", byName(divergence_deg), {
    what: "Angle between successive leaves of a stem whose leaves repeat after so many nodes.",
    source: "Okabe2019",
    inputs: [number("turns_n", 1, 100, 2), number("leavesPerTurns_n", 1, 300, 5)],
  }),
  describe("shootAngle_deg", byName(shootAngle_deg), {
    what: "Angle of a shoot from the direction it turns to, so far along it.",
    source: "Bastien2013; closed form derived here",
    inputs: [number("start_deg", 0, 179, 60), number("stretches", 0, 100, 1)],
  }),
  describe("setAngle_deg", byName(setAngle_deg), {
    what: "Angle from upright at which a shoot settles between gravity and light.",
    source: "Bastien2015; form of the balance from memory",
    inputs: [number("lightPull", 0, 10, 0.4), number("lightFromVertical_deg", 0, 180, 60)],
  }),
  describe("resourceSplit", byName(resourceSplit), {
    what: "How the strength of a stem is shared at a fork.",
    source: "Palubicki2009",
    inputs: [
      number("strength", 0, 1e6, 6),
      number("mainShare_frac", 0.05, 0.95, 0.5),
      number("lightMain", 0, 1e9, 1),
      number("lightSide", 0, 1e9, 2),
    ],
    fields: ["main", "side"],
  }),
  describe("budBreak_frac", byName(budBreak_frac), {
    what: "Chance that a bud below a cut grows.",
    source: "our assumption",
    inputs: [
      number("rank_n", 1, 100, 1),
      number("light_frac", 0, 1, 0.5),
      choice("wood", woods, "green"),
      yesOrNo("leafy", true),
      yesOrNo("otherArm", false),
      ...set(
        "firstBreak_frac",
        "forkStubBreak_frac",
        "breakFade_n",
        "breakLight_frac",
        "breakSemi_frac",
        "breakWoody_frac",
        "breakBare_frac",
      ),
    ],
  }),
  describe("breakTime", byName(breakTime), {
    what: "Days from a cut to visible shoots, 10, 50 and 90 in a hundred.",
    source: "our assumption",
    inputs: [
      number("air_C", -10, 50, 22),
      number("base_C", -5, 30, 12),
      number("plastochron_Cd", 5, 1000, 69),
      ...set("breakLag_n", "breakLagSpread_frac"),
    ],
    fields: ["early_d", "middle_d", "late_d"],
  }),
  describe("learntBreak_frac", byName(learntBreak_frac), {
    what: "Chance of bud break after some buds were watched: counts of a beta distribution that starts with the weight of four buds.",
    source: "our assumption",
    inputs: [
      number("before_frac", 0, 1, 0.5),
      number("watched_n", 0, 10_000, 8),
      number("grown_n", 0, 10_000, 5),
    ],
  }),
  describe("removedShare", byName(removedShare), {
    what: "Share of leaf that a cut takes, by area and by the light that the leaves have.",
    source: "our assumption",
    inputs: [
      numbers("areas_cm2", 0, 1000, [10, 10]),
      numbers("lights_frac", 0, 1, [1, 0.5]),
      numbers("goes_n", 0, 1, [0, 1]),
    ],
    fields: ["lit_frac", "area_frac"],
  }),
  describe("regrowthTime_d", byName(regrowthTime_d), {
    what: "Days until as much leaf has grown again as was taken.",
    source: "our assumption; exponential growth",
    inputs: [number("removed_frac", 0, 0.99, 0.25), ...set("leafRegrowth_per_d")],
  }),
  describe("leafShares_frac", byName(leafShares_frac), {
    what: "Shares of the leaves that branches carry, from their thickness at the base.",
    source: "Grabosky2007; relation of young oaks",
    inputs: [numbers("calipers_mm", 0.2, 200, [5, 4, 3]), ...set("pipeExponent")],
  }),
  describe("forkCaliper_mm", byName(forkCaliper_mm), {
    what: "Thickness below a fork from the thickness of its arms.",
    source: "Eloy2011; in other trees it held only at some forks",
    inputs: [numbers("arms_mm", 0.2, 200, [6, 5]), ...set("pipeExponent")],
  }),
  describe("forkExponent", byName(forkExponent), {
    what: "Exponent that a measured fork implies; odd ones point to a slip of the calipers.",
    source: "Eloy2011",
    inputs: [number("below_mm", 0.2, 200, 8), numbers("arms_mm", 0.2, 200, [6, 5])],
    fields: ["exponent", "odd"],
  }),
  describe("trainedHeight", single(trainedHeight), {
    what: "Height that a trunk of this thickness asks for, low and high.",
    source: "common practice, no source",
    inputs: [number("caliper_mm", 0.5, 300, 10)],
    fields: ["low_mm", "high_mm"],
  }),
  describe("columnHeight", byName(columnHeight), {
    what: "Height at which a plain column falls over under its own weight.",
    source: "Greenhill1881; relation from memory",
    inputs: [
      number("stiffness_Pa", 1e5, 1e12, 1e9),
      number("density_kg_m3", 50, 5000, 1000),
      number("diameter_m", 0.0001, 5, 0.01),
      optional(number("gravity_m_s2", 1, 30, 9.81)),
      optional(number("bessel", 1, 10, 3.483265528)),
    ],
    fields: ["height_m", "coefficient", "loadNumber"],
  }),
  describe("wireTime", byName(wireTime), {
    what: "How long a wire or guy stays, and how often to look whether it bites.",
    source: "common practice, no source",
    inputs: [
      choice("wood", woods, "green"),
      number("growthPace", 0.1, 3, 1),
      ...set("setGreen_d", "setSemi_d", "setWoody_d"),
    ],
    fields: ["off_d", "look_d"],
  }),
];
