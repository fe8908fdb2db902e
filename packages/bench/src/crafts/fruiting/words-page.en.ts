import type { FruitPageWords } from "./words-page-shape.ts";

const plants = (n: number) => (n === 1 ? "1 plant" : `${n} plants`);

export const pageEnglish: FruitPageWords = {
  head: (flowers, n, ripe) => `${flowers} open on ${plants(n)}; ${ripe} to pick.`,
  nothing: "No flowers written.",
  openSaid: (flowers, n) => `${flowers} on ${plants(n)}`,
  noneOpen: "No open flowers written within three days.",
  how: "brush before noon, again tomorrow",
  open: (flowers, due, last) =>
    `${flowers}${due ? "" : last === undefined ? ", outdoors: wind and insects do it" : `, brushed ${last}`}`,
  keepOf: (keep, has) => (keep === 0 ? `keep none of ${has}` : `keep ${keep} of ${has}`),
  keep: (keep) => `keep ${keep}`,
  noneThin: "none, too thin",
  noneLight: "none, light is needed elsewhere",
  total: (about, low, high) => `in all about ${about} (${low} to ${high})`,
  noFruit: "In this light it can fill no fruit: take all off, or give it more light.",
  keeping: (n, size) => `keeping ${n}: each about ${size} of full size`,
  keepingFull: (n) => `keeping ${n}: each comes to full size`,
  price: (full, fullMass, many, manyMass, share) =>
    `Fewer, full: about ${full} fruits, ${fullMass} ripe. Many, small: about ${many}, ${manyMass}. The price of full size: ${share} of the ripe mass.`,
  set: (now, brushed) => `A flower sets with a chance of about ${now}; brushed, about ${brushed}.`,
  setFine: (now) => `A flower sets with a chance of about ${now}.`,
  dropped: (list, day) => `Dropped so far: ${list}; last written ${day}.`,
  pickRipe: () => "Pick when ripe: heat and flavour come with the colour.",
  pickEither: () => "May be picked green at full size, or ripe.",
  hottest: (range) => `Hottest ${range}.`,
  early: (days) =>
    `Before frost or a move: pick what is a third coloured; it finishes in about ${days} at 20 °C. Green fruit does not.`,
  store: "Store at 7 to 13 °C, dry; not below 7 °C. Never fresh in oil at room temperature.",
  heatLab: (dry, fresh, method) =>
    `Laboratory${method === undefined ? "" : ` (${method})`}: ${[dry === undefined ? "" : `${dry} SHU dry`, fresh === undefined ? "" : `${fresh} SHU fresh`].filter((each) => each !== "").join(", ")}.`,
  heatUsual: (low, high) =>
    `No look tells heat. Usual for such kinds ${low} to ${high} SHU on dry basis, tenfold within one cultivar; only a laboratory knows.`,
  heatNone: "No look tells heat; only a laboratory knows, and it must say on which basis.",
  cross: (share) =>
    `Open flowers beside another pepper: about ${share} of fruits hold a crossed seed. Bag flowers before they open, brush, tag.`,
  crossNone: "No other pepper that crosses stands here.",
  lot: (kept, crossed, until) =>
    `${{ none: "open, may be crossed", bagged: "flowers bagged", caged: "plant caged", alone: "no other pepper in flower" }[kept]}${crossed === undefined ? "" : `, about ${crossed} of fruits`}; dry to 7 % water, keeps in a room until about ${until}`,
  test: (share, low, high) => `germinates ${share} (${low} to ${high})`,
  noTest: "not tested yet: lay out 20 seeds",
  careHot:
    "Hot fruit: gloves, goggles with the hottest; no hands to eyes or lenses. Away from children and pets.",
  careFood:
    "Do not eat fruit treated with what is not allowed on food. Keep the label's days before picking. Wash it.",
  careSeed:
    "Virus travels in pepper seed. Some kinds are protected, and borders want papers: ask the plant-health office first.",
  buds: (n) => (n === 1 ? "1 bud" : `${n} buds`),
};
