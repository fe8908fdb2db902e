import type { EntryId, Json } from "@sillwood/bench/book";
import type { Record as BookRecord } from "@sillwood/bench/house";
import { unreadableDrafts } from "@sillwood/bench/pages";
import type { Draft } from "@sillwood/bench/round";
import { type Writing, withBook } from "../book/session.ts";
import type { Call, Outcome } from "../command.ts";
import { partWords } from "../entering/typed-words.ts";
import { wroteOutcome } from "../entering/wrote.ts";
import { DataError, dataError, UsageError } from "../errors.ts";
import { widthFor } from "../text/width.ts";
import { dataOf } from "../typed/draft-of.ts";
import type { TypedValue } from "../typed/typing.ts";

/** Puts entries right: what is not typed stays as it stood. Several get the same values, each its own correction. */
export const correct = (call: Call, words: readonly string[]): Promise<Outcome> =>
  withBook(
    call,
    async (writing) => {
      const { subjects, values } = partWords(words);
      if (subjects.length === 0 || values.length === 0)
        throw new UsageError("correct which entry, to what? sillwood book correct 3f81c2 volume=160");
      const drafts = subjects.map((word) => correctionOf(call, writing, word, values));
      return write(call, writing, drafts);
    },
    true,
  );

function correctionOf(call: Call, writing: Writing, word: string, values: readonly TypedValue[]): Draft {
  const record = recordOf(writing, word);
  const { first, content } = record.standing;
  if (!record.kind) throw dataError("entry", "was written by a newer Sillwood; it stays as it is", word);
  const read = dataOf(
    record.kind,
    values,
    { ...writing, units: call.units },
    content.data as Readonly<Record<string, Json>>,
  );
  if ("troubles" in read) throw new DataError(read.troubles);
  const data = {
    data: read.data,
    v: record.kind.v,
    ...(read.at_ms === undefined ? {} : { at_ms: read.at_ms }),
  };
  return { kind: "book.corrected", on: [], data, corrects: [first.id] };
}

export const withdraw = (call: Call, words: readonly string[]): Promise<Outcome> =>
  mark(call, words, { withdrawn: true });
export const restore = (call: Call, words: readonly string[]): Promise<Outcome> =>
  mark(call, words, { restored: true });

/** Makes entries unreadable for good, with what corrections said of them. Only the grower's word counts, and nothing brings them back. */
export const redact = (call: Call, words: readonly string[]): Promise<Outcome> =>
  withBook(
    call,
    async (writing) => {
      if (words.length === 0)
        throw new UsageError("which entries? Their ids, or their last letters as the log shows them.");
      const { roles } = writing.ledger.house().people;
      if (roles.get(writing.by) !== "grower")
        throw dataError("by", "only the grower makes entries unreadable", writing.by);
      const drafts = words.flatMap((word) =>
        unreadableDrafts(writing.ledger, recordOf(writing, word).standing.first.id),
      );
      const written = await writing.keep(drafts);
      return {
        json: { redacted_n: drafts.length, entries: written.map(({ id }) => id) },
        text: `${drafts.length} ${drafts.length === 1 ? "entry is" : "entries are"} unreadable now, here and wherever this book is synced.`,
      };
    },
    true,
  );

/** One correction may name several entries: a whole bench is undone as one. */
const mark = (call: Call, words: readonly string[], data: Json): Promise<Outcome> =>
  withBook(
    call,
    async (writing) => {
      if (words.length === 0)
        throw new UsageError("which entries? Their ids, or their last letters as the log shows them.");
      const corrects = words.map((word) => recordOf(writing, word).standing.first.id);
      return write(call, writing, [{ kind: "book.corrected", on: [], data, corrects }]);
    },
    true,
  );

async function write(call: Call, writing: Writing, drafts: readonly Draft[]): Promise<Outcome> {
  const written = await writing.keep(drafts);
  const desk = writing.deskNow();
  const touched = drafts
    .flatMap(({ corrects }) => corrects ?? [])
    .flatMap((id) => {
      const record = writing.ledger.record(id);
      return record ? [record.acting ?? { ...record.standing.first, ...record.standing.content }] : [];
    });
  const outcome = wroteOutcome(touched, desk, { width_n: widthFor(call) });
  return { ...outcome, json: { ...outcome.json, corrections: written.map(({ id }) => id) } };
}

/** The first entry whose id ends so; a correction is never corrected itself. */
function recordOf({ ledger }: Writing, word: string): BookRecord {
  const exact = ledger.record(word as EntryId);
  if (exact) return exact;
  const ending = word.toLowerCase();
  const fitting =
    ending.length < 4
      ? []
      : [...ledger.records()].filter(({ standing }) => standing.first.id.endsWith(ending));
  if (fitting.length === 1) return fitting[0] as BookRecord;
  const why =
    fitting.length > 1
      ? `${fitting.length} entries end so; type more letters`
      : "no entry has this id or ends so; sillwood book log shows them";
  throw dataError("entry", why, word.slice(0, 60));
}
