import type { HowGood } from "@sillwood/bench/issued";
import type { PlantView } from "@sillwood/bench/pages";
import type { Calendar } from "@sillwood/bench/places";
import type { Held, PlantPage, Round, SpotMark, Task } from "@sillwood/bench/round";
import type { Working } from "@sillwood/bench/working";
import { datedQuantiles, iso } from "./instants.ts";
import { byDayShape, howGoodShape } from "./issued-shapes.ts";

/** The stable shapes of pages (docs/cli.md): the engine's own objects may change under them. */

export const taskShape = (task: Task, calendar: Calendar) => ({
  id: task.id,
  craft: task.craft,
  work: task.work,
  plant: task.plant,
  title: task.title,
  said: task.said,
  then: task.then ?? null,
  why: task.why,
  care: task.care ?? null,
  must: task.must,
  minutes: task.minutes,
  amount: task.amount ?? null,
  pours: task.pours ?? [],
  earliest: iso(task.earliest_ms),
  best: iso(task.best_ms),
  latest: iso(task.latest_ms),
  dates: (task.dates_ms ?? []).map(iso),
  quantiles: datedQuantiles(task.dates_ms ?? [], calendar) ?? null,
  act: task.act,
});

const heldShape = ({ task, limit }: Held) => ({
  task: task.id,
  plant: task.plant,
  work: limit.work,
  by: limit.by,
  why: limit.why,
  firm: limit.firm,
  until: limit.until_ms === undefined ? null : iso(limit.until_ms),
});

const spotShape = (mark: SpotMark, calendar: Calendar) => ({
  spot: mark.spot,
  name: mark.spotName,
  plant: mark.plant ?? null,
  number: mark.number ?? null,
  kind: mark.kind ?? null,
  tasks: mark.tasks.map((task) => taskShape(task, calendar)),
  held: mark.held.map(heldShape),
  moved: mark.moved.map((task) => taskShape(task, calendar)),
});

export const roundShape = (round: Round, calendar: Calendar) => ({
  date: round.date,
  said: round.said,
  overSaid: round.overSaid ?? null,
  tasks_n: round.tasks_n,
  minutes: round.minutes,
  must_n: round.must_n,
  fits_n: round.fits_n,
  wait_n: round.wait_n,
  benches: round.benches.map((bench) => ({
    bench: bench.bench,
    name: bench.name,
    outdoors: bench.outdoors,
    quarantine: bench.quarantine,
    said: bench.said,
    count_n: bench.count_n,
    weatherSaid: bench.weatherSaid ?? null,
    minutes: bench.minutes,
    spots: bench.spots.map((mark) => spotShape(mark, calendar)),
  })),
  held: round.held.map(heldShape),
  questions: round.questions.map(({ plant, number, work, said, worth_d, seconds }) => ({
    plant,
    number,
    work,
    said,
    worth_d,
    seconds,
  })),
  asks: round.asks.map(({ key, said, plants, answers }) => ({
    key,
    said,
    plants,
    answers: answers.map((answer) => answer.said),
  })),
  beforeYouGo: round.beforeYouGo,
  next: round.next ?? null,
});

/** How each craft sees the days ahead: twenty equally likely instants, their quantiles, and its figures with units in their names. */
function forecastShape(page: PlantPage, view: PlantView | undefined, calendar: Calendar) {
  const crafts = new Set([...page.lines.map(({ craft }) => craft), ...Object.keys(page.figures)]);
  return Object.fromEntries(
    [...crafts].map((craft) => {
      const line = page.lines.find((one) => one.craft === craft)?.line;
      return [
        craft,
        {
          said: line?.said ?? null,
          origin: line?.origin ?? null,
          dates: (line?.dates_ms ?? []).map(iso),
          quantiles: datedQuantiles(line?.dates_ms ?? [], calendar) ?? null,
          work: line?.work ?? null,
          since: line?.since_ms === undefined ? null : iso(line.since_ms),
          byDay: byDayShape(view, craft),
          figures: page.figures[craft] ?? {},
        },
      ];
    }),
  );
}

export const plantShape = (
  page: PlantPage,
  view: PlantView | undefined,
  good: readonly HowGood[],
  calendar: Calendar,
) => ({
  plant: page.plant,
  number: page.number,
  kind: page.kind,
  spot: page.spot ?? null,
  placeSaid: page.placeSaid ?? null,
  weatherSaid: page.weatherSaid ?? null,
  ended: page.ended ?? null,
  facts: page.facts,
  forecast: forecastShape(page, view, calendar),
  howGood: good.map(howGoodShape),
  states: page.heads.map(({ craft, head }) => ({
    craft,
    name: head.name,
    said: head.said,
    value: head.value,
    unit: head.unit,
    origin: head.working.origin,
  })),
  tasks: page.tasks.map((task) => taskShape(task, calendar)),
  held: page.held.map(heldShape),
  question: page.question ?? null,
  problems: page.problems,
  last: page.last ? { at: iso(page.last.at_ms), said: page.last.said } : null,
  workings: page.workings.map(workingShape),
});

export interface WorkingShape {
  readonly title: string;
  readonly result: string;
  readonly value: number | null;
  readonly unit: string;
  readonly low: number | null;
  readonly high: number | null;
  readonly origin: Working["origin"];
  readonly formula: string;
  readonly sum: string;
  readonly inputs: readonly unknown[];
  readonly source: string;
  readonly movesMost: string | null;
  readonly notes: readonly string[];
}

export const workingShape = (working: Working): WorkingShape => ({
  title: working.title,
  result: working.result,
  value: working.value ?? null,
  unit: working.unit,
  low: working.low ?? null,
  high: working.high ?? null,
  origin: working.origin,
  formula: working.formula,
  sum: working.sum,
  inputs: working.inputs.map(
    ({ name, said, value, unit, origin, from, at_ms, assumption, working: own }) => ({
      name,
      said,
      value: value ?? null,
      unit,
      origin,
      from,
      at: at_ms === undefined ? null : iso(at_ms),
      assumption: assumption ?? null,
      working: own ? workingShape(own) : null,
    }),
  ),
  source: working.source,
  movesMost: working.movesMost ?? null,
  notes: working.notes,
});
