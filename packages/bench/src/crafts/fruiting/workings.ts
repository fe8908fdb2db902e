import { fruitSources } from "@sillwood/science/fruit";
import type { Working, WorkingInput } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import { dryKey, freshKey, fruitingAssumption } from "./assumptions.ts";
import type { Capacity } from "./capacity.ts";
import type { FruitNow } from "./now.ts";
import type { Ripe } from "./ripe.ts";
import type { Setting } from "./setting.ts";
import type { FruitSlice } from "./slice.ts";
import { fruitingWords } from "./words.ts";

/** About so many, as it is said: halves below 3, whole beyond. */
export const aboutSaid = (fruits_n: number, { say }: Pick<Outward, "say">): string =>
  fruits_n < 2.75
    ? say.number(Math.round(fruits_n * 2) / 2, fruits_n >= 0.25 ? 1 : 0)
    : say.number(fruits_n, 0);

const cite = (key: keyof typeof fruitSources): string => {
  const { authors, year, title, place } = fruitSources[key];
  return `${authors} (${year}). ${title}. ${place}`;
};

function assumedInput(key: string, value: number, said: string, name: string): WorkingInput {
  const { unit, source } = fruitingAssumption(key);
  return { name, said, value, unit, origin: "assumed", from: source, assumption: key };
}

/** How many the light can feed. */
export function capacityWorking(capacity: Capacity, slice: FruitSlice, sight: Outward): Working {
  const { say, plant } = sight;
  const words = fruitingWords(say);
  const { working } = words;
  const number = (value: number, digits = 2) => say.number(value, digits);
  const about = (value: number) => aboutSaid(value, sight);
  const { habit } = plant;
  const freshSaid = say.mass(capacity.fresh_g);
  const lightUse = sight.assumed("lightUse_g_MJ");
  const share = sight.assumed("fruitShare_frac");
  return {
    title: working.capacity,
    result: words.feeds(about(capacity.fruits_n), about(capacity.low_n), about(capacity.high_n)),
    value: capacity.fruits_n,
    unit: "fruits",
    low: capacity.low_n,
    high: capacity.high_n,
    origin: capacity.origin,
    formula: working.capacityFormula,
    sum: working.capacitySum(
      number(capacity.light_mol_d),
      number(capacity.source_g_d, 3),
      number(capacity.toRipe_d, 0),
      number(capacity.dryMassFull_g),
      about(capacity.fruits_n),
    ),
    inputs: [
      {
        name: working.light,
        said: `${number(capacity.light_mol_d)} mol/d`,
        value: capacity.light_mol_d,
        unit: "mol/d",
        origin: capacity.lightOrigin,
        from: capacity.lightFrom(say),
      },
      {
        name: working.warmth,
        said: say.percent(capacity.warmth_frac),
        value: capacity.warmth_frac,
        unit: "share",
        origin: "assumed",
        from: cite("DSSAT48"),
      },
      capacity.freshOrigin === "learned"
        ? {
            name: working.fresh,
            said: freshSaid,
            value: capacity.fresh_g,
            unit: "g",
            origin: "learned",
            from: working.freshOwn(slice.weighed_n),
          }
        : assumedInput(freshKey(habit), capacity.fresh_g, freshSaid, working.fresh),
      assumedInput(dryKey(habit), capacity.dry_frac, say.percent(capacity.dry_frac), working.dry),
      assumedInput("lightUse_g_MJ", lightUse, `${number(lightUse, 1)} g/MJ`, working.lightUse),
      assumedInput("fruitShare_frac", share, say.percent(share), working.share),
      {
        name: working.toRipe,
        said: number(capacity.toRipe_d, 0),
        value: capacity.toRipe_d,
        unit: "d",
        origin: capacity.ripening.own_n > 0 ? "learned" : "assumed",
        from: working.toRipeFrom(
          number(capacity.ripening.toRipe_Cd, 0),
          number(capacity.ripening.toRipe_Cd / capacity.toRipe_d, 1),
        ),
      },
      ...(capacity.learned === 1
        ? []
        : [
            {
              name: working.learned,
              said: `× ${number(capacity.learned)}`,
              value: capacity.learned,
              unit: "",
              origin: "learned" as const,
              from: working.learnedFrom(slice.weighed_n),
            },
          ]),
    ],
    source: `our assumption for the budget; ${cite("SWATPlus")}`,
    movesMost: working.capacityMoves,
    notes: [working.naturalNote(about(capacity.natural_n)), working.keepNote],
  };
}

/** When one cohort is ripe. */
export function ripeWorking(ripe: Ripe, now: FruitNow, sight: Outward): Working {
  const { say, now_ms } = sight;
  const words = fruitingWords(say);
  const { working } = words;
  const { cohort, dates_ms } = ripe;
  const whole = (value: number) => say.number(value, 0);
  const own_n = now.capacity().ripening.own_n;
  const mid_ms = dates_ms[10];
  return {
    title: `${working.ripe}: ${words.fruits(cohort.fruits_n)} (${cohort.id})`,
    result: ripeSaid(ripe, now, sight),
    ...(mid_ms === undefined
      ? {}
      : { value: mid_ms, low: dates_ms[2] as number, high: dates_ms[17] as number }),
    unit: "",
    origin: own_n > 0 ? "learned" : "assumed",
    formula: working.ripeFormula,
    sum: working.ripeSum(
      whole(ripe.sum_Cd),
      whole(ripe.behind_Cd),
      whole(Math.max(0, ripe.sum_Cd - ripe.behind_Cd)),
    ),
    inputs: [
      {
        name: working.opened,
        said: say.day(cohort.opened_ms, now_ms),
        unit: "",
        origin: cohort.isGuessed ? "assumed" : "measured",
        from: working.openedFrom(cohort.isGuessed === true),
        at_ms: cohort.opened_ms,
      },
      {
        name: working.behind,
        said: `${whole(ripe.behind_Cd)} °C d`,
        value: ripe.behind_Cd,
        unit: "°C d",
        origin: "learned",
        from: working.behindFrom,
      },
      {
        name: working.sum,
        said: `${whole(ripe.sum_Cd)} °C d`,
        value: ripe.sum_Cd,
        unit: "°C d",
        origin: own_n > 0 ? "learned" : "assumed",
        from: working.sumFrom(own_n),
      },
      ...(cohort.colour === undefined
        ? []
        : [
            {
              name: working.colourSeen,
              said: words.colour[cohort.colour],
              unit: "",
              origin: "measured" as const,
              from: working.colourFrom(say.day(cohort.colouredAt_ms ?? cohort.opened_ms, now_ms)),
            },
          ]),
    ],
    source: "our assumption, derived from published days from flower to ripe",
    movesMost: working.ripeMoves,
    notes: [],
  };
}

/** What a ripe date says on a line: "3 fruits 9 to 20 Feb". */
export function ripeSaid(ripe: Ripe, now: FruitNow, sight: Outward): string {
  const { say } = sight;
  const words = fruitingWords(say);
  const what = words.fruits(ripe.cohort.fruits_n);
  if (ripe.state === "cannot ripen")
    return words.cannotRipen(say.temperature(now.course().month_C), say.temperature(ripe.floor_C));
  if (ripe.state === "ripe") return words.ripeNow(what);
  const { dates_ms } = ripe;
  return words.ripe(what, say.days(dates_ms[2] as number, dates_ms[17] as number));
}

/** Chance that a flower sets, and what holds it back. */
export function setWorking(setting: Setting, sight: Outward): Working {
  const { say } = sight;
  const { working } = fruitingWords(say);
  const best = sight.assumed("bestSet_frac");
  const fed_frac = setting.chance_frac / Math.max(1e-9, best * setting.pollinated_frac * setting.warmth_frac);
  const share = (value: number) => say.percent(value);
  return {
    title: working.set,
    result: share(setting.chance_frac),
    value: setting.chance_frac,
    unit: "share",
    origin: "assumed",
    formula: working.setFormula,
    sum: working.setSum(
      share(setting.pollinated_frac),
      share(setting.warmth_frac),
      share(Math.min(1, fed_frac)),
      share(setting.chance_frac),
    ),
    inputs: [
      {
        name: working.pollen,
        said: share(setting.pollinated_frac),
        value: setting.pollinated_frac,
        unit: "share",
        origin: setting.moved === "by hand" ? "measured" : "assumed",
        from: working.moved[setting.moved],
      },
      {
        name: working.warmth,
        said: share(setting.warmth_frac),
        value: setting.warmth_frac,
        unit: "share",
        origin: "assumed",
        from: cite("ReddyKakani2007"),
      },
      {
        name: working.fed,
        said: say.number(setting.sourceOverDemand, 1),
        value: setting.sourceOverDemand,
        unit: "",
        origin: "assumed",
        from: working.fedFrom,
      },
      assumedInput("bestSet_frac", best, share(best), working.best),
    ],
    source: `${cite("Wubs2009")}; ${cite("RedHot")}`,
    movesMost: working.setMoves,
    notes: [],
  };
}
