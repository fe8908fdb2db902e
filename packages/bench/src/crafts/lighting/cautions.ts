import { lampClearances_m } from "@sillwood/science/light";
import type { LampData } from "../../places/light/kinds.ts";
import type { World } from "../craft.ts";
import type { BenchLight, Caution } from "./page-shape.ts";
import { lightPageWords } from "./words-page.ts";

/** Least distance from lamp to leaf, m. */
const clearance_m = (source: LampData["source"]): number =>
  source === "high pressure sodium" || source === "metal halide" || source === "fluorescent"
    ? lampClearances_m[source]
    : lampClearances_m["LED bar"];

/** What to mind about lamps and the sun; the label of the lamp and the local code come first. */
export function cautionsOf({ say }: World, benches: readonly BenchLight[]): readonly Caution[] {
  const words = lightPageWords(say).caution;
  const lamps = benches.flatMap((bench) => bench.lamps);
  const close = benches.flatMap(({ name, lamps: own }) =>
    own
      .filter(({ above_m, source }) => above_m < clearance_m(source))
      .map(({ source }) => ({ name, source })),
  )[0];
  const power_W = Math.max(0, ...benches.map(({ energy }) => energy?.power_W ?? 0));
  return [
    ...(lamps.length > 0
      ? [
          { key: "water" as const, said: words.water },
          { key: "eyes" as const, said: words.eyes },
          { key: "load" as const, said: words.load(say.number(power_W)) },
        ]
      : []),
    ...(close
      ? [
          {
            key: "heat" as const,
            said: words.tooClose(close.name, say.length(100 * clearance_m(close.source))),
          },
        ]
      : lamps.some(({ source }) => source === "high pressure sodium" || source === "metal halide")
        ? [{ key: "heat" as const, said: words.hot }]
        : []),
    ...(benches.some(({ outdoors }) => !outdoors) ? [{ key: "sun" as const, said: words.sun }] : []),
  ];
}
