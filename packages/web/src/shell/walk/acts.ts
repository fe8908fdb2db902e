import type { Draft, skipReasons, Task } from "@sillwood/bench/round";

/** What DONE writes for a task, with the amount that was really given. */
export function actOf(task: Task, amount?: number): Draft {
  const { kind, data } = task.act;
  const on = [task.plant];
  if (amount === undefined || !task.amount) return { kind, on, data };
  const suffix = `_${task.amount.unit}`;
  const field =
    data !== null && typeof data === "object" && !Array.isArray(data)
      ? Object.keys(data).find((key) => key.endsWith(suffix))
      : undefined;
  return field === undefined
    ? { kind, on, data }
    : { kind, on, data: { ...(data as object), [field]: amount } };
}

type SkipReason = (typeof skipReasons)[number];

/** What was not done is written too, with its reason; who was not sure leaves it for the grower. */
export function skipOf(task: Task, reason: SkipReason, text?: string): readonly Draft[] {
  const on = [task.plant];
  return [
    { kind: "round.skipped", on, data: { task: `${task.craft}:${task.work}`, reason } },
    ...(text === undefined ? [] : [{ kind: "round.left", on, data: { text } }]),
  ];
}

/** A task on one line. Without an amount its sentence says the verb already: "look at the roots, do not water". */
export const lineOf = ({ title, said, amount }: Pick<Task, "title" | "said" | "amount">): string =>
  amount ? `${title} ${said}` : said;

/** Whether the act needs a number that only the scale knows: such tasks are done on the weighing run. */
export const isWeighing = (task: Task): boolean => task.work === "weigh";

/** A step of [less] and [more]: a tenth of the amount, rounded to marks of the jug, one mark at least. */
export function stepOf(task: Task, jugStep_mL: number): number {
  const tenth = (task.amount?.value ?? 0) / 10;
  const mark = jugStep_mL / 2;
  return Math.max(mark, Math.round(tenth / mark) * mark);
}
