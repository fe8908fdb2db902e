import { type BenchAir, dailyLight_mol_m2_d } from "../nursery/bench-air.ts";
import { DAY_ms, type LocalDay } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { saturation_kPa } from "../nursery/vapour.ts";
import type { Json } from "./line.ts";

/** What somebody reads off a thermometer and a light meter and writes down for a bench. */
interface BenchReading {
  readonly at_ms: number;
  readonly kind: "bench.air" | "bench.lit";
  readonly bench: number;
  readonly data: Json;
}

const SIX_WEEKS_d = 42;

/**
 * Once in six weeks or as often as is said, in the evening, somebody reads the thermometer and sums up a week of light. Read from that day and the
 * six before it, never from later ones. A meter is off by the same factor every time, and a little more by chance.
 *
 * @param days the days on which somebody may read
 */
export function benchReadings(
  air: BenchAir,
  bench: number,
  light: "window" | "lamp" | "sun",
  days: readonly LocalDay[],
  chance: Chance,
  every_d = SIX_WEEKS_d,
): BenchReading[] {
  const meter = chance.logNormal(1, 0.15);
  return days.flatMap((day, index) => {
    if (index % every_d !== 0) return [];
    const at_ms = Math.round(day.midnight_ms + chance.between(0.84, 0.9) * DAY_ms);
    const seen = [Math.max(0, index - 6), index] as const;
    const dli_mol_m2_d = round(Math.max(0.1, meanLight(air, seen) * meter * chance.logNormal(1, 0.08)), 1);
    return [
      { at_ms, kind: "bench.air", bench, data: airRead(air, seen, chance) },
      { at_ms: at_ms + 90_000, kind: "bench.lit", bench, data: { dli_mol_m2_d, light } },
    ];
  });
}

function meanLight(air: BenchAir, [from, to]: readonly [number, number]): number {
  let sum = 0;
  for (let day = from; day <= to; day++) sum += dailyLight_mol_m2_d(air, day, 1);
  return sum / (to - from + 1);
}

function airRead(air: BenchAir, [from, to]: readonly [number, number], chance: Chance): Json {
  const sums = { day: 0, day_n: 0, night: 0, night_n: 0, humid: 0 };
  for (let i = 0; i < air.hours_n; i++) {
    const day = air.dayOf[i] as number;
    if (day < from || day > to) continue;
    const air_C = air.air_C[i] as number;
    sums.humid += (air.vapour_kPa[i] as number) / saturation_kPa(air_C);
    if ((air.ppfd_umol_m2_s[i] as number) > 5) {
      sums.day += air_C;
      sums.day_n++;
    } else {
      sums.night += air_C;
      sums.night_n++;
    }
  }
  const humid_frac = sums.humid / Math.max(1, sums.day_n + sums.night_n) + chance.normal(0, 0.04);
  const dayAir_C = round(sums.day / Math.max(1, sums.day_n) + chance.normal(0, 0.6), 0);
  return {
    dayAir_C,
    nightAir_C: sums.night_n > 0 ? round(sums.night / sums.night_n + chance.normal(0, 0.6), 0) : dayAir_C,
    humidity_frac: round(Math.max(0.15, Math.min(0.95, humid_frac)), 2),
  };
}

const round = (value: number, digits: number) => Number(value.toFixed(digits));
