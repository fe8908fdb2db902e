import { chancePast, withLook, withSign } from "@sillwood/science/water";
import type { Happening, Sight } from "../craft.ts";
import { changed } from "./changed.ts";
import { isHabit } from "./habit.ts";
import { type Looked, type LookKey, lookKeys } from "./kinds.ts";
import { LOOK_MEANINGS, lookerOf, NOON_FROM_h, NOON_TO_h } from "./look-meanings.ts";
import { believing, lastFew, type WaterSlice } from "./slice.ts";

const LOOKS_n = 6;
const HOUR_ms = 3_600_000;
/** Drooping while this likely to be less than 0.4 used up is not thirst (air-water sheet, conflict rule). */
const WET_UP_TO_frac = 0.4;
const SURELY_WET_frac = 0.7;

/** A look: dry, light, drooping, heavy, moist or wet, yes or no. */
export function withLooked(slice: WaterSlice, happening: Happening, sight: Sight): WaterSlice {
  const data = happening.own?.data as unknown as Looked;
  if (!lookKeys.includes(data.look)) return slice;
  const seen: WaterSlice = changed(slice, {
    at_ms: Math.max(slice.at_ms, happening.at_ms),
    looks: lastFew(slice.looks, { at_ms: happening.at_ms, look: data.look, yes: data.yes }, LOOKS_n),
  });
  const marked = data.look === "drooping" ? withDrooping(seen, data.yes, happening) : withRelief(seen, data);
  return tells(marked, data.look, data.yes, happening, sight)
    ? withEye(marked, data.look, data.yes, happening, sight)
    : marked;
}

/** Only one look per person, pot and day counts; noon droop, droop of a wet pot and the "dry" of a habit say nothing of thirst. */
function tells(slice: WaterSlice, look: LookKey, yes: boolean, happening: Happening, sight: Sight): boolean {
  if (look === "drooping" && yes) {
    if (slice.droopingWet_ms !== undefined) return false;
    const date = sight.dateOf(happening.at_ms);
    const hour_h = (happening.at_ms - sight.airAt(sight.plant.spot, date).from_ms) / HOUR_ms;
    // Lasting droop is the plant's own sign, not a person's idea of dry, so it counts beside another look that day.
    return hour_h < NOON_FROM_h || hour_h >= NOON_TO_h;
  }
  if (slice.lookDays[happening.by] === sight.dateOf(happening.at_ms)) return false;
  // Who waters on Saturdays writes "dry" on Saturdays: that is why they say they water, not what they saw. Their "not dry" is a look.
  return !(yes && (look === "dry" || look === "light") && isHabit(slice.pours, happening.by));
}

function withEye(
  slice: WaterSlice,
  look: LookKey,
  yes: boolean,
  happening: Happening,
  sight: Sight,
): WaterSlice {
  const meaning = LOOK_MEANINGS[look];
  const dry = meaning.opposite ? !yes : yes;
  if (look === "drooping") return believing(slice, withSign(slice.state, dry, meaning));
  const { by } = happening;
  return changed(believing(slice, withLook(slice.state, dry, meaning, lookerOf(slice, by))), {
    tendedBy: slice.tendedBy ?? by,
    lookDays: { ...slice.lookDays, [happening.by]: sight.dateOf(happening.at_ms) },
  });
}

function withDrooping(slice: WaterSlice, yes: boolean, happening: Happening): WaterSlice {
  if (!yes) return changed(slice, { droopingWet_ms: undefined, wilted_ms: undefined });
  const wet = 1 - chancePast(slice.state, WET_UP_TO_frac);
  // What hangs from wet roots goes on hanging from them until it stands or the pot is found light.
  return wet > SURELY_WET_frac || slice.droopingWet_ms !== undefined
    ? changed(slice, { droopingWet_ms: happening.at_ms })
    : changed(slice, { wilted_ms: happening.at_ms });
}

/** A pot found light or dry after all was not drowned; one found heavy or wet while it hangs is. */
function withRelief(slice: WaterSlice, data: Looked): WaterSlice {
  const opposite = LOOK_MEANINGS[data.look].opposite === true;
  const foundDry = opposite ? !data.yes : data.yes;
  if (slice.droopingWet_ms !== undefined && foundDry && data.look === "light") {
    return changed(slice, { droopingWet_ms: undefined, wilted_ms: slice.droopingWet_ms });
  }
  const hung = slice.wilted_ms;
  if (hung !== undefined && !foundDry && (data.look === "heavy" || data.look === "wet")) {
    return changed(slice, { droopingWet_ms: hung, wilted_ms: undefined });
  }
  return slice;
}
