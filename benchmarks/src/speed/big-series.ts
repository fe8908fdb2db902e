import { createHash } from "node:crypto";
import { type Json, printSeries } from "@sillwood/bench/book";
import { seeded } from "./seeded.ts";

export const BIG_DAY_ms = 86_400_000;
const HOUR_ms = 3_600_000;
/** A part of a series covers at most a month. */
const PART_d = 28;

/** One part of a series: what its entry says, and the file that the entry names. */
export interface BigSeries {
  readonly on: readonly string[];
  readonly data: Json;
  readonly file: string;
  readonly text: string;
}

/** A logger on the first bench by the hour and a weather record by the day, in parts of a month. */
export function bigSeries(seed: number, start_ms: number, days_n: number): readonly BigSeries[] {
  const random = seeded(seed + 1);
  const parts: BigSeries[] = [];
  const first_ms = Math.ceil(start_ms / HOUR_ms) * HOUR_ms;
  for (let day = 0; day < days_n; day += PART_d) {
    const from_ms = first_ms + day * BIG_DAY_ms;
    const part_d = Math.min(PART_d, days_n - day);
    const hours = Array.from({ length: part_d * 24 }, (_, i) => from_ms + i * HOUR_ms);
    const warm = hours.map(() => round(17 + 6 * random()));
    const damp = hours.map(() => round(0.35 + 0.25 * random()));
    parts.push(part("bench logger", "logger", ["bench-0"], ["air_C", "humidity_frac"], hours, [warm, damp]));
    const noons = Array.from({ length: part_d }, (_, i) => from_ms + i * BIG_DAY_ms + 20 * HOUR_ms);
    const days = noons.map((at_ms) => {
      const season = 8 * Math.sin(((at_ms / BIG_DAY_ms - 100) / 365.25) * 2 * Math.PI);
      const least_C = 8 + season + 4 * random();
      return [least_C + 4 + 8 * random(), least_C, random() < 0.3 ? 12 * random() : 0, 1 + 3 * random()];
    });
    const columns = [0, 1, 2, 3].map((i) => days.map((values) => round(values[i] as number)));
    const names = ["tMax_C", "tMin_C", "rain_mm", "wind_m_s"];
    parts.push(part("weather record", "weather", ["bench-9"], names, noons, columns));
  }
  return parts;
}

function part(
  series: string,
  what: "logger" | "weather",
  on: readonly string[],
  quantities: readonly string[],
  at_ms: readonly number[],
  values: readonly (readonly number[])[],
): BigSeries {
  const text = printSeries({ quantities, at_ms, values });
  const span = { from_ms: at_ms[0] as number, to_ms: at_ms.at(-1) as number, rows_n: at_ms.length };
  const file = createHash("sha256").update(text).digest("hex");
  return { on, data: { series, what, quantities, ...span }, file, text };
}

const round = (value: number) => Math.round(value * 100) / 100;
