import type { MediumName } from "../nursery/draw-plant.ts";
import type { PotShape } from "../nursery/pot-shape.ts";

/** Everything in the demo is invented; only the weather is real, and so the site stands where it was measured. */
export const SITE = {
  name: "Quillbank",
  latitude_deg: 47.6,
  longitude_deg: -122.3,
  elevation_m: 50,
  zone: "America/Los_Angeles",
  currency: "USD",
} as const;

export const SILL = 0;
export const SHELF = 1;
export const COLD = 2;
export const YARD = 3;

export const BENCHES = [
  {
    id: "south-sill",
    name: "South sill",
    place: "sill",
    outdoors: false,
    spots_n: 16,
    mark: "S",
    windowFaces_deg: 180,
  },
  { id: "lamp-shelf-a", name: "Lamp shelf A", place: "shelf", outdoors: false, spots_n: 22, mark: "A" },
  {
    id: "cold-room",
    name: "Cold room",
    place: "table",
    outdoors: false,
    spots_n: 8,
    mark: "C",
    windowFaces_deg: 90,
    quarantine: true,
  },
  { id: "yard-bed", name: "Yard bed", place: "bed", outdoors: true, spots_n: 8, mark: "Y" },
] as const;

type HabitWord = "thin" | "fat" | "lantern" | "tiny";

export const CULTIVARS = [
  {
    key: "thread",
    name: "Ember Thread",
    species: "annuum",
    habit: "thin",
    fruit: "thin, red, 6 cm",
    restricted: false,
  },
  {
    key: "thumb",
    name: "Stone Thumb",
    species: "annuum",
    habit: "fat",
    fruit: "blunt, brown to red, 4 cm",
    restricted: false,
  },
  {
    key: "moth",
    name: "Lantern Moth",
    species: "chinense",
    habit: "lantern",
    fruit: "wrinkled, yellow, 3 cm",
    restricted: true,
  },
  {
    key: "wick",
    name: "Small Wick",
    species: "frutescens",
    habit: "tiny",
    fruit: "upright, orange, 1 cm",
    restricted: false,
  },
  {
    key: "moor",
    name: "Highmoor",
    species: "pubescens",
    habit: "fat",
    fruit: "round, dark red, black seed",
    restricted: false,
  },
] as const satisfies readonly {
  key: string;
  name: string;
  species: string;
  habit: HabitWord;
  fruit: string;
  restricted: boolean;
}[];

type CultivarKey = (typeof CULTIVARS)[number]["key"];

/** One plant as the grower would introduce it. */
export interface Role {
  readonly number: number;
  readonly cultivar: CultivarKey;
  readonly pot: PotShape;
  readonly medium: MediumName;
  /** Where it stands at first; some are moved. */
  readonly bench: number;
  readonly batch?: "spring" | "early";
  readonly weighings_n: 0 | 1 | 2 | 4;
}

const round = (top_cm: number, depth_cm: number): PotShape => ({ form: "round", top_cm, depth_cm });
const oval = (length_cm: number, width_cm: number, depth_cm: number): PotShape => ({
  form: "oval",
  length_cm,
  width_cm,
  depth_cm,
});
const box = (length_cm: number, width_cm: number, depth_cm: number): PotShape => ({
  form: "rectangular",
  length_cm,
  width_cm,
  depth_cm,
});

const SHELF_CYCLE: readonly CultivarKey[] = ["thread", "wick", "moth", "thumb", "wick"];
const SHELF_POTS = [round(12, 9), round(11, 9), oval(15, 11, 7), round(13, 10), box(14, 11, 8)];
const SHELF_MEDIA: readonly MediumName[] = ["spongy", "bark", "spongy", "spongy", "bark"];

const shelf = [
  101, 102, 103, 104, 105, 106, 107, 108, 109, 110, 111, 112, 113, 114, 115, 116, 117, 133, 140, 143,
];

/** In walking order on their benches. */
export const ROLES: readonly Role[] = [
  ...sill(118, "thread", round(11.5, 9), "spongy", 1),
  ...sill(119, "thread", round(12, 8.5), "spongy", 1),
  ...sill(120, "thumb", round(12, 9), "spongy", 0),
  ...sill(121, "thumb", oval(15, 11, 8), "spongy", 1),
  ...sill(122, "moth", round(13, 9), "bark", 1),
  ...sill(123, "moth", round(12.5, 9), "bark", 2),
  ...sill(124, "thread", round(11.5, 9.5), "spongy", 1),
  ...sill(125, "wick", round(11, 9), "spongy", 1),
  ...sill(126, "wick", round(11.5, 8.5), "spongy", 1),
  ...sill(127, "thread", round(12, 9), "spongy", 2),
  ...sill(128, "thumb", round(12, 9), "spongy", 0),
  ...sill(129, "moth", box(14, 11, 7.5), "spongy", 1),
  ...sill(130, "thread", round(11.5, 9), "spongy", 0),
  ...shelf.map(
    (number, i): Role => ({
      number,
      cultivar: SHELF_CYCLE[i % 5] as CultivarKey,
      pot: SHELF_POTS[(i * 3) % 5] as PotShape,
      medium: SHELF_MEDIA[(i * 2) % 5] as MediumName,
      bench: SHELF,
      ...(i < 8 ? { batch: "early" as const } : {}),
      weighings_n: i % 4 === 0 ? 1 : 0,
    }),
  ),
  ...[131, 132, 134, 135, 136, 137, 138].map(
    (number, i): Role => ({
      number,
      cultivar: (["moth", "wick", "thumb", "thread", "thumb", "moth", "wick"] as const)[i] as CultivarKey,
      pot: round(i % 2 === 0 ? 11 : 12, 9),
      medium: i === 3 ? "gritty" : i === 5 ? "unknown" : "spongy",
      bench: COLD,
      batch: "spring",
      weighings_n: i === 0 ? 1 : 0,
    }),
  ),
  ...[139, 141, 142, 144, 145].map(
    (number, i): Role => ({
      number,
      cultivar: i === 3 ? "thumb" : "moor",
      pot: round(i < 2 ? 22 : 18, i < 2 ? 18 : 15),
      medium: i % 2 === 0 ? "bark" : "spongy",
      bench: YARD,
      weighings_n: i === 0 ? 1 : 0,
    }),
  ),
];

function sill(
  number: number,
  cultivar: CultivarKey,
  pot: PotShape,
  medium: MediumName,
  weighings_n: 0 | 1 | 2,
): Role[] {
  return [{ number, cultivar, pot, medium, bench: SILL, weighings_n }];
}

/** Pots with a story. */
export const STORY = {
  /** Moved from the shelf to the sill. */
  toSill: 109,
  /** Released from the cold room to the shelf. */
  released: 132,
  sold: 116,
  died: 136,
  /** Roots rotted: it hangs while its pot is heavy. */
  rotten: 107,
  /** Missed by the last big watering; its medium has gone dry. */
  repellent: 124,
  repotted: 104,
  trimmed: [105, 127, 140],
} as const;

export const SUPPLIES = [
  { name: "spongy mix", what: "medium", amount: 40_000, unit: "mL", price_minor: 1450, lot: "K3" },
  { name: "fine bark", what: "medium", amount: 20_000, unit: "mL", price_minor: 980, lot: "B11" },
  { name: "round pots, 12 cm", what: "pots", amount: 25, unit: "pieces", price_minor: 3750 },
  {
    name: "balanced feed",
    what: "feed",
    amount: 1000,
    unit: "mL",
    price_minor: 1199,
    lot: "F208",
    expiresAfter_d: 700,
  },
  {
    name: "soap spray",
    what: "treatment",
    amount: 750,
    unit: "mL",
    price_minor: 1325,
    lot: "S77",
    expiresAfter_d: 400,
  },
  { name: "plant labels", what: "labels", amount: 200, unit: "pieces", price_minor: 860 },
] as const;
