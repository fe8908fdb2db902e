import { crpsOfSample } from "@sillwood/science/chance";
import type { Case } from "./cases.ts";

/** How forecasts as issued compare with what came of them; times in days. */
export interface Score {
  readonly n: number;
  /** When the first and the last of them were issued. */
  readonly first_ms: number;
  readonly last_ms: number;
  /** Dates that fell into the 80 % range. */
  readonly held_n: number;
  readonly held_frac: number;
  /** How many of so many hold 8 times in 10 by chance alone, when each holds 8 times in 10. */
  readonly usual: { readonly low_n: number; readonly high_n: number };
  /** Mean continuous ranked probability score. */
  readonly crps_d: number;
  /** Mean distance of the middle date from the date that came. */
  readonly off_d: number;
  /** Mean of middle less what came: above 0 the forecasts were late. */
  readonly late_d: number;
  /** Mean width of the 80 % range. */
  readonly range_d: number;
  /** Mean doubt of the dates that came. */
  readonly truthSd_d: number;
  readonly weighed_n: number;
  /** The plain guess beside ours, over the cycles that had one before them. For a bare date the score is its distance. */
  readonly sameAgain?: {
    readonly n: number;
    readonly crps_d: number;
    readonly late_d: number;
    readonly oursCrps_d: number;
    readonly oursOff_d: number;
  };
}

const DAY_ms = 86_400_000;

/** Scores of some cases; undefined for none. Their order does not matter. */
export function scoreOf(cases: readonly Case[]): Score | undefined {
  if (cases.length === 0) return undefined;
  // In one order, so that sums round alike on every device.
  const ordered = [...cases].sort((a, b) => a.issued_ms - b.issued_ms || (a.plant < b.plant ? -1 : 1));
  const rows = ordered.map((one) => {
    const wait = (at_ms: number) => (at_ms - one.issued_ms) / DAY_ms;
    const waits_d = one.dates_ms.map(wait);
    const [low, middle, high] = [0.1, 0.5, 0.9].map((share) => quantile(waits_d, share)) as Triple;
    const came = wait(one.due_ms);
    return {
      held: came >= low && came <= high ? 1 : 0,
      crps: crpsOfSample({ sample: waits_d, observed: came }),
      late: middle - came,
      range: high - low,
      truthSd: one.sd_ms / DAY_ms,
      weighed: one.how === "weighed" ? 1 : 0,
      again: one.sameAgain_ms === undefined ? undefined : wait(one.sameAgain_ms) - came,
    };
  });
  const again = rows.filter((row) => row.again !== undefined);
  const held_n = sum(rows.map(({ held }) => held));
  return {
    n: rows.length,
    first_ms: ordered[0]?.issued_ms as number,
    last_ms: ordered.at(-1)?.issued_ms as number,
    held_n,
    held_frac: held_n / rows.length,
    usual: { low_n: heldAt(rows.length, 0.1), high_n: heldAt(rows.length, 0.9) },
    crps_d: mean(rows.map(({ crps }) => crps)),
    off_d: mean(rows.map(({ late }) => Math.abs(late))),
    late_d: mean(rows.map(({ late }) => late)),
    range_d: mean(rows.map(({ range }) => range)),
    truthSd_d: mean(rows.map(({ truthSd }) => truthSd)),
    weighed_n: sum(rows.map(({ weighed }) => weighed)),
    ...(again.length > 0
      ? {
          sameAgain: {
            n: again.length,
            crps_d: mean(again.map((row) => Math.abs(row.again as number))),
            late_d: mean(again.map((row) => row.again as number)),
            oursCrps_d: mean(again.map(({ crps }) => crps)),
            oursOff_d: mean(again.map(({ late }) => Math.abs(late))),
          },
        }
      : {}),
  };
}

const PROMISED_frac = 0.8;

/**
 * How many of n ranges hold with this probability or less, when each holds 8 times in 10 apart from the others.
 *
 * @source binomial distribution
 */
function heldAt(n: number, probability: number): number {
  // In logarithms: a large book has more ranges than a power of 0.2 has digits.
  let ln = n * Math.log(1 - PROMISED_frac);
  let upTo = Math.exp(ln);
  let held_n = 0;
  while (upTo < probability && held_n < n) {
    held_n++;
    ln += Math.log((n - held_n + 1) / held_n) + Math.log(PROMISED_frac / (1 - PROMISED_frac));
    upTo += Math.exp(ln);
  }
  return held_n;
}

type Triple = [number, number, number];

/** Between neighbours of equally likely values in a straight line; each stands for the middle of its share. */
function quantile(ascending: readonly number[], share: number): number {
  const place = Math.max(0, Math.min(ascending.length - 1, share * ascending.length - 0.5));
  const low = ascending[Math.floor(place)] as number;
  return low + (place - Math.floor(place)) * ((ascending[Math.ceil(place)] as number) - low);
}

const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);
const mean = (values: readonly number[]) => sum(values) / values.length;
