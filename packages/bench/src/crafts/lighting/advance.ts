import type { AirDay } from "../../places/ahead.ts";
import type { Step } from "../craft.ts";
import { type LightSlice, withReadings } from "./slice.ts";

/** Mean age of a week's light, d: a running mean that forgets with it stands for the week. */
const WEEK_AGE_d = 3.5;
const WHOLE_DAY_frac = 1 - Math.exp(-1 / WEEK_AGE_d);
/** Sides even out, shoots grow past what they had. @source our assumption */
const FORGET_SIDES_d = 28;
/** Reserves last about so long. @source our assumption */
const FORGET_DEBT_d = 14;
const READ_AGAIN_ms = 7 * 86_400_000;

/** The light of a step is that of its day. */
export const lightRates = (_slice: LightSlice, step: Step): AirDay => step.day;

/** Numbers only: this runs at every midnight of every plant. */
export function lightIntegrate(slice: LightSlice, day: AirDay, step: Step): LightSlice {
  const { from_ms, to_ms, dt_d } = step;
  const before = from_ms - slice.readAt_ms >= READ_AGAIN_ms ? withReadings(slice, step) : slice;
  const { daylight, dli_mol_m2_d } = day;
  const side_frac = daylight.fromSide_frac;
  const light = dli_mol_m2_d * dt_d;
  const even = (light * (1 - side_frac)) / 4;
  const front = even + light * side_frac;
  const mix = dt_d === 1 ? WHOLE_DAY_frac : 1 - Math.exp(-dt_d / WEEK_AGE_d);
  const keep = 1 - Math.min(1, dt_d / FORGET_SIDES_d);
  const facing = ((Math.round((daylight.fromSide_deg - before.turned_deg) / 90) % 4) + 4) % 4;
  const debt =
    before.debt_mol_m2 * (1 - Math.min(1, dt_d / FORGET_DEBT_d)) +
    (before.need_mol_m2_d - dli_mol_m2_d) * dt_d;
  return {
    at_ms: to_ms,
    turned_deg: before.turned_deg,
    turns_n: before.turns_n,
    turnedAt_ms: before.turnedAt_ms,
    oneSided_d: before.oneSided_d + side_frac * dt_d,
    front_mol_m2: before.front_mol_m2 + front,
    other_mol_m2: before.other_mol_m2 + even,
    quarter0_mol_m2: before.quarter0_mol_m2 * keep + (facing === 0 ? front : even),
    quarter1_mol_m2: before.quarter1_mol_m2 * keep + (facing === 1 ? front : even),
    quarter2_mol_m2: before.quarter2_mol_m2 * keep + (facing === 2 ? front : even),
    quarter3_mol_m2: before.quarter3_mol_m2 * keep + (facing === 3 ? front : even),
    week_mol_m2_d: before.week_mol_m2_d + mix * (dli_mol_m2_d - before.week_mol_m2_d),
    around_mol_m2_d: before.around_mol_m2_d + mix * (daylight.around_mol_m2_d - before.around_mol_m2_d),
    side_frac: before.side_frac + mix * (side_frac - before.side_frac),
    last_mol_m2_d: dli_mol_m2_d,
    lightSd_frac: daylight.sd_frac,
    lightOrigin: day.light.origin,
    catching_m2: before.catching_m2,
    catchingSd_m2: before.catchingSd_m2,
    leafOrigin: before.leafOrigin,
    need_mol_m2_d: before.need_mol_m2_d,
    readAt_ms: before.readAt_ms,
    debt_mol_m2: debt > 0 ? debt : 0,
    movedAt_ms: before.movedAt_ms,
    beforeMove_mol_m2_d: before.beforeMove_mol_m2_d,
    lean: before.lean,
    problems: before.problems,
  };
}
