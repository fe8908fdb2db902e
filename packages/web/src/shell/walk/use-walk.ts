import type { BenchRound, Round, SpotMark, Task } from "@sillwood/bench/round";
import { useEffect, useRef, useState } from "react";
import { nowMs } from "../../engine/clock.ts";
import { hasWork, workOf } from "../round/use-round.ts";
import { resumedAt, setWalk, stepped, useWalkPlace, type WalkPlace, walkPlace } from "./walk-place.ts";

export interface Walking {
  readonly place: WalkPlace;
  readonly bench: BenchRound;
  readonly spot: SpotMark | undefined;
  /** Tasks of this pot not yet written on this walk, in the order of hands. */
  readonly tasks: readonly Task[];
  readonly isOver: boolean;
  numberAt(at_n: number): string | undefined;
  markAt(at_n: number): SpotMark | undefined;
  step(by_n: number): void;
  goTo(at_n: number): void;
  /** The task was written: it is gone at once, also while the round is reckoned again. */
  noteDone(task: Task): void;
  noteUndone(task: Task): void;
}

const startAt = (bench: BenchRound, plant: string | null): WalkPlace => {
  const stops = bench.spots.filter(hasWork).map((spot) => spot.plant as string);
  const at_n = plant === null ? 0 : Math.max(0, stops.indexOf(plant));
  const now_ms = nowMs();
  return {
    bench: bench.bench,
    stops,
    at_n,
    startedAt_ms: now_ms,
    touchedAt_ms: now_ms,
    done_n: 0,
    closed: false,
  };
};

/** Jumps to a pot, also onto another bench; the walk goes on from there. */
export function walkTo(bench: BenchRound, plant: string): void {
  const kept = walkPlace();
  const at_n = kept?.bench === bench.bench ? kept.stops.indexOf(plant) : -1;
  setWalk(kept && at_n >= 0 ? { ...kept, at_n, touchedAt_ms: nowMs() } : startAt(bench, plant));
}

/** The walk of one bench: begun from the round as it is, then kept in its order whatever the round says later. */
export function useWalk(
  round: Round | undefined,
  benchId: string,
  plant: string | null,
): Walking | undefined {
  const kept = useWalkPlace();
  const [written, setWritten] = useState<ReadonlySet<string>>(new Set());
  const bench = round?.benches.find((one) => one.bench === benchId);
  const isMine = kept?.bench === benchId && !(kept.closed && kept.at_n < kept.stops.length);
  useEffect(() => {
    if (bench && !isMine) setWalk(startAt(bench, plant));
  }, [bench, isMine, plant]);
  const isFirst = useRef(true);
  useEffect(() => {
    if (!round || !isFirst.current) return;
    isFirst.current = false;
    // A walk that was left goes on where work waits; later the person alone decides where to stand.
    if (isMine && kept) setWalk({ ...kept, at_n: resumedAt(kept, workOf(round)) });
  }, [round, isMine, kept]);
  if (!bench || !kept || !isMine) return undefined;

  const markAt = (at_n: number) => bench.spots.find((spot) => spot.plant === kept.stops[at_n]);
  const spot = markAt(kept.at_n);
  const note = (task: Task, isDone: boolean) => {
    const next = new Set(written);
    if (isDone) next.add(task.id);
    else next.delete(task.id);
    setWritten(next);
  };
  return {
    place: kept,
    bench,
    spot,
    tasks: spot?.tasks.filter(({ id }) => !written.has(id)) ?? [],
    isOver: kept.at_n >= kept.stops.length,
    numberAt: (at_n) => markAt(at_n)?.number,
    markAt,
    step: (by_n) => setWalk(stepped(kept, by_n, nowMs())),
    goTo: (at_n) => setWalk({ ...kept, at_n, touchedAt_ms: nowMs() }),
    noteDone: (task) => note(task, true),
    noteUndone: (task) => note(task, false),
  };
}
