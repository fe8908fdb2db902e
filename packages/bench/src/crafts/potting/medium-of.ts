import {
  blendAir,
  curveOf,
  drainedPot,
  type MediumName,
  media,
  type Porosity,
  type PotShape,
  porosityTest,
  type RetentionCurve,
} from "@sillwood/science/medium";
import { AVAILABLE_frac, usualCapacity } from "../../plants/capacity.ts";
import type { PlantFacts } from "../../plants/facts.ts";
import { type Medium, mediumDepth_cm, mediumVolume_mL, type Pot, USUAL_POT } from "../../plants/pot.ts";
import type { Filled, Tested } from "./kinds.ts";

/** What is known of what fills a pot, the strongest first: a test, a recipe, a word. */
export type Fill = { readonly recipe?: Filled["recipe"]; readonly test?: Tested };

/** Depth of the pot for which the share that roots can't draw is given. @source UMass Extension: a six-inch pot */
const SIX_INCH_cm = 13;

/** Which of the printed media stands for a word. @source our assumption */
const WORDS: Readonly<Record<Medium, MediumName>> = {
  spongy: "peat and perlite 70:30",
  bark: "peat and bark 50:50",
  gritty: "pumice",
  unknown: "peat and perlite 70:30",
};

/** A pot by its inner measures, as science takes them; round ones without a base taper as usual. */
export function shapeOf(pot: Pot): PotShape {
  if (pot.form === "round") {
    const base_cm = pot.base_cm ?? pot.top_cm * 0.75;
    return {
      form: "round",
      bottomLength_cm: base_cm,
      bottomWidth_cm: base_cm,
      topLength_cm: pot.top_cm,
      topWidth_cm: pot.top_cm,
      innerHeight_cm: pot.depth_cm,
    };
  }
  const { form, length_cm, width_cm, depth_cm } = pot;
  return {
    form,
    bottomLength_cm: length_cm,
    bottomWidth_cm: width_cm,
    topLength_cm: length_cm,
    topWidth_cm: width_cm,
    innerHeight_cm: depth_cm,
  };
}

/** A medium in one pot once it has drained. */
export interface Drained {
  readonly medium_mL: number;
  readonly water_frac: number;
  readonly air_frac: number;
}

const straight = (fill_cm: number) => ({
  form: "round" as const,
  bottomLength_cm: 10,
  bottomWidth_cm: 10,
  topLength_cm: 10,
  topWidth_cm: 10,
  innerHeight_cm: fill_cm,
  fill_cm,
});
const waterAt = (curve: RetentionCurve, depth_cm: number): number =>
  drainedPot({ ...straight(depth_cm), ...curve }).water_frac;

const inPot = (pot: Pot, curve: RetentionCurve): Drained =>
  drainedPot({ ...shapeOf(pot), ...curve, fill_cm: Math.min(pot.depth_cm, mediumDepth_cm(pot)) });

/** Shares by volume of a recipe in whole scoops. */
function sharesOf(recipe: Filled["recipe"]): readonly { readonly of: Porosity; readonly share: number }[] {
  const all = recipe.reduce((sum, { scoops_n }) => sum + scoops_n, 0);
  return recipe.map(({ part, scoops_n }) => ({ of: media[part], share: scoops_n / all }));
}

/**
 * The curve of a mix: its porosity and residual water by volume, its α so that it holds in a pot 7.6 cm deep the air that a
 * blend of such parts is guessed to hold. A guess until somebody tests it.
 */
export function curveOfRecipe(recipe: Filled["recipe"]): RetentionCurve {
  const parts = sharesOf(recipe);
  if (parts.length === 1) return curveOf((parts[0] as (typeof parts)[0]).of);
  const mean = (pick: (of: Porosity) => number) =>
    parts.reduce((sum, { of, share }) => sum + share * pick(of), 0);
  const guess = blendAir({
    parts_frac: parts.map(({ share }) => share),
    airs_frac: parts.map(({ of }) => of.porosity_frac - waterAt(curveOf(of), 7.6)),
  });
  const porosity_frac = mean((of) => of.porosity_frac);
  return curveOf({
    ...(parts[0] as (typeof parts)[0]).of,
    porosity_frac,
    residualWater_frac: mean((of) => of.residualWater_frac),
    steepness: mean((of) => of.steepness),
    air_frac: Math.min(0.8 * porosity_frac, Math.max(0.01, guess.air_frac)),
    reference: "7.6 cm core",
    fill_cm: 7.6,
  });
}

/** The curve that a test at home gives, with the shape that is usual where the dry weight is missing. */
function curveOfTest(test: Tested, word: Medium): RetentionCurve {
  const usual = media[WORDS[word]];
  const found = porosityTest({
    medium_mL: test.medium_mL,
    saturated_g: test.saturated_g,
    drained_g: test.drained_g,
    ...(test.dry_g === undefined ? {} : { dry_g: test.dry_g }),
  });
  const porosity_frac = Math.min(0.98, Math.max(0.3, found.porosity_frac ?? usual.porosity_frac));
  return curveOf(
    {
      ...usual,
      porosity_frac,
      residualWater_frac: Math.min(usual.residualWater_frac, 0.3 * porosity_frac),
      air_frac: Math.min(0.8 * porosity_frac, Math.max(0.005, found.air_frac)),
      reference: "own pot",
      fill_cm: test.fill_cm,
    },
    straight(test.fill_cm),
  );
}

const curves = new WeakMap<object, RetentionCurve>();

/** The curve of what fills a pot. */
export function curveOfFill(fill: Fill, word: Medium): RetentionCurve {
  const key = fill.test ?? fill.recipe;
  if (key === undefined) return curveOf(media[WORDS[word]]);
  let curve = curves.get(key);
  if (!curve) {
    curve = fill.test ? curveOfTest(fill.test, word) : curveOfRecipe(fill.recipe as Filled["recipe"]);
    curves.set(key, curve);
  }
  return curve;
}

/** Water and air of a plant's pot after draining. */
const drainedOf = (plant: PlantFacts, fill: Fill): Drained =>
  inPot(plant.pot ?? USUAL_POT, curveOfFill(fill, plant.medium));

export interface Available {
  readonly value_g: number;
  readonly sd_frac: number;
  readonly drained: Drained;
  /** share of the volume that roots can't draw */
  readonly unavailable_frac: number;
  readonly by: "word" | "recipe" | "test";
}

/** Relative doubt of the capacity of a mix nobody tested, and of a tested one. @source air-water sheet S2 for a tested one */
const RECIPE_SD_frac = 0.35;
const TEST_SD_frac = 0.25;

/**
 * Water between just drained and lasting wilt: what a watering from above reaches at this depth, less what roots can't draw. A
 * medium known by its word alone keeps the share that is printed for the usual depth, and is carried to this depth by the curve.
 */
export function availableOf(
  plant: PlantFacts,
  fill: Fill,
  set: { readonly wetted_frac: number; readonly unavailable_frac: number },
): Available {
  const curve = curveOfFill(fill, plant.medium);
  const drained = drainedOf(plant, fill);
  const unavailable_frac = set.unavailable_frac * waterAt(curve, SIX_INCH_cm);
  if (fill.test || fill.recipe) {
    const share = Math.max(0.03, set.wetted_frac * drained.water_frac - unavailable_frac);
    const by = fill.test ? "test" : "recipe";
    return {
      value_g: share * drained.medium_mL,
      sd_frac: fill.test ? TEST_SD_frac : RECIPE_SD_frac,
      drained,
      unavailable_frac,
      by,
    };
  }
  // The words' shares are given for the usual pot, 9 cm deep.
  const usual = inPot(USUAL_POT, curve).water_frac - unavailable_frac;
  const carried = Math.max(0.03, drained.water_frac - unavailable_frac) / usual;
  const prior = usualCapacity(plant);
  return {
    value_g: AVAILABLE_frac[plant.medium] * carried * mediumVolume_mL(plant.pot ?? USUAL_POT),
    sd_frac: prior.sd / prior.value,
    drained,
    unavailable_frac,
    by: "word",
  };
}
