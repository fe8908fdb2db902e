import { randomBytes, randomInt } from "node:crypto";
import type { Role } from "@sillwood/bench/people";
import { type SlowHash, slowHash } from "./slow-hash.ts";

/** For whom a code was made. */
export interface Pairing {
  readonly person: string;
  readonly role: Role;
}

/** Codes that a grower's screen shows and a phone types in. Kept hashed, in memory: a restart voids them. */
export interface Pairings {
  /** @param again a code that was used up without effect, to stand open once more */
  make(
    pairing: Pairing,
    now_ms: number,
    again?: string,
  ): Promise<{ readonly code: string; readonly until_ms: number }>;
  /** Uses a code up; undefined when it is none, was used or has run out. */
  redeem(code: string, now_ms: number): Promise<Pairing | undefined>;
  readonly open_n: number;
  close(): Promise<void>;
}

/** Eight digits fit a number pad; they live ten minutes and guesses are counted. @source our assumption */
const DIGITS_n = 8;
const LIVES_ms = 10 * 60_000;
const OPEN_MAX_n = 20;

export const isCode = (text: string): boolean => /^\d{8}$/.test(text);

export function pairings(slow: SlowHash = slowHash(), digits = randomDigits): Pairings {
  // One salt for all codes of one run: a guess costs one slow hash, whichever code it means.
  const salt = randomBytes(16);
  const open = new Map<string, Pairing & { readonly until_ms: number }>();
  const forgetOld = (now_ms: number) => {
    for (const [hash, { until_ms }] of open) if (until_ms <= now_ms) open.delete(hash);
    while (open.size > OPEN_MAX_n) open.delete(open.keys().next().value as string);
  };
  return {
    async make(pairing, now_ms, again) {
      const code = again ?? digits();
      const until_ms = now_ms + LIVES_ms;
      open.set(await slow.hash(code, salt), { ...pairing, until_ms });
      forgetOld(now_ms);
      return { code, until_ms };
    },
    async redeem(code, now_ms) {
      const hash = await slow.hash(code, salt);
      forgetOld(now_ms);
      const found = open.get(hash);
      // Of two that come with one code at one moment, the first has it: nothing is awaited in between.
      open.delete(hash);
      return found && { person: found.person, role: found.role };
    },
    get open_n() {
      return open.size;
    },
    close: () => slow.close(),
  };
}

const randomDigits = () => String(randomInt(10 ** DIGITS_n)).padStart(DIGITS_n, "0");
