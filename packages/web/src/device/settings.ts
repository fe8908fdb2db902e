import type { Language, UnitSystem } from "@sillwood/bench/words";

/** How this device shows the book. Never part of the book itself. */
export interface Settings {
  readonly language: Language;
  readonly units: UnitSystem;
  /** IANA name, or "device" for whatever zone the device stands in. */
  readonly zone: string;
  readonly hand: "right" | "left";
  readonly wet: boolean;
  readonly paper: "device" | "paper" | "dark" | "sun" | "night";
  readonly letterKeys: boolean;
  /** Minutes for the round; undefined is all of it. */
  readonly minutes?: number;
  /** The kitchen scale's smallest step. */
  readonly scaleStep_g: number;
  /** What one mark of the watering jug means. */
  readonly jugStep_mL: number;
  /** Lengthens every word for layout tests; set by hand only. */
  readonly stretched: boolean;
}

const KEY = "sillwood.settings";
const US_REGIONS = new Set(["US", "LR", "MM"]);

/** What the browser calls its language; some call it "C" or "en-US@posix", which no formatter understands. */
function browserLocale(): Intl.Locale {
  try {
    return new Intl.Locale(navigator.language || "en");
  } catch {
    return new Intl.Locale("en");
  }
}

function firstSettings(): Settings {
  const locale = browserLocale();
  return {
    language: locale.language === "de" ? "de" : "en",
    units: US_REGIONS.has(locale.maximize().region ?? "") ? "us" : "metric",
    zone: "device",
    hand: "right",
    wet: false,
    paper: "device",
    letterKeys: true,
    scaleStep_g: 1,
    jugStep_mL: 20,
    stretched: false,
  };
}

let current: Settings | undefined;
const listeners = new Set<() => void>();

export function settings(): Settings {
  if (!current) {
    current = firstSettings();
    try {
      const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "{}");
      if (kept !== null && typeof kept === "object") current = { ...current, ...kept };
    } catch {
      // Broken or forbidden storage: the guesses above serve.
    }
  }
  return current;
}

/** Changes act at once. Returns what was before, for Undo. */
export function changeSettings(
  change: { readonly [Key in keyof Settings]?: Settings[Key] | undefined },
): Settings {
  const before = settings();
  const next: Record<string, unknown> = { ...before, ...change };
  for (const key of Object.keys(next)) if (next[key] === undefined) delete next[key];
  current = next as unknown as Settings;
  try {
    localStorage.setItem(KEY, JSON.stringify(current));
  } catch {
    // Kept for this visit only; nothing of the book is concerned.
  }
  for (const listener of listeners) listener();
  return before;
}

export function onSettings(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export const zoneOf = ({ zone }: Settings): string =>
  zone === "device" ? Intl.DateTimeFormat().resolvedOptions().timeZone : zone;
