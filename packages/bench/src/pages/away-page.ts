import type { AwayPlan, Span } from "../crafts/craft.ts";
import type { Desk } from "./desk.ts";
import { inWalkingOrder } from "./plant-page.ts";

/** The longest absence that is planned: forecasts look no further ahead. */
export const LONGEST_AWAY_d = 28;
const DAY_ms = 86_400_000;

/** An absence that can't be planned, with the limit it breaks. */
export class AbsenceError extends Error {
  override readonly name = "AbsenceError";
}

/**
 * An absence, planned by every craft that has something to say of it: what will not last, what to do about it, a sheet for
 * the sitter, the day of return.
 *
 * @throws AbsenceError when it ends before it starts, is over, or is longer than LONGEST_AWAY_d
 */
export async function awayPage(
  desk: Desk,
  absence: Span,
): Promise<readonly { readonly craft: string; readonly plan: AwayPlan }[]> {
  const { from_ms, to_ms } = absence;
  if (!(to_ms > from_ms)) throw new AbsenceError("the absence ends before it starts");
  if (to_ms <= desk.now_ms) throw new AbsenceError("the absence is over");
  const days_d = (to_ms - Math.max(from_ms, desk.now_ms)) / DAY_ms;
  if (days_d > LONGEST_AWAY_d)
    throw new AbsenceError(
      `the absence is ${Math.round(days_d)} days long; expected at most ${LONGEST_AWAY_d} days`,
    );
  const views = inWalkingOrder(desk).flatMap((plant) => desk.view(plant) ?? []);
  const plans: { readonly craft: string; readonly plan: AwayPlan }[] = [];
  for (const [i, craft] of desk.ledger.crafts.entries()) {
    const planned = await craft.away?.();
    if (!planned) continue;
    const members = views.map(({ state, outwards }) => ({
      slice: state.slices[i],
      sight: outwards[i] as (typeof outwards)[number],
    }));
    plans.push({ craft: craft.name, plan: planned(members, absence) });
  }
  return plans;
}
