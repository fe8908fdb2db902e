import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type AcceptedEntry, acceptedKinds, digestOf, importBook } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { describe, expect, it } from "vitest";
import { testLedger } from "../../bench/test/toy.ts";
import { skeletonOf } from "./golden.ts";

const folder = join(import.meta.dirname, "../../bench/test/books");
const versions = readdirSync(folder)
  .filter((name) => name.endsWith(".ndjson"))
  .map((name) => name.slice(0, -".ndjson".length));
const gate = acceptedKinds(testLedger(crafts).kinds);

async function read(version: string) {
  const entries: AcceptedEntry[] = [];
  const others: string[] = [];
  for await (const line of importBook(
    readFileSync(join(folder, `${version}.ndjson`), "utf8").split("\n"),
    gate,
  ))
    if (line.what === "entry") entries.push(line.entry);
    else others.push(line.what === "damaged" ? JSON.stringify(line.problems) : line.what);
  return { entries, others };
}

/** One book of each release, kept for ever: whatever is built later reads it, and sees the same plants due. */
describe.each(versions)("the golden book of %s", (version) => {
  const expected = JSON.parse(readFileSync(join(folder, `${version}.json`), "utf8"));

  it("passes today's gate line by line and has its digest", async () => {
    const { entries, others } = await read(version);
    expect(others).toEqual(["head", "end"]);
    expect(digestOf(entries.map(({ entry, hash }) => ({ id: entry.id, hash })))).toEqual(expected.digest);
  });

  it("folds to the same people, plants and round, in either order of arrival", async () => {
    const entries = (await read(version)).entries.map(({ entry }) => entry);
    const { digest: _digest, ...skeleton } = expected;
    expect(skeletonOf(entries)).toEqual(skeleton);
    expect(skeletonOf([...entries].reverse())).toEqual(skeleton);
  });

  it("leaves no entry broken or unknown", async () => {
    const ledger = testLedger(crafts);
    ledger.add((await read(version)).entries.map(({ entry }) => entry));
    const idle = ledger.idle();
    expect(idle.filter(({ idle: why }) => why === "broken" || why === "newer")).toEqual([]);
  });
});

it("there is a golden book of the version in package.json", () => {
  const { version } = JSON.parse(readFileSync(join(import.meta.dirname, "../package.json"), "utf8"));
  expect(versions).toContain(version);
});
