import type { AirDay, Spell } from "../../places/ahead.ts";
import { indoorLeafLosses_g_m2, indoorSurfaceLosses_g_m2 } from "./drive-indoors.ts";
import { outdoorLosses } from "./drive-outdoors.ts";

/** What air and light of one day ask of leaves and of a wet surface, by spell, at factor one. */
export interface DayDrive {
  /** Per area of leaf. Outdoors per area of sunlit leaf. */
  readonly leaf: DayLoss;
  /** Per area of wet surface. */
  readonly surface: DayLoss;
}

/** Loss per area over one day. */
export interface DayLoss {
  /** Over the whole day. */
  readonly day_g_m2: number;
  /** From the start of the day to the end of each spell. */
  readonly upTo_g_m2: readonly number[];
  readonly day: AirDay;
}

// The house hands out the same AirDay for the same bench and date, so a bench computes its leaf model once a day. Leaves and
// surfaces are kept apart: pots of five widths under leaves of one width share them.
const known = new WeakMap<AirDay, { leaves: Map<number, DayLoss>; surfaces: Map<number, DayLoss> }>();

const LEAF_CLASS_m = 0.005;
const RIM_CLASS_cm = 2;

/**
 * Demand of one day at one spot for leaves and pots of about these widths (to ½ cm of leaf and 2 cm of pot: the
 * boundary layer changes by a few per cent within a class, less than anybody knows it).
 */
export function driveOf(
  day: AirDay,
  leafWidth_m: number,
  rimDiameter_cm: number,
  leafLight_frac: number,
): DayDrive {
  const { asked } = last;
  if (
    asked?.day === day &&
    asked.leafWidth_m === leafWidth_m &&
    asked.rimDiameter_cm === rimDiameter_cm &&
    asked.leafLight_frac === leafLight_frac
  )
    return last.drive as DayDrive;
  const drive = classDrive(day, leafWidth_m, rimDiameter_cm, leafLight_frac);
  last.asked = { day, leafWidth_m, rimDiameter_cm, leafLight_frac };
  last.drive = drive;
  return drive;
}

/** The last question: an entry cuts a day in two, and both parts ask the same. */
const last: {
  asked?: {
    readonly day: AirDay;
    readonly leafWidth_m: number;
    readonly rimDiameter_cm: number;
    readonly leafLight_frac: number;
  };
  drive?: DayDrive;
} = {};

function classDrive(
  day: AirDay,
  leafWidth_m: number,
  rimDiameter_cm: number,
  leafLight_frac: number,
): DayDrive {
  const leafClass = Math.max(1, Math.round(leafWidth_m / LEAF_CLASS_m));
  const rimClass = Math.max(1, Math.round(rimDiameter_cm / RIM_CLASS_cm));
  const lightKey = Math.round(leafLight_frac * 100) * 1000;
  let classes = known.get(day);
  if (!classes) {
    classes = { leaves: new Map(), surfaces: new Map() };
    known.set(day, classes);
  }
  const { leaves, surfaces } = classes;
  let leaf = leaves.get(lightKey + leafClass);
  if (!leaf) {
    leaf = leafLoss(day, leafClass * LEAF_CLASS_m, leafLight_frac);
    leaves.set(lightKey + leafClass, leaf);
  }
  let surface = surfaces.get(lightKey + rimClass);
  if (!surface) {
    surface = surfaceLoss(day, (rimClass * RIM_CLASS_cm) / 100, leafLight_frac);
    surfaces.set(lightKey + rimClass, surface);
  }
  return { leaf, surface };
}

const leafLoss = (day: AirDay, leafWidth_m: number, leafLight_frac: number): DayLoss =>
  summed(
    day,
    day.outdoors ? outdoorLosses(day).leaf_g_m2 : indoorLeafLosses_g_m2(day, leafWidth_m, leafLight_frac),
  );

const surfaceLoss = (day: AirDay, rimDiameter_m: number, leafLight_frac: number): DayLoss =>
  summed(
    day,
    day.outdoors
      ? outdoorLosses(day).surface_g_m2
      : indoorSurfaceLosses_g_m2(day, rimDiameter_m, leafLight_frac),
  );

function summed(day: AirDay, bySpell_g_m2: readonly number[]): DayLoss {
  const upTo_g_m2: number[] = [];
  let day_g_m2 = 0;
  for (const loss_g_m2 of bySpell_g_m2) {
    day_g_m2 += loss_g_m2;
    upTo_g_m2.push(day_g_m2);
  }
  return { day_g_m2, upTo_g_m2, day };
}

/** Loss per area between two instants of the day, g/m². */
export function lossBetween_g_m2(loss: DayLoss, from_ms: number, to_ms: number): number {
  if (from_ms <= loss.day.from_ms && to_ms >= loss.day.to_ms) return loss.day_g_m2;
  return upTo(loss, to_ms) - upTo(loss, from_ms);
}

function upTo({ upTo_g_m2, day }: DayLoss, at_ms: number): number {
  let { from_ms } = day;
  let before = 0;
  for (let spell = 0; spell < upTo_g_m2.length; spell++) {
    const end_ms = (day.spells[spell] as Spell).to_ms;
    const sum = upTo_g_m2[spell] as number;
    if (at_ms < end_ms) {
      return at_ms <= from_ms ? before : before + ((sum - before) * (at_ms - from_ms)) / (end_ms - from_ms);
    }
    from_ms = end_ms;
    before = sum;
  }
  return before;
}
