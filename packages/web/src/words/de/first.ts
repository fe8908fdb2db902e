import type { en } from "../en/index.ts";

export const first: (typeof en)["first"] = {
  title: "Wer hält dieses Telefon?",
  said: "Kein Konto, kein Passwort. Es unterschreibt nur die Einträge.",
  grower: "DIE GÄRTNERIN",
  growerSaid: "der das Buch gehört, die über Schnitt und Verkauf entscheidet",
  helper: "Die Hilfe",
  helperSaid: "geht die Runde; was nur die Gärtnerin entscheidet, bleibt als Bitte",
  card: "Name auf der Karte",
  cardSaid: "Darf leer bleiben. Er bleibt auf diesem Telefon und kommt nie ins Buch.",
  newBook: "Auf diesem Telefon beginnt ein neues Buch.",
  foundPeople: "Das Buch vom Server ist da, mit seinen Leuten.",
};

export const print: (typeof en)["print"] = {
  roundTitle: "Runde",
  asOf: (said) => `Zahlen von ${said}`,
  code: "Blatt",
  number: "Nr.",
  task: "Aufgabe",
  less: "weniger",
  more: "mehr",
  not: "nicht",
  printIt: "DRUCKEN",
  backTo: "Zurück",
  typeBackTitle: "Das Blatt eintippen",
  typeBackSaid: "Alle gelten als erledigt. Die Ausnahmen antippen, dann behalten.",
  noSheet: "Dieser Code ist kein Blatt von uns. Die acht Ziffern noch einmal ansehen.",
  nothing: "Auf diesem Blatt war nichts zu tun.",
  keepSheet: (count_n) => (count_n === 1 ? "1 EINTRAG BEHALTEN" : `${count_n} EINTRÄGE BEHALTEN`),
  weights: { metric: { unit: "g", name: "Gramm" }, us: { unit: "oz", name: "Unzen" } },
  labelsTitle: "Etiketten",
  benchLabels: "Bank­etiketten",
  pots: (count_n) => (count_n === 1 ? "1 Topf" : `${count_n} Töpfe`),
  plantCard: "Pflanzenkarte",
  care: "Vorsicht",
  potLine: (weight) => `Bleistift, nasse Hände: Kästchen ankreuzen, ${weight} eintragen`,
  typedBack: (count_n) => (count_n === 1 ? "1 Zeile des Blatts" : `${count_n} Zeilen des Blatts`),
  alreadyBack: (count_n) =>
    count_n === 1
      ? "1 Zeile dieses Blatts steht schon im Buch."
      : `${count_n} Zeilen dieses Blatts stehen schon im Buch.`,
};
