import { useSyncExternalStore } from "react";
import { addDigit } from "../../parts/pad.tsx";

/** Digits of a code of a printed round; pot numbers are shorter. */
export const SHEET_n = 8;

/** What was typed towards a number. Outside the page, so that a scanner's digits are not lost while it opens. */
let text = "";
const listeners = new Set<() => void>();

export function setTyped(next: string): void {
  text = next;
  for (const listener of listeners) listener();
}

export const typeDigit = (digit: string): void => setTyped(addDigit(text, digit, SHEET_n));

export const useTyped = (): string =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => text,
  );
