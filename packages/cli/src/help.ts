import type { Command, OptionShapes } from "./command.ts";
import { commonOptions } from "./common-options.ts";
import { columns } from "./text/columns.ts";

/** All verbs at a glance. */
export function overview(commands: readonly Command[]): string {
  return [
    "sillwood: the bench book and reckoner of a small grower of miniature chilli trees",
    "",
    ...columns(
      commands.map(({ verb, what }) => [verb, what]),
      { indent_n: 2 },
    ),
    "",
    "First answer:  sillwood enter plant.brought new habit=thin pot=12x9 medium=spongy window=S",
    "Look around:   sillwood open --demo",
    "One verb:      sillwood VERB --help",
    "",
  ].join("\n");
}

/** The page of one verb. */
export function helpOf({ verb, what, usage, help, options, example }: Command): string {
  return [
    `sillwood ${verb}: ${what}`,
    "",
    ...usage.map((line) => `  sillwood ${verb}${line ? ` ${line}` : ""}`),
    ...(help.length > 0 ? ["", ...help] : []),
    ...(Object.keys(options).length > 0 ? ["", "Options:", ...optionLines(options)] : []),
    "",
    "Options of every verb:",
    ...optionLines(commonOptions),
    "",
    example.length === 1 ? "Example:" : "Examples:",
    ...example.map((line) => `  ${line}`),
    "",
    "Exit codes: 0 done, 1 a problem in the data, 2 wrong use.",
    "",
  ].join("\n");
}

const optionLines = (options: OptionShapes): string[] =>
  columns(
    Object.entries(options).map(([name, { value, short, what }]) => [
      `--${name}${value ? ` ${value}` : ""}${short ? `, -${short}` : ""}`,
      what,
    ]),
    { indent_n: 2 },
  );
