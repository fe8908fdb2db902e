import type { Calendar } from "../places/time.ts";

/** A number as people and loggers type it: decimal point or comma, a unit behind it; null when it is none. */
export function cellNumber(cell: string): number | null {
  const text = cell.trim().replace(/\s/g, "").replace("−", "-");
  const match = /^(-?\d+(?:[.,]\d+)?(?:e-?\d+)?)[a-zA-Zµ%°/²]*$/.exec(text);
  if (!match) return null;
  const value = Number((match[1] as string).replace(",", "."));
  return Number.isFinite(value) ? value : null;
}

const ISO = /^(\d{4})-(\d\d)-(\d\d)(?:[T ](\d{1,2}):(\d\d)(?::(\d\d)(?:\.\d+)?)?)?(Z|[+-]\d\d:?\d\d)?$/;
const DOTTED = /^(\d{1,2})\.(\d{1,2})\.(\d{4})(?:[ ,]+(\d{1,2}):(\d\d)(?::(\d\d))?)?$/;

/**
 * An instant as files write it: ISO (with or without zone) or 30.4.2026 8:15. Without a zone it is read on the site's clock;
 * month and day in doubt (4/30 or 30/4) are refused, since a wrong guess would be silent.
 */
export function cellDate_ms(cell: string, calendar: Calendar): number | undefined {
  const text = cell.trim();
  const iso = ISO.exec(text);
  if (iso?.[7]) {
    const at_ms = Date.parse(text.replace(" ", "T").replace(/T(\d):/, "T0$1:"));
    return Number.isFinite(at_ms) ? at_ms : undefined;
  }
  const dotted = DOTTED.exec(text);
  const parts = iso
    ? { year: iso[1], month: iso[2], day: iso[3], hour: iso[4], minute: iso[5], second: iso[6] }
    : dotted
      ? {
          year: dotted[3],
          month: dotted[2],
          day: dotted[1],
          hour: dotted[4],
          minute: dotted[5],
          second: dotted[6],
        }
      : undefined;
  if (!parts) return undefined;
  const [month, day] = [Number(parts.month), Number(parts.day)];
  const date = `${parts.year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
  const real = new Date(`${date}T00:00:00Z`);
  if (Number.isNaN(real.getTime()) || real.toISOString().slice(0, 10) !== date) return undefined;
  const [hour, minute, second] = [
    Number(parts.hour ?? 12),
    Number(parts.minute ?? 0),
    Number(parts.second ?? 0),
  ];
  if (hour > 23 || minute > 59 || second > 59) return undefined;
  return calendar.hour_ms(date, hour) + (minute * 60 + second) * 1000;
}
