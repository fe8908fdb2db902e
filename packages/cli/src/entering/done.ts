import type { PlantId } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";
import type { Reading } from "../book/session.ts";
import { DataError, type Trouble } from "../errors.ts";
import { findThing, plantsOnBench } from "../typed/find-thing.ts";

/**
 * The advised acts of plants, as DONE on the round writes them: the first task that is due today of each. Asked with `--at`
 * they are those of the sheet that was printed then.
 */
export function doneDrafts(
  { desk, calendar, now_ms }: Reading,
  words: readonly string[],
  at_ms?: number,
): readonly Draft[] {
  const troubles: Trouble[] = [];
  const plants = words.flatMap((word) => {
    const found = findThing(desk, word.startsWith("@") ? "bench" : "plant", word.replace(/^@/, ""));
    if ("id" in found) return word.startsWith("@") ? plantsOnBench(desk, found.id) : [found.id as PlantId];
    troubles.push({ path: "on", message: found.wrong, value: word });
    return [];
  });
  const today = calendar.dateOf(now_ms);
  const drafts = plants.flatMap((plant): readonly Draft[] => {
    const task = desk.view(plant)?.tasks.find((one) => calendar.dateOf(one.earliest_ms) <= today);
    if (task) return [{ ...task.act, on: [plant], ...(at_ms === undefined ? {} : { at_ms }) }];
    // On a whole bench most pots may want nothing; a pot that was named should.
    if (words.some((word) => desk.numberOf(plant) === word || word === plant))
      troubles.push({
        path: "on",
        message: `${desk.numberOf(plant)} wants nothing today; say what was done by its kind`,
      });
    return [];
  });
  if (troubles.length === 0 && drafts.length === 0)
    troubles.push({ path: "on", message: "nothing is due on these plants today" });
  if (troubles.length > 0) throw new DataError(troubles);
  return drafts;
}
