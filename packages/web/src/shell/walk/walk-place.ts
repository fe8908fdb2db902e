import { useSyncExternalStore } from "react";

/** Where a walk stands. Kept on this device only; the entries themselves tell another device how far it went. */
export interface WalkPlace {
  readonly bench: string;
  /** Plants to pass, in walking order, as they were when the walk of this bench began. */
  readonly stops: readonly string[];
  readonly at_n: number;
  readonly startedAt_ms: number;
  readonly touchedAt_ms: number;
  /** Tasks written on this walk of the bench. */
  readonly done_n: number;
  /** Whether `round.walked` was written for it. */
  readonly closed: boolean;
}

const KEY = "sillwood.walk";
let current: WalkPlace | undefined | null = null;
const listeners = new Set<() => void>();

function read(): WalkPlace | undefined {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? "null") as WalkPlace | null;
    return kept && Array.isArray(kept.stops) ? kept : undefined;
  } catch {
    return undefined;
  }
}

export function walkPlace(): WalkPlace | undefined {
  if (current === null) current = read();
  return current;
}

export function setWalk(place: WalkPlace | undefined): void {
  current = place;
  try {
    if (place) localStorage.setItem(KEY, JSON.stringify(place));
    else localStorage.removeItem(KEY);
  } catch {
    // Without storage the walk is remembered until the page closes.
  }
  for (const listener of listeners) listener();
}

export function useWalkPlace(): WalkPlace | undefined {
  return useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, walkPlace);
}

/** Moves along the stops; at the end the place lies one past the last stop. */
export const stepped = (place: WalkPlace, by_n: number, now_ms: number): WalkPlace => ({
  ...place,
  at_n: Math.min(Math.max(place.at_n + by_n, 0), place.stops.length),
  touchedAt_ms: now_ms,
});

/** A walk is resumed on the day it was begun; the next morning starts anew. */
const SAME_ROUND_ms = 14 * 3_600_000;
export const isResumable = (place: WalkPlace | undefined, now_ms: number): place is WalkPlace =>
  place !== undefined &&
  !place.closed &&
  place.at_n < place.stops.length &&
  now_ms - place.startedAt_ms < SAME_ROUND_ms;

/**
 * Where the walk goes on: the first stop from its place on that still has work. The place itself may be a few pots old,
 * because what a killed browser remembers of a page is less sure than its entries.
 */
export function resumedAt(place: WalkPlace, hasWorkAt: (plant: string) => boolean): number {
  const ahead_n = place.stops.slice(place.at_n).findIndex(hasWorkAt);
  return ahead_n < 0 ? place.at_n : place.at_n + ahead_n;
}
