import type { Draft } from "@sillwood/bench/round";
import { settings, zoneOf } from "../device/settings.ts";
import { nowMs } from "./clock.ts";
import type { Command, FromEngine, Identity, Mark, Opened, ReplyOf, Written } from "./messages.ts";
import type { AnswerOf, ArgsOf, Asking, QuestionName } from "./questions.ts";

/** What the screens see of the engine: questions, writes and three things to listen to. */
export interface Engine {
  ask<Name extends QuestionName>(name: Name, args: ArgsOf<Name>): Promise<AnswerOf<Name>>;
  write(drafts: readonly Draft[]): Promise<Written>;
  be(who: { person?: string; role: "grower" | "helper"; card?: string }): Promise<Identity>;
  /** Lets this device in by a code from the grower's screen. */
  pair(code: string, name: string): Promise<ReplyOf["pair"]>;
  keepFile(sha256: string, type: string, bytes: ArrayBuffer): Promise<boolean>;
  file(sha256: string): Promise<ReplyOf["file"]>;
  /** Takes the book off this device. What the server has not got is gone. */
  forget(): Promise<true>;
  takeOut(): Promise<ReplyOf["take out"]>;
  /** Looks at the lines of a book; with `keep` what is new in them becomes part of this one. */
  bringIn(text: string, keep: boolean): Promise<ReplyOf["bring in"]>;
  sync(): Promise<boolean>;
  readonly opened: Promise<Opened>;
  /** Who holds the device now; nobody before the first start. */
  who(): Identity | null;
  revision(): number;
  mark(): Mark;
  reading(): { readonly read_n: number; readonly of_n: number } | undefined;
  listen(listener: () => void): () => void;
}

/** The part of a Worker that the client needs; tests bring their own. */
export interface Port {
  postMessage(message: unknown, transfer?: Transferable[]): void;
  onmessage: ((event: { readonly data: unknown }) => void) | null;
}

export const asking = (): Asking => {
  const { language, units } = settings();
  return { now_ms: nowMs(), language, units, zone: zoneOf(settings()) };
};

export function engineOver(port: Port, base: string): Engine {
  const waiting = new Map<number, { resolve(value: unknown): void; reject(error: Error): void }>();
  const listeners = new Set<() => void>();
  let id = 0;
  let revision = 0;
  let mark: Mark = { away_n: 0, server: "unknown" };
  let reading: { read_n: number; of_n: number } | undefined;
  const tell = () => {
    for (const listener of listeners) listener();
  };
  port.onmessage = ({ data }) => {
    const message = data as FromEngine;
    if ("news" in message) {
      if (message.news === "reading") reading = { read_n: message.read_n, of_n: message.of_n };
      else if (message.news === "changed") revision = message.revision;
      else mark = message.mark;
      tell();
      return;
    }
    const asked = waiting.get(message.id);
    waiting.delete(message.id);
    if ("failed" in message) asked?.reject(new Error(message.failed));
    else asked?.resolve(message.reply);
  };
  const send = <Name extends Command["do"]>(
    command: Extract<Command, { do: Name }>,
    transfer: Transferable[] = [],
  ): Promise<ReplyOf[Name]> =>
    new Promise((resolve, reject) => {
      id += 1;
      waiting.set(id, { resolve: resolve as (value: unknown) => void, reject });
      port.postMessage({ ...command, id }, transfer);
    });
  let who: Identity | null = null;
  const opened = send<"open">({ do: "open", asking: asking(), base }).finally(() => {
    reading = undefined;
    tell();
  });
  opened.then(
    ({ identity }) => {
      who ??= identity;
    },
    // Whoever waits for the book is told; here it only stays unknown who holds the device.
    () => undefined,
  );
  return {
    opened,
    who: () => who,
    ask: async <Name extends QuestionName>(name: Name, args: ArgsOf<Name>) =>
      (await send<"ask">({ do: "ask", name, args, asking: asking() })) as AnswerOf<Name>,
    write: (drafts) => send<"write">({ do: "write", drafts, asking: asking() }),
    be: async ({ person, role, card }) => {
      who = await send<"be">({ do: "be", person, role, asking: asking(), ...(card ? { card } : {}) });
      return who;
    },
    pair: async (code, name) => {
      const answer = await send<"pair">({ do: "pair", code, name, asking: asking() });
      if ("identity" in answer) who = answer.identity;
      return answer;
    },
    keepFile: (sha256, type, bytes) => send<"keep file">({ do: "keep file", sha256, type, bytes }),
    file: (sha256) => send<"file">({ do: "file", sha256 }),
    forget: () => send<"forget">({ do: "forget" }),
    takeOut: () => send<"take out">({ do: "take out" }),
    bringIn: (text, keep) => send<"bring in">({ do: "bring in", text, keep, now_ms: nowMs() }),
    sync: () => send<"sync">({ do: "sync", now_ms: nowMs() }),
    revision: () => revision,
    mark: () => mark,
    reading: () => reading,
    listen: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
