import type { Say } from "../../words/say.ts";
import type { LightingWords } from "./words-shape.ts";

/** German sentences of the page of benches and light, of lamps and of readings. */
export function pageGerman(say: Say): Pick<LightingWords, "page" | "lamp" | "check"> {
  const hours = (value: number) => `${say.number(value, 2)} h`;
  const lamp = (lamp_h: number | undefined) => (lamp_h === undefined ? "" : `: ${hours(lamp_h)} Lampe`);
  const pots = (count: number) => (count === 1 ? "1 Topf" : `${count} Töpfen`);
  return {
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
    lamp: {
      set: (on, off, hours_h) => `Lampe ${on} bis ${off}, ${hours(hours_h)}`,
      stayOff: "Lampe aus: das Tageslicht reicht",
      out: "die Lampe ist ausgefallen",
      outSince: (day) => `ausgefallen seit ${day}`,
      isSet: (on, off, hours_h, written) =>
        `${written ? "gestellt auf" : "angenommen"} ${on} bis ${off}, ${hours(hours_h)}`,
      isOff: "auf aus gestellt",
      near: (difference) => `${difference} mol am Tag anders: keinen Handgriff wert`,
      onceAWeek: (since_d) =>
        `${since_d < 1 ? "heute" : `vor ${say.number(Math.max(1, Math.floor(since_d)))} d`} gestellt: höchstens eine Änderung in der Woche`,
      short: (short, cap_h, wanted) =>
        `${short} mol am Tag bleiben offen bei einem Tag von ${hours(cap_h)}${wanted === undefined ? "" : `; ${wanted} µmol/m²s an den Blättern würden reichen`}.`,
      energy: (kWh_d, cost, perPlant) =>
        `${kWh_d} kWh am Tag${cost === undefined ? "" : `, ${cost}`}${perPlant === undefined ? "" : `; ${perPlant} je Pflanze und Monat`}`,
      ask: (bench, on, off, now) => `Lampe von ${bench} stellen: ${on} bis ${off}. Jetzt ${now}.`,
      askOff: (bench, now) => `Lampe von ${bench} ausschalten: das Tageslicht reicht. Jetzt ${now}.`,
      isSetNow: "Ist gestellt",
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
  };
}
