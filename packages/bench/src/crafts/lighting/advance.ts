import type { AirDay } from "../../places/ahead.ts";
import type { Step } from "../craft.ts";
import { knownWith, type LightKept, type LightKnown } from "./kept.ts";
import { readingsOf } from "./slice.ts";

/** Mean age of a week's light, d: a running mean that forgets with it stands for the week. */
const WEEK_AGE_d = 3.5;
const WHOLE_DAY_frac = 1 - Math.exp(-1 / WEEK_AGE_d);
/** Sides even out, shoots grow past what they had. @source our assumption */
const FORGET_SIDES_d = 28;
/** Reserves last about so long. @source our assumption */
const FORGET_DEBT_d = 14;
const READ_AGAIN_ms = 7 * 86_400_000;

/** The light of a step is that of its day. */
export const lightRates = (_slice: LightKept, step: Step): AirDay => step.day;

/** Numbers only: this runs at every midnight of every plant. */
export function lightIntegrate(slice: LightKept, day: AirDay, step: Step): LightKept {
  const { to_ms, dt_d } = step;
  const { daylight, dli_mol_m2_d } = day;
  const known = knownNow(slice, day, step);
  const { now } = slice;
  const side_frac = daylight.fromSide_frac;
  const light = dli_mol_m2_d * dt_d;
  const even = (light * (1 - side_frac)) / 4;
  const front = even + light * side_frac;
  const mix = dt_d === 1 ? WHOLE_DAY_frac : 1 - Math.exp(-dt_d / WEEK_AGE_d);
  const keep = 1 - Math.min(1, dt_d / FORGET_SIDES_d);
  const facing = ((Math.round((daylight.fromSide_deg - known.turned_deg) / 90) % 4) + 4) % 4;
  const debt =
    now[13] * (1 - Math.min(1, dt_d / FORGET_DEBT_d)) + (known.need_mol_m2_d - dli_mol_m2_d) * dt_d;
  return {
    known,
    now: [
      to_ms,
      now[1] + side_frac * dt_d,
      now[2] + front,
      now[3] + even,
      now[4] * keep + (facing === 0 ? front : even),
      now[5] * keep + (facing === 1 ? front : even),
      now[6] * keep + (facing === 2 ? front : even),
      now[7] * keep + (facing === 3 ? front : even),
      now[8] + mix * (dli_mol_m2_d - now[8]),
      now[9] + mix * (daylight.around_mol_m2_d - now[9]),
      now[10] + mix * (side_frac - now[10]),
      dli_mol_m2_d,
      daylight.sd_frac,
      debt > 0 ? debt : 0,
    ],
  };
}

/** Readings looked up again once a week, and where the light of the day is known from. */
function knownNow({ known }: LightKept, { light }: AirDay, step: Step): LightKnown {
  const isOld = step.from_ms - known.readAt_ms >= READ_AGAIN_ms;
  return !isOld && known.lightOrigin === light.origin
    ? known
    : knownWith(known, isOld ? readingsOf(step) : known, light.origin);
}
