import type { Say } from "../words/say.ts";
import type { AirData, BenchData, HabitsData, LitData, SeriesData, SiteData } from "./kinds.ts";

interface PlaceSentences {
  site(data: SiteData): string;
  bench(data: BenchData): string;
  air(data: AirData): string;
  lit(data: LitData): string;
  habits(data: HabitsData): string;
  series(data: SeriesData): string;
}

export const placeSentences = (say: Say): PlaceSentences =>
  say.language === "de" ? german(say) : english(say);

const degrees = (say: Say, latitude_deg: number) => say.number(latitude_deg, 1);

const english = (say: Say): PlaceSentences => ({
  site: (data) =>
    `the benches stand in ${data.name}, at ${degrees(say, data.latitude_deg)}° north and ${degrees(say, data.longitude_deg)}° east`,
  bench: (data) =>
    `bench “${data.name}” with ${data.spots.length} ${data.spots.length === 1 ? "spot" : "spots"}${data.outdoors ? ", outdoors" : ""}`,
  air: (data) =>
    `air ${say.temperature(data.dayAir_C)} by day, ${say.temperature(data.nightAir_C)} by night${data.humidity_frac === undefined ? "" : `, ${say.percent(data.humidity_frac)} humid`}`,
  lit: (data) =>
    `daily light ${say.number(data.dli_mol_m2_d, 1)} mol/m² from ${{ window: "the window", lamp: "the lamp", sun: "the sky" }[data.light]}`,
  habits: (data) => `rounds of ${say.minutes(data.minutes)} on ${data.weekdays.length} days a week`,
  series: (data) => `${data.rows_n} readings of “${data.series}” from ${say.days(data.from_ms, data.to_ms)}`,
});

const german = (say: Say): PlaceSentences => ({
  site: (data) =>
    `die Plätze liegen in ${data.name}, ${degrees(say, data.latitude_deg)}° Nord und ${degrees(say, data.longitude_deg)}° Ost`,
  bench: (data) =>
    `Bank „${data.name}“ mit ${data.spots.length} ${data.spots.length === 1 ? "Platz" : "Plätzen"}${data.outdoors ? ", im Freien" : ""}`,
  air: (data) =>
    `Luft ${say.temperature(data.dayAir_C)} am Tag, ${say.temperature(data.nightAir_C)} nachts${data.humidity_frac === undefined ? "" : `, ${say.percent(data.humidity_frac)} Feuchte`}`,
  lit: (data) =>
    `Tageslicht ${say.number(data.dli_mol_m2_d, 1)} mol/m² ${{ window: "vom Fenster", lamp: "von der Lampe", sun: "vom Himmel" }[data.light]}`,
  habits: (data) => `Runden von ${say.minutes(data.minutes)} an ${data.weekdays.length} Tagen der Woche`,
  series: (data) => `${data.rows_n} Messwerte von „${data.series}“, ${say.days(data.from_ms, data.to_ms)}`,
});
