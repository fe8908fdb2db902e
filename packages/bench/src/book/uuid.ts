/**
 * UUID version 7 (RFC 9562): 48 bits of epoch milliseconds, then a 12-bit counter, then 62 random bits.
 * Ids of one device sort in the order in which they were made, also within a millisecond and when its clock goes back.
 */

const UUID7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const COUNTER_MAX = 0xfff;
const TIME_MAX_ms = 2 ** 48 - 1;

/** Draws a number from 0 (included) to 1 (excluded). Devices pass one fed by `crypto`, tests a seeded one. */
export type Random = () => number;

/** Time outside what an id can hold. */
export class IdError extends Error {
  override readonly name = "IdError";
}

/** Whether a text is a UUIDv7 in lower case with hyphens. */
export const isUuid7 = (text: string): boolean => UUID7.test(text);

/**
 * Makes a maker of ids. One maker per device: it remembers the last time and counter.
 *
 * @returns (now_ms, random) -> id; now_ms is epoch milliseconds, 0 to 2^48 - 1
 * @throws IdError (from the maker) when now_ms is out of range
 */
export function uuidMaker(): (now_ms: number, random: Random) => string {
  let last_ms = -1;
  let counter = 0;
  return (now_ms, random) => {
    if (!Number.isFinite(now_ms) || now_ms < 0 || now_ms > TIME_MAX_ms)
      throw new IdError(`time is ${now_ms} ms; expected 0 to ${TIME_MAX_ms} ms`);
    if (now_ms > last_ms) {
      last_ms = Math.floor(now_ms);
      // The top bit starts as 0 so that at least 2,048 ids fit into any millisecond before time has to be borrowed.
      counter = Math.floor(random() * 0x800);
    } else if (counter < COUNTER_MAX) counter++;
    else {
      last_ms++;
      counter = Math.floor(random() * 0x800);
    }
    return idText(last_ms, counter, random);
  };
}

function idText(at_ms: number, counter: number, random: Random): string {
  const time = at_ms.toString(16).padStart(12, "0");
  const variant = (0x8000 | Math.floor(random() * 0x4000)).toString(16);
  const tail = hex(random, 6) + hex(random, 6);
  return `${time.slice(0, 8)}-${time.slice(8)}-7${counter.toString(16).padStart(3, "0")}-${variant}-${tail}`;
}

const hex = (random: Random, digits_n: number) =>
  Math.floor(random() * 16 ** digits_n)
    .toString(16)
    .padStart(digits_n, "0");

/** When an id was made, epoch milliseconds. */
export const uuidTime_ms = (id: string): number => Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16);

/** The UTC month in which an id was made, as `2026-11`; part of the name of its bucket. */
export const uuidMonth = (id: string): string => new Date(uuidTime_ms(id)).toISOString().slice(0, 7);
