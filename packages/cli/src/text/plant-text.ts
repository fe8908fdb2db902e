import type { HowGood } from "@sillwood/bench/issued";
import type { Desk } from "@sillwood/bench/pages";
import type { PlantPage } from "@sillwood/bench/round";
import type { Working } from "@sillwood/bench/working";
import { cliWords } from "../words/words.ts";
import { columns, ends } from "./columns.ts";
import { MARK } from "./marks.ts";
import { heldSaid, underTask } from "./task-lines.ts";
import { wrap } from "./wrap.ts";

/** The plant page as text: the answer first, then what it rests on. */
export function plantText(
  page: PlantPage,
  desk: Desk,
  width_n: number,
  good: readonly HowGood[] = [],
): string {
  const words = cliWords(desk.say.language);
  const origin = (from: Working["origin"]) => `${MARK[from]} ${words[from]}`;
  const blocks: string[][] = [ends(`${page.number}  ${page.kind}`, page.spot?.name ?? "", width_n)];
  if (page.ended) blocks.push([page.ended]);
  for (const said of [page.placeSaid, page.weatherSaid]) if (said) blocks.push(wrap(said, width_n, 0, 2));
  if (page.tasks.length > 0)
    blocks.push(
      page.tasks.flatMap((task) => [
        `${task.title}  ${task.said}  (${task.must ? words.must : desk.say.day(task.best_ms, desk.now_ms)})`,
        ...underTask(task, desk, width_n, 2),
      ]),
    );
  blocks.push(
    columns(
      [
        ...page.lines.map(({ craft, line }) => [craft, line.said, origin(line.origin)]),
        ...page.heads.map(({ head }) => [head.name, head.said, origin(head.working.origin)]),
      ],
      { indent_n: 2 },
    ),
  );
  if (page.held.length > 0)
    blocks.push([words.held, ...page.held.flatMap((held) => wrap(heldSaid(held, desk), width_n, 2, 4))]);
  blocks.push(
    columns(
      page.facts.map(({ name, said, from, origin: kind }) => [name, said, `${MARK[kind]} ${from}`]),
      { indent_n: 2 },
    ),
  );
  if (page.question) blocks.push(wrap(`${words.worth}: ${page.question.said}`, width_n, 0, 2));
  if (page.problems.length > 0)
    blocks.push([words.problems, ...page.problems.flatMap((problem) => wrap(problem, width_n, 2, 4))]);
  if (page.last)
    blocks.push(
      wrap(`${words.last}: ${desk.say.day(page.last.at_ms, desk.now_ms)}, ${page.last.said}.`, width_n, 0, 2),
    );
  for (const { title, said, compared, waits } of good)
    blocks.push([title, ...wrap([said, compared, ...waits].filter(Boolean).join(" "), width_n, 2, 2)]);
  if (page.workings.length > 0)
    blocks.push(
      wrap(
        `${words.workings}: ${page.workings.map(({ title }) => title).join(" · ")} (--working NAME)`,
        width_n,
        0,
        2,
      ),
    );
  return blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join("\n"))
    .join("\n\n");
}
