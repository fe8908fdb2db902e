import { expect, it } from "vitest";
import { plantId, START_ms, testLedger, testPen } from "../../test/toy.ts";
import { crafts } from "../crafts/registry.ts";
import { deskAt, plantPage } from "../pages/index.ts";
import { theRound } from "./round.ts";

const DAY_h = 24;
const at = (hours: number) =>
  ({ now_ms: START_ms + hours * 3_600_000, language: "en", units: "metric" }) as const;

it("work that was left today does not come again today, is counted as left, and comes again tomorrow", () => {
  const ledger = testLedger(crafts);
  const pen = testPen(ledger);
  ledger.add([
    pen.at(0, {
      kind: "plant.brought",
      on: [plantId(1)],
      data: { number: 7, habit: "thin", medium: "spongy" },
    }),
    pen.at(1, { kind: "watering.watered", on: [plantId(1)], data: { volume_mL: 300, drained: "yes" } }),
  ]);
  const markOf = (hours: number) =>
    theRound(deskAt(ledger, at(hours)))
      .benches.flatMap(({ spots }) => spots)
      .find(({ plant }) => plant === plantId(1));
  const dry_h = 30 * DAY_h + 8;
  const due = markOf(dry_h)?.tasks[0];
  if (!due) throw new Error("nothing is due after a month without water");
  expect(markOf(dry_h)?.skipped).toBeUndefined();
  expect(theRound(deskAt(ledger, at(dry_h)), { minutes: 0.1 }).overSaid).toMatch(
    /^What can't wait takes \d+.min alone, more than 1.min\.$/,
  );
  expect(theRound(deskAt(ledger, at(dry_h)), { minutes: 60 }).overSaid).toBeUndefined();
  const task = `${due.craft}:${due.work}`;
  ledger.add([
    pen.at(dry_h, { kind: "round.skipped", on: [plantId(1)], data: { task, reason: "no reason said" } }),
  ]);
  expect(markOf(dry_h + 0.1)).toMatchObject({ tasks: [], skipped: true });
  expect(markOf(dry_h + DAY_h)?.tasks.map(({ id }) => id)).toEqual([due.id]);
  expect(markOf(dry_h + DAY_h)?.skipped).toBeUndefined();
});

it("a plant on a bench laid later than the moment asked about is said to stand there, not nowhere", () => {
  const entries = (ledger = testLedger(crafts)) => {
    const pen = testPen(ledger);
    return [
      pen.at(0, {
        kind: "plant.brought",
        on: [plantId(1)],
        data: { number: 7, habit: "thin", medium: "spongy", spot: "s1" },
      }),
      pen.at(0.1, {
        kind: "plant.brought",
        on: [plantId(2)],
        data: { number: 8, habit: "thin", medium: "spongy" },
      }),
      pen.at(10 * DAY_h, {
        kind: "bench.laid",
        on: ["sill"],
        data: {
          name: "South sill",
          place: "sill",
          outdoors: false,
          order_n: 1,
          spots: [{ id: "s1", name: "1" }],
          windowFaces_deg: 180,
        },
      }),
    ];
  };
  const askedAt = (hours: number) => {
    const ledger = testLedger(crafts, { at_ms: at(hours).now_ms });
    ledger.add(entries());
    return deskAt(ledger, at(hours));
  };
  const stands = (hours: number) =>
    theRound(askedAt(hours)).benches.flatMap(({ name, spots }) =>
      spots.map(({ number }) => `${number}: ${name}`),
    );
  expect(stands(5 * DAY_h)).toEqual([
    "7: South sill, laid on Thu 15 Jan: later than this moment",
    "8: No spot written",
  ]);
  expect(stands(11 * DAY_h)).toEqual(["7: South sill", "8: No spot written"]);
  expect(plantPage(askedAt(5 * DAY_h), plantId(1))?.placeSaid).toMatch(
    /^It stands on South sill, .* Thu 15 Jan/,
  );
  expect(plantPage(askedAt(5 * DAY_h), plantId(2))?.placeSaid).toBeUndefined();
  expect(plantPage(askedAt(11 * DAY_h), plantId(1))?.placeSaid).toBeUndefined();
});
