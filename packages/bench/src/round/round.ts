import type { PlantId } from "../book/entry.ts";
import type { Desk, PlantView } from "../pages/desk.ts";
import { kindSaid } from "../pages/names.ts";
import { staleWeatherSaid } from "../pages/weather-said.ts";
import { laterBenches } from "../places/later-benches.ts";
import { type Bench, benchesInOrder } from "../places/places.ts";
import { addDays } from "../places/time.ts";
import { asksOf } from "./asks.ts";
import { inHandOrder, keepApart } from "./conflicts.ts";
import { fitMinutes } from "./fit.ts";
import { paceOf } from "./minutes.ts";
import type { BenchRound, Held, Round, SpotMark } from "./pages.ts";
import type { Task } from "./task.ts";
import { roundWords } from "./words.ts";

export interface RoundOptions {
  /** Minutes there are; all work when left out. */
  readonly minutes?: number;
  /** Walk every bench from its other end. */
  readonly otherEnd?: boolean;
  /** Whose pace counts; everybody's when left out. */
  readonly person?: string;
}

const MOST_QUESTIONS_n = 3;
const NOWHERE = "";

/** Today's work in walking order. */
export function theRound(desk: Desk, { minutes, otherEnd = false, person }: RoundOptions = {}): Round {
  const { ledger, now_ms, say } = desk;
  const words = roundWords(say);
  const today = ledger.calendar.dateOf(now_ms);
  const endOfDay_ms = ledger.calendar.midnight_ms(addDays(today, 1));
  const views = desk.living().flatMap((plant) => desk.view(plant) ?? []);
  const pace = paceOf(ledger, person).ratio;
  const nextVisit_ms = desk.visits_ms.find((at_ms) => at_ms >= endOfDay_ms) ?? endOfDay_ms;

  const due = new Map<PlantId, readonly Task[]>();
  const held: Held[] = [];
  const skipped = new Set<PlantId>();
  for (const view of views) {
    const wanted = view.tasks.filter((task) => task.earliest_ms < endOfDay_ms);
    const open = wanted.filter((task) => !skippedToday(view, task, today, desk));
    if (open.length < wanted.length) skipped.add(view.plant);
    const { today: ordered, waits } = keepApart(open);
    due.set(
      view.plant,
      inHandOrder(ordered).map((task) => inMinutes(task, task.minutes * pace)),
    );
    held.push(...view.held.filter(({ task }) => task.earliest_ms < endOfDay_ms));
    for (const { task, because, rule } of waits) {
      held.push({
        task,
        limit: {
          work: task.work,
          on: view.plant,
          from_ms: now_ms,
          until_ms: endOfDay_ms,
          why: rule.why[say.language],
          by: because.craft,
          firm: false,
        },
      });
    }
  }

  const all = [...due.values()].flat();
  const fitted = fitMinutes(all, minutes, nextVisit_ms);
  const isToday = new Set(fitted.today);
  const byId = new Map(views.map((view) => [view.plant, view]));
  const benches = benchRounds(desk, byId, due, isToday, held, skipped, otherEnd);
  const musts_n = all.filter((task) => task.must).length;
  const questions = views
    .flatMap(({ plant, outlooks }) =>
      outlooks.flatMap(({ outlook }) =>
        outlook.question ? [{ ...outlook.question, plant, number: desk.numberOf(plant) }] : [],
      ),
    )
    .sort((a, b) => b.worth_d - a.worth_d || (a.number < b.number ? -1 : 1))
    .slice(0, MOST_QUESTIONS_n);

  return {
    now_ms,
    date: today,
    said:
      all.length === 0
        ? words.nothing()
        : words.summary(
            fitted.today.length,
            fitted.minutes,
            benches.filter((bench) => bench.count_n > 0).length,
          ),
    ...(fitted.pressing_min === undefined || minutes === undefined
      ? {}
      : { overSaid: words.over(fitted.pressing_min, minutes) }),
    tasks_n: fitted.today.length,
    minutes: fitted.minutes,
    benches,
    must_n: musts_n,
    fits_n: fitted.today.length - fitted.today.filter((task) => task.must).length,
    wait_n: fitted.moved.length,
    held,
    questions,
    asks: asksOf(desk),
    beforeYouGo: litresToCarry(fitted.today, words),
    ...(all.length === 0 ? nextDay(desk, views, today) : {}),
  };
}

/** The same task in other minutes. Its working and its reason stay unsaid until somebody reads them: a round has hundreds. */
const inMinutes = (task: Task, minutes: number): Task =>
  Object.defineProperties({} as Task, {
    ...Object.getOwnPropertyDescriptors(task),
    minutes: { value: minutes, enumerable: true, writable: true, configurable: true },
  });

function skippedToday({ facts }: PlantView, task: Task, today: string, desk: Desk): boolean {
  return facts.rounds.skipped.some(
    (skip) => skip.task === `${task.craft}:${task.work}` && desk.ledger.calendar.dateOf(skip.at_ms) === today,
  );
}

function benchRounds(
  desk: Desk,
  views: ReadonlyMap<PlantId, PlantView>,
  due: ReadonlyMap<PlantId, readonly Task[]>,
  isToday: ReadonlySet<Task>,
  held: readonly Held[],
  skipped: ReadonlySet<PlantId>,
  otherEnd: boolean,
): BenchRound[] {
  const words = roundWords(desk.say);
  const standing = new Map<string, PlantId[]>();
  const { places } = desk.ledger.house();
  const unlaid = new Map<string, string[]>();
  let later: ReturnType<typeof laterBenches> | undefined;
  for (const [plant, { facts }] of views) {
    let spot = facts.spot ?? NOWHERE;
    if (!places.benchOfSpot.has(spot)) {
      if (spot !== NOWHERE) later ??= laterBenches(desk.ledger.records(), desk.now_ms);
      const bench = later?.get(spot);
      if (!bench) spot = NOWHERE;
      else if (!standing.has(spot)) {
        const name = words.laidLater(bench.name, desk.say.day(bench.laid_ms));
        unlaid.set(name, [...(unlaid.get(name) ?? []), spot]);
      }
    }
    standing.set(spot, [...(standing.get(spot) ?? []), plant]);
  }
  const mark = (spot: { id: string; name: string }): SpotMark[] => {
    const plants = standing.get(spot.id) ?? [];
    if (plants.length === 0) return [{ spot: spot.id, spotName: spot.name, tasks: [], held: [], moved: [] }];
    return plants.map((plant) => {
      const tasks = due.get(plant) ?? [];
      return {
        spot: spot.id,
        spotName: spot.name,
        plant,
        number: desk.numberOf(plant),
        kind: kindSaid((views.get(plant) as PlantView).facts, desk.ledger, desk.say.language, desk.now_ms),
        tasks: tasks.filter((task) => isToday.has(task)),
        moved: tasks.filter((task) => !isToday.has(task)),
        held: held.filter(({ task }) => task.plant === plant),
        ...(skipped.has(plant) ? { skipped: true as const } : {}),
      };
    });
  };
  const round = (bench: Pick<Bench, "id" | "name" | "outdoors" | "spots" | "quarantine">): BenchRound => {
    const spots = bench.spots.flatMap(mark);
    if (otherEnd) spots.reverse();
    const tasks = spots.flatMap((spot) => spot.tasks);
    const weatherSaid = bench.outdoors ? staleWeatherSaid(desk) : undefined;
    return {
      bench: bench.id,
      name: bench.name,
      outdoors: bench.outdoors,
      quarantine: bench.quarantine ?? false,
      spots,
      minutes: tasks.reduce((sum, task) => sum + task.minutes, 0),
      said: words.bench(countWork(tasks)),
      count_n: tasks.length,
      ...(weatherSaid === undefined ? {} : { weatherSaid }),
    };
  };
  const rounds = benchesInOrder(places).map(round);
  for (const [name, spots] of unlaid)
    rounds.push(round({ id: name, name, outdoors: false, spots: spots.map((id) => ({ id, name: "" })) }));
  const nowhere = standing.get(NOWHERE);
  if (nowhere?.length)
    rounds.push(
      round({ id: NOWHERE, name: words.nowhere(), outdoors: false, spots: [{ id: NOWHERE, name: "" }] }),
    );
  return rounds;
}

function countWork(tasks: readonly Task[]): readonly [Task["work"], number][] {
  const counts = new Map<Task["work"], number>();
  for (const { work } of tasks) counts.set(work, (counts.get(work) ?? 0) + 1);
  return [...counts];
}

function litresToCarry(tasks: readonly Task[], words: ReturnType<typeof roundWords>): string[] {
  const water_mL = tasks
    .filter(({ work, amount }) => work === "water" && amount?.unit === "mL")
    .reduce((sum, { amount }) => sum + (amount?.value ?? 0), 0);
  return water_mL > 0 ? [words.carry(water_mL)] : [];
}

/** When nothing is due: the first day that likely is, and how many pots then, from the crafts' equally likely dates. */
function nextDay(desk: Desk, views: readonly PlantView[], today: string): Pick<Round, "next"> {
  const dates = views.flatMap(({ outlooks }) =>
    outlooks.flatMap(({ outlook }) => (outlook.line?.dates_ms.length ? [outlook.line.dates_ms] : [])),
  );
  const medians = dates.map((all) => all[Math.floor(all.length / 2)] as number).sort((a, b) => a - b);
  const first_ms = medians[0];
  if (first_ms === undefined) return {};
  const date = desk.ledger.calendar.dateOf(
    Math.max(first_ms, desk.ledger.calendar.midnight_ms(addDays(today, 1))),
  );
  const until_ms = desk.ledger.calendar.midnight_ms(addDays(date, 1));
  // Each pot is due by then with the share of its dates that lie before; pots are taken as independent.
  const chances = dates.map((all) => all.filter((at_ms) => at_ms < until_ms).length / all.length);
  const mean = chances.reduce((sum, p) => sum + p, 0);
  const sd = Math.sqrt(chances.reduce((sum, p) => sum + p * (1 - p), 0));
  const Z80 = 1.2816;
  const mid_n = Math.max(1, Math.round(mean));
  const low_n = Math.max(1, Math.min(mid_n, Math.floor(mean - Z80 * sd)));
  const high_n = Math.max(mid_n, Math.ceil(mean + Z80 * sd));
  const said = roundWords(desk.say).next(
    desk.say.day(desk.ledger.calendar.hour_ms(date, 8), desk.now_ms),
    mid_n,
    low_n,
    high_n,
  );
  return { next: { date, said, low_n, mid_n, high_n } };
}
