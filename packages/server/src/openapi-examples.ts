import type { AnyEntryKind } from "@sillwood/bench/book";
import { CORRECTED } from "@sillwood/bench/book";

const DEVICE = "0193a5c8-7b1e-7abc-8def-0123456789ab";
const FIRST = "0193a5c8-7b1e-7abc-8def-00000000aaaa";

/** An entry of this kind as a device would send it. */
export function entryExample(kind: AnyEntryKind): object {
  return {
    // Each kind its own id, so that all examples can be sent to one book.
    id: `0193a5c8-7b1f-7000-8000-${idTail(kind.kind)}`,
    device: DEVICE,
    kind: kind.kind,
    v: kind.v,
    at_ms: 1_790_000_000_000,
    zone: "Europe/Berlin",
    atFrom: "clock",
    clock: "2026-09-21T14:13:20.000Z/0000",
    by: "0193a5c8-7b1e-7abc-8def-0123456789ac",
    on: Array.from(
      { length: kind.onMin_n },
      (_, i) => `0193a5c8-7b1e-7abc-8def-${String(i).padStart(12, "0")}`,
    ),
    data: kind.example,
    ...(kind.kind === CORRECTED ? { corrects: [FIRST] } : {}),
  };
}

export const PERSON = "0193a5c8-7b1e-7abc-8def-0123456789ac";
export const SUMMARY = { summary: { [`${DEVICE}/2026-09/all`]: { n: 1, h: "0123456789abcdef" } } };
export const NAMED = { refs: [{ id: FIRST, hash: "0".repeat(64) }] };

/** Twelve hexadecimal digits that differ with the name (FNV-1a, 48 bits). */
function idTail(name: string): string {
  let hash = 0xcbf29ce484222325n;
  for (const character of name)
    hash = BigInt.asUintN(64, (hash ^ BigInt(character.charCodeAt(0))) * 0x100000001b3n);
  return (hash & 0xffffffffffffn).toString(16).padStart(12, "0");
}
