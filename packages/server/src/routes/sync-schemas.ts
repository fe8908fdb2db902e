import { isSha256, isUuid7, parseBucket, redactedSchema, SYNC_BATCH_n } from "@sillwood/bench/book";
import * as v from "valibot";

/** Bodies of the three calls of sync. */

const BUCKETS_MAX_n = 20_000;

const id = v.pipe(v.string(), v.check(isUuid7, "expected a UUIDv7"));
const hash = v.pipe(v.string(), v.check(isSha256, "expected a SHA-256 of 64 lower-case hexadecimal digits"));
const refSchema = v.strictObject({ id, hash });

const digest = v.strictObject({
  n: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1e9)),
  h: v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/, "expected 16 lower-case hexadecimal digits")),
});

const bucket = v.pipe(
  v.string(),
  v.check((name) => parseBucket(name) !== undefined, "expected a bucket as device/2026-11/all"),
);

export const summaryRequest = v.strictObject({
  summary: v.pipe(
    v.record(bucket, digest),
    v.check((buckets) => Object.keys(buckets).length <= BUCKETS_MAX_n, `at most ${BUCKETS_MAX_n} buckets`),
  ),
});

const atMost = (what: string) => `at most ${SYNC_BATCH_n} ${what} in one call`;

export const entriesRequest = v.strictObject({
  entries: v.pipe(v.array(v.unknown()), v.maxLength(SYNC_BATCH_n, atMost("entries"))),
  redacted: v.optional(
    v.pipe(v.array(redactedSchema), v.maxLength(SYNC_BATCH_n, atMost("redacted entries"))),
    [],
  ),
});

export const fetchRequest = v.strictObject({
  refs: v.pipe(v.array(refSchema), v.maxLength(SYNC_BATCH_n, atMost("names"))),
});

export const summaryAnswer = v.object({
  now_ms: v.number(),
  differing: v.record(v.string(), v.array(refSchema)),
});
export const entriesAnswer = v.object({
  stored: v.array(refSchema),
  refused: v.array(v.object({ id: v.string(), hash: v.string(), problems: v.array(v.unknown()) })),
  /** Waits for the grower, as everything from a device that was shut out. */
  aside: v.array(refSchema),
});
export const fetchAnswer = v.object({ entries: v.array(v.unknown()), redacted: v.array(redactedSchema) });
