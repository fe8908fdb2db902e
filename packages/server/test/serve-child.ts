import { openSqlite } from "@sillwood/store/sqlite";
import { testRegistry } from "../../bench/test/entry-maker.ts";
import { createApp } from "../src/app.ts";
import { listen } from "../src/listen.ts";

/** Serves a book until it is killed. */
const [path] = process.argv.slice(2) as [string];
const store = await openSqlite({ path, book: "main" });
const { url } = await listen(createApp({ store, kinds: testRegistry }), { port: 0 });
process.stdout.write(`${url}\n`);
