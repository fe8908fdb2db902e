import { beliefOf } from "../catalogue/belief-of.ts";
import { byName, describeField, single } from "../catalogue/describe.ts";
import { anyNumber, assumed, choice, number, numbers, optional, yesOrNo } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  adjustedFieldDepletion_frac,
  capturedShare_frac,
  checkQuantile,
  containerCapacity_frac,
  depletionAfterWatering,
  depletionStep,
  dryDown,
  dryWithin,
  hasDryCore,
  isAirless,
  leachingRequirement_frac,
  potStore_g,
  pourFor,
  rewettingPlan,
  screenNightShare,
  screenPour,
  screenWeight,
  soilStore,
  stressCoefficient,
  suctionAtHeight_kPa,
  useDeclineThreshold_frac,
  visitToWater_n,
  waterAssumptions,
  wateringDate,
} from "./index.ts";

const describe = describeField("water");

export const potCatalogue: readonly ScienceFunction[] = [
  describe("depletionAfterWatering", byName(depletionAfterWatering), {
    what: "Belief about a pot's depletion after a watering, from what was poured and whether water ran out.",
    source: "our assumption; mixtures with exact moments",
    inputs: [
      number("depletion_g", -1e4, 1e5, 100),
      number("variance_g2", 0, 1e9, 400),
      number("store_g", 1, 1e6, 200),
      number("poured_mL", 1, 1e5, 150),
      choice("drained", ["yes", "no", "unknown"], "yes"),
      optional(number("leachate_mL", 0, 1e5, 20)),
      ...assumed(
        waterAssumptions,
        "pourSpread_frac",
        "wettedMean_frac",
        "wettedSd_frac",
        "bypassCapture_frac",
      ),
    ],
    fields: ["mean_g", "variance_g2", "drained", "bypass", "forgets"],
  }),
  describe("pourFor", byName(pourFor), {
    what: "Water to pour to bring a pot to a target depletion, with a share of leachate.",
    source: "ENH1268 for the leaching fraction",
    inputs: [
      number("depletion_g", 0, 1e5, 100),
      number("leaching_frac", 0, 0.5, 0.1),
      optional(number("target_g", 0, 1e5, 0)),
      optional(number("captured_frac", 0.1, 1, 1)),
    ],
    fields: ["pour_g", "leachate_g"],
  }),
  describe("leachingRequirement_frac", byName(leachingRequirement_frac), {
    what: "Share of the water that must leach to hold salts at a crop's threshold.",
    source: "FAO29",
    inputs: [number("waterEc_mS_cm", 0, 20, 0.5), optional(number("saltThreshold_mS_cm", 0.5, 10, 1.5))],
  }),
  describe("capturedShare_frac", byName(capturedShare_frac), {
    what: "Share of a pour that a medium keeps at a depletion: dry media shed water.",
    source: "our assumption",
    inputs: [
      number("depletion_frac", 0, 1.5, 0.4),
      choice("rewetting", ["peat", "wood fibre, coir or mineral"], "peat"),
      ...assumed(waterAssumptions, "captureMoist_frac", "captureDryPeat_frac", "captureDryOther_frac"),
    ],
  }),
  describe("rewettingPlan", byName(rewettingPlan), {
    what: "Pours that bring a pot back to full: one while it is moist, several with waits once it sheds water.",
    source: "our assumption; pulses and waits are common practice, no source",
    inputs: [
      number("depletion_g", 0, 1e5, 100),
      number("store_g", 1, 1e6, 200),
      number("leaching_frac", 0, 0.5, 0.1),
      choice("rewetting", ["peat", "wood fibre, coir or mineral"], "peat"),
      ...assumed(
        waterAssumptions,
        "captureMoist_frac",
        "captureDryPeat_frac",
        "captureDryOther_frac",
        "pulseMax_frac",
        "pulseWait_min",
      ),
    ],
    fields: ["pours_g", "wait_min", "total_g", "soakInstead"],
  }),
  describe("hasDryCore", byName(hasDryCore), {
    what: "Whether two pours show a dry core: together they added less than half of what was poured. Then soak from below.",
    source: "our assumption",
    inputs: [
      number("firstPour_g", 1, 1e5, 50),
      number("firstGain_g", 0, 1e5, 15),
      number("secondPour_g", 1, 1e5, 50),
      number("secondGain_g", 0, 1e5, 20),
    ],
  }),
  describe("screenWeight", byName(screenWeight), {
    what: "Look over the weight of a pot beside what was expected.",
    source: "our assumption",
    inputs: [
      anyNumber("weight_g", 786),
      anyNumber("expected_g", 786),
      anyNumber("sd_g", 9),
      yesOrNo("wateredSince", false),
    ],
  }),
  describe("screenPour", byName(screenPour), {
    what: "Look over a poured volume.",
    source: "our assumption",
    inputs: [anyNumber("poured_mL", 150), anyNumber("store_g", 200), optional(anyNumber("gain_g", 140))],
  }),
  describe("screenNightShare", single(screenNightShare), {
    what: "Look over the share of a pot's daily use that falls in the dark.",
    source: "our assumption",
    inputs: [anyNumber("nightShare_frac", 0.12)],
  }),
  describe("suctionAtHeight_kPa", single(suctionAtHeight_kPa), {
    what: "Suction of the water at a height above the bottom of a drained pot.",
    source: "Passioura2006",
    inputs: [number("height_cm", 0, 200, 10)],
  }),
  describe("containerCapacity_frac", byName(containerCapacity_frac), {
    what: "Share of water in a drained pot, from the water that the medium holds at each suction.",
    source: "Passioura2006",
    inputs: [
      number("height_cm", 1, 100, 10),
      numbers("suctions_kPa", 0, 100, [0, 1, 5]),
      numbers("waters_frac", 0, 1, [0.9, 0.6, 0.4]),
    ],
  }),
  describe("potStore_g", byName(potStore_g), {
    what: "Water that a pot can give its plant between drained and lasting wilt, estimated from the medium.",
    source: "our assumption; definition of the store",
    inputs: [
      number("medium_mL", 1, 1e6, 700),
      number("drainedWater_frac", 0, 1, 0.6),
      number("wiltingWater_frac", 0, 1, 0.15),
    ],
  }),
  describe("soilStore", byName(soilStore), {
    what: "Water that a rooted field soil can give, and the part that is given freely.",
    source: "FAO56 eqs 82 and 83",
    inputs: [
      number("fieldCapacity_frac", 0, 1, 0.32),
      number("wiltingWater_frac", 0, 1, 0.15),
      number("rootDepth_m", 0.01, 5, 0.8),
      number("depletionFreely_frac", 0.1, 0.8, 0.4),
    ],
    fields: ["total_mm", "freely_mm"],
  }),
  describe("stressCoefficient", byName(stressCoefficient), {
    what: "How far a thirsty plant uses less than it would.",
    source: "FAO56 eq. 84",
    inputs: [number("depletion_frac", 0, 1.5, 0.4), number("threshold_frac", 0, 0.95, 0.65)],
  }),
  describe("dryDown", byName(dryDown), {
    what: "A dry-down day by day: the stress of a day comes from the depletion at the end of the day before.",
    source: "FAO56 example 37",
    inputs: [
      number("store", 0.1, 1e6, 160),
      number("depletionStart", 0, 1e6, 55),
      number("usePerDay", 0, 1e5, 6),
      number("threshold_frac", 0, 0.95, 0.65),
      number("days_n", 1, 1000, 10),
    ],
    fields: ["stressCoefficients", "depletions"],
  }),
  describe("adjustedFieldDepletion_frac", byName(adjustedFieldDepletion_frac), {
    what: "Depletion without loss of growth in the field, adjusted for the demand of the air.",
    source: "FAO56 Table 22, footnote",
    inputs: [number("depletionTable_frac", 0.1, 0.8, 0.3), number("cropEt_mm_d", 0, 20, 5)],
  }),
  describe("useDeclineThreshold_frac", byName(useDeclineThreshold_frac), {
    what: "Depletion at which use begins to fall, from three measured water contents.",
    source: "our assumption; definition of relative depletion",
    inputs: [
      number("fullWater_frac", 0, 1, 0.5),
      number("declineWater_frac", 0, 1, 0.28),
      number("stopWater_frac", 0, 1, 0.16),
    ],
  }),
  describe("isAirless", byName(isAirless), {
    what: "Whether a pot this full counts as airless: hardly depleted, and low or full of roots.",
    source: "our assumption",
    inputs: [
      number("depletion_frac", 0, 1.5, 0.4),
      number("height_cm", 1, 100, 10),
      yesOrNo("rootbound", false),
    ],
  }),
  describe("wateringDate", byName(wateringDate), {
    what: "When a pot will have dried to its mark, with a steady driver and a known start.",
    source: "our assumption; lognormal in closed form",
    inputs: [
      number("remaining_g", 0.001, 1e6, 60),
      number("use_g_d", 0.001, 1e5, 20),
      number("sdLnUse", 0, 3, 0.2),
      optional(number("sdLnDriver", 0, 3, 0)),
      optional(number("effectiveDays_d", 0.1, 1000, 1)),
    ],
    fields: ["median_d", "q10_d", "q20_d", "q90_d"],
  }),
  describe("dryWithin", byName(dryWithin), {
    what: "Chance that a pot will have dried to its mark within so many days.",
    source: "our assumption; lognormal in closed form",
    inputs: [
      number("remaining_g", 0.001, 1e6, 60),
      number("use_g_d", 0.001, 1e5, 20),
      number("sdLnUse", 0, 3, 0.2),
      optional(number("sdLnDriver", 0, 3, 0)),
      optional(number("effectiveDays_d", 0.1, 1000, 1)),
      number("within_d", 0.001, 1000, 2),
    ],
  }),
  describe("checkQuantile", byName(checkQuantile), {
    what: "How sure of dryness one may become before checking: the quantile at which to look.",
    source: "our assumption; the newsvendor quantile",
    inputs: [number("costEarly", 0, 1e6, 1), number("costLate", 0, 1e6, 4)],
  }),
  describe("visitToWater_n", byName(visitToWater_n), {
    what: "The visit at which to water: the last one before the chance of dryness by the following visit exceeds the quantile.",
    source: "our assumption",
    inputs: [numbers("dryBy", 0, 1, [0.01, 0.1, 0.3, 0.8]), number("quantile", 0, 1, 0.2)],
  }),
  describe(
    "depletionStep",
    (values) => {
      const step = values as unknown as Omit<Parameters<typeof depletionStep>[0], "belief">;
      const after = depletionStep({ ...step, belief: beliefOf(values) });
      return { ...after.belief, use_g: after.use_g };
    },
    {
      what: "One step of a pot drying: what it used, and how much less sure we are.",
      source: "our assumption; extended Kalman prediction",
      inputs: [
        numbers("mean", -Infinity, Infinity, [40, 0, 850]),
        numbers("covariance", -Infinity, Infinity, [16, 0, 0, 0, 0.04, 0, 0, 0, 9]),
        number("driver_g_d", 0, 1e5, 24),
        number("length_d", 0.001, 31, 1),
        optional(number("stressCoefficient", 0, 1, 1)),
        optional(number("rain_g", 0, 1e5, 0)),
        optional(number("dayError_frac", 0, 2, 0.25)),
        optional(number("lnUseWalk_sqrtd", 0, 2, 0.06)),
        optional(number("drainedWalk_g_sqrtd", 0, 100, 0.7)),
        optional(number("drainedDrift_g_d", -50, 50, 0)),
      ],
      fields: ["mean", "covariance", "use_g"],
    },
  ),
];
