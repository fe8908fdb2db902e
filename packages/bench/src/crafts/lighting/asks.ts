import { benchesInOrder } from "../../places/places.ts";
import type { Ask } from "../../round/pages.ts";
import type { World } from "../craft.ts";
import { lampAdvice, timerSaid } from "./lamp-advice.ts";
import type { LightSlice } from "./slice.ts";
import { lightingWords } from "./words.ts";

/** Timers that are worth setting today, one a bench. */
export function lightAsks(world: World<LightSlice>): readonly Ask[] {
  const words = lightingWords(world.say).lamp;
  return benchesInOrder(world.places).flatMap((bench) => {
    if (bench.outdoors || !world.places.light.lamps.has(bench.id)) return [];
    const advice = lampAdvice(world, bench);
    if (!advice?.change) return [];
    const said =
      advice.on && advice.off
        ? words.ask(bench.name, advice.on, advice.off, timerSaid(world, bench).said)
        : words.askOff(bench.name, timerSaid(world, bench).said);
    return [
      {
        key: `lamp:${bench.id}:${advice.from_h}:${advice.hours_h}`,
        said: advice.shortSaid ? `${said} ${advice.shortSaid}` : said,
        plants: [],
        answers: [{ said: words.isSetNow, entries: [advice.draft] }],
      },
    ];
  });
}
