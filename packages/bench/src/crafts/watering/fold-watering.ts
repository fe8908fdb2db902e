import {
  CAPACITY,
  DEPLETION,
  LEAF,
  meanOf,
  type PotState,
  type Pour,
  sdOf,
  shifted,
  withLook,
  withMoreDoubt,
  withPour,
} from "@sillwood/science/water";
import type { PersonId } from "../../book/entry.ts";
import { rimArea_m2, USUAL_POT } from "../../plants/pot.ts";
import type { Happening, Sight } from "../craft.ts";
import { booked, changed } from "./changed.ts";
import { cyclesAfterPour } from "./cycles.ts";
import { isHabit } from "./habit.ts";
import { lookerOf, POURED_WITHOUT_LOOK } from "./look-meanings.ts";
import { believing, lastFew, leafFactorSd, type PastPour, type WaterSlice } from "./slice.ts";

const POURS_n = 8;
const PROBLEMS_n = 8;
const DAY_ms = 86_400_000;
/** A pour of this many capacities is likelier litres typed for millilitres. @source air-water sheet section 0 */
const TOO_MUCH = 3;

interface WaterIn {
  readonly volume_mL: number;
  readonly drained: "yes" | "no" | "unknown";
  readonly leachate_mL: number | undefined;
  readonly soaked: boolean;
}

/** A pour: first what it says of how dry the pot looked, then where the water went. */
export function withWatering(
  slice: WaterSlice,
  happening: Happening,
  water: WaterIn,
  sight: Sight,
): WaterSlice {
  if (!(water.volume_mL > 0) || !Number.isFinite(water.volume_mL)) return slice;
  const asked = withPourAsLook(slice, happening, sight);
  const poured = withPour(asked.state, usable(water));
  const change_g = meanOf(poured.state, DEPLETION) - meanOf(asked.state, DEPLETION);
  const { ledger } = asked;
  const previous = asked.pours.at(-1);
  const capacity_g = meanOf(asked.state, CAPACITY);
  const pour = {
    entry: happening.entry,
    at_ms: happening.at_ms,
    by: happening.by,
    volume_mL: water.volume_mL,
    drained: water.drained,
    since_d: previous ? Math.max(0, (happening.at_ms - previous.at_ms) / DAY_ms) : 0,
    demand_g: previous ? asked.demandSincePour_g : 0,
  };
  const date = sight.dateOf(happening.at_ms);
  const pours = lastFew(asked.pours, pour, POURS_n);
  const wetted = water.drained === "yes" || sdOf(poured.state, DEPLETION) < 0.06 * capacity_g;
  return changed(asked, {
    at_ms: Math.max(asked.at_ms, happening.at_ms),
    state: isHabitNew(asked, pours, happening.by) ? withThirstUnlearned(poured.state, sight) : poured.state,
    surfaceLost_mm: wetted
      ? 0
      : Math.max(0, asked.surfaceLost_mm - poured.kept_g / (1000 * rimArea_m2(sight.plant.pot ?? USUAL_POT))),
    ledger: booked(ledger, {
      poured_g: ledger.poured_g + water.volume_mL,
      drained_g: ledger.drained_g + poured.drained_g,
      putRight_g: ledger.putRight_g + (change_g + poured.kept_g),
    }),
    seen: wetted ? { at_ms: happening.at_ms, used_g: ledger.used_g } : asked.seen,
    pours,
    demandSincePour_g: 0,
    cycles: cyclesAfterPour(slice, happening.at_ms, sight),
    visitsSincePour_n: 0,
    visits: asked.visits.filter((visit) => visit.date !== date),
    problems:
      water.volume_mL > TOO_MUCH * capacity_g && !water.soaked
        ? lastFew(
            asked.problems,
            {
              entry: happening.entry,
              at_ms: happening.at_ms,
              what: "more than it holds",
              volume_mL: water.volume_mL,
              capacity_g,
            },
            PROBLEMS_n,
          )
        : asked.problems,
  });
}

/** A pour by which it shows that somebody waters by the calendar; where nobody weighs, all that was learned of thirst came from pours. */
const isHabitNew = (before: WaterSlice, pours: readonly PastPour[], by: PersonId): boolean =>
  !before.weights.some(({ used }) => used) && isHabit(pours, by) && !isHabit(before.pours, by);

/**
 * The pours before were taken for looks at a dry pot, and a pot that is watered early seems thirsty. They were none: how thirsty the plant is
 * goes back to the model.
 */
function withThirstUnlearned(state: PotState, sight: Sight): PotState {
  const prior_sd = leafFactorSd(sight);
  return withMoreDoubt(shifted(state, LEAF, -meanOf(state, LEAF)), LEAF, prior_sd, prior_sd);
}

/** What of a pour can be used, whatever was written. */
function usable({ volume_mL, drained, leachate_mL, soaked }: WaterIn): Pour {
  if (leachate_mL === undefined || !(leachate_mL >= 0) || leachate_mL > volume_mL) {
    return { volume_mL, drained, soaked };
  }
  return { volume_mL, drained: leachate_mL > 0 ? "yes" : drained, leachate_mL, soaked };
}

/** F6b: who pours without writing a look thought it dry, unless they pour by habit or have looked that day. */
function withPourAsLook(slice: WaterSlice, happening: Happening, sight: Sight): WaterSlice {
  const date = sight.dateOf(happening.at_ms);
  const { by } = happening;
  if (slice.lookDays[by] === date || isHabit(slice.pours, by)) return slice;
  return changed(believing(slice, withLook(slice.state, true, POURED_WITHOUT_LOOK, lookerOf(slice, by))), {
    tendedBy: slice.tendedBy ?? by,
    lookDays: { ...slice.lookDays, [by]: date },
  });
}
