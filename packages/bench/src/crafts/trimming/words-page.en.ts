import type { Say } from "../../words/say.ts";
import type { TrimPageWords } from "./words-page-shape.ts";

const SIDES = [
  "right",
  "right and back",
  "back",
  "left and back",
  "left",
  "left and front",
  "front",
  "right and front",
] as const;
const side = (towards_deg: number) =>
  SIDES[Math.round((((towards_deg % 360) + 360) % 360) / 45) % 8] as string;
const FORMS = {
  dome: "dome",
  triangle: "triangle",
  slanting: "slanting form",
  broad: "broad crown",
} as const;
const BY = { guy: "guy", wire: "wire", weight: "weight", spacer: "spacer" } as const;
const count = (n: number, one: string, more = `${one}s`) => `${n} ${n === 1 ? one : more}`;

export const pageEnglish = (say: Say): TrimPageWords => {
  const cm = (mm: number) => say.length(mm / 10);
  // Clippings weigh little: whole grams would hide most of what changes.
  const grams = (g: number) =>
    say.units === "metric" && g < 20 ? `${say.number(g, 1)}\u2009g` : say.mass(g);
  const tenths = (n: number) => say.number(n, n < 10 && Math.abs(n - Math.round(n)) > 0.05 ? 1 : 0);
  return {
    list: (traced, all) => `${traced} of ${count(all, "plant")} traced.`,
    noPlants: "No plants yet.",
    nothing: "Two photos, a quarter turn apart, and the joints can be found.",
    sketched: (height, trunk, leaves) =>
      `Sketched: ${cm(height)} tall, trunk ${say.thickness(trunk)}, ${count(leaves, "leaf", "leaves")}. Trace it to see single cuts.`,
    share: (branch, share) => `branch ${branch} carries about ${say.percent(share)} of the leaf`,
    traced: (nodes, error, unseen) =>
      `Traced: ${count(nodes, "joint")}${error === undefined ? "" : `, heights agree within ${say.number(error, 1)} mm`}.${unseen > 0 ? ` ${count(unseen, "fork")} hidden, unknown.` : ""}`,
    height: (trunk, low, high, now) =>
      `A trunk of ${say.thickness(trunk)} asks for ${cm(low)} to ${cm(high)}; it is ${cm(now)}.`,
    held: (why, until) =>
      `${until === undefined ? "No cut now" : `No cut before ${say.day(until)}`}: ${why}.`,
    aim: ({ form, top_mm, foot_mm, width_mm }) =>
      `${FORMS[form]}, from ${cm(foot_mm)} to ${cm(top_mm)}, ${cm(width_mm)} wide`,
    name: (branch, joint) => (branch === 0 ? `trunk, joint ${joint}` : `branch ${branch}, joint ${joint}`),
    against: (why) =>
      why === "base"
        ? "The trunk is not cut at its base."
        : "No bud or leaf would be left below it on this stem.",
    cut: {
      where: (name) => `above ${name}`,
      takes: ({ lit_frac, area_frac }, warn) =>
        `${say.percent(lit_frac)} of lit leaf, ${say.percent(area_frac)} of all leaf, limit ${say.percent(warn)}`,
      brings: ({ shoots_n, towards_deg, early_d, late_d }) =>
        early_d === null || late_d === null
          ? `too cold now for new shoots; about ${tenths(shoots_n)} when it is warm, first to the ${side(towards_deg)}`
          : `about ${tenths(shoots_n)} ${shoots_n < 1.05 ? "shoot" : "shoots"}, first to the ${side(towards_deg)} (${say.number(towards_deg)}°), in ${say.number(early_d)} to ${say.number(late_d)} days`,
      opens: ({ opened }, nameOf) =>
        opened.length === 0
          ? "no leaf much brighter"
          : say.list(
              opened.map(
                ({ node, before_frac, after_frac }) =>
                  `leaf at ${nameOf(node)}: ${say.percent(before_frac)} to ${say.percent(after_frac)} light`,
              ),
            ),
      loses: ({ flowers_n, fruit_n, mass_g }) =>
        `${flowers_n + fruit_n === 0 ? "no flower, no fruit" : say.list([...(flowers_n > 0 ? [count(flowers_n, "open flower")] : []), ...(fruit_n > 0 ? [count(fruit_n, "fruit")] : [])])}, ${grams(mass_g)}`,
      outline: ({ outlineBefore_frac, outline_frac }) =>
        `${say.percent(outlineBefore_frac)} to ${say.percent(outline_frac)} match`,
      again: (until) => `not before ${say.day(until)}`,
      title: (name) => `cut above ${name}`,
      said: (cut) =>
        `Cut ${cut.where}. Takes ${cut.takes}. Brings ${cut.brings}. Opens ${cut.opens}. Loses ${cut.loses}. Outline: ${cut.outline}. Again ${cut.again}.`,
    },
    plans: {
      tried: (tried, about, isDone) =>
        isDone
          ? `${say.number(tried)} sets of cuts tried.`
          : `${say.number(tried)} of about ${say.number(about)} tried: best of the first ${say.number(tried)}.`,
      names: { nothing: "nothing", light: "light", middle: "middle", bold: "bold", own: "own" },
      said: (cuts, taken) => `${count(cuts, "cut")}, ${say.percent(taken)} of lit leaf`,
      saidNothing: "no cut; the same weeks played",
      beats: (share) => `beats nothing: ${Math.round(share * 20)} in 20`,
      nothingBeside: "what the others are held against",
      warning: (taken, warn) =>
        `Takes ${say.percent(taken)}; a trim may take ${say.percent(warn)}. It will rest long.`,
      pluck: (name, light) => `leaf at ${name} (${say.percent(light)} light)`,
      week: (week, height, shoots) => `week ${week}: ${cm(height)} tall, ${count(shoots, "shoot")} growing`,
    },
    bend: (by, name, off) => `${BY[by]} at ${name}, off about ${say.day(off)}`,
    potAngle: (roll, pitch, overlap, upright) =>
      roll === 0 && pitch === 0
        ? `Potted upright it fits best: ${say.percent(upright)} match.`
        : `Potted leaning ${say.number(Math.abs(roll))}° to the ${roll < 0 ? "left" : "right"} and ${say.number(Math.abs(pitch))}° ${pitch < 0 ? "forward" : "back"}: ${say.percent(overlap)} match, upright ${say.percent(upright)}.`,
    working: {
      light: "light in the crown",
      fromTrace: "from the traced plant",
      warmth: "warmth ahead",
      ahead: "air at its spot, two weeks",
      sky: "light at its spot today",
      formula: "f = Σ A·I (gone) / Σ A·I",
      sum: ({ lit_frac, area_frac }) =>
        `${say.percent(lit_frac)} of lit leaf, ${say.percent(area_frac)} by area`,
      break: "chance of the first bud",
      movesMost: "Which bud grows moves it most: no counts for peppers were found.",
    },
    cautions: [
      "Care: clean, sharp blade; clean it between plants: viruses live on blades, hands and gloves.",
      "Sap and fruit of hot kinds burn skin and eyes: gloves, hands off the face. Cut away from your hand.",
      "Do not trim wilted, just washed or sprayed plants; keep the label's re-entry time. Trimmings of quarantined plants stay in quarantine.",
      "This is a forecast. You decide.",
    ],
  };
};
