import type { Binding } from "../src/row.ts";
import { bindByRules } from "../src/rules.ts";
import { cutAliases, cutRules } from "./shape-trim-cuts.ts";
import { photoRules } from "./shape-trim-photo.ts";
import { sagAliases, sagRules } from "./shape-trim-sag.ts";

/** Every row of the table on structure, cuts, photos and sag, by what it gives and asks; also rows that are held back or come later. */
export const binding: Binding = bindByRules(
  "shape-trim",
  [...cutRules, ...photoRules, ...sagRules],
  [...cutAliases, ...sagAliases],
);
