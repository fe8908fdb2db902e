import { vapourPressureDeficit_kPa } from "@sillwood/science/air";
import {
  absorbedFromLamp_W_m2,
  absorbedFromSun_W_m2,
  characteristicDimension_m,
  leafTranspiration,
  mediumEvaporation,
  stomatalConductance_mol_m2_s,
} from "@sillwood/science/water";
import type { AirDay, Spell } from "../../places/ahead.ts";

const HOUR_ms = 3_600_000;
const HOURS_PER_d = 24;
/** Photons of daylight per joule of the light plants use, and that light's share of all short-wave light. @source air-water sheet section 0, from memory there */
const DAYLIGHT_umol_J = 4.57;
const PLANT_LIGHT_frac = 0.45;
const STOMATA_LOWER_frac = 0.8;

/** A dark spell and what it took by the hour. */
interface Dark {
  readonly spell: Spell;
  readonly elevation_m: number;
  readonly loss_g_m2_h: number;
}

/** The last dark spell by width of leaf or pot: a heated room has the same night for weeks, and two ends of it in each day. */
const darkLeaves = new Map<number, Dark>();
const darkSurfaces = new Map<number, Dark>();

/** Loss by the hour of a spell, worked out unless it is as dark as the last one and its air the same. */
function hourly_g_m2(
  known: Map<number, Dark>,
  width: number,
  spell: Spell,
  elevation_m: number,
  worked: () => number,
): number {
  if (spell.ppfd_umol_m2_s > 0) return Math.max(0, worked());
  const last = known.get(width);
  if (
    last?.elevation_m === elevation_m &&
    last.spell.air_C === spell.air_C &&
    last.spell.humidity_frac === spell.humidity_frac &&
    last.spell.wind_m_s === spell.wind_m_s &&
    last.spell.light === spell.light
  )
    return last.loss_g_m2_h;
  const loss_g_m2_h = Math.max(0, worked());
  known.set(width, { spell, elevation_m, loss_g_m2_h });
  return loss_g_m2_h;
}

/** Loss of leaves indoors by spell, g/m² of leaf: leaf energy balance with stomata. */
export function indoorLeafLosses_g_m2(day: AirDay, leafWidth_m: number, leafLight_frac: number): number[] {
  const elevation_m = between(day.elevation_m, -430, 6000);
  const dimension_m = characteristicDimension_m(between(100 * leafWidth_m, 0.2, 100));
  return day.spells.map((spell) => {
    const worked = () => leafLoss_g_m2_h(airOf(spell, leafLight_frac), elevation_m, dimension_m);
    return hourly_g_m2(darkLeaves, dimension_m, spell, elevation_m, worked) * hours_h(spell);
  });
}

function leafLoss_g_m2_h(air: ReturnType<typeof airOf>, elevation_m: number, dimension_m: number): number {
  const stomata = stomatalConductance_mol_m2_s({
    ppfd_umol_m2_s: air.ppfd_umol_m2_s,
    leafDeficit_kPa: air.deficit_kPa,
  });
  return leafTranspiration({
    air_C: air.air_C,
    humidity_frac: air.humidity_frac,
    absorbed_W_m2: air.absorbed_W_m2,
    airSpeed_m_s: air.airSpeed_m_s,
    elevation_m,
    dimension_m,
    lowerStomata_mol_m2_s: STOMATA_LOWER_frac * stomata,
    upperStomata_mol_m2_s: (1 - STOMATA_LOWER_frac) * stomata,
  }).transpiration_g_m2_h;
}

/** Loss of a wet surface indoors by spell, g/m² of surface: the same balance without stomata. */
export function indoorSurfaceLosses_g_m2(
  day: AirDay,
  rimDiameter_m: number,
  leafLight_frac: number,
): number[] {
  const elevation_m = between(day.elevation_m, -430, 6000);
  const potDiameter_cm = between(100 * rimDiameter_m, 1, 100);
  const area_m2 = (Math.PI / 4) * (potDiameter_cm / 100) ** 2;
  return day.spells.map((spell) => {
    const worked = () => {
      const { air_C, humidity_frac, absorbed_W_m2, airSpeed_m_s } = airOf(spell, leafLight_frac);
      const surface = mediumEvaporation({
        air_C,
        humidity_frac,
        absorbed_W_m2,
        airSpeed_m_s,
        elevation_m,
        potDiameter_cm,
      });
      return surface.evaporation_g_d / area_m2 / HOURS_PER_d;
    };
    return hourly_g_m2(darkSurfaces, potDiameter_cm, spell, elevation_m, worked) * hours_h(spell);
  });
}

const hours_h = (spell: Spell): number => Math.max(0, spell.to_ms - spell.from_ms) / HOUR_ms;

/** Air and light of a spell, held within what the leaf model takes: a stray reading must not stop a fold. */
function airOf(spell: Spell, leafLight_frac: number) {
  const air_C = between(spell.air_C, -5, 50);
  const humidity_frac = between(spell.humidity_frac, 0.02, 1);
  const ppfd_umol_m2_s = between(spell.ppfd_umol_m2_s * leafLight_frac, 0, 2500);
  const absorbed_W_m2 =
    spell.light === "lamp"
      ? absorbedFromLamp_W_m2({ ppfd_umol_m2_s })
      : absorbedFromSun_W_m2({
          solar_W_m2: Math.min(1400, ppfd_umol_m2_s / (DAYLIGHT_umol_J * PLANT_LIGHT_frac)),
        });
  return {
    air_C,
    humidity_frac,
    ppfd_umol_m2_s,
    absorbed_W_m2,
    airSpeed_m_s: between(spell.wind_m_s, 0.03, 20),
    deficit_kPa: between(vapourPressureDeficit_kPa({ air_C, humidity_frac }), 0, 10),
  };
}

function between(value: number, min: number, max: number): number {
  return value >= min ? Math.min(value, max) : min;
}
