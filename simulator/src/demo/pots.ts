import { DAY_ms, HOUR_ms } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { drawPlant, drawVessel } from "../nursery/draw-plant.ts";
import { available_g } from "../nursery/medium.ts";
import { sharedWhims } from "../nursery/outdoor-air.ts";
import { type Happening, type Pot, potAvailable_g } from "../nursery/potted-plant.ts";
import type { Tended } from "../nursery/tend.ts";
import { COLD, ROLES, type Role, SHELF, SILL, STORY, YARD } from "./cast.ts";

/** Days after the first on which the stories happen. */
export const STORY_DAYS = {
  toSill_d: 68,
  released_d: 96,
  sold_d: 121,
  rots_d: 42,
  died_d: 60,
  repotted_d: 82,
  trims_d: [38, 47, 90],
} as const;

/** The demo's pots as they stood on the first evening, with all that will happen to them. */
export function demoPots(from_ms: number, days_n: number, chance: Chance): Tended[] {
  return ROLES.map((role, key) => {
    const own = chance.under(role.number);
    const vessel = drawVessel(role.pot, role.medium, own.under("vessel"));
    const { traits, leafArea_m2, fresh_g } = drawPlant(vessel, own.under("plant"));
    const { medium } = vessel;
    const filled_frac = own.between(0.55, 1);
    const onSill = role.bench === SILL || role.number === STORY.toSill;
    // Nobody leaves a tree in a pot that it drinks dry in a day.
    const bearable_m2 = available_g(vessel.medium) / 6500;
    const calm = { ...traits, leafAreaMax_m2: Math.min(traits.leafAreaMax_m2, bearable_m2) };
    const pot: Pot = {
      at_ms: from_ms,
      plant: onSill ? alike(traits, own) : calm,
      vessel:
        role.number === STORY.repellent ? { ...vessel, medium: { ...medium, bypassDry_frac: 0.62 } } : vessel,
      bench: role.bench,
      light_frac: own.between(0.9, 1.1),
      surface_g: medium.surfaceDry_g + (medium.surfaceFull_g - medium.surfaceDry_g) * filled_frac,
      root_g: medium.rootWilt_g + (medium.rootFull_g - medium.rootWilt_g) * filled_frac,
      saucer_g: 0,
      leafArea_m2: leafArea_m2 * 0.75,
      fresh_g,
      roots_frac: 1,
      poured_g: 0,
      evaporated_g: 0,
      drunk_g: 0,
      lost_g: 0,
      next: 0,
      happenings: storyOf(role, from_ms, days_n, own),
      whims: sharedWhims(days_n + 1, own.between(0.06, 0.14), own.under("whims")),
    };
    if (onSill) {
      pot.leafArea_m2 =
        potAvailable_g(pot) * 0.0001 * own.between(0.9, 1.1) * (role.number === STORY.repellent ? 1.4 : 1);
      pot.fresh_g = pot.leafArea_m2 * traits.tissue_g_m2 + own.between(15, 45);
    }
    return {
      key,
      pot,
      usual_mL: Math.round((potAvailable_g(pot) * 0.68) / 10) * 10,
      weighings_n: role.weighings_n,
      weighAt_ms: role.weighings_n > 0 ? [from_ms + 2 * DAY_ms] : [],
      watered_ms: from_ms - DAY_ms,
      interval_d: role.bench === YARD ? 2 : 5,
      from_ms,
      until_ms: endOf(role, from_ms),
    };
  });
}

/** The trees on the sill were raised together and drink alike, so that they come due together. */
function alike(traits: Pot["plant"], chance: Chance): Pot["plant"] {
  return {
    ...traits,
    leafAreaMax_m2: 0.045,
    growth_frac_d: 0.003,
    swelling_g_d: chance.between(0.05, 0.2),
    density: 1.8,
    leaf: {
      assimilationMax_umol_m2_s: chance.between(13, 15),
      halfLight_umol_m2_s: chance.between(210, 250),
      g1: chance.between(4, 4.6),
      g0_mol_m2_s: chance.between(0.014, 0.019),
      width_m: chance.between(0.022, 0.03),
    },
  };
}

function endOf(role: Role, from_ms: number): number {
  if (role.number === STORY.sold) return from_ms + STORY_DAYS.sold_d * DAY_ms + 14 * HOUR_ms;
  if (role.number === STORY.died) return from_ms + STORY_DAYS.died_d * DAY_ms + 9 * HOUR_ms;
  return Number.POSITIVE_INFINITY;
}

function storyOf(role: Role, from_ms: number, days_n: number, chance: Chance): Happening[] {
  const evening = (day_d: number) => from_ms + day_d * DAY_ms + 19 * HOUR_ms;
  const story: Happening[] = [];
  if (role.number === STORY.toSill)
    story.push({ at_ms: evening(STORY_DAYS.toSill_d), what: "move", bench: SILL, light_frac: 1 });
  if (role.number === STORY.released)
    story.push({ at_ms: evening(STORY_DAYS.released_d), what: "move", bench: SHELF, light_frac: 0.95 });
  if (role.number === STORY.died)
    story.push({ at_ms: evening(STORY_DAYS.rots_d), what: "rot", rootsLeft_frac: 0.08 });
  if (role.number === STORY.rotten)
    story.push({ at_ms: evening(days_n - 5), what: "rot", rootsLeft_frac: 0.2 });
  if (role.number === STORY.repotted)
    story.push({
      at_ms: evening(STORY_DAYS.repotted_d),
      what: "pot",
      vessel: drawVessel({ form: "round", top_cm: 14, depth_cm: 10 }, "spongy", chance.under("new vessel")),
      filled_frac: 0.95,
    });
  const trim = (STORY.trimmed as readonly number[]).indexOf(role.number);
  if (trim >= 0)
    story.push({ at_ms: evening(STORY_DAYS.trims_d[trim] as number), what: "trim", taken_frac: 0.3 });
  // Somebody else tips the rest of a glass into a pot now and then.
  if (role.bench !== COLD && chance.happens(0.15))
    story.push({
      at_ms: evening(chance.whole(10, days_n - 25)),
      what: "sip",
      volume_mL: chance.whole(30, 70),
    });
  return story.sort((a, b) => a.at_ms - b.at_ms);
}
