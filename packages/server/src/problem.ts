import { randomUUID } from "node:crypto";
import type { Problem } from "@sillwood/bench/book";
import { StoreError, type StoreFault } from "@sillwood/store/errors";
import * as v from "valibot";

/** A refusal with its HTTP status; becomes `application/problem+json` (RFC 9457). */
export class HttpProblem extends Error {
  override readonly name = "HttpProblem";
  readonly status: number;
  readonly problems: readonly Problem[];
  readonly headers: Readonly<Record<string, string>>;
  constructor(
    status: number,
    title: string,
    problems: readonly Problem[] = [],
    headers: Readonly<Record<string, string>> = {},
  ) {
    super(title);
    this.status = status;
    this.problems = problems;
    this.headers = headers;
  }
}

/** What every error answer looks like. `problems` names field, value, limit and unit of each thing that is wrong. */
export const problemSchema = v.object({
  title: v.string(),
  status: v.number(),
  problems: v.array(
    v.object({
      path: v.string(),
      message: v.string(),
      value: v.optional(v.unknown()),
      limit: v.optional(v.string()),
      unit: v.optional(v.string()),
    }),
  ),
  /** Names this one error in the server's log. */
  incident: v.optional(v.string()),
});

const FAULTS: Partial<Record<StoreFault, number>> = {
  full: 507,
  busy: 503,
  "in use": 503,
  "taken over": 503,
  closed: 503,
  "read-only": 503,
  "other content": 422,
  "too large": 413,
};

/** Any error as an answer. Unknown ones get a number here and their stack in the log, never in the answer. */
export function problemResponse(error: unknown, log: (line: string) => void): Response {
  // A body that broke its limit while a store was reading it: the refusal is ours, not the store's failure.
  if (error instanceof StoreError && error.cause instanceof HttpProblem)
    return problemResponse(error.cause, log);
  if (error instanceof HttpProblem)
    return answer(error.status, error.message, error.problems, undefined, error.headers);
  if (error instanceof StoreError) {
    const status = FAULTS[error.fault];
    if (status !== undefined) return answer(status, error.message, []);
  }
  const incident = randomUUID();
  log(`incident ${incident}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
  return answer(500, "something went wrong here; the log tells more under this number", [], incident);
}

function answer(
  status: number,
  title: string,
  problems: readonly Problem[],
  incident?: string,
  more: Readonly<Record<string, string>> = {},
): Response {
  const body = JSON.stringify({ title, status, problems, ...(incident ? { incident } : {}) });
  const headers: Record<string, string> = {
    "content-type": "application/problem+json",
    "cache-control": "no-store",
    ...more,
  };
  if (status === 503) headers["retry-after"] = "5";
  return new Response(body, { status, headers });
}
