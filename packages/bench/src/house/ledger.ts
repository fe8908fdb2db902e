import { CORRECTED } from "../book/correct.ts";
import type { Entry, EntryId, PlantId } from "../book/entry.ts";
import { type AnyEntryKind, type KindRegistry, kindRegistry } from "../book/kinds.ts";
import type { AnyCraft } from "../crafts/craft.ts";
import { isIssued, issuedDays } from "../issued/issued.ts";
import type { AirAt } from "../places/ahead.ts";
import { airDays } from "../places/air-day.ts";
import type { Places } from "../places/places.ts";
import { mergeRecords, type Records, rowsOfSeries, type SeriesRow } from "../places/records.ts";
import type { Site } from "../places/site.ts";
import { type Calendar, calendarOf } from "../places/time.ts";
import { type StaleWeather, staleWeather } from "../places/weather-age.ts";
import { plantKinds } from "../plants/kinds.ts";
import { isTimedWalk } from "../round/kinds.ts";
import { emptyHouse, foldHouse, type House, houseKinds } from "./house.ts";
import { type PlantEvent, type PlantState, plantRunner, type Runner } from "./plant-run.ts";
import { DEVICE_CLOCK, inBookOrder, type Record, recordBook } from "./records.ts";
import { latestWalks, recentOf, type Snapshot, settled } from "./snapshot.ts";
import { type Timeline, timeline } from "./timeline.ts";

export interface LedgerOptions {
  readonly crafts: readonly AnyCraft[];
  /** Taken until the book says where its benches stand. */
  readonly site: Site;
  /** Entries that happened later are unseen. */
  readonly at_ms?: number;
  /** A kept state of the same book, so that its entries need not be read; only newer ones are added. */
  readonly snapshot?: Snapshot;
}

/** What changed in the numbers after entries or files came. */
export interface Change {
  readonly plants: ReadonlySet<PlantId>;
  readonly house: boolean;
  /** The ledger was made from a snapshot and what came reaches behind it: read the whole book again. */
  readonly stale: boolean;
}

/** What a record touched: plants, and whether the house, or all runs with it. */
interface Laid {
  readonly plants: readonly string[];
  readonly house: "no" | "apart" | "runs";
}
const factKinds = new Set<AnyEntryKind>(Object.values(plantKinds));
const isFact = (kind: AnyEntryKind | undefined) => kind !== undefined && factKinds.has(kind);
const NOWHERE: Laid = { plants: [], house: "no" };

/**
 * The folded book. It takes entries and files in any order and gives the same state; only what an entry touches is run again,
 * from the last checkpoint before it.
 */
export interface Ledger {
  readonly crafts: readonly AnyCraft[];
  readonly kinds: KindRegistry;
  add(entries: readonly Entry[]): Change;
  /** The text of a series part whose hash an entry names. A part that can't be read counts as missing and is reported. */
  addSeries(file: string, text: string): Change;
  /** The text of forecasts as issued whose hash an entry names: scores rest on it, no state does. */
  addIssued(file: string, text: string): void;
  issuedText(file: string): string | undefined;
  /** Raised by every change. */
  readonly revision: number;
  /** Raised by changes of the house and of plain facts (who is here, where, under which number): what crafts fold leaves it. */
  readonly factsRevision: number;
  house(): House;
  readonly calendar: Calendar;
  airAt: AirAt;
  /** The same with the weather of this book over other places: what-if, a reading left out. */
  airIn(places: Places): AirAt;
  /** All plants ever brought in, also ended ones, in the order they came. */
  plants(): readonly PlantId[];
  /**
   * Brings all plants to their last entry, those of one spot after another: they ask for the same days, which are then still near
   * the processor. Who asks every plant for its state asks this first; it changes no state.
   */
  foldAll(): void;
  /** After the last entry. */
  lastState(plant: PlantId): PlantState | undefined;
  /** At an instant after the last entry; earlier instants are asked of a ledger made with `at_ms`. */
  stateAt(plant: PlantId, now_ms: number): PlantState | undefined;
  runner(): Runner;
  record(id: EntryId): Record | undefined;
  records(): Iterable<Record>;
  /** Entries that are in the book and do not act: withdrawn, newer, broken. */
  idle(): readonly Record[];
  eventsOf(plant: PlantId): readonly PlantEvent[];
  /** Rounds that were walked and timed, in book order; from a snapshot on only the latest of each person. */
  walks(): readonly Entry[];
  /** Series that an entry names and whose file is not here yet. */
  missing(): Records["missing"];
  /** Weather that is not of today, for what stands outdoors. */
  staleWeather(now_ms: number): StaleWeather | undefined;
  /** Series files that could not be read, with the reason. */
  readonly unreadable: ReadonlyMap<string, string>;
  assumed(key: string): number;
  readonly twins: ReadonlySet<EntryId>;
  /** Entries folded; from a snapshot on only what came since. */
  readonly entries_n: number;
  /** What a later start needs in place of all entries. */
  snapshot(): Snapshot;
  /**
   * Takes the states of plants from a snapshot of exactly the entries and files that are here, so that no history need be run.
   *
   * @returns whether it did: not when other files are here
   */
  adopt(snapshot: Snapshot): boolean;
}

export function createLedger({
  crafts,
  site,
  at_ms = Number.POSITIVE_INFINITY,
  snapshot,
}: LedgerOptions): Ledger {
  const kinds = kindRegistry([...houseKinds, ...crafts.flatMap((craft) => craft.kinds)]);
  const defaults = new Map(
    crafts.flatMap((craft) => craft.assumptions).map(({ key, value }) => [key, value]),
  );
  const book = recordBook(kinds);
  const files = new Map<string, readonly SeriesRow[]>();
  const unreadable = new Map<string, string>();
  const texts = new Map<string, string>(snapshot?.files ?? []);
  const issuedTexts = new Map<string, string>();
  const plants = new Map<PlantId, Timeline>();
  const houseEntries = new Map<EntryId, Entry>();
  const walks = new Map<EntryId, Entry>();
  let revision = 0;
  let factsRevision = 0;
  let roster: readonly PlantId[] | undefined;
  let stale = false;
  const reachedBehind = () => {
    stale = true;
  };
  interface Scene {
    readonly house: House;
    readonly records: Records;
    readonly calendar: Calendar;
    readonly airAt: AirAt;
    readonly runner: Runner;
  }
  let scene: Scene | undefined;

  function houseNow(): House {
    let house = emptyHouse(site);
    const issued: Entry[] = [];
    for (const entry of [...houseEntries.values()].sort(inBookOrder)) {
      if (isIssued(entry)) issued.push(entry);
      else if (allowed(entry, house)) house = foldHouse(house, entry);
    }
    return { ...house, issued: issuedDays(issued) };
  }

  function setScene() {
    const house = houseNow();
    const calendar = calendarOf(house.places.site.zone);
    const records = mergeRecords(house.places.series, (file) => files.get(file), calendar.dateOf, at_ms);
    const airAt = airDays(house.places, records, calendar);
    // One look-up each: the crafts ask for a dozen of them in every step.
    const values = new Map<string, number>([...defaults, ...house.people.assumptions]);
    const runner = plantRunner({
      crafts,
      calendar,
      airAt,
      site: house.places.site,
      assumed: (key) => values.get(key) ?? assumed(key),
      speciesOf: (cultivar) =>
        (cultivar === undefined ? undefined : house.batches.cultivars.get(cultivar)?.species) ?? "unknown",
    });
    scene = { house, records, calendar, airAt, runner };
    return scene;
  }
  const sceneNow = () => scene ?? setScene();
  const assumed = (key: string): number => {
    const value = scene?.house.people.assumptions.get(key) ?? defaults.get(key);
    if (value === undefined) throw new Error(`no assumption is called ${key}`);
    return value;
  };

  /** A helper's entry of a kind that only the grower may act on is kept as a request. */
  function allowed(entry: Entry, house: House): boolean {
    return (
      !kinds.find(entry.kind)?.growerOnly ||
      house.people.roles.get(entry.by) === "grower" ||
      house.people.roles.size === 0
    );
  }

  /** Kinds of house entries that a plant's history does not depend on: they leave its runs as they are. */
  const APART = /^((supply|batch|round|book|forecast)\.|device\.(paired|closed)$)/;
  const weightOf = (kind: string) => (APART.test(kind) ? "apart" : "runs");

  /** Every plant has to be run again: places, people, weather or assumptions changed. */
  function forgetRuns() {
    scene = undefined;
    for (const line of plants.values()) line.rerunFrom(0);
  }

  /** Puts a record where it acts, after taking it from where it acted before. */
  function lay(id: EntryId, { acting, kind }: Record, earlier: Record | undefined): Laid {
    const taken = earlier ? takeAway(id, earlier) : NOWHERE;
    if (!acting || !kind || acting.at_ms > at_ms) return taken;
    if (kind.subject !== "plant") {
      houseEntries.set(id, acting);
      return { plants: taken.plants, house: weightOf(acting.kind) };
    }
    if (isTimedWalk(acting)) walks.set(id, acting);
    const event = { entry: acting, kind };
    for (const plant of acting.on) {
      let line = plants.get(plant as PlantId);
      if (!line) {
        line = timeline(plant as PlantId);
        plants.set(plant as PlantId, line);
      }
      line.insert(event);
    }
    return earlier
      ? { plants: [...taken.plants, ...acting.on], house: taken.house }
      : { plants: acting.on, house: "no" };
  }

  function takeAway(id: EntryId, { acting, kind }: Record): Laid {
    if (!acting || !kind || acting.at_ms > at_ms) return NOWHERE;
    if (kind.subject !== "plant")
      return { plants: [], house: houseEntries.delete(id) ? weightOf(acting.kind) : "no" };
    walks.delete(id);
    for (const plant of acting.on) plants.get(plant as PlantId)?.remove(id);
    return { plants: acting.on, house: "no" };
  }

  if (snapshot) {
    for (const entry of snapshot.house) {
      book.add([entry]);
      lay(entry.id, book.get(entry.id) as Record, undefined);
    }
    book.add(snapshot.recent);
    for (const walk of snapshot.walks) walks.set(walk.id, walk);
    for (const { plant, state, brought, recent } of snapshot.plants) {
      const events = recent.flatMap((id) => {
        const { acting, kind } = book.get(id) ?? {};
        return acting && kind ? [{ entry: acting, kind }] : [];
      });
      plants.set(plant, timeline(plant, { state, brought, recent: events }, reachedBehind));
    }
    for (const [file, text] of snapshot.files) files.set(file, rowsOfSeries(text));
  }

  const roleBlocked = (event: PlantEvent) => !event.kind.growerOnly || allowed(event.entry, sceneNow().house);

  return {
    crafts,
    kinds,
    add(entries) {
      // What a correction or a clock report says may be about an entry that a snapshot left in the store.
      if (snapshot && entries.some(({ kind }) => kind === CORRECTED || kind === DEVICE_CLOCK)) stale = true;
      const changed = book.add(entries);
      const touched = new Set<PlantId>();
      let house = false;
      let runs = false;
      let facts = false;
      for (const [id, before] of changed) {
        const record = book.get(id);
        if (!record) continue;
        if (record.kind === plantKinds.brought || before?.kind === plantKinds.brought) roster = undefined;
        facts ||= isFact(record.kind) || isFact(before?.kind);
        const laid = lay(id, record, before);
        for (const plant of laid.plants) touched.add(plant as PlantId);
        house ||= laid.house !== "no";
        runs ||= laid.house === "runs";
      }
      if (runs) forgetRuns();
      else if (house && scene) scene = { ...scene, house: houseNow() };
      revision++;
      if (facts || house) factsRevision++;
      return { plants: runs ? new Set(plants.keys()) : touched, house, stale };
    },
    addSeries(file, text) {
      try {
        files.set(file, rowsOfSeries(text));
        texts.set(file, text);
      } catch (error) {
        unreadable.set(file, (error as Error).message);
      }
      forgetRuns();
      revision++;
      factsRevision++;
      return { plants: new Set(plants.keys()), house: true, stale };
    },
    addIssued(file, text) {
      issuedTexts.set(file, text);
      revision++;
    },
    issuedText: (file) => issuedTexts.get(file),
    get revision() {
      return revision;
    },
    get factsRevision() {
      return factsRevision;
    },
    house: () => sceneNow().house,
    get calendar() {
      return sceneNow().calendar;
    },
    airAt: (spot, date) => sceneNow().airAt(spot, date),
    airIn(places) {
      const { records, calendar } = sceneNow();
      return airDays(places, records, calendar);
    },
    plants() {
      // Ids hold the time at which they were made, so that sorting them gives the order in which plants came.
      roster ??= [...plants.entries()]
        .filter(([, line]) => line.brought())
        .map(([plant]) => plant)
        .sort();
      return roster;
    },
    foldAll() {
      const { runner } = sceneNow();
      const bySpot = new Map<string, Timeline[]>();
      for (const line of plants.values()) {
        const spot = line.firstSpot() ?? "";
        const beside = bySpot.get(spot);
        if (beside) beside.push(line);
        else bySpot.set(spot, [line]);
      }
      for (const lines of bySpot.values()) for (const line of lines) line.last(runner, roleBlocked);
    },
    lastState: (plant) => plants.get(plant)?.last(sceneNow().runner, roleBlocked),
    stateAt(plant, now_ms) {
      const state = plants.get(plant)?.last(sceneNow().runner, roleBlocked);
      return state && sceneNow().runner.advance(state, now_ms);
    },
    runner: () => sceneNow().runner,
    record: (id) => book.get(id),
    records: () => book.all(),
    idle: () => book.idle(),
    eventsOf: (plant) => plants.get(plant)?.events() ?? [],
    walks: () => [...walks.values()].sort(inBookOrder),
    missing: () => sceneNow().records.missing,
    staleWeather(now_ms) {
      const { records, calendar } = sceneNow();
      return staleWeather(records, now_ms, calendar.dateOf(now_ms));
    },
    unreadable,
    assumed: (key) => {
      sceneNow();
      return assumed(key);
    },
    snapshot() {
      const { runner } = sceneNow();
      const recent = new Map<EntryId, Entry>();
      const lines = [...plants.entries()].flatMap(([plant, line]) => {
        const state = line.last(runner, roleBlocked);
        if (!state) return [];
        const latest = recentOf(line.events());
        for (const entry of latest) recent.set(entry.id, entry);
        return [{ plant, state, brought: line.brought(), recent: latest.map(({ id }) => id) }];
      });
      return {
        house: [...houseEntries.values()].map(settled),
        plants: lines,
        recent: [...recent.values()].map(settled),
        walks: latestWalks([...walks.values()].sort(inBookOrder)),
        files: [...texts],
        entries_n: book.size,
      };
    },
    adopt({ plants: lines, files: theirs }) {
      if (theirs.length !== texts.size || theirs.some(([file]) => !texts.has(file))) return false;
      for (const { plant, state } of lines) plants.get(plant)?.adopt(state);
      return true;
    },
    twins: book.twins,
    get entries_n() {
      return book.size;
    },
  };
}
