import { once } from "../../working/once.ts";
import type { DayLine, Outlook, Outward } from "../craft.ts";
import { fruitNow } from "./now.ts";
import type { FruitSlice } from "./slice.ts";
import { fruitTasks } from "./tasks.ts";
import { fruitingWords } from "./words.ts";
import { aboutSaid, capacityWorking, ripeSaid, ripeWorking, setWorking } from "./workings.ts";

const PROBLEMS_SHOWN_ms = 30 * 86_400_000;

/** Whether anybody has said anything of flowers or fruit: until then there is nothing to say on a round. */
const isKnown = (slice: FruitSlice): boolean =>
  slice.open !== undefined || slice.fruits !== undefined || slice.cohorts.length > 0 || slice.picked_n > 0;

/** Everything fruiting says of a plant now. */
export function fruitOutlook(slice: FruitSlice, sight: Outward): Outlook {
  const now = fruitNow(slice, sight);
  const { say } = sight;
  const words = fruitingWords(say);
  const capacity = once(() => capacityWorking(now.capacity(), slice, sight));
  return {
    tasks: isKnown(slice) ? fruitTasks(slice, now, sight) : [],
    ...(slice.cohorts.length > 0 ? lineOf() : {}),
    ...(isKnown(slice)
      ? {
          get head() {
            const { fruits_n, low_n, high_n } = now.capacity();
            const about = (value: number) => aboutSaid(value, sight);
            return {
              name: words.head,
              said: words.feeds(about(fruits_n), about(low_n), about(high_n)),
              value: fruits_n,
              unit: "",
              working: capacity(),
            };
          },
        }
      : {}),
    get workings() {
      return [
        capacity(),
        ...now.ripe().map((ripe) => ripeWorking(ripe, now, sight)),
        setWorking(now.setting(), sight),
      ];
    },
    problems: slice.problems
      .filter(({ at_ms }) => at_ms > sight.now_ms - PROBLEMS_SHOWN_ms)
      .map((problem) => ({ entry: problem.entry, message: words.problem(problem) })),
    get figures() {
      return figuresOf();
    },
  };

  function lineOf(): { readonly line?: DayLine } {
    const next = now.ripe().find(({ state }) => state !== "cannot ripen");
    if (!next) return {};
    return {
      line: {
        work: "pick",
        since_ms: Math.min(next.cohort.opened_ms, sight.now_ms),
        get said() {
          return ripeSaid(next, now, sight);
        },
        dates_ms: next.dates_ms,
        origin: now.capacity().ripening.own_n > 0 ? "learned" : "assumed",
      },
    };
  }

  function figuresOf(): Outlook["figures"] {
    const { fruits_n, low_n, high_n, show_n, keep_n, natural_n, toRipe_d, source_g_d, fresh_g, learned } =
      now.capacity();
    const setting = now.setting();
    const ripe = now.ripe();
    return {
      fruitsFed_n: fruits_n,
      fruitsFedLow_n: low_n,
      fruitsFedHigh_n: high_n,
      fruitsShow_n: show_n,
      fruitsKeep_n: keep_n,
      fruitsNatural_n: natural_n,
      toRipe_d,
      source_g_d,
      fruitFresh_g: fresh_g,
      learned,
      setChance_frac: setting.chance_frac,
      setBrushed_frac: setting.brushed_frac,
      ripe_Cd: now.capacity().ripening.toRipe_Cd,
      picked_n: slice.picked_n,
      picked_g: slice.picked_g,
      ...(slice.fruits ? { fruits_n: slice.fruits.n } : {}),
      ...(slice.open ? { openFlowers_n: slice.open.n } : {}),
      ...Object.fromEntries(ripe.map(({ cohort, dates_ms }) => [`ripe${cohort.id}_ms`, dates_ms])),
    };
  }
}
