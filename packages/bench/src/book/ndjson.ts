import * as v from "valibot";
import { type AcceptedEntry, type AcceptedKinds, acceptText } from "./accept.ts";
import type { Problem, Sha256 } from "./entry.ts";
import { isSha256, sha256Hex } from "./hash.ts";
import type { RedactedEntry } from "./redact.ts";
import type { StoredEntry } from "./sync.ts";
import { isUuid7 } from "./uuid.ts";

/**
 * The whole book as lines of JSON (NDJSON), readable without this program: a head, every entry byte for byte as it is stored,
 * what is left of redacted ones, a list of the files with their hashes, and an end that counts them.
 */

/** A file that entries name; its bytes lie beside the export under its hash. */
export interface FileLine {
  readonly file: Sha256;
  readonly size_B: number;
  /** MIME type. */
  readonly type: string;
}

export interface BookCounts {
  readonly entries_n: number;
  readonly redacted_n: number;
  readonly files_n: number;
}

export type BookLine =
  | { readonly what: "head"; readonly book: string }
  | { readonly what: "entry"; readonly line_n: number; readonly entry: AcceptedEntry }
  | { readonly what: "redacted"; readonly line_n: number; readonly redacted: RedactedEntry }
  | { readonly what: "file"; readonly line_n: number; readonly file: FileLine }
  | { readonly what: "damaged"; readonly line_n: number; readonly problems: readonly Problem[] }
  | { readonly what: "end"; readonly counts: BookCounts };

const FORMAT = 1;

export const headLine = (book: string): string => JSON.stringify({ sillwood: "book", format: FORMAT, book });

/** The line of an entry. One whose body no longer has its hash is named, not written: it would come back as other content. */
export function entryLine(entry: StoredEntry): string {
  if (!("text" in entry)) return JSON.stringify(entry);
  const { id, hash, text } = entry;
  return sha256Hex(text) === hash ? text : JSON.stringify({ damaged: true, id, hash });
}

export const fileLine = (file: FileLine): string => JSON.stringify(file);
export const endLine = (counts: BookCounts): string => JSON.stringify({ end: counts });

const hash = v.pipe(v.string(), v.check(isSha256, "expected a SHA-256"));
const count_n = v.pipe(v.number(), v.integer(), v.minValue(0));
const headSchema = v.object({ sillwood: v.literal("book"), format: v.literal(FORMAT), book: v.string() });
const fileSchema = v.strictObject({ file: hash, size_B: count_n, type: v.string() });
const damagedSchema = v.strictObject({ damaged: v.literal(true), id: v.string(), hash });
const endSchema = v.strictObject({
  end: v.strictObject({ entries_n: count_n, redacted_n: count_n, files_n: count_n }),
});

/** A redacted entry as it travels. */
export const redactedSchema = v.strictObject({
  id: v.pipe(v.string(), v.check(isUuid7, "expected a UUIDv7")),
  hash,
  device: v.pipe(v.string(), v.check(isUuid7, "expected a UUIDv7")),
  kind: v.pipe(
    v.string(),
    v.regex(/^[a-z][a-zA-Z]{0,39}\.[a-z][a-zA-Z]{0,39}$/, "expected a kind as plant.brought"),
  ),
  redacted: v.literal(true),
});

/** The lines of an export, without line ends. */
export async function* exportBook(
  book: string,
  entries: AsyncIterable<readonly StoredEntry[]>,
  files: AsyncIterable<FileLine>,
): AsyncGenerator<string> {
  yield headLine(book);
  let entries_n = 0;
  let redacted_n = 0;
  let files_n = 0;
  for await (const chunk of entries)
    for (const entry of chunk) {
      "text" in entry ? entries_n++ : redacted_n++;
      yield entryLine(entry);
    }
  for await (const file of files) {
    files_n++;
    yield fileLine(file);
  }
  yield endLine({ entries_n, redacted_n, files_n });
}

/**
 * Reads an export line by line. Damaged lines are reported with their number and the rest is read on; a book whose end is
 * missing or counts other lines than came is reported too. Any text is answered, none throws.
 */
export async function* importBook(
  lines: AsyncIterable<string> | Iterable<string>,
  kinds: AcceptedKinds,
): AsyncGenerator<BookLine> {
  const seen = { entries_n: 0, redacted_n: 0, files_n: 0 };
  let line_n = 0;
  let end: BookCounts | undefined;
  for await (const raw of lines) {
    line_n++;
    // Editors on other systems leave a byte order mark and carriage returns behind.
    const text = (line_n === 1 ? raw.replace(/^\uFEFF/, "") : raw).trim();
    if (text === "") continue;
    const line = readLine(text, line_n, kinds);
    if (line.what === "entry") seen.entries_n++;
    else if (line.what === "redacted") seen.redacted_n++;
    else if (line.what === "file") seen.files_n++;
    if (line.what === "end") end = line.counts;
    yield line;
  }
  const problems = endProblems(seen, end);
  if (problems.length > 0) yield { what: "damaged", line_n: line_n + 1, problems };
}

function readLine(text: string, line_n: number, kinds: AcceptedKinds): BookLine {
  const result = acceptText(text, kinds);
  if (result.ok) {
    const { entry, hash, text: canonicalText } = result;
    return { what: "entry", line_n, entry: { entry, hash, text: canonicalText } };
  }
  return otherLine(text, line_n) ?? { what: "damaged", line_n, problems: result.problems };
}

function otherLine(text: string, line_n: number): BookLine | undefined {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return undefined;
  }
  const head = v.safeParse(headSchema, json);
  if (head.success) return { what: "head", book: head.output.book };
  const redacted = v.safeParse(redactedSchema, json);
  if (redacted.success) return { what: "redacted", line_n, redacted: redacted.output as RedactedEntry };
  const file = v.safeParse(fileSchema, json);
  if (file.success) return { what: "file", line_n, file: file.output };
  const damaged = v.safeParse(damagedSchema, json);
  if (damaged.success) {
    const message = `the entry ${damaged.output.id} was damaged when the book was exported`;
    return { what: "damaged", line_n, problems: [{ path: "", message, value: damaged.output.hash }] };
  }
  const end = v.safeParse(endSchema, json);
  return end.success ? { what: "end", counts: end.output.end } : undefined;
}

function endProblems(seen: BookCounts, end: BookCounts | undefined): Problem[] {
  if (!end) return [{ path: "end", message: "the last line is missing: the file was cut off" }];
  return (["entries_n", "redacted_n", "files_n"] as const)
    .filter((name) => seen[name] !== end[name])
    .map((name) => ({
      path: `end.${name}`,
      message: `the book held ${end[name]} ${name.slice(0, -2)}, ${seen[name]} arrived whole`,
      value: seen[name],
      limit: String(end[name]),
    }));
}
