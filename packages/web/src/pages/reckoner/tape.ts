import type { Origin } from "@sillwood/bench/working";
import { useSyncExternalStore } from "react";

/** One line of the paper tape. */
export interface TapeLine {
  readonly title: string;
  readonly said: string;
  readonly value?: number;
  readonly unit: string;
  readonly origin: Origin;
}

const KEY = "sillwood.tape";
const MOST_n = 100;
let tape: readonly TapeLine[] | undefined;
const listeners = new Set<() => void>();

function read(): readonly TapeLine[] {
  if (!tape) {
    tape = [];
    try {
      const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "[]");
      if (Array.isArray(kept)) tape = kept as TapeLine[];
    } catch {
      // Broken or forbidden storage: the tape begins anew; nothing of the book is on it.
    }
  }
  return tape;
}

/** The tape is this device's scribbling paper: it outlives a reload and is no part of the book. */
export function setTape(lines: readonly TapeLine[]): void {
  tape = lines.slice(-MOST_n);
  try {
    localStorage.setItem(KEY, JSON.stringify(tape));
  } catch {
    // Kept for this visit only.
  }
  for (const listener of listeners) listener();
}

export function useTape(): readonly TapeLine[] {
  return useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, read);
}
