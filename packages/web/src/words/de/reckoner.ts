import type { Words } from "../words.ts";

export const reckoner: Words["reckoner"] = {
  title: "Rechner",
  find: "Rechnung suchen: Taupunkt, Liter, Tageslänge, Frost…",
  noneFound: (wanted) => `Auf „${wanted}“ hört hier keine Rechnung.`,
  notFetched: "Die Rechnungen ließen sich nicht holen. Sie kommen einmal und bleiben dann auf diesem Gerät.",
  fields: {
    air: "Luft",
    water: "Wasser",
    sun: "Sonne",
    units: "Einheiten",
    chance: "Zufall",
    light: "Licht",
    medium: "Substrat",
    feed: "Dünger",
    growth: "Wuchs",
    fruit: "Frucht",
    pests: "Schädlinge",
    shape: "Form",
  },
  units: (said) => `Einheiten: ${said}`,
  metric: "metrisch",
  us: "US",
  takeFrom: "Zahlen nehmen von",
  typed: "getippt",
  putRight: "Ein Wert kann nicht sein. Bis er berichtigt ist, gibt es kein Ergebnis.",
  takeInstead: (what) => `${what} nehmen von`,
  choose: "was oben steht",
  usual: (said) => `leer gelassen: üblich ist ${said}`,
  optionalUsual: (said) => `darf leer bleiben; üblich ist ${said}`,
  usualIs: (said) => `üblich: ${said} ○`,
  yes: "ja",
  no: "nein",
  from: (source) => `Aus: ${source}`,
  copy: "Kopieren",
  copied: (said) => `kopiert: ${said}`,
  notCopied: (said) => `Dieser Browser lässt die Seite nicht kopieren. Bitte notieren: ${said}`,
  use: "Verwenden",
  whereTo: "Wohin gehört es?",
  goesTo: (kind, what, said) => `${kind}, ${what}: ${said}`,
  range: (min, max, unit) =>
    min !== undefined && max !== undefined
      ? `von ${min} bis ${max} ${unit}`.trim()
      : min !== undefined
        ? `ab ${min} ${unit}`.trim()
        : max !== undefined
          ? `bis ${max} ${unit}`.trim()
          : "",
  another: "Andere Rechnung",
  keep: "AUF DEN STREIFEN",
  onTape: (said) => `auf dem Streifen: ${said}`,
  tape: "Streifen",
  fromTape: (title) => `Streifen, ${title}`,
  printTape: "Drucken",
  tearOff: "Abreißen",
  tornOff: "Streifen abgerissen",
};
