import type { EntryId, PlantId } from "../book/entry.ts";
import { type Brought, plantKinds } from "../plants/kinds.ts";
import type { PlantEvent, PlantState, Runner } from "./plant-run.ts";
import { inBookOrder } from "./records.ts";

/**
 * A checkpoint every few of the latest events, where late entries and corrections fall, and every so many of the older ones:
 * few to run again, few to keep (our choice, measured in benchmarks).
 */
const EVERY_n = 8;
const LATEST_n = 32;
const OLD_EVERY_n = 64;

/** The events of one plant in book order, and the states kept along them. */
export interface Timeline {
  insert(event: PlantEvent): void;
  remove(id: EntryId): void;
  /** States from the event at this index on are forgotten. */
  rerunFrom(index: number): void;
  /** Takes what is known to be the state after all events, so that they need not be run. */
  adopt(state: PlantState): void;
  events(): readonly PlantEvent[];
  /** Whether an entry brings the plant in; others may have arrived before it. */
  brought(): boolean;
  /** Where the plant was brought in, or stood when a history that was left in the store was kept. */
  firstSpot(): string | undefined;
  /** The state after the last event that acts. */
  last(runner: Runner, acts: (event: PlantEvent) => boolean): PlantState | undefined;
}

/** Where a line starts when its history was left in the store: the state after `recent`, which is all that is here of it. */
export interface LineStart {
  readonly state: PlantState;
  readonly brought: boolean;
  readonly recent: readonly PlantEvent[];
}

/** @param reachedBehind called when something changes before the start: the whole history is needed then */
export function timeline(plant: PlantId, lineStart?: LineStart, reachedBehind?: () => void): Timeline {
  const events: PlantEvent[] = [...(lineStart?.recent ?? [])];
  const frozen_n = events.length;
  /** State after `events[0..after_n)`, ascending; the last may lie at any place, the others where they are worth it. */
  let kept: { readonly after_n: number; readonly state: PlantState | undefined }[] = lineStart
    ? [{ after_n: frozen_n, state: lineStart.state }]
    : [];
  let sorted = true;

  const worthKeeping = (after_n: number) =>
    after_n % OLD_EVERY_n === 0 || (after_n % EVERY_n === 0 && after_n > events.length - LATEST_n);

  function sort() {
    if (sorted) return;
    events.sort((a, b) => inBookOrder(a.entry, b.entry));
    sorted = true;
  }
  function rerunFrom(index: number) {
    if (lineStart && index < frozen_n) reachedBehind?.();
    while (kept.length > 0 && (kept[kept.length - 1] as { after_n: number }).after_n > index) kept.pop();
  }
  function placeOf(event: PlantEvent): number {
    let low = 0;
    let high = events.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (inBookOrder((events[middle] as PlantEvent).entry, event.entry) < 0) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  return {
    insert(event) {
      const last = events[events.length - 1];
      if (kept.length === 0 && !lineStart) {
        // Nothing has been run yet (a book being read): sort once, later.
        sorted &&= !last || inBookOrder(last.entry, event.entry) < 0;
        events.push(event);
        return;
      }
      sort();
      const index = placeOf(event);
      events.splice(index, 0, event);
      rerunFrom(index);
    },
    remove(id) {
      sort();
      const index = events.findIndex((event) => event.entry.id === id);
      if (index < 0) return;
      events.splice(index, 1);
      rerunFrom(index);
    },
    rerunFrom,
    adopt(state) {
      kept = [{ after_n: events.length, state }];
    },
    events() {
      sort();
      return events;
    },
    brought: () => lineStart?.brought || events.some((event) => event.entry.kind === plantKinds.brought.kind),
    firstSpot() {
      if (lineStart) return lineStart.state.facts.spot;
      const bringing = events.find((event) => event.entry.kind === plantKinds.brought.kind);
      return (bringing?.entry.data as Partial<Brought> | undefined)?.spot;
    },
    last(runner, acts) {
      sort();
      const from = kept[kept.length - 1];
      let state = from?.state;
      const start = from?.after_n ?? 0;
      if (start === events.length) return state;
      for (let i = start; i < events.length; i++) {
        const event = events[i] as PlantEvent;
        if (acts(event)) state = runner.happen(state, event, plant);
        if (worthKeeping(i + 1)) kept.push({ after_n: i + 1, state });
      }
      if (!worthKeeping(events.length)) kept.push({ after_n: events.length, state });
      // What was the end of an earlier run, or recent then, is not worth keeping any more.
      kept = kept.filter(
        ({ after_n }, i) =>
          i === kept.length - 1 || worthKeeping(after_n) || (lineStart !== undefined && after_n === frozen_n),
      );
      return state;
    },
  };
}
