import type { Assumption } from "../assumption.ts";

/** The numbers of the window-sill guess; all adjustable, all shown as assumed. */
export const sunAssumptions = [
  {
    key: "clearness_frac",
    what: "share of the radiation above the air that reaches the ground, long-term mean of a temperate climate",
    value: 0.4,
    unit: "",
    min: 0.2,
    max: 0.75,
    source: "our assumption; dull winters 0.30-0.40, temperate summers 0.45-0.55 (from memory)",
    kind: "assumed",
  },
  {
    key: "photonsOfSolar_mol_MJ",
    what: "photosynthetic photons per energy of daylight: 0.45 of the energy at 4.57 µmol J⁻¹",
    value: 2.06,
    unit: "mol MJ⁻¹",
    min: 1.9,
    max: 2.3,
    source: "ThimijanHeins1983 for 4.57 µmol J⁻¹ (from memory); energy share 0.45 from an opened abstract",
    kind: "published",
  },
  {
    key: "skySeen_frac",
    what: "share of the sky's light that falls on an upright pane: half the sky, the lower half dimmed by houses and trees",
    value: 0.4,
    unit: "",
    min: 0.1,
    max: 0.55,
    source: "our assumption",
    kind: "assumed",
  },
  {
    key: "glass_frac",
    what: "share of the light that passes a clean double pane",
    value: 0.7,
    unit: "",
    min: 0.3,
    max: 0.92,
    source: "our assumption",
    kind: "assumed",
  },
  {
    key: "sill_frac",
    what: "share of the light inside the pane that a plant on the sill catches, frame and reveal taken off",
    value: 0.7,
    unit: "",
    min: 0.2,
    max: 1,
    source: "our assumption",
    kind: "assumed",
  },
  {
    key: "direct_frac",
    what: "share of the ground's light that comes straight from the sun, long-term mean at the clearness above",
    value: 0.4,
    unit: "",
    min: 0.1,
    max: 0.8,
    source: "our assumption",
    kind: "assumed",
  },
] as const satisfies readonly Assumption[];

/** The 80 % range of the guess is the guess divided and multiplied by this. Our assumption. */
export const guessedSillLightSpread = 2.5;
