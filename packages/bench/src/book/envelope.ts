import * as v from "valibot";
import { EARLIEST_ms, LATEST_ms, parseClock } from "./clock.ts";
import { isSha256 } from "./hash.ts";
import { isUuid7, uuidTime_ms } from "./uuid.ts";

/** Limits on one entry (our assumption): generous for a notebook line, small enough that none can stop a device. */
export const LIMITS = {
  /** UTF-8 bytes of the RFC 8785 form. */
  entry_B: 64 * 1024,
  /** Objects and lists within one another, the entry itself counted. */
  depth_n: 16,
  on_n: 500,
  files_n: 20,
  corrects_n: 500,
} as const;

const shown = (input: unknown) =>
  input === undefined ? "missing" : (JSON.stringify(input)?.slice(0, 120) ?? typeof input);

const uuid = (what: string) => {
  const message = (issue: { readonly input: unknown }) =>
    `${what} is ${shown(issue.input)}; expected a UUIDv7 in lower case, as 0193a5c8-7b1e-7abc-8def-0123456789ab`;
  return v.pipe(v.string(message), v.check(isUuid7, message), v.metadata({ what, unit: "", format: "uuid" }));
};

const whole = (what: string, unit: string, min: number, max: number) => {
  const message = (issue: { readonly input: unknown }) =>
    `${what} is ${shown(issue.input)}${unit && ` ${unit}`}; expected a whole number from ${min} to ${max}${unit && ` ${unit}`}`;
  return v.pipe(
    v.number(message),
    v.integer(message),
    v.minValue(min, message),
    v.maxValue(max, message),
    v.metadata({ what, unit, min, max }),
  );
};

const pattern = (what: string, shape: RegExp, expected: string) => {
  const message = (issue: { readonly input: unknown }) =>
    `${what} is ${shown(issue.input)}; expected ${expected}`;
  return v.pipe(v.string(message), v.regex(shape, message));
};

const hash = (what: string) => {
  const message = (issue: { readonly input: unknown }) =>
    `${what} is ${shown(issue.input)}; expected a SHA-256 of 64 lower-case hexadecimal digits`;
  return v.pipe(v.string(message), v.check(isSha256, message), v.metadata({ what, unit: "" }));
};

const atMost = <Item extends v.GenericSchema>(what: string, item: Item, max_n: number) =>
  v.pipe(
    v.array(item, (issue) => `${what} is ${shown(issue.input)}; expected a list`),
    v.maxLength(max_n, (issue) => `${what} holds ${issue.input.length} items; at most ${max_n}`),
  );

const clockMessage = (issue: { readonly input: unknown }) =>
  `clock is ${shown(issue.input)}; expected a clock as 2026-11-25T13:45:38.123Z/0004, years 2000 to 2200`;

/** The envelope of an entry, without what its kind says about `data`. */
export const envelopeSchema = v.strictObject(
  {
    // The time in an id names its bucket, so it keeps to the same years as every other time.
    id: v.pipe(
      uuid("id"),
      v.check(
        (id) => !isUuid7(id) || uuidTime_ms(id) < LATEST_ms,
        "id was made after the year 2199; expected one made before 2200",
      ),
    ),
    device: uuid("device"),
    kind: pattern(
      "kind",
      /^[a-z][a-zA-Z]{0,39}\.[a-z][a-zA-Z]{0,39}$/,
      "two words joined by a dot, as plant.brought",
    ),
    v: whole("version of the kind", "", 1, 1000),
    at_ms: whole("time", "ms", EARLIEST_ms, LATEST_ms),
    zone: pattern(
      "zone",
      /^(?=.{1,64}$)[A-Za-z][A-Za-z0-9_+-]*(\/[A-Za-z0-9_+-]+){0,3}$/,
      "an IANA zone, as Europe/Berlin",
    ),
    atFrom: v.picklist(
      ["clock", "typed"],
      (issue) => `atFrom is ${shown(issue.input)}; expected "clock" or "typed"`,
    ),
    clock: v.pipe(
      v.string(clockMessage),
      v.check((text) => parseClock(text) !== undefined, clockMessage),
    ),
    by: uuid("by (the person)"),
    on: atMost(
      "on",
      pattern("an id in on", /^[\w.:-]{1,64}$/, "an id of 1 to 64 letters, digits and . : - _"),
      LIMITS.on_n,
    ),
    data: v.unknown(),
    files: v.optional(atMost("files", hash("a file"), LIMITS.files_n)),
    corrects: v.optional(atMost("corrects", uuid("a corrected entry"), LIMITS.corrects_n)),
  },
  (issue) => {
    const key = String(issue.path?.at(-1)?.key ?? "entry");
    return issue.path ? `${key} is missing` : `entry is ${shown(issue.input)}; expected an object`;
  },
);
