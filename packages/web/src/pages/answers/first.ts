import { type Desk, firstAnswer, firstDrafts } from "@sillwood/bench/pages";
import type { Draft } from "@sillwood/bench/round";
import type { Working } from "@sillwood/bench/working";
import type { FirstSaid, PageQuestions } from "../questions.ts";

/** How deep into the working guesses are looked for: its own inputs and theirs. */
const DEEP_n = 2;

export function firstSaid(desk: Desk, { facts }: PageQuestions["first"]["args"]): FirstSaid | null {
  const { ledger, now_ms, say } = desk;
  const { site } = ledger.house().places;
  const page = firstAnswer(ledger.crafts, facts, site, {
    now_ms,
    language: say.language,
    units: say.units,
    zone: say.zone,
  });
  const line = page?.lines[0]?.line;
  if (!page || !line) return null;
  const working = page.tasks[0]?.working ?? page.workings[0];
  const guessed = new Set<string>(
    page.facts.filter(({ origin }) => origin === "assumed").map(({ name }) => name),
  );
  for (const name of working ? guessesIn(working, DEEP_n) : []) guessed.add(name);
  return { said: line.said, origin: line.origin, guessed: [...guessed] };
}

function guessesIn({ inputs }: Working, deep_n: number): string[] {
  return inputs.flatMap(({ name, origin, working }) => [
    ...(origin === "assumed" ? [name] : []),
    ...(working && deep_n > 1 ? guessesIn(working, deep_n - 1) : []),
  ]);
}

/** What KEEP writes; on a bench that is there already only the plant and its look. */
export function firstDraftsFor({
  facts,
  ids,
  number,
  benchName,
  spot,
}: PageQuestions["first drafts"]["args"]): readonly Draft[] {
  const drafts = firstDrafts(facts, spot ? { ...ids, spot } : ids, number, benchName);
  return spot ? drafts.filter(({ kind }) => kind !== "bench.laid") : drafts;
}
