import type { Say } from "../../words/say.ts";
import type { LeavesMeasured } from "./kinds.ts";
import type { Pace } from "./pace.ts";
import type { GrowthWords, PlainSaid, StageSaid } from "./words-shape.ts";
import { workingsGerman } from "./words-workings.de.ts";

const US_PER_METRIC = 1.8;
const IN2_PER_M2 = 1550;
const CM2_PER_M2 = 10_000;

const STAGES: StageSaid = {
  "just up": "gerade aufgegangen",
  "seed leaves": "Keimblätter offen",
  seedling: "Sämling",
  "in leaf": "belaubt",
  "in bud": "in Knospe",
  "first flower": "erste Blüte offen",
  "in flower": "in Blüte",
  "in fruit": "mit Früchten",
  "ripe fruit": "mit reifen Früchten",
  "at rest": "in Ruhe",
  "new leaves": "erstes neues Blatt länger als 1 cm",
};
const PLAIN: PlainSaid = {
  seed: "im Samen",
  up: "gerade aufgegangen",
  "seed leaves": "Keimblätter offen",
  "in leaf": "belaubt",
  branching: "verzweigt sich",
  "in bud": "in Knospe",
  "in flower": "in Blüte",
  "in fruit": "mit Früchten",
  ripening: "reift",
  ripe: "reif",
  over: "hat ihre Zeit hinter sich",
};
const COMING = {
  9: "Sämlinge da",
  61: "erste Blüte",
  81: "erste reife Frucht",
  "new leaves": "neue Blätter",
} as const;

/** Deutsche Sätze des Handwerks. */
export function german(say: Say): GrowthWords {
  const warmth = (sum_Cd: number) =>
    say.units === "us"
      ? `${say.number(sum_Cd * US_PER_METRIC, sum_Cd < 5 ? 1 : 0)} °F d`
      : `${say.number(sum_Cd, sum_Cd < 10 ? 1 : 0)} °C d`;
  const slow = ({ air_C, nodeWarmth_Cd, slow: how }: Pace) =>
    how === "stopped"
      ? `bei ${say.temperature(air_C)} wächst sie nicht`
      : `bei ${say.temperature(air_C)} wächst sie kaum: ${warmth(nodeWarmth_Cd)} am Tag`;
  return {
    staged: ({ stage, bbch }) => `gesehen: ${stage ? STAGES[stage] : `BBCH ${bbch}`}`,
    leaves: (data) => `${leafCount(data)} von ${data.leaves_n} Blättern gemessen`,
    nodes: ({ nodes_n }) => `${nodes_n} Knoten gezählt`,
    head: "Stadium",
    stage: (plain, bbch, low, high) =>
      `${PLAIN[plain]} (BBCH ${bbch})${low === high ? "" : `, 80 % ${low} bis ${high}`}`,
    guess: "nicht bekannt, als belaubt genommen",
    resting: "in Ruhe, bis neue Blätter kommen",
    runOut: "erste reife Frucht liegt zurück, weiter nicht bekannt",
    slow,
    warmth,
    area: (area_m2) =>
      say.units === "us"
        ? `${say.number(area_m2 * IN2_PER_M2, 0)} sq in`
        : `${say.number(area_m2 * CM2_PER_M2, area_m2 < 0.001 ? 1 : 0)} cm²`,
    coming: (milestone, best, range, same) => `${COMING[milestone]} ${same ? best : `${best} (${range})`}`,
    task: {
      look: "NACHSEHEN",
      newLeaf: "ist ein neues Blatt länger als 1 cm da?",
      newLeafWhy: "zurückgeschnitten: ihre Uhr beginnt beim ersten neuen Blatt, nicht beim Schnitt",
    },
    question: {
      stage: (number, seconds) =>
        `${number} ansehen (${seconds} s): Knospen, Blüten oder Früchte? Mit ihnen wird früher gegossen.`,
      count: (number, seconds) =>
        `Blätter von ${number} zählen und eines messen (${seconds} s): ihr Verbrauch ist dann besser bekannt.`,
    },
    cannotBeRead:
      "Dieser Eintrag ist nicht als Stadium, Blätter oder Knoten lesbar. Er bleibt stehen und wird nicht benutzt.",
    offered: {
      stage: {
        sown: "nach der Wärme seit der Aussaat",
        seen: "nach der Wärme, seit es gesehen wurde",
        cut: "nach der Wärme seit dem Austrieb",
        just: "gesehen",
        old: "vor zu langer Zeit gesehen",
        rest: "in Ruhe gesehen",
        cutBack: "zurückgeschnitten: in Ruhe, bis neue Blätter kommen",
      },
      area: {
        usual: "üblich für Art und Topf",
        sown: "seit der Aussaat gewachsen, nach Wärme und Licht",
        cut: "vom Schnitt gelassen, seither nach Wärme und Licht gewachsen",
        counted: "Blätter gezählt oder gemessen, seither nach Wärme und Licht gewachsen",
      },
      warmth: {
        sown: "Wärme seit der Aussaat",
        seen: "Wärme, seit das Stadium gesehen wurde",
        cut: "Wärme seit dem Austrieb",
      },
      nodes: {
        sown: "seit der Aussaat gebildet, nach Wärme",
        counted: "gezählt, seither nach Wärme gebildet",
      },
    },
    working: workingsGerman(say),
    looks: () => [{ key: "no new leaves", where: "tip", said: "seit zwei Wochen keine neuen Blätter" }],
    sign: {
      cold: "sie steht zu kalt zum Wachsen",
      rest: "in Ruhe: ihre Knospen sind noch nicht ausgetrieben",
      pace: (pace) =>
        pace.slow === "no"
          ? `bei ${say.temperature(pace.air_C)} ein neues Blatt in etwa ${say.number(1 / pace.nodes_per_d, 0)} Tagen`
          : slow(pace),
      restLeft: (rest_Cd, wasCut) =>
        `${wasCut ? "zurückgeschnitten" : "in Ruhe gesehen"}; noch etwa ${warmth(rest_Cd)} bis zu neuen Blättern`,
      warmer: (air_C) =>
        `bei ${say.temperature(air_C)} oder wärmer aufstellen, Tag und Nacht zusammengenommen`,
      wait: "warten, hell und nur feucht halten",
      notFeed: "nicht düngen, damit sie wächst",
      notWater: "nicht mehr gießen: sie braucht wenig",
      notCut: "nicht wieder schneiden, bevor sie Blätter hat",
    },
  };
}

const leafCount = ({ lengths_cm, measured_n }: LeavesMeasured) => lengths_cm?.length ?? measured_n ?? 1;
