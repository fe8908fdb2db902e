import "temporal-polyfill/global";
import { answerAsked } from "./answer-asked.ts";
import { appendSpeed } from "./append.ts";
import { keepBigBook } from "./kept-book.ts";
import { oneEntrySpeed } from "./one-entry.ts";
import { compilerHere, etSpeed } from "./reference-et.ts";
import { readAll, start } from "./start.ts";

/** What may be measured in a process of its own, by name. */
const tasks = {
  et: (days_n: number, runs_n: number, seed: number) => etSpeed(days_n, runs_n, seed, compilerHere()),
  append: appendSpeed,
  keep: keepBigBook,
  read: readAll,
  start,
  oneEntry: oneEntrySpeed,
};
export type Tasks = typeof tasks;

await answerAsked(tasks);
