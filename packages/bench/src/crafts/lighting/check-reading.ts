import { screenLightReading, spotCalibration } from "@sillwood/science/light";
import { clearSkyGlobal_W_m2, sunPosition } from "@sillwood/science/sun";
import type { Json } from "../../book/entry.ts";
import { checkData } from "../../book/kinds.ts";
import { calibrationOf } from "../../places/light/calibration.ts";
import { lightKinds, type PairData, type UnderLampData } from "../../places/light/kinds.ts";
import { lampLight, lampsAt } from "../../places/light/lamp-light.ts";
import { pairRead } from "../../places/light/sentences.ts";
import { panesOf } from "../../places/light/windows.ts";
import type { Bench } from "../../places/places.ts";
import { PageError, type World } from "../craft.ts";
import type { NeedFigures } from "./need.ts";
import type { ReadAsk, ReadingCheck } from "./page-shape.ts";
import { placesWith } from "./read-taken.ts";
import { monthsOf, spellBand, yearOf } from "./season.ts";
import { dateBand, spellSaid } from "./short.ts";
import { lightPageWords } from "./words-page.ts";
import { lightSaid, Z80 } from "./workings.ts";

/** Photons and lux of daylight per energy. @source sun-light sheet section 4: 0.45 × 4.57 µmol/J, 54 lux per µmol */
const UMOL_PER_J = 0.45 * 4.57;
const LUX_PER_umol = 54;
/** Cloud edges pass a clear sky for minutes, and meters differ. @source sun-light sheet section 3 */
const ABOVE_CLEAR = 1.1;
/** Brighter than this share of a clear sky, a sky is not evenly grey. @source our assumption */
const GREY_MOST_frac = 0.65;
/** In twilight the colours of sky and light change from minute to minute. @source our assumption */
const LOW_SUN_deg = 5;
/** Under a lamp, a reading off by more than this is asked about: label, height or meter. @source our assumption */
const LAMP_OFF = 2.5;

/** Looks over a reading before it is written, and says what it would change. */
export function checkReading(
  world: World,
  bench: Bench,
  ask: ReadAsk,
  month: number,
  need: NeedFigures | undefined,
): ReadingCheck {
  const schema = ask.kind === "light.pair" ? lightKinds.pair : lightKinds.underLamp;
  const [problem] = checkData(schema, ask.data);
  if (problem) throw new PageError(`read.${problem.path}: ${problem.message}`);
  const judged = ask.kind === "light.pair" ? judgePair(world, bench, ask) : judgeLamp(world, bench, ask);
  return judged.state === "refused" ? judged : { ...judged, then: thenOf(world, ask, month, need) };
}

/** The brightest that open ground can be at this moment, in the unit of the reading. */
function clearSky(
  { places }: World,
  unit: string,
  at_ms: number,
): { readonly most: number; readonly up_deg: number } {
  const { latitude_deg, longitude_deg } = places.site;
  const { apparentElevation_deg } = sunPosition({ instant_ms: at_ms, latitude_deg, longitude_deg });
  const ppfd = clearSkyGlobal_W_m2(apparentElevation_deg) * UMOL_PER_J;
  return { most: unit === "lux" ? ppfd * LUX_PER_umol : ppfd, up_deg: apparentElevation_deg };
}

/** A number whose unit follows with the next one. */
const bare = (said: string): string => said.replace(/\s\S+$/, "");

const draftOf = ({ spot, kind }: ReadAsk, data: Json) => ({ kind, on: [spot], data });

function judgePair(world: World, bench: Bench, ask: ReadAsk): ReadingCheck {
  const { say, places, now_ms } = world;
  const words = lightPageWords(say).check;
  const data = ask.data as unknown as PairData;
  const { inside, outside, unit } = pairRead(data);
  const inLux = unit === "lux";
  const said = (value: number) =>
    inLux ? say.illuminance(value) : `${say.number(value, value >= 10 ? 0 : 1)} µmol/m²s`;
  const sky = clearSky(world, unit, ask.at_ms ?? now_ms);
  const swapped = draftOf(ask, {
    ...(inLux
      ? { inside_lux: outside, outside_lux: inside }
      : { inside_umol_m2_s: outside, outside_umol_m2_s: inside }),
    sky: data.sky,
  });
  const asRead = { said: words.asRead, drafts: [draftOf(ask, ask.data)] };
  if (sky.up_deg < 0) return { state: "refused", said: words.sunDown, answers: [] };
  const low = sky.up_deg < LOW_SUN_deg;
  const refuse =
    !low &&
    screenLightReading({ reading: inside, inLux, apparentElevation_deg: sky.up_deg, indoors: true }).some(
      ({ level }) => level === "refuse",
    );
  if (refuse || inside > outside)
    return {
      state: "refused",
      said: refuse
        ? words.brighterThanSky(bare(said(inside)), said(sky.most))
        : words.brighterInside(bare(said(inside)), said(outside)),
      answers: inside > outside ? [{ said: words.swapped, drafts: [swapped] }] : [],
    };
  if (low) return { state: "doubtful", said: words.lowSun, answers: [asRead] };
  if (outside > ABOVE_CLEAR * sky.most + (inLux ? 300 : 5))
    return {
      state: "refused",
      said: words.outsideTooBright(said(outside), said(sky.most)),
      answers: [],
    };
  if (data.sky === "evenly grey" && outside > GREY_MOST_frac * sky.most)
    return {
      state: "doubtful",
      said: words.notGrey(said(outside)),
      answers: [
        { said: words.wasBroken, drafts: [draftOf(ask, { ...(ask.data as object), sky: "broken" } as Json)] },
        asRead,
      ],
    };
  const panes = panesOf(places, bench, ask.spot, now_ms);
  const { modelled_frac } = calibrationOf(places, bench, ask.spot, panes, now_ms);
  if (panes.length === 0) return { state: "doubtful", said: words.noWindow, answers: [] };
  const { state, spotRatio } = spotCalibration({
    readInside: inside,
    readOutside: outside,
    modelled_frac: Math.max(0.00001, Math.min(1, modelled_frac)),
  });
  const ratios = [say.percent(inside / outside), say.percent(modelled_frac)] as const;
  return state === "ask"
    ? {
        state: "doubtful",
        said: spotRatio < 1 ? words.darker(...ratios) : words.brighter(...ratios),
        answers: [asRead],
      }
    : { state: "good", said: words.good(...ratios), answers: [] };
}

function judgeLamp(world: World, bench: Bench, ask: ReadAsk): ReadingCheck {
  const { say, places, now_ms } = world;
  const words = lightPageWords(say).check;
  const data = ask.data as unknown as UnderLampData;
  const [first] = lampsAt(places, bench.id, now_ms);
  if (!first) return { state: "refused", said: words.noLamp, answers: [] };
  if (data.under_lux !== undefined && first.data.source === "red and blue")
    return { state: "refused", said: words.redAndBlue, answers: [] };
  const now = lampLight(places, bench, ask.spot, now_ms);
  const then = lampLight(placesWith(places, ask, now_ms), bench, ask.spot, now_ms);
  if (!now || !then || now.ppfd_umol_m2_s <= 0) return { state: "doubtful", said: words.noLamp, answers: [] };
  const ratio = then.ppfd_umol_m2_s / now.ppfd_umol_m2_s;
  const ppfds = [say.number(then.ppfd_umol_m2_s), say.number(now.ppfd_umol_m2_s)] as const;
  return ratio > LAMP_OFF || ratio < 1 / LAMP_OFF
    ? {
        state: "doubtful",
        said: words.lampOff(...ppfds),
        answers: [{ said: words.asRead, drafts: [draftOf(ask, ask.data)] }],
      }
    : { state: "good", said: words.lampGood(...ppfds), answers: [] };
}

/** Light of the month, and the dates, with this reading in the book. */
function thenOf(
  world: World,
  ask: ReadAsk,
  month: number,
  need: NeedFigures | undefined,
): NonNullable<ReadingCheck["then"]> {
  const { say } = world;
  const words = lightPageWords(say);
  const scan = yearOf(world, world.airIn(placesWith(world.places, ask, world.now_ms)), ask.spot);
  const light = monthsOf(scan)[month - 1];
  if (!light) throw new PageError(`month is ${month}; expected 1 to 12`);
  const low_mol_m2_d = light.mid_mol_m2_d * Math.exp(-Z80 * light.sd_frac);
  const high_mol_m2_d = light.mid_mol_m2_d * Math.exp(Z80 * light.sd_frac);
  const band = need && spellBand(scan, need.min_mol_m2_d);
  const dates =
    band && typeof band !== "string"
      ? { from: dateBand(world, band.from), until: dateBand(world, band.until) }
      : {};
  return {
    light: {
      mid_mol_m2_d: light.mid_mol_m2_d,
      dull_mol_m2_d: light.dull_mol_m2_d,
      sunny_mol_m2_d: light.sunny_mol_m2_d,
      low_mol_m2_d,
      high_mol_m2_d,
    },
    ...dates,
    said: words.check.then(
      lightSaid(light.mid_mol_m2_d, say),
      words.range(lightSaid(low_mol_m2_d, say), lightSaid(high_mol_m2_d, say)),
      band && spellSaid(world, band),
    ),
  };
}
