import type { PlantId } from "../book/entry.ts";
import type { AnyCraft, CameDue } from "../crafts/craft.ts";
import type { Ledger } from "../house/ledger.ts";
import type { Work } from "../round/task.ts";
import type { Issued } from "./issued.ts";
import { type DatesRow, datesIn, ForecastsError, parseForecasts } from "./text.ts";

/** One forecast as issued with what came true. */
export interface Case {
  readonly plant: PlantId;
  readonly work: Work;
  readonly issued_ms: number;
  /** Twenty equally likely instants, ascending. */
  readonly dates_ms: readonly number[];
  /** When it came due, as now believed, and the doubt of that. */
  readonly due_ms: number;
  readonly sd_ms: number;
  readonly how: CameDue["how"];
  /** The plain guess: as long again as the time before. */
  readonly sameAgain_ms?: number;
}

/** Cases of one work, and why other cycles gave none. */
export interface Cases {
  readonly work: Work;
  readonly cases: readonly Case[];
  /** The file of their forecast is not here yet. */
  readonly waiting_n: number;
  /** Nothing was measured or seen towards their end. */
  readonly unseen_n: number;
  /** Their date is no better known than the forecast knew it. */
  readonly unsure_n: number;
  /** No forecast was issued between the time before and the due date. */
  readonly unforecast_n: number;
  /** Files that could not be read, with the reason. */
  readonly unreadable: ReadonlyMap<string, string>;
}

const MINUTE_ms = 60_000;
/** Forecast and cycle speak of the same time before when they place it so close together: clocks are put right later. */
const SAME_ms = 7 * 3_600_000;

/**
 * Matches forecasts as issued with what came of them: of every past cycle the first forecast that knew of its beginning, since
 * the later ones of the same cycle share its outcome and see it ever nearer.
 */
export function casesOf(ledger: Ledger, plants: readonly PlantId[]): readonly Cases[] {
  const issued = [...ledger.house().issued.values()].sort((a, b) => a.at_ms - b.at_ms);
  const rows = rowReader(ledger);
  return ledger.crafts.flatMap(
    (craft, craft_n) => casesOfCraft(craft, craft_n, ledger, plants, issued, rows) ?? [],
  );
}

/** When the oldest cycle began of which anybody knows what came: earlier forecasts can't be judged. */
export function firstBegin_ms(ledger: Ledger, plants: readonly PlantId[]): number {
  let first_ms = Number.POSITIVE_INFINITY;
  for (const plant of plants) {
    const state = ledger.lastState(plant);
    if (!state) continue;
    const sight = ledger.runner().sight(state);
    ledger.crafts.forEach((craft, craft_n) => {
      for (const { from_ms } of craft.came?.(state.slices[craft_n], sight).cycles ?? [])
        first_ms = Math.min(first_ms, from_ms);
    });
  }
  return first_ms;
}

function casesOfCraft(
  craft: AnyCraft,
  craft_n: number,
  ledger: Ledger,
  plants: readonly PlantId[],
  issued: readonly Issued[],
  rows: RowReader,
): Cases | undefined {
  if (!craft.came) return undefined;
  const cases: Case[] = [];
  const count = { waiting: 0, unseen: 0, unsure: 0, unforecast: 0 };
  let work: Work | undefined;
  for (const plant of plants) {
    const state = ledger.lastState(plant);
    if (!state) continue;
    const came = craft.came(state.slices[craft_n], ledger.runner().sight(state));
    work = came.work;
    count.unseen += came.unseen_n;
    for (const due of came.cycles) {
      const forecast = firstOf(plant, came.work, due, issued, rows);
      if (forecast === undefined) count.unforecast++;
      else if (forecast === "waiting") count.waiting++;
      else if (due.sd_ms >= spread(forecast.dates_ms)) count.unsure++;
      else cases.push({ plant, work: came.work, ...forecast, ...outcome(due) });
    }
  }
  return (
    work && {
      work,
      cases,
      waiting_n: count.waiting,
      unseen_n: count.unseen,
      unsure_n: count.unsure,
      unforecast_n: count.unforecast,
      unreadable: rows.unreadable,
    }
  );
}

const outcome = ({ at_ms, sd_ms, how, from_ms, lasted_ms }: CameDue) => ({
  due_ms: at_ms,
  sd_ms,
  how,
  ...(lasted_ms === undefined ? {} : { sameAgain_ms: from_ms + lasted_ms }),
});

function firstOf(
  plant: PlantId,
  work: Work,
  due: CameDue,
  issued: readonly Issued[],
  rows: RowReader,
): Pick<Case, "issued_ms" | "dates_ms"> | "waiting" | undefined {
  for (const { at_ms, file } of issued) {
    if (at_ms < due.from_ms) continue;
    if (at_ms >= due.done_ms || at_ms >= due.at_ms) return undefined;
    const row = rows.read(file, plant, work);
    if (row === "waiting") return row;
    // Written before the last time was known (a phone without a line): it spoke of the cycle before.
    if (row?.since_min === undefined) continue;
    if (Math.abs(at_ms + row.since_min * MINUTE_ms - due.from_ms) > SAME_ms) continue;
    return { issued_ms: at_ms, dates_ms: row.dates_min.map((wait_min) => at_ms + wait_min * MINUTE_ms) };
  }
  return undefined;
}

interface RowReader {
  read(file: string, plant: PlantId, work: Work): DatesRow | "waiting" | undefined;
  readonly unreadable: ReadonlyMap<string, string>;
}

/** Finds rows in the files that are here; the head of each is read once. */
function rowReader(ledger: Ledger): RowReader {
  const unreadable = new Map<string, string>();
  const sound = new Set<string>();
  const guarded = <Result>(file: string, read: () => Result): Result | undefined => {
    try {
      return read();
    } catch (error) {
      if (!(error instanceof ForecastsError)) throw error;
      unreadable.set(file, error.message);
      return undefined;
    }
  };
  return {
    unreadable,
    read(file, plant, work) {
      const text = ledger.issuedText(file);
      if (text === undefined) return "waiting";
      if (unreadable.has(file)) return undefined;
      if (!sound.has(file)) {
        if (!guarded(file, () => parseForecasts(text, () => false))) return undefined;
        sound.add(file);
      }
      return guarded(file, () => datesIn(text, plant, work));
    },
  };
}

function spread(dates_ms: readonly number[]): number {
  const mean = dates_ms.reduce((sum, at_ms) => sum + at_ms, 0) / dates_ms.length;
  return Math.sqrt(dates_ms.reduce((sum, at_ms) => sum + (at_ms - mean) ** 2, 0) / dates_ms.length);
}
