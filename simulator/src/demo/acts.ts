import type { Act } from "../nursery/nursery.ts";
import { emptySaucer, potDepletion_g } from "../nursery/potted-plant.ts";
import { give, readScale, settle } from "../nursery/tend.ts";
import { ROLES } from "./cast.ts";

/** Everything on the bench gets water until it runs, whatever it needs. */
export const soak: Act = (tended, _neighbour, person, at_ms, chance, notes) => {
  const { said } = give(tended, person, chance, Math.max(60, potDepletion_g(tended.pot) * 1.25 + 30));
  notes.push({ at_ms, by: person.key, pots: [tended.key], ...said });
  emptySaucer(tended.pot);
  settle(tended, at_ms, chance);
};

/** Walks past, lifts one or two, weighs what is due to be weighed, waters nothing. */
export const glance: Act = (tended, neighbour, person, at_ms, chance, notes) => {
  const due_ms = tended.weighAt_ms[0];
  if (due_ms !== undefined && at_ms >= due_ms) {
    tended.weighAt_ms.shift();
    const weight_g = readScale(tended.pot, neighbour?.pot, person, "as found", chance);
    notes.push({ at_ms, by: person.key, pots: [tended.key], what: "weighed", weight_g, state: "as found" });
  } else if (chance.happens(0.06))
    notes.push({ at_ms, by: person.key, pots: [tended.key], what: "looked", look: "light", yes: false });
};

/** Puts the named pots on the scale and nothing else. */
export function weigh(numbers: readonly number[]): Act {
  return (tended, _neighbour, person, at_ms, chance, notes) => {
    if (!numbers.includes(ROLES[tended.key]?.number ?? 0)) return;
    const weight_g = readScale(tended.pot, undefined, person, "as found", chance);
    notes.push({ at_ms, by: person.key, pots: [tended.key], what: "weighed", weight_g, state: "as found" });
  };
}

/** Waters the named pots and nothing else. */
export function soakOnly(numbers: readonly number[]): Act {
  return (tended, neighbour, person, at_ms, chance, notes) => {
    if (numbers.includes(ROLES[tended.key]?.number ?? 0))
      soak(tended, neighbour, person, at_ms, chance, notes);
  };
}
