import { byName, describeField, single } from "../catalogue/describe.ts";
import { choice, number, numbers, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  agentsPerPot_n,
  aphidColony,
  breakEvenKill_frac,
  captureToHold_frac,
  cardRate_n,
  cardsForRoom_n,
  cardTrend,
  cohortOnCard,
  concentrate,
  courseCleared,
  courseLength_n,
  doublingTime_d,
  gnatsByDay,
  growingExposure,
  infestedShare_frac,
  intrinsicRate_per_d,
  leafMiss,
  lifeTableRate,
  meanOfInfested_n,
  meanStageSum_Cd,
  mildewGerminates,
  mixStrength,
  multiplication_n,
  ownSight_frac,
  pestNames,
  pestPace,
  sequentialLooks,
  silence_frac,
  simpleRate,
  stageRate_per_d,
  steadyGnats,
  stopCount_n,
  tabledDuration_d,
  taylorLaw,
  temperatureOfDuration_C,
  thermalConstants,
  treatmentsNeeded_n,
  twoPeriods,
  unitsToCount_n,
  vitalRate,
} from "./index.ts";

const describe = describeField("pests");
const taylor = [number("taylorA", 0.01, 1000, 2.586), number("taylorB", 0.2, 1.99, 1.511)] as const;
const classes = [
  number("eggClasses_n", 1, 200, 4),
  number("larvaClasses_n", 1, 200, 13),
  number("pupaClasses_n", 1, 200, 5),
  number("adultClasses_n", 1, 200, 4),
  number("daughters_per_d", 0, 10_000, 16.475),
  number("hatch_frac", 0, 1, 0.816),
  number("emergence_frac", 0, 1, 0.771),
] as const;
const odds = number("odds", 0.0001, 10_000, 1);
const stageLine = [number("base_C", -10, 30, 6.2), number("stage_Cd", 1, 5000, 108.9)] as const;
const trials = [
  numbers("temperatures_C", -10, 50, [15, 20, 25]),
  numbers("durations_d", 0.1, 1000, [34.2, 19.2, 12.1]),
] as const;

/** How pests grow, how they are counted, treated and seen. */
export const pestCatalogue: readonly ScienceFunction[] = [
  describe("pestPace", byName(pestPace), {
    what: "What a pest's clock says at a steady temperature: how fast it grows a day, and the times to its first birth and out of hiding.",
    source:
      "Kim2012; Kersting1999; Assiut3738; Silva1998; Katayama1997; Osborne1982; Bradysia1998; values between are our assumption",
    inputs: [choice("pest", pestNames, "green peach aphid"), number("air_C", -10, 50, 20)],
    fields: ["rate_per_d", "firstBirth_d", "hidden_d"],
  }),
  describe("stageRate_per_d", byName(stageRate_per_d), {
    what: "Share of a stage that is done in a day, linear in temperature.",
    source: "Kersting1999; Kim2012; each pest's line in `pestClocks`",
    inputs: [number("air_C", -50, 60, 20), ...stageLine, optional(number("cap_C", -10, 60, 30))],
  }),
  describe("temperatureOfDuration_C", byName(temperatureOfDuration_C), {
    what: "The steady temperature at which a stage takes so long.",
    source: "Kim2012",
    inputs: [...stageLine, number("duration_d", 0.1, 1000, 8)],
  }),
  describe("thermalConstants", byName(thermalConstants), {
    what: "Threshold and degree-days from durations at several steady temperatures.",
    source: "Assiut3738; Katayama1997",
    inputs: [...trials],
    fields: ["base_C", "stage_Cd"],
  }),
  describe("meanStageSum_Cd", byName(meanStageSum_Cd), {
    what: "Mean degree-days above a known threshold over several trials.",
    source: "Silva1998",
    inputs: [...trials, number("base_C", -10, 30, 10)],
  }),
  describe("tabledDuration_d", byName(tabledDuration_d), {
    what: "Duration of a stage from a table, interpolated in the rate.",
    source: "Bradysia1998",
    inputs: [number("air_C", -50, 60, 18), ...trials],
  }),
  describe("mildewGerminates", single(mildewGerminates), {
    what: "Whether powdery mildew of pepper can germinate at a temperature.",
    source: "Elad2007",
    inputs: [number("leaf_C", -50, 60, 20)],
  }),
  describe("intrinsicRate_per_d", byName(intrinsicRate_per_d), {
    what: "Intrinsic rate of increase from net reproduction and mean generation time, first estimate.",
    source: "Birch1948",
    inputs: [number("netReproduction_n", 0.0001, 100_000, 62.7), number("generation_d", 0.1, 1000, 12.45)],
  }),
  describe("multiplication_n", byName(multiplication_n), {
    what: "By how much a growing population multiplies over some days.",
    source: "Birch1948",
    inputs: [number("rate_per_d", -5, 5, 0.33), optional(number("days_d", 0, 1000, 7))],
  }),
  describe("doublingTime_d", single(doublingTime_d), {
    what: "Time in which a population doubles, or halves where it shrinks.",
    source: "Birch1948",
    inputs: [number("rate_per_d", -5, 5, 0.33)],
  }),
  describe("lifeTableRate", byName(lifeTableRate), {
    what: "Net reproduction and intrinsic rate of a life table.",
    source: "Birch1948",
    inputs: [
      numbers("ages_d", 0, 1000, [8, 9, 10]),
      numbers("alive_frac", 0, 1, [0.9, 0.9, 0.8]),
      numbers("daughters_n", 0, 10_000, [3, 3, 2]),
    ],
    fields: ["netReproduction_n", "rate_per_d"],
  }),
  describe("vitalRate", byName(vitalRate), {
    what: "Net reproduction and rate from what is printed of a fly: eggs, shares that hatch and emerge, times.",
    source: "Birch1948; Bradysia1998 for the rates",
    inputs: [
      number("eggs_n", 0.1, 10_000, 131.8),
      number("hatch_frac", 0.001, 1, 0.816),
      number("emergence_frac", 0.001, 1, 0.771),
      number("female_frac", 0.001, 1, 0.3333),
      number("eggToAdult_d", 0.1, 600, 22.2),
      number("femaleLife_d", 0.1, 365, 4.2),
      optional(number("layingFrom_d", 0, 365, 0.5)),
      optional(number("points_n", 2, 1000, 50)),
    ],
    fields: ["netReproduction_n", "rate_per_d"],
  }),
  describe("simpleRate", byName(simpleRate), {
    what: "Quick rate of aphids and mites from the first births, and what is left of it when its known overshoot is taken off.",
    source: "WyattWhite1977; Saska2021 for the overshoot",
    inputs: [
      number("firstBirth_d", 1, 100, 7),
      number("young_n", 1.01, 1000, 25),
      optional(number("coefficient", 0.1, 2, 0.738)),
      optional(number("simpleBias_frac", 0, 1, 0.276)),
    ],
    fields: ["rate_per_d", "corrected_per_d", "generation_d"],
  }),
  describe("gnatsByDay", byName(gnatsByDay), {
    what: "Fungus gnats by day from newly emerged females, with cards that take adults and drenches that kill larvae.",
    source: "Leslie1945; Bradysia1998 for the rates",
    inputs: [
      ...classes,
      number("females_n", 0, 1_000_000, 10),
      number("days_d", 0, 400, 21),
      optional(number("capture_frac", 0, 1, 0.3)),
      optional(number("kill_frac", 0, 1, 0.8)),
      optional(numbers("killDays_d", Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, [7, 14, 21])),
    ],
    fields: ["eggs_n", "larvae_n", "pupae_n", "adults_n"],
  }),
  describe("steadyGnats", byName(steadyGnats), {
    what: "Daily multiplication and net reproduction of such a population at its steady mixture of ages.",
    source: "Leslie1945",
    inputs: [...classes, optional(number("capture_frac", 0, 1, 0.3))],
    fields: ["multiplication_n", "rate_per_d", "netReproduction_n"],
  }),
  describe("captureToHold_frac", byName(captureToHold_frac), {
    what: "Share of the adults that a card would have to take every day just to hold a gnat population where it is.",
    source: "Leslie1945",
    inputs: [...classes],
  }),
  describe("aphidColony", byName(aphidColony), {
    what: "Aphids from one newborn, by day, and the rule that stands in for such a run.",
    source: "Leslie1945; the rule is our assumption",
    inputs: [
      number("firstBirth_d", 1, 100, 7),
      number("young_per_d", 0.01, 100, 3.5),
      number("bearing_d", 1, 200, 15),
      number("survival_frac", 0, 1, 0.9),
      number("time_d", 0, 100, 14),
    ],
    fields: ["byRun_n", "byRule_n", "rate_per_d"],
  }),
  describe("breakEvenKill_frac", byName(breakEvenKill_frac), {
    what: "Share that each treatment of a row must kill, all stages counted, so that the colony shrinks.",
    source: "our assumption; exponential growth",
    inputs: [number("rate_per_d", -1, 2, 0.33), number("interval_d", 0.5, 60, 7)],
  }),
  describe("treatmentsNeeded_n", byName(treatmentsNeeded_n), {
    what: "Treatments that bring so many animals down to an expectation, if the interval and the kill can win at all.",
    source: "our assumption; exponential growth",
    inputs: [
      number("animals_n", 0.1, 1_000_000, 40),
      number("aim_n", 0.0001, 10, 0.05),
      number("kill_frac", 0.01, 0.9999, 0.8),
      number("interval_d", 0.5, 60, 4),
      number("rate_per_d", -1, 2, 0.25),
    ],
  }),
  describe("courseCleared", byName(courseCleared), {
    what: "What a course of treatments leaves, and the chance that it left nothing.",
    source: "our assumption; Poisson and negative binomial survivors",
    inputs: [
      number("animals_n", 0.1, 1_000_000, 40),
      number("kill_frac", 0.01, 0.9999, 0.8),
      number("treatments_n", 1, 60, 5),
      number("interval_d", 0.5, 60, 4),
      number("rate_per_d", -1, 2, 0.25),
      optional(number("survivalClumping", 0.1, 10, 0.5)),
    ],
    fields: ["survivors_n", "cleared_frac"],
  }),
  describe("courseLength_n", byName(courseLength_n), {
    what: "Treatments of a course against the one stage that it reaches, until all others have come to it.",
    source: "our assumption",
    inputs: [
      number("pupa_d", 0, 200, 4.4),
      number("femaleLife_d", 0, 200, 4.2),
      number("egg_d", 0, 200, 4.4),
      number("interval_d", 0.5, 60, 7),
    ],
  }),
  describe("agentsPerPot_n", byName(agentsPerPot_n), {
    what: "Living agents for one pot from a rate per surface.",
    source: "our assumption; geometry",
    inputs: [number("rate_per_m2", 0, 10_000_000, 250_000), number("surfaceDiameter_m", 0.01, 3, 0.1)],
  }),
  describe("concentrate", byName(concentrate), {
    what: "Concentrate for a volume of mix, as a share of the total.",
    source: "our assumption; conservation of volume",
    inputs: [
      number("total_mL", 1, 10_000_000, 1000),
      number("strength_frac", 0.00001, 1, 0.01),
      optional(number("active_frac", 0.0001, 1, 0.49)),
    ],
    fields: ["concentrate_mL", "water_mL"],
  }),
  describe("mixStrength", byName(mixStrength), {
    what: "Strength of a mix from what went in, by both ways in which labels speak.",
    source: "Cranshaw for the two habits",
    inputs: [
      number("concentrate_mL", 0.001, 1_000_000, 15),
      number("water_mL", 0.001, 10_000_000, 946),
      optional(number("active_frac", 0.0001, 1, 0.49)),
    ],
    fields: ["ofTotal_frac", "perWater_frac"],
  }),
  describe("cardRate_n", byName(cardRate_n), {
    what: "Catch of sticky cards per card and week.",
    source: "Rettke",
    inputs: [
      number("count_n", 0, 100_000, 9),
      number("cards_n", 1, 10_000, 3),
      number("days_d", 0.01, 365, 10),
    ],
  }),
  describe("cardsForRoom_n", byName(cardsForRoom_n), {
    what: "Cards for a room by the density of greenhouses, at least one.",
    source: "UConnCards",
    inputs: [number("floor_m2", 0.1, 100_000, 12), optional(number("cardsPer1000ft2_n", 0.1, 100, 4))],
  }),
  describe("leafMiss", byName(leafMiss), {
    what: "Chance that a sample of leaves shows nothing of a pest that is there.",
    source: "our assumption; negative binomial, thinned",
    inputs: [
      number("perLeaf_n", 0, 10_000, 0.5),
      number("sight_frac", 0, 1, 0.6),
      number("leaves_n", 1, 10_000, 20),
      optional(number("clumping", 0.05, 5, 0.3)),
    ],
    fields: ["missed_frac", "missedStrewn_frac"],
  }),
  describe("taylorLaw", byName(taylorLaw), {
    what: "Taylor's power law from batches: variance = a mean^b.",
    source: "SotoRojas2021",
    inputs: [
      numbers("means_n", 1e-6, 1_000_000, [1, 4, 10]),
      numbers("variances_n", 1e-9, 1e12, [2, 14, 60]),
    ],
    fields: ["taylorA", "taylorB", "clumping"],
  }),
  describe("unitsToCount_n", byName(unitsToCount_n), {
    what: "Leaves or plants to count for a mean of fixed precision.",
    source: "SotoRojas2021",
    inputs: [...taylor, number("mean_n", 0.001, 100_000, 1), optional(number("precision", 0.02, 2, 0.25))],
  }),
  describe("stopCount_n", byName(stopCount_n), {
    what: "Count at which to stop after so many units (Green's line).",
    source: "SotoRojas2021",
    inputs: [...taylor, number("units_n", 1, 100_000, 10), optional(number("precision", 0.02, 2, 0.25))],
  }),
  describe("infestedShare_frac", byName(infestedShare_frac), {
    what: "Share of units with at least one animal, from the mean.",
    source: "our assumption; Wilson and Room's form, from memory",
    inputs: [...taylor, number("mean_n", 0, 100_000, 1)],
  }),
  describe("meanOfInfested_n", byName(meanOfInfested_n), {
    what: "Mean per unit from the share of infested units: the former, turned round.",
    source: "our assumption; Wilson and Room's form, from memory",
    inputs: [...taylor, number("infested_frac", 0, 0.8, 0.45)],
  }),
  describe("sequentialLooks", byName(sequentialLooks), {
    what: "Looking at plants one by one until the answer is clear (Wald's sequential test).",
    source: "Wald1947",
    inputs: [
      number("fine_frac", 0.001, 0.9, 0.05),
      number("tooMany_frac", 0.002, 0.95, 0.2),
      number("falseAlarm_frac", 0.001, 0.4, 0.1),
      number("falseCalm_frac", 0.001, 0.4, 0.1),
    ],
    fields: ["slope", "accept_n", "reject_n", "cleanInARow_n"],
  }),
  describe("ownSight_frac", byName(ownSight_frac), {
    what: "A person's own eye, from looks that somebody else repeated.",
    source: "our assumption",
    inputs: [number("foundToo_n", 0, 10_000, 2), number("missed_n", 0, 10_000, 3)],
  }),
  describe("twoPeriods", byName(twoPeriods), {
    what: "Whether two periods of a card differ, counts against card-days.",
    source: "our assumption; the exact conditional test",
    inputs: [
      number("first_n", 0, 100_000, 11),
      number("firstExposure_d", 0.01, 1_000_000, 800),
      number("second_n", 0, 100_000, 21),
      number("secondExposure_d", 0.01, 1_000_000, 3011),
    ],
    fields: ["rateRatio", "luck_frac", "luckTwiceTail_frac"],
  }),
  describe("cardTrend", byName(cardTrend), {
    what: "Trend of card counts: does it grow, how fast, and could it be luck.",
    source: "our assumption; Poisson regression",
    inputs: [
      numbers("times_d", -10_000, 10_000, [0, 7, 14, 21, 28]),
      numbers("counts_n", 0, 100_000, [12, 15, 9, 6, 3]),
      numbers("exposures_d", 0.01, 1_000_000, [35, 35, 35, 35, 35]),
    ],
    fields: ["slope_per_d", "se_per_d", "z", "dispersion", "doubling_d", "says"],
  }),
  describe("silence_frac", byName(silence_frac), {
    what: "Whether a pest that was caught for a while may be gone, from its record of catches (not for what comes in cohorts).",
    source: "Solow1993",
    inputs: [
      number("catches_n", 1, 10_000, 9),
      number("last_d", 0, 10_000, 20),
      number("watched_d", 0.01, 10_000, 34),
    ],
  }),
  describe("growingExposure", byName(growingExposure), {
    what: "Exposure of clean looks at a pest that grows from a founder of the first day at a steady rate.",
    source: "our assumption: Bayes with growing detectability",
    inputs: [
      number("rate_per_d", -1, 2, 0.27),
      number("lag_d", 0, 100, 3.6),
      number("sight_frac", 0, 1, 0.3),
      number("founders_n", 0.1, 10_000, 1),
      numbers("looks_d", 0, 1000, [7, 14]),
      odds,
    ],
    fields: ["exposure", "free_frac"],
  }),
  describe("cohortOnCard", byName(cohortOnCard), {
    what: "Exposure of a card to a cohort of gnats that were eggs on the first day, none unlike another.",
    source: "our assumption: Bayes with growing detectability; Bradysia1998 for the times",
    inputs: [
      number("eggToAdult_d", 0.1, 200, 22.2),
      number("adultLife_d", 0.1, 200, 4.2),
      number("founders_n", 0.1, 10_000, 3),
      number("catch_per_d", 0, 1, 0.2),
      number("day_d", 0, 1000, 28),
      odds,
    ],
    fields: ["exposure", "free_frac"],
  }),
];
