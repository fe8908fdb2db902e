import type { BaseIssue, BaseSchema } from "valibot";
import * as v from "valibot";
import type { Say } from "../words/say.ts";
import type { Effect } from "./effects.ts";
import type { Entry, Json, Problem } from "./entry.ts";

/** What the ids in `on` of an entry may name. */
export type Subject = "plant" | "batch" | "bench" | "supply" | "cultivar" | "person" | "device" | "book";

/**
 * A kind of entry: its shape with units and ranges, who may read it, the sentence in which the book shows it and
 * what it does. The house has kinds of its own and each craft brings its own; the core never switches on a kind.
 */
export interface EntryKind<Data = unknown> {
  readonly kind: string;
  readonly v: number;
  readonly readers: "all" | "grower";
  /** Whether only the grower's entries act; a helper's is kept as a request. */
  readonly growerOnly?: true;
  readonly subject: Subject;
  /** How many ids `on` must hold. */
  readonly onMin_n: number;
  readonly schema: BaseSchema<unknown, Data, BaseIssue<unknown>>;
  sentence(data: Data, say: Say, entry: Entry): string;
  effects(data: Data, entry: Entry): readonly Effect[];
  /** Lifts an older shape; called only with 1 <= v < this.v. */
  upcast?(v: number, data: Json): Json;
  readonly example: Data;
}

/** A kind whose data type has been forgotten, as the registry holds it. */
// biome-ignore lint/suspicious/noExplicitAny: a list of kinds of different data has no other element type
export type AnyEntryKind = EntryKind<any>;

export interface KindRegistry {
  readonly all: readonly AnyEntryKind[];
  find(kind: string): AnyEntryKind | undefined;
}

/** Makes the registry; throws when two kinds share a name. */
export function kindRegistry(kinds: readonly AnyEntryKind[]): KindRegistry {
  const byName = new Map<string, AnyEntryKind>();
  for (const kind of kinds) {
    if (byName.has(kind.kind)) throw new Error(`two entry kinds are called ${kind.kind}`);
    byName.set(kind.kind, kind);
  }
  return { all: kinds, find: (name) => byName.get(name) };
}

/** All problems of the data of an entry of this kind; empty when it fits. */
export function checkData(kind: AnyEntryKind, data: unknown): Problem[] {
  const result = v.safeParse(kind.schema, data);
  if (result.success) return [];
  return result.issues.map((issue) => ({
    path: ["data", ...(issue.path ?? []).map((item) => String(item.key))].join("."),
    message: worded(issue, kind.kind),
    ...(isJson(issue.input) ? { value: issue.input } : {}),
  }));
}

/** Fields word their own refusals; what the shape around them refuses is worded here. */
function worded(issue: BaseIssue<unknown>, kind: string): string {
  if (!issue.message.startsWith("Invalid ")) return issue.message;
  const name = (issue.path ?? []).map((item) => String(item.key)).join(".") || "data";
  if (issue.type === "strict_object" && issue.expected === "never") return `${kind} has no ${name}`;
  if (issue.input === undefined) return `${name} is missing`;
  const shown = isJson(issue.input)
    ? JSON.stringify(issue.input)
    : Array.isArray(issue.input)
      ? "a list"
      : typeof issue.input;
  return `${name} is ${shown}; expected ${issue.expected === "Object" ? "an object" : issue.expected}`;
}

const isJson = (input: unknown): input is null | boolean | number | string =>
  input === null ||
  typeof input === "boolean" ||
  typeof input === "string" ||
  (typeof input === "number" && Number.isFinite(input));
