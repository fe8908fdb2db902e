import type { Chance } from "./chance.ts";

/** How somebody looks, pours and writes. People differ more than books about plants allow for. */
export interface Person {
  readonly key: string;
  /** Felt dryness at which they water. */
  readonly dryAt_frac: number;
  /** How much they go by the colour of the surface, the rest by lifting the pot. */
  readonly goesBySurface_frac: number;
  /** Scatter of one judgement. */
  readonly wobble_frac: number;
  /** Waters every so many days whatever the pot says. */
  readonly habit_d?: number;
  readonly pours: "jug" | "until it runs";
  /** What lands in the pot over what they write. */
  readonly hand_frac: number;
  readonly writesWalk_frac: number;
  readonly writesLook_frac: number;
  readonly saysDrained_frac: number;
  readonly emptiesSaucer_frac: number;
  /** Waters and writes nothing. */
  readonly forgets_frac: number;
  /** Smallest step of their kitchen scale. */
  readonly scaleStep_g: number;
}

/** Draws a person; `habitual` people water by the calendar. */
export function drawPerson(key: string, habitual: boolean, chance: Chance): Person {
  return {
    key,
    dryAt_frac: Math.max(0.32, Math.min(0.85, chance.normal(0.58, 0.11))),
    goesBySurface_frac: chance.between(0, 0.45),
    wobble_frac: chance.between(0.04, 0.14),
    ...(habitual ? { habit_d: chance.whole(3, 9) } : {}),
    pours: chance.happens(0.5) ? "jug" : "until it runs",
    hand_frac: chance.logNormal(1, 0.07),
    writesWalk_frac: chance.pick([0, 0.6, 0.9, 1]),
    writesLook_frac: chance.pick([0, 0.1, 0.4, 0.8]),
    saysDrained_frac: chance.between(0.3, 1),
    emptiesSaucer_frac: chance.between(0.2, 1),
    forgets_frac: chance.pick([0, 0, 0.01, 0.03]),
    scaleStep_g: chance.pick([1, 1, 1, 2, 5]),
  };
}
