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

/** What a sight holds whoever the plant and whenever. */
type Shared = Pick<Sight, "airAt" | "site" | "dateOf" | "assumed">;

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
  const { crafts, calendar, airAt, site } = stage;
  const providers = providersOf(crafts);
  const ownKinds = crafts.map((craft) => new Set<AnyEntryKind>(craft.kinds));

  const reader = (facts: PlantFacts, slices: readonly unknown[], at_ms: number) => (name: ReadingName) =>
    readingOf(name, providers, crafts, facts, slices, at_ms);

  const shared: Shared = {
    airAt,
    site,
    dateOf: (at_ms) => calendar.dateOf(at_ms),
    assumed: (key) => stage.assumed(key),
  };
  const sightOf = (plant: PlantFacts, at_ms: number, read: Sight["read"]): Sight => ({
    airAt: shared.airAt,
    site: shared.site,
    dateOf: shared.dateOf,
    assumed: shared.assumed,
    plant,
    at_ms,
    read,
  });

  const sight = ({ facts, slices, at_ms }: PlantState): Sight =>
    sightOf(facts, at_ms, reader(facts, slices, at_ms));

  function step(
    facts: PlantFacts,
    before: readonly unknown[],
    day: AirDay,
    from_ms: number,
    to_ms: number,
  ): unknown[] {
    const now = new Stretch(shared, facts, reader(facts, before, from_ms), day, from_ms, to_ms);
    const rates: unknown[] = [];
    for (let i = 0; i < crafts.length; i++) rates.push((crafts[i] as AnyCraft).rates(before[i], now));
    const after: unknown[] = [];
    for (let i = 0; i < crafts.length; i++)
      after.push((crafts[i] as AnyCraft).integrate(before[i], rates[i], now));
    return after;
  }

  function advance(state: PlantState, to_ms: number): PlantState {
    if (to_ms <= state.at_ms) return state;
    const { facts, problems } = state;
    if (facts.ended) return { at_ms: to_ms, facts, slices: state.slices, problems };
    let { at_ms, slices } = state;
    while (at_ms < to_ms) {
      const day = airAt(facts.spot, calendar.dateOf(at_ms));
      const until_ms = Math.min(day.to_ms, to_ms);
      slices = step(facts, slices, day, at_ms, until_ms);
      at_ms = until_ms;
    }
    return { at_ms, facts, slices, problems };
  }

  function happen(state: PlantState | undefined, { entry, kind }: PlantEvent, plant: PlantId): PlantState {
    const reached = state && advance(state, entry.at_ms);
    const facts = foldFacts(reached?.facts ?? unmetPlant(plant, entry.at_ms), entry);
    const at_ms = Math.max(entry.at_ms, reached?.at_ms ?? entry.at_ms);
    const before = reached?.slices ?? begun(facts, at_ms);
    const found: PlantState["problems"][number][] = [];
    const effects = effectsOf(kind, entry, found);
    const now = sightOf(facts, at_ms, reader(facts, before, at_ms));
    const slices: unknown[] = [];
    for (let i = 0; i < crafts.length; i++) {
      const craft = crafts[i] as AnyCraft;
      const what: Happening = ownKinds[i]?.has(kind)
        ? {
            entry: entry.id,
            at_ms,
            by: entry.by,
            effects,
            own: { kind: entry.kind, data: entry.data as Json },
          }
        : { entry: entry.id, at_ms, by: entry.by, effects };
      try {
        slices.push(craft.fold(before[i], what, now));
      } catch (error) {
        const message = `${craft.name} could not take this entry: ${(error as Error).message}`;
        found.push({ entry: entry.id, message });
        slices.push(before[i]);
      }
    }
    const problems = reached?.problems ?? [];
    return { at_ms, facts, slices, problems: found.length > 0 ? [...problems, ...found] : problems };
  }

  /** Slices of a plant that enters the book: no craft has a reading to offer yet. */
  function begun(facts: PlantFacts, at_ms: number): readonly unknown[] {
    const bare = sightOf(facts, at_ms, (name) => readingKinds[name].usual(facts, at_ms));
    return crafts.map((craft) => craft.start(facts, bare));
  }

  return { happen, advance, sight };
}

/**
 * A step as the crafts see it. A class, and field by field: it is made at every midnight and entry of every plant, where an
 * object spread or a getter in a literal costs as much as a craft's whole step.
 */
class Stretch implements Step {
  readonly plant: PlantFacts;
  readonly at_ms: number;
  readonly read: Sight["read"];
  readonly airAt: AirAt;
  readonly dateOf: Sight["dateOf"];
  readonly site: Site;
  readonly assumed: Sight["assumed"];
  readonly day: AirDay;
  readonly from_ms: number;
  readonly to_ms: number;
  readonly dt_d: number;

  constructor(
    shared: Shared,
    plant: PlantFacts,
    read: Sight["read"],
    day: AirDay,
    from_ms: number,
    to_ms: number,
  ) {
    this.plant = plant;
    this.at_ms = from_ms;
    this.read = read;
    this.airAt = shared.airAt;
    this.dateOf = shared.dateOf;
    this.site = shared.site;
    this.assumed = shared.assumed;
    this.day = day;
    this.from_ms = from_ms;
    this.to_ms = to_ms;
    this.dt_d = (to_ms - from_ms) / DAY_ms;
  }

  /** Cut only for the craft that asks; most want the day alone. */
  get spells(): readonly Spell[] {
    const { day, from_ms, to_ms } = this;
    return from_ms === day.from_ms && to_ms === day.to_ms
      ? day.spells
      : spellsWithin(day.spells, from_ms, to_ms);
  }
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
