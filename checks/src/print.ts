import type { TableScore } from "./score.ts";

/** A field's tally, what failed and why, and the rows that rest on memory. */
export function printScore(score: TableScore): string {
  const lines = [
    `${score.field}: ${score.passed_n} of ${score.rows_n} rows reproduced, ${score.unbound_n} unbound; error in tolerances: mean ${score.meanError.toFixed(3)}, greatest ${score.maxError.toFixed(3)}`,
  ];
  for (const row of score.rows.filter((each) => !each.ok)) {
    lines.push(`  ${row.bound ? "DIFFERS" : "UNBOUND"} ${row.id} ${row.what}`, `    source: ${row.source}`);
    for (const key of row.keys.filter((each) => !each.ok)) lines.push(`    ${key.key}: ${key.said}`);
  }
  const remembered = score.rows.filter((row) => row.fromMemory).map((row) => row.id);
  if (remembered.length > 0) lines.push(`  from memory, not seen in print: ${remembered.join(", ")}`);
  return lines.join("\n");
}

/** Where the reproduced numbers come from: rows per source. */
export function printSources(score: TableScore): string {
  const counts = new Map<string, number>();
  for (const row of score.rows) {
    const work = row.source.split(/ - |\. /)[0] ?? row.source;
    counts.set(work, (counts.get(work) ?? 0) + 1);
  }
  const byCount = [...counts].toSorted(([, one], [, other]) => other - one);
  return byCount.map(([work, count]) => `  ${String(count).padStart(3)} ${work}`).join("\n");
}
