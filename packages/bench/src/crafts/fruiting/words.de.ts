import type { Say } from "../../words/say.ts";
import type { FruitingWords } from "./words-shape.ts";
import { workingGerman } from "./words-workings.de.ts";

const fruits = (n: number) => (n === 1 ? "1 Frucht" : `${n} Früchte`);
const flowers = (n: number) => (n === 1 ? "1 Blüte" : `${n} Blüten`);
const buds = (n: number) => (n === 1 ? "1 Knospe" : `${n} Knospen`);
const things = { buds, flowers, fruits } as const;
const on = (branch: string | undefined) => (branch === undefined ? "" : ` an Ast ${branch}`);
const tagged = (tag: string | undefined) => (tag === undefined ? "" : ` (Faden ${tag})`);
const rough = (roughly: boolean | undefined) => (roughly ? ", grob gezählt" : "");

const COLOURS = {
  set: "eben angesetzt",
  "half size": "halb groß",
  "full green": "ausgewachsen, grün",
  breaker: "erste Farbe",
  turning: "umfärbend",
  colouring: "färbend",
  ripe: "reif",
  "over-ripe": "überreif",
} as const;

export const german = (say: Say): FruitingWords => ({
  sentence: {
    flowered: ({ open_n, buds_n, branch, roughly }) =>
      `${flowers(open_n)} offen${buds_n === undefined ? "" : `, ${buds(buds_n)}`}${on(branch)}${rough(roughly)}`,
    brushed: ({ open_n, how }) =>
      `${flowers(open_n)} ${{ brush: "bepinselt", tap: "angetippt", vibration: "gerüttelt" }[how]}`,
    counted: ({ fruits_n, branch, roughly }) =>
      `${fruits(fruits_n)} ${fruits_n === 1 ? "hängt" : "hängen"}${on(branch)}${rough(roughly)}`,
    thinned: ({ what, removed_n, branch }) => `${things[what](removed_n)} ausgekniffen${on(branch)}`,
    dropped: ({ what, dropped_n, branch }) => `${things[what](dropped_n)} abgefallen${on(branch)}`,
    tagged: ({ fruits_n, openedOn, tag, branch }) =>
      `${fruits(fruits_n)} markiert${on(branch)}${tagged(tag)}${openedOn === undefined ? "" : `, aufgeblüht ${say.date(openedOn)}`}`,
    coloured: ({ colour, tag }) => `Frucht ${COLOURS[colour]}${tagged(tag)}`,
    picked: ({ fruits_n, mass_g, colour, branch, tag }) =>
      `${fruits(fruits_n)} gepflückt${mass_g === undefined ? "" : `, ${say.mass(mass_g)}`}${colour === undefined ? "" : `, ${COLOURS[colour]}`}${on(branch)}${tagged(tag)}`,
    aimed: ({ aim }) => (aim === "many" ? "gewünscht: viele kleine" : "gewünscht: weniger, volle Größe"),
    assayed: ({ content_ug_g, heat_n, basis, method }) =>
      `Labor: ${content_ug_g === undefined ? `${say.number(heat_n ?? 0)} SHU` : `${say.number(content_ug_g)} µg/g Capsaicin und Verwandte`}, bezogen auf ${{ dry: "trocken", fresh: "frisch" }[basis]}${method === undefined ? "" : `, ${method}`}`,
    seeded: ({ lot, fruits_n, seeds_n, kept }) =>
      `Saatgut ${lot} aus ${fruits_n === 1 ? "1 Frucht" : `${fruits_n} Früchten`}${seeds_n === undefined ? "" : `, ${say.number(seeds_n)} Samen`}, ${{ none: "offen abgeblüht, vielleicht gekreuzt", bagged: "Blüten im Beutel", caged: "Pflanze im Netz", alone: "keine andere Chili in Blüte" }[kept]}`,
    tested: ({ lot, tested_n, germinated_n }) => `Saatgut ${lot}: ${germinated_n} von ${tested_n} gekeimt`,
  },
  colour: COLOURS,
  head: "Frucht",
  feeds: (n, low, high) => `Licht nährt etwa ${n} (${low} bis ${high})`,
  fruits,
  flowers,
  flowersFrom: (day) => `gezählt ${day}`,
  ripe: (what, range) => `${what} ${range}`,
  ripeNow: (what) => `${what} reif`,
  cannotRipen: (air, floor) =>
    `bei ${air} reift sie nicht: wärmer stellen (mindestens ${floor}) oder zu einem Drittel gefärbt pflücken`,
  task: {
    brush: "PINSELN",
    brushSaid: (flowers) => `${flowers}, vor Mittag`,
    brushHow: (again) =>
      `jede mit weichem Pinsel berühren oder den Stiel antippen${again ? "; morgen noch einmal" : ""}`,
    brushWhy: (still, brushed) => `in stiller Luft setzen etwa ${still} an, bepinselt etwa ${brushed}`,
    thin: "AUSDÜNNEN",
    thinSaid: (removed, keep) => `${removed} auskneifen, ${keep} lassen`,
    thinHow: "die jüngsten und äußersten zuerst, keine mit Farbe",
    thinWhy: (has, low, high, size) =>
      `${has} hängen, Licht nährt ${low} bis ${high}; blieben alle, käme jede auf etwa ${size} der vollen Größe`,
    pick: "PFLÜCKEN",
    pickHow: "den Stiel schneiden, nicht ziehen; grüne lassen",
    pickWhy: (day) => `reif gesehen ${day}`,
    pickGuess: (range) => `sollte reif sein (${range}); erst hinsehen`,
  },
  care: "Scharfe Früchte: Handschuhe, keine Hand ans Auge; weg von Kindern und Tieren. Hände und Klinge waschen.",
  sprayLimit: "reife Früchte hängen: erst pflücken",
  problem: ({ what, days_n }) =>
    ({
      "cannot be read": "Dieser Eintrag zu Früchten ist nicht lesbar; er ändert nichts.",
      "ripe too soon": `${days_n ?? 0} Tage von der Blüte bis reif sind schneller als je gesehen (mindestens 25). Die richtige Blüte?`,
      "opens later": "Die Blüte öffnet sich nach dem Tag, an dem sie eingetragen wurde. Richtiges Datum?",
    })[what],
  looks: () => [
    { key: "flowers drop", where: "tip", said: "Blüten oder Knospen fallen ab" },
    { key: "small fruit", where: "fruit", said: "Früchte bleiben klein oder fallen ab" },
  ],
  sign: {
    hungry: "mehr Früchte, als das Licht nährt",
    pollen: "kein Pollen bewegt",
    warmth: "zu heiß oder zu kalt für Blüten",
    chance: (now, brushed) => `Aussicht auf Ansatz jetzt etwa ${now}, bepinselt etwa ${brushed}`,
    load: (has, fed) => `${has} Früchte gezählt, Licht nährt etwa ${fed}`,
    air: (day, night) => `${day} am Tag, ${night} in der Nacht`,
    lookQuestion: "Hängt am Stiel einer abgefallenen Blüte ein kleines grünes Früchtchen?",
    lookAnswers: ["ja, ein winziges", "nein, nur die Blüte"],
    hungryDo: "auf die genannte Zahl ausdünnen; mehr Licht geben",
    pollenDo: "offene Blüten zwei Tage lang jeden Morgen bepinseln",
    warmthDo: "nachts 16 bis 21 °C, tags 20 bis 29 °C",
    doNot: "deswegen nicht mehr düngen oder gießen",
  },
  working: workingGerman,
});
