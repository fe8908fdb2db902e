import type { Say } from "../../words/say.ts";
import type { Looked, Watered, Weighed } from "./kinds.ts";
import type { WaterProblem } from "./slice.ts";
import type { WateringWords } from "./words-shape.ts";
import { looksGerman, signsGerman } from "./words-signs.de.ts";
import { workingsGerman } from "./words-workings.de.ts";

/** Deutsche Sätze des Handwerks. */
export function german(say: Say): WateringWords {
  return {
    watered: (data) => watered(data, say),
    weighed: ({ weight_g, state, confirmed }: Weighed) =>
      `${say.mass(weight_g)} gewogen${{ "as found": "", "just drained": ", gerade abgetropft", "at lasting wilt": ", bei bleibendem Welken" }[state]}${confirmed ? ", nachgesehen" : ""}`,
    looked,
    task: {
      water: "GIESSEN",
      look: "NACHSEHEN",
      amount: (volume_mL) => say.volume(volume_mL),
      pours: (volumes_mL, wait_min) =>
        `in ${volumes_mL.length} Güssen von etwa ${say.volume(volumes_mL[0] ?? 0)}, dazwischen ${say.minutes(wait_min)} warten; oder 20 bis 30 min bis zum Rand ins Wasser stellen`,
      saucer: "Untersetzer einmal ausleeren, spätestens nach einer halben Stunde",
      why: (left_frac, use_g_d) => `noch ${say.percent(left_frac)}, braucht ${say.mass(use_g_d)} am Tag`,
      rootsSaid: (number) => `Wurzeln von ${number} ansehen, nicht gießen`,
      rootsWhy: (left_frac) => `hängt, obwohl etwa ${say.percent(left_frac)} des Wassers da sind`,
      rootsThen: "aus dem Topf ziehen: braun und weich, oder weiß und fest?",
      againSaid: "noch einmal ansehen: steht sie wieder?",
      againWhy: "war vor Trockenheit welk und ist gegossen; sie sollte binnen eines Tages wieder stehen",
    },
    limit: {
      feedDry: (used_frac) =>
        `das Substrat ist zu trocken zum Düngen: noch ${say.percent(1 - used_frac)} des Wassers; mit dem nächsten Gießen oder danach`,
      feedWilted: "war vor Trockenheit welk: erst klares Wasser, Dünger einen Tag nachdem sie wieder steht",
      cutWilted: "sie welkt: kein harter Schnitt, bevor sie wieder steht",
      waterDrowned: "hängt, obwohl der Topf nass ist: Wurzeln ansehen, nicht gießen",
    },
    date: (best, range, same) => (same ? best : `${best} (${range})`),
    later: (days_n) => `später als in ${say.number(days_n)} Tagen`,
    dateLong: (from, to) => `könnte jeder Tag von ${from} bis ${to} sein; in 8 von 10 Fällen ist es so`,
    left: (left_frac) => say.percent(left_frac),
    head: "Wasser",
    question: {
      weigh: (number, seconds, now, then) =>
        `${number} einmal wiegen (${seconds} s): aus ${now} würde etwa ${then}.`,
      weighDrained: (number, seconds) =>
        `${number} einmal wiegen, wenn sie gerade abgetropft ist (${seconds} s): von da an sagt jedes Gewicht, was noch da ist.`,
      lift: (number, seconds, now, then) =>
        `${number} anheben (${seconds} s): schwer oder leicht? Aus ${now} würde etwa ${then}.`,
    },
    problem: (problem) => problemSaid(problem, say),
    demandFar: (factor) =>
      `Sie braucht ${say.number(factor, 1)}-mal so viel, wie so viele Blätter sollten. Blätter falsch gezählt, ein Leck, Heizungsluft?`,
    chart: { name: "Wasser übrig", waterHere: "hier gießen" },
    letter: { watered: "w", weighed: "g", looked: "s" },
    offered: {
      capacity: {
        measured: "bei bleibendem Welken gewogen",
        learned: "gelernt aus Gewichten, Gaben und Blicken an diesem Topf",
        assumed: "nach Topf und Substrat",
      },
      held: {
        unseen: "nie gesehen: zwischen nass und trocken geraten",
        balance: "Wasserbilanz dieses Topfs",
      },
    },
    working: workingsGerman(say),
    looks: looksGerman,
    sign: signsGerman(say),
  };
}

function watered({ volume_mL, drained, leachate_mL, way }: Watered, say: Say): string {
  const how = way === "soaked" ? "getaucht" : "gegossen";
  const ran =
    leachate_mL === undefined
      ? { yes: ", abgetropft", no: ", nichts lief heraus", unknown: "" }[drained]
      : `, ${say.volume(leachate_mL)} liefen heraus`;
  return `${say.volume(volume_mL)} ${how}${ran}`;
}

function looked({ look, yes }: Looked): string {
  const seen = {
    dry: ["sah trocken aus", "sah nicht trocken aus"],
    light: ["leicht beim Anheben", "nicht leicht beim Anheben"],
    drooping: ["Blätter hängen", "Blätter stehen"],
    heavy: ["schwer beim Anheben", "nicht schwer beim Anheben"],
    moist: ["Substrat feucht", "Substrat nicht feucht"],
    wet: ["Substrat nass", "Substrat nicht nass"],
  }[look];
  return (yes ? seen[0] : seen[1]) as string;
}

function problemSaid(problem: WaterProblem, say: Say): string {
  switch (problem.what) {
    case "held weight":
      return `${say.mass(problem.weight_g)}, erwartet ${say.mass(problem.low_g)} bis ${say.mass(problem.high_g)}. Derselbe Topf? Untersetzer leer? Etwas dazugekommen? Zurückgelegt, nicht benutzt.`;
    case "two weights":
      return `${say.mass(problem.weight_g)} und ${say.mass(problem.other_g)} binnen einer Minute. Stand die Waage auf 0?`;
    case "gained without water":
      return `${say.mass(problem.gain_g)} schwerer, ohne dass Wasser eingetragen ist. Wasser im Untersetzer, ein anderer Topf, oder nicht eingetragen?`;
    case "more than it holds":
      return `${say.volume(problem.volume_mL)} sind mehr, als der Topf fasst, etwa ${say.volume(problem.capacity_g)}. Liter statt Milliliter getippt?`;
    case "drained weight rising":
      return `Abgetropft wiegt er ${say.percent(problem.gain_frac)} mehr als früher. Salze, Moos oder Wurzeln: einmal unter Aufsicht austrocknen lassen.`;
    case "cannot be read":
      return "Dieser Eintrag ist nicht als Gewicht oder Blick lesbar. Er bleibt stehen und wird nicht benutzt.";
  }
}
