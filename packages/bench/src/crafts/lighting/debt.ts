import { isOut, lampHoursAt } from "../../places/light/windows.ts";
import type { World, WorldMember } from "../craft.ts";
import { mol_per_umol_h } from "./lamp-advice.ts";
import { dayCap, type NeedFigures } from "./need.ts";
import type { LightSlice } from "./slice.ts";
import { lightPageWords } from "./words-page.ts";
import { lightSaid } from "./workings.ts";

/** Less than so many days of need is no debt to speak of. @source our assumption */
const LEAST_DEBT_d = 1;

/** How far a plant is behind, since when the lamp is out, and what the lamp could make up within the cap. */
export function debtSaid(
  world: World<LightSlice>,
  { plant, slice }: WorldMember<LightSlice>,
  need: NeedFigures,
): string | undefined {
  if (slice.debt_mol_m2 < LEAST_DEBT_d * need.min_mol_m2_d) return undefined;
  const { places, now_ms, say, airAt, calendar } = world;
  const words = lightPageWords(say).debt;
  const bench = places.benchOfSpot.get(plant.spot ?? "") ?? "";
  const outages = (places.light.outages.get(bench) ?? []).filter(
    ({ data, at_ms }) => data.what === "lamps" && data.is === "out" && at_ms <= now_ms,
  );
  const out = isOut(places, bench, "lamps", now_ms) ? outages.at(-1) : undefined;
  const day = airAt(plant.spot, calendar.dateOf(now_ms));
  const cap = dayCap(world.speciesOf(plant), need.stage, world.assumed);
  const more_h = Math.max(0, cap.cap_h - (out ? 0 : lampHoursAt(places, bench, now_ms).hours_h));
  const most_mol_m2_d =
    day.daylight.window_mol_m2_d +
    day.daylight.lamp_mol_m2_d +
    mol_per_umol_h * day.daylight.lamp_umol_m2_s * more_h;
  const spare_mol_m2_d = most_mol_m2_d - need.min_mol_m2_d;
  const debt = lightSaid(slice.debt_mol_m2, say);
  return words.said(
    debt,
    out && say.day(out.at_ms, now_ms),
    spare_mol_m2_d > 0.1 && day.daylight.lamp_umol_m2_s > 0
      ? { hours: lightPageWords(say).hours(cap.cap_h), days: Math.ceil(slice.debt_mol_m2 / spare_mol_m2_d) }
      : undefined,
  );
}
