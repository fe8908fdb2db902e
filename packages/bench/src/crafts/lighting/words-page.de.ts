import type { Say } from "../../words/say.ts";
import type { PageOnlyWords } from "./words-page-shape.ts";

const MONTHS = [
  "Januar",
  "Februar",
  "März",
  "April",
  "Mai",
  "Juni",
  "Juli",
  "August",
  "September",
  "Oktober",
  "November",
  "Dezember",
] as const;

/** German sentences that only the page of benches and light says. */
export function pageGerman(say: Say): PageOnlyWords {
  const hours = (value: number) => `${say.number(value, 2)} h`;
  const lamp = (lamp_h: number | undefined) => (lamp_h === undefined ? "" : `: ${hours(lamp_h)} Lampe`);
  const pots = (count: number) => (count === 1 ? "1 Topf" : `${count} Töpfen`);
  const sinceDays = (value: number) =>
    Math.round(value) === 1 ? "1 Tag" : `${say.number(Math.round(value))} Tagen`;
  return {
    glazing: {
      single: "einfach verglast",
      double: "doppelt verglast",
      triple: "dreifach verglast",
      "double low-e": "zweifaches Wärmeschutzglas",
      "triple low-e": "dreifaches Wärmeschutzglas",
    },
    month: (month) => MONTHS[month - 1] as string,
    dateBand: (date, low, high) => `${date} (${low} bis ${high})`,
    page: {
      noBench: "Noch kein Brett. Eine Fensterbank ist ein Brett.",
      noPlants: "Noch steht keine Pflanze auf einem Brett.",
      head: (short_n, plants_n, month) =>
        short_n === 0
          ? `Im ${month} reicht das Licht bei ${plants_n === 1 ? "1 Topf" : `allen ${plants_n} Töpfen`}.`
          : `Im ${month} ist das Licht bei ${short_n} von ${pots(plants_n)} knapp.`,
      setLamp: (bench, said) => `${bench}: ${said}.`,
      openSky: "freier Himmel",
      noWindow: "kein Fenster geschrieben",
      lampOnly: "Lampe, kein Fenster",
      window: (faces, glass) =>
        `Fenster ${faces}${glass === undefined ? ", Größe und Glas vermutet" : `, ${glass}`}`,
      guessedWindow: (faces) => `ein Fenster nach ${faces}, Größe und Glas vermutet`,
      spot: (spot, number, light, need, days) =>
        `Platz ${spot}, Topf ${number}: ${light} von ${need} nötigen${days === undefined ? "" : `, ${days}`}.`,
      freeSpot: (spot, light, days) =>
        `Platz ${spot}, frei: ${light}${days === undefined ? "" : `, ${days}`}.`,
      fromTo: (dull, sunny) => `von ${dull} bis ${sunny}`,
      enoughAllYear: "reicht das ganze Jahr",
      shortAllYear: (lamp_h) => `das ganze Jahr knapp${lamp(lamp_h)}`,
      shortFrom: (from, until, lamp_h) => `knapp ${from} bis ${until}${lamp(lamp_h)}`,
      was: (from, until) => `knapp ab ${from} bis ${until}`,
      wasSo: (said) => said,
      bench: (worst, short_n, plants_n) =>
        `${worst}; bei ${short_n} von ${pots(plants_n)} irgendwann im Jahr knapp`,
      allFree: "hier steht keine Pflanze",
      turned: (since_d, side_frac) =>
        `seit ${Math.round(since_d) === 1 ? "1 Tag" : `${say.number(since_d)} Tagen`} nicht gedreht, ${say.percent(side_frac)} des Lichts von einer Seite`,
      unsure: "Wohin das Fenster geht, ist nicht geschrieben: zwei Fälle.",
      caseSaid: (faces) => `wenn es nach ${faces} geht`,
      noonAsk: (bright_lux, bright, dim_lux, dim) =>
        `Mittags an einem klaren Tag Lux am Blatt lesen: um ${bright_lux} heißt ${bright}, um ${dim_lux} heißt ${dim}.`,
    },
    debt: {
      said: (debt, outSince, catchUp) =>
        [
          outSince === undefined
            ? `${debt} mol im Rückstand in zwei Wochen.`
            : `${debt} mol im Rückstand; die Lampe ist seit ${outSince} aus.`,
          catchUp ? `${catchUp.hours} Lampe am Tag holen es in etwa ${sinceDays(catchUp.days)} auf.` : "",
        ]
          .filter(Boolean)
          .join(" "),
    },
    check: {
      brighterThanSky: (inside, most) =>
        `Innen ist es heller, als der Himmel jetzt sein kann (${inside} von ${most}). Lampe an, oder vertauscht?`,
      brighterInside: (inside, outside) =>
        `Innen heller als außen (${inside} und ${outside}). Lampe an, oder vertauscht?`,
      outsideTooBright: (outside, most) =>
        `Draußen ${outside}; ein klarer Himmel gibt jetzt höchstens ${most}. Andere Einheit, oder die Uhr?`,
      sunDown: "Die Sonne ist unter: ein Paar braucht Tageslicht. Lampe an, oder die Uhr?",
      lowSun:
        "Die Sonne steht noch kaum am Himmel: ein Paar gilt mehr, wenn sie höher steht. Später noch einmal lesen?",
      notGrey: (outside) =>
        `${outside} ist zu hell für einen gleichmäßig grauen Himmel. War er aufgelockert?`,
      swapped: "Tauschen",
      wasBroken: "Er war aufgelockert",
      asRead: "So behalten",
      noWindow: "Hier ist kein Fenster geschrieben: das Paar bleibt und sagt noch nichts.",
      noLamp: "Hier ist keine Lampe geschrieben: nichts zum Vergleichen.",
      redAndBlue: "Lux sagt nichts über rotes und blaues Licht. In µmol/m²s lesen.",
      darker: (read, modelled) =>
        `${read} des Lichts draußen; das Fenster, wie geschrieben, gibt ${modelled}. Baum, Balkon, Vorhang, Schmutz, oder andere Größe?`,
      brighter: (read, modelled) =>
        `${read} des Lichts draußen; das Fenster, wie geschrieben, gibt ${modelled}. Sonne zwischen den Messungen, draußen Schatten, oder andere Richtung (ein Kompass zeigt magnetisch Nord)?`,
      good: (read, modelled) => `${read} des Lichts draußen; das Fenster, wie geschrieben, gibt ${modelled}.`,
      lampOff: (read, modelled) =>
        `${read} µmol/m²s; die Lampe, wie geschrieben, gibt ${modelled}. Höhe, Leistung, oder das Messgerät?`,
      lampGood: (read, modelled) => `${read} µmol/m²s; die Lampe, wie geschrieben, gibt ${modelled}.`,
      then: (light, range, spell) =>
        `Dann ${light} mol am Tag (${range})${spell === undefined ? "" : `, ${spell}`}.`,
    },
    seats: {
      better: (first) => `Besserer Platz: ${first}`,
      best: "Jeder Topf steht in diesem Monat dort, wo er am besten steht.",
      few: "Zu wenige Töpfe, um Plätze zu tauschen.",
      swap: (number, other, before, after, otherEnough) =>
        `${number} und ${other} tauschen: ${number} bekommt ${after} statt ${before}, ${other} ${otherEnough ? "hat weiter genug" : "kann es entbehren"}.`,
      move: (number, to, before, after) => `${number} nach ${to}: ${after} statt ${before}.`,
      gain: (gain) => `${gain} mol am Tag mehr Bedarf gedeckt`,
    },
    worth: {
      pair: (spot, time, change) =>
        `${time} wert: Lux bei ${spot}, dann draußen, bei gleichmäßig grauem Himmel. ${change}`,
      lamp: (spot, time, change) => `${time} wert: Licht unter der Lampe bei ${spot}. ${change}`,
      dates: (now, then) => `Aus knapp ab ${now} würde etwa ${then}.`,
      light: (now, then) => `Aus ${now} mol am Tag würden etwa ${then}.`,
    },
    caution: {
      water:
        "Wasser und Strom: Steckdose mit Fehlerstromschutz, Kabel mit Tropfschlaufe, nichts Verdrahtetes über Töpfen, die gegossen werden. Vor dem Sprühen ausstecken.",
      eyes: "Nicht in leuchtende LED-Felder schauen.",
      load: (power_W) =>
        `Bis zu ${power_W} W an einem Brett: keine Ketten von Verlängerungen, höchstens vier Fünftel dessen, was der Stromkreis trägt.`,
      tooClose: (bench, distance) =>
        `Die Lampe von ${bench} hängt näher als ${distance}: eine halbe Minute die Hand in Blatthöhe halten; wird es heiß, höher hängen.`,
      hot: "Natrium- und Halogenlampen sind heiß: weg von Vorhang und Blatt, Glas heil, an zwei Punkten aufgehängt.",
      sun: "Nie in die Sonne schauen, um eine Richtung zu finden.",
    },
    working: {
      monthLight: (month) => `Tageslicht im ${month}`,
      monthFormula: "Fenster + Lampe + Himmel, Mittel der Tage der Jahreszeit",
      monthSum: (window, lamp, sky, all) => `${window} + ${lamp} + ${sky} = ${all} mol/m²d`,
      bandNote: (dull, sunny) => `Zwei von zehn Tagen sind trüber als ${dull}, zwei heller als ${sunny}.`,
      doubt: "Zweifel am Platz",
      doubtFrom: "Glas, Abstand, was gegenüber steht, Lampe; eine Standardabweichung",
      short: "wann das Licht knapp ist",
      shortFormula: "Tage, zwischen denen das übliche Tageslicht unter dem Mindesten bleibt",
      shortSum: (darkest, low, high, need) =>
        `${darkest} (${low} bis ${high}) im dunkelsten Monat, ${need} nötig`,
      darkest: (month) => `Licht im ${month}`,
      dates: (from, until) => `Ab ${from}, bis ${until}: die Spannen kommen vom Zweifel am Platz.`,
      before: (was, read) => `Vor der letzten Messung (${read}): ${was}.`,
      notWeather:
        "Eine trübe oder helle Woche kann es um einige Tage verschieben; das steckt nicht in der Spanne.",
      lampTooLong: (wanted, cap, endless) =>
        endless
          ? `Diese Lampe kann die Lücke im dunkelsten Monat nicht schließen; ihre Art verträgt einen Tag von ${cap}.`
          : `${wanted} dieser Lampe schlössen die Lücke im dunkelsten Monat, doch ihre Art verträgt einen Tag von ${cap}: eine stärkere Lampe, oder ein anderer Platz.`,
      lightAt: (number, spot) => `Licht für ${number} bei ${spot}`,
      needOf: (number) => `angestrebtes Licht für ${number}`,
      seat: "besserer Platz",
      seatFormula: "nicht gedeckter Bedarf vorher − nachher, über die Töpfe, die umziehen",
      seatSum: (pots, gain) =>
        `${pots.map(({ number, before, after }) => `${number}: ${before} → ${after}`).join("; ")}; Gewinn ${gain}`,
      sourceSeat: "Zuordnungsproblem, Kuhn 1955; Gewichte unsere Annahme",
      seatNote:
        "Fehlendes Licht zählt ganz, zu viel ein Zehntel, eine Lampenstunde über dem längsten Tag ein Mol.",
      worth: "die Messung, die am meisten bringt",
      worthFormula: "Zweifel jetzt gegen Zweifel mit dieser Messung im Buch, wenn sie wie erwartet ausfällt",
      worthSum: (now, then) => `±${now} → ±${then}`,
      lightHere: "Licht dort heute",
      sourceWorth: "unsere Annahme: ein Paar halbiert, was Geometrie, Glas und Himmelsmodell offen lassen",
      worthNote:
        "Ein Paar gilt am besten bei gleichmäßig grauem Himmel, beide Messungen in zwei Minuten, das Gerät waagrecht.",
      worthLampNote: "In Blatthöhe, das Gerät waagrecht, ohne Tageslicht; niemand beugt sich darüber.",
    },
  };
}
