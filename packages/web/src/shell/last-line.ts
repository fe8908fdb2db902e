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
  /** What a put-right entry held before, as a correction that says it again. */
  readonly before?: Draft["data"];
}

/** A written entry, or the first entries that it corrects, with what is said of them to take it back and to say it again. */
interface Step {
  readonly corrects: readonly EntryId[];
  readonly back: Draft["data"];
  readonly forth: Draft["data"];
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
    const steps = drafts.map((draft, i) => stepOf(draft, written.kept[i], how.before));
    sayKept(engine, steps, said, how, "wrote");
  } else if ("lost" in written)
    sayLast({ text: words().shell.diskFull(how.said ?? written.lost), trouble: true });
  else sayLast({ text: written.refused.map(({ message }) => message).join(". "), trouble: true });
  return written;
}

/** A correction names first entries, never another correction: to take one back, the first entries are corrected again. */
export function stepOf(
  { data, corrects }: Pick<Draft, "data" | "corrects">,
  kept: EntryId | undefined,
  before: Draft["data"] | undefined,
): Step | undefined {
  if (!corrects || corrects.length === 0)
    return kept && { corrects: [kept], back: { withdrawn: true }, forth: { restored: true } };
  if (data !== null && typeof data === "object" && "withdrawn" in data)
    return { corrects, back: { restored: true }, forth: data };
  if (data !== null && typeof data === "object" && "restored" in data)
    return { corrects, back: { withdrawn: true }, forth: data };
  return before === undefined ? undefined : { corrects, back: before, forth: data };
}

function sayKept(
  engine: Engine,
  steps: readonly (Step | undefined)[],
  said: string,
  how: WriteWords,
  did: "wrote" | "tookBack" | "broughtBack",
) {
  const undo = async () => {
    const takingBack = did !== "tookBack";
    const drafts = together(
      steps.filter((step) => step !== undefined),
      takingBack ? "back" : "forth",
    );
    const written = await engine.write(drafts);
    if ("kept" in written) {
      sayKept(engine, steps, said, how, takingBack ? "tookBack" : "broughtBack");
      how.onUndo?.(takingBack);
    } else if ("lost" in written) sayLast({ text: words().shell.diskFull(said), trouble: true });
  };
  sayLast({
    text: words().shell[did](said),
    // What can't be taken back as a whole offers no Undo.
    ...(steps.every((step) => step !== undefined) ? { undo } : {}),
    ...(how.after && did !== "tookBack" ? { after: how.after } : {}),
  });
}

/** One correction for all that are taken back by the same words. */
function together(steps: readonly Step[], which: "back" | "forth"): readonly Draft[] {
  const byData = new Map<string, Draft>();
  for (const step of steps) {
    const key = JSON.stringify(step[which]);
    const corrects = [...(byData.get(key)?.corrects ?? []), ...step.corrects];
    byData.set(key, { kind: "book.corrected", on: [], data: step[which], corrects });
  }
  return [...byData.values()];
}
