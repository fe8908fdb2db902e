import type { Say } from "../../words/say.ts";
import type { TrimmingWords } from "./words-shape.ts";

const BY = { guy: "einer Schnur", wire: "Draht", weight: "einem Gewicht", spacer: "einem Spreizer" } as const;
const AT = { guy: "Schnur", wire: "Draht", weight: "Gewicht", spacer: "Spreizer" } as const;
const WOOD = { green: "grüner Trieb", semi: "halb verholzter Trieb", woody: "verholzter Trieb" } as const;
const PLANS = { light: "leicht", middle: "mittel", bold: "kräftig", own: "eigener" } as const;
const FORMS = {
  dome: "Kuppel",
  triangle: "Dreieck",
  slanting: "schräge Form",
  broad: "breite Krone",
} as const;
const cuts = (n: number) => (n === 1 ? "1 Schnitt" : `${n} Schnitte`);
const days = (n: number) => (Math.round(n) === 1 ? "1 Tag" : `${Math.round(n)} Tage`);
const daysDative = (n: number) => (Math.round(n) === 1 ? "1 Tag" : `${Math.round(n)} Tagen`);

/** The craft in German. */
export const german = (say: Say): TrimmingWords => ({
  sketched: ({ height_mm, trunk_mm, leaves_n }) =>
    `skizziert: ${say.length(height_mm / 10)} hoch, Stamm ${say.thickness(trunk_mm)}, ${leaves_n} Blätter`,
  traced: ({ nodes, error_mm }) =>
    `über zwei Fotos nachgezeichnet: ${nodes.length} Knoten${error_mm === undefined ? "" : `, Höhen stimmen auf ${say.number(error_mm, 1)} mm`}`,
  aimed: ({ form, top_mm, width_mm }) =>
    `Ziel: ${FORMS[form]}, ${say.length(top_mm / 10)} hoch und ${say.length(width_mm / 10)} breit`,
  planned: ({ plan, cuts: planned }) =>
    `Plan behalten: ${PLANS[plan]}, ${cuts(planned.length)}. Noch ist nichts geschnitten`,
  cut: ({ letter, lit_frac }) =>
    `${letter === undefined ? "geschnitten" : `Schnitt ${letter} gemacht`}, ${say.percent(lit_frac)} des belichteten Laubs genommen`,
  plucked: ({ leaves_n }) => (leaves_n === 1 ? "1 Blatt gezupft" : `${leaves_n} Blätter gezupft`),
  bent: ({ by, target_deg }) => `mit ${BY[by]} auf ${say.number(target_deg)}° von der Senkrechten gebogen`,
  freed: ({ node }) => `Biegung an Knoten ${node} gelöst`,
  looked: ({ bites }) => (bites ? "der Draht schneidet ein" : "der Draht schneidet nicht ein"),
  sprouted: ({ watched_n, grown_n }) => `nach dem Schnitt trieben ${grown_n} von ${watched_n} Knospen aus`,
  notBefore: (at_ms) => `nicht vor ${say.day(at_ms)}`,
  cannotRead: "dieser Eintrag zum Aufbau ist nicht lesbar",
  care: {
    blade:
      "Vorsicht: Klinge zwischen Pflanzen reinigen, von der Hand weg schneiden. Saft und scharfe Früchte brennen auf Haut und Augen.",
  },
  limit: {
    regrows: (at_ms, lit_frac) =>
      `geschnitten am ${say.day(at_ms)}: ${say.percent(lit_frac)} des belichteten Laubs müssen nachwachsen`,
    roots: (at_ms) => `Wurzeln bearbeitet am ${say.day(at_ms)}: kein starker Schnitt, bis sie gefasst haben`,
    brittle: (share) => `voll Wasser (${say.percent(share)}): grüne Triebe brechen`,
  },
  task: {
    cut: (letter) => `SCHNITT ${letter}`,
    cutSaid: ({ node, lit_frac }) =>
      `über Knoten ${node}, nimmt ${say.percent(lit_frac)} des belichteten Laubs`,
    cutWhy: (left_n) => `dein behaltener Plan, noch ${cuts(left_n)}`,
    free: "BIEGUNG LÖSEN",
    freeSaid: ({ by, node }) => `${AT[by]} an Knoten ${node}`,
    look: "SCHNEIDET ES EIN?",
    lookSaid: ({ by, node }) => `${AT[by]} an Knoten ${node}`,
    bites: "es schneidet ein: jetzt lösen",
    bentWhy: (at_ms, after) => `gebogen am ${say.day(at_ms)}; fällig nach ${daysDative(after)}`,
  },
  working: {
    limit: "Laub, das ein Schnitt nehmen darf",
    upTo: (share) => `bis ${say.percent(share)}`,
    limitFormula: "Anteil des Laubs, jedes Blatt nach seinem Licht gewogen",
    warn: "gewarnt wird ab",
    most: "höchstens nimmt ein Plan",
    a300: "ANSI A300 Teil 1, aus dem Gedächtnis",
    ours: "unsere Annahme",
    trade: "übliche Praxis, ohne Quelle",
    limitNote:
      "Kein Versuch mit Paprika wurde gefunden. Bei wenig Licht oder frisch gewaschen verträgt sie weniger.",
    rest: "nächster Schnitt",
    restResult: (at_ms) => `nicht vor ${say.day(at_ms)}`,
    restSum: (f, r, t) => `ln(1/(1 − ${say.number(f, 2)})) / ${say.number(r, 3)} = ${days(t)}`,
    taken: "belichtetes Laub genommen",
    cutOn: (at_ms) => `geschnitten am ${say.day(at_ms)}`,
    pace: "Zuwachs des Laubs",
    perDay: (pace) => `${say.number(pace * 100, 1)} % am Tag`,
    paceMoves: "Der Zuwachs bewegt es am meisten: im Winter langsamer.",
    cut: (letter) => `Schnitt ${letter}`,
    takes: (f) => `${say.percent(f)} des belichteten Laubs`,
    area: "Laubfläche genommen",
    fromTrace: "aus der nachgezeichneten Pflanze",
    trimNote: "Schneiden kostet Ertrag: Laub macht Früchte.",
    bend: "wie lange es gebogen bleibt",
    days,
    bendFormula: "nach dem Alter des Triebs",
    bendSum: (off, look) => `ab nach ${daysDative(off)}, nachgesehen alle ${days(look)}`,
    wood: (wood) => WOOD[wood],
  },
});
