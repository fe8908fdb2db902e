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
  | { readonly do: "keep file"; readonly sha256: string; readonly type: string; readonly bytes: ArrayBuffer }
  | { readonly do: "file"; readonly sha256: string }
  | { readonly do: "take out" }
  | { readonly do: "bring in"; readonly text: string; readonly keep: boolean; readonly now_ms: number }
  | { readonly do: "sync"; readonly now_ms: number };

export interface ReplyOf {
  open: Opened;
  ask: unknown;
  write: Written;
  be: Identity;
  "keep file": boolean;
  file: { readonly type: string; readonly bytes: ArrayBuffer } | null;
  "take out": TakenOut;
  "bring in": BroughtIn;
  sync: boolean;
}

export type ToEngine = Command & { readonly id: number };

/** The save mark: entries kept here that the server has not named, and whether it answers. */
export interface Mark {
  readonly away_n: number;
  readonly oldest_ms?: number;
  readonly server: "unknown" | "answers" | "silent";
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
