import type { Say, UnitSystem } from "@sillwood/bench/words";
import type { ScienceFunction } from "@sillwood/science/catalogue";
import { Sourced } from "../../parts/origin.tsx";
import { useWords, type Words } from "../../words/words.ts";
import { shownUnit } from "../fields/shown-unit.ts";
import type { Reckoned } from "./reckon.ts";
import styles from "./reckoner.module.css";
import { sumName } from "./sum-name.ts";

export interface PartSaid {
  readonly name: string;
  readonly said: string;
}

/** Significant digits of a result: more than any input is worth, fewer than would look like knowledge. */
const DIGITS_n = 4;

/** Results in words and the person's units. */
export function partsSaid(
  fields: Extract<Reckoned, { readonly fields: unknown }>["fields"],
  units: UnitSystem,
  say: Say,
  words: Words["reckoner"],
): readonly PartSaid[] {
  return fields.map(({ name, unit, value }) => {
    const shown = shownUnit(unit, units);
    const one = (number: number) => significant(shown.shown(number), say);
    const text =
      typeof value === "number"
        ? one(value)
        : typeof value === "boolean"
          ? value
            ? words.yes
            : words.no
          : Array.isArray(value)
            ? (value as readonly number[]).map(one).join("; ")
            : String(value);
    return {
      name: sumName(name, say.language),
      said: `${text}${shown.symbol ? `\u202f${shown.symbol}` : ""}`,
    };
  });
}

function significant(value: number, say: Say): string {
  if (value === 0) return "0";
  const magnitude = Math.floor(Math.log10(Math.abs(value)));
  return magnitude < -6 || magnitude > 9
    ? value.toExponential(DIGITS_n - 1)
    : say.number(value, Math.min(10, Math.max(0, DIGITS_n - 1 - magnitude)));
}

interface ResultOfProps {
  readonly sum: ScienceFunction;
  readonly out: Reckoned;
  readonly lines: readonly PartSaid[];
}

/** The result, for which values it holds, and where it comes from. */
export function ResultOf({ sum, out, lines }: ResultOfProps) {
  const { reckoner: words } = useWords();
  return (
    <section className={styles["result"]} aria-live="polite">
      {"problem" in out ? (
        <p role="alert">{out.problem}</p>
      ) : (
        lines.map(({ name, said }) => (
          <p key={name} className={styles["part"]}>
            {lines.length > 1 && <span className={styles["what"]}>{name}</span>}
            <Sourced origin={out.origin} size={lines.length > 3 ? "row" : "amount"}>
              {said}
            </Sourced>
          </p>
        ))
      )}
      <p className={styles["from"]}>{words.from(sum.source)}</p>
    </section>
  );
}
