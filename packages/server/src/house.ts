import { type AcceptedKinds, acceptedKinds, type KindRegistry } from "@sillwood/bench/book";
import type { EntryStore } from "@sillwood/store/entry-store";
import type { Context } from "hono";
import { makeNews, type News } from "./news.ts";
import { HttpProblem } from "./problem.ts";

export interface AppOptions {
  readonly store: EntryStore;
  /** The kinds of entries that this app knows. */
  readonly kinds: KindRegistry;
  /** Folder of the built web app; without it only the interface for programs is served. */
  readonly webDir?: string;
  readonly news?: News;
  /** Further origins whose pages may write, as that of a development server. */
  readonly origins?: readonly string[];
  readonly now_ms?: () => number;
  readonly log?: (line: string) => void;
}

/** What the routes work with. */
export interface House {
  readonly store: EntryStore;
  readonly registry: KindRegistry;
  readonly kinds: AcceptedKinds;
  readonly news: News;
  readonly now_ms: () => number;
}

export const houseOf = ({ store, kinds, news = makeNews(), now_ms = Date.now }: AppOptions): House => ({
  store,
  registry: kinds,
  kinds: acceptedKinds(kinds),
  news,
  now_ms,
});

/** The one book there is, when the address names it. */
export function bookAt(house: House, c: Context): EntryStore {
  const book = c.req.param("book");
  if (book !== house.store.book)
    throw new HttpProblem(404, "there is no such book here", [
      { path: "book", message: "is not known", value: String(book).slice(0, 100) },
    ]);
  return house.store;
}
