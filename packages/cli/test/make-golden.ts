import "temporal-polyfill/global";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import {
  canonical,
  digestOf,
  type Entry,
  endLine,
  entryHash,
  headLine,
  type Json,
} from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { plantId, START_ms, seeded, testLedger, testPen } from "../../bench/test/toy.ts";
import { skeletonOf } from "./golden.ts";

/**
 * Writes the golden book of a release: `node tools/run.mjs packages/cli/test/make-golden.ts 0.1.0`. Run once, when a version is
 * released, and never again for it: what an old version wrote is what it wrote.
 */
const [version = ""] = process.argv.slice(2);
if (!/^\d+\.\d+\.\d+$/.test(version))
  throw new Error(`version is ${JSON.stringify(version)}; expected as 0.1.0`);

const ledger = testLedger(crafts);
const pen = testPen(ledger);
const other = testPen(
  ledger,
  "01980000-0000-7000-8000-0000000000f2",
  2,
  "01980000-0000-7000-8000-0000000000d2",
);
const random = seeded(7);
const bench = "01980000-0000-7000-8000-0000000000b1";
const entries: Entry[] = [];
const write = (hours_h: number, kind: string, on: readonly string[], data: Json, by = pen): Entry => {
  const entry = by.at(hours_h, { kind, on, data } as never);
  entries.push(entry);
  return entry;
};
write(0, "person.joined", ["01980000-0000-7000-8000-0000000000f1"], { role: "grower" });
write(0, "person.joined", ["01980000-0000-7000-8000-0000000000f2"], { role: "helper" });
write(0, "site.described", ["book"], {
  name: "old yard",
  latitude_deg: 47,
  longitude_deg: 9,
  elevation_m: 400,
  zone: "Europe/Zurich",
  currency: "EUR",
});
const spots = Array.from({ length: 6 }, (_, i) => ({ id: `${bench}-${i + 1}`, name: `${i + 1}` }));
write(0, "bench.laid", [bench], {
  name: "South sill",
  order_n: 0,
  outdoors: false,
  place: "sill",
  windowFaces_deg: 180,
  spots,
});
for (let n = 1; n <= 6; n++)
  write(n / 10, "plant.brought", [plantId(n)], {
    number: 100 + n,
    habit: n % 2 ? "thin" : "fat",
    medium: n % 3 ? "spongy" : "bark",
    pot: { form: "round", top_cm: 12, depth_cm: 9 },
    spot: `${bench}-${n}`,
  });
for (let day = 0; day < 20; day++)
  for (let n = 1; n <= 6; n++) {
    if ((day + n) % 4 === 0)
      write(
        day * 24 + 2 + n / 10,
        "watering.watered",
        [plantId(n)],
        { volume_mL: 120 + 10 * n, drained: n % 2 ? "yes" : "no" },
        day % 3 ? pen : other,
      );
    if (n < 4 && random() < 0.3)
      write(day * 24 + 9 + n / 10, "watering.weighed", [plantId(n)], {
        weight_g: 420 + Math.floor(random() * 80),
        state: "as found",
      });
  }
const slip = entries.find(({ kind }) => kind === "watering.watered") as Entry;
entries.push(
  pen.at(490, {
    kind: "book.corrected",
    on: [],
    data: { data: { volume_mL: 90, drained: "no" } },
    corrects: [slip.id],
  }),
);
entries.push(
  pen.at(491, {
    kind: "book.corrected",
    on: [],
    data: { withdrawn: true },
    corrects: [entries[30]?.id as never],
  }),
);
write(492, "device.clock", [], {
  device: "01980000-0000-7000-8000-0000000000d2",
  from_ms: START_ms,
  until_ms: START_ms + 3_600_000,
  ahead_ms: 600_000,
});
// Of every kind that the release knew one entry, as its own example: what it could write must be read for ever.
// Crafts that were not finished in it are left out of a release's book.
const RELEASED: Readonly<Record<string, RegExp>> = {
  "0.1.0":
    /^(assumption|batch|bench|cultivar|forecast|growth|light|plant|round|site|spot|supply|watering|weather|series)\./,
};
for (const kind of ledger.kinds.all)
  if ((RELEASED[version] ?? /^(?!book|device|person)/).test(kind.kind)) {
    const on = Array.from({ length: Math.max(1, kind.onMin_n) }, (_, i) => plantId(900 + i));
    write(
      500,
      kind.kind,
      kind.subject === "plant" ? on : on.map((id) => id.replace("8000-", "8001-")),
      kind.example as Json,
    );
  }
const folder = join(import.meta.dirname, "../../bench/test/books");
mkdirSync(folder, { recursive: true });
const lines = [
  headLine("golden"),
  ...entries.map((entry) => canonical(entry as never)),
  endLine({ entries_n: entries.length, redacted_n: 0, files_n: 0 }),
];
writeFileSync(join(folder, `${version}.ndjson`), `${lines.join("\n")}\n`);
const digest = digestOf(entries.map((entry) => ({ id: entry.id, hash: entryHash(entry) })));
const expected = { digest, ...skeletonOf(entries) };
writeFileSync(join(folder, `${version}.json`), `${JSON.stringify(expected, undefined, 2)}\n`);
