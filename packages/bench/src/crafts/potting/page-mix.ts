import {
  airless_h,
  drainedPot,
  type MediumName,
  media,
  mediumNames,
  type RetentionCurve,
  waterAtSuction_frac,
  wetLayer_cm,
} from "@sillwood/science/medium";
import * as v from "valibot";
import { mediumDepth_cm, mediumVolume_mL, type Pot, potSchema, USUAL_POT } from "../../plants/pot.ts";
import { PageError, type World } from "../craft.ts";
import { type Aim, compose, type Judged, judged, partsIn } from "./compose.ts";
import { curveOfRecipe, shapeOf } from "./medium-of.ts";
import type { CutOpen, Mix, MixPage, PottingAsk } from "./page-shape.ts";
import type { PotSlice } from "./slice.ts";
import { pottingWords } from "./words.ts";
import type { PageWords } from "./words-page.en.ts";

/** Air wanted after draining, and with washed roots. @source medium-repot sheet 9, our assumption */
const AIR_frac = 0.15;
const AIR_BARE_frac = 0.2;
/** The wet layer ends where air reaches this. @source medium-repot sheet 3 */
const WET_frac = 0.1;
const SCOOPS_n = 6;
const LEAST_CHANCE_frac = 0.35;
const PROFILE_n = 24;
/** Use of a plant of whose pot nothing is known, for the hours short of air. @source our assumption */
const USE_g_d_per_mL = 0.06;
const DEEPEST_cm = 40;

type MixAsk = Extract<PottingAsk, { what: "mix" }>;

/** A pot cut open: water at each height, the wet layer below. */
export function cutOpen(curve: RetentionCurve, fill_cm: number): CutOpen {
  const layer = wetLayer_cm({
    ...curve,
    airWanted_frac: Math.min(WET_frac, 0.9 * (curve.saturatedWater_frac - curve.residualWater_frac)),
  });
  return {
    fill_cm,
    wetLayer_cm: Math.min(fill_cm, layer),
    profile: Array.from({ length: PROFILE_n + 1 }, (_, i) => {
      const height_cm = (fill_cm * i) / PROFILE_n;
      return { height_cm, water_frac: waterAtSuction_frac({ ...curve, suction_cm: height_cm }) };
    }),
    porosity_frac: curve.saturatedWater_frac,
  };
}

export function potSaid(pot: Pot, words: PageWords): string {
  const [across, wide] = pot.form === "round" ? [pot.top_cm, pot.top_cm] : [pot.length_cm, pot.width_cm];
  return words.potSaid(words.form[pot.form], across, wide, pot.depth_cm, mediumVolume_mL(pot));
}

/** The mixing desk: from the bags on the shelf the mix that suits this pot best, or why none will. */
export function mixPage(world: World<PotSlice>, ask: MixAsk, words: PageWords): MixPage {
  const { say } = world;
  const own = pottingWords(say);
  const member =
    ask.plant === undefined ? undefined : world.members.find(({ plant }) => plant.id === ask.plant);
  if (ask.plant !== undefined && !member) throw new PageError(words.unknownPlant);
  const pot = readPot(ask.pot) ?? member?.plant.pot ?? USUAL_POT;
  const bags = readBags(ask.bags);
  const scoops_n = ask.scoops_n ?? SCOOPS_n;
  if (!Number.isInteger(scoops_n) || scoops_n < 1 || scoops_n > 12)
    throw new PageError(`scoops_n is ${String(scoops_n)}; expected 1 to 12`);
  const fill_cm = Math.min(pot.depth_cm, mediumDepth_cm(pot));
  const aim: Aim = {
    shape: shapeOf(pot),
    fill_cm,
    airWanted_frac: ask.bareRoots ? AIR_BARE_frac : AIR_frac,
    wetted_frac: world.assumed("wetted_frac"),
    unavailable_frac: world.assumed("unavailable_frac"),
    scoops_n,
  };
  const medium_mL = mediumVolume_mL(pot);
  const use_g_d = Math.max(
    1,
    member ? dailyUse_g_d(member.sight.read("capacity_g").value) : USE_g_d_per_mL * medium_mL,
  );
  const draw = (one: Judged): Mix => drawMix(one, aim, medium_mL, use_g_d, world, words);
  const found = ask.recipe ? [judgedOwn(ask.recipe, aim)] : bags.length > 0 ? compose(bags, aim) : [];
  const best = found[0];
  const isGood = best !== undefined && best.chance_frac >= LEAST_CHANCE_frac;
  const mix = best && draw(best);
  const noMix = best && !isGood ? noMixSaid(best, aim, words, own.part, say) : undefined;
  return {
    what: "mix",
    ...(member ? { number: world.numberOf(member.plant.id) } : {}),
    said:
      !mix || !best
        ? words.chooseBags
        : (noMix ?? words.mixSaid(mix.said, best.chance_frac, aim.airWanted_frac)),
    parts: mediumNames.map((part) => ({
      part,
      name: own.part(part),
      origin: media[part].origin === "assumed" ? "assumed" : "learned",
      chosen: bags.includes(part),
    })),
    pot,
    potSaid: potSaid(pot, words),
    medium_mL,
    airWanted_frac: aim.airWanted_frac,
    ...(mix ? { mix } : {}),
    others: found.slice(1).map(draw),
    ...(noMix ? { noMix } : {}),
    care: own.care,
    test: words.test(say.volume(medium_mL)),
    figures: { medium_mL, fill_cm, airWanted_frac: aim.airWanted_frac },
  };
}

/** A store is used up in about four days. @source our assumption */
const dailyUse_g_d = (capacity_g: number): number => capacity_g / 4;

function judgedOwn(
  recipe: readonly { readonly part: MediumName; readonly scoops_n: number }[],
  aim: Aim,
): Judged {
  if (recipe.length === 0 || recipe.some(({ part, scoops_n }) => !(part in media) || !(scoops_n >= 1)))
    throw new PageError(
      `recipe holds an unknown part or no scoop; expected parts of ${mediumNames.join(", ")}`,
    );
  return judged(
    partsIn(
      recipe.map(({ part }) => part),
      aim,
    ),
    recipe.map(({ scoops_n }) => scoops_n),
    aim,
  );
}

function drawMix(
  one: Judged,
  aim: Aim,
  medium_mL: number,
  use_g_d: number,
  { say }: World<PotSlice>,
  words: PageWords,
): Mix {
  const own = pottingWords(say);
  const curve = curveOfRecipe(one.recipe);
  const cut = cutOpen(curve, aim.fill_cm);
  const all = one.recipe.reduce((sum, { scoops_n }) => sum + scoops_n, 0);
  const dry_g =
    one.recipe.reduce((sum, { part, scoops_n }) => sum + (scoops_n / all) * media[part].bulkDensity_g_mL, 0) *
    medium_mL;
  const short_h = airless_h({ air_frac: one.air_frac, medium_mL, use_g_d });
  const available_mL = one.available_frac * medium_mL;
  // Loose parts shrink when they are mixed; a little is spilled.
  const scoop_mL = (1.1 * medium_mL) / all;
  const isWetThrough = cut.wetLayer_cm >= cut.fill_cm - 1e-9;
  return {
    recipe: one.recipe,
    said: own.filled({ recipe: [...one.recipe] }).replace(/^(filled with|gefüllt mit) /, ""),
    air_frac: one.air_frac,
    airLow_frac: one.airLow_frac,
    airHigh_frac: one.airHigh_frac,
    chance_frac: one.chance_frac,
    available_mL,
    airless_h: short_h,
    scoop_mL,
    dry_g,
    origin: "assumed",
    cut,
    lines: [
      words.airLine(say.percent(one.air_frac), say.percent(one.airLow_frac), say.percent(one.airHigh_frac)),
      words.waterLine(say.volume(available_mL)),
      isWetThrough ? words.wetAll : words.wetLine(say.length(cut.wetLayer_cm), say.length(cut.fill_cm)),
      short_h > 0.5 ? words.airlessLine(words.hours(short_h)) : words.airlessNone,
      words.scoopLine(say.volume(scoop_mL), say.mass(dry_g)),
    ],
  };
}

/** Why none of these bags will do, and what would. */
function noMixSaid(
  best: Judged,
  aim: Aim,
  words: PageWords,
  part: (name: MediumName) => string,
  say: World<PotSlice>["say"],
): string {
  const lines = [words.noMix(aim.airWanted_frac, say.length(aim.fill_cm))];
  const granular = mediumNames.filter((name) => media[name].granular);
  const parts = partsIn(granular, aim);
  const good = granular.filter(
    (_name, i) => judged([parts[i] as (typeof parts)[0]], [1], aim).chance_frac >= LEAST_CHANCE_frac,
  );
  lines.push(good.length > 0 ? words.granularOnly(say.list(good.map(part))) : words.noneAtAll);
  const curve = curveOfRecipe(best.recipe);
  for (let depth_cm = Math.ceil(aim.fill_cm + 1); depth_cm <= DEEPEST_cm; depth_cm++) {
    const pot = { ...aim.shape, innerHeight_cm: depth_cm };
    if (drainedPot({ ...pot, ...curve, fill_cm: depth_cm }).air_frac < aim.airWanted_frac) continue;
    lines.push(words.deeper(say.length(depth_cm)));
    break;
  }
  return lines.join(" ");
}

function readPot(pot: unknown): Pot | undefined {
  if (pot === undefined) return undefined;
  const read = v.safeParse(potSchema, pot);
  if (!read.success) throw new PageError(read.issues.map(({ message }) => message).join("; "));
  return read.output;
}

function readBags(bags: unknown): readonly MediumName[] {
  if (bags === undefined) return [];
  if (!Array.isArray(bags) || bags.length > 10) throw new PageError("bags are no list of at most 10 parts");
  for (const bag of bags)
    if (!mediumNames.includes(bag as MediumName))
      throw new PageError(`bag is ${JSON.stringify(bag)}; expected one of ${mediumNames.join(", ")}`);
  return [...new Set(bags as MediumName[])];
}
