import type { PlantId } from "../book/entry.ts";
import type { Desk } from "../pages/desk.ts";
import type { Work } from "../round/task.ts";
import type { Working } from "../working/working.ts";
import { type Cases, casesOf, firstBegin_ms } from "./cases.ts";
import { type Score, scoreOf } from "./score.ts";
import { issuedWords } from "./words.ts";

/** Fewer than this say nothing of a share (our choice). */
export const FEW_n = 5;

/** Whose forecasts: one plant's, those of the plants that stand on a bench, or all, also of ended plants. */
export type Whose =
  | { readonly plant: PlantId }
  | { readonly bench: string }
  | Readonly<Record<string, never>>;

/** How good the forecasts of one work have been, as issued. */
export interface HowGood {
  readonly work: Work;
  readonly title: string;
  readonly said: string;
  /** The plain guess beside ours. */
  readonly compared?: string;
  /** What waits for its file, and files that can't be read. */
  readonly waits: readonly string[];
  /** Too few to say. */
  readonly few: boolean;
  readonly score?: Score;
  readonly waiting_n: number;
  readonly unseen_n: number;
  readonly unsure_n: number;
  readonly unforecast_n: number;
  readonly unreadable_n: number;
  readonly working?: Working;
}

/** One for each work that is forecast. Reads the files of kept forecasts that the ledger holds; the others are waited for. */
export function howGood(desk: Desk, whose: Whose): readonly HowGood[] {
  return casesOf(desk.ledger, plantsOf(desk, whose)).map((cases) => sayOf(cases, desk));
}

/** Files of kept forecasts that these scores would read and that are not here yet, oldest first. */
export function issuedMissing(desk: Desk, whose: Whose): readonly string[] {
  const { ledger } = desk;
  const from_ms = firstBegin_ms(ledger, plantsOf(desk, whose));
  return [...ledger.house().issued.values()]
    .filter(({ at_ms, file }) => at_ms >= from_ms && ledger.issuedText(file) === undefined)
    .sort((a, b) => a.at_ms - b.at_ms)
    .map(({ file }) => file);
}

function plantsOf({ ledger, facts, living }: Desk, whose: Whose): readonly PlantId[] {
  if ("plant" in whose) return [whose.plant];
  if (!("bench" in whose)) return ledger.plants();
  const { benchOfSpot } = ledger.house().places;
  return living().filter((plant) => benchOfSpot.get(facts(plant)?.spot ?? "") === whose.bench);
}

function sayOf(found: Cases, { say }: Desk): HowGood {
  const { work, cases, waiting_n, unseen_n, unsure_n, unforecast_n, unreadable } = found;
  const words = issuedWords(say, work);
  const score = scoreOf(cases);
  const few = score === undefined || score.n < FEW_n;
  const compared = score && !few ? words.compared(score) : undefined;
  return {
    work,
    title: words.title,
    said: score === undefined ? words.none() : few ? words.few(score) : words.said(score),
    ...(compared ? { compared } : {}),
    waits: [
      ...(waiting_n > 0 ? [words.waiting(waiting_n)] : []),
      ...(unreadable.size > 0 ? [words.unreadable(unreadable.size)] : []),
    ],
    few,
    ...(score ? { score } : {}),
    waiting_n,
    unseen_n,
    unsure_n,
    unforecast_n,
    unreadable_n: unreadable.size,
    ...(score ? { working: workingOf(score, found, words) } : {}),
  };
}

function workingOf(score: Score, found: Cases, words: ReturnType<typeof issuedWords>): Working {
  const { sameAgain } = score;
  return {
    title: words.title,
    result: words.result(score),
    value: score.held_frac,
    unit: words.unit,
    origin: "learned",
    formula: words.formula,
    sum: words.sum(score),
    inputs: [
      {
        name: words.kept(),
        said: `${score.n}`,
        value: score.n,
        unit: "",
        origin: "measured",
        from: words.keptFrom(),
      },
      {
        name: words.came(),
        said: words.cameSaid(score),
        value: score.truthSd_d,
        unit: "d",
        origin: "learned",
        from: words.cameFrom(score),
      },
      {
        name: words.range(),
        said: words.days(score.range_d),
        value: score.range_d,
        unit: "d",
        origin: "measured",
        from: words.rangeFrom(),
      },
      ...(sameAgain
        ? [
            {
              name: words.again(),
              said: words.days(sameAgain.crps_d),
              value: sameAgain.crps_d,
              unit: "d",
              origin: "measured" as const,
              from: words.againFrom(),
            },
          ]
        : []),
    ],
    source: words.source,
    notes: words.notes(found, score),
  };
}
