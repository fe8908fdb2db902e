import { StoreError } from "../src/errors.ts";
import { openSqlite } from "../src/sqlite/index.ts";

/** Opens a book and prints how it went. */
const [path] = process.argv.slice(2) as [string];
try {
  await (await openSqlite({ path })).close();
  process.stdout.write("opened\n");
} catch (error) {
  process.stdout.write(`${error instanceof StoreError ? error.fault : String(error)}\n`);
}
