import type { AnyCraft } from "./craft.ts";
import { feeding } from "./feeding/index.ts";
import { fruiting } from "./fruiting/index.ts";
import { growth } from "./growth/index.ts";
import { lighting } from "./lighting/index.ts";
import { potting } from "./potting/index.ts";
import { scouting } from "./scouting/index.ts";
import { trimming } from "./trimming/index.ts";
import { watering } from "./watering/index.ts";

/** Every craft of the house, one line each. The last that offers a reading wins. */
export const crafts = [
  watering,
  lighting,
  growth,
  potting,
  feeding,
  fruiting,
  scouting,
  trimming,
] as const satisfies readonly AnyCraft[];
