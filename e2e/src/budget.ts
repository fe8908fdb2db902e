/** What a walk costs the person who walks it. */
export interface Effort {
  /** Pointer presses. */
  readonly taps_n: number;
  /** Key presses, on a keyboard or on the number pad of the screen. */
  readonly keys_n: number;
  /** Of the keys, those that were digits (or the decimal point). */
  readonly digits_n: number;
  readonly decisions_n: number;
  readonly typedValues_n: number;
}

export type Budget = Partial<Effort>;

const words: Readonly<Record<keyof Effort, string>> = {
  taps_n: "taps",
  keys_n: "keys",
  digits_n: "digits",
  decisions_n: "decisions",
  typedValues_n: "typed values",
};

/** Says what went over the budget; a quantity that the budget does not name is free. */
export function overBudget(effort: Effort, budget: Budget): readonly string[] {
  return (Object.keys(words) as (keyof Effort)[]).flatMap((key) => {
    const most = budget[key];
    return most !== undefined && effort[key] > most ? [`${effort[key]} ${words[key]}; at most ${most}`] : [];
  });
}
