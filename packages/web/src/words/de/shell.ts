import type { en } from "../en/index.ts";

const plural = (count_n: number, one: string, many: string) =>
  count_n === 1 ? `1 ${one}` : `${count_n} ${many}`;

export const shell: (typeof en)["shell"] = {
  round: "Runde",
  plants: "Pflanzen",
  desk: "Tisch",
  book: "Buch",
  number: "Nummer",
  placesToGo: "Wohin",
  allOnServer: "alles auf dem Server",
  onPhone: (count_n) => `${count_n} auf dem Telefon`,
  reading: "wird gelesen",
  saveMark: (said) => `Verwahrt: ${said}`,
  noConnection: "Keine Verbindung. Einträge bleiben auf diesem Telefon und gehen von selbst nach Hause.",
  onServerToo: "Jeder Eintrag dieses Telefons liegt auch auf dem Server.",
  notYetHome: (count_n) =>
    `${plural(count_n, "Eintrag liegt", "Einträge liegen")} auf diesem Telefon und noch nicht auf dem Server.`,
  unpaired: "Der Server kennt dieses Telefon nicht. Noch einmal einlassen; hier ist nichts verloren.",
  letInAgain: "Wieder einlassen",
  waitsForGrower: (count_n) =>
    `${count_n === 1 ? "1 Eintrag wartet" : `${count_n} Einträge warten`} auf dem Server auf das Wort der Gärtnerin.`,
  sendNow: "Jetzt senden",
  readingBook: (read, of) => `Das Buch wird gelesen: ${read} von ${of} Einträgen.`,
  storageRefused: "Dieses Telefon darf Einträge wegwerfen, wenn es voll ist.",
  allowKeeping: "Behalten erlauben",
  diskFull: (entry) =>
    `Dieses Telefon ist voll. Der letzte Eintrag ist NICHT verwahrt: ${entry}. Auf Papier schreiben, dann Platz schaffen.`,
  stumbled: (count_n) =>
    count_n === 0
      ? "Diese Seite ist gestolpert. Alle Einträge sind verwahrt."
      : `Diese Seite ist gestolpert. ${count_n === 1 ? "Dein Eintrag ist" : `Deine ${count_n} Einträge sind`} verwahrt.`,
  openAgain: "Wieder öffnen",
  copyReport: "Bericht kopieren",
  newVersion: "Ein neueres Sillwood ist da. Es wartet, bis diese Runde fertig ist.",
  changeNow: "Jetzt wechseln",
  clockFast: (minutes) => `Die Uhr dieses Telefons geht ${minutes} vor. Zeiten werden berichtigt.`,
  clockSlow: (minutes) => `Die Uhr dieses Telefons geht ${minutes} nach. Zeiten werden berichtigt.`,
  notRead: "Das ließ sich nicht rechnen. Das Buch selbst ist unversehrt.",
  undo: "Zurück­nehmen",
  wrote: (said) => `notiert ${said}`,
  tookBack: (said) => `zurückgenommen ${said}`,
  broughtBack: (said) => `wieder notiert ${said}`,
  notHereYet: {
    grower: (since) => `Die Einträge der Gärtnerin seit ${since} sind noch nicht hier.`,
    helper: (since) => `Die Einträge der Hilfe seit ${since} sind noch nicht hier.`,
    viewer: (since) => `Die Einträge des Gastes seit ${since} sind noch nicht hier.`,
  },
  close: "Schließen",
  nothingHere: "Eine Seite dieses Namens gibt es nicht.",
  toTheRound: "Zur Runde",
  sunAsk: "Sonne?",
  sunAskSaid: "Zum Papier für helles Licht wechseln",
  keys: "Tasten",
  keysTitle: "Tasten der Tastatur",
  keyList: [
    ["Enter", "Haupttaste"],
    ["Esc", "schließen"],
    ["U", "zuletzt Notiertes zurücknehmen"],
    ["W", "Rechenweg der ersten Zahl"],
    ["/", "eine Pflanze suchen"],
    ["0 bis 9", "Nummer eines Topfs"],
    ["[ und ]", "Pflanze davor, Pflanze danach"],
    ["Pfeile", "Topf davor, Topf danach"],
    ["?", "diese Liste"],
  ],
  measured: "gemessen",
  learned: "gelernt",
  assumed: "angenommen",
};
