import type { Task } from "./task.ts";

export interface Fitted {
  readonly today: readonly Task[];
  /** Moved to another day; each has its own latest date. */
  readonly moved: readonly Task[];
  readonly minutes: number;
  /** What can't be moved takes so long, when that alone is more than there are minutes. */
  readonly pressing_min?: number;
}

/**
 * Fits tasks into the minutes there are: what must be done today is always in, the rest by latest date while minutes last.
 * Nothing whose latest date would pass before the next visit is moved.
 *
 * @param minutes minutes there are; undefined for all
 * @param nextVisit_ms the next round, epoch ms
 */
export function fitMinutes(
  tasks: readonly Task[],
  minutes: number | undefined,
  nextVisit_ms: number,
): Fitted {
  if (minutes === undefined) return { today: tasks, moved: [], minutes: total(tasks) };
  const pressing = (task: Task) => task.must || task.latest_ms < nextVisit_ms;
  const bySoonest = [...tasks].sort(
    (a, b) =>
      Number(pressing(b)) - Number(pressing(a)) || a.latest_ms - b.latest_ms || (a.id < b.id ? -1 : 1),
  );
  let left = minutes;
  const today = new Set<Task>();
  for (const task of bySoonest) {
    if (!pressing(task) && task.minutes > left) continue;
    today.add(task);
    left -= task.minutes;
  }
  const kept = tasks.filter((task) => today.has(task));
  const pressing_min = total(tasks.filter(pressing));
  return {
    today: kept,
    moved: tasks.filter((task) => !today.has(task)),
    minutes: total(kept),
    ...(pressing_min > minutes ? { pressing_min } : {}),
  };
}

const total = (tasks: readonly Task[]) => tasks.reduce((sum, task) => sum + task.minutes, 0);
