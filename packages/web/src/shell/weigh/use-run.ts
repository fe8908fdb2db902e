import type { WeighingRow } from "@sillwood/bench/round";
import { useEffect, useRef, useState } from "react";
import { useAsk, useEngine } from "../../engine/use-ask.ts";

export interface Run {
  /** In walking order, as they were when the run began; their bands follow the book. */
  readonly rows: readonly WeighingRow[];
  readonly all_n: number;
  readonly onlyFew: boolean;
  chooseFew(few: boolean): void;
  /** Ranges of the days before the run, by plant, in days. */
  readonly before: Readonly<Record<string, number>>;
}

/** The pots of a weighing run. Their order is fixed at the start; a late answer never moves a pot under a finger. */
export function useRun(
  bench: string,
  pot: string | null,
): { readonly run: Run | undefined; readonly error?: Error } {
  const engine = useEngine();
  const [onlyFew, chooseFew] = useState(false);
  const { value: now, error } = useAsk("weighing", { bench });
  const { value: few } = useAsk("weighing", { bench, onlyFew: true });
  const order = useRef<readonly string[]>(undefined);
  const fewOrder = useRef<readonly string[]>(undefined);
  const [before, setBefore] = useState<Readonly<Record<string, number>>>({});
  if (now && !order.current) order.current = now.map(({ plant }) => plant);
  if (few && !fewOrder.current) fewOrder.current = few.map(({ plant }) => plant);
  const plants = order.current;
  useEffect(() => {
    if (plants) void engine.ask("ranges", { plants }).then(setBefore);
  }, [engine, plants]);
  if (!now || !plants) return { run: undefined, ...(error ? { error } : {}) };
  const chosen = pot ? [pot] : onlyFew ? (fewOrder.current ?? plants) : plants;
  const rows = chosen.flatMap((plant) => now.find((row) => row.plant === plant) ?? []);
  return { run: { rows, all_n: plants.length, onlyFew, chooseFew, before } };
}
