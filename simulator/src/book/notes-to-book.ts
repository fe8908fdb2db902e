import type { Note } from "../nursery/notes.ts";
import type { Written } from "./book-writer.ts";
import type { Json } from "./line.ts";

/** What the nursery's numbers are called in the book. */
export interface Names {
  readonly plant: (key: number) => string;
  readonly bench: (index: number) => string;
  readonly spot: (bench: number, place: number) => string;
  readonly person: (key: string) => { readonly id: string; readonly device: string };
}

/** The entry in which a note stands in the book. */
export function entryOf(note: Note, names: Names): Written {
  const { id, device } = names.person(note.by);
  const { kind, data } = said(note, names);
  return { kind, data, on: note.pots.map(names.plant), at_ms: note.at_ms, by: id, device };
}

function said(note: Note, names: Names): { readonly kind: string; readonly data: Json } {
  switch (note.what) {
    case "watered":
      return {
        kind: "watering.watered",
        data: {
          volume_mL: note.volume_mL,
          drained: note.drained,
          leachate_mL: note.leachate_mL,
          way: note.way,
        },
      };
    case "weighed":
      return {
        kind: "watering.weighed",
        data: { weight_g: note.weight_g, state: note.state, confirmed: note.confirmed },
      };
    case "looked":
      return { kind: "watering.looked", data: { look: note.look, yes: note.yes } };
    case "moved":
      return { kind: "plant.moved", data: { to: names.spot(note.bench, note.place) } };
    case "measured":
      return { kind: "plant.measured", data: { ...note.facts } };
    case "noted":
      return { kind: "plant.noted", data: { text: note.text } };
    case "skipped":
      return { kind: "round.skipped", data: { task: "watering:water", reason: note.reason } };
    case "walked":
      return { kind: "round.walked", data: { bench: names.bench(note.bench), minutes: note.minutes } };
  }
}
