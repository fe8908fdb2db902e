import type { PlantFacts } from "../../plants/facts.ts";
import type { Reading } from "../../working/reading.ts";
import type { Sight } from "../craft.ts";
import type { FruitSlice } from "./slice.ts";
import { fruitingWords } from "./words.ts";

const DAY_ms = 86_400_000;

/** Readings that the other crafts may use. */
export const fruitOffers = {
  /** As counted, for as long as a flower lasts; then nobody knows. */
  openFlowers_n: (slice: FruitSlice, _plant: PlantFacts, sight: Sight): Reading | undefined => {
    const { open } = slice;
    if (!open) return undefined;
    const age_ms = sight.at_ms - open.at_ms;
    if (age_ms < 0 || age_ms >= sight.assumed("keepsOpen_d") * DAY_ms) return undefined;
    const days = age_ms / DAY_ms;
    return {
      value: open.n,
      sd: Math.max(0.5, open.n * (open.roughly ? 0.3 : 0.05) + days * 0.3 * Math.sqrt(open.n)),
      origin: days < 1 ? "measured" : "learned",
      from: (say) => fruitingWords(say).flowersFrom(say.day(open.at_ms, sight.at_ms)),
    };
  },
};
