import type { MediumName } from "@sillwood/science/medium";
import type { Say } from "../../words/say.ts";
import type { PottingWords } from "./words-shape.ts";

const METHOD = {
  "one to two": "ein Teil in zwei Wasser",
  saturated: "Sättigungsauszug",
  "pour-through": "Durchguss",
};
const PARTS: Readonly<Record<MediumName, string>> = {
  "peat and perlite 80:20": "Torf und Perlit 80:20",
  "peat and perlite 70:30": "Torf und Perlit 70:30",
  "coir and perlite 80:20": "Kokos und Perlit 80:20",
  "coir and bark 50:50": "Kokos und Rinde 50:50",
  "peat and bark 50:50": "Torf und Rinde 50:50",
  "peat, vermiculite and perlite 50:25:25": "Torf, Vermiculit und Perlit 50:25:25",
  "peat, vermiculite and bark 40:30:30": "Torf, Vermiculit und Rinde 40:30:30",
  peat: "Torf",
  bark: "Rinde",
  coir: "Kokos",
  perlite: "Perlit",
  pumice: "Bims",
  "clay granules": "Tongranulat",
  vermiculite: "Vermiculit",
  sand: "Sand",
};

export const german = (say: Say): PottingWords => {
  const ec = (value: number) => `${say.number(value, 1)} mS/cm`;
  const days = (value: number) =>
    `${say.number(Math.round(value))} ${Math.round(value) === 1 ? "Tag" : "Tage"}`;
  return {
    part: (name) => PARTS[name],
    filled: ({ recipe }) =>
      `gefüllt mit ${say.list(recipe.map(({ part, scoops_n }) => `${say.number(scoops_n)} ${scoops_n === 1 ? "Schaufel" : "Schaufeln"} ${PARTS[part]}`))}`,
    tested: ({ medium_mL, saturated_g, drained_g }) =>
      `Substrat geprüft: ${say.volume(saturated_g - drained_g)} liefen aus ${say.volume(medium_mL)} ab`,
    prepared: ({ water_C, medium_C }) =>
      `Topftag begonnen: Wasser ${say.temperature(water_C)}, Substrat ${say.temperature(medium_C)}`,
    lifted: "ausgehoben",
    cutBack: ({ leavesKept_frac }) =>
      `zum Topfen zurückgeschnitten, ${say.percent(leavesKept_frac)} der Blätter bleiben`,
    washed: ({ rootsKept_frac }) => `Wurzeln gewaschen, ${say.percent(rootsKept_frac)} davon bleiben`,
    drained: "nach dem Topfen abgetropft",
    placed: ({ to }) =>
      to === undefined ? "nach dem Topfen aufgestellt" : `nach dem Topfen aufgestellt: ${say.name(to)}`,
    saltsRead: ({ ec_mS_cm, method }) => `Salze gemessen: ${ec(ec_mS_cm)}, ${METHOD[method]}`,
    rootsLooked: ({ rootsCircling, standing_s }) =>
      `Wurzeln angesehen: ${rootsCircling ? "kreisend" : "nicht kreisend"}, Wasser steht ${say.number(standing_s)} s`,
    cannotRead: "Ein Eintrag zu diesem Topf ist nicht lesbar.",
    fromLedger: "alles Gegossene, Abgelaufene und Entnommene seit dem Topfen, mit üblichem Leitungswasser",
    capacityFrom: (by, medium_mL, held_frac) =>
      `${say.volume(medium_mL)} ${by === "test" ? "geprüftes Substrat" : by === "recipe" ? "Mischung bekannter Teile" : "solches Substrat"} in dieser Höhe, ${say.percent(held_frac)} davon Wasser für die Pflanze`,
    care: "Handschuhe; trockenes Substrat vor dem Rühren anfeuchten, sein Staub gehört nicht in die Lunge. Klinge reinigen. Saft brennt in Augen und auf der Haut.",
    limit: {
      cut: "Wurzeln gewaschen: drei Wochen kein Schnitt",
      spray: "Wurzeln gewaschen: nicht spritzen, was sich nicht satt trinken kann",
      wash: "Wurzeln gewaschen: erst nachwachsen lassen",
      sell: "Wurzeln gewaschen: noch nicht eingewöhnt",
      feed: "frisches Substrat: erst neue Wurzeln, sein Vorrat düngt solange",
      repot: "gerade getopft",
    },
    task: {
      repot: "UMTOPFEN",
      samePot: "frisches Substrat, selber Topf",
      wider: "frisches Substrat, ein Topf höchstens 5 cm weiter",
      repotWhy: (age_d, score) =>
        `${say.number(Math.round(age_d / 30.4))} Monate im Substrat${score >= 2 ? `, ${say.number(score)} Zeichen eines vollen Topfes` : ""}`,
      flush: "SPÜLEN",
      doses: (doses_n, each_mL, wait_min) =>
        `${say.number(doses_n)} mal ${say.volume(each_mL)}, im Abstand von ${say.minutes(wait_min)}, zimmerwarm`,
      emptySaucer: "jedes Mal den Untersetzer leeren",
      flushWhy: (extract, caution) => `Salze etwa ${ec(extract)}, Vorsicht ab ${ec(caution)}`,
    },
    working: {
      capacity: "Was der Topf für seine Pflanze hält",
      capacityFormula:
        "Volumen × (Wasser nach dem Abtropfen, soweit ein Guss reicht − was Wurzeln nicht bekommen)",
      volume: "Substratvolumen",
      water: "Wasser nach dem Abtropfen in dieser Höhe",
      air: "Luft nach dem Abtropfen in dieser Höhe",
      unavailable: "Wasser, das Wurzeln nicht bekommen",
      fromShape: "Innenmaße des Topfes bis zur Erdlinie",
      fillFrom: (by) =>
        by === "test"
          ? "deine Porenprüfung"
          : by === "recipe"
            ? "gedruckte und erinnerte Werte der Teile"
            : "was für solches Substrat üblich ist",
      ours: "unsere Annahme",
      trade: "übliche Praxis, ohne Quelle",
      testIt: "Eine Porenprüfung dieses Substrats engt es am meisten ein.",
      salts: "Salze im Substrat, wie ein Sättigungsauszug sie zeigt",
      saltFormula: "Gelöstes / Wasser bei vollem Topf, verdünnt wie in der Paste",
      held: "im Topf gelöst",
      waterAll: "Wasser bei vollem Topf",
      refill: "frisch gegossen",
      driest: "am trockensten",
      caution: "Vorsicht ab",
      tap: "Leitungswasser",
      ledger: "Gegossenes weniger Abgelaufenes und Entnommenes",
      readIt: "Eine Durchgussmessung engt es am meisten ein.",
      cautionOnly: "Eine Vorsichtslinie, nie eine Ertragsprognose.",
      repot: "Frisches Substrat fällig",
      repotFormula: "ein Jahr nach dem Topfen, früher bei zwei Zeichen eines vollen Topfes",
      repotSum: (age_d, score) => `${days(age_d)} alt, ${say.number(score)} Zeichen`,
      age: "Alter des Substrats",
      storeLeft: "übrig vom früheren Vorrat",
      after: "Substrat hält",
      noMark: "noch nicht bekannt: keine Marke von nach dem Topfen",
      sinceMark: "gelernter Vorrat gegen den zwei Monate nach dem Topfen",
      days,
    },
  };
};
