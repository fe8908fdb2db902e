import { first } from "./first.ts";
import { number, plant, working } from "./plant.ts";
import { pot } from "./pot.ts";
import { round } from "./round.ts";
import { shell } from "./shell.ts";

/** English of the round and of what stands around it: all that a first screen says. */
export const firstScreens = { shell, round, pot, number, plant, working, first };
