import type { EntryId } from "../../book/entry.ts";
import type { PlantFacts } from "../../plants/facts.ts";
import type { Happening, Sight } from "../craft.ts";
import { FED, type Fed, FLUSHED, MIXED, type Mixed, type Solution } from "./kinds.ts";

/** What the craft keeps of one plant; what is dissolved in the pot is potting's ledger, and read from there. */
export interface FeedSlice {
  /** When its medium was last renewed; when it came into the book, where nobody wrote of another. */
  readonly freshAt_ms: number;
  readonly cutAt_ms?: number;
  readonly washedAt_ms?: number;
  readonly fedAt_ms?: number;
  readonly flushedAt_ms?: number;
  readonly feeds_n: number;
  /** Water poured in a day, of late. */
  readonly poured_mL_d?: number;
  readonly pouredAt_ms?: number;
  /** The tank that was made for it last. */
  readonly tank?: Tank;
  readonly problems: readonly FeedProblem[];
}

export interface Tank {
  readonly name: string;
  readonly at_ms: number;
  readonly solution: Solution;
  readonly expected_mS_cm: number;
}

interface FeedProblem {
  readonly entry: EntryId;
  readonly at_ms: number;
}

const PROBLEMS_n = 5;
const DAY_ms = 86_400_000;
/** Leaves left after a cut, below which it is a hard one. @source common practice, no source */
const HARD_CUT_frac = 0.5;
/** How fast the pace of pouring follows the last pours. @source our assumption */
const FOLLOWS_frac = 0.3;

export const startSlice = (plant: PlantFacts): FeedSlice => ({
  freshAt_ms: plant.pottedAt_ms ?? plant.broughtAt_ms,
  feeds_n: 0,
  problems: [],
});

/** What one entry does to the slice. Total: what makes no sense becomes a problem of it. */
export function feedFold(
  slice: FeedSlice,
  { effects, own, at_ms, entry }: Happening,
  _sight: Sight,
): FeedSlice {
  let next = slice;
  for (const effect of effects) {
    if (effect.effect === "medium renewed" && effect.renewed_frac > 0.5)
      next = { ...next, freshAt_ms: at_ms };
    else if (effect.effect === "leaf area" && (effect.kept_frac ?? 1) < HARD_CUT_frac)
      next = { ...next, cutAt_ms: at_ms };
    else if (effect.effect === "roots" && effect.kept_frac < 1) next = { ...next, washedAt_ms: at_ms };
    else if (effect.effect === "water in") next = poured(next, effect.volume_mL, at_ms);
  }
  if (!own) return next;
  const isObject = typeof own.data === "object" && own.data !== null;
  if (isObject && own.kind === FED) return { ...next, fedAt_ms: at_ms, feeds_n: next.feeds_n + 1 };
  if (isObject && own.kind === FLUSHED) return { ...next, flushedAt_ms: at_ms };
  const data = own.data as unknown as Partial<Mixed & Fed>;
  if (isObject && own.kind === MIXED && data.solution && typeof data.tank === "string")
    return {
      ...next,
      tank: { name: data.tank, at_ms, solution: data.solution, expected_mS_cm: data.expected_mS_cm ?? 0 },
    };
  return { ...next, problems: [...next.problems.slice(1 - PROBLEMS_n), { entry, at_ms }] };
}

function poured(slice: FeedSlice, volume_mL: number, at_ms: number): FeedSlice {
  if (!Number.isFinite(volume_mL)) return slice;
  const since_d = slice.pouredAt_ms === undefined ? undefined : (at_ms - slice.pouredAt_ms) / DAY_ms;
  // Several pours of one visit are one watering.
  if (since_d === undefined || since_d < 0.5)
    return since_d === undefined ? { ...slice, pouredAt_ms: at_ms } : slice;
  const pace = volume_mL / since_d;
  const before = slice.poured_mL_d ?? pace;
  return { ...slice, pouredAt_ms: at_ms, poured_mL_d: before + FOLLOWS_frac * (pace - before) };
}
