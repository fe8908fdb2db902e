import { once } from "../../working/once.ts";
import type { DayLine, Outlook, Outward } from "../craft.ts";
import { type Gate, isWatched, type Reckoned, reckoned } from "./reckon.ts";
import { fraction } from "./said-numbers.ts";
import type { ScoutSlice } from "./slice.ts";
import { scoutTasks } from "./tasks.ts";
import { scoutingWords } from "./words.ts";
import { cleanWorking, quietWorking } from "./workings.ts";

const NONE: readonly never[] = [];
const BEADS_n = 20;

/** What the craft says of a plant now. A plant that nobody watches costs nothing; clearance is worked out when a page is drawn. */
export function scoutOutlook(slice: ScoutSlice, sight: Outward): Outlook {
  if (slice.acts.length === 0 && slice.problems.length === 0)
    return {
      tasks: NONE,
      get workings() {
        return [quietWorking(sight)];
      },
      problems: NONE,
      figures: {},
    };
  const words = scoutingWords(sight.say);
  const now = once(() => reckoned(slice, sight) as Reckoned);
  const working = once(() => cleanWorking(now(), sight));
  const tasks = scoutTasks(slice, sight);
  const problems = slice.problems.map(({ entry }) => ({ entry, message: words.cannotRead }));
  if (!isWatched(slice, sight.now_ms))
    return {
      tasks,
      workings: [quietWorking(sight), ...tasks.map((task) => task.working)],
      problems,
      figures: {},
    };
  // Head, line and workings are worked out when they are looked at: a round looks at none of them.
  return {
    tasks,
    problems,
    get head() {
      const made = working();
      return { name: words.head, said: made.result, value: made.value ?? 0, unit: "", working: made };
    },
    get line() {
      return lineOf(now(), sight);
    },
    get workings() {
      return [working(), ...tasks.map((task) => task.working)];
    },
    get figures() {
      return figuresOf(now());
    },
  };
}

/** When the plant may be sold, on its day line. */
function lineOf(at: Reckoned, sight: Outward): DayLine {
  const words = scoutingWords(sight.say);
  return {
    work: "sell",
    said: saidOf(at.sell, sight),
    dates_ms: beadsOf(at.sell),
    origin: "learned",
    ...(at.pests.some(({ of }) => of.state === "infested") ? { said: words.found } : {}),
  };
}

export function saidOf(gate: Gate, sight: Outward): string {
  const words = scoutingWords(sight.say);
  const day = (at_ms: number) => sight.say.day(at_ms, sight.now_ms);
  if (gate.best_ms === undefined && gate.early_ms === undefined) return words.noDate;
  if (gate.early_ms !== undefined && gate.late_ms !== undefined)
    return gate.early_ms === gate.late_ms
      ? words.lineSaid(day(gate.late_ms))
      : words.lineFrom(day(gate.early_ms), day(gate.late_ms));
  return words.lineFrom(day(gate.best_ms ?? gate.early_ms ?? sight.now_ms), undefined);
}

/** Dates spread over the band, half of them on either side of the best one; none where there is no end to it. */
function beadsOf({ best_ms, early_ms, late_ms }: Gate): readonly number[] {
  if (best_ms === undefined || early_ms === undefined || late_ms === undefined) return [];
  return Array.from({ length: BEADS_n }, (_, i) => {
    const share = (i + 0.5) / BEADS_n;
    return share < 0.5
      ? early_ms + (best_ms - early_ms) * share * 2
      : best_ms + (late_ms - best_ms) * (share - 0.5) * 2;
  });
}

function figuresOf(at: Reckoned): Outlook["figures"] {
  return {
    clean_frac: at.free.mid,
    cleanLow_frac: at.free.low,
    cleanHigh_frac: at.free.high,
    ...Object.fromEntries(
      at.pests.map(({ pest, free }) => [`${pest.replaceAll(" ", "")}Free_frac`, free.mid]),
    ),
    ...(at.move.best_ms === undefined ? {} : { moveFrom_ms: at.move.best_ms }),
    ...(at.sell.best_ms === undefined ? {} : { sellFrom_ms: at.sell.best_ms }),
    habit_ms: at.habit_ms,
    looks_n: at.looks_n,
    said: fraction(at.free.mid),
  };
}
