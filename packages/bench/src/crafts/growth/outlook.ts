import { once } from "../../working/once.ts";
import type { Working } from "../../working/working.ts";
import type { DayLine, Outlook, Outward } from "../craft.ts";
import { type Coming, comingStage } from "./ahead.ts";
import { leafAreaSd_ln } from "./leaves.ts";
import { type Pace, paceToday } from "./pace.ts";
import { growthQuestion } from "./question.ts";
import { growthSettings } from "./settings.ts";
import { type Growing, type GrowthSlice, growingAt } from "./slice.ts";
import { type StageNow, stageNow } from "./stage-now.ts";
import { plainStage } from "./stages.ts";
import { growthTasks } from "./tasks.ts";
import { growthWords } from "./words.ts";
import { areaWorking, asked, comingWorking, nodesWorking, paceWorking, stageWorking } from "./workings.ts";

/** Older slips are in the book; they change nothing any more. @source our assumption, as in watering */
const PROBLEMS_SHOWN_ms = 30 * 86_400_000;

/** Everything growth says of a plant now. */
export function growthOutlook(kept: GrowthSlice, sight: Outward): Outlook {
  const growing = growingAt(kept, sight.at_ms);
  const words = growthWords(sight.say);
  const now = stageNow(growing, sight);
  const pace = paceToday(growing, sight, sight.now_ms);
  const coming = comingStage(growing, sight);
  const at = asked(growing, sight);
  const question = growthQuestion(growing, sight);
  // Worded only for who asks: a round of a thousand asks for tasks and questions.
  const stage = once(() => stageWorking(at, now, stageSaid(now, pace, sight)));
  const when = once(() => (coming ? comingWorking(at, coming, comingSaid(coming, sight), pace) : stage()));
  return {
    tasks: growthTasks(coming, when, sight),
    ...(coming ? { line: lineOf(coming, growing, sight) } : {}),
    get head() {
      return {
        name: words.head,
        said: stageSaid(now, pace, sight),
        value: now.bbch,
        unit: "BBCH",
        working: stage(),
      };
    },
    ...(question ? { question } : {}),
    get workings() {
      const workings: Working[] = [];
      if (coming) workings.push(when());
      workings.push(stage(), paceWorking(at, pace), areaWorking(at));
      if (growing.nodes.from !== "unknown") workings.push(nodesWorking(at));
      return workings;
    },
    problems: growing.problems
      .filter(({ at_ms }) => at_ms > sight.now_ms - PROBLEMS_SHOWN_ms)
      .map(({ entry }) => ({ entry, message: words.cannotBeRead })),
    get figures() {
      return figuresOf(growing, sight, now, pace, coming);
    },
  };
}

function lineOf(coming: Coming, { clock }: Growing, sight: Outward): DayLine {
  return {
    work: "look",
    since_ms: Math.min(clock.at_ms, sight.now_ms),
    get said() {
      return comingSaid(coming, sight);
    },
    dates_ms: coming.dates_ms,
    origin: "assumed",
  };
}

function stageSaid(now: StageNow, pace: Pace, sight: Outward): string {
  const words = growthWords(sight.say);
  const said = {
    guess: () => words.guess,
    resting: () => words.resting,
    "run out": () => words.runOut,
    clocked: () => words.stage(plainStage(now.bbch), now.bbch, now.bbchLow, now.bbchHigh),
  }[now.state]();
  return pace.slow === "no" ? said : `${said}; ${words.slow(pace)}`;
}

function comingSaid({ milestone, dates_ms }: Coming, sight: Outward): string {
  const { say } = sight;
  const at = (i: number) => dates_ms[i] as number;
  const same = sight.dateOf(at(2)) === sight.dateOf(at(17));
  return growthWords(say).coming(milestone, say.day(at(10), sight.now_ms), say.days(at(2), at(17)), same);
}

function figuresOf(
  growing: Growing,
  sight: Outward,
  now: StageNow,
  pace: Pace,
  coming: Coming | undefined,
): Outlook["figures"] {
  const { clock } = growing;
  return {
    bbch: now.bbch,
    bbchLow: now.bbchLow,
    bbchHigh: now.bbchHigh,
    stageState: now.state,
    clockFrom: clock.how,
    clockStart_bbch: clock.bbch,
    clockStart_ms: clock.at_ms,
    thermalTime_Cd: growing.sum_Cd,
    thermalTimeSd_Cd: clock.sd_Cd,
    rest_Cd: growing.rest_Cd,
    warmth_Cd_d: pace.warmth_Cd,
    nodeWarmth_Cd_d: pace.nodeWarmth_Cd,
    nodes_per_d: pace.nodes_per_d,
    leafArea_m2: growing.leafArea_m2,
    leafAreaSd_m2:
      growing.leafArea_m2 *
      leafAreaSd_ln(growing.leaves, growing.grown_ln, growing.at_ms, growthSettings(sight)),
    leafAreaFrom: growing.leaves.from,
    ...(growing.nodes.from === "unknown" ? {} : { nodes_n: growing.nodes.nodes_n + growing.made_n }),
    ...(coming ? { next: String(coming.milestone), dates_ms: coming.dates_ms } : {}),
  };
}
