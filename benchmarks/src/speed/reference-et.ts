import { referenceEtDaily_mm_d, referenceEtDailyArray } from "@sillwood/science/water";
import { apart, runInC } from "./in-c.ts";
import { best_ms } from "./measured.ts";
import { seeded } from "./seeded.ts";

const SITE = { latitude_deg: 47.6, elevation_m: 20 } as const;
const COLUMNS = [
  "airMax_C",
  "airMin_C",
  "vapourPressure_kPa",
  "solar_MJ_m2_d",
  "wind2m_m_s",
  "dayOfYear_d",
] as const;

/** Nanoseconds a day of reference ET takes, ours and in C, and how far their results lie apart. */
export interface EtSpeed {
  readonly kernel_ns: number;
  readonly scalar_ns: number;
  /** C computing all of it for every day, and C with what a site and calendar day fix taken out of the loop. */
  readonly c:
    | { readonly everyDay_ns: number; readonly kept_ns: number; readonly apart_mm_d: number }
    | undefined;
  /** Ours against ours. */
  readonly apart_mm_d: number;
}

type Days = Readonly<Record<(typeof COLUMNS)[number], Float64Array>>;

/** Invented weather of many days, within what the validated function takes. */
function someDays(days_n: number, seed: number): Days {
  const random = seeded(seed);
  const column = (draw: (i: number) => number) => Float64Array.from({ length: days_n }, (_, i) => draw(i));
  const airMin_C = column(() => 25 * random() - 3);
  return {
    airMin_C,
    airMax_C: column((i) => (airMin_C[i] as number) + 2 + 14 * random()),
    vapourPressure_kPa: column(() => 0.4 + 0.9 * random()),
    solar_MJ_m2_d: column(() => 2 + 24 * random()),
    wind2m_m_s: column(() => 0.3 + 4 * random()),
    dayOfYear_d: column((i) => 1 + (i % 365)),
  };
}

/** @param cc name of a C compiler; without one only our own figures come */
export function etSpeed(days_n: number, runs_n: number, seed: number, cc: string | undefined): EtSpeed {
  const days = someDays(days_n, seed);
  const out_mm_d = new Float64Array(days_n);
  const scalar_mm_d = new Float64Array(days_n);
  const kernel_ms = best_ms(runs_n, () => referenceEtDailyArray({ ...days, ...SITE }, out_mm_d));
  const { airMax_C, airMin_C, vapourPressure_kPa, solar_MJ_m2_d, wind2m_m_s, dayOfYear_d } = days;
  const scalar_ms = best_ms(runs_n, () => {
    for (let i = 0; i < days_n; i++)
      scalar_mm_d[i] = referenceEtDaily_mm_d({
        airMax_C: airMax_C[i] as number,
        airMin_C: airMin_C[i] as number,
        vapourPressure_kPa: vapourPressure_kPa[i] as number,
        solar_MJ_m2_d: solar_MJ_m2_d[i] as number,
        wind2m_m_s: wind2m_m_s[i] as number,
        dayOfYear_d: dayOfYear_d[i] as number,
        latitude_deg: SITE.latitude_deg,
        elevation_m: SITE.elevation_m,
      });
  });
  const each_ns = (ms: number) => (ms * 1e6) / days_n;
  return {
    kernel_ns: each_ns(kernel_ms),
    scalar_ns: each_ns(scalar_ms),
    c: cc === undefined ? undefined : inC(days, days_n, runs_n, cc, scalar_mm_d, each_ns),
    apart_mm_d: apart(out_mm_d, scalar_mm_d),
  };
}

function inC(
  days: Days,
  days_n: number,
  runs_n: number,
  cc: string,
  ours_mm_d: Float64Array,
  each_ns: (ms: number) => number,
): NonNullable<EtSpeed["c"]> {
  const { ms, out } = runInC(
    cc,
    "reference-et",
    COLUMNS.map((name) => days[name]),
    days_n,
    runs_n,
  );
  const [every_ms = Number.NaN, kept_ms = Number.NaN] = ms;
  return { everyDay_ns: each_ns(every_ms), kept_ns: each_ns(kept_ms), apart_mm_d: apart(ours_mm_d, out) };
}
