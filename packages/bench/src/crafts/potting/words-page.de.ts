import type { Say } from "../../words/say.ts";
import type { PageWords } from "./words-page.en.ts";

export const pageGerman = (say: Say): PageWords => {
  const cm = (value: number) => say.length(value);
  return {
    potSaid: (form, across_cm, wide_cm, depth_cm, volume_mL) =>
      `${form === "rund" ? "runder" : form === "oval" ? "ovaler" : "eckiger"} Topf, ${form === "rund" ? cm(across_cm) : `${cm(across_cm)} × ${cm(wide_cm)}`} weit, ${cm(depth_cm)} tief, ${say.volume(volume_mL)} Substrat`,
    form: { round: "rund", rectangular: "eckig", oval: "oval" },
    chooseBags: "Welche Säcke sind da?",
    mixSaid: (mix, chance_frac, air_frac) =>
      `${mix}. Chance auf ${say.percent(air_frac)} Luft oder mehr nach dem Gießen: etwa ${say.number(Math.min(9, Math.round(10 * chance_frac)))} von 10.`,
    noMix: (air_frac, depth) =>
      `Keine Mischung dieser Säcke behält ${say.percent(air_frac)} Luft bei ${depth} Substrat.`,
    granularOnly: (parts) => `In dieser Schale nur körnige Mischungen: ${parts}.`,
    noneAtAll:
      "Eine so flache Schale hält Wasser, was immer darin ist: nach dem Gießen auf die Kante stellen oder auf einen Docht.",
    deeper: (depth) => `Dieselbe Mischung ginge ab ${depth} Substrat.`,
    airLine: (air, low, high) => `Luft nach dem Gießen ${air} (${low} bis ${high})`,
    waterLine: (water) => `hält etwa ${water} für die Pflanze`,
    wetLine: (layer, fill) => `nasse Schicht, unter 10 % Luft: die untersten ${layer} von ${fill}`,
    wetAll: "nasse Schicht, unter 10 % Luft: alles",
    airlessLine: (hours) => `nach jedem Gießen etwa ${hours} luftarm`,
    airlessNone: "hat nach dem Gießen sofort Luft",
    hours: (hours) => `${say.number(Math.round(hours))} ${Math.round(hours) === 1 ? "Stunde" : "Stunden"}`,
    scoopLine: (scoop, dry) => `je Schaufel ${scoop}; trocken ${dry}`,
    days: (days) => `${say.number(Math.round(days))} Tage`,
    test: (volume) => [
      `Löcher verschließen, bis zur Erdlinie mit Wasser füllen: das Volumen, hier etwa ${volume}.`,
      "Mit der feuchten Mischung füllen, über Nacht von unten tränken, auffüllen bis es glänzt, wiegen: voll Wasser.",
      "Stopfen ziehen, eine Stunde abtropfen lassen, wieder wiegen: abgetropft.",
      "Wenn möglich bei etwa 105 °C trocknen und noch einmal wiegen. Als „Substrat geprüft“ eintragen.",
    ],
    warmGood: (water, medium) => `Wasser ${water}, Substrat ${medium}: warm genug.`,
    warmWait: (water, wanted, minutes) =>
      `Wasser ${water}: zu kalt. Bis ${wanted} stehen lassen, etwa ${minutes}.`,
    warmNever: (room, wanted) => `Ein Raum von ${room} wärmt es nicht auf ${wanted}: warmes Wasser zugeben.`,
    mediumNote: (medium) => `Substrat ${medium}: unter 15 °C stocken Wurzeln. Warten oder weitermachen.`,
    mediumRefused: (medium) => `Substrat ${medium}: zu kalt zum Topfen. Erst hereinholen.`,
    daySaid: (plants_n) =>
      `Topftag, ${say.number(plants_n)} ${plants_n === 1 ? "Pflanze" : "Pflanzen"} auf der Schiene.`,
    dayEmpty: "Niemand muss umgetopft werden.",
    dayNext: (number, when, why) =>
      `Niemand muss umgetopft werden. Als Nächste: ${number}, etwa ${when} (${why}).`,
    dueSaid: (months_n) => `${say.number(months_n)} Monate im Substrat`,
    clockWater: (time) => `Wasser steht bis ${time}`,
    clockRoots: (time) => `Wurzeln bis ${time} wieder in Wasser oder Substrat`,
    clockDrain: (time) => `tropft ab bis ${time}`,
    past: (said) => `${said}: vorbei`,
    how: {
      lift: "über einer Wanne ausheben oder austopfen; feine Wurzeln feucht halten",
      cut: (share) => `vor dem Waschen zurückschneiden: etwa ${share} der Blätter lassen, oder auslassen`,
      wash: (minutes) => `lauwarm waschen; Wurzeln höchstens ${minutes} aus dem Wasser`,
      roots: "ein Viertel der Wurzeln weg, höchstens ein Drittel",
      pot: (pot) => `füllen und setzen: ${pot}`,
      soak: "zweimal gießen bis es läuft, das zweite Mal langsam",
      drain:
        "frei stellen, einmal auf die Kante stellen; dann wiegen: die eine Zahl, sie setzt das volle Gewicht",
      place: "heller Schatten, kein Wind, kein Dünger; erst wieder gießen, wenn das Gewicht es sagt",
    },
    heldSaid: (works) => `gesperrt: ${works}`,
    until: (work, day) => `${work} bis ${day}`,
    work: {
      feed: "Düngen",
      cut: "Schnitt",
      spray: "Spritzen",
      repot: "Umtopfen",
      wash: "Waschen",
      sell: "Verkauf",
    },
    saltLine: (refill, driest) => `Salze etwa ${refill} mS/cm frisch gegossen, ${driest} am trockensten`,
    nextPot: (low, high) => `nächster Topf: ${low} bis ${high} Substrat`,
    nextPotNone:
      "Kein größerer Topf trocknet und atmet im ersten Monat: frisches Substrat im selben Topf, oder zurückschneiden.",
    unknownPlant: "keine solche Pflanze in diesem Buch",
    pageOf: "Topfen hat keine Seite dieses Namens; erwartet mix, day oder pot",
  };
};
