import type { Entry } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger } from "@sillwood/bench/house";
import type { AirDay, Places } from "@sillwood/bench/places";
import type { SkillLight, SkillRun } from "@sillwood/simulator/skill-runs";
import type { ReportRow } from "../../../tools/report.ts";
import { SITE } from "./forecasts.ts";
import { mean } from "./score.ts";

/** Light of one spot on one day as the engine says it, with its truth. */
export interface LightDay {
  /** Run and spot in it: the days of one spot err together. */
  readonly spot: string;
  readonly truth_mol_m2_d: number;
  readonly said_mol_m2_d: number;
  /** Middle of the range, and its sd as a logarithm: place and, where it was not seen, weather. */
  readonly median_mol_m2_d: number;
  readonly sd_ln: number;
  readonly rests: Rests;
}

/** What the book had told of the light of a spot by a day. */
interface Rests {
  /** A daily light that somebody wrote and that nothing newer took the place of: it stands for all else. */
  readonly written: boolean;
  readonly window: boolean;
  readonly pair: boolean;
  readonly lamp: boolean;
  readonly direction: boolean;
}

export interface LightScore {
  readonly days_n: number;
  readonly spots_n: number;
  /** Mean over spots of ln of all light said over all that came; negative is too little. */
  readonly bias_ln: number;
  /** Mean over days, of the middle of the range. */
  readonly error_ln: number;
  /** Share of days within the 80 % range. */
  readonly coverage_frac: number;
}

/** One day in six, and one spot in three of each bench: both rows of a sill, its middle and its ends. */
const EVERY_d = 6;
const EVERY_SPOT = 3;
/** Under so little two days are not told apart. @source our assumption */
const LEAST_mol_m2_d = 0.05;
/** sd between the middle and the 90 % and 80 % points of a normal distribution. */
const Z90 = 1.2816;
const Z80 = 0.8416;

/**
 * Light of a sample of days and spots of a run, from all that its book holds at the end, beside what came.
 *
 * @param run_n place of the run among those scored together: runs of several seeds may share a name
 */
export function lightOfRun(run: SkillRun, run_n: number): LightDay[] {
  const ledger = createLedger({ crafts, site: SITE });
  for (const [file, text] of run.files) ledger.addSeries(file, text);
  ledger.add(run.lines as unknown as readonly Entry[]);
  const { places } = ledger.house();
  return run.light.flatMap(({ bench, dates, truth }: SkillLight) =>
    truth
      .filter((_, place) => place % EVERY_SPOT === 0)
      .flatMap(({ spot, level_mol_m2_d }) =>
        level_mol_m2_d.flatMap((truth_mol_m2_d, day) => {
          if (day % EVERY_d !== 0) return [];
          const air = ledger.airAt(spot, dates[day] as string);
          return [
            {
              spot: `${run_n} ${spot}`,
              truth_mol_m2_d,
              ...saidOf(air),
              rests: restsOn(places, bench, spot, air.to_ms - 1),
            },
          ];
        }),
      ),
  );
}

/** Dull and sunny days are the second and the eighth of ten; a day whose weather was seen has but one value. */
function saidOf({
  dli_mol_m2_d,
  daylight,
}: AirDay): Pick<LightDay, "said_mol_m2_d" | "median_mol_m2_d" | "sd_ln"> {
  const { dull_mol_m2_d, sunny_mol_m2_d, sd_frac } = daylight;
  const [dull, sunny] = [floored(dull_mol_m2_d), floored(sunny_mol_m2_d)];
  return {
    said_mol_m2_d: dli_mol_m2_d,
    median_mol_m2_d: sunny > dull ? Math.sqrt(dull * sunny) : dli_mol_m2_d,
    sd_ln: Math.hypot(sd_frac, Math.log(sunny / dull) / (2 * Z80)),
  };
}

const floored = (light_mol_m2_d: number) => Math.max(LEAST_mol_m2_d, light_mol_m2_d);

function restsOn({ lit, light, benches }: Places, bench: string, spot: string, at_ms: number): Rests {
  const told = (all: ReadonlyMap<string, readonly { readonly at_ms: number }[]>, ids: readonly string[]) =>
    ids.flatMap((id) => all.get(id) ?? []);
  const until = (all: readonly { readonly at_ms: number }[]) => all.filter((one) => one.at_ms <= at_ms);
  const own = [spot, bench];
  const windows = told(light.windows, own);
  const lamps = told(light.lamps, own);
  const written = told(lit, own);
  // What was first said later holds back to the beginning.
  const last_ms = (until(written).at(-1) ?? written[0])?.at_ms;
  const newer = [...windows, ...lamps, ...told(light.pairs, own), ...told(light.underLamps, own)];
  // A pair of any spot before the same window says something of all of them.
  const bySpots = [bench, ...(benches.get(bench)?.spots.map(({ id }) => id) ?? [])];
  return {
    written: last_ms !== undefined && !until(newer).some((one) => one.at_ms > last_ms),
    window: windows.length > 0,
    pair: until(told(light.pairs, bySpots)).length > 0,
    lamp: lamps.length > 0,
    direction: benches.get(bench)?.windowFaces_deg !== undefined,
  };
}

export function lightScore(days: readonly LightDay[]): LightScore {
  const bySpot = new Map<string, LightDay[]>();
  for (const day of days) bySpot.set(day.spot, [...(bySpot.get(day.spot) ?? []), day]);
  const ratio_ln = (said: number, truth: number) => Math.log(floored(said) / floored(truth));
  const errors = days.map((day) => ({
    error_ln: Math.abs(ratio_ln(day.median_mol_m2_d, day.truth_mol_m2_d)),
    sd_ln: day.sd_ln,
  }));
  return {
    days_n: days.length,
    spots_n: bySpot.size,
    bias_ln: mean(
      [...bySpot.values()].map((own) =>
        ratio_ln(
          mean(own.map(({ said_mol_m2_d }) => said_mol_m2_d)),
          mean(own.map(({ truth_mol_m2_d }) => truth_mol_m2_d)),
        ),
      ),
    ),
    error_ln: mean(errors.map(({ error_ln }) => error_ln)),
    coverage_frac: mean(errors.map(({ error_ln, sd_ln }) => (error_ln <= Z90 * sd_ln ? 1 : 0))),
  };
}

/** Groups overlap: a window may have been drawn and a pair been read behind it. */
const GROUPS: readonly (readonly [name: string, of: (rests: Rests) => boolean])[] = [
  ["all spots", () => true],
  ["a window drawn", ({ written, window }) => !written && window],
  ["a pair read", ({ written, pair }) => !written && pair],
  ["a lamp labelled", ({ written, lamp }) => !written && lamp],
  [
    "only a direction known",
    ({ written, window, pair, lamp, direction }) => !(written || window || pair || lamp) && direction,
  ],
  ["a daily light written", ({ written }) => written],
  ["nothing told", (rests) => !Object.values(rests).some((told) => told)],
];

/** What the table says of the light itself, over all spots and by what the book told of them. */
export function lightRows(days: readonly LightDay[]): ReportRow[] {
  return GROUPS.flatMap(([name, of]) => {
    const own = days.filter(({ rests }) => of(rests));
    if (own.length === 0) return [];
    const { days_n, spots_n, bias_ln, error_ln, coverage_frac } = lightScore(own);
    const reference = `${days_n} days of ${spots_n} spots`;
    const row = (figure: string, value: number, unit: string, goal: string, holds: boolean): ReportRow => ({
      figure: `light: ${figure}, ${name}`,
      value,
      unit,
      reference,
      goal,
      holds,
    });
    return [
      row(
        "80 % range holds the truth",
        coverage_frac,
        "share",
        "0.70 to 0.90",
        coverage_frac >= 0.7 && coverage_frac <= 0.9,
      ),
      row("bias (negative is too little)", bias_ln, "ln", "printed", true),
      row("mean absolute error of a day", error_ln, "ln", "printed", true),
    ];
  });
}
