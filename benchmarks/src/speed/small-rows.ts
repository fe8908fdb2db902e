import { inAProcess } from "./in-a-process.ts";
import type { Rows } from "./rows.ts";

/** Reference ET beside the same formula in C. */
export async function etRows(rows: Rows, seed: number, say: (line: string) => void): Promise<void> {
  const et = await inAProcess("et", 200_000, 25, seed);
  if (!et.c) {
    say("  there is no C compiler here: daily reference ET has nothing to stand beside and is left out");
    return;
  }
  const agree = et.c.apart_mm_d < 1e-9 && et.apart_mm_d < 1e-9;
  const apart = `results at most ${et.c.apart_mm_d.toExponential(0)} mm/d apart`;
  const c = `C -O2 ${et.c.everyDay_ns.toFixed(1)} ns a day`;
  rows.add(
    "daily reference ET, kernel over arrays, speed as a share of C",
    et.c.everyDay_ns / et.kernel_ns,
    "of C",
    `ours ${et.kernel_ns.toFixed(1)} ns, ${c}; with a calendar day's sun kept in C too (${et.c.kept_ns.toFixed(1)} ns) ${(et.c.kept_ns / et.kernel_ns).toFixed(2)} of C; ${apart}`,
    "at least 0.5",
    et.c.everyDay_ns >= 0.5 * et.kernel_ns && agree,
  );
  rows.add(
    "daily reference ET, validated public function, speed as a share of C",
    et.c.everyDay_ns / et.scalar_ns,
    "of C",
    `ours ${et.scalar_ns.toFixed(1)} ns, ${c}; ${apart}`,
    "at least 0.3",
    et.c.everyDay_ns >= 0.3 * et.scalar_ns && agree,
  );
}

/** One durable entry beside a bare insert. */
export async function appendRows(rows: Rows, seed: number): Promise<void> {
  const append = await inAProcess("append", 60, seed);
  rows.add(
    "one durable append, as a multiple of a raw prepared insert",
    append.ratio,
    "times",
    `ours ${append.ours_ms.toFixed(3)} ms, raw ${append.raw_ms.toFixed(3)} ms, both synced at each commit; ${append.kept_n} entries kept`,
    "at most 1.5",
    append.ratio <= 1.5,
  );
}
