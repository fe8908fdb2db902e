import type { AnyEntryKind } from "@sillwood/bench/book";
import { kinds } from "../book/kinds.ts";
import type { Trouble } from "../errors.ts";
import { nearest } from "../text/nearest.ts";
import type { TypedValue } from "../typed/typing.ts";

/** Words of a command line, parted: `key=value` are values, the others say what it is about. */
export function partWords(words: readonly string[]): {
  readonly subjects: readonly string[];
  readonly values: readonly TypedValue[];
} {
  const isValue = (word: string) => /^[\p{L}][\p{L}\p{N}_.-]*=/u.test(word);
  return {
    subjects: words.filter((word) => !isValue(word)),
    values: words.filter(isValue).map((word) => {
      const cut = word.indexOf("=");
      return { key: word.slice(0, cut), text: word.slice(cut + 1) };
    }),
  };
}

/** A kind by its name, or by its second word where only one kind has it: `weighed`, `watered`, `brought`. */
export function kindNamed(typed: string): AnyEntryKind | Trouble {
  const exact = kinds.find(typed);
  if (exact) return exact;
  const short = kinds.all.filter(({ kind }) => kind.split(".")[1] === typed);
  if (short.length === 1) return short[0] as AnyEntryKind;
  const names = kinds.all.map(({ kind }) => kind);
  const shown = JSON.stringify(typed.slice(0, 60));
  if (short.length > 1)
    return {
      path: "kind",
      message: `${shown} could be ${short.map(({ kind }) => kind).join(" or ")}`,
      value: typed,
    };
  const near = nearest(typed, [...names, ...names.map((name) => name.split(".")[1] as string)]);
  return {
    path: "kind",
    message: `no entry is called ${shown}. All kinds: sillwood enter --list`,
    value: typed.slice(0, 200),
    limit: names.join(", "),
    ...(near ? { slip: `Meant ${near}?` } : {}),
  };
}

export const isKind = (found: AnyEntryKind | Trouble): found is AnyEntryKind => "schema" in found;
