import { calibrationOf } from "../../places/light/calibration.ts";
import { panesOf } from "../../places/light/windows.ts";
import type { Bench } from "../../places/places.ts";
import type { World } from "../craft.ts";
import { mol_per_umol_h } from "./lamp-advice.ts";
import type { NeedFigures } from "./need.ts";
import type { ReadAsk, WorthReading } from "./page-shape.ts";
import { placesWith } from "./read-taken.ts";
import { type SpellBand, spellBand, type YearScan } from "./season.ts";
import { dateBand } from "./short.ts";
import { lightPageWords } from "./words-page.ts";
import { LIGHT, lightSaid, withLight, Z80 } from "./workings.ts";

/** A spot of the bench with a plant, as far as a reading is concerned. */
export interface Readable {
  readonly spot: string;
  readonly need: NeedFigures;
  readonly scan: YearScan;
}

const PAIR_s = 120;
const LAMP_s = 60;
/** Narrowing of a date that changes what one does. @source our assumption */
const LEAST_DAYS_n = 5;
const LEAST_HOURS_h = 0.5;
/** An evenly grey noon, lux; any would do, only the ratio counts. */
const GREY_lux = 10_000;

/** The one reading that would narrow most, where that would change an act: a date, or the hours of a lamp. */
export function worthReading(
  world: World,
  bench: Bench,
  readables: readonly Readable[],
): WorthReading | undefined {
  let best: { readonly gain: number; readonly reading: WorthReading } | undefined;
  const tried = candidates(readables);
  for (const one of tried) {
    const found = worthOf(world, bench, one);
    if (found && (!best || found.gain > best.gain)) best = found;
  }
  return best?.reading;
}

/** The spot in the middle of the light and the two ends: readings say something of their neighbours, so that three are enough to try. */
function candidates(readables: readonly Readable[]): readonly Readable[] {
  const byLight = [...readables].sort(
    (a, b) => (a.scan.days[0]?.dli_mol_m2_d ?? 0) - (b.scan.days[0]?.dli_mol_m2_d ?? 0),
  );
  const at = [Math.floor(byLight.length / 2), 0, byLight.length - 1];
  return [...new Set(at)].flatMap((i) => byLight[i] ?? []);
}

function worthOf(
  world: World,
  bench: Bench,
  { spot, need, scan }: Readable,
): { readonly gain: number; readonly reading: WorthReading } | undefined {
  const { say, places, now_ms, airIn } = world;
  const words = lightPageWords(say);
  const day = scan.days[0];
  if (!day) return undefined;
  const { window_mol_m2_d, lamp_mol_m2_d, lamp_umol_m2_s, sd_frac } = day.daylight;
  const ask = askFor(world, bench, spot, lamp_mol_m2_d > window_mol_m2_d, lamp_umol_m2_s);
  if (!ask) return undefined;
  const then = airIn(placesWith(places, ask, now_ms))(spot, day.date);
  const sdThen_frac = then.daylight.sd_frac;
  if (!(sdThen_frac < sd_frac * 0.9)) return undefined;
  const bandNow = spellBand(scan, need.min_mol_m2_d);
  const bandThen = spellBand(scan, need.min_mol_m2_d, sdThen_frac / sd_frac);
  const narrower_d = width_d(bandNow) - width_d(bandThen);
  const perHour = mol_per_umol_h * lamp_umol_m2_s;
  const hoursNow = perHour > 0 ? (2 * Z80 * sd_frac * day.dli_mol_m2_d) / perHour : 0;
  const narrower_h = hoursNow * (1 - sdThen_frac / sd_frac);
  const within = (z: number) => day.dli_mol_m2_d * Math.exp(z * Z80 * sd_frac);
  const open = within(-1) < need.min_mol_m2_d && need.min_mol_m2_d < within(1);
  const gain = Math.max(
    narrower_d,
    open ? LEAST_DAYS_n : 0,
    narrower_h >= LEAST_HOURS_h ? LEAST_DAYS_n * narrower_h : 0,
  );
  if (gain < LEAST_DAYS_n) return undefined;
  const range = (sd: number) =>
    words.range(
      lightSaid(day.dli_mol_m2_d * Math.exp(-Z80 * sd), say),
      lightSaid(day.dli_mol_m2_d * Math.exp(Z80 * sd), say),
    );
  const change =
    narrower_d >= LEAST_DAYS_n && typeof bandNow !== "string" && typeof bandThen !== "string"
      ? words.worth.dates(dateBand(world, bandNow.from).said, dateBand(world, bandThen.from).said)
      : words.worth.light(range(sd_frac), range(sdThen_frac));
  const isPair = ask.kind === "light.pair";
  const seconds = isPair ? PAIR_s : LAMP_s;
  const spotSaid = say.name(spot);
  return {
    gain,
    reading: {
      spot,
      spotSaid,
      kind: ask.kind,
      said: isPair
        ? words.worth.pair(spotSaid, say.minutes(seconds / 60), change)
        : words.worth.lamp(spotSaid, say.minutes(seconds / 60), change),
      seconds,
      sdNow_frac: sd_frac,
      sdThen_frac,
      working: {
        title: words.working.worth,
        result: change,
        value: sdThen_frac,
        unit: "share",
        origin: "assumed",
        formula: words.working.worthFormula,
        sum: words.working.worthSum(say.percent(sd_frac), say.percent(sdThen_frac)),
        inputs: [
          {
            name: words.working.lightHere,
            said: withLight(day.dli_mol_m2_d, say),
            value: day.dli_mol_m2_d,
            unit: LIGHT,
            origin: day.light.origin,
            from: day.light.from(say),
          },
          {
            name: words.working.doubt,
            said: `±${say.percent(sd_frac)}`,
            value: sd_frac,
            unit: "share",
            origin: day.light.origin,
            from: words.working.doubtFrom,
          },
        ],
        source: words.working.sourceWorth,
        notes: isPair ? [words.working.worthNote] : [words.working.worthLampNote],
      },
    },
  };
}

/** The reading as it would come out if the book were right: it moves nothing and narrows what it can. */
function askFor(
  { places, now_ms }: World,
  bench: Bench,
  spot: string,
  mostlyLamp: boolean,
  lamp_umol_m2_s: number,
): ReadAsk | undefined {
  if (mostlyLamp)
    return lamp_umol_m2_s >= 0.1
      ? { spot, kind: "light.lamp", data: { ppfd_umol_m2_s: Math.min(2600, lamp_umol_m2_s) } }
      : undefined;
  const panes = panesOf(places, bench, spot, now_ms);
  const { modelled_frac, ratio_frac } = calibrationOf(places, bench, spot, panes, now_ms);
  const inside_lux = modelled_frac * ratio_frac * GREY_lux;
  return inside_lux >= 1
    ? { spot, kind: "light.pair", data: { inside_lux, outside_lux: GREY_lux, sky: "evenly grey" } }
    : undefined;
}

const width_d = (band: SpellBand | "never" | "always"): number =>
  typeof band === "string" ? 0 : band.from.high_d - band.from.low_d;
