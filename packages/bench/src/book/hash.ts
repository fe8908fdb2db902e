import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import { canonical } from "./canonical.ts";
import type { Entry, Json, Sha256 } from "./entry.ts";

const SHA256 = /^[0-9a-f]{64}$/;

/** Whether a text is a lower-case hexadecimal SHA-256. */
export const isSha256 = (text: string): boolean => SHA256.test(text);

/** SHA-256 of bytes, or of the UTF-8 bytes of a text, as 64 lower-case hexadecimal digits. */
export function sha256Hex(content: Uint8Array | string): Sha256 {
  return bytesToHex(sha256(typeof content === "string" ? utf8ToBytes(content) : content));
}

/** SHA-256 of bytes that come in pieces: a photo read from a stream. */
export function sha256OfPieces(): { add(piece: Uint8Array): void; hex(): Sha256 } {
  const hasher = sha256.create();
  return { add: (piece) => void hasher.update(piece), hex: () => bytesToHex(hasher.digest()) };
}

/**
 * Content hash of an entry: SHA-256 of its RFC 8785 form.
 *
 * @throws CanonicalError when it is not JSON
 */
export function entryHash(entry: Entry<unknown>): Sha256 {
  return sha256Hex(canonical(entry as unknown as Json));
}

/** First 8 bytes of SHA-256 of some bytes, as two unsigned 32-bit numbers, high one first. */
export function first8Bytes(bytes: Uint8Array): readonly [number, number] {
  const hash = sha256(bytes);
  const view = new DataView(hash.buffer, hash.byteOffset, 8);
  return [view.getUint32(0), view.getUint32(4)];
}

/** Length of a text in UTF-8 [B]. */
export function utf8Length_B(text: string): number {
  let size_B = text.length;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    if (unit < 0x80) continue;
    if (unit < 0x800) size_B += 1;
    // Either half of a surrogate pair adds one, so that a pair counts four bytes.
    else size_B += unit >= 0xd800 && unit <= 0xdfff ? 1 : 2;
  }
  return size_B;
}

export { hexToBytes };
