import type { Chance } from "../nursery/chance.ts";
import type { Colony, Counts, StageName } from "./colony.ts";
import type { CreatureName } from "./creatures.ts";

/** Ways in which people of the simulated nursery look. */
export type Way = "lens" | "eye" | "tap" | "disc" | "card";

type Seen = Partial<Record<StageName, number>>;

/**
 * Chance that one animal is seen at a look of an average person (a day on the card: that one adult is caught). Orders of
 * magnitude from talking to growers, nobody's measurement; each run and each person moves them.
 *
 * @source our assumption
 */
const SEEN: Readonly<Record<Way, Partial<Record<CreatureName, Seen>>>> = {
  lens: {
    aphid: { young: 0.27, adult: 0.4 },
    "spider mite": { egg: 0.008, young: 0.03, adult: 0.08 },
    "broad mite": { young: 0.005, adult: 0.015 },
    thrips: { young: 0.04, adult: 0.06 },
    whitefly: { young: 0.12, pupa: 0.18, adult: 0.5 },
    "fungus gnat": { adult: 0.1 },
  },
  eye: {
    aphid: { young: 0.08, adult: 0.14 },
    "spider mite": { adult: 0.008 },
    thrips: { adult: 0.015 },
    whitefly: { young: 0.02, pupa: 0.03, adult: 0.4 },
    "fungus gnat": { adult: 0.08 },
  },
  tap: {
    aphid: { young: 0.05, adult: 0.07 },
    thrips: { young: 0.07, adult: 0.1 },
    whitefly: { adult: 0.4 },
    "fungus gnat": { adult: 0.05 },
  },
  disc: { "fungus gnat": { young: 0.2 } },
  card: { thrips: { adult: 0.02 }, whitefly: { adult: 0.05 }, "fungus gnat": { adult: 0.2 } },
};

/** The eyes of one run: how well its people see each kind, and how unevenly animals sit. */
export interface Eyes {
  look(way: Exclude<Way, "card">, name: CreatureName, counts: Counts, damage_d: number): number;
  /** What one card takes in a day; those animals are gone. */
  catchOf(name: CreatureName, colony: Colony): number;
}

export function drawEyes(chance: Chance): Eyes {
  const skill = chance.logNormal(1, 0.3);
  const sight = new Map<CreatureName, number>();
  const of = (name: CreatureName): number => {
    if (!sight.has(name)) sight.set(name, chance.under(name).logNormal(1, 0.3));
    return sight.get(name) as number;
  };
  return {
    look(way, name, counts, damage_d) {
      // A colony sits on a few leaves: they are turned or they are not.
      const luck = chance.logNormal(0.85, 0.6);
      let found_n = 0;
      for (const [stage, share] of Object.entries(SEEN[way][name] ?? {})) {
        const each = Math.min(0.95, share * skill * of(name) * luck);
        for (let i = 0; i < counts[stage as StageName]; i++) if (chance.happens(each)) found_n++;
      }
      // Twisted tips are there to be seen when broad mites have sucked for long enough.
      const isTwisted = name === "broad mite" && damage_d > 10 && (way === "lens" || way === "eye");
      return found_n === 0 && isTwisted && chance.happens(0.5) ? 1 : found_n;
    },
    catchOf(name, colony) {
      const share = SEEN.card[name]?.adult ?? 0;
      return share === 0 ? 0 : colony.cull(["adult"], Math.min(0.9, share * of(name)));
    },
  };
}
