import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { someEntries, testKinds } from "../../test/entry-maker.ts";
import { type BookLine, exportBook, importBook } from "./ndjson.ts";
import type { RedactedEntry } from "./redact.ts";
import type { StoredEntry } from "./sync.ts";

const entries = someEntries(1, 12);
const stored: StoredEntry[] = entries.map(({ entry, hash, text }) => ({ id: entry.id, hash, text }));
const shell: RedactedEntry = {
  id: (entries[0] as (typeof entries)[0]).entry.id,
  hash: "a".repeat(64),
  device: (entries[0] as (typeof entries)[0]).entry.device,
  kind: "test.noted",
  redacted: true,
};
const file = { file: "b".repeat(64), size_B: 12_345, type: "image/jpeg" };

async function* some<Item>(...items: Item[]) {
  yield* items;
}
async function all<Item>(items: AsyncIterable<Item>): Promise<Item[]> {
  const list: Item[] = [];
  for await (const item of items) list.push(item);
  return list;
}
const lines = () =>
  all(exportBook("main", some([...stored.slice(0, 5), shell], stored.slice(5)), some(file)));
const read = async (texts: readonly string[]) => all<BookLine>(importBook(texts, testKinds));

describe("the whole book as lines", () => {
  it("comes back byte for byte", async () => {
    const back = await read(await lines());
    expect(back.filter(({ what }) => what === "damaged")).toEqual([]);
    const texts = back.flatMap((line) => (line.what === "entry" ? [line.entry.text] : []));
    expect(texts).toEqual(entries.map(({ text }) => text));
    expect(back).toContainEqual({ what: "redacted", line_n: 7, redacted: shell });
    expect(back).toContainEqual({ what: "file", line_n: 15, file });
    expect(back[0]).toEqual({ what: "head", book: "main" });
  });

  it("bears a byte order mark, carriage returns and empty lines", async () => {
    const text = `\uFEFF${(await lines()).join("\r\n\r\n")}\r\n`;
    const back = await read(text.split("\n"));
    expect(back.filter(({ what }) => what === "damaged")).toEqual([]);
  });

  it("names a damaged line by number and reads on", async () => {
    const texts = await lines();
    texts[3] = (texts[3] as string).slice(0, -9);
    const damaged = (await read(texts)).filter((line) => line.what === "damaged");
    expect(damaged.map(({ line_n }) => line_n)).toEqual([4, 17]);
    expect(damaged[1]?.problems[0]).toMatchObject({ path: "end.entries_n", value: 11, limit: "12" });
  });

  it("names an entry that the disk has changed instead of passing it on as other content", async () => {
    const [first] = stored as [StoredEntry & { text: string }];
    const changed = { ...first, text: first.text.replace("Berlin", "Verlin") };
    const back = await read(await all(exportBook("main", some([changed]), some())));
    expect(back[1]).toMatchObject({ what: "damaged", line_n: 2, problems: [{ value: first.hash }] });
  });

  it("tells a book that was cut off", async () => {
    const back = await read((await lines()).slice(0, 4));
    expect(back.at(-1)).toMatchObject({ what: "damaged", line_n: 5, problems: [{ path: "end" }] });
  });

  it("never throws, whatever the lines", async () => {
    const whole = await lines();
    const line = fc.oneof(
      fc.string(),
      fc.json(),
      fc.constantFrom(...whole),
      fc.tuple(fc.constantFrom(...whole), fc.nat(300)).map(([text, cut]) => text.slice(0, cut)),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(line, { maxLength: 8 }), async (texts) => {
        for (const answer of await read(texts))
          if (answer.what === "entry") expect(answer.entry.hash).toHaveLength(64);
      }),
    );
  });
});
