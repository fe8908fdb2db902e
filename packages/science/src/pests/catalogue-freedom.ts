import { byName, describeField } from "../catalogue/describe.ts";
import { choice, number, numbers, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  arrivalWithin_frac,
  batchMethods,
  batchSensitivity_frac,
  cleanVisits,
  detectableShare_frac,
  exactInterval,
  exposureNeeded,
  finds_frac,
  freeAfterClean_frac,
  freedomReached,
  freeNextPeriod_frac,
  movedBelief_frac,
  noneSeen,
  releaseNow,
  riskGroups,
  sampleSensitivity_frac,
  sensitivityNeeded_frac,
  surveysWorth_n,
  unitMethods,
  unitsForBatch_n,
  unitsForSample_n,
  unitsWithFalseFinds_n,
  waysTogether,
} from "./index.ts";

const describe = describeField("pests");
const sight = optional(number("sight_frac", 0, 1, 0.8));
const sightLeast = optional(number("sight_frac", 0.001, 1, 0.8));
const prior = number("prior_frac", 0, 1, 0.5);

/** Freedom from pests: samples, batches, periods, decisions. */
export const freedomCatalogue: readonly ScienceFunction[] = [
  describe("sampleSensitivity_frac", byName(sampleSensitivity_frac), {
    what: "Chance that a sample from a large batch shows a pest that sits on a share of its plants.",
    source: "RSurveillance",
    inputs: [number("units_n", 0, 1_000_000, 20), number("prevalence_frac", 0, 1, 0.05), sight],
  }),
  describe("batchSensitivity_frac", byName(batchSensitivity_frac), {
    what: "The same for a batch of known size: exact by the hypergeometric, or 1 − (1 − n Se/N)^d.",
    source: "RSurveillance",
    inputs: [
      number("batch_n", 1, 100_000, 100),
      number("infested_n", 0, 100_000, 5),
      number("units_n", 0, 100_000, 30),
      sight,
      optional(choice("method", batchMethods, "exact")),
    ],
  }),
  describe("unitsForSample_n", byName(unitsForSample_n), {
    what: "Plants of a large batch to look at so that a share of infested ones would show.",
    source: "RSurveillance",
    inputs: [
      number("confidence_frac", 0.01, 0.99999, 0.95),
      number("prevalence_frac", 0.00001, 1, 0.05),
      sightLeast,
    ],
  }),
  describe("unitsForBatch_n", byName(unitsForBatch_n), {
    what: "Plants of a batch of known size to look at so that so many infested ones would show.",
    source: "RSurveillance; the middle form after Cannon and Roe, from memory",
    inputs: [
      number("confidence_frac", 0.01, 0.99999, 0.95),
      number("batch_n", 1, 100_000, 200),
      number("infested_n", 1, 100_000, 10),
      sightLeast,
      optional(choice("method", unitMethods, "exact")),
    ],
  }),
  describe("detectableShare_frac", byName(detectableShare_frac), {
    what: "Share of infested plants in a batch that a clean sample still leaves possible.",
    source: "RSurveillance",
    inputs: [
      number("units_n", 1, 100_000, 50),
      number("batch_n", 1, 100_000, 500),
      number("confidence_frac", 0.01, 0.99999, 0.95),
      sightLeast,
    ],
  }),
  describe("waysTogether", byName(waysTogether), {
    what: "Several ways of looking at one plant, taken together.",
    source: "RSurveillance",
    inputs: [numbers("sights_frac", 0, 1, [0.5, 0.3])],
    fields: ["either_frac", "all_frac"],
  }),
  describe("riskGroups", byName(riskGroups), {
    what: "Groups of unlike risk: each group's risk against the mean, and the chance that looking at some of each shows the pest.",
    source: "RSurveillance",
    inputs: [
      numbers("risks_n", 0.001, 1000, [5, 3, 1]),
      numbers("shares_frac", 0, 1, [0.1, 0.1, 0.8]),
      optional(number("prevalence_frac", 0, 1, 0.1)),
      optional(numbers("units_n", 0, 100_000, [5, 5, 5])),
      sight,
    ],
    fields: ["adjusted_n", "sensitivity_frac"],
  }),
  describe("finds_frac", byName(finds_frac), {
    what: "Chance of at least so many finds where clean plants can be taken for infested ones.",
    source: "CameronBaldock1998",
    inputs: [
      number("units_n", 1, 5000, 30),
      number("least_n", 0, 5000, 2),
      number("sight_frac", 0, 1, 0.9),
      number("specificity_frac", 0, 1, 0.98),
      number("prevalence_frac", 0, 1, 0.1),
    ],
  }),
  describe("unitsWithFalseFinds_n", byName(unitsWithFalseFinds_n), {
    what: "Smallest sample that tells an infested batch from a clean one though clean plants can be taken for infested ones.",
    source: "CameronBaldock1998",
    inputs: [
      number("batch_n", 10, 20_000, 500),
      number("prevalence_frac", 0.001, 1, 0.1),
      number("sight_frac", 0.5, 1, 0.9),
      number("specificity_frac", 0.5, 1, 0.98),
      number("accepted_n", 0, 100, 3),
      optional(number("confidence_frac", 0.5, 0.999, 0.95)),
    ],
  }),
  describe("exactInterval", byName(exactInterval), {
    what: "Exact 95 % interval of a share (Clopper and Pearson).",
    source: "RSurveillance",
    inputs: [
      number("with_n", 0, 100_000, 25),
      number("of_n", 1, 100_000, 200),
      optional(number("confidence_frac", 0.5, 0.999, 0.95)),
    ],
    fields: ["low_frac", "high_frac"],
  }),
  describe("noneSeen", byName(noneSeen), {
    what: "Upper 95 % bound of a share of which none was seen: three over n, and exactly.",
    source: "our assumption; the rule of three",
    inputs: [number("units_n", 1, 1_000_000, 30)],
    fields: ["rule_frac", "exact_frac"],
  }),
  describe("freeAfterClean_frac", byName(freeAfterClean_frac), {
    what: "Chance that a plant or batch is free after a clean look.",
    source: "Martin2007",
    inputs: [prior, number("sensitivity_frac", 0, 1, 0.6)],
  }),
  describe("freeNextPeriod_frac", byName(freeNextPeriod_frac), {
    what: "The same chance after a time in which something may have come in.",
    source: "Martin2007",
    inputs: [prior, number("arrival_frac", 0, 1, 0.01)],
  }),
  describe("arrivalWithin_frac", byName(arrivalWithin_frac), {
    what: "Chance of an arrival within some days from the chance of one.",
    source: "our assumption; independent days",
    inputs: [number("arrival_per_d", 0, 1, 0.002), number("days_d", 0, 10_000, 7)],
  }),
  describe("freedomReached", byName(freedomReached), {
    what: "The chance of being free that looking again and again comes to, against arrivals; and after how many periods.",
    source: "RSurveillance",
    inputs: [
      number("sensitivity_frac", 0.001, 1, 0.6),
      number("arrival_frac", 0, 0.9, 0.02),
      optional(number("prior_frac", 0.001, 0.999, 0.5)),
      optional(number("reached_frac", 0.001, 1, 0.95)),
    ],
    fields: ["end_frac", "periods_n"],
  }),
  describe("sensitivityNeeded_frac", byName(sensitivityNeeded_frac), {
    what: "What a look must be able to show so that a clean one brings a chance of being free up to a target.",
    source: "RSurveillance",
    inputs: [
      number("prior_frac", 0.001, 0.999, 0.5),
      number("target_frac", 0.001, 0.99999, 0.95),
      optional(number("arrival_frac", 0, 0.9, 0.01)),
    ],
  }),
  describe("cleanVisits", byName(cleanVisits), {
    what: "Clean visits after which a pest is taken not to be there, and what is believed after some.",
    source: "Kery2002; Wintle2012 with a prior",
    inputs: [
      number("found_frac", 0.001, 0.999, 0.46),
      optional(number("left_frac", 0.0001, 0.5, 0.05)),
      optional(number("present_frac", 0.001, 0.999, 0.5)),
      optional(number("made_n", 0, 10_000, 4)),
    ],
    fields: ["visits_n", "present_frac"],
  }),
  describe("exposureNeeded", byName(exposureNeeded), {
    what: "Detection exposure that clean looks must add up to.",
    source: "our assumption; Bayes with exp(−Λ) as the chance to have missed it",
    inputs: [number("odds", 0.0001, 10_000, 1), number("target_frac", 0.01, 0.99999, 0.95)],
  }),
  describe("releaseNow", byName(releaseNow), {
    what: "Whether one more look is worth its price before a plant goes.",
    source: "Regan2006 for the idea; our assumption for one look ahead",
    inputs: [
      number("infested_frac", 0, 1, 0.02),
      number("nextFinds_frac", 0, 1, 0.8),
      number("escape_minor", 0, 1e9, 6000),
      number("treat_minor", 0, 1e9, 500),
      number("look_minor", 0, 1e9, 150),
    ],
    fields: ["gain_minor", "release"],
  }),
  describe("surveysWorth_n", byName(surveysWorth_n), {
    what: "Clean surveys after which looking on costs more than it saves.",
    source: "Regan2006",
    inputs: [
      number("survey_minor", 0.01, 1e9, 150),
      number("escape_minor", 0.01, 1e9, 6000),
      number("presentUnseen_frac", 0.001, 0.999, 0.5),
    ],
  }),
  describe("movedBelief_frac", byName(movedBelief_frac), {
    what: "A belief moved by likelihood ratios, each weakened where signs hang together.",
    source: "Yuen2006",
    inputs: [
      number("prior_frac", 0.0001, 0.9999, 0.2),
      numbers("ratios_n", 0.0001, 10_000, [6, 0.5]),
      optional(numbers("weights_frac", 0, 1, [0.7, 0.7])),
    ],
  }),
];
