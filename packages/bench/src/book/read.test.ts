import { expect, it } from "vitest";
import { someEntries } from "../../test/entry-maker.ts";
import { entryReader } from "./read.ts";

it("what is read is what was written", () => {
  const read = entryReader();
  for (const { entry, text } of someEntries(3, 200)) expect(read(text)).toEqual(entry);
});
