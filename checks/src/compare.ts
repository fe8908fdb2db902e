import type { CheckValue, Tolerance } from "./row.ts";

export type Comparison = {
  readonly ok: boolean;
  /** distance from the printed value in tolerances; undefined where nothing numeric was compared */
  readonly error?: number;
  readonly said: string;
};

const forKey = (tolerance: Tolerance | undefined, key: string): number | null | undefined =>
  typeof tolerance === "object" && tolerance !== null ? tolerance[key] : tolerance;

export type Allowed = {
  readonly abs: number | undefined;
  readonly rel: number | undefined;
  readonly unit: string;
};

/** The tolerance of one key of a row. */
export function allowedFor(
  row: {
    readonly tolerance_abs?: Tolerance;
    readonly tolerance_rel?: Tolerance;
    readonly tolerance_unit?: string;
  },
  key: string,
): Allowed {
  return {
    abs: forKey(row.tolerance_abs, key) ?? undefined,
    rel: forKey(row.tolerance_rel, key) ?? undefined,
    unit: row.tolerance_unit ?? "",
  };
}

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const daysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** Days since some common start, of "2026-07-23" or "9-Apr" (365-day year). */
function dayNumber(text: string): number | undefined {
  const short = /^(\d{1,2})-([A-Za-z]{3})$/.exec(text);
  if (short) {
    const before = daysBefore[months.indexOf((short[2] ?? "").toLowerCase())];
    return before === undefined ? undefined : before + Number(short[1]);
  }
  const millis = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : Number.NaN;
  return Number.isNaN(millis) ? undefined : millis / 86_400_000;
}

/** Seconds since midnight, of "07:08:12" or "07:08". */
function secondNumber(text: string): number | undefined {
  const clock = /^(\d{1,2}):(\d{2})(?::(\d{2}(?:\.\d+)?))?$/.exec(text);
  return clock ? Number(clock[1]) * 3600 + Number(clock[2]) * 60 + Number(clock[3] ?? 0) : undefined;
}

const scaleOf: Readonly<Record<string, (text: string) => number | undefined>> = {
  d: dayNumber,
  s: secondNumber,
  min: (text) => {
    const seconds = secondNumber(text);
    return seconds === undefined ? undefined : seconds / 60;
  },
};

const shown = (value: unknown): string =>
  typeof value === "number" ? String(Number(value.toPrecision(8))) : JSON.stringify(value);

function compareNumbers(ours: number, printed: number, allowed: Allowed): Comparison {
  const distance = Math.abs(ours - printed);
  const { abs, rel } = allowed;
  if (abs === undefined && rel === undefined)
    return { ok: Number.isFinite(ours), said: `${shown(ours)} (no tolerance)` };
  const tolerance = Math.max(abs ?? 0, (rel ?? 0) * Math.abs(printed));
  // Printed decimals are not exact in binary: a hair beyond the tolerance is on it.
  const ok = distance <= tolerance + 1e-9 * Math.max(tolerance, Math.abs(printed) * 1e-3, 1e-6);
  const said = `${shown(ours)}, printed ${shown(printed)}, tolerance ${shown(tolerance)}`;
  return tolerance > 0 ? { ok, error: distance / tolerance, said } : { ok, said };
}

/** Compare our value with the printed one, list by list; text is equal or, with a unit of time, near enough. */
export function compare(ours: unknown, printed: CheckValue, allowed: Allowed): Comparison {
  if (ours === undefined || ours === null) {
    return { ok: printed === null && ours === null, said: `nothing computed, printed ${shown(printed)}` };
  }
  if (typeof printed === "number") {
    if (typeof ours !== "number") return { ok: false, said: `${shown(ours)}, printed ${shown(printed)}` };
    return compareNumbers(ours, printed, allowed);
  }
  if (typeof printed === "string" && typeof ours === "string" && (allowed.abs ?? 0) > 0) {
    const read = scaleOf[allowed.unit];
    const [a, b] = [read?.(ours), read?.(printed)];
    if (a !== undefined && b !== undefined) return compareNumbers(a, b, allowed);
  }
  if (Array.isArray(printed)) {
    if (!Array.isArray(ours) || ours.length !== printed.length) {
      return { ok: false, said: `${shown(ours)}, printed ${shown(printed)}` };
    }
    const parts = printed.map((each, i) => compare(ours[i], each as CheckValue, allowed));
    const errors = parts.flatMap((part) => (part.error === undefined ? [] : [part.error]));
    const worst = errors.length > 0 ? { error: Math.max(...errors) } : {};
    return { ok: parts.every((part) => part.ok), ...worst, said: parts.map((part) => part.said).join("; ") };
  }
  return {
    ok: JSON.stringify(ours) === JSON.stringify(printed),
    said: `${shown(ours)}, printed ${shown(printed)}`,
  };
}
