import type { LampHours } from "@sillwood/science/light";
import type { Bench } from "../../places/places.ts";
import { type Working, type WorkingInput, weakest } from "../../working/working.ts";
import type { World } from "../craft.ts";
import { lightingAssumption } from "./assumptions.ts";
import type { Tariff } from "./energy.ts";
import type { Lit } from "./lamp-advice.ts";
import type { LightSlice } from "./slice.ts";
import { dayMonth, lightingWords } from "./words.ts";
import { assumedInput, fromWorking, LIGHT, needWorking, withLight } from "./workings.ts";

export interface AdviceParts {
  readonly bench: Bench;
  /** The plant for whose need the timer is worked out, and the one whose day is the shortest. */
  readonly who: Lit;
  readonly strictest: Lit;
  readonly hours: LampHours;
  readonly lit: readonly Lit[];
  readonly season: string;
  readonly tariff: Tariff | undefined;
  readonly from_h: number;
}

/** Why the lamp should burn so long. */
export function adviceWorking(parts: AdviceParts, said: string, world: World<LightSlice>): Working {
  const { say, airAt, numberOf } = world;
  const { who, strictest, hours, lit, season, tariff } = parts;
  const words = lightingWords(say);
  const { working } = words;
  const day = airAt(who.member.plant.spot, season);
  const needs = needWorking(who.need, say);
  const inputs: WorkingInput[] = [
    fromWorking(needs, needs.source),
    {
      name: working.natural,
      said: withLight(who.natural_mol_m2_d, say),
      value: who.natural_mol_m2_d,
      unit: LIGHT,
      origin: day.light.origin,
      from: day.light.from(say),
    },
    {
      name: working.lampLight,
      said: `${say.number(who.ppfd_umol_m2_s)} µmol/m²s`,
      value: who.ppfd_umol_m2_s,
      unit: "µmol/m²s",
      origin: day.light.origin,
      from: day.light.from(say),
    },
    assumedInput(strictest.capKey, strictest.cap_h, words.hours(strictest.cap_h), working.cap),
  ];
  return {
    title: working.lampHours,
    result: said,
    value: hours.hours_h,
    unit: "h",
    origin: weakest(inputs.map(({ origin }) => origin)),
    formula: working.lampFormula,
    sum: working.lampSum(
      withLight(who.need.min_mol_m2_d, say),
      withLight(who.natural_mol_m2_d, say),
      say.number(who.ppfd_umol_m2_s),
      words.hours(hours.hours_h),
    ),
    inputs,
    source: lightingAssumption(strictest.capKey).source,
    notes: [
      working.lampWho(numberOf(who.member.plant.id), lit.length),
      working.lampSeason(dayMonth(season, say)),
      ...(hours.exact_h > strictest.cap_h
        ? [working.lampCapped(numberOf(strictest.member.plant.id), words.hours(strictest.cap_h))]
        : []),
      tariff?.cheap ? working.lampCheap : working.lampEnds,
    ],
  };
}
