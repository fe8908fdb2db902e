import type { Effect } from "../book/effects.ts";
import type { Entry, EntryId, Json, PlantId } from "../book/entry.ts";
import type { AnyEntryKind } from "../book/kinds.ts";
import type { AnyCraft, Happening, Sight, Step } from "../crafts/craft.ts";
import type { AirAt, AirDay, Spell } from "../places/ahead.ts";
import type { Site } from "../places/site.ts";
import type { Calendar } from "../places/time.ts";
import type { Species } from "../plants/batch-kinds.ts";
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
  speciesOf(cultivar: string | undefined): Species;
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
  const { crafts, calendar, airAt, site } = stage;
  const readers = readersOf(crafts);
  const movers = moversOf(crafts);
  const craftOf = new Map<AnyEntryKind, number>();
  crafts.forEach((craft, i) => {
    for (const kind of craft.kinds) craftOf.set(kind, i);
  });

  /**
   * One moment of a run as the crafts see it. A class that holds nothing which is the same for all plants: it is made at every
   * midnight and entry of every plant, where an object of closures costs as much as a craft's whole step.
   */
  class Moment implements Sight {
    readonly plant: PlantFacts;
    readonly at_ms: number;
    readonly slices: readonly unknown[];

    constructor(plant: PlantFacts, slices: readonly unknown[], at_ms: number) {
      this.plant = plant;
      this.at_ms = at_ms;
      this.slices = slices;
    }
    read(name: ReadingName): Reading {
      return readers[name](this);
    }
    get species(): Species {
      return stage.speciesOf(this.plant.cultivar);
    }
    airAt(spot: string | undefined, date: string): AirDay {
      return airAt(spot, date);
    }
    dateOf(at_ms: number): string {
      return calendar.dateOf(at_ms);
    }
    assumed(key: string): number {
      return stage.assumed(key);
    }
    get site(): Site {
      return site;
    }
  }

  class Stretch extends Moment implements Step {
    readonly day: AirDay;
    readonly to_ms: number;

    constructor(plant: PlantFacts, slices: readonly unknown[], day: AirDay, from_ms: number, to_ms: number) {
      super(plant, slices, from_ms);
      this.day = day;
      this.to_ms = to_ms;
    }
    get from_ms(): number {
      return this.at_ms;
    }
    get dt_d(): number {
      return (this.to_ms - this.at_ms) / DAY_ms;
    }
    /** Cut only for the craft that asks; most want the day alone. */
    get spells(): readonly Spell[] {
      const { day, at_ms, to_ms } = this;
      return at_ms === day.from_ms && to_ms === day.to_ms
        ? day.spells
        : spellsWithin(day.spells, at_ms, to_ms);
    }
  }

  function step(
    facts: PlantFacts,
    before: readonly unknown[],
    day: AirDay,
    from_ms: number,
    to_ms: number,
  ): readonly unknown[] {
    const now = new Stretch(facts, before, day, from_ms, to_ms);
    // Lists of their final length: one that grows by pushes is laid out for more than a registry ever holds.
    const rates: unknown[] = new Array(movers.length);
    for (let i = 0; i < movers.length; i++) {
      const { craft, place } = movers[i] as Mover;
      rates[i] = craft.rates(before[place], now);
    }
    const after = before.slice();
    for (let i = 0; i < movers.length; i++) {
      const { craft, place } = movers[i] as Mover;
      after[place] = craft.integrate(before[place], rates[i], now);
    }
    return after;
  }

  const nextDays = new Map<AirDay, AirDay>();
  let lastSpot: string | undefined;
  let lastDay: AirDay | undefined;

  /** The day in which an instant lies at a spot. A run asks for the day it is in and the one after it, so these are at hand. */
  function dayAt(spot: string | undefined, at_ms: number): AirDay {
    const asked = spot === lastSpot ? lastDay : undefined;
    if (asked && asked.from_ms <= at_ms && at_ms < asked.to_ms) return asked;
    let day = asked?.to_ms === at_ms ? nextDays.get(asked) : undefined;
    if (!day) {
      day = airAt(spot, calendar.dateOf(at_ms));
      if (asked?.to_ms === at_ms) nextDays.set(asked, day);
    }
    lastSpot = spot;
    lastDay = day;
    return day;
  }

  function advance(state: PlantState, to_ms: number): PlantState {
    if (to_ms <= state.at_ms) return state;
    const { facts, problems } = state;
    if (facts.ended) return { at_ms: to_ms, facts, slices: state.slices, problems };
    let { at_ms, slices } = state;
    while (at_ms < to_ms) {
      const day = dayAt(facts.spot, at_ms);
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
    let problems = reached?.problems ?? NO_PROBLEMS;
    let effects: readonly Effect[] = NO_EFFECTS;
    try {
      effects = kind.effects(entry.data, entry);
    } catch (error) {
      problems = withProblem(problems, entry, `${entry.kind} could not be read`, error);
    }
    const now = new Moment(facts, before, at_ms);
    const slices: unknown[] = new Array(crafts.length);
    const what: Happening = { entry: entry.id, at_ms, by: entry.by, effects };
    const owner = craftOf.get(kind);
    for (let i = 0; i < crafts.length; i++) {
      const craft = crafts[i] as AnyCraft;
      try {
        slices[i] = craft.fold(before[i], i === owner ? asOwn(what, entry) : what, now);
      } catch (error) {
        problems = withProblem(problems, entry, `${craft.name} could not take this entry`, error);
        slices[i] = before[i];
      }
    }
    return { at_ms, facts, slices, problems };
  }

  /** Slices of a plant that enters the book: no craft has a reading to offer yet. */
  function begun(facts: PlantFacts, at_ms: number): readonly unknown[] {
    const bare = {
      ...plain(new Moment(facts, [], at_ms)),
      read: (name: ReadingName) => usual(name, facts, at_ms),
    };
    return crafts.map((craft) => craft.start(facts, bare));
  }

  /** A sight that can be spread into a wider one. */
  const plain = (at: Moment): Sight => ({
    plant: at.plant,
    species: at.species,
    at_ms: at.at_ms,
    read: (name) => at.read(name),
    airAt,
    site,
    dateOf: at.dateOf,
    assumed: at.assumed,
  });

  return { happen, advance, sight: ({ facts, slices, at_ms }) => plain(new Moment(facts, slices, at_ms)) };
}

/** A craft whose slice changes with time, and where that stands among the slices. */
interface Mover {
  readonly craft: AnyCraft & Required<Pick<AnyCraft, "rates" | "integrate">>;
  readonly place: number;
}

const moversOf = (crafts: readonly AnyCraft[]): readonly Mover[] =>
  crafts.flatMap((craft, place) => (moves(craft) ? [{ craft, place }] : []));

const moves = (craft: AnyCraft): craft is Mover["craft"] =>
  craft.rates !== undefined && craft.integrate !== undefined;

const NO_PROBLEMS: PlantState["problems"] = [];
const NO_EFFECTS: readonly Effect[] = [];

const asOwn = ({ entry, at_ms, by, effects }: Happening, { kind, data }: Entry): Happening => ({
  entry,
  at_ms,
  by,
  effects,
  own: { kind, data: data as Json },
});

const withProblem = (
  problems: PlantState["problems"],
  { id }: Entry,
  what: string,
  error: unknown,
): PlantState["problems"] => [...problems, { entry: id, message: `${what}: ${(error as Error).message}` }];

type Reader = (at: Sight & { readonly slices: readonly unknown[] }) => Reading;

/** How each reading is had: from the last craft that has a value, else the usual. A craft that offers nonsense is not believed. */
function readersOf(crafts: readonly AnyCraft[]): Readonly<Record<ReadingName, Reader>> {
  const readers = {} as Record<ReadingName, Reader>;
  for (const name of Object.keys(readingKinds) as ReadingName[]) {
    const offers = crafts
      .flatMap(({ offers }, i) => (offers[name] ? [{ i, offer: offers[name] }] : []))
      .reverse();
    readers[name] = (at) => {
      for (const { i, offer } of offers) {
        const offered = offer(at.slices[i], at.plant, at) as Reading | undefined;
        if (offered && Number.isFinite(offered.value)) return offered;
      }
      return usual(name, at.plant, at.at_ms);
    };
  }
  return readers;
}

const usual = (name: ReadingName, facts: PlantFacts, at_ms: number): Reading =>
  readingKinds[name].usual(facts, at_ms);

function spellsWithin(spells: readonly Spell[], from_ms: number, to_ms: number): Spell[] {
  const within: Spell[] = [];
  for (const spell of spells) {
    const start_ms = Math.max(spell.from_ms, from_ms);
    const end_ms = Math.min(spell.to_ms, to_ms);
    if (end_ms > start_ms) within.push({ ...spell, from_ms: start_ms, to_ms: end_ms });
  }
  return within;
}
