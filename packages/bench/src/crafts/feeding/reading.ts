import {
  closedIons,
  conductivity_mS_cm,
  conductivityRead_mS_cm,
  ionsOf,
  likelySlips,
  METER_BAND_frac,
  type MeterScale,
  type Slip,
  waterAmounts_mg_L,
} from "@sillwood/science/feed";
import type { Json } from "../../book/entry.ts";
import { PageError, type World } from "../craft.ts";
import { MIXED, type Mixed } from "./kinds.ts";
import type { FeedRecipe, MeterCheck } from "./page-shape.ts";
import type { Wanted } from "./recipe.ts";
import type { FeedSlice } from "./slice.ts";
import { feedPageWords } from "./words-page.ts";

const SLIPS_n = 2;
/** A feed of milliSiemens is never this strong: the number is in microSiemens. */
const NEVER_mS_cm = 20;
/** Slips this far from the reading are still named when nearer ones are too few. */
const FAR_frac = 0.5;

/** "It reads 2.1": as it should be, or do not pour yet, and the likeliest slips. */
export function checkReading(
  read: { readonly value: number; readonly scale: MeterScale },
  recipe: FeedRecipe,
  wanted: Wanted,
  world: World<FeedSlice>,
): MeterCheck {
  const { say } = world;
  const words = feedPageWords(say);
  if (!(Number.isFinite(read.value) && read.value >= 0 && read.value <= 100_000))
    throw new PageError(`reading is ${read.value}; expected 0 to 100000 ${read.scale}`);
  const read_mS_cm = conductivityRead_mS_cm({ reading: read.value, scale: read.scale });
  const water_mS_cm = conductivity_mS_cm(closedIons(ionsOf(waterAmounts_mg_L(wanted.water))));
  const band = words.meter(say.number(recipe.low_mS_cm, 1), say.number(recipe.high_mS_cm, 1));
  const isGood =
    read_mS_cm >= Math.min(recipe.low_mS_cm, recipe.expected_mS_cm * (1 - METER_BAND_frac)) &&
    read_mS_cm <= Math.max(recipe.high_mS_cm, recipe.expected_mS_cm * (1 + METER_BAND_frac));
  const reads = say.number(read_mS_cm, 2);
  if (isGood)
    return {
      state: "good",
      said: words.readGood(reads),
      read_mS_cm,
      slips: [],
      act: withReading(recipe, read_mS_cm),
    };
  const asked = {
    read_mS_cm,
    expected_mS_cm: recipe.expected_mS_cm,
    water_mS_cm,
    parts: recipe.doses.map(({ supply, name, amount }) => {
      const bottle = wanted.bottles.find((each) => each.supply.id === supply);
      const alone = bottle
        ? conductivity_mS_cm(
            closedIons(
              ionsOf(
                Object.fromEntries(
                  Object.entries(bottle.read.contents_mg).map(([of, held]) => [
                    of,
                    (held * amount) / wanted.volume_L,
                  ]),
                ),
              ),
            ),
          )
        : 0;
      return { part: name, adds_mS_cm: alone };
    }),
    scale: read.scale,
  };
  const near = likelySlips(asked);
  const slips =
    read_mS_cm > NEVER_mS_cm
      ? [
          words.slip(
            { slip: "wrong unit", conductivity_mS_cm: 0, off_frac: 0 },
            say.number(read.value / 1000, 2),
          ),
        ]
      : distinct(near.length >= SLIPS_n ? near : likelySlips({ ...asked, band_frac: FAR_frac })).map((each) =>
          words.slip(each, reads),
        );
  return {
    state: "doubtful",
    said: words.readWrong(say.number(read_mS_cm, 2), band),
    read_mS_cm,
    slips: slips.slice(0, SLIPS_n),
  };
}

/** One of a kind and part: a bottle taken twice is said once. */
const distinct = (slips: readonly Slip[]): readonly Slip[] =>
  slips.filter(
    (each, at) => slips.findIndex(({ slip, part }) => slip === each.slip && part === each.part) === at,
  );

/** The mix as it is written when its reading is known. */
const withReading = (recipe: FeedRecipe, read_mS_cm: number): MeterCheck["act"] & {} =>
  recipe.act.map((draft) =>
    draft.kind === MIXED
      ? {
          ...draft,
          data: {
            ...(draft.data as unknown as Mixed),
            read_mS_cm: Number(Math.min(30, read_mS_cm).toFixed(3)),
          } as unknown as Json,
        }
      : draft,
  );
