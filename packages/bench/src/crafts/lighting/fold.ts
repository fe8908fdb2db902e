import type { Happening, Sight } from "../craft.ts";
import { kept, type LightKept, lightOf } from "./kept.ts";
import { LEANING, type Leaning } from "./kinds.ts";
import { type LightSlice, withReadings } from "./slice.ts";

const PROBLEMS_n = 5;

/** What one entry does to the slice. Total: what makes no sense becomes a problem of the slice. */
export const lightFold = (slice: LightKept, happening: Happening, sight: Sight): LightKept =>
  concerns(happening) ? kept(folded(lightOf(slice), happening, sight)) : slice;

/** Most entries are water and walks: they leave light as it is. */
function concerns({ effects, own }: Happening): boolean {
  if (own) return true;
  for (const { effect } of effects)
    if (effect === "turned" || effect === "moved" || effect === "leaf area" || effect === "pot changed")
      return true;
  return false;
}

function folded(slice: LightSlice, happening: Happening, sight: Sight): LightSlice {
  const { at_ms } = happening;
  let next = slice;
  for (const effect of happening.effects) {
    if (effect.effect === "turned") next = turned(next, effect.clockwise_deg, at_ms);
    else if (effect.effect === "moved")
      next = { ...next, movedAt_ms: at_ms, beforeMove_mol_m2_d: next.week_mol_m2_d };
    else if (effect.effect === "leaf area" || effect.effect === "pot changed")
      next = withReadings(next, sight);
  }
  return happening.own?.kind === LEANING ? leaned(next, happening) : next;
}

function turned(slice: LightSlice, clockwise_deg: number, at_ms: number): LightSlice {
  if (!Number.isFinite(clockwise_deg)) return slice;
  return {
    ...slice,
    turned_deg: (((slice.turned_deg + clockwise_deg) % 360) + 360) % 360,
    turns_n: slice.turns_n + 1,
    turnedAt_ms: at_ms,
    oneSided_d: 0,
    front_mol_m2: 0,
    other_mol_m2: 0,
  };
}

/** Data that passed no gate (an older book, a foreign hand) must not stop the fold. */
function leaned(slice: LightSlice, { entry, at_ms, own }: Happening): LightSlice {
  const data = own?.data as Partial<Leaning> | null | undefined;
  const readable =
    typeof data === "object" &&
    data !== null &&
    typeof data.lean_deg === "number" &&
    data.towards !== undefined;
  return readable
    ? {
        ...slice,
        lean: { towards: data.towards as Leaning["towards"], lean_deg: data.lean_deg as number, at_ms },
      }
    : { ...slice, problems: [...slice.problems.slice(1 - PROBLEMS_n), { entry, at_ms }] };
}
