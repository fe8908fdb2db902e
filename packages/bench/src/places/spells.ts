import type { Spell } from "./ahead.ts";
import type { SkyDay, SpotLight } from "./light/daylight.ts";
import type { LoggedDay } from "./records.ts";

const MOL_PER_UMOL = 1e-6;
const SECONDS_PER_h = 3600;
const HOUR_ms = 3_600_000;

/** Air of a room by day and by night. */
export type Room = {
  readonly dayAir_C: number;
  readonly nightAir_C: number;
  readonly humidity_frac: number;
  readonly wind_m_s: number;
};

/** The span of a local day. */
export interface DaySpan {
  readonly from_ms: number;
  readonly to_ms: number;
}

export const spellOf = (
  part: Pick<Spell, "from_ms" | "to_ms" | "ppfd_umol_m2_s" | "light">,
  air_C: number,
  humidity_frac: number,
  wind_m_s: number,
): Spell => ({
  from_ms: part.from_ms,
  to_ms: part.to_ms,
  air_C,
  humidity_frac,
  wind_m_s,
  ppfd_umol_m2_s: part.ppfd_umol_m2_s,
  light: part.light,
});

export type LitPart = Pick<Spell, "from_ms" | "to_ms" | "ppfd_umol_m2_s" | "light">;

/** Light of the sky is taken to come evenly over so many hours around the middle of the day; polar days are held between 4 and 20. */
const skyHours_h = (light: SpotLight, sky: SkyDay) =>
  Math.max(0.5, Math.min(23, light.litHours_h ?? Math.max(4, Math.min(20, sky.sunUp_h))));

/** The day cut where window light or lamp begin or end, each part with its light. */
export function litParts(base: DaySpan, light: SpotLight, sky: SkyDay): LitPart[] {
  const { daylight, lampFrom_h } = light;
  const bySky_mol = daylight.window_mol_m2_d + daylight.sky_mol_m2_d;
  const middle_ms = (base.from_ms + base.to_ms) / 2;
  const hours_h = skyHours_h(light, sky);
  const sources: { from_ms: number; to_ms: number; ppfd: number; light: Spell["light"] }[] = [];
  if (bySky_mol > 0)
    sources.push({
      from_ms: middle_ms - (hours_h / 2) * HOUR_ms,
      to_ms: middle_ms + (hours_h / 2) * HOUR_ms,
      ppfd: bySky_mol / MOL_PER_UMOL / (hours_h * SECONDS_PER_h),
      light: daylight.sky_mol_m2_d > 0 ? "sun" : "window",
    });
  if (daylight.lamp_h > 0 && daylight.lamp_umol_m2_s > 0) {
    const on_ms = base.from_ms + lampFrom_h * HOUR_ms;
    const off_ms = on_ms + daylight.lamp_h * HOUR_ms;
    const lamp = { ppfd: daylight.lamp_umol_m2_s, light: "lamp" as const };
    sources.push({ from_ms: on_ms, to_ms: Math.min(off_ms, base.to_ms), ...lamp });
    // What burns past midnight did so last night too: the timer is the same every day.
    if (off_ms > base.to_ms)
      sources.push({ from_ms: base.from_ms, to_ms: base.from_ms + (off_ms - base.to_ms), ...lamp });
  }
  const cuts = [base.from_ms, base.to_ms];
  for (const { from_ms, to_ms } of sources) cuts.push(from_ms, to_ms);
  const edges = [...new Set(cuts)]
    .filter((at_ms) => at_ms >= base.from_ms && at_ms <= base.to_ms)
    .sort((a, b) => a - b);
  return edges.slice(1).map((to_ms, i) => {
    const from_ms = edges[i] as number;
    const on = sources.filter((one) => one.from_ms <= from_ms && one.to_ms >= to_ms);
    const strongest = on.reduce<(typeof on)[number] | undefined>(
      (best, one) => (best && best.ppfd >= one.ppfd ? best : one),
      undefined,
    );
    return {
      from_ms,
      to_ms,
      ppfd_umol_m2_s: on.reduce((sum, { ppfd }) => sum + ppfd, 0),
      light: strongest?.light ?? "none",
    };
  });
}

/** Hourly spells of a logged day; hours that the logger missed take the room as written. */
export function loggedSpells(
  base: DaySpan,
  logged: LoggedDay,
  parts: readonly LitPart[],
  room: Room,
): Spell[] {
  const byHour = new Map(logged.hours.map((hour) => [hour.from_ms, hour]));
  const spells: Spell[] = [];
  for (let from_ms = base.from_ms; from_ms < base.to_ms; from_ms += HOUR_ms) {
    const to_ms = Math.min(base.to_ms, from_ms + HOUR_ms);
    const hour = byHour.get(from_ms);
    let ppfd = 0;
    let lit_ms = 0;
    let light: Spell["light"] = "none";
    for (const part of parts) {
      const within_ms = Math.min(to_ms, part.to_ms) - Math.max(from_ms, part.from_ms);
      if (within_ms <= 0 || part.light === "none") continue;
      ppfd += (part.ppfd_umol_m2_s * within_ms) / (to_ms - from_ms);
      lit_ms += within_ms;
      light = part.light;
    }
    const ppfd_umol_m2_s = hour?.ppfd_umol_m2_s ?? ppfd;
    spells.push(
      spellOf(
        {
          from_ms,
          to_ms,
          ppfd_umol_m2_s,
          light: ppfd_umol_m2_s > 0 ? (light === "none" ? "window" : light) : "none",
        },
        hour?.air_C ?? (lit_ms > (to_ms - from_ms) / 2 ? room.dayAir_C : room.nightAir_C),
        Math.max(0.05, Math.min(1, hour?.humidity_frac ?? room.humidity_frac)),
        room.wind_m_s,
      ),
    );
  }
  return spells;
}
