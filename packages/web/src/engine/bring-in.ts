import { type AcceptedEntry, type AcceptedKinds, importBook, type RedactedEntry } from "@sillwood/bench/book";

/** What a file of lines holds, seen before any of it is kept. */
export interface BroughtIn {
  readonly entries_n: number;
  /** Not on this device yet. */
  readonly fresh_n: number;
  readonly redacted_n: number;
  readonly damaged: readonly { readonly line: number; readonly message: string }[];
  /** Files that the lines name: bytes lie beside. */
  readonly files: readonly { readonly sha256: string; readonly type: string }[];
}

export interface Brought extends BroughtIn {
  readonly entries: readonly AcceptedEntry[];
  readonly redacted: readonly RedactedEntry[];
}

const MOST_DAMAGED_n = 200;

/** Reads lines of a book through the same gate as every other entry. Damaged ones are named and left out; none throws. */
export async function readBrought(
  text: string,
  kinds: AcceptedKinds,
  isKnown: (id: string) => boolean,
): Promise<Brought> {
  const entries: AcceptedEntry[] = [];
  const redacted: RedactedEntry[] = [];
  const damaged: { line: number; message: string }[] = [];
  const files: { sha256: string; type: string }[] = [];
  let fresh_n = 0;
  for await (const line of importBook(text.split("\n"), kinds)) {
    if (line.what === "entry") {
      entries.push(line.entry);
      if (!isKnown(line.entry.entry.id)) fresh_n++;
    } else if (line.what === "redacted") redacted.push(line.redacted);
    else if (line.what === "file") files.push({ sha256: line.file.file, type: line.file.type });
    else if (line.what === "damaged" && damaged.length < MOST_DAMAGED_n)
      damaged.push({ line: line.line_n, message: line.problems.map(({ message }) => message).join(". ") });
  }
  return {
    entries_n: entries.length,
    fresh_n,
    redacted_n: redacted.length,
    damaged,
    files,
    entries,
    redacted,
  };
}
