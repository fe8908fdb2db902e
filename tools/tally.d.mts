interface TestFile {
  readonly name: string;
  readonly status: string;
  readonly startTime: number;
  readonly endTime: number;
  readonly assertionResults: readonly { readonly status: string }[];
}
export function tally(
  results:
    | {
        readonly numPassedTests: number;
        readonly numFailedTests: number;
        readonly numPendingTests: number;
        readonly numTodoTests: number;
        readonly testResults: readonly TestFile[];
      }
    | undefined,
  code: number,
): {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
  readonly slowest: readonly string[];
};
