import type { AnyEntryKind } from "@sillwood/bench/book";
import type { Trouble } from "../errors.ts";
import { fieldsOf } from "./fields.ts";
import { findThing, plantsOnBench, sortOfSubject } from "./find-thing.ts";
import type { Typing } from "./typing.ts";

export type Subjects =
  | { readonly on: readonly string[]; readonly fresh: boolean }
  | { readonly troubles: readonly Trouble[] };

/** The id that entries about the book as a whole carry. */
const BOOK = "book";

const mayBeSpot = (kind: AnyEntryKind): boolean =>
  kind.subject === "bench" && !fieldsOf(kind.schema).some(({ shape }) => shape === "spots");

/** A name that several spots carry says so; else what is said of benches is what helps. */
const betterReason = (ofBench: string, ofSpot: string): string =>
  / are called /.test(ofSpot) ? ofSpot : ofBench;

/**
 * What an entry is about, from the words after its kind: plants by number or id, `@bench` for all that stand on it, `new` for
 * something the book does not have yet, names of benches and their spots, batches, cultivars and supplies.
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
      // Air and light may be written for one spot of a bench; a bench itself is laid whole.
      const spot = "wrong" in found && mayBeSpot(kind) ? findThing(typing.desk, "spot", word) : found;
      if ("id" in spot) on.push(spot.id);
      else if ("wrong" in found) wrong(betterReason(found.wrong, spot.wrong), word);
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
