import type { people as english } from "../en/people.ts";

const entries = (count_n: number) => (count_n === 1 ? "1 Eintrag" : `${count_n} Einträge`);

export const people: typeof english = {
  pairTitle: "Dieses Telefon einlassen",
  pairSaid: "Die acht Ziffern vom Bildschirm der Gärtnerin tippen: Einstellungen, Leute, Telefon einlassen.",
  phoneName: "Dieses Telefon heißt",
  phoneNameUsual: "ein Telefon",
  typed: (digits) => (digits === "" ? "noch nichts getippt" : `getippt ${digits.split("").join(" ")}`),
  wipe: "leer",
  back: "zurück",
  pairKey: "EINLASSEN",
  pairing: "FRAGT AN",
  refused: {
    403: "Dieser Code ist unbekannt oder seine zehn Minuten sind um. Die Gärtnerin um einen neuen bitten.",
    429: "Zu viele Versuche. Einige Minuten warten, dann um einen neuen Code bitten.",
  },
  refusedOther: "Der Server hat nicht geantwortet, wie er soll. Noch einmal versuchen.",
  closed: (count_n) =>
    count_n === 0
      ? "Dieses Telefon wurde von der Gärtnerin geschlossen."
      : `Dieses Telefon wurde von der Gärtnerin geschlossen; ${entries(count_n)} für sie aufgehoben.`,
  closedMore: (count_n) =>
    `${entries(count_n)} noch auf diesem Telefon. Sie gehen an die Gärtnerin, sobald es Verbindung gibt.`,
  closedSaid: "Die Gärtnerin entscheidet, was daraus wird. Vom Buch wird hier nichts mehr gezeigt.",
  pairAgain: "WIEDER EINLASSEN",
  forget: "Das Buch von diesem Telefon nehmen",
  forgetSure: "Jetzt wegnehmen",
  forgetSaid:
    "Alles hier Geschriebene ist abgegeben. Was weggenommen ist, ist von diesem Telefon verschwunden.",
  phones: "Telefone",
  noDoor:
    "Telefone können herein, sobald dieser Rechner für sie geöffnet ist: sillwood open --at-home. Die Seite „At home“ der Dokumente nennt die Schritte.",
  noPhones: "Noch ist kein Telefon eingelassen.",
  letIn: "EIN TELEFON EINLASSEN",
  forWhom: "Für wen?",
  whom: { grower: "für die Gärtnerin", helper: "für die Hilfe", viewer: "für einen Gast, der nur schaut" },
  code: "Code",
  codeSaid: (time) => `Auf dem Telefon vor ${time} tippen. Er lässt ein Telefon ein, einmal.`,
  openThere: "Dort öffnen",
  seen: (when) => `zuletzt gesehen ${when}`,
  isClosed: "geschlossen",
  closePhone: "Schließen",
  closedNow: (name) => `„${name}“ ist geschlossen. Um es wieder einzulassen, einen neuen Code geben.`,
  waits: "Wartet auf dein Wort",
  waitsSaid: "Auf einem Telefon geschrieben, das es nicht von selbst darf. Nicht im Buch, bis du es nimmst.",
  why: {
    closed: "von einem geschlossenen Telefon",
    "for another": "im Namen von jemand anderem",
    viewer: "von jemandem, der nur schaut",
    "only the grower": "das darf nur die Gärtnerin",
  },
  take: "Nehmen",
  drop: "Fallen lassen",
  takeAll: (count_n) => `Alle ${count_n} nehmen`,
  dropAll: "Alle fallen lassen",
  took: (count_n) => `${entries(count_n)} ins Buch genommen.`,
  dropped: (count_n) => `${entries(count_n)} fallen gelassen.`,
  card: "Karte",
  cardName: "Name",
  cardShown: "Was andere auf der Runde sehen",
  cardSaid: "Liegt nur auf dem Server. Andere sehen allein die zweite Zeile.",
  keepCard: "KARTE BEHALTEN",
  eraseCard: "Karte löschen",
  cardKept: "Die Karte ist behalten.",
  cardErased: "Die Karte ist gelöscht. Das Buch kennt nur die Rolle.",
  mine: (role) => `Dieses Telefon wurde eingelassen für: ${role}.`,
  leave: "Dieses Telefon zurückgeben",
  leaveSaid: "Es liest und schreibt dann hier nichts, bis es neu eingelassen wird.",
  notNow: "Der Server antwortet nicht. Diese Seite braucht ihn.",
};
