import type { AnyEntryKind, PlantId } from "@sillwood/bench/book";
import type { Desk } from "@sillwood/bench/pages";
import { inWalkingOrder } from "@sillwood/bench/pages";
import { nearest } from "../text/nearest.ts";

/** What a text may name. */
export type ThingSort = "plant" | "bench" | "spot" | "batch" | "cultivar" | "supply" | "person";

export type Found = { readonly id: string } | { readonly wrong: string };

interface Named {
  readonly id: string;
  readonly names: readonly string[];
}

const slug = (name: string): string =>
  name
    .toLowerCase()
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^\p{L}\p{N}?]+/gu, "-")
    .replace(/^-|-$/g, "");

/** The thing that a text names: by id, by number, by name in any spelling of case and spaces. */
export function findThing(desk: Desk, sort: ThingSort, typed: string): Found {
  const things = thingsOf(desk, sort);
  const exact = things.find(({ id }) => id === typed);
  if (exact) return exact;
  const wanted = slug(typed);
  const fitting = things.filter(({ names }) => names.some((name) => slug(name) === wanted));
  if (fitting.length === 1) return fitting[0] as Named;
  if (fitting.length > 1) {
    const ids = fitting.map(({ id }) => id).join(", ");
    return {
      wrong: `${fitting.length} ${plural(sort)} are called ${JSON.stringify(typed)}: name one by its id (${ids})`,
    };
  }
  return { wrong: unknown(sort, typed, things) };
}

function unknown(sort: ThingSort, typed: string, things: readonly Named[]): string {
  const shown = JSON.stringify(typed.slice(0, 60));
  if (things.length === 0) return `the book holds no ${sort} yet, so none is called ${shown}`;
  const names = [...new Set(things.flatMap((thing) => thing.names[0] ?? []))];
  const near = nearest(typed, names);
  const MOST_n = 12;
  const known = names.slice(0, MOST_n).join(", ") + (names.length > MOST_n ? ", …" : "");
  return `no ${sort} is called ${shown}${near ? `; meant ${near}?` : `; expected one of ${known}`}`;
}

const plural = (sort: ThingSort) =>
  sort === "batch" || sort === "bench" ? `${sort}es` : sort === "supply" ? "supplies" : `${sort}s`;

function thingsOf(desk: Desk, sort: ThingSort): readonly Named[] {
  const { places, people, batches, supplies } = desk.ledger.house();
  switch (sort) {
    case "plant":
      return desk.ledger.plants().map((id) => ({ id, names: [desk.numberOf(id)] }));
    case "bench":
      return [...places.benches.values()].map(({ id, name }) => ({ id, names: [name] }));
    case "spot":
      return [...places.benches.values()].flatMap((bench) =>
        bench.spots.map(({ id, name }) => ({ id, names: [`${bench.name} ${name}`, name] })),
      );
    case "batch":
      return [...batches.batches.values()].map(({ id, name }) => ({ id, names: [name] }));
    case "cultivar":
      return [...batches.cultivars.values()].map(({ id, name }) => ({ id, names: [name] }));
    case "supply":
      return [...supplies.values()].map(({ id, name }) => ({ id, names: [name] }));
    case "person":
      return [...people.roles].map(([id, role]) => ({ id, names: [role] }));
  }
}

/** Which sort of thing a subject of entries is; none for the book itself. */
export const sortOfSubject = (subject: AnyEntryKind["subject"]): ThingSort | undefined =>
  subject === "book" || subject === "device" ? undefined : subject;

/** Which sort of thing an id field names. */
export function sortOfField(name: string): ThingSort {
  if (name === "mother" || name === "father") return "plant";
  if (name === "bench" || name === "cultivar" || name === "batch") return name;
  return name === "into" ? "batch" : "spot";
}

/** Living plants that stand on a bench, in walking order. */
export function plantsOnBench(desk: Desk, bench: string): readonly PlantId[] {
  const { benchOfSpot } = desk.ledger.house().places;
  return inWalkingOrder(desk).filter((plant) => benchOfSpot.get(desk.facts(plant)?.spot ?? "") === bench);
}
