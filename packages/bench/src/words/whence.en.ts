import type { Say } from "./say.ts";
import type { WhenceWords } from "./whence-shape.ts";

const MEDIA = {
  spongy: "a spongy medium",
  bark: "bark",
  gritty: "a gritty medium",
  unknown: "an unknown medium",
} as const;

export const whenceEnglish = (say: Say): WhenceWords => ({
  air: {
    logger: (bench) => `logger on ${bench}`,
    written: (bench) => `air of ${bench} as written`,
    usualRoom: (dayAir_C, humidity_frac) =>
      `usual heated room, ${say.temperature(dayAir_C)} by day, ${say.percent(humidity_frac)} humid`,
  },
  weather: {
    record: (date) => `weather record of ${say.date(date)}`,
    forecast: (date) => `forecast for ${say.date(date)}`,
    lastDaysAndSeason: "the last five days and what is usual for the time of year",
    lastDays: "the last five days of the record",
    season: "what is usual for the time of year",
    nothing: "no weather record: a mild dry day",
  },
  light: {
    written: (bench) => `daily light of ${bench ?? "the spot"} as written`,
    paired: (bench, pairs_n) =>
      `the window of ${bench}, read inside and outside ${say.number(pairs_n)} ${pairs_n === 1 ? "time" : "times"}`,
    guessed: "guessed from the direction of the window and the date",
    window: (bench) => `the window of ${bench} as measured`,
    lamp: (bench) => `the lamp of ${bench}`,
    directionUnknown: "direction of the window not known",
    radiation: {
      measured: "radiation of the weather record",
      temperature: "radiation guessed from the daily range of temperature (FAO56 eq. 50)",
      season: "radiation usual for the time of year in the record",
      usual: "radiation usual for the latitude and the time of year",
    },
    usual: "usual light of a sill on the usual leaves",
  },
  capacity: (medium, medium_mL, held_frac) =>
    `${say.volume(medium_mL)} of ${MEDIA[medium]} holding ${say.percent(held_frac)} for the plant`,
  leaves: (leaves_n, length_cm, width_cm) =>
    `${say.number(leaves_n)} leaves of about ${say.length(length_cm)} × ${say.length(width_cm)}`,
  leavesUsual: "usual for this kind in a pot of this width",
  waterUnknown: "nothing known of its water: taken as half full",
  noFlowers: "no flowers written",
  seen: (stage) => `seen ${stage}`,
  noStage: "no stage written: taken as in leaf",
  noWarmth: "warmth is not counted",
  noNodes: "nodes not counted",
  noLedger: "what is dissolved is not counted",
});
