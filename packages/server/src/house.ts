import { type AcceptedKinds, acceptedKinds, type KindRegistry } from "@sillwood/bench/book";
import type { EntryStore } from "@sillwood/store/entry-store";
import type { Context } from "hono";
import type { Door } from "./access/door.ts";
import { type Pairings, pairings } from "./access/pairing.ts";
import { makeNews, type News } from "./news.ts";
import { HttpProblem } from "./problem.ts";

export interface AppOptions {
  readonly store: EntryStore;
  /** The kinds of entries that this app knows. */
  readonly kinds: KindRegistry;
  /** Folder of the built web app; without it only the interface for programs is served. */
  readonly webDir?: string;
  readonly news?: News;
  /** Further origins whose pages may write, as that of a development server or of a proxy. */
  readonly origins?: readonly string[];
  /** Which way in this is; this machine's own when left out. */
  readonly door?: Door;
  /** Names by which others may call this server; only this machine's own names when left out. */
  readonly hosts?: readonly string[];
  /** Whether a proxy stands in front and names the callers. */
  readonly behindProxy?: boolean;
  /** Codes for pairing; two doors of one house share them. */
  readonly codes?: Pairings;
  /** DER of the authority that signs this house's certificate, for phones to fetch. */
  readonly authority?: Uint8Array;
  /** Where devices reach this house, as a grower's screen shows it beside a code. */
  readonly address?: string;
  readonly now_ms?: () => number;
  readonly log?: (line: string) => void;
}

/** What the routes work with. */
export interface House {
  readonly store: EntryStore;
  readonly registry: KindRegistry;
  readonly kinds: AcceptedKinds;
  readonly news: News;
  readonly codes: Pairings;
  readonly now_ms: () => number;
  readonly address: string | undefined;
}

export const houseOf = ({
  store,
  kinds,
  news = makeNews(),
  codes = pairings(),
  now_ms = Date.now,
  address,
}: AppOptions): House => ({
  store,
  registry: kinds,
  kinds: acceptedKinds(kinds),
  news,
  codes,
  now_ms,
  address,
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
