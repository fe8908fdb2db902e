import { nodeClock, thermalRate_Cd_per_d } from "@sillwood/science/growth";
import { type Growing, type Sky, skyRays } from "@sillwood/science/shape";
import type { Outward } from "../craft.ts";
import type { TrimSlice } from "./slice.ts";

const AHEAD_d = 14;
const WEEKS_n = 8;
/** A unit above the first fork holds two leaves and a flower. Elitzur 2009, wild type */
const UNIT_LEAVES_n = 2;
/** Below this daily light growth slows in proportion, to a third at most. @source our assumption */
const FULL_PACE_mol_m2_d = 12;
const LEAST_PACE_frac = 1 / 3;

/** Light at the plant's place as it falls on the traced plant, and the warmth in which it will grow. */
export interface Around {
  readonly sky: Sky;
  readonly growing: Growing;
  readonly air_C: number;
}

export function aroundOf(slice: TrimSlice, frontFaces_deg: number | undefined, sight: Outward): Around {
  const day = sight.airAt(sight.plant.spot, sight.dateOf(sight.now_ms));
  const { fromSide_deg, fromSide_frac } = day.daylight;
  // Compass runs clockwise from above, the plant's own angle from its right to its depth the other way round.
  const front_deg = (frontFaces_deg ?? fromSide_deg) + slice.turned_deg;
  const sky = skyRays({
    fromSide_frac: Math.max(0, Math.min(1, fromSide_frac)),
    fromSide_deg: (((270 + front_deg - fromSide_deg) % 360) + 360) % 360,
  });
  const air_C = meanAir_C(sight);
  const species = sight.species ?? "unknown";
  const lightPace_frac = Math.max(LEAST_PACE_frac, Math.min(1, day.dli_mol_m2_d / FULL_PACE_mol_m2_d));
  const clockOf = (fruiting: boolean) => {
    const { plastochron_Cd, ...clock } = nodeClock({
      species: species === "chinense" ? "chinense" : "annuum",
      fruiting,
    });
    // Past its optimum warmth no longer hurries: the clock is asked at the warmth that counts.
    const pace = thermalRate_Cd_per_d({ air_C, ...clock });
    const nodes_Cd = plastochron_Cd * (fruiting ? UNIT_LEAVES_n : 1);
    return {
      clock: { base_C: clock.base_C, plastochron_Cd: Math.min(1000, nodes_Cd / lightPace_frac) },
      effective_C: clock.base_C + pace,
    };
  };
  const leafy = clockOf(false);
  const flowering = clockOf(true);
  return {
    sky,
    air_C,
    growing: {
      air_C: Math.max(-10, Math.min(50, leafy.effective_C)),
      leafy: leafy.clock,
      flowering: flowering.clock,
      weeks_n: WEEKS_n,
    },
  };
}

/** Mean air of the two weeks ahead, each spell by its length. */
function meanAir_C(sight: Outward): number {
  let warmth = 0;
  let time = 0;
  for (const date of sight.datesAhead.slice(0, AHEAD_d)) {
    for (const { from_ms, to_ms, air_C } of sight.airAt(sight.plant.spot, date).spells) {
      warmth += air_C * (to_ms - from_ms);
      time += to_ms - from_ms;
    }
  }
  return time > 0 ? warmth / time : 20;
}
