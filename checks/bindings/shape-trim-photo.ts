import * as shape from "@sillwood/science/shape";
import { type Rule, rule, ruleOn } from "../src/rules.ts";

const matchNeeds = ["u1_px", "v1_px", "u2_px", "v2_px", "D_mm", "f_px"] as const;
const place = (v: Readonly<Record<(typeof matchNeeds)[number], number>>) =>
  shape.placeOfMatch({
    right1_px: v.u1_px,
    up1_px: v.v1_px,
    right2_px: v.u2_px,
    up2_px: v.v2_px,
    distance_mm: v.D_mm,
    focal_px: v.f_px,
  });
const placeNeeds = ["X_mm", "Y_mm", "Z_mm", "D_mm", "f_px"] as const;
const seen = (v: Readonly<Record<(typeof placeNeeds)[number], number>>) =>
  shape.matchOfPlace({
    right_mm: v.X_mm,
    away_mm: v.Y_mm,
    up_mm: v.Z_mm,
    distance_mm: v.D_mm,
    focal_px: v.f_px,
  });

const viewRules = [
  rule("X_mm", matchNeeds, (v) => place(v).right_mm),
  rule("Y_mm", matchNeeds, (v) => place(v).away_mm),
  rule("Z1_mm", matchNeeds, (v) => place(v).up1_mm),
  rule("Z2_mm", matchNeeds, (v) => place(v).up2_mm),
  rule("residual_mm", matchNeeds, (v) => place(v).residual_mm),
  rule("u1_px", placeNeeds, (v) => seen(v).right1_px),
  rule("v1_px", placeNeeds, (v) => seen(v).up1_px),
  rule("u2_px", placeNeeds, (v) => seen(v).right2_px),
  rule("v2_px", placeNeeds, (v) => seen(v).up2_px),
];

const focalNeeds = ["f35_mm", "W_px", "H_px", "diag_35mm_mm", "width_35mm_mm"] as const;
const focal = (v: Readonly<Record<(typeof focalNeeds)[number], number>>) =>
  shape.focalLengths({
    equivalent_mm: v.f35_mm,
    width_px: v.W_px,
    height_px: v.H_px,
    filmDiagonal_mm: v.diag_35mm_mm,
    filmWidth_mm: v.width_35mm_mm,
  });

const colour = (v: { readonly R: number; readonly G: number; readonly B: number }) =>
  shape.leafColour({ red: v.R, green: v.G, blue: v.B });

const otsu = (v: { readonly counts: readonly number[] }) => shape.otsuThreshold(v.counts);

const pictureRules = [
  rule("byDiagonal_px", focalNeeds, (v) => focal(v).byDiagonal_px),
  rule("byWidth_px", focalNeeds, (v) => focal(v).byWidth_px),
  rule("ExG", ["R", "G", "B"], (v) => colour(v).excessGreen),
  rule("ExR", ["R", "G", "B"], (v) => colour(v).excessRed),
  rule("ExG_minus_ExR", ["R", "G", "B"], (v) => colour(v).difference),
  ruleOn<{ readonly counts: readonly number[]; readonly levels: readonly number[] }>(
    "threshold_level",
    ["counts", "levels"],
    (v) => v.levels[otsu(v).threshold_n],
  ),
  ruleOn<{ readonly counts: readonly number[] }>(/^withinVariance/, ["counts"], (v) => otsu(v).inside),
  ruleOn<{ readonly counts: readonly number[] }>(/^betweenVariance/, ["counts"], (v) => otsu(v).between),
];

const directions = (stops: readonly number[]) => stops.map((each) => shape.distinctDirections_n(each));
const hullRules = [
  rule("ratio", ["distinctDirections"], (v) => {
    const of = v.distinctDirections as unknown as number | readonly number[];
    return typeof of === "number" ? shape.hullRatio(of) : of.map((each) => shape.hullRatio(each));
  }),
  ruleOn<{ readonly stops: readonly number[] }>("distinctDirections", ["stops"], (v) => directions(v.stops)),
  rule("volume", ["R"], (v) => shape.threeViewHull(v.R).volume_m3),
  rule("ratioToSphere", ["R"], (v) => shape.threeViewHull(v.R).ratio),
];

const parts = shape.printedParts;
type Part = { readonly part: readonly (keyof typeof parts)[] };
const ofPart = (gives: string, key: keyof (typeof parts)["stem"]) =>
  ruleOn<Part>(gives, ["part"], (v) => v.part.map((part) => parts[part][key]));

const { fieldChilli, greenhouse } = shape.printedStems;
const study = (name: string) => shape.printedAccuracy.find((each) => each.study === name);
type Studies = { readonly study: readonly string[] };
type Stems = { readonly stems: readonly string[] };
const kept = (stems: string) => shape.printedStemsKept.find((each) => each.stems === stems);

const printedRules = [
  ofPart("E_Pa", "stiffness_Pa"),
  ofPart("G_Pa", "shear_Pa"),
  ofPart("poisson", "poisson"),
  ofPart("density_kg_m3", "density_kg_m3"),
  rule("min_cm", ["cultivars"], () => fieldChilli.stemLow_cm),
  rule("max_cm", ["cultivars"], () => fieldChilli.stemHigh_cm),
  rule("stemLength_cm", ["genotypes"], () => [greenhouse.stemLow_cm, greenhouse.stemHigh_cm]),
  rule("stemDiameter_mm", ["genotypes"], () => [greenhouse.caliperLow_mm, greenhouse.caliperHigh_mm]),
  rule("plantHeight_m", ["genotypes"], () => [greenhouse.heightLow_m, greenhouse.heightHigh_m]),
  ruleOn<{ readonly ratio_rule: string }>("height_over_caliper", ["ratio_rule"], () => [
    (greenhouse.heightLow_m * 1000) / greenhouse.caliperHigh_mm,
    (greenhouse.heightHigh_m * 1000) / greenhouse.caliperLow_mm,
  ]),
  ruleOn<Studies>("value", ["study"], (v) => v.study.map((name) => study(name)?.error)),
  ruleOn<Studies>("unit", ["study"], (v) => v.study.map((name) => study(name)?.unit)),
  ruleOn<Stems>("LAI_at_flowering", ["stems"], (v) => v.stems.map((stems) => kept(stems)?.lai)),
  ruleOn<Stems>("yield_kg_m2", ["stems"], (v) => v.stems.map((stems) => kept(stems)?.yield_kg_m2)),
];

export const photoRules: readonly Rule[] = [...viewRules, ...pictureRules, ...hullRules, ...printedRules];
