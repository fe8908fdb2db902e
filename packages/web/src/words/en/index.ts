import { first, print } from "./first.ts";
import { number, plant, working } from "./plant.ts";
import { pot } from "./pot.ts";
import { round } from "./round.ts";
import { shell } from "./shell.ts";
import { weigh } from "./weigh.ts";

/** The English catalogue; its shape is what every other language must fill. */
export const en = { shell, round, pot, weigh, plant, number, working, first, print };
