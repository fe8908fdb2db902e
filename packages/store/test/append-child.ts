import { someEntries } from "../../bench/test/entry-maker.ts";
import { openSqlite } from "../src/sqlite/index.ts";

/** Appends entries one at a time and names each on its output once it is acknowledged, until it is killed. */
const [path, seed] = process.argv.slice(2) as [string, string];
const store = await openSqlite({ path, label: "the child" });
process.stdout.write("open\n");
for (const accepted of someEntries(Number(seed), 5000)) {
  await store.append({ entries: [accepted], redacted: [] });
  // Written straight to the descriptor: what the parent has read was acknowledged before.
  process.stdout.write(`${accepted.entry.id}/${accepted.hash}\n`);
}
