import type { Desk } from "@sillwood/bench/pages";
import type { Working } from "@sillwood/bench/working";
import { cliWords } from "../words/words.ts";
import { columns } from "./columns.ts";
import { MARK } from "./marks.ts";
import { wrap } from "./wrap.ts";

/** Inputs are opened this deep; deeper ones are named and can be asked for alone. */
const DEPTH_n = 2;

/** A working in full: result, sum, inputs with where each comes from, source; inputs that have a working of their own under it. */
export function workingText(working: Working, desk: Desk, width_n: number, depth_n = 0): string {
  const words = cliWords(desk.say.language);
  const say = (value: number) =>
    working.unit === "ms"
      ? desk.say.day(value, desk.now_ms)
      : `${threeFigures(value, desk)} ${working.unit}`.trim();
  const indent_n = depth_n * 4;
  const line = (text: string) => wrap(text, width_n, indent_n + 2, indent_n + 4);
  const lines = [
    ...wrap(
      `${working.title}: ${working.result}  ${MARK[working.origin]} ${words[working.origin]}`,
      width_n,
      indent_n,
      indent_n + 2,
    ),
    ...(working.low !== undefined && working.high !== undefined
      ? line(`${words.range}: ${say(working.low)} – ${say(working.high)}`)
      : []),
    ...line(`${words.formula}: ${working.formula}`),
    ...line(working.sum),
    ...(working.inputs.length > 0 ? line(words.inputs) : []),
    ...columns(
      working.inputs.map(({ name, said, from, origin }) => [name, said, `${MARK[origin]} ${from}`]),
      { indent_n: indent_n + 4 },
    ).flatMap((row) => wrapRow(row, width_n, indent_n + 6)),
    ...line(`${words.source}: ${working.source}`),
    ...(working.movesMost ? line(working.movesMost) : []),
    ...working.notes.flatMap(line),
  ];
  const deeper =
    depth_n < DEPTH_n
      ? working.inputs.flatMap(({ working: own }) =>
          own ? ["", workingText(own, desk, width_n, depth_n + 1)] : [],
        )
      : [];
  return [...lines, ...deeper].join("\n");
}

/** A row that is too wide keeps its columns and goes on below, so that nothing is cut. */
function wrapRow(row: string, width_n: number, hang_n: number): string[] {
  if (row.length <= width_n) return [row];
  const indent_n = row.length - row.trimStart().length;
  const cells = row.trim().split(/ {2,}/);
  return wrap(cells.join("   "), width_n, indent_n, hang_n);
}

/** More than three figures of a range nobody is sure of. */
const threeFigures = (value: number, desk: Desk): string =>
  desk.say.number(value, Math.max(0, 2 - Math.floor(Math.log10(Math.max(1e-6, Math.abs(value))))));
