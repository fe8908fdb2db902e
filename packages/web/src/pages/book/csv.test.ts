import { describe, expect, it } from "vitest";
import { cell } from "./csv.ts";

describe("cell", () => {
  it("never starts a formula", () => {
    for (const text of ["=1+1", "+49", "-3", "@sum"]) expect(cell(text)).toBe(`'${text}`);
  });
  it("quotes what would part columns or rows", () => {
    expect(cell('a "b", c')).toBe('"a ""b"", c"');
    expect(cell("two\nlines")).toBe('"two\nlines"');
    expect(cell("plain 12.5")).toBe("plain 12.5");
  });
});
