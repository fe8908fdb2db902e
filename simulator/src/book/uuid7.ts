import type { Chance } from "../nursery/chance.ts";

/**
 * Writes ids of version 7: 48 bits of milliseconds, the version, twelve bits that count within a millisecond, the
 * variant, 62 random bits.
 *
 * @source RFC 9562, section 5.7 and method 1 of section 6.2
 */
export function idWriter(chance: Chance): (at_ms: number) => string {
  let last_ms = -1;
  let within = 0;
  return (at_ms) => {
    if (at_ms > last_ms) {
      last_ms = at_ms;
      within = chance.whole(0, 0x3ff);
    } else within++;
    if (within > 0xfff) throw new RangeError("more ids within a millisecond than twelve bits can tell apart");
    const bytes = new DataView(new ArrayBuffer(16));
    bytes.setUint16(0, Math.floor(last_ms / 2 ** 32));
    bytes.setUint32(2, last_ms % 2 ** 32);
    bytes.setUint16(6, 0x7000 + within);
    bytes.setUint16(8, 0x8000 + chance.whole(0, 0x3fff));
    bytes.setUint16(10, chance.whole(0, 0xffff));
    bytes.setUint32(12, chance.whole(0, 0xffffffff));
    const hex = Array.from({ length: 16 }, (_, i) => bytes.getUint8(i).toString(16).padStart(2, "0")).join(
      "",
    );
    return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
  };
}
