import { byName, describeField, single } from "../catalogue/describe.ts";
import { assumed, number, numbers, optional, yesOrNo } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  diffuseTransmittance_frac,
  glazingTransmittance_frac,
  incidenceModifier,
  lightAssumptions,
  openPaneFactors,
  paneAtAngle,
  parallelCornerFactor_frac,
  uprightOverLevel_frac,
  veilTransmittance_frac,
  wallCornerFactor_frac,
  windowLight,
} from "./index.ts";

const describe = describeField("light");
const glassAngle = (max: number) => number("glassAngle_deg", 0, max, 40);
const unit = optional(number("unitTransmittance_frac", 0.05, 0.95, 0.75));
const pane = assumed(lightAssumptions, "paneTransmittance_frac", "refraction");
const edges = [
  number("left_m", -20, 20, -0.6),
  number("right_m", -20, 20, 0.6),
  number("bottom_m", -20, 20, 0),
  number("top_m", -20, 20, 1.4),
  number("distance_m", 0.02, 20, 0.3),
];

/** Glass, and what a window is to a leaf behind it. */
export const windowCatalogue: readonly ScienceFunction[] = [
  describe("paneAtAngle", byName(paneAtAngle), {
    what: "Light that one pane lets through and sends back, by the angle on it (Fresnel slab).",
    source: "DuffieBeckman2013 chapter 5",
    inputs: [glassAngle(180), ...pane],
    fields: ["transmitted_frac", "reflected_frac"],
  }),
  describe("glazingTransmittance_frac", byName(glazingTransmittance_frac), {
    what: "Light that a window of one to three panes lets through, by the angle on the glass.",
    source: "DuffieBeckman2013 chapter 5",
    inputs: [glassAngle(180), number("panes_n", 1, 3, 2), ...pane, unit],
  }),
  describe("diffuseTransmittance_frac", byName(diffuseTransmittance_frac), {
    what: "Even light from a half space that a window lets through.",
    source: "DuffieBeckman2013 chapter 5",
    inputs: [number("panes_n", 1, 3, 2), ...pane, unit],
  }),
  describe("incidenceModifier", byName(incidenceModifier), {
    what: "How much less a single air-glass surface with absorbing glass behind it lets in at an angle than straight on.",
    source: "DeSoto2006",
    inputs: [
      glassAngle(90),
      number("extinctionDepth", 0, 12, 0.008),
      ...assumed(lightAssumptions, "refraction"),
    ],
  }),
  describe("veilTransmittance_frac", byName(veilTransmittance_frac), {
    what: "Light that passes all that hangs or lies before the glass.",
    source: "common practice, no source; values from memory",
    inputs: [
      yesOrNo("dusty", true),
      yesOrNo("insectScreen", false),
      yesOrNo("netCurtain", false),
      yesOrNo("frameInOpening", false),
    ],
  }),
  describe("parallelCornerFactor_frac", byName(parallelCornerFactor_frac), {
    what: "Share of what leaves a small surface that meets a rectangle parallel to it, one corner straight above it.",
    source: "HowellCatalog B-3",
    inputs: [
      number("sideLength_m", 0.0001, 1000, 1),
      number("sideWidth_m", 0.0001, 1000, 1),
      number("distance_m", 0.0001, 1000, 1),
    ],
  }),
  describe("wallCornerFactor_frac", byName(wallCornerFactor_frac), {
    what: "Share of what leaves a small level surface that meets an upright rectangle standing on its plane, foot at a corner.",
    source: "HowellCatalog B-4",
    inputs: [
      number("sideWidth_m", 0.0001, 1000, 0.6),
      number("sideHeight_m", 0.0001, 1000, 1.4),
      number("distance_m", 0.0001, 1000, 0.5),
    ],
  }),
  describe("openPaneFactors", byName(openPaneFactors), {
    what: "What an open window pane is to a leaf under an even sky: for a level leaf and for one that faces the window.",
    source: "HowellCatalog B-3 and B-4",
    inputs: edges,
    fields: ["level_frac", "facing_frac"],
  }),
  describe("uprightOverLevel_frac", single(uprightOverLevel_frac), {
    what: "Light on an upright surface over that on level ground under a standard overcast sky, the horizon free.",
    source: "MoonSpencer1942",
    inputs: [yesOrNo("overcast", true)],
  }),
  describe("windowLight", byName(windowLight), {
    what: "Daily light at a leaf behind one window on one day, from plain values: what `paneView` and `windowDay` give together.",
    source: "HowellCatalog; MoonSpencer1942; DuffieBeckman2013; Erbs1982; FaustLogan2018",
    inputs: [
      number("facing_deg", 0, 360, 180),
      ...edges,
      number("panes_n", 1, 3, 2),
      number("latitude_deg", -90, 90, 45),
      number("dayOfYear_d", 1, 366, 355),
      optional(number("solar_MJ_m2_d", 0, 50, 5)),
      optional(number("revealDepth_m", 0, 2, 0.1)),
      ...assumed(lightAssumptions, "paneTransmittance_frac"),
      unit,
      optional(yesOrNo("dusty", true)),
      optional(yesOrNo("insectScreen", false)),
      optional(yesOrNo("netCurtain", false)),
      optional(yesOrNo("frameInOpening", false)),
      optional(numbers("horizon_deg", 0, 90, [0, 10, 15, 10])),
      optional(number("crownWidth_m", 0, 3, 0.25)),
      optional(number("spotRatio", 0.05, 5, 1)),
      ...assumed(lightAssumptions, "groundAlbedo", "facadeBrightness_frac", "overcastBelow_frac"),
    ],
    fields: [
      "level_mol_m2_d",
      "levelDiffuse_mol_m2_d",
      "levelDirect_mol_m2_d",
      "facing_mol_m2_d",
      "halfSphere_mol_m2_d",
      "outdoors_mol_m2_d",
    ],
  }),
];
