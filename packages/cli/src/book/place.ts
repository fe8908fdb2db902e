import { join, resolve } from "node:path";
import type { Call } from "../command.ts";
import { textOption } from "../command.ts";
import { UsageError } from "../errors.ts";

/** Where a book lies: a file, or one book of a PostgreSQL database. */
export type BookPlace =
  | { readonly engine: "sqlite"; readonly path: string }
  | { readonly engine: "postgres"; readonly url: string; readonly book: string };

/** Name of the book in a database when the address does not say `?book=NAME`. */
const USUAL_NAME = "main";

/** What `--book` names, else $SILLWOOD_BOOK, else the device's own. */
export function placeOf(call: Call): BookPlace {
  const given = textOption(call, "book") ?? call.around.env["SILLWOOD_BOOK"];
  if (given === undefined || given === "")
    return { engine: "sqlite", path: join(call.around.home, "book.sillwood") };
  if (!/^postgres(ql)?:/.test(given)) return { engine: "sqlite", path: resolve(call.around.cwd, given) };
  let url: URL;
  try {
    url = new URL(given);
  } catch {
    throw new UsageError("--book is no address; expected postgres://name@127.0.0.1:5432/database?book=main.");
  }
  const book = url.searchParams.get("book") ?? USUAL_NAME;
  url.searchParams.delete("book");
  return { engine: "postgres", url: url.href, book };
}

/** The place as people may read it: never a password. */
export function placeSaid(place: BookPlace): string {
  if (place.engine === "sqlite") return place.path;
  const { host, pathname } = new URL(place.url);
  return `the book ${place.book} in ${host}${pathname}`;
}
