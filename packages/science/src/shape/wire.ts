import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { type ShapeSettings, shapeAssumptions } from "./assumptions.ts";
import type { Wood } from "./bud-break.ts";

/** Looks for biting wire come so often while a stem thickens. Common practice, no source. */
const LOOK_EVERY_d = { green: 7, semi: 14, woody: 21 } as const;

/**
 * How long a wire or guy stays, and how often to look whether it bites.
 *
 * 3 weeks on green, 6 on half-woody, 13 on woody stems; in slow growth longer by the pace of warmth, at most twice
 *
 * @param bend wood; growth against the usual, 0.1 to 3
 * @returns days until it is taken off, days between looks
 * @throws QuantityError outside that range
 * @source common practice, no source
 * @example wireTime({ wood: "green", growthPace: 1 }).off_d // 21
 */
export function wireTime(bend: { readonly wood: Wood; readonly growthPace: number } & ShapeSettings): {
  readonly off_d: number;
  readonly look_d: number;
} {
  within("growthPace", bend.growthPace, 0.1, 3);
  const set = valuesOf(shapeAssumptions, bend);
  const usual_d =
    bend.wood === "green" ? set.setGreen_d : bend.wood === "semi" ? set.setSemi_d : set.setWoody_d;
  const slower = Math.min(2, Math.max(0.5, 1 / bend.growthPace));
  return {
    off_d: Math.round(usual_d * slower),
    look_d: Math.max(3, Math.round(LOOK_EVERY_d[bend.wood] * slower)),
  };
}
