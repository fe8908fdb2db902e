import type { Task } from "../../round/task.ts";
import type { Working } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import type { Coming } from "./ahead.ts";
import { STAGED } from "./kinds.ts";
import { growthWords } from "./words.ts";

export const CRAFT = "growth";
const LOOK_min = 0.5;

/** After a hard cut: somebody sees the first new leaf, and the clock starts by what was seen. */
export function growthTasks(
  coming: Coming | undefined,
  working: () => Working,
  sight: Outward,
): readonly Task[] {
  if (coming?.milestone !== "new leaves") return [];
  const words = growthWords(sight.say).task;
  const { dates_ms } = coming;
  const at = (i: number) => dates_ms[i] as number;
  return [
    {
      id: `${CRAFT}:look:${sight.plant.id}`,
      craft: CRAFT,
      work: "look",
      plant: sight.plant.id,
      earliest_ms: at(2),
      best_ms: at(10),
      latest_ms: at(17),
      dates_ms,
      minutes: LOOK_min,
      must: false,
      title: words.look,
      said: words.newLeaf,
      why: words.newLeafWhy,
      act: { kind: STAGED, data: { stage: "new leaves" } },
      working: working(),
    },
  ];
}
