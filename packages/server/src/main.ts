import { parseArgs } from "node:util";
import { kindRegistry } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { houseKinds } from "@sillwood/bench/house";
import { openPostgres } from "@sillwood/store/postgres";
import { openSqlite } from "@sillwood/store/sqlite";
import { createApp } from "./app.ts";
import { listen } from "./listen.ts";

// Opens a book and listens. What can be asked of it stands in app.ts.
const { values } = parseArgs({
  options: {
    book: { type: "string", default: "book.sillwood" },
    port: { type: "string", default: "7373" },
    host: { type: "string", default: "127.0.0.1" },
    web: { type: "string" },
  },
});
const { book, port, host, web } = values;

try {
  const label = `server on port ${port}`;
  const store = /^postgres(ql)?:/.test(book)
    ? await openPostgres({ url: book, book: "main", label })
    : await openSqlite({ path: book, label });
  const kinds = kindRegistry([...houseKinds, ...crafts.flatMap((craft) => craft.kinds)]);
  const app = createApp({ store, kinds, ...(web === undefined ? {} : { webDir: web }) });
  const listening = await listen(app, { port: Number(port), host }).catch(async (error: unknown) => {
    await store.close();
    throw error;
  });
  console.log(listening.url);
  // One month of one device each start: the whole book comes round without anybody waiting for it.
  const { damaged } = await store.verify("next");
  if (damaged.length > 0)
    console.error(`${damaged.length} damaged entries wait for a good copy from another device`);
  const stop = async () => {
    await listening.close();
    await store.close();
    process.exit(0);
  };
  process.once("SIGINT", stop);
  process.once("SIGTERM", stop);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
