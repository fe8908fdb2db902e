import { expect, it } from "vitest";
import { tally } from "./tally.mjs";

const file = (status: string, tests: readonly string[]) => ({
  name: "tools/a.test.ts",
  status,
  startTime: 0,
  endTime: 1500,
  assertionResults: tests.map((each) => ({ status: each })),
});
const results = {
  numPassedTests: 2,
  numFailedTests: 0,
  numPendingTests: 1,
  numTodoTests: 0,
  testResults: [file("passed", ["passed"])],
};

it("counts tests as they ended", () => {
  expect(tally(results, 0)).toMatchObject({
    passed: 2,
    failed: 0,
    skipped: 1,
    slowest: ["tools/a.test.ts 1.5 s"],
  });
  expect(tally({ ...results, numFailedTests: 3, testResults: [file("failed", ["failed"])] }, 1).failed).toBe(
    3,
  );
});

it("counts a file that could not be read, an error outside any test, an empty run and a missing result", () => {
  expect(tally({ ...results, testResults: [file("failed", [])] }, 1).failed).toBe(1);
  expect(tally(results, 1).failed).toBe(1);
  expect(tally({ ...results, numPassedTests: 0, testResults: [] }, 0).failed).toBe(1);
  expect(tally(undefined, 0).failed).toBe(1);
});
