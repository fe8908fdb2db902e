import { conductivityOf_mS_cm, pourThroughRatio } from "@sillwood/science/medium";
import { soluteSpecies } from "../../book/effects.ts";
import type { Sight } from "../craft.ts";
import { heldAt, type Masses } from "./ledger.ts";
import type { PotSeen, PotSlice } from "./slice.ts";

type Seen = Pick<Sight, "assumed">;

/** Conductivity of so much water with these masses in it. */
export function strength_mS_cm(held_mg: Masses, water_mL: number): number {
  const litres = Math.max(1, water_mL) / 1000;
  const ions: Record<string, number> = {};
  soluteSpecies.forEach((species, i) => {
    ions[species] = Math.min(1e6, (held_mg[i] as number) / litres);
  });
  return Math.min(100, conductivityOf_mS_cm(ions));
}

const uptake = (sight: Seen) => ({
  massFlow_frac: sight.assumed("massFlow_frac"),
  massFlowSlow_frac: sight.assumed("massFlowSlow_frac"),
});

/** What is held once the pot has been drawn down to so much water. */
export const heldBy = (slice: PotSlice, water_mL: number, sight: Seen): Masses =>
  heldAt(slice.ledger, Math.min(water_mL, slice.ledger.water_mL), uptake(sight));

/** Salts of all the water of the pot at capacity, as held now. */
export const saltNow_mS_cm = (slice: PotSlice, capacity_mL: number, _sight: Seen): number =>
  strength_mS_cm(slice.ledger.held_mg, capacity_mL);

/** The same as a saturated extract would read it: the scale of the caution. */
export function extract_mS_cm(pore_mS_cm: number, seen: PotSeen): number {
  const porosity_frac = Math.min(0.99, seen.air_frac + seen.drained_frac);
  return (
    pore_mS_cm / pourThroughRatio({ porosity_frac, water_frac: Math.min(porosity_frac, seen.drained_frac) })
  );
}
