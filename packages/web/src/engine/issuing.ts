import type { Summary } from "@sillwood/bench/book";
import type { Whose } from "@sillwood/bench/issued";
import type { Draft } from "@sillwood/bench/round";
import type { FileStore } from "../device/file-store.ts";
import type { Book } from "./book.ts";
import type { Written } from "./messages.ts";
import type { Asking } from "./questions.ts";

export interface IssuingTools {
  readonly book: Book;
  readonly files: FileStore;
  summary(): Promise<Summary>;
  /** Whether whoever holds this device writes. */
  mayWrite(): boolean;
  write(drafts: readonly Draft[], asking: Asking): Promise<Written>;
  /** A file from the server; undefined when it does not answer or has none. */
  fetchFile(sha256: string): Promise<{ readonly bytes: ArrayBuffer } | undefined>;
  changed(): void;
}

/** The round is drawn and a hand may be on it: first that, and what another device kept today may arrive meanwhile. */
const AFTER_ROUND_ms = 3_000;

/** So many files that the server does not have or can't send just now, and the rest is left for later. */
const FAILURES_n = 3;

const issuedPart = () => import("./issued-part.ts");

/** Forecasts kept as issued: written by the first round opened on a book day, read by whoever asks how good they were. */
export function issuing({ book, files, summary, mayWrite, write, fetchFile, changed }: IssuingTools) {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let fetching = false;

  /** Keeps the forecasts of the day unless that was done: the file first, so that no entry names what nobody has. */
  async function keep(asking: Asking): Promise<void> {
    const { forecastsToKeep, isIssueDue } = await issuedPart();
    if (!mayWrite() || !isIssueDue(book.deskFor(asking))) return;
    const sums = await summary();
    const kept = forecastsToKeep(book.deskFor(asking), sums);
    if (!kept) return;
    const bytes = new TextEncoder().encode(kept.text);
    await files.put({ sha256: kept.sha256, type: kept.type, bytes: bytes.buffer as ArrayBuffer, home: 0 });
    book.addIssued(kept.sha256, kept.text);
    await write([kept.draft], asking);
  }

  async function fetchRest(missing: readonly string[]): Promise<void> {
    if (fetching || missing.length === 0) return;
    fetching = true;
    let came = false;
    let failures_n = 0;
    for (const sha256 of missing) {
      const file = await fetchFile(sha256).catch(() => undefined);
      if (!file) {
        failures_n++;
        // No line, most likely: the page says that it waits, and tries when it is opened again.
        if (failures_n < FAILURES_n) continue;
        break;
      }
      book.addIssued(sha256, new TextDecoder().decode(file.bytes));
      came = true;
    }
    fetching = false;
    if (came) changed();
  }

  return {
    keep,
    /** After a round was shown. */
    soon(asking: Asking): void {
      if (timer !== undefined || !mayWrite()) return;
      timer = setTimeout(() => {
        timer = undefined;
        // A full disk keeps no forecasts; what people enter is told of then, and the next round tries again.
        keep(asking).catch(() => undefined);
      }, AFTER_ROUND_ms);
    },
    /** Hands the book what these scores read, as far as this device has it; the rest comes from the server when it can. */
    async read(whose: Whose, asking: Asking): Promise<void> {
      const { issuedMissing } = await issuedPart();
      const missing: string[] = [];
      for (const sha256 of issuedMissing(book.deskFor(asking), whose)) {
        const file = await files.get(sha256);
        if (file) book.addIssued(sha256, new TextDecoder().decode(file.bytes));
        else missing.push(sha256);
      }
      void fetchRest(missing);
    },
  };
}
