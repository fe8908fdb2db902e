import type { Desk } from "@sillwood/bench/pages";
import type { BenchRound, Round, Task } from "@sillwood/bench/round";
import { cliWords } from "../words/words.ts";
import { columns } from "./columns.ts";
import { heldSaid, underTask } from "./task-lines.ts";
import { wrap } from "./wrap.ts";

/** Today's work as text: how much there is, then bench after bench in walking order. */
export function roundText(round: Round, desk: Desk, width_n: number): string {
  const words = cliWords(desk.say.language);
  const { say, now_ms } = desk;
  const blocks: string[][] = [
    [
      `${say.day(now_ms)}   ${round.said}`,
      ...(round.overSaid === undefined ? [] : wrap(round.overSaid, width_n, 0, 2)),
      ...(round.tasks_n > 0 ? [words.counts(round.must_n, round.fits_n, round.wait_n)] : []),
      ...(round.next ? [round.next.said] : []),
    ],
  ];
  if (round.beforeYouGo.length > 0)
    blocks.push(round.beforeYouGo.flatMap((line) => wrap(`${words.beforeYouGo}: ${line}`, width_n, 0, 2)));
  for (const bench of round.benches) if (bench.count_n > 0) blocks.push(benchLines(bench, desk, width_n));
  if (round.held.length > 0)
    blocks.push([
      words.held,
      ...round.held.flatMap((held) =>
        wrap(`${desk.numberOf(held.task.plant)}  ${heldSaid(held, desk)}`, width_n, 2, 4),
      ),
    ]);
  const moved = round.benches.flatMap((bench) => bench.spots.flatMap((spot) => spot.moved));
  if (moved.length > 0)
    blocks.push([
      words.moved,
      ...columns(
        moved.map((task) => [
          desk.numberOf(task.plant),
          task.title,
          task.said,
          say.day(task.latest_ms, now_ms),
        ]),
        { indent_n: 2, right: [0] },
      ),
    ]);
  if (round.questions.length > 0)
    blocks.push([words.worth, ...round.questions.flatMap(({ said }) => wrap(said, width_n, 2, 4))]);
  if (round.asks.length > 0)
    blocks.push([
      words.asks,
      ...round.asks.flatMap(({ said, answers }) => [
        ...wrap(said, width_n, 2, 4),
        ...wrap(words.answers(answers.map((answer) => answer.said).join(", ")), width_n, 4, 6),
      ]),
    ]);
  return blocks.map((block) => block.join("\n")).join("\n\n");
}

function benchLines(bench: BenchRound, desk: Desk, width_n: number): string[] {
  const words = cliWords(desk.say.language);
  const spots = bench.spots.filter(({ tasks }) => tasks.length > 0);
  const heads = columns(
    spots.flatMap((spot) =>
      spot.tasks.map((task, i) => [
        i === 0 ? spot.spotName : "",
        i === 0 ? (spot.number ?? "") : "",
        i === 0 ? (spot.kind ?? "") : "",
        `${task.title} ${task.said}`,
        task.must ? words.must : "",
      ]),
    ),
    { indent_n: 2, right: [1] },
  );
  const each = commonThen(spots.flatMap(({ tasks }) => tasks));
  const under = spots.flatMap(({ tasks }) => tasks.map((task) => underTask(task, desk, width_n, 8, each)));
  return [
    `${bench.name}   ${bench.said}, ${desk.say.minutes(bench.minutes)}`,
    ...(bench.weatherSaid === undefined ? [] : wrap(bench.weatherSaid, width_n, 2, 4)),
    ...(each === undefined ? [] : wrap(words.eachThen(each), width_n, 2, 4)),
    ...heads.flatMap((head, i) => [head, ...(under[i] ?? [])]),
  ];
}

/** Said once for a bench rather than at so many pots (our choice). */
const OFTEN_n = 3;

/** What follows most acts of a bench, where every act says what follows. */
function commonThen(tasks: readonly Task[]): string | undefined {
  if (tasks.some(({ then }) => then === undefined)) return undefined;
  const counts = new Map<string, number>();
  for (const { then = "" } of tasks) counts.set(then, (counts.get(then) ?? 0) + 1);
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  return most && most[1] >= OFTEN_n ? most[0] : undefined;
}
