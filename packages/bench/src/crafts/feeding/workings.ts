import type { Working } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import type { FeedSlice } from "./slice.ts";
import type { FeedToday } from "./today.ts";
import { feedingWords } from "./words.ts";

/** How the date of the next feed came about. */
export function feedWorking(today: FeedToday, slice: FeedSlice, sight: Outward): Working {
  const { say, now_ms, read, assumed } = sight;
  const words = feedingWords(say).working;
  const number = (value: number, digits_n = 0) => say.number(value, digits_n);
  const nitrogen = read("nitrogen_mg");
  const capacity = read("capacity_g");
  const isKept = today.because === "nitrogen" || today.because === "cut";
  const { dates_ms } = today;
  return {
    title: words.title,
    result: say.days(dates_ms[2] as number, dates_ms[17] as number),
    unit: "",
    origin: today.origin,
    formula: isKept ? words.formula : words.habitFormula,
    sum: isKept
      ? words.sum(
          number(today.nitrogen_mg),
          number((assumed("feedLow_mg_L") * today.holds_mL) / 1000),
          number(today.demand_mg_d, 1),
        )
      : words.habitSum(number(assumed("feedFresh_d")), number(assumed("feedEvery_d"))),
    inputs: [
      {
        name: words.nitrogen,
        said: `${number(nitrogen.value)} mg`,
        value: nitrogen.value,
        unit: "mg",
        origin: nitrogen.origin,
        from: nitrogen.from(say),
      },
      {
        name: words.low,
        said: `${number(assumed("feedLow_mg_L"))} mg/L`,
        value: assumed("feedLow_mg_L"),
        unit: "mg/L",
        origin: "assumed",
        from: words.ours,
        assumption: "feedLow_mg_L",
      },
      {
        name: words.holds,
        said: say.volume(today.holds_mL),
        value: today.holds_mL,
        unit: "mL",
        origin: capacity.origin,
        from: capacity.from(say),
        assumption: "feedWaterHeld",
      },
      {
        name: words.use,
        said: `${say.volume(today.use_mL_d)} / d`,
        value: today.use_mL_d,
        unit: "mL/d",
        origin: slice.poured_mL_d === undefined ? "assumed" : "learned",
        from: slice.poured_mL_d === undefined ? words.ours : words.fromPours,
      },
      {
        name: words.demand,
        said: `${number(today.demand_mg_d, 1)} mg/d`,
        value: today.demand_mg_d,
        unit: "mg/d",
        origin: "assumed",
        from: words.tissue,
        assumption: "feedDryMass_g_L",
      },
      {
        name: words.last,
        said: slice.fedAt_ms === undefined ? words.never : say.day(slice.fedAt_ms, now_ms),
        unit: "",
        origin: slice.fedAt_ms === undefined ? "assumed" : "measured",
        from: words.book,
      },
    ],
    source: words.source,
    movesMost: words.moves,
    notes: [words.habitNote],
  };
}

/** Why salts are washed out. */
export function saltWorking(today: FeedToday, _slice: FeedSlice, sight: Outward): Working {
  const { say, read, assumed } = sight;
  const words = feedingWords(say).working;
  const salt = read("saltAtRefill_mS_cm");
  const most = assumed("flushAt_mS_cm");
  return {
    title: words.saltTitle,
    result: say.volume(today.volume_mL),
    value: today.volume_mL,
    unit: "mL",
    origin: today.saltOrigin,
    formula: words.saltFormula,
    sum: `2 × ${say.volume(today.holds_mL)} = ${say.volume(today.volume_mL)}`,
    inputs: [
      {
        name: words.salt,
        said: `${say.number(salt.value, 1)} mS/cm`,
        value: salt.value,
        unit: "mS/cm",
        origin: salt.origin,
        from: salt.from(say),
      },
      {
        name: words.flushAt,
        said: `${say.number(most, 1)} mS/cm`,
        value: most,
        unit: "mS/cm",
        origin: "assumed",
        from: words.ours,
        assumption: "flushAt_mS_cm",
      },
    ],
    source: words.saltSource,
    notes: [words.saltNote],
  };
}
