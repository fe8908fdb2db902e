import { randomUUID } from "node:crypto";
import { hostname } from "node:os";
import { type Kysely, sql } from "kysely";
import { StoreError } from "../errors.ts";
import type { Tables } from "./tables.ts";

/** A heartbeat this often [ms]; a holder silent for longer than STALE_ms is taken for dead. Our assumption. */
const BEAT_ms = 10_000;
const STALE_ms = 45_000;

export interface WriterLock {
  readonly holder: string;
  release(): Promise<void>;
}

interface Claim {
  readonly db: Kysely<Tables>;
  readonly book: string;
  /** Who opens it, for the message to the next who tries: `server on http://127.0.0.1:7373`. */
  readonly label: string;
  readonly now_ms: () => number;
}

/**
 * One writing process per book, by a row that tells who and when last alive. A holder on this machine whose process is gone is
 * replaced at once; one that can't be asked only after it has been silent for STALE_ms.
 *
 * @throws StoreError "in use" naming the holder
 */
export async function takeWriterLock(claim: Claim): Promise<WriterLock> {
  const { db, book, label, now_ms } = claim;
  const holder = randomUUID();
  const mine = { holder, label, host: hostname(), pid: process.pid, beat_ms: now_ms() };
  const other = await db.selectFrom("writer").selectAll().where("book", "=", book).executeTakeFirst();
  if (other && isAlive(other, now_ms()))
    throw new StoreError(
      "in use",
      `the book is open for writing: ${other.label} (process ${other.pid} on ${other.host})`,
    );
  // Compare and set: of two that start at the same moment one wins, the other sees it by reading back.
  const written = other
    ? await db
        .updateTable("writer")
        .set(mine)
        .where("book", "=", book)
        .where("holder", "=", other.holder)
        .execute()
    : await db
        .insertInto("writer")
        .values({ book, ...mine })
        .onConflict((c) => c.column("book").doNothing())
        .execute();
  const now = await db
    .selectFrom("writer")
    .select(["holder", "label"])
    .where("book", "=", book)
    .executeTakeFirst();
  if (written.length === 0 || now?.holder !== holder)
    throw new StoreError("in use", `the book is open for writing: ${now?.label ?? "another program"}`);
  const timer = setInterval(() => void beat(claim, holder).catch(() => undefined), BEAT_ms);
  timer.unref();
  return {
    holder,
    async release() {
      clearInterval(timer);
      await db.deleteFrom("writer").where("book", "=", book).where("holder", "=", holder).execute();
    },
  };
}

const beat = ({ db, book, now_ms }: Claim, holder: string) =>
  sql`update writer set beat_ms = ${now_ms()} where book = ${book} and holder = ${holder}`.execute(db);

function isAlive(other: { host: string; pid: number; beat_ms: number | string }, now_ms: number): boolean {
  if (other.host === hostname()) {
    if (other.pid === process.pid) return Math.abs(now_ms - Number(other.beat_ms)) <= STALE_ms;
    if (!processRuns(other.pid)) return false;
  }
  // A clock set back makes the last beat lie in the future: distance counts, not sign.
  return Math.abs(now_ms - Number(other.beat_ms)) <= STALE_ms;
}

function processRuns(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as { code?: string }).code === "EPERM";
  }
}

/** What an append says when its process has lost the book to another. */
export const takenOver = () =>
  new StoreError("taken over", "another process has taken the book over since; open it again to go on");
