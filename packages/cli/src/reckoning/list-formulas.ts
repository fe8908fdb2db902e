import { catalogue, type ScienceFunction } from "@sillwood/science/catalogue";
import type { Outcome } from "../command.ts";
import { UsageError } from "../errors.ts";
import { nearest } from "../text/nearest.ts";
import { wrap } from "../text/wrap.ts";
import { inputSaid, rangeOf } from "./say-input.ts";

/** All formulas, or those in whose name, words or field a word stands; in full when it is only one. */
export function listFormulas(word: string | undefined, more: readonly string[], width_n: number): Outcome {
  const wanted = word?.toLowerCase();
  const found = catalogue.filter(
    ({ name, what, field }) =>
      wanted === undefined || `${name} ${what} ${field}`.toLowerCase().includes(wanted),
  );
  if (found.length === 0 || more.length > 0) {
    const near = nearest(
      word ?? "",
      catalogue.map(({ name }) => name),
    );
    throw new UsageError(
      `no formula is called ${JSON.stringify((word ?? "").slice(0, 60))}.${near ? ` Meant ${near}?` : ""} All of them: sillwood reckon`,
    );
  }
  const one = found.length === 1 ? found[0] : undefined;
  return {
    json: { functions: found.map(formulaShape) },
    text: one ? formulaText(one, width_n) : found.map((each) => listed(each, width_n)).join("\n"),
  };
}

const listed = (one: ScienceFunction, width_n: number): string =>
  [
    one.name,
    ...wrap(one.what, width_n, 4, 4),
    ...wrap(one.inputs.map(inputSaid).join("; "), width_n, 4, 6),
    ...wrap(`source: ${one.source}`, width_n, 4, 6),
  ].join("\n");

/** One formula in full: each input with its words, range, unit and usual value. */
export function formulaText(one: ScienceFunction, width_n: number): string {
  const inputs = one.inputs.flatMap((input) => [
    `  ${input.name}${input.optional ? "?" : ""}  ${input.what}`,
    ...wrap(
      [rangeOf(input) || input.unit, `usual ${String(input.usual)}`].filter(Boolean).join("; "),
      width_n,
      6,
      6,
    ),
  ]);
  const gives = one.result.fields.map(({ name, unit }) => (unit ? `${name} [${unit}]` : name)).join(", ");
  return [
    one.name,
    ...wrap(one.what, width_n, 2, 2),
    "",
    ...inputs,
    "",
    ...wrap(`gives ${gives}`, width_n, 2, 4),
    ...wrap(`source: ${one.source}`, width_n, 2, 4),
  ].join("\n");
}

const finite = (value: number) => (Number.isFinite(value) ? value : null);

export const formulaShape = ({ name, field, what, inputs, result, source }: ScienceFunction) => ({
  name,
  field,
  what,
  inputs: inputs.map((input) => ({ ...input, min: finite(input.min), max: finite(input.max) })),
  result,
  source,
});
