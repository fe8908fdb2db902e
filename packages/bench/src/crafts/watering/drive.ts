import type { AirDay } from "../../places/ahead.ts";
import { indoorLosses } from "./drive-indoors.ts";
import { outdoorLosses } from "./drive-outdoors.ts";

/** What air and light of one day ask of leaves and of a wet surface, by spell, at factor one. */
export interface DayDrive {
  /** Loss per area of leaf over the whole day, g/m². Outdoors per area of sunlit leaf. */
  readonly leaf_g_m2: number;
  /** Loss per area of wet surface over the whole day, g/m². */
  readonly surface_g_m2: number;
  /** Loss per area from the start of the day to the end of each spell. */
  readonly leafUpTo_g_m2: readonly number[];
  readonly surfaceUpTo_g_m2: readonly number[];
  readonly ends_ms: readonly number[];
  readonly from_ms: number;
  readonly to_ms: number;
}

/** Losses of one spell, g/m² over the spell. */
export interface SpellLosses {
  readonly leaf_g_m2: readonly number[];
  readonly surface_g_m2: readonly number[];
}

// The house hands out the same AirDay for the same spot and date, so a bench computes its leaf model once a day.
const known = new WeakMap<AirDay, Map<number, DayDrive>>();

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
  const leafClass = Math.max(1, Math.round(leafWidth_m / LEAF_CLASS_m));
  const rimClass = Math.max(1, Math.round(rimDiameter_cm / RIM_CLASS_cm));
  const key = (Math.round(leafLight_frac * 100) * 1000 + leafClass) * 1000 + rimClass;
  let classes = known.get(day);
  if (!classes) {
    classes = new Map();
    known.set(day, classes);
  }
  let drive = classes.get(key);
  if (!drive) {
    drive = dayDrive(day, leafClass * LEAF_CLASS_m, (rimClass * RIM_CLASS_cm) / 100, leafLight_frac);
    classes.set(key, drive);
  }
  return drive;
}

/** The same without the cache, for days that are only imagined (a cooler room, a dimmer place). */
function dayDrive(day: AirDay, leafWidth_m: number, rimDiameter_m: number, leafLight_frac: number): DayDrive {
  const losses = day.outdoors
    ? outdoorLosses(day)
    : indoorLosses(day, leafWidth_m, rimDiameter_m, leafLight_frac);
  const leafUpTo_g_m2: number[] = [];
  const surfaceUpTo_g_m2: number[] = [];
  let leaf_g_m2 = 0;
  let surface_g_m2 = 0;
  losses.leaf_g_m2.forEach((loss, spell) => {
    leaf_g_m2 += loss;
    surface_g_m2 += losses.surface_g_m2[spell] as number;
    leafUpTo_g_m2.push(leaf_g_m2);
    surfaceUpTo_g_m2.push(surface_g_m2);
  });
  return {
    leaf_g_m2,
    surface_g_m2,
    leafUpTo_g_m2,
    surfaceUpTo_g_m2,
    ends_ms: day.spells.map((spell) => spell.to_ms),
    from_ms: day.from_ms,
    to_ms: day.to_ms,
  };
}

/** Loss per leaf area between two instants of the day, g/m². */
export function leafBetween_g_m2(drive: DayDrive, from_ms: number, to_ms: number): number {
  if (from_ms <= drive.from_ms && to_ms >= drive.to_ms) return drive.leaf_g_m2;
  return upTo(drive, drive.leafUpTo_g_m2, to_ms) - upTo(drive, drive.leafUpTo_g_m2, from_ms);
}

/** Loss per wet surface area between two instants of the day, g/m². */
export function surfaceBetween_g_m2(drive: DayDrive, from_ms: number, to_ms: number): number {
  if (from_ms <= drive.from_ms && to_ms >= drive.to_ms) return drive.surface_g_m2;
  return upTo(drive, drive.surfaceUpTo_g_m2, to_ms) - upTo(drive, drive.surfaceUpTo_g_m2, from_ms);
}

function upTo(drive: DayDrive, sums: readonly number[], at_ms: number): number {
  let from_ms = drive.from_ms;
  let before = 0;
  for (let spell = 0; spell < sums.length; spell++) {
    const end_ms = drive.ends_ms[spell] as number;
    const sum = sums[spell] as number;
    if (at_ms < end_ms) {
      return at_ms <= from_ms ? before : before + ((sum - before) * (at_ms - from_ms)) / (end_ms - from_ms);
    }
    from_ms = end_ms;
    before = sum;
  }
  return before;
}
