import * as v from "valibot";
import type { Happening } from "../craft.ts";
import { ARRIVED, CARD, CONFIRMED, EXPOSED, LOOKED, RELEASED, scoutingKinds, TREATED } from "./kinds.ts";
import { ACTS_n, type ScoutAct, type ScoutSlice, STOOD_n } from "./slice.ts";

const ACTS: Readonly<Record<string, ScoutAct["act"]>> = {
  [LOOKED]: "look",
  [CARD]: "card",
  [TREATED]: "treat",
  [ARRIVED]: "arrive",
  [EXPOSED]: "expose",
  [RELEASED]: "release",
  [CONFIRMED]: "confirm",
};
const PROBLEMS_n = 5;

/** What one entry does to the slice. Total: what makes no sense becomes a problem of the slice. */
export function scoutFold(slice: ScoutSlice, { entry, at_ms, by, effects, own }: Happening): ScoutSlice {
  let next = slice;
  for (const effect of effects)
    if (effect.effect === "moved")
      next = { ...next, stood: [...next.stood.slice(1 - STOOD_n), { at_ms, spot: effect.to }] };
  if (!own) return next;
  const act = ACTS[own.kind];
  const schema = scoutingKinds.find(({ kind }) => kind === own.kind)?.schema;
  // Data that passed no gate (an older book, a foreign hand) must not stop the fold.
  if (!act || !schema || !v.is(schema, own.data))
    return { ...next, problems: [...next.problems.slice(1 - PROBLEMS_n), { entry, at_ms }] };
  const made = { at_ms, entry, by, act, data: own.data } as unknown as ScoutAct;
  return { ...next, acts: [...next.acts.slice(1 - ACTS_n), made] };
}
