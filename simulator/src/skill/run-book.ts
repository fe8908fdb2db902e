import { type BookWriter, bookWriter, type Written } from "../book/book-writer.ts";
import type { Json, Line } from "../book/line.ts";
import { entryOf, type Names } from "../book/notes-to-book.ts";
import { DAY_ms, dateAt, instantOf } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { countLeaves, measurePot } from "../nursery/measure.ts";
import type { Note } from "../nursery/notes.ts";
import type { Pot } from "../nursery/potted-plant.ts";
import type { Keeper } from "./draw-people.ts";
import { SPOTS_n } from "./draw-place.ts";
import type { DrawnPot } from "./draw-pots.ts";
import type { DrawnRun } from "./draw-run.ts";
import { instrumentEntries } from "./instruments.ts";
import { facesAsTold_deg, type KnownLight, knownLight } from "./known-light.ts";
import { lightEntries } from "./light-entries.ts";

const HABITS = ["thin", "fat", "lantern", "tiny", "unknown"] as const;
const BENCHES = ["sill", "shelf"] as const;
/** Who writes in the evening sits down at about this hour and remembers times to the quarter of an hour. */
const EVENING_h = 21;
const QUARTER_ms = 900_000;

export interface RunBook {
  readonly lines: readonly Line[];
  /** Series files that entries name, by hash. */
  readonly files: ReadonlyMap<string, string>;
  readonly plant: (key: number) => string;
  readonly bench: (index: number) => string;
  readonly spot: (bench: number, place: number) => string;
  readonly known: readonly KnownLight[];
}

type Hand = { readonly id: string; readonly device: string };

/** The growers' book of a run: what a careful person would have set up on the first day, then what was written. */
export function bookOfRun(run: DrawnRun, started: readonly Pot[], notes: readonly Note[]): RunBook {
  const chance = run.chance.under("book");
  const book = bookWriter(run.zone, chance);
  const { from_ms } = run;
  const hands = new Map<string, Hand>(
    run.crew.keepers.map(({ person }) => [
      person.key,
      { id: book.name(from_ms), device: book.name(from_ms) },
    ]),
  );
  const grower = hands.get("grower") as Hand;
  const plants = started.map(() => book.name(from_ms));
  const names: Names = {
    plant: (key) => plants[key] as string,
    bench: (index) => BENCHES[index] as string,
    spot: (bench, place) => `${BENCHES[bench]}-${place + 1}`,
    person: (key) => hands.get(key) as Hand,
  };
  const byGrower = (kind: string, on: readonly string[], data: Json, at_ms: number): Written => ({
    kind,
    on,
    data,
    at_ms,
    by: grower.id,
    device: grower.device,
  });
  const known = knownLight(run, chance.under("light"));
  setUp(run, started, names, hands, book, (kind, on, data) => byGrower(kind, on, data, from_ms), chance);
  const instruments = instrumentEntries(run, known, chance.under("instruments"));
  const { away } = run.crew;
  const later: Written[] = [
    ...noteEntries(run, notes, names),
    ...run.pots.flatMap(({ events }) =>
      events.moves.map(({ key, at_ms, bench, spot }) =>
        byGrower("plant.moved", [names.plant(key)], { to: names.spot(bench, spot) }, at_ms),
      ),
    ),
    ...(away?.written
      ? [
          byGrower(
            "round.away",
            ["book"],
            { from_ms: away.from_ms, to_ms: away.to_ms },
            away.from_ms - DAY_ms / 2,
          ),
        ]
      : []),
    ...lightEntries(run, known, chance.under("told")).map(({ kind, bench, spot, data, at_ms }) =>
      byGrower(kind, [spot === undefined ? names.bench(bench) : names.spot(bench, spot)], data, at_ms),
    ),
    ...instruments.entries.map(({ kind, bench, data, at_ms, files }) => ({
      ...byGrower(kind, [names.bench(bench)], data, at_ms),
      ...(files ? { files } : {}),
    })),
  ];
  const typed = (written: Written) => written.typed_ms ?? written.at_ms;
  for (const written of later.sort((a, b) => typed(a) - typed(b))) book.write(written);
  const { plant, bench, spot } = names;
  return { lines: book.lines, files: instruments.files, plant, bench, spot, known };
}

function setUp(
  run: DrawnRun,
  started: readonly Pot[],
  names: Names,
  hands: ReadonlyMap<string, Hand>,
  book: BookWriter,
  byGrower: (kind: string, on: readonly string[], data: Json) => Written,
  chance: Chance,
): void {
  const write = (kind: string, on: readonly string[], data: Json) => book.write(byGrower(kind, on, data));
  for (const [key, { id }] of hands)
    write("person.joined", [id], { role: key === "grower" ? "grower" : "helper" });
  write("site.described", ["book"], {
    name: run.name,
    latitude_deg: round(run.ground.latitude_deg, 1),
    longitude_deg: run.ground.longitude_deg,
    elevation_m: round(run.ground.elevation_m, 0),
    zone: run.zone,
    currency: "USD",
  });
  for (const [index, id] of BENCHES.entries())
    write("bench.laid", [id], {
      name: id === "sill" ? "Sill" : "Lamp shelf",
      place: id,
      outdoors: false,
      order_n: index + 1,
      spots: Array.from({ length: SPOTS_n }, (_, place) => ({
        id: names.spot(index, place),
        name: String(place + 1),
      })),
      ...(id === "sill" ? { windowFaces_deg: facesAsTold_deg(run, run.chance.under("compass")) } : {}),
    });
  for (const [key, pot] of started.entries()) {
    write("plant.brought", [names.plant(key)], {
      number: 101 + key,
      habit: chance.pick(HABITS),
      // One pot in ten was never measured.
      ...(chance.happens(0.1) ? {} : { pot: { ...measurePot(pot.vessel.shape, chance) } }),
      medium: (run.pots[key] as DrawnPot).medium,
      spot: names.spot(pot.bench, pot.spot ?? key),
    });
    if (chance.happens(0.55)) write("plant.measured", [names.plant(key)], { ...countLeaves(pot, chance) });
  }
}

/** Notes as they got into the book: some days not at all, with some people in the evening. */
function noteEntries(run: DrawnRun, notes: readonly Note[], names: Names): Written[] {
  const keepers = new Map<string, Keeper>(run.crew.keepers.map((keeper) => [keeper.person.key, keeper]));
  return notes.flatMap((note) => {
    const keeper = keepers.get(note.by) as Keeper;
    const date = dateAt(run.zone, note.at_ms);
    if (keeper.lostDays.has(date)) return [];
    const written = entryOf(note, names);
    if (!keeper.writesLate) return [written];
    const at_ms = Math.floor(written.at_ms / QUARTER_ms) * QUARTER_ms;
    const typed_ms = Math.max(instantOf(run.zone, date, EVENING_h), written.at_ms + QUARTER_ms);
    return [{ ...written, at_ms, typed_ms }];
  });
}

const round = (value: number, digits: number) => Number(value.toFixed(digits));
