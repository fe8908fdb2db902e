import type { Chance } from "../nursery/chance.ts";
import type { Json, Line } from "./line.ts";
import { idWriter } from "./uuid7.ts";

/** What a person does with a device: one entry, still without id and clock. */
export interface Written {
  readonly kind: string;
  readonly on: readonly string[];
  readonly data: Json;
  readonly at_ms: number;
  readonly by: string;
  readonly device: string;
  /** When it was typed, where that was later than it happened. */
  readonly typed_ms?: number;
  readonly files?: readonly string[];
  readonly corrects?: readonly string[];
}

export interface BookWriter {
  /** Appends an entry and returns its id. Entries must come in the order in which they were typed. */
  write(written: Written): string;
  /** An id for something other than an entry (plant, person, device). */
  name(at_ms: number): string;
  readonly lines: readonly Line[];
}

/**
 * Writes a book whose devices have seen each other's entries: ids of version 7 and a hybrid logical clock as
 * `2026-11-25T13:45:38.123Z/0004`.
 */
export function bookWriter(zone: string, chance: Chance): BookWriter {
  const lines: Line[] = [];
  const ids = new Map<string, (at_ms: number) => string>();
  const names = idWriter(chance.under("names"));
  let clock_ms = 0;
  let ticks = 0;

  function tick(now_ms: number): string {
    if (now_ms > clock_ms) {
      clock_ms = now_ms;
      ticks = 0;
    } else ticks++;
    if (ticks > 0xffff) throw new RangeError("the clock cannot tell so many entries apart");
    return `${new Date(clock_ms).toISOString()}/${ticks.toString(16).padStart(4, "0")}`;
  }

  return {
    lines,
    name: names,
    write(written) {
      const now_ms = written.typed_ms ?? written.at_ms;
      if (now_ms < written.at_ms) throw new RangeError(`${written.kind} was typed before it happened`);
      let nextId = ids.get(written.device);
      if (!nextId) {
        nextId = idWriter(chance.under(`device ${written.device}`));
        ids.set(written.device, nextId);
      }
      const id = nextId(now_ms);
      lines.push({
        id,
        device: written.device,
        kind: written.kind,
        v: 1,
        at_ms: written.at_ms,
        zone,
        atFrom: written.typed_ms === undefined ? "clock" : "typed",
        clock: tick(now_ms),
        by: written.by,
        on: written.on,
        data: written.data,
        ...(written.files ? { files: written.files } : {}),
        ...(written.corrects ? { corrects: written.corrects } : {}),
      });
      return id;
    },
  };
}
