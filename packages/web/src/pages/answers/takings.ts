import type { PlantId } from "@sillwood/bench/book";
import type { Desk } from "@sillwood/bench/pages";
import {
  mediumDepth_cm,
  mediumVolume_mL,
  rimArea_m2,
  rimDiameter_cm,
  USUAL_POT,
} from "@sillwood/bench/plants";
import { type ReadingName, readingKinds } from "@sillwood/bench/readings";
import type { Origin } from "@sillwood/bench/working";

/** A number of a plant, of its spot or of the site that a sum may take, with where it comes from. */
export interface Taking {
  readonly name: string;
  readonly what: string;
  readonly unit: string;
  readonly value: number;
  readonly origin: Origin;
  readonly from: string;
}

/** Everything of one plant that has a number and a unit: readings of all crafts, pot, measures, air, light and site. */
export function takingsOf(desk: Desk, plant: PlantId): readonly Taking[] {
  const view = desk.view(plant);
  if (!view) return [];
  const { ledger, now_ms } = desk;
  const { facts, state } = view;
  const sight = ledger.runner().sight(state);
  const readings = (Object.keys(readingKinds) as ReadingName[]).map((name): Taking => {
    const { value, origin, from } = sight.read(name);
    return {
      name,
      what: readingKinds[name].what,
      unit: readingKinds[name].unit,
      value,
      origin,
      from: from(desk.say),
    };
  });
  const day = ledger.airAt(facts.spot, ledger.calendar.dateOf(now_ms));
  const airs = day.spells.map(({ air_C }) => air_C);
  const span_ms = day.to_ms - day.from_ms;
  const mean = (of: (spell: (typeof day.spells)[number]) => number) =>
    day.spells.reduce((sum, spell) => sum + of(spell) * (spell.to_ms - spell.from_ms), 0) / span_ms;
  const { site } = ledger.house().places;
  const where = { origin: (site.assumed ? "assumed" : "measured") as Origin, from: site.name };
  const pot = facts.pot ?? USUAL_POT;
  const potted = { origin: (facts.pot ? "measured" : "assumed") as Origin, from: "pot" };
  const light = { origin: day.light.origin, from: day.light.from(desk.say) };
  const air = { origin: day.air.origin, from: day.air.from(desk.say) };
  const measured = (
    name: string,
    what: string,
    unit: string,
    one?: { readonly value: number; readonly at_ms: number },
  ): Taking[] =>
    one ? [{ name, what, unit, value: one.value, origin: "measured", from: desk.say.day(one.at_ms) }] : [];
  const all: readonly Taking[] = [
    ...readings,
    { name: "air_C", what: "air", unit: "°C", value: mean(({ air_C }) => air_C), ...air },
    { name: "airMax_C", what: "air at its warmest", unit: "°C", value: Math.max(...airs), ...air },
    { name: "airMin_C", what: "air at its coolest", unit: "°C", value: Math.min(...airs), ...air },
    {
      name: "humidity_frac",
      what: "humidity",
      unit: "",
      value: mean(({ humidity_frac }) => humidity_frac),
      ...air,
    },
    { name: "wind_m_s", what: "air speed", unit: "m/s", value: mean(({ wind_m_s }) => wind_m_s), ...air },
    { name: "dli_mol_m2_d", what: "light a day", unit: "mol/m²/d", value: day.dli_mol_m2_d, ...light },
    {
      name: "dayOfYear_d",
      what: "day of the year",
      unit: "d",
      value: day.dayOfYear_d,
      origin: "measured",
      from: day.date,
    },
    { name: "latitude_deg", what: "latitude", unit: "°", value: site.latitude_deg, ...where },
    { name: "longitude_deg", what: "longitude", unit: "°", value: site.longitude_deg, ...where },
    { name: "elevation_m", what: "elevation", unit: "m", value: site.elevation_m, ...where },
    { name: "rimDiameter_cm", what: "pot across", unit: "cm", value: rimDiameter_cm(pot), ...potted },
    { name: "rimArea_m2", what: "opening of the pot", unit: "m²", value: rimArea_m2(pot), ...potted },
    {
      name: "mediumDepth_cm",
      what: "depth of the medium",
      unit: "cm",
      value: mediumDepth_cm(pot),
      ...potted,
    },
    {
      name: "mediumVolume_mL",
      what: "volume of the medium",
      unit: "mL",
      value: mediumVolume_mL(pot),
      ...potted,
    },
    ...measured("height_cm", "height", "cm", facts.height_cm),
    ...measured("caliper_mm", "stem across", "mm", facts.caliper_mm),
    ...measured("leaves_n", "leaves", "", facts.leaves_n),
    ...measured("leafLength_cm", "a leaf, long", "cm", facts.leafLength_cm),
  ];
  return all.filter(({ value }) => Number.isFinite(value));
}
