import type { Say } from "../words/say.ts";

/** Words of the pages that belong to no craft. */
interface PageWords {
  ended(how: string, day: string): string;
  measuredOn(day: string): string;
  notWritten(): string;
  unknown(): string;
  pot(): string;
  medium(): string;
  height(): string;
  caliper(): string;
  leaves(): string;
  stage(): string;
  parents(): string;
  cultivar(): string;
  restricted(): string;
  seedLot(lot: string): string;
  mother(name: string): string;
  father(name: string): string;
  rootstock(name: string): string;
  plants(n: number): string;
  withdrawn(): string;
  newer(): string;
  unmet(): string;
  request(): string;
  writtenLater(written: string): string;
  correctedTo(): string;
  weatherOf(written: string, until: string): string;
  recordUntil(day: string): string;
  laidLater(bench: string, day: string): string;
  benchUnmet(): string;
}

export const pageWords = (say: Say): PageWords => (say.language === "de" ? german : english);

const english: PageWords = {
  ended: (how, day) => `${how} on ${day}`,
  measuredOn: (day) => `written ${day}`,
  notWritten: () => "not written yet: our guess",
  unknown: () => "not known yet",
  pot: () => "pot",
  medium: () => "medium",
  height: () => "height",
  caliper: () => "stem",
  leaves: () => "leaves",
  stage: () => "stage",
  parents: () => "parents",
  cultivar: () => "cultivar",
  restricted: () => "propagation restricted: seed and cuttings only with the breeder's leave",
  seedLot: (lot) => `seed lot ${lot}`,
  mother: (name) => `mother plant ${name}`,
  father: (name) => `pollen of ${name}`,
  rootstock: (name) => `on the rootstock ${name}`,
  plants: (n) => `${n} pots`,
  withdrawn: () => "withdrawn",
  newer: () => "Written by a newer Sillwood. Kept as it is.",
  unmet: () => "Names something this device has not met yet. Kept; it will fit when that arrives.",
  request: () => "only the grower does this: left as a request",
  writtenLater: (written) => `written ${written}`,
  correctedTo: () => "put right",
  weatherOf: (written, until) => `Weather of ${written}; days after ${until} are wider for it.`,
  laidLater: (bench, day) =>
    `It stands on ${bench}, which was laid on ${day}: later than this moment, so its light and air are not seen.`,
  benchUnmet: () => "It stands on a bench that this book has not met yet: its light and air are our guess.",
  recordUntil: (day) => `The weather record ends on ${day}; days after it are wider for it.`,
};

const ENDINGS_DE: Readonly<Record<string, string>> = {
  died: "eingegangen",
  "thrown out": "weggeworfen",
  sold: "verkauft",
  given: "verschenkt",
};

const german: PageWords = {
  ended: (how, day) => `${ENDINGS_DE[how] ?? how} am ${day}`,
  measuredOn: (day) => `notiert ${day}`,
  notWritten: () => "noch nicht notiert: unsere Annahme",
  unknown: () => "noch nicht bekannt",
  pot: () => "Topf",
  medium: () => "Substrat",
  height: () => "Höhe",
  caliper: () => "Stamm",
  leaves: () => "Blätter",
  stage: () => "Stadium",
  parents: () => "Eltern",
  cultivar: () => "Sorte",
  restricted: () => "Vermehrung eingeschränkt: Samen und Stecklinge nur mit Erlaubnis des Züchters",
  seedLot: (lot) => `Saatgut ${lot}`,
  mother: (name) => `Mutterpflanze ${name}`,
  father: (name) => `Pollen von ${name}`,
  rootstock: (name) => `auf der Unterlage ${name}`,
  plants: (n) => `${n} Töpfe`,
  withdrawn: () => "zurückgezogen",
  newer: () => "Von einem neueren Sillwood geschrieben. Bleibt, wie es ist.",
  unmet: () => "Nennt etwas, das dieses Gerät noch nicht kennt. Bleibt; es passt, sobald das da ist.",
  request: () => "das tut nur die Gärtnerin: als Bitte notiert",
  writtenLater: (written) => `notiert ${written}`,
  correctedTo: () => "berichtigt",
  weatherOf: (written, until) => `Wetter von ${written}; Tage nach ${until} sind darum breiter.`,
  laidLater: (bench, day) =>
    `Sie steht auf ${bench}, das erst am ${day} aufgestellt wurde: Licht und Luft sind hier noch nicht zu sehen.`,
  benchUnmet: () =>
    "Sie steht auf einer Bank, die dieses Buch noch nicht kennt: Licht und Luft sind unsere Annahme.",
  recordUntil: (day) => `Die Wetteraufzeichnung endet am ${day}; Tage danach sind darum breiter.`,
};
