import type { AnyEntryKind } from "@sillwood/bench/book";
import type { Trouble } from "../errors.ts";
import { findThing, plantsOnBench, sortOfSubject } from "./find-thing.ts";
import type { Typing } from "./typing.ts";

export type Subjects =
  | { readonly on: readonly string[]; readonly fresh: boolean }
  | { readonly troubles: readonly Trouble[] };

/** The id that entries about the book as a whole carry. */
const BOOK = "book";

/**
 * What an entry is about, from the words after its kind: plants by number or id, `@bench` for all that stand on it, `new` for
 * something the book does not have yet, names of benches, batches, cultivars and supplies.
 */
export function subjectsOf(kind: AnyEntryKind, words: readonly string[], typing: Typing): Subjects {
  const sort = sortOfSubject(kind.subject);
  if (sort === undefined)
    return { on: words.length > 0 ? words : kind.onMin_n > 0 ? [BOOK] : [], fresh: false };
  const on: string[] = [];
  const troubles: Trouble[] = [];
  let fresh = false;
  const wrong = (message: string, value: string) =>
    void troubles.push({ path: "on", message, value: value.slice(0, 200) });
  for (const word of words) {
    if (word === "new") {
      fresh = true;
      on.push(typing.newId());
    } else if (sort === "plant" && word.startsWith("@")) {
      const bench = findThing(typing.desk, "bench", word.slice(1));
      if ("wrong" in bench) wrong(bench.wrong, word);
      else {
        const plants = plantsOnBench(typing.desk, bench.id);
        if (plants.length === 0) wrong(`no living plant stands on ${JSON.stringify(word.slice(1))}`, word);
        on.push(...plants);
      }
    } else {
      const found = findThing(typing.desk, sort, word);
      if ("wrong" in found) wrong(found.wrong, word);
      else on.push(found.id);
    }
  }
  if (on.length < kind.onMin_n && troubles.length === 0)
    troubles.push({
      path: "on",
      message: `${kind.kind} is about at least ${kind.onMin_n} ${sort}; say which${sort === "plant" ? ", by number, or new for one that has just come" : ", or new"}`,
      value: words.length,
      limit: `>=${kind.onMin_n}`,
    });
  return troubles.length > 0 ? { troubles } : { on: [...new Set(on)], fresh };
}
