import type { AnyEntryKind, Json } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";
import type { Trouble } from "../errors.ts";
import { dataOf, withTime } from "../typed/draft-of.ts";
import { fieldsOf } from "../typed/fields.ts";
import { placeNewPlant, type Roster } from "../typed/new-plant.ts";
import { type SpotText, withIds } from "../typed/spots-text.ts";
import { subjectsOf } from "../typed/subjects.ts";
import type { TypedValue, Typing } from "../typed/typing.ts";

/** One entry as it was typed: a kind, what it is about, its values. */
export interface TypedEntry {
  readonly kind: AnyEntryKind;
  readonly words: readonly string[];
  readonly values: readonly TypedValue[];
}

export type DraftedEntry =
  | { readonly drafts: readonly Draft[]; readonly fresh: boolean }
  | { readonly troubles: readonly Trouble[] };

/** What a choice says when nothing was said: the schema's own word for it. */
const NOTHING_SAID = ["unknown", "as found"];

/** Turns what was typed into drafts: the entry itself, and before it what it needs (a bench for a new plant's window). */
export function draftEntry(typed: TypedEntry, typing: Typing, roster: Roster, at_ms?: number): DraftedEntry {
  const { kind } = typed;
  const subjects = subjectsOf(kind, typed.words, typing);
  const isNewPlant = kind.subject === "plant" && "fresh" in subjects && subjects.fresh;
  if (isNewPlant && kind.kind !== "plant.brought")
    return refused("on", `new is for plant.brought; ${kind.kind} is about a plant that is in the book`);
  const place = isNewPlant ? placeNewPlant(typed.values, typing, roster) : undefined;
  const values = place?.rest ?? typed.values;
  const base = baseOf(kind, subjects, values, typing, isNewPlant ? roster : undefined);
  const drafted = dataOf(kind, values, typing, { ...base, ...(place?.spot ? { spot: place.spot } : {}) });
  const troubles = [
    ...("troubles" in subjects ? subjects.troubles : []),
    ...(place?.troubles ?? []),
    ...("troubles" in drafted ? drafted.troubles : []),
  ];
  if (troubles.length > 0 || "troubles" in subjects || "troubles" in drafted) return { troubles };
  const data = isBench(kind) ? withSpotIds(drafted.data, subjects.on[0] as string, base) : drafted.data;
  const when_ms = drafted.at_ms ?? at_ms;
  const draft = withTime({ kind: kind.kind, on: subjects.on, data }, when_ms);
  // A bench that is laid for a plant has stood there as long as the plant.
  const before = (place?.drafts ?? []).map((one) => withTime(one, when_ms));
  return { drafts: [...before, draft], fresh: isNewPlant };
}

const refused = (path: string, message: string): DraftedEntry => ({ troubles: [{ path, message }] });
const isBench = (kind: AnyEntryKind) => fieldsOf(kind.schema).some(({ shape }) => shape === "spots");

/** What stands before anything is typed: the next number, the bench as it is, what a choice says when nothing was said. */
function baseOf(
  kind: AnyEntryKind,
  subjects: ReturnType<typeof subjectsOf>,
  values: readonly TypedValue[],
  { desk }: Typing,
  roster: Roster | undefined,
): Record<string, Json> {
  const base: Record<string, Json> = {};
  for (const { name, needed, shape, options } of fieldsOf(kind.schema)) {
    const silent = options.find((option) => NOTHING_SAID.includes(option));
    if (needed && shape === "choice" && silent !== undefined) base[name] = silent;
    if (needed && shape === "yes or no" && name === "yes") base[name] = true;
    if (name === "number" && roster && !values.some(({ key }) => key.toLowerCase() === "number"))
      base[name] = roster.next();
  }
  if (isBench(kind) && "on" in subjects) {
    const { benches } = desk.ledger.house().places;
    const known = benches.get(subjects.on[0] ?? "");
    const { id: _id, ...asLaid } = known ?? { id: "" };
    Object.assign(base, known ? asLaid : { outdoors: false, order_n: Math.min(999, benches.size) });
  }
  return base;
}

function withSpotIds(
  data: Readonly<Record<string, Json>>,
  bench: string,
  base: Readonly<Record<string, Json>>,
): Readonly<Record<string, Json>> {
  const known = (base["spots"] ?? []) as unknown as readonly SpotText[];
  const spots = withIds(data["spots"] as unknown as readonly { name: string }[], bench, known);
  return { ...data, spots: spots as unknown as Json };
}
