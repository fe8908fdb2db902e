import type { FruitPageWords } from "./words-page-shape.ts";

const plants = (n: number) => (n === 1 ? "1 Pflanze" : `${n} Pflanzen`);

export const pageGerman: FruitPageWords = {
  head: (flowers, n, ripe) => `${flowers} offen an ${plants(n)}; ${ripe} zu pflücken.`,
  nothing: "Keine Blüten eingetragen.",
  openSaid: (flowers, n) => `${flowers} an ${plants(n)}`,
  noneOpen: "Keine offenen Blüten in den letzten drei Tagen eingetragen.",
  how: "vor Mittag pinseln, morgen noch einmal",
  open: (flowers, due, last) =>
    `${flowers}${due ? "" : last === undefined ? ", im Freien: Wind und Insekten tun es" : `, bepinselt ${last}`}`,
  keepOf: (keep, has) => (keep === 0 ? `keine von ${has} lassen` : `${keep} von ${has} lassen`),
  keep: (keep) => `${keep} lassen`,
  noneThin: "keine, zu dünn",
  noneLight: "keine, das Licht wird woanders gebraucht",
  total: (about, low, high) => `zusammen etwa ${about} (${low} bis ${high})`,
  noFruit: "In diesem Licht füllt sie keine Frucht: alle abnehmen oder mehr Licht geben.",
  keeping: (n, size) => `bei ${n}: jede etwa ${size} der vollen Größe`,
  keepingFull: (n) => `bei ${n}: jede wird voll groß`,
  price: (full, fullMass, many, manyMass, share) =>
    `Weniger, voll: etwa ${full} Früchte, ${fullMass} reif. Viele, klein: etwa ${many}, ${manyMass}. Der Preis der vollen Größe: ${share} der reifen Masse.`,
  set: (now, brushed) => `Eine Blüte setzt mit etwa ${now} Aussicht an; bepinselt etwa ${brushed}.`,
  setFine: (now) => `Eine Blüte setzt mit etwa ${now} Aussicht an.`,
  dropped: (list, day) => `Bisher abgefallen: ${list}; zuletzt eingetragen ${day}.`,
  pickRipe: () => "Reif pflücken: Schärfe und Geschmack kommen mit der Farbe.",
  pickEither: () => "Darf ausgewachsen grün gepflückt werden oder reif.",
  hottest: (range) => `Am schärfsten ${range}.`,
  early: (days) =>
    `Vor Frost oder Umzug: pflücken, was zu einem Drittel gefärbt ist; es färbt bei 20 °C in etwa ${days} fertig. Grüne nicht.`,
  store: "Bei 7 bis 13 °C trocken lagern, nicht unter 7 °C. Nie frisch in Öl bei Zimmerwärme.",
  heatLab: (dry, fresh, method) =>
    `Labor${method === undefined ? "" : ` (${method})`}: ${[dry === undefined ? "" : `${dry} SHU trocken`, fresh === undefined ? "" : `${fresh} SHU frisch`].filter((each) => each !== "").join(", ")}.`,
  heatUsual: (low, high) =>
    `Schärfe sieht man nicht. Üblich für solche Arten ${low} bis ${high} SHU, trocken, zehnfach verschieden in einer Sorte; nur ein Labor weiß es.`,
  heatNone: "Schärfe sieht man nicht; nur ein Labor weiß es, und es muss sagen, worauf bezogen.",
  cross: (share) =>
    `Offene Blüten neben einer anderen Chili: etwa ${share} der Früchte tragen einen gekreuzten Samen. Blüten vor dem Öffnen einbeuteln, pinseln, markieren.`,
  crossNone: "Hier steht keine andere Chili, die sich kreuzt.",
  lot: (kept, crossed, until) =>
    `${{ none: "offen abgeblüht, vielleicht gekreuzt", bagged: "Blüten im Beutel", caged: "Pflanze im Netz", alone: "keine andere Chili in Blüte" }[kept]}${crossed === undefined ? "" : `, etwa ${crossed} der Früchte`}; auf 7 % Wasser trocknen, hält im Zimmer bis etwa ${until}`,
  test: (share, low, high) => `keimt zu ${share} (${low} bis ${high})`,
  noTest: "noch nicht geprüft: 20 Samen auslegen",
  careHot:
    "Scharfe Früchte: Handschuhe, bei den schärfsten Schutzbrille; keine Hand an Auge oder Linse. Weg von Kindern und Tieren.",
  careFood:
    "Keine Frucht essen, die mit etwas behandelt wurde, das für Essbares nicht zugelassen ist. Wartezeit des Etiketts halten. Waschen.",
  careSeed:
    "Viren reisen im Chilisamen. Manche Sorten sind geschützt, Grenzen wollen Papiere: erst das Pflanzenschutzamt fragen.",
  buds: (n) => (n === 1 ? "1 Knospe" : `${n} Knospen`),
};
