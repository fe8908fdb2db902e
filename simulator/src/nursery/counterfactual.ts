import type { BenchAir } from "./bench-air.ts";
import { DAY_ms, HOUR_ms } from "./calendar.ts";
import { advance, copyOf, type Pot, potAvailable_g, potDepletion_g } from "./potted-plant.ts";

/**
 * When a pot would first have come down to a share of its store, had nobody watered it again. All else happens as it
 * did: weather, light, cuts and moves (also those nobody wrote), the saucer is drawn up, rain falls where it can.
 *
 * @param pot the hidden state at the moment of asking; not changed
 * @param share_frac depletion asked for, as a share of the water between just drained and lasting wilt
 * @param horizon_d how far to look
 * @returns epoch milliseconds; undefined when it does not happen within the horizon
 */
export function firstTimeAt(
  pot: Pot,
  share_frac: number,
  benches: readonly BenchAir[],
  horizon_d: number,
): number | undefined {
  const dry = copyOf(pot);
  const end_ms = pot.at_ms + horizon_d * DAY_ms;
  let before = potDepletion_g(dry) - share_frac * potAvailable_g(dry);
  if (before >= 0) return pot.at_ms;
  while (dry.at_ms < end_ms) {
    const from_ms = dry.at_ms;
    const step_ms = Math.min(HOUR_ms - (from_ms % HOUR_ms), end_ms - from_ms);
    advance(dry, from_ms + step_ms, benches, false);
    const after = potDepletion_g(dry) - share_frac * potAvailable_g(dry);
    if (after >= 0) return from_ms + step_ms * (before / (before - after));
    before = after;
  }
  return undefined;
}
