import type { Working } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import type { Reckoned } from "./reckon.ts";
import { fraction } from "./said-numbers.ts";
import { scoutingWords } from "./words.ts";

/** How the chance to carry none of the pests came about: pest by pest, with its looks and odds. */
export function cleanWorking(reckoned: Reckoned, sight: Outward): Working {
  const { say } = sight;
  const words = scoutingWords(say);
  const { working } = words;
  const { free, pests, unseen } = reckoned;
  const result = words.headSaid(fraction(free.mid));
  return {
    title: working.title,
    result,
    value: free.mid,
    unit: "",
    low: free.low,
    high: free.high,
    origin: "learned",
    formula: working.formula,
    sum: working.sum(
      pests.map((belief) => working.part(words.pest(belief.pest), fraction(belief.free.mid))),
      fraction(free.mid),
    ),
    inputs: [
      ...pests.map((belief) => ({
        name: words.pest(belief.pest),
        said: belief.of.state === "infested" ? words.found : fraction(belief.free.mid),
        value: belief.free.mid,
        unit: "",
        origin: "learned" as const,
        from: belief.of.state === "infested" ? working.fromBook : working.pestFrom(belief.looks_n),
      })),
      {
        name: working.odds,
        said: say.number(sight.assumed("pestOdds"), 3),
        value: sight.assumed("pestOdds"),
        unit: "",
        origin: "assumed",
        from: working.oddsFrom,
        assumption: "pestOdds",
      },
      {
        name: working.looks,
        said: working.looksSaid(reckoned.looks_n),
        value: reckoned.looks_n,
        unit: "",
        origin: "measured",
        from: working.fromBook,
      },
    ],
    source: working.source,
    notes: [
      working.asFar,
      working.together,
      ...(unseen.length > 0 ? [working.unseen(say.list(unseen.map((pest) => words.pest(pest))))] : []),
    ],
  };
}

/** A plant that nobody looked at: odds, and no look. */
export function quietWorking(sight: Outward): Working {
  const { working } = scoutingWords(sight.say);
  const odds = sight.assumed("pestOdds");
  return {
    title: working.title,
    result: working.notLooked,
    unit: "",
    origin: "assumed",
    formula: working.formula,
    sum: working.looksSaid(0),
    inputs: [
      {
        name: working.odds,
        said: sight.say.number(odds, 3),
        value: odds,
        unit: "",
        origin: "assumed",
        from: working.oddsFrom,
        assumption: "pestOdds",
      },
    ],
    source: working.source,
    notes: [working.asFar],
  };
}
