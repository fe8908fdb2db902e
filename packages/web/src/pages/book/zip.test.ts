import { describe, expect, it } from "vitest";
import { crc32, zipOf } from "./zip.ts";

const bytes = (text: string) => new TextEncoder().encode(text);

describe("zipOf", () => {
  it("sums as the standard's own example does", () => {
    expect(crc32(bytes("123456789"))).toBe(0xcbf43926);
  });
  it("lays every file where its directory says, and counts them", async () => {
    const files = [
      { name: "book.ndjson", bytes: bytes('{"sillwood":"book"}\n') },
      { name: "files/über", bytes: bytes("x".repeat(300)) },
    ];
    const all = new Uint8Array(await zipOf(files).arrayBuffer());
    const view = new DataView(all.buffer);
    const end = all.length - 22;
    expect(view.getUint32(end, true)).toBe(0x06054b50);
    expect(view.getUint16(end + 10, true)).toBe(2);
    let at = view.getUint32(end + 16, true);
    for (const { name, bytes: wanted } of files) {
      expect(view.getUint32(at, true)).toBe(0x02014b50);
      const local = view.getUint32(at + 42, true);
      const name_B = view.getUint16(local + 26, true);
      expect(new TextDecoder().decode(all.subarray(local + 30, local + 30 + name_B))).toBe(name);
      const start = local + 30 + name_B;
      expect(all.subarray(start, start + wanted.length)).toEqual(wanted);
      at += 46 + name_B;
    }
    expect(at).toBe(end);
  });
});
