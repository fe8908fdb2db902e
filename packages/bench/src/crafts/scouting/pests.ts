import type { PestName } from "@sillwood/science/pests";

/** Pests with a clock: looked for, and cleared by it. */
export const clockedPests = [
  "aphid",
  "spider mite",
  "broad mite",
  "thrips",
  "whitefly",
  "fungus gnat",
] as const;
/** Pests that nobody printed a clock for: looked for, and a hold while they are found. */
export const heldPests = ["mealybug", "scale", "caterpillar", "slug", "leafminer", "ant", "other"] as const;
export const allPests = [...clockedPests, ...heldPests] as const;
export type ClockedPest = (typeof clockedPests)[number];
export type Pest = (typeof allPests)[number];

export const isClocked = (pest: Pest): pest is ClockedPest =>
  (clockedPests as readonly string[]).includes(pest);

/** Whose clock stands for a pest that people name; of two aphids the one that peppers in cool rooms have. */
export const CLOCKS: Readonly<Record<ClockedPest, PestName>> = {
  aphid: "green peach aphid",
  "spider mite": "spider mite",
  "broad mite": "broad mite",
  thrips: "thrips",
  whitefly: "greenhouse whitefly",
  "fungus gnat": "fungus gnat",
};

export const ways = ["lens", "eye", "glance", "tap", "disc"] as const;
export type Way = (typeof ways)[number];

/** A look: how, at what, how much of it. */
export interface LookedAt {
  readonly way: Way;
  readonly tips_n?: number | undefined;
  readonly leaves_n?: number | undefined;
  readonly stem?: boolean | undefined;
}

interface Sight {
  readonly grown: number;
  readonly young?: number;
}
/** Chance to see one animal when all of a small plant is looked at so. Aphids, mites, thrips, whitefly as the pest sheet has them. @source our assumption */
const SIGHTS: Readonly<Record<Way, Readonly<Partial<Record<ClockedPest, Sight>>>>> = {
  lens: {
    aphid: { grown: 0.3 },
    "spider mite": { grown: 0.05 },
    "broad mite": { grown: 0.01 },
    thrips: { grown: 0.05 },
    whitefly: { grown: 0.5, young: 0.15 },
    "fungus gnat": { grown: 0.1 },
  },
  eye: {
    aphid: { grown: 0.1 },
    "spider mite": { grown: 0.006 },
    "broad mite": { grown: 0.001 },
    thrips: { grown: 0.015 },
    whitefly: { grown: 0.4, young: 0.02 },
    "fungus gnat": { grown: 0.08 },
  },
  glance: { aphid: { grown: 0.05 }, whitefly: { grown: 0.2 }, "fungus gnat": { grown: 0.03 } },
  tap: {
    aphid: { grown: 0.05 },
    thrips: { grown: 0.08 },
    whitefly: { grown: 0.4 },
    "fungus gnat": { grown: 0.04 },
  },
  disc: { "fungus gnat": { grown: 0, young: 0.2 } },
};
/** Where on a plant each pest sits. @source our assumption: weight to young shoots for aphids and broad mites, to leaves for the rest */
const SITS: Readonly<
  Record<ClockedPest, { readonly tips: number; readonly leaves: number; readonly stem: number }>
> = {
  aphid: { tips: 0.6, leaves: 0.35, stem: 0.05 },
  "spider mite": { tips: 0.1, leaves: 0.9, stem: 0 },
  "broad mite": { tips: 1, leaves: 0, stem: 0 },
  thrips: { tips: 0.5, leaves: 0.5, stem: 0 },
  whitefly: { tips: 0.3, leaves: 0.7, stem: 0 },
  "fungus gnat": { tips: 0, leaves: 0.3, stem: 0.7 },
};
/** So many tips and leaves are as good as all of a miniature tree. @source our assumption */
const ALL_TIPS_n = 3;
const ALL_LEAVES_n = 12;
/** Twisted tips of broad mites, once several have sucked for ten days. @source our assumption */
export const TWISTED = { after_d: 10, seen_frac: 0.5 } as const;

export interface Seeing {
  readonly grown_frac: number;
  readonly young_frac: number;
  readonly units_n?: number;
  readonly twisted: boolean;
}

/** What a look could have shown of a pest; undefined where it could not have shown any. */
export function seeingOf(look: LookedAt, pest: ClockedPest): Seeing | undefined {
  const sight = SIGHTS[look.way][pest];
  if (!sight) return undefined;
  if (look.way === "tap" || look.way === "disc")
    return { grown_frac: sight.grown, young_frac: sight.young ?? 0, twisted: false };
  const { tips_n = 0, leaves_n = 0, stem = false } = look;
  const sits = SITS[pest];
  const share =
    sits.tips * Math.min(1, tips_n / ALL_TIPS_n) +
    sits.leaves * Math.min(1, leaves_n / ALL_LEAVES_n) +
    (stem ? sits.stem : 0);
  if (share <= 0) return undefined;
  return {
    grown_frac: sight.grown * share,
    young_frac: (sight.young ?? 0) * share,
    units_n: Math.max(1, tips_n + leaves_n + (stem ? 1 : 0)),
    twisted: pest === "broad mite" && tips_n > 0 && look.way !== "glance",
  };
}

/** Catch of one adult a day by one card at the rim. @source our assumption; the pest sheet for gnats */
const CATCHES: Readonly<Partial<Record<ClockedPest, number>>> = {
  "fungus gnat": 0.2,
  whitefly: 0.05,
  thrips: 0.02,
};
/** Two cards at one pot catch more, ten do not. */
export const catchOf_per_d = (pest: ClockedPest, cards_n: number): number =>
  1 - (1 - (CATCHES[pest] ?? 0)) ** Math.min(3, cards_n);

export const tools = ["soap", "oil", "wash", "bti", "nematodes", "other"] as const;
export type Tool = (typeof tools)[number];
interface Kill {
  readonly egg: number;
  readonly young: number;
  readonly pupa: number;
  readonly adult: number;
}
/** Kill per hit of what is wetted. @source our assumption, after the pest sheet: soap .95, oil .8 and eggs too, wash .7, Bti .65, nematodes .8 */
export const KILLS: Readonly<Record<Tool, Kill>> = {
  soap: { egg: 0, young: 0.95, pupa: 0.3, adult: 0.95 },
  oil: { egg: 0.8, young: 0.8, pupa: 0.6, adult: 0.8 },
  wash: { egg: 0.3, young: 0.7, pupa: 0.2, adult: 0.7 },
  bti: { egg: 0, young: 0.65, pupa: 0, adult: 0 },
  nematodes: { egg: 0, young: 0.8, pupa: 0.3, adult: 0 },
  other: { egg: 0, young: 0.7, pupa: 0, adult: 0.7 },
};
/** Only what lives in the medium is reached there, only what sits on the plant by a spray. */
const IN_MEDIUM: readonly Tool[] = ["bti", "nematodes"];
export const reaches = (tool: Tool, pest: Pest): boolean =>
  tool === "other" || (pest === "fungus gnat") === IN_MEDIUM.includes(tool);
