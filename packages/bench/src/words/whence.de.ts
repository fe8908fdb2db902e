import type { Say } from "./say.ts";
import type { WhenceWords } from "./whence-shape.ts";

const MEDIA = {
  spongy: "schwammigem Substrat",
  bark: "Rinde",
  gritty: "körnigem Substrat",
  unknown: "unbekanntem Substrat",
} as const;

export const whenceGerman = (say: Say): WhenceWords => ({
  air: {
    logger: (bench) => `Datenlogger an ${bench}`,
    written: (bench) => `Luft von ${bench}, wie aufgeschrieben`,
    usualRoom: (dayAir_C, humidity_frac) =>
      `üblicher geheizter Raum, tags ${say.temperature(dayAir_C)}, ${say.percent(humidity_frac)} feucht`,
  },
  weather: {
    record: (date) => `Wetteraufzeichnung vom ${say.date(date)}`,
    forecast: (date) => `Vorhersage für ${say.date(date)}`,
    lastDaysAndSeason: "die letzten fünf Tage und das für die Jahreszeit Übliche",
    lastDays: "die letzten fünf Tage der Aufzeichnung",
    season: "das für die Jahreszeit Übliche",
    nothing: "keine Wetteraufzeichnung: ein milder trockener Tag",
  },
  light: {
    written: (bench) => `Tageslicht von ${bench ?? "diesem Platz"}, wie aufgeschrieben`,
    paired: (bench, pairs_n) =>
      `das Fenster von ${bench}, ${say.number(pairs_n)}-mal drinnen und draußen gemessen`,
    guessed: "geschätzt aus der Himmelsrichtung des Fensters und dem Datum",
    window: (bench) => `das Fenster von ${bench}, wie ausgemessen`,
    lamp: (bench) => `die Lampe von ${bench}`,
    directionUnknown: "Himmelsrichtung des Fensters nicht bekannt",
    radiation: {
      measured: "Strahlung der Wetteraufzeichnung",
      temperature: "Strahlung aus dem Tagesgang der Temperatur geschätzt (FAO56, Gl. 50)",
      season: "für die Jahreszeit in der Aufzeichnung übliche Strahlung",
      usual: "für Breite und Jahreszeit übliche Strahlung",
    },
    usual: "übliches Licht einer Fensterbank auf dem üblichen Laub",
  },
  capacity: (medium, medium_mL, held_frac) =>
    `${say.volume(medium_mL)} aus ${MEDIA[medium]}, davon für die Pflanze ${say.percent(held_frac)} Wasser`,
  leaves: (leaves_n, length_cm, width_cm) =>
    `${say.number(leaves_n)} Blätter von etwa ${say.length(length_cm)} × ${say.length(width_cm)}`,
  leavesUsual: "üblich für diese Art in einem Topf dieser Breite",
  waterUnknown: "nichts über ihr Wasser bekannt: als halb voll genommen",
  noFlowers: "keine Blüten aufgeschrieben",
  seen: (stage) => `${stage} gesehen`,
  noStage: "kein Stadium aufgeschrieben: als im Laub genommen",
  noWarmth: "Wärme wird nicht gezählt",
  noNodes: "Knoten nicht gezählt",
  noLedger: "Gelöstes wird nicht gezählt",
});
