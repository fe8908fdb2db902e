import type { Entry } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { deskAt } from "@sillwood/bench/pages";
import { theRound } from "@sillwood/bench/round";
import { START_ms, testLedger } from "../../bench/test/toy.ts";

/** When the golden books are asked: two weeks after the last pour, so that what is due is beyond doubt. */
const ASKED_ms = START_ms + 35 * 86_400_000;

/**
 * What every later version must still read out of an old book: who is there, how often each was watered and weighed, and whom the
 * round waters, in its order. Not the amounts and words: those may get better.
 */
export function skeletonOf(entries: readonly Entry[]) {
  const ledger = testLedger(crafts);
  ledger.add(entries);
  const desk = deskAt(ledger, { now_ms: ASKED_ms, language: "en", units: "metric" });
  const ours = (plant: string) => /^10[1-6]$/.test(desk.numberOf(plant));
  const plants = Object.fromEntries(
    ledger
      .plants()
      .filter(ours)
      .map((plant) => {
        const counts: Record<string, number> = {};
        for (const { entry } of ledger.eventsOf(plant)) counts[entry.kind] = (counts[entry.kind] ?? 0) + 1;
        return [desk.numberOf(plant), counts];
      }),
  );
  const round = theRound(desk, {});
  const standing = round.benches
    .flatMap(({ spots }) => spots)
    .flatMap(({ number }) => (number && /^10[1-6]$/.test(number) ? [number] : []));
  const watered = round.benches
    .flatMap(({ spots }) => spots)
    .flatMap(({ number, tasks }) =>
      number && /^10[1-6]$/.test(number) && tasks.some(({ work }) => work === "water") ? [number] : [],
    );
  const people = [...ledger.house().people.roles.values()];
  return { entries_n: entries.length, people, plants, standing, watered };
}
