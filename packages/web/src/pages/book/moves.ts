import type { PlantId } from "@sillwood/bench/book";
import type { PlantPage } from "@sillwood/bench/round";
import type { Engine } from "../../engine/client.ts";
import { lastLine, sayLast } from "../../shell/last-line.ts";

/** When a craft next wants hands at a plant, as it is said: the day alone, and with its range. */
export interface NextTime {
  readonly craft: string;
  readonly title: string;
  readonly day: string;
  readonly said: string;
}

/** The next time of every craft that has one. */
export function nextTimes(
  { lines, tasks }: Pick<PlantPage, "lines" | "tasks">,
  dayOf: (at_ms: number) => string,
): readonly NextTime[] {
  return lines.flatMap(({ craft, line }) => {
    const title = tasks.find((task) => task.craft === craft)?.title.toLocaleLowerCase();
    const middle_ms = line.dates_ms[Math.floor(line.dates_ms.length / 2)];
    return title === undefined || middle_ms === undefined
      ? []
      : [{ craft, title, day: dayOf(middle_ms), said: line.said }];
  });
}

/** What moved to another day; a range that only grew or shrank around the same day moved nothing. */
export const movedTimes = (before: readonly NextTime[], after: readonly NextTime[]) =>
  after.flatMap((now) => {
    const was = before.find(({ craft }) => craft === now.craft);
    return was && was.day !== now.day && was.said !== now.said ? [{ was, now }] : [];
  });

type Say = (number: string, title: string, before: string, after: string) => string;

/**
 * Watches one plant's next times: `tell` says in the last line what has moved since it was looked at last: "Moves 127's water
 * from Thu to Fri." An entry written meanwhile keeps its own line.
 */
export async function watchMoves(
  engine: Engine,
  plant: PlantId,
  dayOf: (at_ms: number) => string,
  say: Say,
): Promise<{ tell(): Promise<void> }> {
  const look = async () => {
    const page = await engine.ask("plant", { plant });
    return { number: page?.number ?? "", times: page ? nextTimes(page, dayOf) : [] };
  };
  let before = await look();
  return {
    async tell() {
      const line = lastLine();
      const after = await look();
      const moved = movedTimes(before.times, after.times).map(({ was, now }) =>
        say(after.number, now.title, was.said, now.said),
      );
      before = after;
      if (moved.length > 0 && line && lastLine() === line)
        sayLast({ ...line, text: `${line.text}. ${moved.join(" ")}` });
    },
  };
}
