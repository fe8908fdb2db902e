/** What is dissolved in a pot, by mass of the element (bicarbonate by mass of the ion): the species of the one solute ledger. */
export const soluteSpecies = [
  "NO3N",
  "NH4N",
  "ureaN",
  "P",
  "K",
  "Ca",
  "Mg",
  "S",
  "Na",
  "Cl",
  "HCO3",
  "B",
  "Cu",
  "Fe",
  "Mn",
  "Mo",
  "Zn",
] as const;
export type SoluteSpecies = (typeof soluteSpecies)[number];

/**
 * What an entry does to a plant, batch, spot or supply, in one closed list. Crafts talk to one another only
 * through these and through readings: a craft may fold any effect and never sees another craft's entry kinds.
 */
export type Effect =
  | {
      readonly effect: "water in";
      /** Poured over the medium; at most what the pot can take, the rest runs out. */
      readonly volume_mL: number;
      readonly drained: "yes" | "no" | "unknown";
      readonly leachate_mL?: number;
    }
  | { readonly effect: "water out"; readonly volume_mL: number }
  | { readonly effect: "solutes"; readonly added_mg: Readonly<Partial<Record<SoluteSpecies, number>>> }
  /** Mass put on (positive) or taken off (negative) that is not water: stake, clippings, fruit. */
  | { readonly effect: "mass"; readonly change_g: number }
  | { readonly effect: "leaf area"; readonly kept_frac?: number; readonly measured_m2?: number }
  | { readonly effect: "flowers"; readonly change_n: number }
  | { readonly effect: "fruit"; readonly change_n: number; readonly change_g?: number }
  | { readonly effect: "roots"; readonly kept_frac: number }
  | { readonly effect: "structure"; readonly what: "cut" | "bent" | "freed" }
  | { readonly effect: "medium renewed"; readonly renewed_frac: number }
  | { readonly effect: "pot changed" }
  | { readonly effect: "moved"; readonly to: string }
  | { readonly effect: "turned"; readonly clockwise_deg: number }
  | { readonly effect: "sprayed"; readonly with: string }
  | { readonly effect: "split"; readonly count_n: number; readonly into: string }
  | { readonly effect: "merged"; readonly into: string }
  | { readonly effect: "lost"; readonly count_n: number }
  | { readonly effect: "ended"; readonly how: Ending }
  | { readonly effect: "reopened" }
  | { readonly effect: "supply in"; readonly supply: string; readonly amount: number }
  | { readonly effect: "supply out"; readonly supply: string; readonly amount: number }
  /** Somebody stood before the plant on a round: what was not done then is evidence too. */
  | { readonly effect: "visited" };

export type EffectName = Effect["effect"];
export type Ending = "died" | "thrown out" | "sold" | "given";
