import { byName, describeField, single } from "../catalogue/describe.ts";
import { anyNumber, assumed, choice, number, numbers, optional, yesOrNo } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  combinedError,
  compensationLight_umol_m2_s,
  creditedLight_umol_m2_s,
  dailyLight_mol_m2_d,
  dayLengthCap,
  dayLengthCaps,
  fluxFromLumens_umol_s,
  leafAssumptions,
  leafPhotosynthesis_umol_m2_s,
  lightAssumptions,
  lightNeeds,
  lightOfSpectrum,
  lightOfSteps_mol_m2_d,
  lightSourceRatios,
  lightVerdict,
  luxFromPpfd_lx,
  meterGain,
  photonsOfDaylight_mol_MJ,
  ppfdFromLux_umol_m2_s,
  screenFlatTop,
  screenLightReading,
  spotCalibration,
} from "./index.ts";

const describe = describeField("light");
const source = choice("source", [...Object.keys(lightSourceRatios), "red and blue"], "white LED");
const ownRatio = optional(number("light_lx_per_umol", 30, 120, 68));
const ppfd = number("ppfd_umol_m2_s", 0, 3000, 200);
const leafCurve = assumed(
  leafAssumptions,
  "quantumYield",
  "curvature",
  "photosynthesisMax_umol_m2_s",
  "respiration_umol_m2_s",
);

/** Units of light, readings and their errors, what plants need of it. */
export const lightReadingCatalogue: readonly ScienceFunction[] = [
  describe("ppfdFromLux_umol_m2_s", byName(ppfdFromLux_umol_m2_s), {
    what: "Photons in light that was read in lux.",
    source: "ThimijanHeins1983; CIE015",
    inputs: [number("illuminance_lx", 0, 200_000, 6800), source, ownRatio],
  }),
  describe("luxFromPpfd_lx", byName(luxFromPpfd_lx), {
    what: "Lux of light whose photons are known.",
    source: "ThimijanHeins1983; CIE015",
    inputs: [ppfd, source, ownRatio],
  }),
  describe("fluxFromLumens_umol_s", byName(fluxFromLumens_umol_s), {
    what: "Photons that leave a lamp of which only the lumens are known.",
    source: "ThimijanHeins1983; CIE015",
    inputs: [number("luminousFlux_lm", 0, 1_000_000, 806), source],
  }),
  describe("dailyLight_mol_m2_d", byName(dailyLight_mol_m2_d), {
    what: "Daily light of a steady light.",
    source: "our assumption; arithmetic",
    inputs: [ppfd, number("lit_h", 0, 24, 12)],
  }),
  describe("lightOfSteps_mol_m2_d", byName(lightOfSteps_mol_m2_d), {
    what: "Daily light from readings through the day, each standing for an equal step.",
    source: "our assumption; arithmetic",
    inputs: [numbers("steps_umol_m2_s", 0, 3000, [100, 300]), number("step_min", 0.01, 1440, 60)],
  }),
  describe("photonsOfDaylight_mol_MJ", byName(photonsOfDaylight_mol_MJ), {
    what: "Photosynthetic photons per energy of daylight.",
    source: "FaustLogan2018; ThimijanHeins1983",
    inputs: assumed(lightAssumptions, "parShare_frac", "daylightPhotons_umol_J"),
  }),
  describe("lightOfSpectrum", byName(lightOfSpectrum), {
    what: "Lux per photon and photons per energy of light whose spectrum is known.",
    source: "CIE015",
    inputs: [
      numbers("wavelengths_nm", 200, 1200, [400, 500, 600, 700]),
      numbers("spectralPower", 0, 1e12, [1, 1, 1, 1]),
    ],
    fields: ["light_lx_per_umol", "photons_umol_J"],
  }),
  describe("spotCalibration", byName(spotCalibration), {
    what: "Calibration of a spot from two readings within two minutes on an evenly overcast day: at the leaf, and outdoors under open sky.",
    source: "our assumption; common practice of daylight factors",
    inputs: [
      number("readInside", 0.01, 200_000, 1400),
      number("readOutside", 0.01, 200_000, 9000),
      number("modelled_frac", 0.00001, 1, 0.2),
    ],
    fields: ["spotRatio", "state", "ask"],
  }),
  describe("meterGain", byName(meterGain), {
    what: "Gain of a meter from one reading in full sun: clear sky, sun above 30°, held level.",
    source: "Haurwitz1945; FaustLogan2018; ThimijanHeins1983; error our assumption",
    inputs: [
      number("apparentElevation_deg", 30, 90, 50),
      number("reading", 0.01, 200_000, 1600),
      yesOrNo("inLux", false),
    ],
    fields: ["expected", "gain", "error_frac"],
  }),
  describe("screenLightReading", byName(screenLightReading), {
    what: "Look over a reading of light before it is used.",
    source: "our assumption",
    inputs: [
      anyNumber("reading", 4000),
      yesOrNo("inLux", true),
      number("apparentElevation_deg", -90, 90, 40),
      yesOrNo("indoors", true),
      optional(number("offLevel_deg", 0, 90, 0)),
      optional(number("fromShadow_m", 0, 100, 1)),
    ],
  }),
  describe("screenFlatTop", single(screenFlatTop), {
    what: "Look over a run of readings for a meter at its end: phones clip bright light to one value.",
    source: "our assumption",
    inputs: [numbers("readings", -Infinity, Infinity, [200, 900, 1000, 1000, 1000])],
  }),
  describe("combinedError", single(combinedError), {
    what: "Root of the sum of squares of independent relative errors, with its 80 % range.",
    source: "our assumption; arithmetic of independent errors",
    inputs: [numbers("errors_frac", 0, 3, [0.05, 0.04, 0.15, 0.05, 0.1])],
    fields: ["error_frac", "low_frac", "high_frac", "largest_n", "halved_frac"],
  }),
  describe("dayLengthCap", byName(dayLengthCap), {
    what: "Longest day for a plant, lamp and daylight together.",
    source: "DemersGosselin2002 for annuum; Yamamoto2007 for frutescens; the rest our assumption",
    inputs: [
      choice("species", Object.keys(dayLengthCaps), "annuum"),
      yesOrNo("flowersWanted", true),
      optional(number("ownCap_h", 0, 24, 15)),
    ],
    fields: ["cap_h", "limit_h"],
  }),
  describe("lightVerdict", byName(lightVerdict), {
    what: "Whether a daily light suits a stage, and by how much it is short or over.",
    source: "our assumption; needs as `lightNeeds` says",
    inputs: [
      choice("stage", Object.keys(lightNeeds), "training"),
      number("light_mol_m2_d", 0, 80, 9),
      optional(number("ownAim_mol_m2_d", 1, 60, 16)),
    ],
    fields: ["verdict", "short_mol_m2_d", "over_mol_m2_d", "min_mol_m2_d", "aim_mol_m2_d", "max_mol_m2_d"],
  }),
  describe("leafPhotosynthesis_umol_m2_s", byName(leafPhotosynthesis_umol_m2_s), {
    what: "Net photosynthesis of a leaf by the light on it (non-rectangular hyperbola).",
    source:
      "our assumption; shape ThornleyJohnson1990, values from memory; measured rates 3.6 to 16.3 (Erwin2019)",
    inputs: [ppfd, ...leafCurve],
  }),
  describe("compensationLight_umol_m2_s", byName(compensationLight_umol_m2_s), {
    what: "Light at which a leaf takes up as much as it breathes out.",
    source: "our assumption; shape ThornleyJohnson1990, values from memory",
    inputs: leafCurve,
  }),
  describe("creditedLight_umol_m2_s", byName(creditedLight_umol_m2_s), {
    what: "Light of a step that counts towards the day: above a cap it mostly heats.",
    source: "our assumption",
    inputs: [ppfd, ...assumed(leafAssumptions, "creditedMost_umol_m2_s")],
  }),
];
