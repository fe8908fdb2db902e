import { largestPot_mL, smallestPot_mL } from "@sillwood/science/medium";
import { mediumDepth_cm, USUAL_POT } from "../../plants/pot.ts";
import { PageError, type World } from "../craft.ts";
import { curveOfFill } from "./medium-of.ts";
import { DRIEST_frac, saltWhen_mS_cm } from "./offers.ts";
import { cutOpen, potSaid } from "./page-mix.ts";
import type { PotPage, PottingAsk } from "./page-shape.ts";
import { type PotSlice, potSeen } from "./slice.ts";
import type { PageWords } from "./words-page.en.ts";

/** Depletion at which a pot is watered, days wanted between, longest dry-down. @source medium-repot sheet 9 */
const ALLOWED_frac = 0.6;
const BETWEEN_d = 2;
const LONGEST_d = 7;
/** A store is used up in about four days; the first month after potting at two thirds. @source our assumption */
const STORE_d = 4;
const FIRST_MONTH_frac = 0.67;

/** One pot as it stands: what it holds by its depth, its salts, and how large the next may be. */
export function potPage(
  world: World<PotSlice>,
  ask: Extract<PottingAsk, { what: "pot" }>,
  words: PageWords,
): PotPage {
  const member = world.members.find(({ plant }) => plant.id === ask.plant);
  if (!member) throw new PageError(words.unknownPlant);
  const { plant, slice, sight } = member;
  const { say } = world;
  const pot = plant.pot ?? USUAL_POT;
  const seen = potSeen(plant, slice.fill, sight);
  const curve = curveOfFill(slice.fill, plant.medium);
  const cut = cutOpen(curve, Math.min(pot.depth_cm, mediumDepth_cm(pot)));
  const use_g_d = sight.read("capacity_g").value / STORE_d;
  const available_frac = Math.min(0.7, Math.max(0.05, seen.available_g / seen.medium_mL));
  const least_mL = smallestPot_mL({
    use_g_d,
    between_d: BETWEEN_d,
    available_frac,
    allowed_frac: ALLOWED_frac,
  });
  const most_mL = largestPot_mL({
    use_g_d: FIRST_MONTH_frac * use_g_d,
    longest_d: LONGEST_d,
    available_frac,
    allowed_frac: ALLOWED_frac,
    air_frac: seen.air_frac,
  });
  const refill = saltWhen_mS_cm(slice, 0, sight);
  const driest = saltWhen_mS_cm(slice, DRIEST_frac, sight);
  return {
    what: "pot",
    number: world.numberOf(plant.id),
    lines: [
      potSaid(pot, words),
      words.airLine(
        say.percent(seen.air_frac),
        say.percent(Math.max(0, seen.air_frac - 0.05)),
        say.percent(seen.air_frac + 0.05),
      ),
      words.waterLine(say.volume(seen.available_g)),
      cut.wetLayer_cm >= cut.fill_cm
        ? words.wetAll
        : words.wetLine(say.length(cut.wetLayer_cm), say.length(cut.fill_cm)),
      words.saltLine(say.number(refill, 1), say.number(driest, 1)),
      most_mL > least_mL ? words.nextPot(say.volume(least_mL), say.volume(most_mL)) : words.nextPotNone,
    ],
    cut,
    figures: {
      medium_mL: seen.medium_mL,
      air_frac: seen.air_frac,
      available_mL: seen.available_g,
      wetLayer_cm: cut.wetLayer_cm,
      saltAtRefill_mS_cm: refill,
      saltAtDriest_mS_cm: driest,
      nextLeast_mL: least_mL,
      nextMost_mL: most_mL,
    },
  };
}
