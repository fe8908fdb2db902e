import { existsSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import ts from "typescript";
import { judgeNames } from "./name-judge.ts";
import { root } from "./run-program.mjs";
import { unitlessNames } from "./unit-suffix.ts";

// Names of numbers carry their unit (docs of style), and each formula its source; a suffix survives JSON, SQL and logs.
const config = ts.getParsedCommandLineOfConfigFile(
  join(root, "tsconfig.json"),
  {},
  {
    ...ts.sys,
    onUnRecoverableConfigFileDiagnostic: (trouble) => {
      throw new Error(ts.flattenDiagnosticMessageText(trouble.messageText, "\n"));
    },
  },
);
const isSource = (folder: string) => (file: string) =>
  file.startsWith(join(root, folder)) && !/\.(test|test-d|property\.test)\.ts$/.test(file);
const science = isSource("packages/science/src/");
const entries = isSource("packages/bench/src/");

const quantities = join(root, "packages/science/quantities.md");
const unitless = unitlessNames(existsSync(quantities) ? readFileSync(quantities, "utf8") : "");
const files = (config?.fileNames ?? []).filter((file) => science(file) || entries(file));
const program = ts.createProgram(files, config?.options ?? {});
const verdicts = judgeNames(program, {
  science,
  entries,
  conversions: (file) => file.startsWith(join(root, "packages/science/src/units")),
  unitless: unitless.allows,
});
for (const { file, line, message } of verdicts) console.error(`${relative(root, file)}:${line} ${message}`);
console.log(
  `${files.length} files, ${unitless.size} unitless names, ${verdicts.length} names or sources to put right`,
);
if (verdicts.length > 0 || files.length === 0) process.exit(1);
