import { benchReadings } from "../book/bench-readings.ts";
import { type BookWriter, bookWriter } from "../book/book-writer.ts";
import type { Json, Line } from "../book/line.ts";
import { entryOf, type Names } from "../book/notes-to-book.ts";
import { countLeaves, measurePot } from "../nursery/measure.ts";
import type { Note } from "../nursery/notes.ts";
import type { Pot } from "../nursery/potted-plant.ts";
import type { DrawnRun } from "./draw-run.ts";

const SPOTS_n = 12;
const HABITS = ["thin", "fat", "lantern", "tiny", "unknown"] as const;

/** The grower's book of a run: what a careful person would have set up on the first day, then their notes. */
export function bookOfRun(
  run: DrawnRun,
  started: readonly Pot[],
  notes: readonly Note[],
): { readonly lines: readonly Line[]; readonly plant: (key: number) => string } {
  const chance = run.chance.under("book");
  const book = bookWriter(run.zone, chance);
  const { from_ms } = run;
  const grower = { id: book.name(from_ms), device: book.name(from_ms) };
  const plants = started.map(() => book.name(from_ms));
  const benches = ["sill", "shelf"];
  const names: Names = {
    plant: (key) => plants[key] as string,
    bench: (index) => benches[index] as string,
    spot: (bench, place) => `${benches[bench]}-${place + 1}`,
    person: () => grower,
  };
  const write = (kind: string, on: readonly string[], data: Json, at_ms = from_ms) =>
    book.write({ kind, on, data, at_ms, by: grower.id, device: grower.device });

  write("person.joined", [grower.id], { role: "grower" });
  write("site.described", ["book"], {
    name: run.name,
    latitude_deg: round(run.ground.latitude_deg, 1),
    longitude_deg: run.ground.longitude_deg,
    elevation_m: round(run.ground.elevation_m, 0),
    zone: run.zone,
    currency: "USD",
  });
  layBenches(run, benches, names, write);
  for (const [key, pot] of started.entries()) {
    write("plant.brought", [names.plant(key)], {
      number: 101 + key,
      habit: chance.pick(HABITS),
      pot: { ...measurePot(pot.vessel.shape, chance) },
      medium: run.media[key] as string,
      spot: names.spot(pot.bench, key),
    });
    if (chance.happens(0.6)) write("plant.measured", [names.plant(key)], { ...countLeaves(pot, chance) });
  }
  const later: { readonly at_ms: number; readonly act: (book: BookWriter) => void }[] = [
    ...notes.map((note) => ({ at_ms: note.at_ms, act: () => void book.write(entryOf(note, names)) })),
    ...run.moves.map(({ key, at_ms, bench }) => ({
      at_ms,
      act: () => void write("plant.moved", [names.plant(key)], { to: names.spot(bench, key) }, at_ms),
    })),
    ...run.benches
      .flatMap((air, bench) =>
        benchReadings(
          air,
          bench,
          bench === 0 ? "window" : "lamp",
          run.days.slice(0, run.days.length - 42),
          chance.under(`readings ${bench}`),
        ),
      )
      .map(({ at_ms, kind, bench, data }) => ({
        at_ms,
        act: () => void write(kind, [names.bench(bench)], data, at_ms),
      })),
  ];
  for (const { act } of later.sort((a, b) => a.at_ms - b.at_ms)) act(book);
  return { lines: book.lines, plant: names.plant };
}

type Write = (kind: string, on: readonly string[], data: Json) => void;

function layBenches(run: DrawnRun, benches: readonly string[], names: Names, write: Write): void {
  for (const [index, id] of benches.entries()) {
    write("bench.laid", [id], {
      name: id === "sill" ? "Sill" : "Lamp shelf",
      place: id === "sill" ? "sill" : "shelf",
      outdoors: false,
      order_n: index + 1,
      spots: Array.from({ length: SPOTS_n }, (_, place) => ({
        id: names.spot(index, place),
        name: String(place + 1),
      })),
      ...(id === "sill" ? { windowFaces_deg: run.windowFaces_deg } : {}),
    });
  }
}

const round = (value: number, digits: number) => Number(value.toFixed(digits));
