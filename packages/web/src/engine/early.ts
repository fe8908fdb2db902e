import { crafts } from "@sillwood/bench/crafts";
import { type FoldStore, type KeptFold, keepFold, keptFold } from "@sillwood/bench/house";
import type { BookDb } from "../device/book-db.ts";
import type { BookStore } from "../device/book-store.ts";
import type { FileStore } from "../device/file-store.ts";
import { type Book, newBook } from "./book.ts";
import type { Asking, AsOf, QuestionName } from "./questions.ts";

/** A book at an early stage of a start: its kept fold with what came since, long before every line of it is read. */
export interface Early {
  readonly book: Book;
  readonly kept: KeptFold;
}

/** Where the fold lies, under the name that says what it is good for: one is kept, an older one is overwritten. */
const FOLD = "fold";
interface KeptText {
  readonly key: string;
  readonly text: string;
}

/** The early book; undefined where no fold was kept or what is here does not go with it. */
export async function earlyBook(
  db: BookDb,
  store: BookStore,
  files: FileStore,
  asking: Asking,
  random: () => number,
): Promise<Early | undefined> {
  const cache: FoldStore["cache"] = {
    async get(wanted) {
      const there = (await db.get("meta", FOLD)) as KeptText | undefined;
      return there?.key === wanted ? there.text : undefined;
    },
  };
  const { summary, refs, get } = store;
  const kept = await keptFold({ summary, refs, get, cache }, crafts);
  if (!kept) return undefined;
  const book = newBook(asking, random, kept.snapshot);
  if (kept.since.length > 0 && book.ledger.add(kept.since).stale) return undefined;
  for (const { file } of book.ledger.missing()) {
    const found = await files.get(file);
    if (found) book.addSeries(file, new TextDecoder().decode(found.bytes));
  }
  return { book, kept };
}

/** What a person wants first: who is here, and the round. All else looks back, or writes, and waits for the whole book. */
export const isAnsweredEarly = (name: QuestionName, args: unknown): boolean =>
  name === "people" || (name === "round" && (args as AsOf).at_ms === undefined);

/** Written so soon after a round was answered: the screen comes first, and a phone may go back into a pocket. */
const AFTER_ROUND_ms = 50;
/** A fold is kept anew when so many entries came: fewer are added to it in no time. */
const GROWN_n = 200;

/** Keeps the fold for the next start, now and then. `isAll`: whether a store of so many entries holds just what is folded. */
export function foldKeeper(db: BookDb, store: BookStore, book: Book, isAll: (entries_n: number) => boolean) {
  let keptOf_n = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const keep = async () => {
    const { entries_n } = book.ledger;
    await keepFold(
      store,
      book,
      async (key, text) => {
        await db.put("meta", { key, text } satisfies KeptText, FOLD);
        keptOf_n = entries_n;
      },
      isAll,
    );
  };
  return {
    /** The fold that is kept now has so many entries. */
    has(entries_n: number) {
      keptOf_n = entries_n;
    },
    soon() {
      if (book.ledger.entries_n - keptOf_n < GROWN_n) return;
      clearTimeout(timer);
      // A disk that is full or closing keeps no fold; the next start then reads every line.
      timer = setTimeout(() => void keep().catch(() => undefined), AFTER_ROUND_ms);
    },
  };
}
