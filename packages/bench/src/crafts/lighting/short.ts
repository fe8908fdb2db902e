import { errorBudget } from "@sillwood/science/light";
import { addDays } from "../../places/time.ts";
import { type Working, type WorkingInput, weakest } from "../../working/working.ts";
import type { World } from "../craft.ts";
import { mol_per_umol_h } from "./lamp-advice.ts";
import type { NeedFigures } from "./need.ts";
import type { DateBand, Short } from "./page-shape.ts";
import {
  type MonthLight,
  monthsOf,
  type SpellBand,
  spellBand,
  type Triple,
  type YearScan,
} from "./season.ts";
import { dayMonth } from "./words.ts";
import { lightPageWords } from "./words-page.ts";
import { fromWorking, LIGHT, needWorking, withLight } from "./workings.ts";

/** What was believed before the last reading of the bench. */
export interface Before {
  readonly entry: NonNullable<Short["before"]>["entry"];
  readonly scan: YearScan;
  readonly said: string;
}

/** The year of a spot, and what stands there. */
interface SpotYear {
  readonly scan: YearScan;
  readonly need: NeedFigures;
  /** Longest day that its kind bears. */
  readonly cap_h: number;
  readonly before?: Before | undefined;
}

const HALF_HOURS = 2;

/** When a spot stops being enough for what stands there, and when it is again. */
export function shortOf(world: World, { scan, need, cap_h, before }: SpotYear): Short {
  const band = spellBand(scan, need.min_mol_m2_d);
  const darkest = monthsOf(scan).reduce((least, one) =>
    one.mid_mol_m2_d < least.mid_mol_m2_d ? one : least,
  );
  const wanted_h = band === "never" ? undefined : lampWanted_h(darkest, need);
  const lamp_h = wanted_h !== undefined && wanted_h <= cap_h ? wanted_h : undefined;
  const dates = datesOf(world, band);
  const said = spellSaid(world, band, lamp_h);
  const was = before && beforeOf(world, before, need);
  const tooLong = wanted_h !== undefined && lamp_h === undefined ? { wanted_h, cap_h } : undefined;
  const working = shortWorking(world, { said, band, need, darkest, was, read: before?.said, tooLong });
  return {
    state:
      band === "never"
        ? "never short"
        : band === "always"
          ? "short always"
          : band.from.mid_d <= 0
            ? "short now"
            : "short later",
    said,
    ...dates,
    ...(lamp_h === undefined ? {} : { lamp_h }),
    ...(was ? { before: was } : {}),
    origin: working.origin,
    working,
  };
}

/** Hours of the lamp above a spot that close the gap in the darkest month, to the half hour; undefined without a lamp. */
function lampWanted_h(
  { day, window_mol_m2_d, sky_mol_m2_d }: MonthLight,
  need: NeedFigures,
): number | undefined {
  const perHour_mol = mol_per_umol_h * day.daylight.lamp_umol_m2_s;
  if (perHour_mol <= 0) return undefined;
  const gap = Math.max(0, need.min_mol_m2_d - window_mol_m2_d - sky_mol_m2_d);
  return Math.ceil((HALF_HOURS * gap) / perHour_mol) / HALF_HOURS;
}

const datesOf = (world: World, band: SpellBand | "never" | "always"): Pick<Short, "from" | "until"> =>
  typeof band === "string" ? {} : { from: dateBand(world, band.from), until: dateBand(world, band.until) };

export function dateBand({ calendar, now_ms, say }: World, { mid_d, low_d, high_d }: Triple): DateBand {
  const today = calendar.dateOf(now_ms);
  const at = (days: number) => addDays(today, Math.round(days));
  const [date, low, high] = [at(mid_d), at(low_d), at(high_d)];
  return {
    date,
    low,
    high,
    said:
      low === high
        ? dayMonth(date, say)
        : lightPageWords(say).dateBand(dayMonth(date, say), dayMonth(low, say), dayMonth(high, say)),
  };
}

export function spellSaid(world: World, band: SpellBand | "never" | "always", lamp_h?: number): string {
  const words = lightPageWords(world.say).page;
  if (band === "never") return words.enoughAllYear;
  if (band === "always") return words.shortAllYear(lamp_h);
  const at = ({ mid_d }: Triple) => dateBand(world, { mid_d, low_d: mid_d, high_d: mid_d }).said;
  return words.shortFrom(at(band.from), at(band.until), lamp_h);
}

function beforeOf(world: World, { entry, scan }: Before, need: NeedFigures): NonNullable<Short["before"]> {
  const band = spellBand(scan, need.min_mol_m2_d);
  const words = lightPageWords(world.say).page;
  const dates = datesOf(world, band);
  const said =
    dates.from && dates.until
      ? words.was(dates.from.said, dates.until.said)
      : words.wasSo(spellSaid(world, band));
  return { entry, ...dates, said };
}

interface ShortParts {
  readonly said: string;
  readonly band: SpellBand | "never" | "always";
  readonly need: NeedFigures;
  readonly darkest: MonthLight;
  readonly was: Short["before"] | undefined;
  readonly read: string | undefined;
  readonly tooLong: { readonly wanted_h: number; readonly cap_h: number } | undefined;
}

function shortWorking(world: World, { said, band, need, darkest, was, read, tooLong }: ShortParts): Working {
  const { say } = world;
  const words = lightPageWords(say);
  const { working } = words;
  const needs = needWorking(need, say);
  const { origin, from } = darkest.day.light;
  const sd = errorBudget([{ name: "place", error_frac: Math.min(3, darkest.sd_frac) }]);
  const inputs: WorkingInput[] = [
    fromWorking(needs, needs.source),
    {
      name: working.darkest(words.month(darkest.month)),
      said: withLight(darkest.mid_mol_m2_d, say),
      value: darkest.mid_mol_m2_d,
      unit: LIGHT,
      origin,
      from: from(say),
    },
    {
      name: working.doubt,
      said: `±${say.percent(darkest.sd_frac)}`,
      value: darkest.sd_frac,
      unit: "share",
      origin,
      from: working.doubtFrom,
    },
  ];
  const dates = datesOf(world, band);
  return {
    title: working.short,
    result: said,
    unit: "",
    origin: weakest([origin, "assumed"]),
    formula: working.shortFormula,
    sum: working.shortSum(
      withLight(darkest.mid_mol_m2_d, say),
      withLight(darkest.mid_mol_m2_d * sd.low_frac, say),
      withLight(darkest.mid_mol_m2_d * sd.high_frac, say),
      withLight(need.min_mol_m2_d, say),
    ),
    inputs,
    source: working.sourceLight,
    movesMost: darkest.lamp_mol_m2_d > darkest.window_mol_m2_d ? working.movesLamp : working.movesWindow,
    notes: [
      ...(dates.from && dates.until ? [working.dates(dates.from.said, dates.until.said)] : []),
      ...(tooLong
        ? [
            working.lampTooLong(
              words.hours(tooLong.wanted_h),
              words.hours(tooLong.cap_h),
              tooLong.wanted_h > 24,
            ),
          ]
        : []),
      ...(was && read ? [working.before(was.said, read)] : []),
      ...(typeof band === "string" ? [] : [working.notWeather]),
    ],
  };
}
