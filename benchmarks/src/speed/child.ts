import "temporal-polyfill/global";
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

const [name, args] = process.argv.slice(2) as [keyof Tasks, string];
const task = tasks[name] as (...words: unknown[]) => unknown;
const answer = await task(...(JSON.parse(args) as unknown[]));
process.stdout.write(`${JSON.stringify(answer ?? null)}\n`);
