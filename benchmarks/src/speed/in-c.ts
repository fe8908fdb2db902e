import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A C compiler that answers, if there is one. */
export const compilerHere = (): string | undefined =>
  ["cc", "gcc", "clang"].find((name) => spawnSync(name, ["--version"]).status === 0);

/**
 * Compiles the reference of that name with -O2 and runs it: NAME INPUT COUNT RUNS OUTPUT.
 *
 * @returns the milliseconds that it printed and the numbers that it wrote
 */
export function runInC(
  cc: string,
  name: string,
  columns: readonly Float64Array[],
  count_n: number,
  runs_n: number,
): { readonly ms: readonly number[]; readonly out: Float64Array } {
  const folder = mkdtempSync(join(tmpdir(), "sillwood-c-"));
  try {
    const [program, input, output] = [join(folder, name), join(folder, "in"), join(folder, "out")];
    execFileSync(cc, ["-O2", "-o", program, join(sources(), `${name}.c`), "-lm"]);
    writeFileSync(input, Buffer.concat(columns.map(bytesOf)));
    const said = execFileSync(program, [input, String(count_n), String(runs_n), output], {
      encoding: "utf8",
    });
    return {
      ms: said.trim().split(" ").map(Number),
      out: new Float64Array(new Uint8Array(readFileSync(output)).buffer),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The C files stand beside this one; the bundle of a measuring run is told where. */
const sources = (): string => process.env["SILLWOOD_BENCH_C"] ?? new URL(".", import.meta.url).pathname;

const bytesOf = (column: Float64Array) => Buffer.from(column.buffer, column.byteOffset, column.byteLength);

/** How far two columns of numbers lie apart at most. */
export function apart(a: Float64Array, b: Float64Array): number {
  let most = a.length === b.length ? 0 : Number.POSITIVE_INFINITY;
  for (let i = 0; i < a.length; i++) most = Math.max(most, Math.abs((a[i] as number) - (b[i] as number)));
  return most;
}
