import { away, benches, desk, supplies } from "./desks.ts";
import { fields } from "./fields.ts";
import { first, print } from "./first.ts";
import { firstRun } from "./first-run.ts";
import { log, take, write } from "./log.ts";
import { number, plant, working } from "./plant.ts";
import { list, plants } from "./plants.ts";
import { pot } from "./pot.ts";
import { reckoner } from "./reckoner.ts";
import { round } from "./round.ts";
import { settings } from "./settings.ts";
import { shell } from "./shell.ts";
import { weigh } from "./weigh.ts";
import { wrong } from "./wrong.ts";

/** The English catalogue; its shape is what every other language must fill. */
export const en = {
  shell,
  round,
  pot,
  weigh,
  plant,
  number,
  working,
  first,
  print,
  firstRun,
  plants,
  list,
  log,
  write,
  take,
  fields,
  wrong,
  reckoner,
  desk,
  benches,
  away,
  supplies,
  settings,
};
