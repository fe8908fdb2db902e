import type { ScienceInput } from "@sillwood/science/catalogue";

/** More words than these fill a screen without helping anybody. */
const MOST_OPTIONS_n = 12;

const bound = (value: number): string => `${Number(value.toPrecision(6))}`;

/** What an input takes: "-40 to 60 °C", "at least 0 g", "yes or no"; empty where anything is taken. */
export function rangeOf({ kind, min, max, unit, options }: ScienceInput): string {
  if (kind === "yes or no") return "yes or no";
  if (options)
    return options.length <= MOST_OPTIONS_n
      ? options.join(", ")
      : `${options.slice(0, MOST_OPTIONS_n).join(", ")} and ${options.length - MOST_OPTIONS_n} more`;
  const tail = unit && ` ${unit}`;
  const [low, high] = [Number.isFinite(min), Number.isFinite(max)];
  if (low && high) return `${bound(min)} to ${bound(max)}${tail}`;
  if (low) return `at least ${bound(min)}${tail}`;
  return high ? `at most ${bound(max)}${tail}` : "";
}

/** An input by its name and what it takes; those that may be left out carry a question mark. */
export const inputSaid = (input: ScienceInput): string =>
  [`${input.name}${input.optional ? "?" : ""}`, rangeOf(input) || input.unit].filter(Boolean).join(" ");
