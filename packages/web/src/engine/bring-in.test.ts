import { accept, acceptedKinds, type DeviceId, endLine, headLine, penOf } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger } from "@sillwood/bench/house";
import { assumedSite } from "@sillwood/bench/pages";
import { describe, expect, it } from "vitest";
import { readBrought } from "./bring-in.ts";

const ledger = createLedger({ crafts, site: assumedSite("UTC", { language: "en", units: "metric" }) });
const kinds = acceptedKinds(ledger.kinds);
const pen = penOf({
  device: "01980000-0000-7000-8000-000000000001" as DeviceId,
  by: "01980000-0000-7000-8000-000000000002",
  zone: "UTC",
  kinds: ledger.kinds,
  now_ms: () => Date.UTC(2026, 0, 14, 8),
  random: () => 0.5,
});
const lineOf = (text: string) => {
  const result = accept(
    pen.write({ kind: "plant.noted", on: ["01980000-0000-7000-8000-000000000003"], data: { text } }),
    kinds,
  );
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join());
  return { id: result.entry.id as string, text: result.text };
};

describe("readBrought", () => {
  it("takes what is whole, names what is damaged by its line, and counts what is new", async () => {
    const [first, second] = [lineOf("leans"), lineOf("straight again")];
    const text = [
      headLine("sillwood"),
      first.text,
      '{"id":"broken',
      second.text,
      endLine({ entries_n: 2, redacted_n: 0, files_n: 0 }),
    ].join("\n");
    const brought = await readBrought(text, kinds, (id) => id === first.id);
    expect(brought).toMatchObject({ entries_n: 2, fresh_n: 1 });
    expect(brought.damaged.map(({ line }) => line)).toEqual([3]);
    expect(brought.entries.map(({ text: line }) => line)).toEqual([first.text, second.text]);
  });
  it("says of a file that was cut off that its end is missing", async () => {
    const brought = await readBrought(`${headLine("sillwood")}\n${lineOf("cut").text}`, kinds, () => false);
    expect(brought.damaged[0]?.message).toContain("cut off");
  });
  it("answers any text without a throw", async () => {
    const brought = await readBrought("not a book\n\u0000\n{}", kinds, () => false);
    expect(brought.entries_n).toBe(0);
    expect(brought.damaged.length).toBeGreaterThan(0);
  });
});
