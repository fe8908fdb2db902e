import type { Words } from "../words.ts";
import { first, print } from "./first.ts";
import { number, plant, working } from "./plant.ts";
import { pot } from "./pot.ts";
import { round } from "./round.ts";
import { shell } from "./shell.ts";
import { weigh } from "./weigh.ts";

/** The German catalogue; a missing or surplus key does not compile. */
export const de: Words = { shell, round, pot, weigh, plant, number, working, first, print };
