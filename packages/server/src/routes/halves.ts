/**
 * Files of which a part has come: in memory, for an hour, so that a bad line costs a phone one piece and not a photo. A restart or too
 * many at once forgets them, and the phone begins anew.
 */
export interface Halves {
  /** Adds a piece that begins where the last one ended; returns how much is here, which says whether it did. */
  add(
    hash: string,
    piece: { readonly from_B: number; readonly until_B: number; readonly size_B: number },
    bytes: AsyncIterable<Uint8Array>,
  ): Promise<number>;
  /** The whole file; it is not kept here any more. */
  take(hash: string): AsyncGenerator<Uint8Array>;
}

/** @source our assumption */
const ALL_MAX_B = 64 * 1024 * 1024;
const KEPT_ms = 3_600_000;

interface Half {
  readonly pieces: Uint8Array[];
  have_B: number;
  at_ms: number;
}

export function halves(now_ms: () => number): Halves {
  const begun = new Map<string, Half>();
  const forget = (room_B: number) => {
    let all_B = room_B;
    for (const { have_B } of begun.values()) all_B += have_B;
    for (const [hash, { have_B, at_ms }] of begun) {
      if (all_B <= ALL_MAX_B && now_ms() - at_ms < KEPT_ms) continue;
      begun.delete(hash);
      all_B -= have_B;
    }
  };
  return {
    async add(hash, { from_B, until_B }, bytes) {
      const pieces: Uint8Array[] = [];
      let came_B = 0;
      for await (const piece of bytes) {
        pieces.push(piece);
        came_B += piece.length;
      }
      const half = begun.get(hash) ?? { pieces: [], have_B: 0, at_ms: now_ms() };
      // A repeat of what is here, a gap, or a line that broke in the middle of the piece: nothing of it is taken.
      if (from_B !== half.have_B || came_B !== until_B - from_B) return half.have_B;
      half.pieces.push(...pieces);
      half.have_B += came_B;
      half.at_ms = now_ms();
      begun.delete(hash);
      forget(half.have_B);
      begun.set(hash, half);
      return half.have_B;
    },
    async *take(hash) {
      const pieces = begun.get(hash)?.pieces ?? [];
      begun.delete(hash);
      yield* pieces;
    },
  };
}
