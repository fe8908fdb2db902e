import { parseArgs } from "node:util";
import type { Language, UnitSystem } from "@sillwood/bench/words";
import { StoreError } from "@sillwood/store/errors";
import type { Call, Command, Outcome } from "./command.ts";
import { commands } from "./commands/index.ts";
import { commonOptions } from "./common-options.ts";
import { DataError, type Trouble, troubleLine, UsageError } from "./errors.ts";
import { helpOf, overview } from "./help.ts";
import type { Surroundings } from "./surroundings.ts";
import { nearest } from "./text/nearest.ts";

/** Version of the JSON shapes in docs/cli.md; raised when a field is taken away or changes its meaning. */
const JSON_VERSION = 1;

/** 0 done, 1 a problem in the data, 2 wrong use. */
export type ExitCode = 0 | 1 | 2;

/** Runs one command. Never throws: whatever goes wrong is a message on the error stream and an exit code. */
export async function run(argv: readonly string[], around: Surroundings): Promise<ExitCode> {
  const [verb, ...rest] = argv;
  if (verb === undefined || verb === "--help" || verb === "-h" || (verb === "help" && rest.length === 0)) {
    around.out(overview(commands));
    return 0;
  }
  const wanted = verb === "help" ? (rest[0] as string) : verb;
  const command = commands.find((one) => one.verb === wanted);
  const json = argv.includes("--json");
  if (!command) {
    const near = nearest(
      wanted,
      commands.map((one) => one.verb),
    );
    const slip = near ? ` Meant ${near}?` : ` It has ${commands.map((one) => one.verb).join(", ")}.`;
    return complain(around, undefined, json, 2, [
      { path: "verb", message: `Sillwood has no verb ${JSON.stringify(wanted.slice(0, 60))}.${slip}` },
    ]);
  }
  if (verb === "help" || rest.includes("--help") || rest.includes("-h")) {
    around.out(helpOf(command));
    return 0;
  }
  try {
    const outcome = await command.run(callOf(command, rest, around));
    show(outcome, command, json, around);
    return outcome.code ?? 0;
  } catch (error) {
    return failed(error, command, json, around);
  }
}

function callOf(command: Command, args: readonly string[], around: Surroundings): Call {
  const shapes = { ...commonOptions, ...command.options };
  const options = Object.fromEntries(
    Object.entries(shapes).map(([name, { type, short }]) => [name, short ? { type, short } : { type }]),
  );
  let parsed: { values: Record<string, string | boolean | undefined>; positionals: string[] };
  try {
    parsed = parseArgs({ args: [...args], options, allowPositionals: true, strict: true }) as typeof parsed;
  } catch (error) {
    throw new UsageError(parseMessage(error as Error, Object.keys(shapes)));
  }
  const { values, positionals } = parsed;
  return {
    words: positionals,
    options: values,
    around,
    language: oneOf<Language>(values["lang"] ?? around.env["SILLWOOD_LANG"] ?? "en", ["en", "de"], "lang"),
    units: oneOf<UnitSystem>(
      values["units"] ?? around.env["SILLWOOD_UNITS"] ?? "metric",
      ["metric", "us"],
      "units",
    ),
    json: values["json"] === true,
    ready: (json, text) => show({ json, text }, command, values["json"] === true, around),
  };
}

function parseMessage(error: Error, known: readonly string[]): string {
  const name = /Unknown option '--?([^']+)'/.exec(error.message)?.[1];
  if (name === undefined) return (error.message.split("\n")[0] ?? "").replace(/'/g, "");
  const near = nearest(name, known);
  return `there is no option --${name.slice(0, 60)}.${near ? ` Meant --${near}?` : ""}`;
}

function oneOf<Value extends string>(given: unknown, allowed: readonly Value[], name: string): Value {
  if (allowed.includes(given as Value)) return given as Value;
  throw new UsageError(`--${name} is ${JSON.stringify(given)}; expected ${allowed.join(" or ")}.`);
}

function show(
  { json, text, complaints = [], shown }: Outcome,
  command: Command,
  asJson: boolean,
  around: Surroundings,
) {
  if (shown) return;
  if (asJson) around.out(`${JSON.stringify({ sillwood: JSON_VERSION, verb: command.verb, ...json })}\n`);
  else if (text !== "") around.out(text.endsWith("\n") ? text : `${text}\n`);
  for (const line of complaints) around.err(`${line}\n`);
}

function failed(error: unknown, command: Command, json: boolean, around: Surroundings): ExitCode {
  if (error instanceof UsageError)
    return complain(around, command, json, 2, [{ path: "", message: error.message }]);
  if (error instanceof DataError) return complain(around, command, json, 1, error.troubles);
  if (error instanceof StoreError)
    return complain(around, command, json, 1, [{ path: "book", message: error.message }]);
  const { message, stack } = error as Error;
  if (around.env["SILLWOOD_STACK"]) around.err(`${stack}\n`);
  return complain(around, command, json, 1, [
    { path: "", message: `Sillwood stumbled over ${command.verb}: ${message}` },
  ]);
}

/** Long lists of problems are cut on the screen; `--json` holds them all. */
const MOST_SHOWN_n = 20;

function complain(
  around: Surroundings,
  command: Command | undefined,
  json: boolean,
  code: ExitCode,
  troubles: readonly Trouble[],
): ExitCode {
  if (json)
    around.out(
      `${JSON.stringify({ sillwood: JSON_VERSION, verb: command?.verb ?? null, problems: troubles })}\n`,
    );
  for (const trouble of troubles.slice(0, MOST_SHOWN_n)) around.err(`${troubleLine(trouble)}\n`);
  if (troubles.length > MOST_SHOWN_n) around.err(`… and ${troubles.length - MOST_SHOWN_n} more problems.\n`);
  if (code === 2 && command) around.err(`See: sillwood ${command.verb} --help\n`);
  return code;
}
