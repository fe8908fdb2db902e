import type { EntryId } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";
import type { Engine } from "../engine/client.ts";
import type { Written } from "../engine/messages.ts";
import { words } from "../words/words.ts";

/** What was written last on this device, and the way back. Stays until the next entry replaces it. */
export interface LastLine {
  readonly text: string;
  /** Said after the text by a reader: "Now 127: water 180 millilitres." */
  readonly after?: string;
  readonly undo?: () => void;
  readonly trouble?: boolean;
}

let current: LastLine | undefined;
const listeners = new Set<() => void>();

export const lastLine = (): LastLine | undefined => current;
export function onLastLine(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
export function sayLast(line: LastLine | undefined): void {
  current = line;
  for (const listener of listeners) listener();
}

export interface WriteWords {
  /** Shown instead of the entries' own sentences. */
  readonly said?: string;
  readonly after?: string;
  /** Called when these entries were taken back, and when they were written again. */
  readonly onUndo?: (undone: boolean) => void;
}

/**
 * The one way in which screens write: entries go to disk, the last line says what was kept and offers Undo.
 * Undo is an entry too, so it can be undone.
 */
export async function write(
  engine: Engine,
  drafts: readonly Draft[],
  how: WriteWords = {},
): Promise<Written> {
  const written = await engine.write(drafts);
  if ("kept" in written) {
    const said = how.said ?? written.said.join("; ");
    sayKept(engine, written.kept, said, how, "wrote");
  } else if ("lost" in written)
    sayLast({ text: words().shell.diskFull(how.said ?? written.lost), trouble: true });
  else sayLast({ text: written.refused.map(({ message }) => message).join(". "), trouble: true });
  return written;
}

function sayKept(
  engine: Engine,
  kept: readonly EntryId[],
  said: string,
  how: WriteWords,
  did: "wrote" | "tookBack" | "broughtBack",
) {
  const correction = (data: Draft["data"]): Draft => ({
    kind: "book.corrected",
    on: [],
    data,
    corrects: kept,
  });
  const undo = async () => {
    const takingBack = did !== "tookBack";
    const written = await engine.write([correction(takingBack ? { withdrawn: true } : { restored: true })]);
    if ("kept" in written) {
      how.onUndo?.(takingBack);
      sayKept(engine, kept, said, how, takingBack ? "tookBack" : "broughtBack");
    } else if ("lost" in written) sayLast({ text: words().shell.diskFull(said), trouble: true });
  };
  sayLast({
    text: words().shell[did](said),
    undo,
    ...(how.after && did !== "tookBack" ? { after: how.after } : {}),
  });
}
