import { byName, describeField, single } from "../catalogue/describe.ts";
import { number, numbers, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  beamExtinction,
  cardDistance_mm,
  distinctDirections_n,
  focalLengths,
  hullRatio,
  leafColour,
  matchingLine,
  matchOfPlace,
  matchVerdict,
  otsuThreshold,
  passedLight_frac,
  pathLight_frac,
  placeOfMatch,
  shadowCells_n,
  threeViewHull,
} from "./index.ts";

const describe = describeField("shape");
const camera = [number("distance_mm", 50, 20_000, 800), number("focal_px", 100, 50_000, 3000)] as const;
const pixel = (name: string, usual: number) => number(name, -20_000, 20_000, usual);

/** A plant measured from photos, and light in its crown. */
export const photoCatalogue: readonly ScienceFunction[] = [
  describe("cardDistance_mm", byName(cardDistance_mm), {
    what: "Distance of the camera from a card of known size in the plane of the trunk.",
    source: "HartleyZisserman2004, pinhole camera",
    inputs: [
      number("focal_px", 100, 50_000, 3000),
      number("card_mm", 5, 1000, 40),
      number("card_px", 5, 20_000, 150),
    ],
  }),
  describe("focalLengths", byName(focalLengths), {
    what: "Focal length in pixels from the 35-mm equivalent that a photo carries, by two conventions that differ by 4 % on 4:3 sensors.",
    source: "HartleyZisserman2004, pinhole camera; definition of the 35-mm equivalent",
    inputs: [
      number("equivalent_mm", 5, 1000, 26),
      number("width_px", 50, 30_000, 4032),
      number("height_px", 50, 30_000, 3024),
      optional(number("filmDiagonal_mm", 40, 47, 43.27)),
      optional(number("filmWidth_mm", 33, 39, 36)),
    ],
    fields: ["byDiagonal_px", "byWidth_px"],
  }),
  describe("placeOfMatch", byName(placeOfMatch), {
    what: "A place from the two photos of a plant turned by a quarter between them.",
    source: "HartleyZisserman2004, pinhole camera; closed form derived here",
    inputs: [
      pixel("right1_px", 236.8),
      pixel("up1_px", 592.1),
      pixel("right2_px", 139.5),
      pixel("up2_px", 523.3),
      ...camera,
    ],
    fields: ["right_mm", "away_mm", "up_mm", "up1_mm", "up2_mm", "residual_mm"],
  }),
  describe("matchOfPlace", byName(matchOfPlace), {
    what: "Where a place appears in the two photos.",
    source: "HartleyZisserman2004, pinhole camera",
    inputs: [
      number("right_mm", -5000, 5000, 60),
      number("away_mm", -5000, 5000, -40),
      number("up_mm", -5000, 5000, 150),
      ...camera,
    ],
    fields: ["right1_px", "up1_px", "right2_px", "up2_px"],
  }),
  describe("matchingLine", byName(matchingLine), {
    what: "The line in the second photo on which a point of the first must lie: equal height, any depth.",
    source: "HartleyZisserman2004, pinhole camera; closed form derived here",
    inputs: [
      pixel("right1_px", 100),
      pixel("up1_px", 300),
      number("radius_mm", 1, 3000, 100),
      number("points_n", 2, 200, 5),
      ...camera,
    ],
    fields: ["rights_px", "ups_px"],
  }),
  describe("matchVerdict", byName(matchVerdict), {
    what: "What the difference of the two heights says of a match.",
    source: "our assumption; size of the error computed for the model sheet",
    inputs: [number("residual_mm", -5000, 5000, 2), number("click_px", 0.1, 50, 3), ...camera],
    fields: ["verdict", "limit_mm"],
  }),
  describe("hullRatio", single(hullRatio), {
    what: "Volume of the visual hull over the true volume of an upright cylinder or a sphere seen from the side.",
    source: "BronshteinSemendyayev1985, polygon around a circle",
    inputs: [number("directions_n", 2, 10_000, 9)],
  }),
  describe("distinctDirections_n", single(distinctDirections_n), {
    what: "Distinct outlines that stops of a turntable give a far camera: opposite views have the same outline.",
    source: "BronshteinSemendyayev1985, parallel views",
    inputs: [number("stops_n", 1, 20_000, 8)],
  }),
  describe("threeViewHull", single(threeViewHull), {
    what: "Hull of a sphere in three views at right angles to one another.",
    source: "BronshteinSemendyayev1985, solid of three cylinders",
    inputs: [number("radius_m", 1e-6, 1e6, 1)],
    fields: ["volume_m3", "ratio"],
  }),
  describe("leafColour", byName(leafColour), {
    what: "Indices that part green leaf from what is not.",
    source: "MeyerCamargoNeto2008; coefficients from memory",
    inputs: [number("red", 0, 255, 60), number("green", 0, 255, 120), number("blue", 0, 255, 40)],
    fields: ["excessGreen", "excessRed", "difference"],
  }),
  describe("otsuThreshold", single(otsuThreshold), {
    what: "The level that best parts a histogram in two, and what each level would give.",
    source: "Otsu1979",
    inputs: [numbers("histogram_n", 0, 1e12, [8, 7, 2, 6, 9, 4])],
    fields: ["threshold_n", "between", "inside"],
  }),
  describe("beamExtinction", byName(beamExtinction), {
    what: "Extinction of a beam in leaves whose angles are those of an ellipsoid.",
    source: "Campbell1986",
    inputs: [number("ellipsoid", 0.05, 20, 1), number("zenith_deg", 0, 89, 30)],
  }),
  describe("passedLight_frac", byName(passedLight_frac), {
    what: "Share of light that passes layers of leaf.",
    source: "MonsiSaeki1953",
    inputs: [number("extinction", 0, 10, 0.75), number("lai", 0, 50, 1)],
  }),
  describe("pathLight_frac", byName(pathLight_frac), {
    what: "Share of light that passes a path through leaves.",
    source: "MonsiSaeki1953",
    inputs: [
      number("shadow_frac", 0, 1, 0.5),
      number("leafDensity_m2_m3", 0, 10_000, 40),
      number("path_m", 0, 10, 0.05),
    ],
  }),
  describe("shadowCells_n", single(shadowCells_n), {
    what: "Cells that one leaf's pyramid of shadow touches.",
    source: "Palubicki2009",
    inputs: [number("levels_n", 0, 100, 8)],
  }),
];
