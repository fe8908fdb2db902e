import type { BenchRound, Round, SpotMark } from "@sillwood/bench/round";
import { useSyncExternalStore } from "react";
import { useAsk } from "../../engine/use-ask.ts";
import type { StripMark } from "../../parts/spot-strip.tsx";
import { useSettings } from "../say.ts";

/** From which end the benches are walked: a choice of today, not of the device. */
let fromOtherEnd = false;
const listeners = new Set<() => void>();

export function turnRound(): void {
  fromOtherEnd = !fromOtherEnd;
  for (const listener of listeners) listener();
}

function useOtherEnd(): boolean {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => fromOtherEnd,
  );
}

/** Today's round in the minutes there are. All screens of a walk ask the same question, so it is reckoned once. */
export function useRound() {
  const { minutes } = useSettings();
  const otherEnd = useOtherEnd();
  return useAsk("round", {
    ...(minutes === undefined ? {} : { minutes }),
    ...(otherEnd ? { otherEnd } : {}),
  });
}

export const hasWork = (spot: SpotMark): boolean => spot.plant !== undefined && spot.tasks.length > 0;

/** Whether a plant of the round still has work today. */
export const workOf = (round: Round) => {
  const busy = new Set(
    round.benches.flatMap(({ spots }) => spots.filter(hasWork).map(({ plant }) => plant as string)),
  );
  return (plant: string) => busy.has(plant);
};

export const benchesWithWork = (round: Round): readonly BenchRound[] =>
  round.benches.filter(({ spots }) => spots.some(hasWork));

export const potsWithWork_n = ({ spots }: BenchRound): number => spots.filter(hasWork).length;

/** One mark a spot; a spot without a pot is a bare line. */
export function stripMarks({ spots }: BenchRound, here?: string): StripMark[] {
  return spots.map((spot, place_n) => ({
    key: `${spot.spot} ${spot.plant ?? place_n}`,
    state: hasWork(spot) ? "due" : spot.plant === undefined ? "empty" : "nothing",
    here: here !== undefined && spot.plant === here,
  }));
}
