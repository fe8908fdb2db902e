import { relative } from "node:path";
import { root } from "./run-program.mjs";

/**
 * Counts the results that Vitest wrote. A file that could not be read at all, an error outside any test,
 * a run that wrote nothing and a run without a single test all count as failures.
 */
export function tally(results, code) {
  if (!results) return { passed: 0, failed: 1, skipped: 0, slowest: [] };
  const passed = results.numPassedTests;
  const skipped = results.numPendingTests + results.numTodoTests;
  const broken = results.testResults.filter(
    (file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"),
  );
  let failed = results.numFailedTests + broken.length;
  if (failed === 0 && (code !== 0 || passed === 0)) failed = 1;
  const slowest = results.testResults
    .map((file) => ({ name: relative(root, file.name), seconds: (file.endTime - file.startTime) / 1000 }))
    .sort((one, other) => other.seconds - one.seconds)
    .slice(0, 5)
    .map(({ name, seconds }) => `${name} ${seconds.toFixed(1)} s`);
  return { passed, failed, skipped, slowest };
}
