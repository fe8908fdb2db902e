import type { FileBytes } from "../files/file-store.ts";

/** Bytes of files in a map. */
export function memoryBytes(): FileBytes {
  const kept = new Map<string, Uint8Array>();
  return {
    async begin() {
      const pieces: Uint8Array[] = [];
      return {
        add: async (piece) => void pieces.push(piece.slice()),
        keep: async (hash) => void kept.set(hash, Buffer.concat(pieces)),
        abandon: async () => undefined,
      };
    },
    has: async (hash) => kept.has(hash),
    async *read(hash) {
      const bytes = kept.get(hash);
      if (bytes) yield bytes;
    },
    remove: async (hash) => void kept.delete(hash),
  };
}
