import type { FourFacts } from "@sillwood/bench/pages";

type Habit = FourFacts["habit"];
type Medium = FourFacts["medium"];

/** What has been said so far; undefined is not asked yet, which is not the same as "not sure". */
export interface Said {
  readonly habit?: Habit;
  readonly medium?: Medium;
  readonly place?: "outdoors" | "unknown" | number;
  /** The drawn pot counts as said once it was touched; until then it is a default that shows as a guess. */
  readonly top_cm: number;
  readonly depth_cm: number;
  readonly potSaid: boolean;
  readonly potUnknown: boolean;
  readonly lifted?: "heavy" | "light";
}

/** A common small training pot. @source our assumption, the same that the engine takes when none is written */
export const NOTHING_SAID: Said = { top_cm: 12, depth_cm: 9, potSaid: false, potUnknown: false };

export const ACROSS_cm = { min: 4, max: 60 } as const;
export const DEEP_cm = { min: 3, max: 60 } as const;

/** Pots deeper than this many times their width are pipes. */
const PIPE_times = 3;
export const isPipe = ({ top_cm, depth_cm }: Said): boolean => depth_cm > top_cm * PIPE_times;

export function isAnything({ habit, medium, place, potSaid, potUnknown, lifted }: Said): boolean {
  return Boolean(habit ?? medium ?? place ?? lifted) || place === 0 || potSaid || potUnknown;
}

/** The four facts as the engine takes them: what nobody said is "unknown". */
export function fourFacts({ habit, medium, place, top_cm, depth_cm, potSaid, lifted }: Said): FourFacts {
  return {
    habit: habit ?? "unknown",
    medium: medium ?? "unknown",
    place: typeof place === "number" ? { window_deg: place } : (place ?? "unknown"),
    ...(potSaid ? { pot: { form: "round", top_cm, depth_cm } } : {}),
    ...(lifted ? { lifted } : {}),
  };
}
