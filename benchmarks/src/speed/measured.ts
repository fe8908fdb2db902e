/** Milliseconds of a task, best of several: other work of the machine can only make it slower. */
export function best_ms(runs_n: number, task: () => void): number {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs_n; run++) {
    const start_ms = performance.now();
    task();
    best = Math.min(best, performance.now() - start_ms);
  }
  return best;
}

export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;
