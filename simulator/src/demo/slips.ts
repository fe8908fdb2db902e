import type { Written } from "../book/book-writer.ts";
import { entryOf } from "../book/notes-to-book.ts";
import type { Note } from "../nursery/notes.ts";
import { ROLES } from "./cast.ts";
import type { Hands, Pending } from "./setting-up.ts";

/** A slip of the pen at one note: what was first written, and what put it right. */
interface Slip {
  readonly at: (note: Note) => boolean;
  /** Which of the notes that fit. */
  readonly nth: number;
  readonly write: (hands: Hands, right: Written, note: Note) => readonly Pending[] | undefined;
}

const of = (number: number, what: Note["what"]) => (note: Note) =>
  note.what === what && note.pots.length === 1 && ROLES[note.pots[0] as number]?.number === number;

/** Writes something about earlier entries a while later. */
function later(
  hands: Hands,
  written: Written,
  after_s: number,
  data: Written["data"],
  corrects: string,
): Pending {
  const at_ms = written.at_ms + after_s * 1000;
  return {
    typed_ms: at_ms,
    act: () => {
      hands.book.write({
        ...written,
        kind: "book.corrected",
        on: written.on,
        at_ms,
        data,
        corrects: [corrects],
      });
      return undefined;
    },
  };
}

const SLIPS: readonly Slip[] = [
  {
    // A nought too many.
    at: of(122, "watered"),
    nth: 5,
    write: (hands, right, note) => {
      const wrong = note.what === "watered" ? note.volume_mL * 10 : 0;
      const id = hands.book.write({ ...right, data: { ...(right.data as object), volume_mL: wrong } });
      return [later(hands, right, 75, { data: right.data }, id)];
    },
  },
  {
    // The weight of 119 under 118.
    at: of(119, "weighed"),
    nth: 4,
    write: (hands, right) => {
      const neighbour = hands.names.plant(ROLES.findIndex((role) => role.number === 118));
      const id = hands.book.write({ ...right, on: [neighbour] });
      return [later(hands, { ...right, on: [neighbour] }, 40, { data: right.data, on: right.on }, id)];
    },
  },
  {
    // Written twice; one is withdrawn.
    at: of(126, "watered"),
    nth: 7,
    write: (hands, right) => {
      hands.book.write(right);
      const twice = hands.book.write({ ...right, at_ms: right.at_ms + 4000 });
      return [later(hands, right, 60, { withdrawn: true }, twice)];
    },
  },
  {
    // Withdrawn by mistake and brought back.
    at: of(130, "watered"),
    nth: 8,
    write: (hands, right) => {
      const id = hands.book.write(right);
      return [
        later(hands, right, 900, { withdrawn: true }, id),
        later(hands, right, 960, { restored: true }, id),
      ];
    },
  },
  {
    // Another pot stood on the scale; nobody has said yet what it was, so the weight is held.
    at: of(121, "weighed"),
    nth: -2,
    write: (hands, right, note) => {
      const weight_g = note.what === "weighed" ? note.weight_g + 236 : 0;
      hands.book.write({ ...right, data: { ...(right.data as object), weight_g } });
      return undefined;
    },
  },
  {
    // Typed 200 where the jug said 160.
    at: of(125, "watered"),
    nth: 9,
    write: (hands, right, note) => {
      const wrong = note.what === "watered" ? note.volume_mL + 40 : 0;
      const id = hands.book.write({ ...right, data: { ...(right.data as object), volume_mL: wrong } });
      return [later(hands, right, 3600, { data: right.data }, id)];
    },
  },
];

/** The notes as they are written, a few of them wrongly at first; a yard round now and then is typed in the evening. */
export function writeNotes(
  hands: Hands,
  notes: readonly Note[],
  eveningOf: (at_ms: number) => number,
): Pending[] {
  const slips = new Map<Note, Slip>();
  for (const slip of SLIPS) {
    const fits = notes.filter(slip.at);
    const note = fits.at(slip.nth);
    if (note) slips.set(note, slip);
  }
  return notes.map((note, index) => {
    const right = entryOf(note, hands.names);
    const slip = slips.get(note);
    const typedLater = !slip && note.by === "grower" && note.what !== "walked" && index % 37 === 0;
    const typed_ms = typedLater ? Math.max(note.at_ms, eveningOf(note.at_ms)) : note.at_ms;
    return {
      typed_ms,
      act: () => {
        if (slip) return slip.write(hands, right, note);
        hands.book.write(typed_ms > note.at_ms ? { ...right, typed_ms } : right);
        return undefined;
      },
    };
  });
}
