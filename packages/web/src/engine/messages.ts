import type { EntryId, Problem } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";
import type { BroughtIn } from "./bring-in.ts";
import type { Asking, QuestionName } from "./questions.ts";
import type { TakenOut } from "./take-out.ts";

/** Who holds this device. The name is the person's card: it stays here and never enters the book. */
export interface Identity {
  readonly device: string;
  readonly person: string;
  readonly role: "grower" | "helper" | "viewer";
  readonly card?: string;
  /** Whether this device came in by a code: then it is this person's, and the server knows it by its key. */
  readonly paired?: true;
}

/** What has become of a write. */
export type Written =
  | { readonly kept: readonly EntryId[]; readonly said: readonly string[] }
  | { readonly refused: readonly Problem[] }
  /** The disk would not take it. The text is what to copy onto paper. */
  | { readonly lost: string };

export interface Opened {
  readonly identity: Identity | null;
  readonly entries_n: number;
}

export type Command =
  | { readonly do: "open"; readonly asking: Asking; readonly base: string }
  | { readonly do: "ask"; readonly name: QuestionName; readonly args: unknown; readonly asking: Asking }
  | { readonly do: "write"; readonly drafts: readonly Draft[]; readonly asking: Asking }
  | {
      readonly do: "be";
      readonly person: string | undefined;
      readonly role: "grower" | "helper";
      readonly card?: string;
      readonly asking: Asking;
    }
  | { readonly do: "pair"; readonly code: string; readonly name: string; readonly asking: Asking }
  | { readonly do: "keep file"; readonly sha256: string; readonly type: string; readonly bytes: ArrayBuffer }
  | { readonly do: "file"; readonly sha256: string }
  | { readonly do: "forget" }
  | { readonly do: "take out" }
  | { readonly do: "bring in"; readonly text: string; readonly keep: boolean; readonly now_ms: number }
  | { readonly do: "sync"; readonly now_ms: number };

export interface ReplyOf {
  open: Opened;
  ask: unknown;
  write: Written;
  be: Identity;
  /** Who the device is now, or the number with which the server refused. */
  pair: { readonly identity: Identity } | { readonly refused: number };
  "keep file": boolean;
  file: { readonly type: string; readonly bytes: ArrayBuffer } | null;
  forget: true;
  "take out": TakenOut;
  "bring in": BroughtIn;
  sync: boolean;
}

export type ToEngine = Command & { readonly id: number };

/** Whether the server answers; "unpaired" and "closed" are answers too: this device must be let in, or was shut out. */
export type ServerState = "unknown" | "answers" | "silent" | "unpaired" | "closed";

/** The save mark: entries kept here that the server has not named, and whether it answers. */
export interface Mark {
  readonly away_n: number;
  readonly oldest_ms?: number;
  readonly server: ServerState;
  /** Of those away, how many wait on the server for the grower's word. */
  readonly aside_n?: number;
  /** When it answered last, on this device's clock; kept through a restart. */
  readonly answered_ms?: number;
  /** How far this device's clock is ahead, when that is worth telling. */
  readonly ahead_ms?: number;
}

export type FromEngine =
  | { readonly id: number; readonly reply: unknown }
  | { readonly id: number; readonly failed: string }
  | { readonly news: "reading"; readonly read_n: number; readonly of_n: number }
  | { readonly news: "changed"; readonly revision: number }
  | { readonly news: "mark"; readonly mark: Mark };
