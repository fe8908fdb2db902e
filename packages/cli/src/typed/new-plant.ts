import type { Json } from "@sillwood/bench/book";
import type { Bench } from "@sillwood/bench/places";
import type { Draft } from "@sillwood/bench/round";
import type { Trouble } from "../errors.ts";
import { cliWords } from "../words/words.ts";
import { compass_deg, pointOf } from "./compass.ts";
import { findThing } from "./find-thing.ts";
import type { TypedValue, Typing } from "./typing.ts";

/** What a newcomer types of a plant's place: a window, or outdoors, or a bench by name. */
const PLACE_KEYS = ["window", "bench", "place"];

export interface NewPlace {
  /** Keys of the entry itself. */
  readonly rest: readonly TypedValue[];
  readonly spot?: string;
  readonly drafts: readonly Draft[];
  readonly troubles: readonly Trouble[];
}

/** Numbers that are given in this run, so that two new plants of one file get two. */
export interface Roster {
  next(): number;
  /** A spot that was filled in this run. */
  readonly filled: Set<string>;
  /** Benches laid in this run, by their name or window. */
  readonly laid: Map<string, Bench>;
}

export function rosterOf({ desk }: Pick<Typing, "desk">): Roster {
  let highest = desk.ledger
    .plants()
    .reduce((most, plant) => Math.max(most, desk.facts(plant)?.number ?? 0), 0);
  return { next: () => ++highest, filled: new Set(), laid: new Map() };
}

/** The place of a new plant: an empty spot of the bench that is meant, or one more spot, or a new bench. */
export function placeNewPlant(typed: readonly TypedValue[], typing: Typing, roster: Roster): NewPlace {
  const rest = typed.filter(({ key }) => !PLACE_KEYS.includes(key.toLowerCase()));
  const said = typed.find(({ key }) => PLACE_KEYS.includes(key.toLowerCase()));
  if (!said) return { rest, drafts: [], troubles: [] };
  if (typed.some(({ key }) => key.toLowerCase() === "spot") || typed.length - rest.length > 1)
    return wrong(rest, said, "the place is given twice; expected one of spot, bench, window, place");
  const outdoors = /^(outdoors?|outside|draußen|yard)$/i.test(said.text.trim());
  if (said.key === "bench") return onBench(rest, said, typing, roster);
  if (outdoors) return atPlace(rest, { outdoors: true }, typing, roster);
  if (/^(unknown|not sure|\?)$/i.test(said.text.trim()))
    return atPlace(rest, { outdoors: false }, typing, roster);
  const faces_deg = compass_deg(said.text) ?? degrees(said.text);
  if (faces_deg === undefined)
    return wrong(
      rest,
      said,
      `window faces ${JSON.stringify(said.text.slice(0, 40))}; expected N, NE, E, SE, S, SW, W, NW, degrees from 0 to 360, outdoors or unknown`,
    );
  return atPlace(rest, { outdoors: false, windowFaces_deg: faces_deg }, typing, roster);
}

function degrees(text: string): number | undefined {
  const match = /^(\d{1,3}(?:\.\d+)?)\s*(?:°|deg)?$/.exec(text.trim());
  return match && Number(match[1]) <= 360 ? Number(match[1]) : undefined;
}

const wrong = (rest: readonly TypedValue[], { key, text }: TypedValue, message: string): NewPlace => ({
  rest,
  drafts: [],
  troubles: [{ path: key, message, value: text.slice(0, 200) }],
});

function onBench(rest: readonly TypedValue[], said: TypedValue, typing: Typing, roster: Roster): NewPlace {
  const found = findThing(typing.desk, "bench", said.text);
  const known =
    roster.laid.get(said.text.toLowerCase()) ??
    ("id" in found ? typing.desk.ledger.house().places.benches.get(found.id) : undefined);
  if (known) return oneMore(rest, known, typing, roster);
  const { size } = typing.desk.ledger.house().places.benches;
  const bench: Bench = {
    id: typing.newId(),
    name: said.text.trim(),
    place: "shelf",
    outdoors: false,
    order_n: Math.min(999, size + roster.laid.size),
    spots: [],
  };
  return oneMore(rest, bench, typing, roster);
}

interface Place {
  readonly outdoors: boolean;
  readonly windowFaces_deg?: number;
}

function atPlace(rest: readonly TypedValue[], place: Place, typing: Typing, roster: Roster): NewPlace {
  const { places } = typing.desk.ledger.house();
  const fits = (bench: Bench) =>
    bench.outdoors === place.outdoors &&
    bench.windowFaces_deg === place.windowFaces_deg &&
    bench.place === (place.outdoors ? "table" : "sill");
  const known = [...roster.laid.values(), ...places.benches.values()].find(fits);
  const words = cliWords(typing.desk.say.language);
  const bench: Bench = known ?? {
    id: typing.newId(),
    name: place.outdoors
      ? words.outdoors
      : place.windowFaces_deg === undefined
        ? words.someWindow
        : words.window(pointOf(place.windowFaces_deg)),
    place: place.outdoors ? "table" : "sill",
    order_n: Math.min(999, places.benches.size + roster.laid.size),
    spots: [],
    ...place,
  };
  return oneMore(rest, bench, typing, roster);
}

function oneMore(rest: readonly TypedValue[], bench: Bench, { desk }: Typing, roster: Roster): NewPlace {
  const taken = new Set(desk.living().map((plant) => desk.facts(plant)?.spot));
  const free = bench.spots.find(({ id }) => !taken.has(id) && !roster.filled.has(id));
  if (free) {
    roster.filled.add(free.id);
    return { rest, spot: free.id, drafts: [], troubles: [] };
  }
  const names = new Set(bench.spots.map(({ name }) => name));
  let number = bench.spots.length + 1;
  while (names.has(`${number}`)) number++;
  const spot = { id: `${bench.id}-${number}`.slice(0, 64), name: `${number}` };
  const { id, ...data } = { ...bench, spots: [...bench.spots, spot] };
  roster.filled.add(spot.id);
  roster.laid.set(bench.name.toLowerCase(), { ...bench, spots: data.spots });
  return {
    rest,
    spot: spot.id,
    drafts: [{ kind: "bench.laid", on: [id], data: data as unknown as Json }],
    troubles: [],
  };
}
