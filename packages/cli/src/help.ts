import type { Command, OptionShapes } from "./command.ts";
import { commonOptions } from "./common-options.ts";
import { columns, widthOf } from "./text/columns.ts";
import { wrap } from "./text/wrap.ts";

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
    ...wrap(`sillwood ${verb}: ${what}`, WIDTH_n, 0, 2),
    "",
    ...usage.flatMap((line) => wrap(`sillwood ${verb}${line ? ` ${line}` : ""}`, WIDTH_n, 2, 6)),
    ...(help.length > 0 ? ["", ...wrap(help.join(" "), WIDTH_n)] : []),
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

/** Width of a help page: it is read on every screen. */
const WIDTH_n = 80;

/** Options in two columns; what is long goes on under its own column. */
function optionLines(options: OptionShapes): string[] {
  const names = Object.entries(options).map(
    ([name, { value, short }]) => `--${name}${value ? ` ${value}` : ""}${short ? `, -${short}` : ""}`,
  );
  const indent_n = 4 + Math.max(...names.map(widthOf));
  return Object.values(options).flatMap(({ what }, i) => {
    const [first = "", ...more] = wrap(what, WIDTH_n, indent_n);
    return [`  ${(names[i] as string).padEnd(indent_n - 2)}${first.trimStart()}`, ...more];
  });
}
