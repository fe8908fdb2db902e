import { useSyncExternalStore } from "react";

/** Digits of a code of a printed round; pot numbers are shorter. */
export const SHEET_n = 8;

/** What was typed towards a number. Outside the page, so that a scanner's digits are not lost while it opens. */
let text = "";
const listeners = new Set<() => void>();

export function setTyped(next: string): void {
  text = next;
  for (const listener of listeners) listener();
}

/** A sheet's code may begin with noughts: none is dropped. */
export function typeDigit(digit: string): void {
  if (text.length < SHEET_n) setTyped(text + digit);
}

export const typed = (): string => text;

export const useTyped = (): string =>
  useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, typed);
