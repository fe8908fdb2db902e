import { lightNeedError_frac } from "@sillwood/science/light";
import type { AirDay } from "../../places/ahead.ts";
import type { Say } from "../../words/say.ts";
import { type Working, type WorkingInput, weakest } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import { lightingAssumption } from "./assumptions.ts";
import type { NeedFigures } from "./need.ts";
import type { LightSlice } from "./slice.ts";
import type { TurnDue } from "./turn.ts";
import { lightingWords } from "./words.ts";

export const Z80 = 1.2816;
export const LIGHT = "mol/m²d";

/** Light with one decimal below 10, as it is said. */
export const lightSaid = (value_mol_m2_d: number, say: Say): string =>
  say.number(value_mol_m2_d, value_mol_m2_d < 9.95 ? 1 : 0);
export const withLight = (value_mol_m2_d: number, say: Say): string =>
  `${lightSaid(value_mol_m2_d, say)} ${LIGHT}`;

/** A value that is ours, as an input that may be replaced where it is shown. */
export function assumedInput(key: string, value: number, said: string, name: string): WorkingInput {
  const { unit, source } = lightingAssumption(key);
  return { name, said, value, unit, origin: "assumed", from: source, assumption: key };
}

export const fromWorking = (working: Working, from: string): WorkingInput => ({
  name: working.title,
  said: working.result,
  ...(working.value === undefined ? {} : { value: working.value }),
  unit: working.unit,
  origin: working.origin,
  from,
  working,
});

/** What a stage needs. */
export function needWorking(need: NeedFigures, say: Say): Working {
  const words = lightingWords(say);
  const { working } = words;
  const result = words.range(lightSaid(need.min_mol_m2_d, say), lightSaid(need.max_mol_m2_d, say));
  return {
    title: working.need,
    result: `${result} ${LIGHT}`,
    value: need.min_mol_m2_d,
    unit: LIGHT,
    low: need.min_mol_m2_d * (1 - Z80 * lightNeedError_frac),
    high: need.min_mol_m2_d * (1 + Z80 * lightNeedError_frac),
    origin: "assumed",
    formula: working.needFormula,
    sum: working.needSum(
      lightSaid(need.min_mol_m2_d, say),
      lightSaid(need.aim_mol_m2_d, say),
      lightSaid(need.max_mol_m2_d, say),
    ),
    inputs: [
      {
        name: working.stage,
        said: words.stage[need.stage],
        unit: "",
        origin: need.stageOrigin,
        from: need.stageFrom(say),
      },
      assumedInput(need.aimKey, need.aim_mol_m2_d, withLight(need.aim_mol_m2_d, say), working.aim),
    ],
    source: lightingAssumption(need.aimKey).source,
    notes: [working.needNote],
  };
}

/** Parts of the light of a day, as inputs. */
export function lightInputs(
  parts: { readonly window: number; readonly lamp: number; readonly sky: number },
  source: AirDay["light"],
  say: Say,
): readonly WorkingInput[] {
  const { working } = lightingWords(say);
  const part = (name: string, value: number): WorkingInput[] =>
    value > 0
      ? [
          {
            name,
            said: withLight(value, say),
            value,
            unit: LIGHT,
            origin: source.origin,
            from: source.from(say),
          },
        ]
      : [];
  const inputs = [
    ...part(working.windowPart, parts.window),
    ...part(working.lampPart, parts.lamp),
    ...part(working.skyPart, parts.sky),
  ];
  // Nothing lights the place: that, too, is known from somewhere.
  return inputs.length > 0
    ? inputs
    : [
        {
          name: working.windowPart,
          said: withLight(0, say),
          value: 0,
          unit: LIGHT,
          origin: source.origin,
          from: source.from(say),
        },
      ];
}

/** The light of about the last week on a plant, against what it needs. */
export function weekWorking(slice: LightSlice, need: NeedFigures, day: AirDay, sight: Outward): Working {
  const { say } = sight;
  const words = lightingWords(say);
  const { working } = words;
  const { daylight } = day;
  const needs = needWorking(need, say);
  const spread = Z80 * slice.lightSd_frac;
  return {
    title: working.week,
    result: words.ofNeeded(lightSaid(slice.week_mol_m2_d, say), lightSaid(need.min_mol_m2_d, say)),
    value: slice.week_mol_m2_d,
    unit: LIGHT,
    low: slice.week_mol_m2_d * Math.exp(-spread),
    high: slice.week_mol_m2_d * Math.exp(spread),
    origin: slice.lightOrigin,
    formula: working.weekFormula,
    sum: working.weekSum(withLight(slice.week_mol_m2_d, say), withLight(day.dli_mol_m2_d, say)),
    inputs: [
      ...lightInputs(
        { window: daylight.window_mol_m2_d, lamp: daylight.lamp_mol_m2_d, sky: daylight.sky_mol_m2_d },
        day.light,
        say,
      ),
      fromWorking(needs, needs.source),
    ],
    source: working.sourceLight,
    movesMost: daylight.lamp_mol_m2_d > daylight.window_mol_m2_d ? working.movesLamp : working.movesWindow,
    notes: [],
  };
}

/** Why a pot wants its turn. */
export function turnWorking(due: TurnDue, slice: LightSlice, sight: Outward): Working {
  const { say } = sight;
  const words = lightingWords(say);
  const { working } = words;
  const origin = weakest([slice.lightOrigin, "assumed"]);
  return {
    title: working.turn,
    result: say.day(Math.max(due.due_ms, sight.now_ms), sight.now_ms),
    unit: "",
    origin,
    formula: working.turnFormula,
    sum: working.turnSum(due.oneSided_d, due.after_d, due.side_frac),
    inputs: [
      {
        name: working.sideShare,
        said: say.percent(due.side_frac),
        value: due.side_frac,
        unit: "share",
        origin: slice.lightOrigin,
        from: working.fromPlace,
      },
      {
        name: working.sinceTurn,
        said: words.days(due.since_d),
        value: due.since_d,
        unit: "d",
        origin: "measured",
        from: slice.turns_n > 0 ? working.turnWritten(say.day(slice.turnedAt_ms)) : working.neverTurned,
        at_ms: slice.turnedAt_ms,
      },
      assumedInput("turnAfter_d", due.after_d, words.days(due.after_d), working.turnAfter),
      ...(due.lean_deg === undefined
        ? []
        : [
            {
              name: working.lean,
              said: `${say.number(due.lean_deg)}°`,
              value: due.lean_deg,
              unit: "°",
              origin: "measured" as const,
              from: working.leanSeen(say.day(slice.lean?.at_ms ?? sight.now_ms)),
            },
          ]),
    ],
    source: lightingAssumption("turnAfter_d").source,
    notes: due.together_n > 1 ? [working.turnTogether(due.together_n)] : [],
  };
}
