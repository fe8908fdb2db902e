import type { Desk } from "@sillwood/bench/pages";
import type { Round } from "@sillwood/bench/round";
import { iso } from "../shapes/instants.ts";
import { cliWords } from "../words/words.ts";
import { columns } from "./columns.ts";

/** The round on paper: walking order, amount, boxes for what was done, a grams column, and how to type it back. */
export function sheetText(round: Round, desk: Desk): string {
  const { sheet } = cliWords(desk.say.language);
  const BOX = "[ ]";
  const rows = round.benches.flatMap((bench) => {
    const tasks = bench.spots.flatMap((spot) => spot.tasks.map((task) => ({ spot, task })));
    return tasks.length === 0
      ? []
      : [
          ["", "", "", "", "", "", ""],
          ["", bench.name.toUpperCase(), sheet.done, sheet.less, sheet.more, sheet.not, sheet.grams],
          ...tasks.map(({ spot, task }) => [
            spot.number ?? "",
            `${task.title} ${task.said}`,
            BOX,
            BOX,
            BOX,
            BOX,
            "______",
          ]),
        ];
  });
  const { say, now_ms } = desk;
  return [
    `${sheet.title}   ${say.day(now_ms)}   ${round.said}`,
    sheet.asOf(say.day(now_ms), say.time(now_ms)),
    ...columns(rows),
    "",
    `${sheet.back} ${iso(now_ms)}`,
  ].join("\n");
}
