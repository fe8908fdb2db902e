import { FIRST_CLOCK, seeClock, tickClock } from "./clock.ts";
import type { Clock, DeviceId, Entry, EntryId, Json, PersonId } from "./entry.ts";
import type { KindRegistry } from "./kinds.ts";
import { type Random, uuidMaker } from "./uuid.ts";

/** What a key or a command writes, before it has an envelope. */
export interface Written {
  readonly kind: string;
  readonly on: readonly string[];
  readonly data: Json;
  /** When it happened, if somebody typed it; now when left out. */
  readonly at_ms?: number;
  readonly files?: readonly string[];
  readonly corrects?: readonly EntryId[];
}

export interface Pen {
  write(written: Written): Entry;
  /** Moves the pen's clock past entries seen from elsewhere. */
  see(clock: Clock, now_ms: number): void;
  readonly clock: Clock;
}

export interface PenOptions {
  readonly device: DeviceId;
  readonly by: PersonId;
  readonly zone: string;
  readonly kinds: KindRegistry;
  now_ms(): number;
  readonly random: Random;
  /** The last clock this device has written or seen. */
  readonly clock?: Clock;
}

const VERSION_OF_HOUSE_KINDS = 1;

/** Writes entries for one person on one device: ids and clocks never repeat or go back. */
export function penOf({
  device,
  by,
  zone,
  kinds,
  now_ms,
  random,
  clock: last = FIRST_CLOCK,
}: PenOptions): Pen {
  const nextId = uuidMaker();
  let clock = last;
  return {
    write({ kind, on, data, at_ms, files, corrects }) {
      const now = now_ms();
      clock = tickClock(clock, now);
      return {
        id: nextId(now, random) as EntryId,
        device,
        kind,
        v: kinds.find(kind)?.v ?? VERSION_OF_HOUSE_KINDS,
        at_ms: at_ms ?? now,
        zone,
        atFrom: at_ms === undefined ? "clock" : "typed",
        clock,
        by,
        on,
        data,
        ...(files?.length ? { files } : {}),
        ...(corrects?.length ? { corrects } : {}),
      };
    },
    see(other, now) {
      clock = seeClock(clock, other, now).clock;
    },
    get clock() {
      return clock;
    },
  };
}
