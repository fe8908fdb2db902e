import { byName, describeField, single } from "../catalogue/describe.ts";
import { assumed, choice, number, numbers, optional } from "../catalogue/input.ts";
import type { ScienceFunction, ScienceInput } from "../catalogue/types.ts";
import { speciesGroups } from "../growth/species.ts";
import {
  colourStages,
  crossing,
  crossResult,
  finishOff_d,
  freshPerDry_frac,
  fruitAssumptions,
  germinationTest,
  heatClass,
  heatTypes,
  onFreshBasis,
  pollenMovers,
  pollenRate_frac,
  pollinated_frac,
  printedHeat,
  refitRipening,
  ripening,
  scoville,
  scovilleWeighted,
  seedIsolations,
  seedLife_d,
  setChance_frac,
  setRatio,
  usualHeat,
  warmthSet_frac,
  wayOfColour_frac,
} from "./index.ts";

const describe = describeField("fruit");
const settings = (...keys: readonly string[]): readonly ScienceInput[] => assumed(fruitAssumptions, ...keys);
const air = number("air_C", -40, 60, 22);
const pair: readonly ScienceInput[] = [
  choice("mother", speciesGroups, "annuum"),
  choice("father", speciesGroups, "annuum"),
];
const content = (name: string, usual: number) => number(name, 0, 1_000_000, usual);

/** Flowers, ripening, heat and seed. */
export const fruitCatalogue: readonly ScienceFunction[] = [
  describe("pollenRate_frac", byName(pollenRate_frac), {
    what: "Pollen germination or tube growth at a temperature, as a share of the best: two straight lines.",
    source: "ReddyKakani2007",
    inputs: [
      air,
      optional(number("base_C", -10, 40, 12.2)),
      optional(number("optimum_C", -5, 50, 31.2)),
      optional(number("max_C", 0, 60, 40.4)),
    ],
  }),
  describe("pollinated_frac", byName(pollinated_frac), {
    what: "Chance of set by how pollen was moved, against the best.",
    source: "RedHot; gain of a second visit common practice",
    inputs: [
      choice("moved", pollenMovers, "by hand"),
      optional(number("visits_n", 0, 50, 2)),
      ...settings("stillAirSet_frac"),
    ],
  }),
  describe("setRatio", byName(setRatio), {
    what: "Set with pollen moved in one way over set with it moved in another, as trials print it.",
    source: "RedHot and RoldanSerrano2006 for the values; the definition",
    inputs: [number("set", 0, 100, 26), number("setOther", 0.01, 100, 87)],
  }),
  describe("warmthSet_frac", byName(warmthSet_frac), {
    what: "Chance of set by the temperatures around a flower, against the best: the least of warmth for pollen, heat and cold nights.",
    source:
      "ReddyKakani2007 for pollen, EricksonMarkhart2002 for heat, Pressman for nights; how hard each hits our assumption",
    inputs: [
      number("airDay_C", -40, 60, 25),
      optional(number("airMax_C", -40, 60, 28)),
      optional(number("airNight_C", -40, 60, 17)),
      ...settings("hot_C", "heatSet_frac", "coldNight_C", "coldNightSet_frac"),
    ],
  }),
  describe("setChance_frac", byName(setChance_frac), {
    what: "Chance that one flower of one plant sets.",
    source: "Wubs2009 for the threshold, RedHot for the best; softness our assumption",
    inputs: [
      number("sourceOverDemand", 0, 1000, 1.2),
      number("pollinated_frac", 0, 1, 1),
      number("warmthSet_frac", 0, 1, 1),
      ...settings("setThreshold", "setSlope", "bestSet_frac"),
    ],
  }),
  describe("ripening", byName(ripening), {
    what: "Days until a fruit is ripe at a steady temperature, or that it will not ripen there.",
    source: "our assumption; sums and spread as in the field growth",
    inputs: [
      air,
      number("toRipe_Cd", 50, 5000, 690),
      optional(number("behind_Cd", 0, 10_000, 0)),
      optional(number("spread_frac", 0.01, 1, 0.12)),
      number("base_C", -10, 40, 10),
      number("optimumLow_C", -5, 50, 28),
      number("optimumHigh_C", -5, 55, 35),
      number("max_C", 0, 70, 55),
      ...settings("floorMargin_C"),
    ],
    fields: ["ripens", "days_d", "low_d", "high_d", "floor_C"],
  }),
  describe("refitRipening", byName(refitRipening), {
    what: "Thermal sum from flower to ripe from the grower's own fruits, drawn towards the default.",
    source: "our assumption; shrinkage",
    inputs: [
      numbers("own_Cd", 50, 5000, [600, 640]),
      number("default_Cd", 50, 5000, 690),
      number("spread_frac", 0.01, 1, 0.12),
      optional(number("plants_n", 1, 10_000, 2)),
    ],
    fields: ["toRipe_Cd", "spread_frac", "own_Cd", "weight_frac"],
  }),
  describe("wayOfColour_frac", byName(wayOfColour_frac), {
    what: "Share of the warmth from flower to ripe that lies behind a fruit of such a colour, its middle.",
    source: "our assumption; stages common practice",
    inputs: [choice("colour", colourStages, "breaker"), ...settings("breaker_frac")],
  }),
  describe("finishOff_d", byName(finishOff_d), {
    what: "Days for a fruit picked early to finish its colour off the plant. Green fruit does not: it has no climacteric.",
    source: "Molinari at 20 °C; other temperatures our assumption",
    inputs: [number("coloured_frac", 0, 1, 0.3), number("air_C", 0, 40, 20), ...settings("finishOff_d")],
  }),
  describe("scoville", byName(scoville), {
    what: "Scoville heat units from a laboratory's content of capsaicin and its like, on the same basis (dry or fresh) as the content.",
    source: "AlOthman2011",
    inputs: [content("content_ug_g", 4249), optional(number("perPpm", 10, 20, 16))],
  }),
  describe("scovilleWeighted", byName(scovilleWeighted), {
    what: "Scoville heat units by the weights of the official method, from three capsaicinoids.",
    source: "AOAC995; weights from memory",
    inputs: [
      content("capsaicin_ug_g", 1000),
      content("dihydrocapsaicin_ug_g", 600),
      content("nordihydrocapsaicin_ug_g", 100),
    ],
  }),
  describe("freshPerDry_frac", byName(freshPerDry_frac), {
    what: "Factor from dry to fresh basis: the share of its dry product that a fruit was before drying.",
    source: "KoreanChilli2020",
    inputs: [number("waterFresh_frac", 0.3, 0.99, 0.9), number("waterDried_frac", 0, 0.5, 0.1)],
  }),
  describe("onFreshBasis", byName(onFreshBasis), {
    what: "A content or heat on dry basis, carried over to fresh basis.",
    source: "KoreanChilli2020",
    inputs: [number("onDry", 0, 1e9, 56_131), number("freshPerDry_frac", 0.01, 1, 0.11)],
  }),
  describe("heatClass", byName(heatClass), {
    what: "Class of heat, 0 to 10, from Scoville heat units; hotter than the scale stays at 10.",
    source: "HeatScale",
    inputs: [number("shu", 0, 16_000_000, 4000)],
  }),
  describe("printedHeat", byName(printedHeat), {
    what: "Whether a printed heat agrees with the content printed beside it.",
    source: "AlOthman2011 for the factor; the tolerance our assumption",
    inputs: [number("shu", 0, 100_000_000, 142_931), content("content_ug_g", 70_728)],
    fields: ["shu", "flag", "ratio"],
  }),
  describe("usualHeat", single(usualHeat), {
    what: "Usual heat of a type of pepper, as a range: no look tells it, and one cultivar spreads tenfold.",
    source: "our assumption, from popular tables",
    inputs: [choice("type", heatTypes, "jalapeno")],
    fields: ["low", "high", "classLow_n", "classHigh_n"],
  }),
  describe("crossResult", byName(crossResult), {
    what: "What comes of a cross between two of the five domesticated species. Mother and father are not the same the other way round.",
    source: "IBPGR1983",
    inputs: pair,
  }),
  describe("crossing", byName(crossing), {
    what: "Chance that a fruit holds a crossed seed, and share of seed that is crossed.",
    source: "GenetMolRes2018 side by side, IBPGR1983 for the pair; distance and bag our assumption",
    inputs: [
      ...pair,
      number("distance_m", 0, 10_000, 0),
      choice("kept", seedIsolations, "none"),
      ...settings("crossedSeed_frac", "crossedFruit_frac"),
    ],
    fields: ["seed_frac", "fruit_frac"],
  }),
  describe("seedLife_d", byName(seedLife_d), {
    what: "How long dry seed keeps: until half of what germinated at first no longer does.",
    source: "our assumption; Harrington's rule from memory",
    inputs: [
      number("air_C", -25, 35, 21),
      optional(number("water_frac", 0.03, 0.2, 0.07)),
      ...settings("keptSeed_d", "seedMoisture_frac"),
    ],
  }),
  describe("germinationTest", byName(germinationTest), {
    what: "What a test of germination says of a lot, with its range.",
    source: "our assumption; Bayes on the binomial distribution",
    inputs: [number("tested_n", 1, 10_000, 20), number("germinated_n", 0, 10_000, 18)],
    fields: ["germinates_frac", "low_frac", "high_frac"],
  }),
];
