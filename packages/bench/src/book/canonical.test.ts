import { utf8ToBytes } from "@noble/hashes/utils.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CanonicalError, canonical } from "./canonical.ts";
import type { Json } from "./entry.ts";
import { sha256Hex, sha256OfPieces, utf8Length_B } from "./hash.ts";

describe("canonical form", () => {
  it("prints the example of RFC 8785 section 3.2.2 as the RFC does", () => {
    const given = JSON.parse(
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}',
    );
    expect(canonical(given)).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
  });

  it("sorts keys by UTF-16 code units (RFC 8785 section 3.2.3)", () => {
    const given = { "\u20ac": 1, "\r": 2, "\ufb33": 3, "1": 4, "\ud83d\ude00": 5, "\u0080": 6, "\u00f6": 7 };
    const order = [...canonical(given).matchAll(/:(\d)/g)].map((match) => match[1]);
    expect(order).toEqual(["2", "4", "6", "7", "1", "5", "3"]);
  });

  it("is a fixed point, means the same and does not depend on the order of keys", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = canonical(value as Json);
        expect(canonical(JSON.parse(text))).toBe(text);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
        expect(canonical(reversed(value) as Json)).toBe(text);
      }),
    );
  });

  it.each([
    Number.NaN,
    Number.POSITIVE_INFINITY,
    undefined,
    () => 1,
    "\ud800",
    { a: [1, { b: Number.NaN }] },
  ])("refuses %s", (value) => {
    expect(() => canonical(value as unknown as Json)).toThrow(CanonicalError);
  });
});

describe("SHA-256", () => {
  it("gives the value of FIPS 180-2 appendix B.1 for abc", () => {
    expect(sha256Hex("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });

  it("is the same in pieces", () => {
    fc.assert(
      fc.property(fc.array(fc.uint8Array({ maxLength: 200 }), { maxLength: 8 }), (pieces) => {
        const hasher = sha256OfPieces();
        for (const piece of pieces) hasher.add(piece);
        expect(hasher.hex()).toBe(sha256Hex(new Uint8Array(pieces.flatMap((piece) => [...piece]))));
      }),
    );
  });

  it("counts UTF-8 bytes as the platform does", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        expect(utf8Length_B(text)).toBe(utf8ToBytes(text).length);
      }),
    );
  });
});

function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, member]) => [key, reversed(member)]),
  );
}
