import { beliefOf } from "../catalogue/belief-of.ts";
import { byName, describeField, single } from "../catalogue/describe.ts";
import { number, numbers, optional, yesOrNo } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  carryToOthers,
  coverage_frac,
  crpsOfNormal,
  crpsOfSample,
  crpsOfSampleCut,
  inverseMillsRatio,
  linearUpdate,
  momentMatch,
  normalDensity,
  normalProbability,
  normalQuantile,
  pinballLoss,
  probabilityTransform,
  probitUpdate,
  sampleQuantile,
  sampleQuantiles,
} from "./index.ts";

const describe = describeField("chance");

export const chanceCatalogue: readonly ScienceFunction[] = [
  describe("normalDensity", single(normalDensity), {
    what: "Density of the standard normal distribution.",
    source: "our assumption; the definition",
    inputs: [number("z", -1e9, 1e9, 1)],
  }),
  describe("normalProbability", single(normalProbability), {
    what: "Standard normal distribution function: the chance of a score at most z.",
    source: "Cody1969",
    inputs: [number("z", -1e9, 1e9, 1)],
  }),
  describe("inverseMillsRatio", single(inverseMillsRatio), {
    what: "Density over probability, φ(z)/Φ(z), without underflow far down the lower tail.",
    source: "Cody1969",
    inputs: [number("z", -1e9, 1e9, 1)],
  }),
  describe("normalQuantile", single(normalQuantile), {
    what: "Standard normal quantile, the inverse of the distribution function, good to about 15 digits.",
    source: "Wichura1988",
    inputs: [number("probability", 1e-300, 1 - 1e-16, 0.9)],
  }),
  describe("probitUpdate", byName(probitUpdate), {
    what: "Update a normal belief with a yes-or-no look.",
    source: "our assumption; moments of a normal times a normal distribution function, closed form",
    inputs: [
      number("mean", -1e9, 1e9, 100),
      number("variance", 0, 1e12, 400),
      number("threshold", -1e9, 1e9, 120),
      number("spread", 1e-6, 1e9, 30),
      yesOrNo("yes", true),
    ],
    fields: ["probability", "mean", "variance"],
  }),
  describe("sampleQuantile", byName(sampleQuantile), {
    what: "A quantile of a sample, by linear interpolation between its ordered values.",
    source: "HyndmanFan1996",
    inputs: [numbers("sample", -1e300, 1e300, [1, 2, 4, 5]), number("probability", 0, 1, 0.5)],
  }),
  describe("sampleQuantiles", byName(sampleQuantiles), {
    what: "Several quantiles of a sample at one sorting.",
    source: "HyndmanFan1996",
    inputs: [numbers("sample", -1e300, 1e300, [1, 2, 4, 5]), numbers("probabilities", 0, 1, [0.1, 0.5, 0.9])],
  }),
  describe("crpsOfNormal", byName(crpsOfNormal), {
    what: "Continuous ranked probability score of a normal forecast: 0 is perfect; for a bare point it is the absolute error.",
    source: "GneitingRaftery2007",
    inputs: [number("mean", -1e9, 1e9, 3), number("sd", 0, 1e9, 0.6), number("observed", -1e9, 1e9, 4)],
  }),
  describe("crpsOfSample", byName(crpsOfSample), {
    what: "Continuous ranked probability score of an ensemble of equally likely values.",
    source: "GneitingRaftery2007",
    inputs: [numbers("sample", -1e12, 1e12, [1, 2, 4, 5]), number("observed", -1e12, 1e12, 3)],
  }),
  describe("crpsOfSampleCut", byName(crpsOfSampleCut), {
    what: "The same score when the event was cut short: it is only known that nothing had happened by the moment of cutting.",
    source: "GneitingRaftery2007, threshold-weighted form (from memory)",
    inputs: [
      numbers("sample", -1e12, 1e12, [1, 2, 4, 5]),
      number("observed", -1e12, 1e12, 3),
      number("cut", -1e12, 1e12, 4),
    ],
  }),
  describe("probabilityTransform", byName(probabilityTransform), {
    what: "Where what came true stands in an ensemble; over many forecasts these must be spread evenly from 0 to 1.",
    source: "GneitingRaftery2007",
    inputs: [
      numbers("sample", -1e12, 1e12, [1, 2, 4, 5]),
      number("observed", -1e12, 1e12, 3),
      optional(number("tie", 0, 1, 0.5)),
    ],
  }),
  describe("pinballLoss", byName(pinballLoss), {
    what: "Pinball loss of a forecast quantile: what it costs to be on the wrong side.",
    source: "GneitingRaftery2007",
    inputs: [
      number("forecast", -1e12, 1e12, 3),
      number("observed", -1e12, 1e12, 3),
      number("probability", 0, 1, 0.9),
    ],
  }),
  describe("coverage_frac", byName(coverage_frac), {
    what: "Share of forecasts whose range held what came true.",
    source: "GneitingRaftery2007",
    inputs: [
      numbers("low", -Infinity, Infinity, [1, 1]),
      numbers("high", -Infinity, Infinity, [2, 2]),
      numbers("observed", -1e12, 1e12, [1.5, 3]),
    ],
  }),
  describe(
    "momentMatch",
    ({ weights, mean, variances }) => {
      const parts = (weights as readonly number[]).map((weight, i) => ({
        weight,
        mean: (mean as readonly number[])[i] ?? Number.NaN,
        variance: (variances as readonly number[])[i] ?? Number.NaN,
      }));
      return momentMatch(parts);
    },
    {
      what: "The one normal distribution with the mean and variance of a mixture.",
      source: "our assumption; moments of a mixture, closed form",
      inputs: [
        numbers("weights", 0, 1e12, [1, 1]),
        numbers("mean", -1e12, 1e12, [0, 4]),
        numbers("variances", 0, 1e15, [1, 1]),
      ],
      fields: ["mean", "variance"],
    },
  ),
  describe(
    "linearUpdate",
    (values) => {
      const reading = values as unknown as Omit<Parameters<typeof linearUpdate>[0], "belief">;
      const update = linearUpdate({ ...reading, belief: beliefOf(values) });
      return { ...update, ...update.belief };
    },
    {
      what: "Update a normal belief with one reading that is a weighted sum of its quantities (Kalman's update for a scalar).",
      source: "Kalman1960",
      inputs: [
        numbers("mean", -1e12, 1e12, [64, 3, 850]),
        numbers("covariance", -1e15, 1e15, [75, 1, 0, 1, 0.05, 0, 0, 0, 9]),
        numbers("weights", -1e9, 1e9, [-1, 0, 1]),
        number("value", -1e12, 1e12, 785),
        number("variance", 1e-12, 1e12, 4),
        optional(number("gate", 1, 1e6, 4)),
      ],
      fields: ["mean", "covariance", "innovation", "innovationVariance", "gain", "surprise", "accepted"],
    },
  ),
  describe(
    "carryToOthers",
    (values) =>
      carryToOthers({
        belief: beliefOf(values),
        index_n: values["index_n"] as number,
        learnedMean: values["learnedMean"] as number,
        learnedVariance: values["learnedVariance"] as number,
      }),
    {
      what: "Carry what was learned about one quantity of a belief to the others.",
      source: "our assumption; conditional moments of the normal distribution",
      inputs: [
        numbers("mean", -1e12, 1e12, [40, 3, 850]),
        numbers("covariance", -1e15, 1e15, [16, 1, 0, 1, 0.5, 0, 0, 0, 9]),
        number("index_n", 0, 2, 0),
        number("learnedMean", -1e12, 1e12, 45),
        number("learnedVariance", 0, 1e15, 9),
      ],
      fields: ["mean", "covariance"],
    },
  ),
];
