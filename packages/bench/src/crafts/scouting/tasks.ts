import type { Json } from "../../book/entry.ts";
import type { Task } from "../../round/task.ts";
import type { Working } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import { LOOKED, TREATED } from "./kinds.ts";
import { CRAFT, isKeptApart } from "./limits.ts";
import type { ScoutSlice } from "./slice.ts";
import { GUIDED } from "./watch.ts";
import { scoutingWords } from "./words.ts";

const DAY_ms = 86_400_000;

/** A look at what is kept apart, a treatment that its course still wants. */
export function scoutTasks(slice: ScoutSlice, sight: Outward): readonly Task[] {
  if (slice.acts.length === 0) return [];
  const look = isKeptApart(slice) ? lookTask(slice, sight) : undefined;
  const spray = sprayTask(slice, sight);
  return [...(look ? [look] : []), ...(spray ? [spray] : [])];
}

const lastLook = (slice: ScoutSlice) => slice.acts.findLast(({ act }) => act === "look");

function lookTask(slice: ScoutSlice, sight: Outward): Task | undefined {
  const { say, plant, now_ms } = sight;
  const words = scoutingWords(say);
  const every_d = sight.assumed("lookEvery_d");
  const last = lastLook(slice);
  const begun_ms = slice.acts.find(({ act }) => act === "arrive" || act === "expose")?.at_ms ?? now_ms;
  const best_ms = last ? last.at_ms + every_d * DAY_ms : begun_ms;
  // A day early is as good: people come by on their own days.
  if (best_ms - DAY_ms > now_ms) return undefined;
  const since_d = last ? Math.round((now_ms - last.at_ms) / DAY_ms) : undefined;
  const working: Working = {
    title: words.working.lookTitle,
    result: say.day(best_ms, now_ms),
    unit: "",
    origin: "assumed",
    formula: words.working.lookFormula,
    sum: last ? `${say.day(last.at_ms, now_ms)} + ${say.number(every_d)}` : say.day(begun_ms, now_ms),
    inputs: [
      {
        name: words.working.interval,
        said: say.number(every_d),
        value: every_d,
        unit: "d",
        origin: "assumed",
        from: words.working.intervalFrom,
        assumption: "lookEvery_d",
      },
    ],
    source: "common practice, no source",
    notes: [],
  };
  return {
    id: `${CRAFT}:look:${plant.id}`,
    craft: CRAFT,
    work: "look",
    plant: plant.id,
    earliest_ms: best_ms - DAY_ms,
    best_ms,
    latest_ms: best_ms + 4 * DAY_ms,
    minutes: 1,
    must: false,
    title: words.task.look,
    said: words.method(GUIDED),
    then: words.task.seenAny,
    why: words.task.lookWhy(since_d),
    care: words.task.quarantineCare,
    act: { kind: LOOKED, data: { ...GUIDED, found: [] } as Json },
    working,
  };
}

function sprayTask(slice: ScoutSlice, sight: Outward): Task | undefined {
  const { say, plant, now_ms } = sight;
  const last = slice.acts.findLast((act) => act.act === "treat");
  if (last?.act !== "treat" || !last.data.course_n || !last.data.every_d) return undefined;
  const { course_n, every_d, against } = last.data;
  const given = slice.acts.filter(
    (act) =>
      act.act === "treat" &&
      act.at_ms > last.at_ms - course_n * every_d * 1.5 * DAY_ms &&
      act.data.tool === last.data.tool &&
      act.data.product === last.data.product,
  ).length;
  if (given >= course_n) return undefined;
  const words = scoutingWords(say);
  const best_ms = last.at_ms + every_d * DAY_ms;
  if (best_ms - 0.5 * DAY_ms > now_ms) return undefined;
  const said = say.list(against.map((pest) => words.pest(pest)));
  return {
    id: `${CRAFT}:spray:${plant.id}`,
    craft: CRAFT,
    work: "spray",
    plant: plant.id,
    earliest_ms: best_ms - 0.5 * DAY_ms,
    best_ms,
    latest_ms: best_ms + 2 * DAY_ms,
    minutes: 2,
    must: false,
    title: words.task.spray,
    said: last.data.product ?? words.tool(last.data.tool),
    why: words.task.sprayWhy(given, course_n, said),
    care: words.task.sprayCare,
    act: { kind: TREATED, data: { ...last.data, against: [...against] } as Json },
    working: {
      title: words.working.sprayTitle,
      result: say.day(best_ms, now_ms),
      unit: "",
      origin: "measured",
      formula: words.working.sprayFormula,
      sum: `${say.day(last.at_ms, now_ms)} + ${say.number(every_d)}`,
      inputs: [
        {
          name: words.working.sprayTitle,
          said: say.number(every_d),
          value: every_d,
          unit: "d",
          origin: "measured",
          from: words.working.fromBook,
          at_ms: last.at_ms,
        },
      ],
      source: "common practice, no source",
      notes: [],
    },
  };
}
