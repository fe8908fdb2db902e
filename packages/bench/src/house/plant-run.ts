import type { Effect } from "../book/effects.ts";
import type { Entry, EntryId, Json, PlantId } from "../book/entry.ts";
import type { AnyEntryKind } from "../book/kinds.ts";
import type { AnyCraft, Happening, Sight, Step } from "../crafts/craft.ts";
import type { AirAt, AirDay, Spell } from "../places/ahead.ts";
import type { Site } from "../places/site.ts";
import type { Calendar } from "../places/time.ts";
import type { PlantFacts } from "../plants/facts.ts";
import { foldFacts, unmetPlant } from "../plants/fold.ts";
import { type Reading, type ReadingName, readingKinds } from "../readings.ts";

/** A plant at one instant: what the house knows, and a slice for each craft. Plain data, so that it can be kept. */
export interface PlantState {
  readonly at_ms: number;
  readonly facts: PlantFacts;
  /** In the order of the registry. */
  readonly slices: readonly unknown[];
  readonly problems: readonly { readonly entry: EntryId; readonly message: string }[];
}

/** One entry as it acts on a plant: corrected, in force, with its corrected time. */
export interface PlantEvent {
  readonly entry: Entry;
  readonly kind: AnyEntryKind;
}

/** What all plants of a book share while their histories are run. */
export interface Stage {
  readonly crafts: readonly AnyCraft[];
  readonly calendar: Calendar;
  readonly airAt: AirAt;
  readonly site: Site;
  assumed(key: string): number;
}

const DAY_ms = 86_400_000;

/**
 * Runs a plant's history: cut at entries and at midnights; in each step all crafts compute their rates from the state at its
 * start, then all integrate, then the entry's effects apply. The same events give the same state from any checkpoint.
 */
export interface Runner {
  /** The state after an event; the first event of a plant starts it. */
  happen(state: PlantState | undefined, event: PlantEvent, plant: PlantId): PlantState;
  /** The state at a later instant without events between. A plant that has ended stands still. */
  advance(state: PlantState, to_ms: number): PlantState;
  sight(state: PlantState): Sight;
}

export function plantRunner(stage: Stage): Runner {
  const { crafts, calendar, airAt } = stage;
  const providers = providersOf(crafts);
  const shared = {
    airAt,
    site: stage.site,
    dateOf: (at_ms: number) => calendar.dateOf(at_ms),
    assumed: (key: string) => stage.assumed(key),
  };

  const reader = (facts: PlantFacts, slices: readonly unknown[], at_ms: number) => (name: ReadingName) =>
    readingOf(name, providers, crafts, facts, slices, at_ms);

  const sight = ({ facts, slices, at_ms }: PlantState): Sight => ({
    ...shared,
    plant: facts,
    at_ms,
    read: reader(facts, slices, at_ms),
  });

  function step(
    facts: PlantFacts,
    before: readonly unknown[],
    day: AirDay,
    from_ms: number,
    to_ms: number,
  ): unknown[] {
    const now: Step = {
      ...shared,
      plant: facts,
      at_ms: from_ms,
      read: reader(facts, before, from_ms),
      from_ms,
      to_ms,
      dt_d: (to_ms - from_ms) / DAY_ms,
      day,
      spells:
        from_ms === day.from_ms && to_ms === day.to_ms
          ? day.spells
          : spellsWithin(day.spells, from_ms, to_ms),
    };
    const rates = crafts.map((craft, i) => craft.rates(before[i], now));
    return crafts.map((craft, i) => craft.integrate(before[i], rates[i], now));
  }

  function advance(state: PlantState, to_ms: number): PlantState {
    if (to_ms <= state.at_ms) return state;
    if (state.facts.ended) return { ...state, at_ms: to_ms };
    let { at_ms, slices } = state;
    while (at_ms < to_ms) {
      const midnight_ms = calendar.nextMidnight_ms(at_ms);
      const until_ms = Math.min(midnight_ms, to_ms);
      slices = step(state.facts, slices, airAt(state.facts.spot, calendar.dateOf(at_ms)), at_ms, until_ms);
      at_ms = until_ms;
    }
    return { ...state, at_ms, slices };
  }

  function happen(state: PlantState | undefined, { entry, kind }: PlantEvent, plant: PlantId): PlantState {
    const reached = state && advance(state, entry.at_ms);
    const facts = foldFacts(reached?.facts ?? unmetPlant(plant, entry.at_ms), entry);
    const at_ms = Math.max(entry.at_ms, reached?.at_ms ?? entry.at_ms);
    const bare: Sight = {
      ...shared,
      plant: facts,
      at_ms,
      read: (name) => readingKinds[name].usual(facts, at_ms),
    };
    let slices = reached?.slices ?? crafts.map((craft) => craft.start(facts, bare));
    const problems = reached ? [...reached.problems] : [];
    const effects = effectsOf(kind, entry, problems);
    const happening = { entry: entry.id, at_ms, by: entry.by, effects };
    const read = reader(facts, slices, at_ms);
    slices = crafts.map((craft, i) => {
      const own = craft.kinds.includes(kind) ? { kind: entry.kind, data: entry.data as Json } : undefined;
      const what: Happening = own ? { ...happening, own } : happening;
      try {
        return craft.fold(slices[i], what, { ...bare, read });
      } catch (error) {
        problems.push({
          entry: entry.id,
          message: `${craft.name} could not take this entry: ${(error as Error).message}`,
        });
        return slices[i];
      }
    });
    return { at_ms, facts, slices, problems };
  }

  return { happen, advance, sight };
}

function effectsOf(
  kind: AnyEntryKind,
  entry: Entry,
  problems: PlantState["problems"][number][],
): readonly Effect[] {
  try {
    return kind.effects(entry.data, entry);
  } catch (error) {
    problems.push({
      entry: entry.id,
      message: `${entry.kind} could not be read: ${(error as Error).message}`,
    });
    return [];
  }
}

/** For each reading the crafts that offer it, the last in the registry first. */
function providersOf(crafts: readonly AnyCraft[]): ReadonlyMap<ReadingName, readonly number[]> {
  const providers = new Map<ReadingName, number[]>();
  crafts.forEach((craft, i) => {
    for (const name of Object.keys(craft.offers) as ReadingName[])
      providers.set(name, [i, ...(providers.get(name) ?? [])]);
  });
  return providers;
}

/** The value the last craft offers that has one, else the usual. A craft that offers nonsense is not believed. */
function readingOf(
  name: ReadingName,
  providers: ReadonlyMap<ReadingName, readonly number[]>,
  crafts: readonly AnyCraft[],
  facts: PlantFacts,
  slices: readonly unknown[],
  at_ms: number,
): Reading {
  for (const i of providers.get(name) ?? []) {
    const offered = crafts[i]?.offers[name]?.(slices[i], facts) as Reading | undefined;
    if (offered && Number.isFinite(offered.value)) return offered;
  }
  return readingKinds[name].usual(facts, at_ms);
}

function spellsWithin(spells: readonly Spell[], from_ms: number, to_ms: number): Spell[] {
  const within: Spell[] = [];
  for (const spell of spells) {
    const start_ms = Math.max(spell.from_ms, from_ms);
    const end_ms = Math.min(spell.to_ms, to_ms);
    if (end_ms > start_ms) within.push({ ...spell, from_ms: start_ms, to_ms: end_ms });
  }
  return within;
}
