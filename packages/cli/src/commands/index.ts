import type { Command } from "../command.ts";
import { away } from "./away.ts";
import { book } from "./book.ts";
import { clear } from "./clear.ts";
import { cut } from "./cut.ts";
import { enter } from "./enter.ts";
import { fruit } from "./fruit.ts";
import { light } from "./light.ts";
import { mix } from "./mix.ts";
import { open } from "./open.ts";
import { read } from "./read.ts";
import { reckon } from "./reckon.ts";
import { repot } from "./repot.ts";
import { round } from "./round.ts";
import { scout } from "./scout.ts";
import { show } from "./show.ts";

/** Every verb, one line each, in the order of the help. */
export const commands: readonly Command[] = [
  open,
  round,
  show,
  light,
  fruit,
  mix,
  repot,
  cut,
  scout,
  clear,
  enter,
  read,
  away,
  book,
  reckon,
];
