import type { Call, Command, Outcome } from "../command.ts";
import { UsageError } from "../errors.ts";
import { mixFeed } from "./mix-feed.ts";
import { mixMedium } from "./mix-medium.ts";

/** The tabs of the mixing desk, each in a file of its own. */
const desks: Readonly<Record<string, (call: Call, words: readonly string[]) => Promise<Outcome>>> = {
  feed: mixFeed,
  medium: mixMedium,
};

/** The mixing desk: what to put together, and how much of each. */
export const mix: Command = {
  verb: "mix",
  what: "a tank of feed from the labels on the shelf, or a medium from the bags, in whole steps of the tools",
  usage: [
    "feed [--litres N] [--bottles N] [--rain SHARE] [--water ID] [--group KEY] [--reads 1.4mS]",
    "medium [BAG...] [--pot SIZE] [--for PLANT] [--bare-roots]",
  ],
  options: {
    pot: {
      type: "string",
      value: "SIZE",
      what: "the pot: 12x9, oval 18x14x5, box 20x10x6; else the plant's, else a usual one",
    },
    for: { type: "string", value: "PLANT", what: "for the pot of that plant" },
    litres: {
      type: "string",
      value: "N",
      what: "feed: how much to mix; what today's pots want when left out",
    },
    bottles: { type: "string", value: "N", what: "feed: most bottles in the mix, 1 to 4" },
    rain: { type: "string", value: "SHARE", what: "feed: share of rain or pure water, 0 to 1" },
    water: { type: "string", value: "ID", what: "feed: a tested water on the shelf, or usual" },
    group: { type: "string", value: "KEY", what: "feed: which pots, as --json names them" },
    reads: {
      type: "string",
      value: "NUMBER",
      what: "feed: what the meter shows, as 1.4mS, 1400uS, 700ppm500",
    },
    "bare-roots": { type: "boolean", what: "roots were washed: they want more air" },
  },
  help: [
    "Without a bag: the bags it knows. Names of several words stand in quotes. A mix is a guess until",
    "it is tested; the test is printed with it, and is written as potting.tested.",
  ],
  example: [
    "sillwood mix feed --litres 4 --reads 2.1mS",
    "sillwood mix medium",
    'sillwood mix medium pumice bark "peat and perlite 70:30" perlite --pot "oval 18x14x5"',
    "sillwood mix medium pumice bark --for 127 --bare-roots",
  ],
  async run(call) {
    const [desk = "", ...words] = call.words;
    const run = desks[desk];
    if (!run) throw new UsageError(`mix needs what is mixed: ${Object.keys(desks).join(" or ")}.`);
    return run(call, words);
  },
};
