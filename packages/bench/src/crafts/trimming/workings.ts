import type { Working, WorkingInput } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import type { PlannedCut } from "./kinds.ts";
import { restAfterCut } from "./rest.ts";
import type { Bend, TrimSlice } from "./slice.ts";
import { trimmingWords } from "./words.ts";

const OURS = "our assumption";
const TRADE = "common practice, no source";

const assumedInput = (
  key: string,
  name: string,
  said: string,
  unit: string,
  from: string,
  value: number,
): WorkingInput => ({
  name,
  said,
  value,
  unit,
  origin: "assumed",
  from,
  assumption: key,
});

/** How much a trim may take. */
export function limitWorking(sight: Outward): Working {
  const words = trimmingWords(sight.say).working;
  const warn = sight.assumed("trimWarn_frac");
  const most = sight.assumed("trimMost_frac");
  return {
    title: words.limit,
    result: words.upTo(warn),
    value: warn,
    unit: "",
    origin: "assumed",
    formula: words.limitFormula,
    sum: words.upTo(warn),
    inputs: [
      assumedInput("trimWarn_frac", words.warn, sight.say.percent(warn), "", words.a300, warn),
      assumedInput("trimMost_frac", words.most, sight.say.percent(most), "", words.ours, most),
    ],
    source: `ANSI A300 part 1, from memory; ${OURS}`,
    notes: [words.limitNote],
  };
}

/** When the next trim may be. */
export function restWorking(slice: TrimSlice, sight: Outward): Working | undefined {
  const rest = restAfterCut(slice, sight);
  if (!rest || !slice.cut) return undefined;
  const words = trimmingWords(sight.say).working;
  const pace = sight.assumed("leafRegrowth_per_d");
  return {
    title: words.rest,
    result: words.restResult(rest.until_ms),
    value: rest.days_d,
    unit: "d",
    origin: "assumed",
    formula: "t = ln(1/(1 − f)) / R",
    sum: words.restSum(rest.lit_frac, pace, rest.days_d),
    inputs: [
      {
        name: words.taken,
        said: sight.say.percent(rest.lit_frac),
        value: rest.lit_frac,
        unit: "",
        origin: "measured",
        from: words.cutOn(slice.cut.at_ms),
        at_ms: slice.cut.at_ms,
      },
      assumedInput("leafRegrowth_per_d", words.pace, words.perDay(pace), "d⁻¹", words.ours, pace),
    ],
    source: OURS,
    movesMost: words.paceMoves,
    notes: [],
  };
}

/** What a planned cut takes, as it was reckoned when the plan was kept. */
export function cutWorking(cut: PlannedCut, sight: Outward): Working {
  const words = trimmingWords(sight.say).working;
  const warn = sight.assumed("trimWarn_frac");
  return {
    title: words.cut(cut.letter),
    result: words.takes(cut.lit_frac),
    value: cut.lit_frac,
    unit: "",
    origin: "assumed",
    formula: "f = Σ A·I (gone) / Σ A·I",
    sum: words.takes(cut.lit_frac),
    inputs: [
      {
        name: words.area,
        said: sight.say.percent(1 - cut.kept_frac),
        value: 1 - cut.kept_frac,
        unit: "",
        origin: "measured",
        from: words.fromTrace,
      },
      assumedInput("trimWarn_frac", words.warn, sight.say.percent(warn), "", words.a300, warn),
    ],
    source: OURS,
    notes: [words.trimNote],
  };
}

/** How long a bend stays. */
export function bendWorking(
  bend: Bend,
  dates: { readonly off_d: number; readonly look_d: number },
  sight: Outward,
): Working {
  const words = trimmingWords(sight.say).working;
  const key = { green: "wireGreen_d", semi: "wireSemi_d", woody: "wireWoody_d" }[bend.wood];
  return {
    title: words.bend,
    result: words.days(dates.off_d),
    value: dates.off_d,
    unit: "d",
    origin: "assumed",
    formula: words.bendFormula,
    sum: words.bendSum(dates.off_d, dates.look_d),
    inputs: [
      assumedInput(key, words.wood(bend.wood), words.days(dates.off_d), "d", words.trade, dates.off_d),
    ],
    source: TRADE,
    notes: [],
  };
}
