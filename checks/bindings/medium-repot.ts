import { bindByRules } from "../src/rules.ts";
import { plantRules } from "./medium-repot-plant.ts";
import { potAliases, potRules } from "./medium-repot-pot.ts";
import { saltRules } from "./medium-repot-salts.ts";

/** Pots, media, salts and root work: bound by what a row holds. */
export const binding = bindByRules("medium-repot", [...potRules, ...saltRules, ...plantRules], potAliases);
