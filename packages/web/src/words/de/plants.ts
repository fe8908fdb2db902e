import type { Words } from "../words.ts";

const plural = (count_n: number, one: string, many: string) =>
  count_n === 1 ? `1 ${one}` : `${count_n} ${many}`;

export const plants: Words["plants"] = {
  title: "Pflanzen",
  count: (count_n) => plural(count_n, "Pflanze", "Pflanzen"),
  find: "Suchen: Nummer, Art, Platz",
  found: (count_n) => `${plural(count_n, "Pflanze", "Pflanzen")} gefunden.`,
  noneFound: (wanted) => `Auf „${wanted}“ hört hier keine Pflanze.`,
  new: "NEUE PFLANZE",
  newBatch: "Neuer Satz",
  newBench: "Neue Bank",
  readAList: "Liste einlesen",
  empty:
    "Noch keine Pflanze im Buch. Vier Angaben geben die erste Antwort; eine Liste bringt viele auf einmal.",
  fourFacts: "Vier Angaben, dann eine Antwort",
  quarantine: "abgesondert",
  bare: (spots_n) => `${plural(spots_n, "freier Platz", "freie Plätze")}, keine Pflanze.`,
  nowhere: "Ohne Platz",
  batches: "Sätze",
  from: (name) => `aus ${name}`,
  lost: (count_n) => `${count_n} verloren`,
  inBatch: (count_n) => `${plural(count_n, "Pflanze", "Pflanzen")} zusammen gezählt.`,
  split: "Teilen",
  merge: "Vereinigen",
  lose: "Verluste",
  ended: (count_n) => `Nicht mehr da: ${count_n}`,
  itsPage: "Ihre Seite",
  reopen: "Sie ist doch da",
};

export const list: Words["list"] = {
  title: "Liste einlesen",
  said: "Eine Datei mit einer Zeile für jedes: Komma, Strichpunkt oder Tabulator zwischen den Spalten. Vor BEHALTEN wird nichts geschrieben.",
  kinds: { plants: "Pflanzen", weighings: "Gewichte", logger: "Logger", weather: "Wetter" },
  whatKind: "Was steht darin?",
  choose: "Datei wählen",
  chosen: (name, rows_n) => `${name}: ${plural(rows_n, "Zeile", "Zeilen")}`,
  onWhich: "Wo stand er?",
  inWeather: "Welche Bank steht darin?",
  whereStand: "Bank der Pflanzen, deren Zeile keine nennt",
  columns: "Spalten",
  none: "nicht in der Datei",
  needed: "nötig",
  unmapped: (names) => `Bleibt liegen: ${names}`,
  firstRows: (count_n) => `Die ersten ${count_n}, wie sie stehen werden`,
  problems: (count_n) => `${plural(count_n, "Zeile hält", "Zeilen halten")} es auf`,
  problem: (line, column, message) => `Zeile ${line}, ${column}: ${message}`,
  notRead: (reason) => `Diese Datei ließ sich nicht als Zeilen lesen: ${reason}`,
  tooLarge: (size) => `Diese Datei hat ${size} MB; höchstens 20 MB auf einmal.`,
  keep: (count_n) => `${plural(count_n, "ZEILE", "ZEILEN")} BEHALTEN`,
  keepShut: "ERST EINE DATEI WÄHLEN",
  keepStopped: "ERST DIE ZEILEN BERICHTIGEN",
  kept: (count_n) => `${plural(count_n, "Zeile", "Zeilen")} der Liste`,
  anotherFile: "Andere Datei",
};
