import { within } from "../errors/index.ts";

/** Daily light that a chilli plant needs by what it is meant to do [mol m⁻² d⁻¹]; priors, ±25 %: to be learned from internodes and fruit set. */
export const lightNeeds = {
  seedling: {
    min_mol_m2_d: 8,
    aim_mol_m2_d: 13,
    max_mol_m2_d: 15,
    source: "UNH extension; Owen 2021; GarciaLopez2020: 13 or more for stocky plants",
  },
  training: {
    min_mol_m2_d: 12,
    aim_mol_m2_d: 18,
    max_mol_m2_d: 25,
    source: "interpolated; UNH extension: 14 to 20",
  },
  fruiting: {
    min_mol_m2_d: 15,
    aim_mol_m2_d: 20,
    max_mol_m2_d: 30,
    source: "UNH extension; general pages on daily light",
  },
  holding: { min_mol_m2_d: 4, aim_mol_m2_d: 6, max_mol_m2_d: 8, source: "common practice, no source" },
  outdoors: { min_mol_m2_d: 20, aim_mol_m2_d: 35, max_mol_m2_d: 50, source: "common practice, no source" },
} as const;
export type LightStage = keyof typeof lightNeeds;

/** A need is a prior of this relative width, one standard deviation. Sheet of the field. */
export const lightNeedError_frac = 0.25;

/**
 * Longest days that flower and leaf of a species bear [h], lamp and daylight together: what is aimed at, and the limit.
 * annuum DemersGosselin2002; frutescens Yamamoto2007; the others 14 h, no source, to be learned.
 */
export const dayLengthCaps = {
  annuum: { cap_h: 16, limit_h: 20, flowering_h: 16, source: "DemersGosselin2002" },
  frutescens: { cap_h: 16, limit_h: 20, flowering_h: 13, source: "Yamamoto2007" },
  chinense: { cap_h: 14, limit_h: 20, flowering_h: 14, source: "our assumption" },
  baccatum: { cap_h: 14, limit_h: 20, flowering_h: 14, source: "our assumption" },
  pubescens: { cap_h: 14, limit_h: 20, flowering_h: 14, source: "our assumption" },
} as const;

/** Published day lengths: the best for growth in a greenhouse, and above which a line of frutescens bore no flowers [h]. */
export const publishedDayLengths = {
  sweetPepperOptimum_h: 20,
  tomatoOptimum_h: 14,
  frutescensNoFlowersAbove_h: 14,
} as const;

/** Percent more yield per percent more light, fruit vegetables (Marcelis2006); more in winter. */
export const yieldPerLight = { low: 0.7, high: 1 } as const;

/** Room lights brighter than this count as day [µmol m⁻² s⁻¹]; from memory. */
export const dayBegins_umol_m2_s = 5;

/**
 * Longest day for a plant, lamp and daylight together.
 *
 * @param plant species; whether flowers are wanted; day length set by the grower for this kind [h], 0 to 24
 * @returns hours to stay within and never to exceed [h]; at least 4 h are left dark
 * @throws QuantityError outside that range
 * @source DemersGosselin2002 for annuum; Yamamoto2007 for frutescens; the rest our assumption
 * @example dayLengthCap({ species: "frutescens", flowersWanted: true }).cap_h // 13
 */
export function dayLengthCap(plant: {
  readonly species: keyof typeof dayLengthCaps;
  readonly flowersWanted: boolean;
  readonly ownCap_h?: number;
}): { readonly cap_h: number; readonly limit_h: number } {
  if (plant.ownCap_h !== undefined) within("ownCap_h", plant.ownCap_h, 0, 24);
  const { cap_h, limit_h, flowering_h } = dayLengthCaps[plant.species];
  const usual_h = plant.flowersWanted ? flowering_h : cap_h;
  return { cap_h: Math.min(plant.ownCap_h ?? usual_h, limit_h), limit_h };
}

/**
 * Whether a daily light suits a stage, and by how much it is short or over.
 *
 * @param plant what it is meant to do; daily light [mol m⁻² d⁻¹], 0 to 80; need set by the grower [mol m⁻² d⁻¹], 1 to 60
 * @returns verdict; light short of the least and beyond the most that is useful; least, aim and most [mol m⁻² d⁻¹]
 * @throws QuantityError outside those ranges
 * @source our assumption; needs as `lightNeeds` says
 * @example lightVerdict({ stage: "training", light_mol_m2_d: 9 }).short_mol_m2_d // 3
 */
export function lightVerdict(plant: {
  readonly stage: LightStage;
  readonly light_mol_m2_d: number;
  readonly ownAim_mol_m2_d?: number;
}): {
  readonly verdict: "short" | "enough" | "more than useful";
  readonly short_mol_m2_d: number;
  readonly over_mol_m2_d: number;
  readonly min_mol_m2_d: number;
  readonly aim_mol_m2_d: number;
  readonly max_mol_m2_d: number;
} {
  const { stage, light_mol_m2_d, ownAim_mol_m2_d } = plant;
  within("light_mol_m2_d", light_mol_m2_d, 0, 80);
  if (ownAim_mol_m2_d !== undefined) within("ownAim_mol_m2_d", ownAim_mol_m2_d, 1, 60);
  const need = lightNeeds[stage];
  const scale = (ownAim_mol_m2_d ?? need.aim_mol_m2_d) / need.aim_mol_m2_d;
  const min_mol_m2_d = need.min_mol_m2_d * scale;
  const max_mol_m2_d = need.max_mol_m2_d * scale;
  const short_mol_m2_d = Math.max(0, min_mol_m2_d - light_mol_m2_d);
  const over_mol_m2_d = Math.max(0, light_mol_m2_d - max_mol_m2_d);
  const verdict = short_mol_m2_d > 0 ? "short" : over_mol_m2_d > 0 ? "more than useful" : "enough";
  const aim_mol_m2_d = need.aim_mol_m2_d * scale;
  return { verdict, short_mol_m2_d, over_mol_m2_d, min_mol_m2_d, aim_mol_m2_d, max_mol_m2_d };
}
