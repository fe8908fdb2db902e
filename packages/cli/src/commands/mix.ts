import type { Call, Command, Outcome } from "../command.ts";
import { UsageError } from "../errors.ts";
import { mixMedium } from "./mix-medium.ts";

/** The tabs of the mixing desk, each in a file of its own. */
const desks: Readonly<Record<string, (call: Call, words: readonly string[]) => Promise<Outcome>>> = {
  medium: mixMedium,
};

/** The mixing desk: what to put together, and how much of each. */
export const mix: Command = {
  verb: "mix",
  what: "a medium from the bags on the shelf, in whole scoops, for one pot",
  usage: ["medium [BAG...] [--pot SIZE] [--for PLANT] [--bare-roots]"],
  options: {
    pot: {
      type: "string",
      value: "SIZE",
      what: "the pot: 12x9, oval 18x14x5, box 20x10x6; else the plant's, else a usual one",
    },
    for: { type: "string", value: "PLANT", what: "for the pot of that plant" },
    "bare-roots": { type: "boolean", what: "roots were washed: they want more air" },
  },
  help: [
    "Without a bag: the bags it knows. Names of several words stand in quotes. A mix is a guess until",
    "it is tested; the test is printed with it, and is written as potting.tested.",
  ],
  example: [
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
