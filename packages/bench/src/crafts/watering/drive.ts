import type { AirDay } from "../../places/ahead.ts";
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
  readonly from_ms: number;
  readonly to_ms: number;
  /** Ends of the spells; the last is that of the day. */
  readonly ends_ms: readonly number[];
}

const LEAF_CLASS_m = 0.005;
const RIM_CLASS_cm = 2;

// The house hands out the same AirDay for the same bench and date, so a bench computes its leaf model once a day. Leaves and
// surfaces are kept apart: pots of five widths under leaves of one width share them.
const losses = new WeakMap<AirDay, { leaves: Map<number, DayLoss>; surfaces: Map<number, DayLoss> }>();

/** Days of one class of leaf and pot. */
interface DriveClass {
  readonly leafClass: number;
  readonly rimClass: number;
  readonly leafLight_frac: number;
  readonly days: WeakMap<AirDay, DayDrive>;
}
const classes = new Map<number, DriveClass>();

/** The last question: a history asks day after day for one plant. */
let lastWidth_m = Number.NaN;
let lastRim_cm = Number.NaN;
let lastLight_frac = Number.NaN;
let lastClass: DriveClass | undefined;
let lastDay: AirDay | undefined;
let lastDrive: DayDrive | undefined;

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
  if (
    lastClass !== undefined &&
    lastDrive !== undefined &&
    day === lastDay &&
    leafWidth_m === lastWidth_m &&
    rimDiameter_cm === lastRim_cm &&
    leafLight_frac === lastLight_frac
  )
    return lastDrive;
  if (
    lastClass === undefined ||
    leafWidth_m !== lastWidth_m ||
    rimDiameter_cm !== lastRim_cm ||
    leafLight_frac !== lastLight_frac
  ) {
    lastClass = classOf(leafWidth_m, rimDiameter_cm, leafLight_frac);
    lastWidth_m = leafWidth_m;
    lastRim_cm = rimDiameter_cm;
    lastLight_frac = leafLight_frac;
  }
  let drive = lastClass.days.get(day);
  if (!drive) {
    drive = dayDrive(day, lastClass);
    lastClass.days.set(day, drive);
  }
  lastDay = day;
  lastDrive = drive;
  return drive;
}

function classOf(leafWidth_m: number, rimDiameter_cm: number, leafLight_frac: number): DriveClass {
  const leafClass = Math.max(1, Math.round(leafWidth_m / LEAF_CLASS_m));
  const rimClass = Math.max(1, Math.round(rimDiameter_cm / RIM_CLASS_cm));
  const key = (Math.round(leafLight_frac * 100) * 1000 + leafClass) * 1000 + rimClass;
  let found = classes.get(key);
  if (!found) {
    found = { leafClass, rimClass, leafLight_frac, days: new WeakMap() };
    classes.set(key, found);
  }
  return found;
}

function dayDrive(day: AirDay, { leafClass, rimClass, leafLight_frac }: DriveClass): DayDrive {
  let known = losses.get(day);
  if (!known) {
    known = { leaves: new Map(), surfaces: new Map() };
    losses.set(day, known);
  }
  const { leaves, surfaces } = known;
  const lightKey = Math.round(leafLight_frac * 100) * 1000;
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
  // Ends beside the sums: a logged day has 24 spells, and every entry that cuts a day asks where it falls.
  const ends_ms = day.spells.map(({ to_ms }) => to_ms);
  return { day_g_m2, upTo_g_m2, from_ms: day.from_ms, to_ms: ends_ms[ends_ms.length - 1] ?? 0, ends_ms };
}

/** Loss per area between two instants of the day, g/m². */
export function lossBetween_g_m2(loss: DayLoss, from_ms: number, to_ms: number): number {
  if (from_ms <= loss.from_ms && to_ms >= loss.to_ms) return loss.day_g_m2;
  return upTo(loss, to_ms) - upTo(loss, from_ms);
}

function upTo({ upTo_g_m2, from_ms, ends_ms }: DayLoss, at_ms: number): number {
  if (at_ms <= from_ms) return 0;
  let spell = 0;
  while (spell < ends_ms.length && at_ms >= (ends_ms[spell] as number)) spell++;
  const before = spell === 0 ? 0 : (upTo_g_m2[spell - 1] as number);
  if (spell === ends_ms.length) return before;
  const start_ms = spell === 0 ? from_ms : (ends_ms[spell - 1] as number);
  return (
    before +
    (((upTo_g_m2[spell] as number) - before) * (at_ms - start_ms)) / ((ends_ms[spell] as number) - start_ms)
  );
}
