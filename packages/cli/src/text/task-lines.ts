import type { Desk } from "@sillwood/bench/pages";
import type { Held, Task } from "@sillwood/bench/round";
import { cliWords } from "../words/words.ts";
import { wrap } from "./wrap.ts";

/** A task in full, under its line: care before the act, then what follows, then why. */
export function underTask(
  task: Task,
  desk: Desk,
  width_n: number,
  indent_n: number,
  /** What was said for the whole bench already. */
  saidThen?: string,
): string[] {
  const words = cliWords(desk.say.language);
  const hang_n = indent_n + 2;
  return [
    ...(task.care ? wrap(`${words.care}: ${task.care}`, width_n, indent_n, hang_n) : []),
    ...(task.then && task.then !== saidThen
      ? wrap(`${words.then} ${task.then}`, width_n, indent_n, hang_n)
      : []),
    ...wrap(`${words.why}: ${task.why}`, width_n, indent_n, hang_n),
  ];
}

/** Who holds a task back, why, and from when it is free. */
export function heldSaid({ task, limit }: Held, desk: Desk): string {
  const until = limit.until_ms === undefined ? "" : desk.say.day(limit.until_ms, desk.now_ms);
  return cliWords(desk.say.language).heldBy(`${task.title} ${task.said}`.trim(), limit.by, limit.why, until);
}
