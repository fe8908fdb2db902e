import type { Kysely } from "kysely";
import type { FileBytes } from "../files/file-store.ts";
import type { Tables } from "../sql/tables.ts";

const PIECE_B = 256 * 1024;

/** Bytes of files in rows of 256 KiB, so that several machines share them with the book. */
export function postgresBytes(db: Kysely<Tables>, book: string): FileBytes {
  const at = (hash: string) => db.selectFrom("file_piece").where("book", "=", book).where("hash", "=", hash);
  return {
    async begin() {
      const pieces: Uint8Array[] = [];
      return {
        add: async (piece) => void pieces.push(piece.slice()),
        keep: (hash) =>
          db.transaction().execute(async (tx) => {
            await tx.deleteFrom("file_piece").where("book", "=", book).where("hash", "=", hash).execute();
            const whole = Buffer.concat(pieces);
            // An empty file has one empty piece: that is how it is told from one that is not there.
            for (let n = 0; n === 0 || n * PIECE_B < whole.length; n++)
              await tx
                .insertInto("file_piece")
                .values({ book, hash, n, bytes: whole.subarray(n * PIECE_B, (n + 1) * PIECE_B) })
                .execute();
          }),
        abandon: async () => void pieces.splice(0),
      };
    },
    has: async (hash) => (await at(hash).select("n").limit(1).executeTakeFirst()) !== undefined,
    async *read(hash) {
      for (let n = 0; ; n++) {
        const piece = await at(hash).select("bytes").where("n", "=", n).executeTakeFirst();
        if (!piece) return;
        yield piece.bytes;
      }
    },
    async remove(hash) {
      await db.deleteFrom("file_piece").where("book", "=", book).where("hash", "=", hash).execute();
    },
  };
}
