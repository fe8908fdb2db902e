import type { Happening, Sight } from "../craft.ts";
import { changed } from "./changed.ts";
import { begunAnew, withEffect } from "./events.ts";
import { withLooked } from "./fold-look.ts";
import { withWatering } from "./fold-watering.ts";
import { withWeighing } from "./fold-weighing.ts";
import { LOOKED, type Looked, WATERED, type Watered, WEIGHED, type Weighed } from "./kinds.ts";
import { lastFew, type WaterSlice } from "./slice.ts";

const PROBLEMS_n = 8;
const VISITS_n = 6;
/** A local day has 25 hours at most. */
const LONGEST_DAY_ms = 25 * 3_600_000;

/** What happened to the pot, folded into the slice. Total: what makes no sense becomes a problem of the slice. */
export function waterFold(slice: WaterSlice, happening: Happening, sight: Sight): WaterSlice {
  let next = slice;
  for (const effect of happening.effects) {
    if (effect.effect === "water in") {
      if (next.fresh) next = begunAnew(next, sight);
      const soaked =
        happening.own?.kind === WATERED && (happening.own.data as Partial<Watered>).way === "soaked";
      const { volume_mL, drained, leachate_mL } = effect;
      next = withWatering(next, happening, { volume_mL, drained, leachate_mL, soaked }, sight);
    } else if (effect.effect === "visited") {
      next = withVisit(next, happening, sight);
    } else {
      next = withEffect(next, effect, sight);
    }
  }
  if (next.fresh && happening.own) next = begunAnew(next, sight);
  if (happening.own?.kind === WEIGHED)
    return guarded(next, happening, () => withWeighing(next, happening, sight));
  if (happening.own?.kind === LOOKED)
    return guarded(next, happening, () => withLooked(next, happening, sight));
  return next;
}

/** Data that passed no gate (an older book, a foreign hand) must not stop the fold. */
function guarded(slice: WaterSlice, happening: Happening, fold: () => WaterSlice): WaterSlice {
  const data = happening.own?.data as Partial<Weighed & Looked> | null | undefined;
  const readable =
    typeof data === "object" &&
    data !== null &&
    (happening.own?.kind === WEIGHED
      ? typeof data.weight_g === "number" && data.weight_g > 0 && Number.isFinite(data.weight_g)
      : typeof data.look === "string" && typeof data.yes === "boolean");
  if (readable) return fold();
  const problem = { entry: happening.entry, at_ms: happening.at_ms, what: "cannot be read" as const };
  return changed(slice, { problems: lastFew(slice.problems, problem, PROBLEMS_n) });
}

function withVisit(slice: WaterSlice, happening: Happening, sight: Sight): WaterSlice {
  const date = sight.dateOf(happening.at_ms);
  const known = slice.visits.some((visit) => visit.by === happening.by && visit.date === date);
  const poured = slice.pours.some(
    ({ at_ms }) => Math.abs(happening.at_ms - at_ms) < LONGEST_DAY_ms && sight.dateOf(at_ms) === date,
  );
  if (known || poured || slice.lookDays[happening.by] === date) return slice;
  const visit = { at_ms: happening.at_ms, by: happening.by, date, used_g: slice.ledger.used_g };
  return changed(slice, { visits: lastFew(slice.visits, visit, VISITS_n) });
}
