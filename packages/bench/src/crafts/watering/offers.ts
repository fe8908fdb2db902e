import { CAPACITY, DEPLETION, meanOf, sdOf, sdOfSum } from "@sillwood/science/water";
import type { Reading } from "../../working/reading.ts";
import { capacityOrigin, heldOrigin } from "./origins.ts";
import type { WaterSlice } from "./slice.ts";
import { wateringWords } from "./words.ts";

/** Readings that the other crafts may use. */
export const waterOffers = {
  capacity_g: (slice: WaterSlice): Reading => {
    const origin = capacityOrigin(slice);
    return {
      value: meanOf(slice.state, CAPACITY),
      sd: sdOf(slice.state, CAPACITY),
      origin,
      from: (say) => wateringWords(say).offered.capacity[origin],
    };
  },
  waterHeld_g: (slice: WaterSlice): Reading => {
    const origin = heldOrigin(slice);
    return {
      value: Math.max(0, meanOf(slice.state, CAPACITY) - meanOf(slice.state, DEPLETION)),
      sd: sdOfSum(slice.state, [-1, 0, 0, 0, 0, 1]),
      origin,
      from: (say) => wateringWords(say).offered.held[origin === "assumed" ? "unseen" : "balance"],
    };
  },
};
