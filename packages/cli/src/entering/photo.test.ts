import fc from "fast-check";
import { expect, it } from "vitest";
import { stripped } from "./photo.ts";

const segment = (marker: number, body: Buffer) => {
  const head = Buffer.from([0xff, marker, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
};
const START = Buffer.from([0xff, 0xd8]);
const SCAN = Buffer.concat([
  segment(0xda, Buffer.from([1, 2, 3])),
  Buffer.from([10, 20, 30]),
  Buffer.from([0xff, 0xd9]),
]);
const JFIF = segment(0xe0, Buffer.from("JFIF\0"));
const PLACE = "Exif\0\0 47.6 N 122.3 W";

it("takes from a JPEG all that tells where it was taken, and leaves the picture", () => {
  const photo = Buffer.concat([
    START,
    JFIF,
    segment(0xe1, Buffer.from(PLACE)),
    segment(0xed, Buffer.from("city")),
    segment(0xfe, Buffer.from("comment")),
    SCAN,
    // Phones hang a second picture behind the first.
    START,
    segment(0xe1, Buffer.from(PLACE)),
    SCAN,
  ]);
  const kept = stripped(photo);
  expect(kept).toEqual({ type: "image/jpeg", bytes: Buffer.concat([START, JFIF, SCAN]) });
  expect(Buffer.from(kept?.bytes ?? []).includes("47.6")).toBe(false);
});

it("takes text and EXIF out of a PNG", () => {
  const chunk = (name: string, body: string) => {
    const length = Buffer.alloc(4);
    length.writeUInt32BE(body.length);
    return Buffer.concat([length, Buffer.from(name, "latin1"), Buffer.from(body, "latin1"), Buffer.alloc(4)]);
  };
  const sign = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const parts = [chunk("IHDR", "head"), chunk("IDAT", "body"), chunk("IEND", "")];
  const [head, body, end] = parts as [Buffer, Buffer, Buffer];
  const photo = Buffer.concat([sign, head, chunk("eXIf", PLACE), chunk("tEXt", "here"), body, end]);
  expect(stripped(photo)).toEqual({ type: "image/png", bytes: Buffer.concat([sign, ...parts]) });
});

it("refuses what it can't look into, however it is broken", () => {
  expect(stripped(Buffer.from("GIF89a"))).toBeUndefined();
  const whole = Buffer.concat([START, JFIF, segment(0xe1, Buffer.from(PLACE)), SCAN]);
  fc.assert(
    fc.property(fc.nat(whole.length), fc.uint8Array({ maxLength: 20 }), (cut, noise) => {
      const kept = stripped(Buffer.concat([whole.subarray(0, cut), noise]));
      if (kept) expect(Buffer.from(kept.bytes).subarray(0, 2)).toEqual(START);
    }),
    { seed: 7 },
  );
});
