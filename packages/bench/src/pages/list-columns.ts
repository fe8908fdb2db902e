/** What a list can hold. */
export type ListKind = "plants" | "weighings" | "logger" | "weather";

export interface ListColumn {
  readonly key: string;
  readonly what: string;
  readonly needed: boolean;
  /** Words by which a column of a file is recognised. */
  readonly known: readonly string[];
}

const column = (key: string, what: string, needed: boolean, ...known: string[]): ListColumn => ({
  key,
  what,
  needed,
  known: [key.toLowerCase(), ...known],
});

/** Our words for the columns of each kind of list. */
export const listColumns: Readonly<Record<ListKind, readonly ListColumn[]>> = {
  plants: [
    column("number", "number on the label", false, "no", "no.", "nr", "nummer", "pot"),
    column("habit", "kind: thin, fat, lantern, tiny, unknown", false, "kind", "type", "art"),
    column("cultivar", "name of the cultivar", false, "variety", "sorte", "name"),
    column("top_cm", "pot width in cm", false, "width", "across", "diameter", "breite"),
    column("depth_cm", "pot depth in cm", false, "depth", "tiefe"),
    column("medium", "medium: spongy, bark, gritty, unknown", false, "soil", "substrat"),
    column("bench", "bench", false, "place", "shelf", "bank"),
    column("spot", "spot on the bench", false, "platz", "position"),
    column("sownOn", "sowing date", false, "sown", "gesät"),
    column("batch", "batch and how many: 12 x Spring sowing", false, "satz"),
  ],
  weighings: [
    column("number", "number on the label", true, "no", "no.", "nr", "nummer", "pot", "plant"),
    column("at", "when", true, "time", "date", "datum", "zeit", "when"),
    column("weight_g", "grams", true, "weight", "grams", "g", "gewicht"),
    column("state", "as found, just drained or at lasting wilt", false, "zustand"),
    column("volume_mL", "millilitres poured just after", false, "poured", "watered", "ml"),
  ],
  logger: [
    column("at", "when", true, "time", "date", "timestamp", "instant", "datum", "zeit"),
    column("air_C", "air temperature in °C", false, "temperature", "temp", "air", "celsius", "temperatur"),
    column("humidity_frac", "relative humidity, 0 to 1 or per cent", false, "humidity", "rh", "feuchte"),
    column("ppfd_umol_m2_s", "light in µmol/m²s", false, "light", "ppfd", "par", "licht"),
  ],
  weather: [
    column("at", "day", true, "date", "day", "datum", "tag"),
    column("tMax_C", "highest air temperature in °C", true, "tmax", "temp_max", "max", "maximum"),
    column("tMin_C", "lowest air temperature in °C", true, "tmin", "temp_min", "min", "minimum"),
    column("rain_mm", "rain in mm", false, "rain", "precipitation", "regen", "niederschlag"),
    column("wind_m_s", "mean wind in m/s", false, "wind"),
    column("humidity_frac", "relative humidity, 0 to 1 or per cent", false, "humidity", "rh", "feuchte"),
    column("radiation_MJ_m2_d", "sun in MJ/m² a day", false, "radiation", "solar", "strahlung"),
  ],
};
