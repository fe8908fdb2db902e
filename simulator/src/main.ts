import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { exportText } from "./book/export-text.ts";
import { demoBook } from "./demo.ts";

/** Writes the demo book: `--out DIR --now INSTANT --seed N`. The book is DIR/book.ndjson, its files lie in DIR/files under their hash. */
const { values } = parseArgs({
  options: { out: { type: "string" }, now: { type: "string" }, seed: { type: "string", default: "1" } },
});
const now_ms = values.now === undefined ? Date.now() : Date.parse(values.now);
const seed = Number(values.seed);
if (!values.out || !Number.isFinite(now_ms) || !Number.isInteger(seed)) {
  console.error("expected --out DIR, --now INSTANT (as 2026-01-14T15:00:00Z) and --seed a whole number");
  process.exit(2);
}
const demo = demoBook({ now_ms, seed });
mkdirSync(join(values.out, "files"), { recursive: true });
writeFileSync(join(values.out, "book.ndjson"), exportText("demo", demo));
for (const [hash, text] of demo.files) writeFileSync(join(values.out, "files", hash), text);
console.log(`${demo.entries.length} entries, ${demo.files.size} files in ${values.out}`);
