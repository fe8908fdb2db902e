import { countLeaves } from "../nursery/measure.ts";
import type { Act, Visit } from "../nursery/nursery.ts";
import type { Crew, Keeper } from "./draw-people.ts";
import type { DrawnPot } from "./draw-pots.ts";

/** After some cuts the grower counts the leaves again: the only way in which a book without a craft for cuts can tell. */
export function trimVisits(pots: readonly DrawnPot[], crew: Crew): Visit[] {
  const { person } = crew.keepers[0] as Keeper;
  return pots.flatMap(({ events }) =>
    events.trims.flatMap(({ key, at_ms }) => {
      const counts: Act = (tended, _neighbour, by, now_ms, chance, notes) => {
        if (tended.key !== key) return;
        const facts = countLeaves(tended.pot, chance);
        notes.push({ at_ms: now_ms, by: by.key, pots: [key], what: "measured", facts });
      };
      // The pot stands on one of the two; on the other nobody finds it.
      return [0, 1].map((bench) => ({ at_ms, bench, person, does: counts, round: false as const }));
    }),
  );
}
