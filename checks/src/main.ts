// node tools/run.mjs checks/src/main.ts [FILE.json ...]: score tables; without a file, all delivered ones with a binding.
// Bindings that ask the whole engine need the calendar that tests get, too.
import "../../tools/test-setup.ts";
import { printScore, printSources } from "./print.ts";
import { scoreTable } from "./score.ts";
import { bindingOf, fieldOf, readTable, tableFields, tablePath } from "./tables.ts";

const args = process.argv.slice(2);
const verbose = args.includes("--sources");
const asJson = args.includes("--json");
const files = args.filter((each) => !each.startsWith("--"));
const paths = files.length > 0 ? files : tableFields().map(tablePath);
let failed = false;
for (const path of paths) {
  const rows = readTable(path);
  const field = fieldOf(path, rows);
  const binding = await bindingOf(field);
  if (!binding) {
    console.log(`${field}: ${rows.length} rows, no binding yet`);
    failed ||= files.length > 0;
    continue;
  }
  const later = rows.filter((row) => binding.waits?.(row));
  const due = rows.filter((row) => !binding.waits?.(row));
  const score = scoreTable(due, binding);
  console.log(asJson ? JSON.stringify(score) : printScore(score));
  if (later.length > 0 && !asJson) {
    console.log(later.map((row) => `  waiting: ${row.id} ${binding.waits?.(row)}`).join("\n"));
  }
  if (verbose) console.log(printSources(score));
  failed ||= score.passed_n < score.rows_n;
}
process.exitCode = failed ? 1 : 0;
