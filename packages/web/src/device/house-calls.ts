import type { Entry } from "@sillwood/bench/book";
import type { Role } from "@sillwood/bench/people";

/** What only the server knows: who was let in, who may be called what, what waits for the grower. Needs a line. */
export interface PairedDevice {
  readonly device: string;
  readonly person: string;
  readonly role: Role;
  readonly name: string;
  readonly seen_ms: number;
  readonly closed_ms?: number;
}
export interface Waiting {
  readonly id: string;
  readonly hash: string;
  readonly device: string;
  readonly why: "closed" | "for another" | "viewer" | "only the grower";
  readonly entry: Entry;
}
export interface Card {
  readonly name: string;
  readonly shown?: string;
}
/** A card as it is kept: more may stand on it than this screen shows, and stays. */
type WholeCard = Card & Readonly<Record<string, string>>;

export interface HouseCalls {
  devices(): Promise<{ readonly devices: readonly PairedDevice[]; readonly address?: string }>;
  waiting(): Promise<readonly Waiting[]>;
  settle(
    take: readonly Waiting[],
    drop: readonly Waiting[],
  ): Promise<{ readonly taken_n: number; readonly dropped_n: number }>;
  code(
    person: string,
    role: Role,
  ): Promise<{ readonly code: string; readonly until_ms: number; readonly address?: string }>;
  cards(): Promise<readonly ({ readonly id: string } & Partial<Card>)[]>;
  keepCard(person: string, card: Card): Promise<void>;
  eraseCard(person: string): Promise<void>;
  leave(): Promise<void>;
}

/** The server answered with a refusal. */
class CallRefused extends Error {
  override readonly name = "CallRefused";
  readonly status: number;
  constructor(status: number, message: string) {
    super(message);
    this.status = status;
  }
}

const PATIENCE_ms = 20_000;
const nameOf = ({ id, hash }: Waiting) => ({ id, hash });

export function houseCalls(base: string): HouseCalls {
  let book: Promise<string> | undefined;
  const call = async (method: string, address: string, body?: unknown): Promise<unknown> => {
    const response = await fetch(address, {
      method,
      signal: AbortSignal.timeout(PATIENCE_ms),
      ...(body === undefined
        ? {}
        : { headers: { "content-type": "application/json" }, body: JSON.stringify(body) }),
    });
    const text = await response.text();
    if (!response.ok) throw new CallRefused(response.status, text.slice(0, 300));
    return text === "" ? undefined : JSON.parse(text);
  };
  const at = async (path: string) => {
    book ??= call("GET", `${base}/books`).then(
      (listed) => (listed as { books: readonly [{ id: string }] }).books[0].id,
    );
    book.catch(() => {
      book = undefined;
    });
    return `${base}/books/${encodeURIComponent(await book)}/${path}`;
  };
  const ask = async <Answer>(method: string, path: string, body?: unknown) =>
    (await call(method, await at(path), body)) as Answer;
  return {
    devices: () => ask("GET", "devices"),
    waiting: async () => (await ask<{ entries: readonly Waiting[] }>("GET", "aside")).entries,
    settle: (take, drop) => ask("POST", "aside", { take: take.map(nameOf), drop: drop.map(nameOf) }),
    code: (person, role) => ask("POST", "pairing", { person, role }),
    cards: async () =>
      (await ask<{ people: readonly ({ id: string } & Partial<Card>)[] }>("GET", "people")).people,
    keepCard: async (person, card) => {
      const before = await ask<WholeCard>("GET", `people/${person}`).catch(() => undefined);
      const { shown: _old, ...rest } = before ?? {};
      await ask("PUT", `people/${person}`, { ...rest, ...card });
    },
    eraseCard: (person) => ask("DELETE", `people/${person}`),
    leave: async () => void (await call("POST", `${base}/leave`)),
  };
}
