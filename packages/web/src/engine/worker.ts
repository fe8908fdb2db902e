import { openBookDb } from "../device/book-db.ts";
import { bookStore } from "../device/book-store.ts";
import { serverAt } from "../device/server.ts";
import { syncLoop } from "../device/sync-loop.ts";
import { newBook } from "./book.ts";
import { clerkOf } from "./clerk.ts";
import { needGerman } from "./german.ts";
import type { Command, FromEngine, ToEngine } from "./messages.ts";
import { needTemporal } from "./temporal.ts";

/** The one worker of the house: it alone holds the folded book, the disk and the line to the server. */
interface Scope {
  postMessage(message: FromEngine, transfer?: Transferable[]): void;
  onmessage: ((event: { readonly data: ToEngine }) => void) | null;
}
const scope = self as unknown as Scope;

/** Feeds ids; 32 bits a draw are plenty for the 62 an id takes. */
const random = () => (crypto.getRandomValues(new Uint32Array(1))[0] as number) / 2 ** 32;

type Clerk = Awaited<ReturnType<typeof clerkOf>>;
let clerk: Promise<Clerk> | undefined;

async function open(command: Extract<Command, { do: "open" }>): Promise<Clerk> {
  const [db] = await Promise.all([openBookDb("sillwood"), needTemporal()]);
  const server = serverAt(command.base, {
    book: (await db.get("meta", "book")) as string | undefined,
    learned: (book) => void db.put("meta", book, "book"),
  });
  return clerkOf({
    db,
    store: bookStore(db),
    server,
    book: newBook(command.asking, random),
    random,
    asking: command.asking,
    tell: (news) => scope.postMessage(news),
    loop: syncLoop,
    channel: new BroadcastChannel("sillwood"),
  });
}

async function answer(command: Command): Promise<unknown> {
  if ("asking" in command && command.asking.language === "de") await needGerman();
  if (command.do === "open") {
    clerk = open(command);
    return (await clerk).opened();
  }
  const at = await clerk;
  if (!at) throw new Error("the book was not opened");
  return at.obey(command);
}

scope.onmessage = ({ data }) => {
  const { id, ...command } = data;
  answer(command as Command).then(
    (reply) => scope.postMessage({ id, reply }),
    (error: Error) => scope.postMessage({ id, failed: error.stack ?? error.message }),
  );
};
