import type { Say } from "../../words/say.ts";
import type { Found, Looked } from "./kinds.ts";
import type { LookedAt, Pest, Tool } from "./pests.ts";
import { fraction, list } from "./said-numbers.ts";
import type { ScoutingWords } from "./words-shape.ts";
import { causesGerman, looksGerman, signGerman } from "./words-signs.de.ts";

const TOOLS: Readonly<Record<Tool, string>> = {
  soap: "Seife",
  oil: "Öl",
  wash: "mit Wasser abgewaschen",
  bti: "Bti",
  nematodes: "Nematoden",
  other: "Mittel",
};
const PESTS: Readonly<Record<Pest, string>> = {
  aphid: "Blattläuse",
  "spider mite": "Spinnmilben",
  "broad mite": "Weichhautmilben",
  thrips: "Thripse",
  whitefly: "Weiße Fliegen",
  "fungus gnat": "Trauermücken",
  mealybug: "Wollläuse",
  scale: "Schildläuse",
  caterpillar: "Raupen",
  slug: "Schnecken",
  leafminer: "Minierfliegen",
  ant: "Ameisen",
  other: "andere Tiere",
};
const STAGES = { egg: "Ei", young: "jung", grown: "erwachsen" } as const;
const WAYS = {
  lens: "mit Lupe",
  eye: "mit bloßem Auge",
  glance: "im Vorbeigehen",
  tap: "über weißem Papier geklopft",
  disc: "Kartoffelscheibe, zwei Tage",
};

function method({ way, tips_n, leaves_n, stem }: LookedAt): string {
  const places = [
    ...(tips_n ? [tips_n === 1 ? "Spitze von 1 Trieb" : `Spitzen von ${tips_n} Trieben`] : []),
    ...(leaves_n ? [leaves_n === 1 ? "unter 1 Blatt" : `unter ${leaves_n} Blättern`] : []),
    ...(stem ? ["Stamm und Erdlinie"] : []),
  ];
  return [...places, WAYS[way]].join(", ");
}
const foundSaid = (found: readonly Found[]): string =>
  found
    .map(({ pest, count_n, stage }) => `${count_n} ${PESTS[pest]}${stage ? ` (${STAGES[stage]})` : ""}`)
    .join(", ");
const share = (value: number) => fraction(value, "über", "unter").replace(" in ", " von ");

export function german(say: Say): ScoutingWords {
  return {
    pest: (pest) => PESTS[pest],
    tool: (tool) => TOOLS[tool],
    method,
    looked: (data: Looked) =>
      `nachgesehen: ${method(data)}. ${data.found.length === 0 ? "Sauber." : `Gefunden: ${foundSaid(data.found)}.`}`,
    card: ({ out_d, cards_n = 1, lost, caught }) =>
      lost
        ? "Gelbtafel verloren: sagt nichts"
        : `${cards_n === 1 ? "Gelbtafel" : `${cards_n} Gelbtafeln`}, ${say.number(out_d ?? 0)} Tage: ${caught.length === 0 ? "nichts gefangen" : foundSaid(caught)}`,
    treated: ({ tool, product, against, strength_frac, reentry_h, preharvest_d }) =>
      `behandelt: ${product ?? TOOLS[tool]}${strength_frac ? ` ${say.number(strength_frac * 100, 2)} %` : ""} gegen ${list(
        against.map((pest) => PESTS[pest]),
        "und",
      )}${reentry_h === undefined ? "" : `; ${say.number(reentry_h)} h nicht anfassen`}${preharvest_d === undefined ? "" : `, ${say.number(preharvest_d)} Tage nicht ernten`}`,
    arrived: ({ from, washed }) =>
      `${{ bought: "zugekauft", borrowed: "geliehen", outdoors: "von draußen hereingeholt", "own room": "aus dem eigenen Raum" }[from]}${washed ? ", Wurzeln gewaschen" : ""}: bleibt getrennt, bis sie sauber ist`,
    exposed: ({ pest, how }) =>
      `neben einem Fund von ${PESTS[pest]}${how === "near" ? "" : how === "hands" ? " (gleiche Hände und Geräte)" : " (gleicher Raum)"}`,
    released: ({ to, free_frac, low_frac, high_frac, looks_n, reason }) =>
      `freigegeben zum ${to === "sell" ? "Verkauf" : "Umstellen"}: ${share(free_frac)} sauber, soweit nachgesehen (${share(low_frac)} bis ${share(high_frac)}), ${looks_n} Mal nachgesehen${reason ? `; ${reason}` : ""}`,
    confirmed: ({ cause }) => `Fall geklärt: ${causesGerman[cause] ?? cause}`,
    cause: (key) => causesGerman[key] ?? key,
    limit: {
      touch: (until) => `behandelt: nicht anfassen bis ${until} (Etikett)`,
      pick: (until) => `behandelt: nicht ernten bis ${until} (Etikett)`,
      sell: "wartet auf saubere Befunde: nicht freigegeben",
      recalled: (pest) => `seit der Freigabe neben einem Fund: ${pest}`,
      found: (pest) => `${pest} gefunden und noch nicht los`,
      move: "bleibt getrennt: zu wenig saubere Befunde zum Umstellen",
    },
    task: {
      look: "NACHSEHEN",
      again: "NOCHMALS NACHSEHEN",
      spray: "NOCHMALS BEHANDELN",
      seenAny: "etwas gesehen? Statt FERTIG die Seite Schädlinge öffnen und antippen",
      lookWhy: (since) =>
        since === undefined
          ? "getrennt, noch nicht nachgesehen"
          : `getrennt, zuletzt vor ${say.number(since)} Tagen nachgesehen`,
      quarantineCare: "saubere Pflanzen zuerst; danach Hände und Geräte waschen",
      sprayWhy: (given, of, pests) => `${given} von ${of} Behandlungen gegen ${pests}`,
      sprayCare: "das Etikett gilt: Handschuhe, Augen, Luft; was nicht darauf steht, ist nicht erlaubt",
    },
    head: "sauber",
    headSaid: (free) =>
      `${free.replace(" in ", " von ").replace("over", "über").replace("under", "unter")}, soweit nachgesehen`,
    found: "gefunden, noch nicht los",
    line: "Verkauf",
    lineSaid: (best) => `etwa ${best}, wenn es sauber bleibt`,
    lineFrom: (from, to) =>
      to
        ? `${from} bis ${to}, wenn es sauber bleibt`
        : `nicht vor ${from}; 10 Wochen reichen vielleicht nicht`,
    noDate: "noch kein Tag: so nachgesehen reicht es in 10 Wochen nicht",
    cannotRead: "ein Eintrag zu Schädlingen war nicht lesbar",
    question: "Einmal mit der Lupe nachsehen (1 min): es zählt für beide Tore.",
    sign: signGerman,
    looks: () => looksGerman,
    working: {
      title: "sauber, soweit nachgesehen",
      formula:
        "P = Π P(Schädling); P(Schädling) = frei / (frei + Σ Gewichte der Wege, auf denen er kam); jeder saubere Befund nimmt einen Weg mal die Chance, ihn übersehen zu haben",
      sum: (parts, result) => `${parts.join(" × ")} = ${result}`,
      part: (pest, free) => `${pest} ${free}`,
      pestFrom: (looks_n) =>
        looks_n === 0
          ? "noch kein Befund, der ihn gezeigt hätte"
          : looks_n === 1
            ? "1 Befund, der ihn gezeigt hätte"
            : `${looks_n} Befunde, die ihn gezeigt hätten`,
      odds: "Verhältnis am Anfang",
      oddsFrom: "unsere Annahme, für einen Schädling, den niemand sah",
      looks: "Befunde und Tafeln",
      looksSaid: (count) => `${count}`,
      fromBook: "im Buch",
      source:
        "Bayes mit verborgenem, stündlich wachsendem Befall; Uhren nach je eigenen Arbeiten (science/pests); Sehen und Anfang sind unsere Annahme",
      notLooked: "noch nicht nachgesehen",
      asFar:
        "So gut wie Augen und Anfang: die Spanne hat halbes und doppeltes Sehen, ein Fünftel weniger und mehr Wachstum.",
      unseen: (pests) => `Nicht danach gesehen: ${pests}.`,
      together: "Ein Blick dient allen Schädlingen: das Produkt liegt auf der vorsichtigen Seite.",
      interval: "Tage zwischen den Befunden",
      intervalFrom: "common practice, no source",
      lookTitle: "nächstes Nachsehen",
      lookFormula: "letzter Befund + Tage dazwischen",
      sprayTitle: "nächste Behandlung",
      sprayFormula: "letzte Behandlung + ihr Abstand",
    },
  };
}
