import { CORRECTED, correctionSchema } from "../book/correct.ts";
import type { EntryKind } from "../book/kinds.ts";
import { type DeviceClock, deviceClockSchema } from "../book/order.ts";
import { REDACTED, redactionSchema } from "../book/redact.ts";
import type { Say } from "../words/say.ts";
import { DEVICE_CLOCK } from "./records.ts";

const said = (say: Say, english: string, german: string) => (say.language === "de" ? german : english);
const own = { v: 1, readers: "all", subject: "book", onMin_n: 0, effects: () => [] } as const;

/** Kinds about entries themselves: settled before anything is folded, so they do nothing to plants. */
export const bookKinds = {
  corrected: {
    ...own,
    kind: CORRECTED,
    schema: correctionSchema,
    sentence: (data, say) =>
      "withdrawn" in data
        ? said(say, "withdrawn", "zurückgezogen")
        : "restored" in data
          ? said(say, "taken back in", "wiederhergestellt")
          : said(say, "put right", "berichtigt"),
    example: { withdrawn: true },
  } satisfies EntryKind<
    | { withdrawn: true }
    | { restored: true }
    | { data: unknown; v?: number | undefined; at_ms?: number | undefined; on?: string[] | undefined }
  >,
  redacted: {
    ...own,
    growerOnly: true,
    kind: REDACTED,
    schema: redactionSchema,
    sentence: (_data, say) => said(say, "an entry was made unreadable", "ein Eintrag wurde unlesbar gemacht"),
    example: { id: "01980000-0000-7000-8000-000000000001", hash: "0".repeat(64) },
  } satisfies EntryKind<{ id: string; hash: string }>,
  deviceClock: {
    ...own,
    kind: DEVICE_CLOCK,
    schema: deviceClockSchema,
    sentence: (data, say) => {
      const minutes = say.minutes(Math.abs(data.ahead_ms) / 60_000);
      const fast = data.ahead_ms > 0;
      return said(
        say,
        `this device's clock was ${minutes} ${fast ? "fast" : "slow"}; times are put right`,
        `die Uhr dieses Geräts ging ${minutes} ${fast ? "vor" : "nach"}; Zeiten sind berichtigt`,
      );
    },
    example: {
      device: "01980000-0000-7000-8000-000000000002",
      from_ms: 1_767_225_600_000,
      until_ms: 1_767_312_000_000,
      ahead_ms: 840_000,
    },
  } satisfies EntryKind<DeviceClock>,
} as const;
