import { expect, it } from "vitest";
import { plantId, testLedger, testPen } from "../../test/toy.ts";
import { type Entry, entryHash } from "../book/index.ts";
import { crafts } from "../crafts/registry.ts";
import { deskAt, logPage, plantPage } from "../pages/index.ts";

const pen = testPen(testLedger(crafts));
const bring = pen.at(0, {
  kind: "plant.brought",
  on: [plantId(1)],
  data: { number: 127, habit: "thin", medium: "spongy" },
});
const noted = pen.at(1, { kind: "plant.noted", on: [plantId(1)], data: { text: "a stranger's address" } });
const poured = pen.at(2, {
  kind: "watering.watered",
  on: [plantId(1)],
  data: { volume_mL: 150, drained: "yes" },
});
const better = pen.at(3, {
  kind: "book.corrected",
  on: [],
  data: { data: { text: "a stranger's other address" } },
  corrects: [noted.id],
});
const redact = (target: Entry, hours_h: number) =>
  pen.at(hours_h, { kind: "book.redacted", on: [], data: { id: target.id, hash: entryHash(target) } });

const seen = (entries: readonly (readonly Entry[])[]) => {
  const ledger = testLedger(crafts);
  for (const batch of entries) ledger.add(batch);
  const desk = deskAt(ledger, { now_ms: bring.at_ms + 86_400_000, language: "en", units: "metric" });
  return JSON.stringify([logPage(desk, {}), plantPage(desk, plantId(1))]);
};

it("what a redaction drops is gone from an open book as from one that is read anew", () => {
  const [one, two] = [redact(noted, 4), redact(better, 5)];
  const open = seen([[bring, noted, poured, better], [one], [two]]);
  const anew = seen([[bring, poured, one, two]]);
  expect(open).not.toContain("address");
  expect(open).toBe(anew);
  expect(
    seen([
      [one, two],
      [better, noted],
      [bring, poured],
    ]),
  ).toBe(anew);
});

it("a redacted watering no longer counts, and a redacted correction no longer corrects", () => {
  const wrong = pen.at(6, {
    kind: "book.corrected",
    on: [],
    data: { withdrawn: true },
    corrects: [poured.id],
  });
  const [one, two] = [redact(poured, 7), redact(wrong, 8)];
  expect(seen([[bring, poured], [one]])).toBe(seen([[bring, one]]));
  expect(seen([[bring, poured, wrong], [two]])).toBe(seen([[bring, poured, two]]));
});
