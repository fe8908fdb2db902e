import { reportNames, stale } from "./report.ts";

// A stale table is said, not refused: making it again takes longer than any test and is a decision of its own.
const names = reportNames();
for (const name of names) {
  if (stale(name)) console.log(`stale docs/${name}.md: what it scores has changed since`);
}
console.log(`${names.length} report tables looked at`);
