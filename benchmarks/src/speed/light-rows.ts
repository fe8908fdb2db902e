import { inAProcess } from "./in-a-process.ts";
import type { Rows } from "./rows.ts";

const RUNS_n = 30;
const NO_C = "no C compiler here to stand beside";

/** A year of light at one spot behind its window, and the window seen from there, beside the same sums in C. */
export async function lightRows(rows: Rows, seed: number): Promise<void> {
  const { view_ms, year_ms, level_mol_m2_d, c } = await inAProcess("window", RUNS_n, seed);
  rows.add(
    "a spot-year of window light: one pane of 1.2 by 1.4 m, 9 crown points, 365 days at steps of 10 minutes",
    year_ms,
    "ms",
    c
      ? `C -O2 ${c.year_ms.toFixed(2)} ms, so ${(c.year_ms / year_ms).toFixed(2)} of its speed; results at most ${c.apart_mol_m2_d.toExponential(0)} mol m⁻² d⁻¹ apart; level leaf ${level_mol_m2_d.toFixed(2)} mol m⁻² d⁻¹ over the year`
      : NO_C,
    "under 100 ms",
    year_ms < 100 && (c === undefined || c.apart_mol_m2_d < 1e-9),
  );
  rows.add(
    "what that spot sees through its pane (paneView), worked out once",
    view_ms,
    "ms",
    c
      ? `C -O2 ${c.view_ms.toFixed(2)} ms, so ${(c.view_ms / view_ms).toFixed(2)} of its speed; factors at most ${c.viewApart_frac.toExponential(0)} apart`
      : NO_C,
    "printed",
    c === undefined || c.viewApart_frac < 1e-9,
  );
}
