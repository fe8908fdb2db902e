import type { ColumnType } from "kysely";

/** PostgreSQL hands bigint out as text; SQLite as a number. */
type Whole = ColumnType<number | string, number, number>;

export interface EntryTable {
  book: string;
  id: string;
  hash: string;
  device: string;
  /** UTC month of the id, `2026-11`. */
  month: string;
  kind: string;
  v: number;
  at_ms: Whole;
  /** Canonical text; null once redacted. */
  json: string | null;
}

export interface Tables {
  meta: { book: string; made_ms: Whole };
  entry: EntryTable;
  /** Count and XOR per cell, kept up to date in the transaction that inserts. */
  digest: { book: string; device: string; month: string; kind: string; n: Whole; h: string };
  /** Entries whose body a redaction drops, whether they are here yet or not. */
  redaction: { book: string; id: string; hash: string };
  /** Entries whose body did not match its hash when last looked at; not counted in digests. */
  damage: { book: string; id: string; hash: string };
  file: { book: string; hash: string; type: string; size_B: Whole };
  file_piece: { book: string; hash: string; n: number; bytes: Uint8Array };
  cache: { book: string; key: string; value: string };
  person_card: { book: string; id: string; card: string };
  /** One row a key, by its hash: the key itself is on the device alone. */
  device_key: {
    book: string;
    hash: string;
    device: string;
    person: string;
    role: string;
    name: string;
    made_ms: Whole;
    seen_ms: Whole;
    closed_ms: ColumnType<number | string | null, number | null, number | null>;
  };
  /** What a device may not write by itself; the text is null once the grower has dropped it. */
  aside: {
    book: string;
    id: string;
    hash: string;
    device: string;
    why: string;
    came_ms: Whole;
    json: string | null;
  };
  writer: { book: string; holder: string; label: string; host: string; pid: number; beat_ms: Whole };
}
