import "temporal-polyfill/global";
import { answerAsked } from "./answer-asked.ts";
import { appendSpeed } from "./append.ts";
import { compilerHere } from "./in-c.ts";
import { keepBigBook } from "./kept-book.ts";
import { oneEntrySpeed } from "./one-entry.ts";
import { etSpeed } from "./reference-et.ts";
import { windowSpeed } from "./reference-window.ts";
import { readAll, start } from "./start.ts";

/** What may be measured in a process of its own, by name. */
const tasks = {
  et: (days_n: number, runs_n: number, seed: number) => etSpeed(days_n, runs_n, seed, compilerHere()),
  window: (runs_n: number, seed: number) => windowSpeed(runs_n, seed, compilerHere()),
  append: appendSpeed,
  keep: keepBigBook,
  read: readAll,
  start,
  oneEntry: oneEntrySpeed,
};
export type Tasks = typeof tasks;

await answerAsked(tasks);
