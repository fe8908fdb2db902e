import { expect, it } from "vitest";
import { judgeSizes, linesOf } from "./file-size.mjs";

it("counts the last line with or without its end", () => {
  expect(linesOf("a\nb\n")).toBe(2);
  expect(linesOf("a\nb")).toBe(2);
});

it("stops files of more than 400 lines, except tables that a program wrote", () => {
  const files = [
    { path: "a.ts", lines: 400 },
    { path: "b.ts", lines: 401 },
    { path: "c.generated.ts", lines: 9000 },
    { path: "d.md", lines: 900 },
    { path: "e.css", lines: 10 },
  ];
  const { tooLong, median, p90, files_n } = judgeSizes(files);
  expect(tooLong.map(({ path }) => path)).toEqual(["b.ts"]);
  expect([files_n, median, p90]).toEqual([3, 400, 401]);
});
