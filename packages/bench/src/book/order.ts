import * as v from "valibot";
import type { Clock, DeviceId, EntryId } from "./entry.ts";
import { quantity } from "./fields.ts";
import { isUuid7 } from "./uuid.ts";

/**
 * The one order of the book: when it happened (wrong device clocks corrected), then the logical clock, then the id.
 * It is computed, never negotiated: every replica that holds the same entries sorts them alike.
 */

/** Data of a `device.clock` entry: what a sync measured about the clock of a device. */
export const deviceClockSchema = v.strictObject({
  device: v.pipe(v.string("device is not an id"), v.check(isUuid7, "device is not a UUIDv7")),
  /** Span of the device's own clock readings that are off, epoch milliseconds, both ends included. */
  from_ms: quantity("start of the span", "ms", 0, 2 ** 48),
  until_ms: quantity("end of the span", "ms", 0, 2 ** 48),
  /** How far the device's clock was ahead of the server's; negative when behind. At most 200 years. */
  ahead_ms: quantity("clock ahead by", "ms", -6_311_433_600_000, 6_311_433_600_000),
});
export type DeviceClock = v.InferOutput<typeof deviceClockSchema>;

/** A clock report with the place of its entry in the book; of two that overlap the later one counts. */
export interface ClockReport {
  readonly clock: Clock;
  readonly id: EntryId;
  readonly data: DeviceClock;
}

interface Timed {
  readonly device: DeviceId;
  readonly at_ms: number;
  readonly atFrom: "clock" | "typed";
}

/** What an entry sorts by. `at_ms` is corrected. */
export interface OrderKey {
  readonly at_ms: number;
  readonly clock: Clock;
  readonly id: EntryId;
}

/** A function that gives the corrected time of an entry [epoch ms]. Typed times are never shifted. */
export type CorrectedTime = (entry: Timed) => number;

/** Reads the clock reports of the book once; the result corrects any number of times. Independent of their order. */
export function correctedTime(reports: readonly ClockReport[]): CorrectedTime {
  const byDevice = new Map<string, DeviceClock[]>();
  for (const report of [...reports].sort(
    (a, b) => compareText(b.clock, a.clock) || compareText(b.id, a.id),
  )) {
    const spans = byDevice.get(report.data.device) ?? [];
    spans.push(report.data);
    byDevice.set(report.data.device, spans);
  }
  return (entry) => {
    if (entry.atFrom === "typed") return entry.at_ms;
    // Spans are read against the time as the device wrote it, so that one report never moves entries under another.
    const span = byDevice
      .get(entry.device)
      ?.find(({ from_ms, until_ms }) => entry.at_ms >= from_ms && entry.at_ms <= until_ms);
    return span ? entry.at_ms - span.ahead_ms : entry.at_ms;
  };
}

/** Negative when `a` comes first. Total: 0 only for the same id. */
export function compareOrder(a: OrderKey, b: OrderKey): number {
  return a.at_ms - b.at_ms || compareText(a.clock, b.clock) || compareText(a.id, b.id);
}

/** Compares by (clock, id): who spoke last, whatever they spoke of. */
export function compareClock(
  a: { readonly clock: Clock; readonly id: EntryId },
  b: { readonly clock: Clock; readonly id: EntryId },
): number {
  return compareText(a.clock, b.clock) || compareText(a.id, b.id);
}

const compareText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
