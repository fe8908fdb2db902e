import type { AnyCraft } from "./craft.ts";
import { watering } from "./watering/index.ts";

/** Every craft of the house, one line each. The last that offers a reading wins. */
export const crafts = [watering] as const satisfies readonly AnyCraft[];
