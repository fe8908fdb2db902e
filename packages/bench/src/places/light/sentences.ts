import type { Say } from "../../words/say.ts";
import type {
  LampData,
  LampHoursData,
  OutageData,
  PairData,
  StandsData,
  TariffData,
  UnderLampData,
  WindowData,
} from "./kinds.ts";

interface LightSentences {
  window(data: WindowData): string;
  stands(data: StandsData): string;
  lamp(data: LampData): string;
  lampHours(data: LampHoursData): string;
  outage(data: OutageData): string;
  pair(data: PairData): string;
  underLamp(data: UnderLampData): string;
  tariff(data: TariffData): string;
}

export const lightSentences = (say: Say): LightSentences =>
  say.language === "de" ? german(say) : english(say);

/** 17.5 as 17:30. */
export const clock = (hour_h: number): string => {
  const minutes_min = Math.round((hour_h % 24) * 60) % 1440;
  return `${String(Math.floor(minutes_min / 60)).padStart(2, "0")}:${String(minutes_min % 60).padStart(2, "0")}`;
};

/** Both readings of a pair in the unit in which they were read. */
export const pairRead = (
  data: PairData,
): { readonly inside: number; readonly outside: number; readonly unit: string } =>
  data.inside_lux !== undefined && data.outside_lux !== undefined
    ? { inside: data.inside_lux, outside: data.outside_lux, unit: "lux" }
    : { inside: data.inside_umol_m2_s ?? 0, outside: data.outside_umol_m2_s ?? 1, unit: "µmol" };

/** A reading as the meter of the person would show it. */
const readSaid = (say: Say, value: number, unit: string): string =>
  unit === "lux" ? say.illuminance(value) : `${say.number(value, value < 100 ? 1 : 0)} µmol/m²s`;

const COMPASS = {
  en: ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"],
  de: ["Nord", "Nordost", "Ost", "Südost", "Süd", "Südwest", "West", "Nordwest"],
} as const;
export const compassSaid = (azimuth_deg: number, language: "en" | "de"): string =>
  COMPASS[language][Math.round((((azimuth_deg % 360) + 360) % 360) / 45) % 8] as string;

const english = (say: Say): LightSentences => ({
  window: (data) =>
    `a window ${say.length(data.width_m * 100)} wide and ${say.length(data.height_m * 100)} high, facing ${compassSaid(data.faces_deg, "en")}, ${data.glazing} glass`,
  stands: (data) => `the spot is ${say.length(data.fromGlass_m * 100)} from the glass`,
  lamp: (data) =>
    `a lamp (${data.source}), ${say.number(data.power_W, 0)} W, ${say.length(data.above_m * 100)} above the leaves`,
  lampHours: (data) =>
    data.hours_h === 0
      ? "the lamp stays off"
      : `the lamp burns from ${clock(data.from_h)} to ${clock(data.from_h + data.hours_h)}`,
  outage: (data) =>
    `${{ lamps: "the lamps are", heating: "the heating is" }[data.what]} ${data.is === "out" ? "out" : "back"}`,
  pair: (data) => {
    const { inside, outside, unit } = pairRead(data);
    return `light at the leaf ${readSaid(say, inside, unit)}, outdoors ${readSaid(say, outside, unit)}, sky ${data.sky}`;
  },
  underLamp: (data) =>
    data.under_lux === undefined
      ? `light under the lamp ${say.number(data.ppfd_umol_m2_s ?? 0, 0)} µmol/m²s`
      : `light under the lamp ${say.illuminance(data.under_lux)}`,
  tariff: (data) => `electricity costs ${say.number(data.price_minor_kWh, 1)} hundredths a kWh`,
});

const GLAZING_DE: Readonly<Record<WindowData["glazing"], string>> = {
  single: "einfach verglast",
  double: "doppelt verglast",
  triple: "dreifach verglast",
  "double low-e": "zweifaches Wärmeschutzglas",
  "triple low-e": "dreifaches Wärmeschutzglas",
};
const SKY_DE: Readonly<Record<PairData["sky"], string>> = {
  "evenly grey": "gleichmäßig grau",
  broken: "aufgelockert",
  clear: "klar",
};
const SOURCE_DE: Readonly<Record<LampData["source"], string>> = {
  "white LED": "weiße LED",
  fluorescent: "Leuchtstofflampe",
  "metal halide": "Halogen-Metalldampflampe",
  "high pressure sodium": "Natriumdampflampe",
  "red and blue": "rot-blaue LED",
};

const german = (say: Say): LightSentences => ({
  window: (data) =>
    `ein Fenster, ${say.length(data.width_m * 100)} breit und ${say.length(data.height_m * 100)} hoch, nach ${compassSaid(data.faces_deg, "de")}, ${GLAZING_DE[data.glazing]}`,
  stands: (data) => `der Platz ist ${say.length(data.fromGlass_m * 100)} vom Glas entfernt`,
  lamp: (data) =>
    `eine Lampe (${SOURCE_DE[data.source]}), ${say.number(data.power_W, 0)} W, ${say.length(data.above_m * 100)} über den Blättern`,
  lampHours: (data) =>
    data.hours_h === 0
      ? "die Lampe bleibt aus"
      : `die Lampe brennt von ${clock(data.from_h)} bis ${clock(data.from_h + data.hours_h)}`,
  outage: (data) =>
    data.what === "lamps"
      ? `die Lampen sind ${data.is === "out" ? "ausgefallen" : "wieder an"}`
      : `die Heizung ist ${data.is === "out" ? "ausgefallen" : "wieder an"}`,
  pair: (data) => {
    const { inside, outside, unit } = pairRead(data);
    return `Licht am Blatt ${readSaid(say, inside, unit)}, draußen ${readSaid(say, outside, unit)}, Himmel ${SKY_DE[data.sky]}`;
  },
  underLamp: (data) =>
    data.under_lux === undefined
      ? `Licht unter der Lampe ${say.number(data.ppfd_umol_m2_s ?? 0, 0)} µmol/m²s`
      : `Licht unter der Lampe ${say.illuminance(data.under_lux)}`,
  tariff: (data) => `Strom kostet ${say.number(data.price_minor_kWh, 1)} Hundertstel je kWh`,
});
