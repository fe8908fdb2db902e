import { benchReadings } from "../book/bench-readings.ts";
import type { Json } from "../book/line.ts";
import { LOGGER_COLUMNS, loggerRows } from "../book/logger-rows.ts";
import { seriesFile } from "../book/series-file.ts";
import type { BenchAir } from "../nursery/bench-air.ts";
import { instantOf, type LocalDay } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import type { LivedInRoom } from "../nursery/lived-in-room.ts";
import { SHELF, SILL } from "./draw-place.ts";
import type { DrawnRun } from "./draw-run.ts";
import { type KnownLight, lightFromLux_mol_m2_d } from "./known-light.ts";

/** Something read off an instrument of a bench. */
interface InstrumentEntry {
  readonly kind: string;
  readonly bench: number;
  readonly data: Json;
  readonly at_ms: number;
  readonly files?: readonly string[];
}

/** What thermometers, thermostats, loggers and meters put into the book, with the files that entries name. */
export function instrumentEntries(
  run: DrawnRun,
  known: readonly KnownLight[],
  chance: Chance,
): { readonly entries: readonly InstrumentEntry[]; readonly files: ReadonlyMap<string, string> } {
  const files = new Map<string, string>();
  const entries = [SILL, SHELF].flatMap((bench) => {
    const own = chance.under(bench);
    return [
      ...readings(run, bench, own.under("read")),
      ...settings(run, bench),
      ...logged(run, bench, files, own.under("logger")),
      ...fromLux(run, bench, known[bench] as KnownLight, own.under("lux")),
    ];
  });
  return { entries, files };
}

function readings(run: DrawnRun, bench: number, chance: Chance): InstrumentEntry[] {
  const wanted = new Set([
    ...(run.tools.air[bench] === "read" ? ["bench.air"] : []),
    ...(run.tools.light === "sum" ? ["bench.lit"] : []),
  ]);
  return benchReadings(
    run.benches[bench] as BenchAir,
    bench,
    bench === SILL ? "window" : "lamp",
    run.days.slice(0, run.days_n),
    chance,
    run.tools.readEvery_d,
  ).filter(({ kind }) => wanted.has(kind));
}

/** Somebody writes what the thermostat says, once, and thinks that it is the air at the plants. */
function settings(run: DrawnRun, bench: number): InstrumentEntry[] {
  if (run.tools.air[bench] !== "setting") return [];
  const { day_C, night_C } = run.rooms[bench] as LivedInRoom;
  const data = { dayAir_C: Math.round(day_C), nightAir_C: Math.round(night_C) };
  return [{ kind: "bench.air", bench, data, at_ms: run.from_ms + 60_000 }];
}

/** A logger that is read out every week or two, in the evening. */
function logged(run: DrawnRun, bench: number, files: Map<string, string>, chance: Chance): InstrumentEntry[] {
  if (run.tools.air[bench] !== "logger") return [];
  const air = run.benches[bench] as BenchAir;
  const rows = loggerRows(air, run.from_ms, (run.days[run.days_n] as LocalDay).midnight_ms, chance);
  const every_d = chance.whole(7, 21);
  const entries: InstrumentEntry[] = [];
  let next = 0;
  for (let day = every_d; day < run.days_n; day += every_d) {
    const at_ms = instantOf(run.zone, (run.days[day] as LocalDay).date, 20);
    let end = next;
    while (end < rows.length && (rows[end]?.at_ms as number) < at_ms) end++;
    if (end === next) continue;
    const file = seriesFile(LOGGER_COLUMNS, rows.slice(next, end));
    next = end;
    files.set(file.hash, file.text);
    const { quantities, from_ms, to_ms, rows_n } = file;
    entries.push({
      kind: "series.part",
      bench,
      data: {
        series: bench === SILL ? "sill logger" : "shelf logger",
        what: "logger",
        quantities,
        from_ms,
        to_ms,
        rows_n,
      },
      at_ms,
      files: [file.hash],
    });
  }
  return entries;
}

/** A day's light made of one lux reading; half of those who read lux go so far. */
function fromLux(run: DrawnRun, bench: number, known: KnownLight, chance: Chance): InstrumentEntry[] {
  if (run.tools.light !== "lux" || chance.happens(0.5)) return [];
  return known.lux.map((pair) => {
    const set = known.lamp?.hours.filter(({ from_ms }) => from_ms <= pair.at_ms).at(-1);
    const burns_h = set ? (set.off_h - set.on_h + 24) % 24 || 24 : 12;
    const lamp = bench === SHELF;
    const dli_mol_m2_d = Number(
      Math.max(0.1, Math.min(60, lightFromLux_mol_m2_d(pair, lamp ? burns_h : 8, lamp))).toFixed(1),
    );
    return {
      kind: "bench.lit",
      bench,
      data: { dli_mol_m2_d, light: lamp ? "lamp" : "window", ...(lamp ? { hours_h: burns_h } : {}) },
      at_ms: pair.at_ms + 120_000,
    };
  });
}
