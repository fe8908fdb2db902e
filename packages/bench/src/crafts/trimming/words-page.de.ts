import type { Say } from "../../words/say.ts";
import type { TrimPageWords } from "./words-page-shape.ts";

const SIDES = [
  "rechts",
  "rechts hinten",
  "hinten",
  "links hinten",
  "links",
  "links vorn",
  "vorn",
  "rechts vorn",
] as const;
const side = (towards_deg: number) =>
  SIDES[Math.round((((towards_deg % 360) + 360) % 360) / 45) % 8] as string;
const FORMS = {
  dome: "Kuppel",
  triangle: "Dreieck",
  slanting: "schräge Form",
  broad: "breite Krone",
} as const;
const BY = { guy: "Schnur", wire: "Draht", weight: "Gewicht", spacer: "Spreizer" } as const;
const count = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`;

export const pageGerman = (say: Say): TrimPageWords => {
  const cm = (mm: number) => say.length(mm / 10);
  // Clippings weigh little: whole grams would hide most of what changes.
  const grams = (g: number) =>
    say.units === "metric" && g < 20 ? `${say.number(g, 1)}\u2009g` : say.mass(g);
  const tenths = (n: number) => say.number(n, n < 10 && Math.abs(n - Math.round(n)) > 0.05 ? 1 : 0);
  return {
    list: (traced, all) => `${traced} von ${count(all, "Pflanze", "Pflanzen")} nachgezeichnet.`,
    noPlants: "Noch keine Pflanzen.",
    nothing: "Zwei Fotos, eine Vierteldrehung auseinander, und die Knoten lassen sich finden.",
    sketched: (height, trunk, leaves) =>
      `Skizziert: ${cm(height)} hoch, Stamm ${say.thickness(trunk)}, ${count(leaves, "Blatt", "Blätter")}. Für einzelne Schnitte nachzeichnen.`,
    share: (branch, share) => `Ast ${branch} trägt etwa ${say.percent(share)} des Laubs`,
    traced: (nodes, error, unseen) =>
      `Nachgezeichnet: ${count(nodes, "Knoten", "Knoten")}${error === undefined ? "" : `, Höhen stimmen auf ${say.number(error, 1)} mm`}.${unseen > 0 ? ` ${count(unseen, "Gabel", "Gabeln")} verdeckt, unbekannt.` : ""}`,
    height: (trunk, low, high, now) =>
      `Ein Stamm von ${say.thickness(trunk)} verlangt ${cm(low)} bis ${cm(high)}; sie hat ${cm(now)}.`,
    held: (why, until) =>
      `${until === undefined ? "Jetzt kein Schnitt" : `Kein Schnitt vor ${say.day(until)}`}: ${why}.`,
    aim: ({ form, top_mm, foot_mm, width_mm }) =>
      `${FORMS[form]}, von ${cm(foot_mm)} bis ${cm(top_mm)}, ${cm(width_mm)} breit`,
    name: (branch, joint) => (branch === 0 ? `Stamm, Knoten ${joint}` : `Ast ${branch}, Knoten ${joint}`),
    against: (why) =>
      why === "base"
        ? "Der Stamm wird nicht am Fuß geschnitten."
        : "Darunter bliebe an diesem Trieb keine Knospe und kein Blatt.",
    cut: {
      where: (name) => `über ${name}`,
      takes: ({ lit_frac, area_frac }, warn) =>
        `${say.percent(lit_frac)} des belichteten Laubs, ${say.percent(area_frac)} allen Laubs, Grenze ${say.percent(warn)}`,
      brings: ({ shoots_n, towards_deg, early_d, late_d }) =>
        early_d === null || late_d === null
          ? `jetzt zu kalt für neue Triebe; wenn es warm ist etwa ${tenths(shoots_n)}, der erste nach ${side(towards_deg)}`
          : `etwa ${tenths(shoots_n)} ${shoots_n < 1.05 ? "Trieb" : "Triebe"}, der erste nach ${side(towards_deg)} (${say.number(towards_deg)}°), in ${say.number(early_d)} bis ${say.number(late_d)} Tagen`,
      opens: ({ opened }, nameOf) =>
        opened.length === 0
          ? "kein Blatt viel heller"
          : say.list(
              opened.map(
                ({ node, before_frac, after_frac }) =>
                  `Blatt an ${nameOf(node)}: ${say.percent(before_frac)} auf ${say.percent(after_frac)} Licht`,
              ),
            ),
      loses: ({ flowers_n, fruit_n, mass_g }) =>
        `${flowers_n + fruit_n === 0 ? "keine Blüte, keine Frucht" : say.list([...(flowers_n > 0 ? [count(flowers_n, "offene Blüte", "offene Blüten")] : []), ...(fruit_n > 0 ? [count(fruit_n, "Frucht", "Früchte")] : [])])}, ${grams(mass_g)}`,
      outline: ({ outlineBefore_frac, outline_frac }) =>
        `Umriss ${say.percent(outlineBefore_frac)} auf ${say.percent(outline_frac)}`,
      again: (until) => `nicht vor ${say.day(until)}`,
      title: (name) => `Schnitt über ${name}`,
      said: (cut) =>
        `Schnitt ${cut.where}. Nimmt ${cut.takes}. Bringt ${cut.brings}. Öffnet: ${cut.opens}. Verliert ${cut.loses}. ${cut.outline}. Wieder ${cut.again}.`,
    },
    plans: {
      tried: (tried, about, isDone) =>
        isDone
          ? `${say.number(tried)} Schnittfolgen versucht.`
          : `${say.number(tried)} von etwa ${say.number(about)} versucht: bester der ersten ${say.number(tried)}.`,
      names: { nothing: "nichts", light: "leicht", middle: "mittel", bold: "kräftig", own: "eigener" },
      said: (cuts, taken) =>
        `${count(cuts, "Schnitt", "Schnitte")}, ${say.percent(taken)} des belichteten Laubs`,
      saidNothing: "kein Schnitt; dieselben Wochen gespielt",
      beats: (share) => `schlägt nichts: ${Math.round(share * 20)} von 20`,
      nothingBeside: "woran die anderen gemessen werden",
      warning: (taken, warn) =>
        `Nimmt ${say.percent(taken)}; ein Schnitt darf ${say.percent(warn)} nehmen. Sie ruht danach lange.`,
      pluck: (name, light) => `Blatt an ${name} (${say.percent(light)} Licht)`,
      week: (week, height, shoots) =>
        `Woche ${week}: ${cm(height)} hoch, ${count(shoots, "Trieb wächst", "Triebe wachsen")}`,
    },
    bend: (by, name, off) => `${BY[by]} an ${name}, ab etwa ${say.day(off)}`,
    potAngle: (roll, pitch, overlap, upright) =>
      roll === 0 && pitch === 0
        ? `Aufrecht getopft passt sie am besten: ${say.percent(upright)} des Umrisses.`
        : `Um ${say.number(Math.abs(roll))}° nach ${roll < 0 ? "links" : "rechts"} und ${say.number(Math.abs(pitch))}° nach ${pitch < 0 ? "vorn" : "hinten"} geneigt getopft: ${say.percent(overlap)} des Umrisses, aufrecht ${say.percent(upright)}.`,
    working: {
      light: "Licht in der Krone",
      fromTrace: "aus der nachgezeichneten Pflanze",
      warmth: "Wärme voraus",
      ahead: "Luft am Platz, zwei Wochen",
      sky: "Licht am Platz heute",
      formula: "f = Σ A·I (weg) / Σ A·I",
      sum: ({ lit_frac, area_frac }) =>
        `${say.percent(lit_frac)} des belichteten Laubs, ${say.percent(area_frac)} der Fläche`,
      break: "Chance der ersten Knospe",
      movesMost: "Welche Knospe treibt, bewegt es am meisten: Zahlen für Paprika wurden nicht gefunden.",
    },
    cautions: [
      "Vorsicht: saubere, scharfe Klinge; zwischen Pflanzen reinigen: Viren leben auf Klinge, Hand und Handschuh.",
      "Saft und Früchte scharfer Sorten brennen auf Haut und Augen: Handschuhe, Hände weg vom Gesicht. Von der Hand weg schneiden.",
      "Welke, frisch gewaschene oder gespritzte Pflanzen nicht schneiden; Wartezeit des Etiketts einhalten. Schnittgut aus der Quarantäne bleibt dort.",
      "Das ist eine Vorhersage. Du entscheidest.",
    ],
  };
};
