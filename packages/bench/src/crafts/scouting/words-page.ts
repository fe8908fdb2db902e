import type { Say } from "../../words/say.ts";
import type { PageWords } from "./words-page-shape.ts";

const english: PageWords = {
  head: (apart, due) =>
    apart === 0
      ? "Nothing is kept apart."
      : `${apart} kept apart, ${due === 0 ? "none to look at today" : `${due} to look at`}`,
  empty: "Nothing looked at yet. Start with the newest arrival.",
  rowFound: "found, not cleared",
  rowReleased: (on) => `released ${on}`,
  gateOpen: (to) => (to === "sell" ? "may be sold" : "may move"),
  gateDate: (to, said) => `${to === "sell" ? "sell" : "move"} ${said}`,
  gateShut: (to) => (to === "sell" ? "sale stays shut" : "stays apart"),
  notYet: "not enough evidence yet",
  holder: (pest, why) => `${pest} hold it: ${why}`,
  hides: "what was laid on the first day still hides",
  tooFew: "too few looks could have shown them",
  habit: (day) => `The habit of two clean weeks says ${day}.`,
  unseen: (pests) => `Not looked for: ${pests}.`,
  cheapest: (method, pest) => `Most for a minute against ${pest}: ${method}.`,
  card: (n) => (n === 1 ? "a sticky card at the rim for a week" : `${n} sticky cards for a week`),
  warm: (days, air) => `At ${air} it would be ready ${days} days sooner, if the plant bears it.`,
  stale: (air) => `Room warmth assumed ${air}: clocks run ±15 %.`,
  label: (until) => `Treated: not to be touched until ${until} (label).`,
  course: (pest, given, wanted, cleared) =>
    `${pest}: ${given} of ${wanted} treatments; that this cleared it: ${cleared}.`,
  trend: (says, doubling) =>
    says === "grows"
      ? `Card catches grow${doubling ? `, doubling in ${doubling}` : ""}.`
      : says === "falls"
        ? `Card catches fall${doubling ? `, halving in ${doubling}` : ""}.`
        : "Card catches: no trend proven.",
  together: "the plant",
  evidence: (free, looks) => `${free} free, ${looks === 1 ? "1 look" : `${looks} looks`}`,
  gate: {
    heat: (air) => `Too warm: ${air}; soap and oil burn from 32 °C.`,
    cold: (air) => `Too cold: ${air}; not below 5 °C.`,
    warmish: (air) => `${air} is warm for oil: early morning is better.`,
    airOk: (air) => `Air ${air}: fine.`,
    thirst: (left) => `Thirsty, ${left} of its water left: water first, spray tomorrow.`,
    thirstOk: (left) => `Full of water, ${left} left: fine.`,
    flowers: (n) => `${n} open flowers: spare them, wet pollen sets no fruit.`,
    flowersOk: () => "No open flowers: fine.",
    lamps: () => "Lamps off and out of the sun until the leaves are dry.",
    repotted: (days) => `Repotted ${days} days ago: not before 7 days are over.`,
    repottedOk: () => "Not repotted lately: fine.",
    often: (day) => `Treated ${day}: keep to the label's interval.`,
    oftenOk: () => "Nothing sprayed in the last three days: fine.",
    newKind: () => "New on this kind of plant? Two leaves first, 48 hours.",
  },
  win: (n, cleared) => `Can win: about ${n} treatments; a course like this clears it ${cleared}.`,
  never: (needs, every) =>
    `Cannot win at this interval: every ${every} it must kill ${needs} to shrink at all.`,
  remedies: "Shorter intervals, better wetting, a cooler room, or give the plant up.",
  again: (day) => `Again ${day}.`,
  courseTitle: "can this course win",
  cautions: [
    "The label is the law: only what lists this crop, this place and this user; professional use may need a licence.",
    "Gloves, eyes and fresh air when you spray; keep products from children, pets and water with fish.",
    "Sold plants may need inspection or papers; pests that must be reported are reported to your authority.",
  ],
  badCourse: "course needs tool, pest, every_d (1 to 60 d) and treatments_n (1 to 20)",
};

const german: PageWords = {
  head: (apart, due) =>
    apart === 0
      ? "Nichts steht getrennt."
      : `${apart} getrennt, ${due === 0 ? "heute nichts nachzusehen" : `${due} nachzusehen`}`,
  empty: "Noch nichts nachgesehen. Mit dem neuesten Zugang beginnen.",
  rowFound: "gefunden, noch nicht los",
  rowReleased: (on) => `freigegeben ${on}`,
  gateOpen: (to) => (to === "sell" ? "darf verkauft werden" : "darf umziehen"),
  gateDate: (to, said) => `${to === "sell" ? "Verkauf" : "Umzug"} ${said}`,
  gateShut: (to) => (to === "sell" ? "Verkauf bleibt zu" : "bleibt getrennt"),
  notYet: "noch zu wenig Befunde",
  holder: (pest, why) => `${pest} halten sie: ${why}`,
  hides: "was am ersten Tag gelegt wurde, verbirgt sich noch",
  tooFew: "zu wenige Befunde hätten sie gezeigt",
  habit: (day) => `Die Gewohnheit zweier sauberer Wochen sagt ${day}.`,
  unseen: (pests) => `Nicht danach gesehen: ${pests}.`,
  cheapest: (method, pest) => `Am meisten je Minute gegen ${pest}: ${method}.`,
  card: (n) => (n === 1 ? "eine Gelbtafel am Rand für eine Woche" : `${n} Gelbtafeln für eine Woche`),
  warm: (days, air) => `Bei ${air} wäre sie ${days} Tage früher so weit, wenn die Pflanze es verträgt.`,
  stale: (air) => `Raumwärme mit ${air} angenommen: die Uhren gehen ±15 %.`,
  label: (until) => `Behandelt: nicht anfassen bis ${until} (Etikett).`,
  course: (pest, given, wanted, cleared) =>
    `${pest}: ${given} von ${wanted} Behandlungen; dass sie damit los ist: ${cleared}.`,
  trend: (says, doubling) =>
    says === "grows"
      ? `Fänge wachsen${doubling ? `, doppelt in ${doubling}` : ""}.`
      : says === "falls"
        ? `Fänge fallen${doubling ? `, halb in ${doubling}` : ""}.`
        : "Fänge: keine Richtung erwiesen.",
  together: "die Pflanze",
  evidence: (free, looks) => `${free} frei, ${looks === 1 ? "1 Befund" : `${looks} Befunde`}`,
  gate: {
    heat: (air) => `Zu warm: ${air}; Seife und Öl verbrennen ab 32 °C.`,
    cold: (air) => `Zu kalt: ${air}; nicht unter 5 °C.`,
    warmish: (air) => `${air} ist warm für Öl: früh am Morgen ist besser.`,
    airOk: (air) => `Luft ${air}: gut.`,
    thirst: (left) => `Durstig, ${left} Wasser übrig: erst gießen, morgen spritzen.`,
    thirstOk: (left) => `Voll Wasser, ${left} übrig: gut.`,
    flowers: (n) => `${n} offene Blüten: aussparen, nasser Pollen setzt nicht an.`,
    flowersOk: () => "Keine offenen Blüten: gut.",
    lamps: () => "Lampen aus und keine Sonne, bis die Blätter trocken sind.",
    repotted: (days) => `Vor ${days} Tagen umgetopft: nicht vor 7 Tagen.`,
    repottedOk: () => "Nicht kürzlich umgetopft: gut.",
    often: (day) => `Behandelt ${day}: Abstand des Etiketts halten.`,
    oftenOk: () => "In den letzten drei Tagen nichts gespritzt: gut.",
    newKind: () => "Neu bei dieser Sorte? Erst zwei Blätter, 48 Stunden.",
  },
  win: (n, cleared) => `Kann gelingen: etwa ${n} Behandlungen; so ein Gang macht sie los: ${cleared}.`,
  never: (needs, every) =>
    `Kann bei diesem Abstand nicht gelingen: alle ${every} müssten ${needs} sterben, damit es weniger werden.`,
  remedies: "Kürzere Abstände, besser benetzen, kühler stellen oder die Pflanze aufgeben.",
  again: (day) => `Wieder ${day}.`,
  courseTitle: "kann das gelingen",
  cautions: [
    "Das Etikett gilt: nur was diese Kultur, diesen Ort und diese Person nennt; berufliche Anwendung kann einen Schein brauchen.",
    "Handschuhe, Augen und frische Luft beim Spritzen; fern von Kindern, Tieren und Fischwasser.",
    "Verkaufte Pflanzen können Kontrolle oder Papiere brauchen; meldepflichtige Schädlinge meldet man der Behörde.",
  ],
  badCourse: "course braucht tool, pest, every_d (1 bis 60 d) und treatments_n (1 bis 20)",
};

export const pageWords = ({ language }: Say): PageWords => (language === "de" ? german : english);
