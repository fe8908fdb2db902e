import * as v from "valibot";
import { canonical } from "./canonical.ts";
import { CORRECTED } from "./correct.ts";
import type { ReadersOf } from "./digest.ts";
import type { Entry, Json, Problem, Sha256 } from "./entry.ts";
import { envelopeSchema, LIMITS } from "./envelope.ts";
import { sha256Hex, utf8Length_B } from "./hash.ts";
import { structureProblems, valueShown } from "./structure.ts";

/** What the envelope needs to know of a kind. */
export interface AcceptedKind {
  /** The version that this app writes. */
  readonly v: number;
  readonly readers: "all" | "grower";
  /** How many ids `on` must hold; none when left out. */
  readonly onMin_n?: number;
  /** All problems of data in the shape of version `v`; paths start with `data`. */
  check(data: Json): Problem[];
  /** Lifts data of version 1 <= from < v to version `v`. */
  upcast(from: number, data: Json): Json;
}

export interface AcceptedKinds {
  find(kind: string): AcceptedKind | undefined;
}

/** An entry that may go into the book: its canonical text and the hash of that text. */
export interface AcceptedEntry {
  readonly entry: Entry;
  readonly hash: Sha256;
  /** RFC 8785 form: what is stored, hashed, exported and sent. */
  readonly text: string;
}

export type Acceptance =
  | (AcceptedEntry & {
      readonly ok: true;
      /** `newer`: the kind or its version is not known here. Stored and relayed, not folded. */
      readonly state: "known" | "newer";
    })
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The one gate into the book: typed, sent, imported and fetched entries all pass it. Reports all problems at once.
 *
 * @param json a parsed JSON value
 */
export function accept(json: unknown, kinds: AcceptedKinds): Acceptance {
  const structure = structureProblems(json);
  if (structure.length > 0) return { ok: false, problems: structure };
  const text = canonical(json as Json);
  const size_B = utf8Length_B(text);
  if (size_B > LIMITS.entry_B) return { ok: false, problems: [tooLarge(size_B)] };

  const problems = envelopeProblems(json);
  const entry = json as unknown as Entry;
  const kind = typeof entry?.kind === "string" ? kinds.find(entry.kind) : undefined;
  problems.push(...correctsProblems(entry));
  let state: "known" | "newer" = "newer";
  if (kind && Number.isInteger(entry.v) && entry.v >= 1 && entry.v <= kind.v) {
    state = "known";
    problems.push(...onProblems(entry, kind), ...dataProblems(entry, kind));
  }
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, entry, hash: sha256Hex(text), text, state };
}

/** `accept` for a text; a text that is no JSON or far too long is a problem, never a throw. */
export function acceptText(text: string, kinds: AcceptedKinds): Acceptance {
  // White space may double the size of a pretty-printed entry; anything longer is not worth parsing.
  if (text.length > 4 * LIMITS.entry_B) return { ok: false, problems: [tooLarge(text.length)] };
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    return {
      ok: false,
      problems: [{ path: "", message: `not JSON: ${(error as Error).message.slice(0, 200)}` }],
    };
  }
  return accept(json, kinds);
}

/** Who may read each kind; unknown kinds are the grower's alone. */
export const readersFrom =
  (kinds: AcceptedKinds): ReadersOf =>
  (kind) =>
    kinds.find(kind)?.readers ?? "grower";

const tooLarge = (size_B: number): Problem => ({
  path: "",
  message: `the entry is ${size_B} bytes; at most ${LIMITS.entry_B} bytes. Put long texts and pictures into files`,
  value: size_B,
  limit: `<=${LIMITS.entry_B}`,
  unit: "B",
});

function envelopeProblems(json: unknown): Problem[] {
  const result = v.safeParse(envelopeSchema, json);
  if (result.success) return [];
  // The schema stops at the first unknown field; a person wants to see them all.
  const known = result.issues.filter((issue) => issue.expected !== "never");
  return [...unknownFields(json), ...known.map(problemOf)];
}

function unknownFields(json: unknown): Problem[] {
  if (json === null || typeof json !== "object" || Array.isArray(json)) return [];
  return Object.entries(json)
    .filter(([key]) => !Object.hasOwn(envelopeSchema.entries, key))
    .map(([key, value]) => ({ path: key, message: `${key} is no field of an entry`, ...valueShown(value) }));
}

function problemOf(issue: v.InferIssue<typeof envelopeSchema>): Problem {
  const path = (issue.path ?? []).map((item) => String(item.key)).join(".");
  return {
    path,
    message: issue.message,
    ...valueShown(issue.input),
    ...(issue.expected ? { limit: issue.expected } : {}),
    ...(path.endsWith("_ms") ? { unit: "ms" } : {}),
  };
}

function correctsProblems(entry: Entry): Problem[] {
  if (entry === null || typeof entry !== "object") return [];
  const { corrects } = entry;
  if (entry.kind !== CORRECTED)
    return corrects === undefined
      ? []
      : [{ path: "corrects", message: `only ${CORRECTED} corrects entries` }];
  if (!Array.isArray(corrects) || corrects.length === 0)
    return [{ path: "corrects", message: `a ${CORRECTED} names at least 1 entry`, limit: ">=1" }];
  return corrects.includes(entry.id)
    ? [{ path: "corrects", message: "an entry can't correct itself", value: entry.id }]
    : [];
}

function onProblems(entry: Entry, kind: AcceptedKind): Problem[] {
  const least_n = kind.onMin_n ?? 0;
  if (!Array.isArray(entry.on) || entry.on.length >= least_n) return [];
  return [
    {
      path: "on",
      message: `on holds ${entry.on.length} ids; ${entry.kind} is about at least ${least_n}`,
      value: entry.on.length,
      limit: `>=${least_n}`,
    },
  ];
}

function dataProblems(entry: Entry, kind: AcceptedKind): Problem[] {
  if (entry.data === undefined) return [];
  try {
    return kind.check(entry.v < kind.v ? kind.upcast(entry.v, entry.data) : entry.data).map(withUnit);
  } catch (error) {
    // An upcast meets data that its old version never wrote: that is the sender's fault, not ours.
    return [
      {
        path: "data",
        message: `does not fit version ${entry.v} of ${entry.kind}: ${(error as Error).message}`,
      },
    ];
  }
}

/** The unit of a number is the suffix of its name. */
function withUnit(problem: Problem): Problem {
  const unit = /_([A-Za-z0-9_]+)$/.exec(problem.path)?.[1];
  return problem.unit !== undefined || unit === undefined ? problem : { ...problem, unit };
}
