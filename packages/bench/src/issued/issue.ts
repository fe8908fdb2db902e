import { canonical } from "../book/canonical.ts";
import { type Digest, EMPTY_DIGEST, joinDigests, parseBucket, type Summary } from "../book/digest.ts";
import type { Sha256 } from "../book/entry.ts";
import { sha256Hex } from "../book/hash.ts";
import type { Daily, DayLine } from "../crafts/craft.ts";
import { FOLD_VERSION } from "../house/snapshot.ts";
import type { Desk } from "../pages/desk.ts";
import type { Draft } from "../round/pages.ts";
import { FORECAST_ISSUED } from "./kinds.ts";
import { type AheadRow, type DatesRow, FORECAST_LIMITS, printForecasts } from "./text.ts";

/** Raised whenever the same folded book would be given other forecasts. */
const FORECAST_VERSION = 1;
/** The version of the engine that a kept forecast names. */
export const ENGINE = `${FOLD_VERSION}.${FORECAST_VERSION}`;

const MINUTE_ms = 60_000;
/** Stretches of a daily amount that are kept: further ahead the dates say enough. */
const STRETCHES_n = 8;
/** Digits of a daily amount: more than any scale tells. */
const DIGITS_n = 4;

/** What the day's first round writes: the file first, then the entry that names it. */
export interface ToKeep {
  readonly draft: Draft;
  readonly sha256: Sha256;
  readonly type: "text/csv";
  readonly text: string;
}

/**
 * Digest of what forecasts rest on: the entries that everybody may read, and the files that are still missing.
 *
 * @param summary digests of the store's buckets
 * @param missing hashes of series files that have not arrived
 */
function inputsDigest(summary: Summary, missing: readonly string[]): Sha256 {
  let digest: Digest = EMPTY_DIGEST;
  for (const [bucket, one] of Object.entries(summary))
    if (parseBucket(bucket)?.readers === "all") digest = joinDigests(digest, one);
  return sha256Hex(canonical({ entries: { ...digest }, missing: [...new Set(missing)].sort() }));
}

/** Whether this is the first round of its book day: nothing was kept for it yet, and there is something to forecast. */
export const isIssueDue = ({ ledger, now_ms, living }: Desk): boolean =>
  !ledger.house().issued.has(ledger.calendar.dateOf(now_ms)) && living().length > 0;

/** The forecasts of all plants as the desk sees them now; undefined when no craft forecasts anything. */
export function forecastsToKeep(desk: Desk, summary: Summary): ToKeep | undefined {
  const { ledger, now_ms } = desk;
  const dates = new Map<string, DatesRow>();
  const ahead = new Map<string, AheadRow>();
  const plants = new Set<string>();
  for (const plant of desk.living()) {
    for (const { outlook } of desk.view(plant)?.outlooks ?? []) {
      const { line } = outlook;
      if (line?.dates_ms.length !== FORECAST_LIMITS.dates_n || dates.has(`${plant} ${line.work}`)) continue;
      plants.add(plant);
      dates.set(`${plant} ${line.work}`, { plant, work: line.work, ...minutesOf(line, now_ms) });
      const { daily } = outlook;
      if (daily && daily.stretches.length > 0)
        ahead.set(`${plant} ${daily.name}`, {
          plant,
          name: daily.name,
          stretches: stretchesOf(daily, now_ms),
        });
    }
  }
  if (plants.size === 0) return undefined;
  const date = ledger.calendar.dateOf(now_ms);
  const inputs = inputsDigest(
    summary,
    ledger.missing().map(({ file }) => file),
  );
  const text = printForecasts({
    date,
    issued_ms: now_ms,
    engine: ENGINE,
    inputs,
    dates: [...dates.values()],
    ahead: [...ahead.values()],
  });
  const sha256 = sha256Hex(text);
  const data = { date, engine: ENGINE, inputs, plants_n: plants.size };
  return { draft: { kind: FORECAST_ISSUED, on: [], data, files: [sha256] }, sha256, type: "text/csv", text };
}

function minutesOf(
  { dates_ms, since_ms }: DayLine,
  now_ms: number,
): Pick<DatesRow, "since_min" | "dates_min"> {
  const { wait_min } = FORECAST_LIMITS;
  const minute = (at_ms: number) => Math.round((at_ms - now_ms) / MINUTE_ms);
  return {
    ...(since_ms === undefined ? {} : { since_min: Math.max(-wait_min, Math.min(0, minute(since_ms))) }),
    dates_min: dates_ms.map((at_ms) => Math.max(0, Math.min(wait_min, minute(at_ms)))).sort((a, b) => a - b),
  };
}

function stretchesOf({ stretches }: Daily, now_ms: number): AheadRow["stretches"] {
  let before_min = 0;
  return stretches.slice(0, STRETCHES_n).map(({ to_ms, mean, sd }) => {
    before_min = Math.max(before_min + 1, Math.round((to_ms - now_ms) / MINUTE_ms));
    return { to_min: before_min, mean: rounded(mean), sd: rounded(sd) };
  });
}

const rounded = (value: number) => Number(value.toPrecision(DIGITS_n));
