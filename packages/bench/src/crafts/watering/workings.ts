import {
  CAPACITY,
  DEPLETION,
  LEAF,
  meanOf,
  quantileOf,
  SURFACE,
  sdOf,
  surfaceWet_frac,
} from "@sillwood/science/water";
import { rimArea_m2, USUAL_POT } from "../../plants/pot.ts";
import type { Say } from "../../words/say.ts";
import { type Working, type WorkingInput, weakest } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import { surfaceLayer } from "./advance.ts";
import type { Amount } from "./amount.ts";
import type { WateringAssumption } from "./assumptions.ts";
import { wateringAssumption } from "./assumptions.ts";
import type { Decision } from "./decide.ts";
import type { WaterForecast } from "./forecast.ts";
import { capacityOrigin, demandOrigin, heldOrigin, lastSeen } from "./origins.ts";
import { wateringWords } from "./words.ts";

const Z80 = 1.2816;
const DAY_ms = 86_400_000;
const ML_PER_US_FL_OZ = 29.5735295625;
const G_PER_OZ = 28.349523125;

/** The workings of one pot's numbers, in the language of the sight's `say`. */
export interface WaterWorkings {
  readonly when: Working;
  readonly howMuch: Working;
  readonly store: Working;
  readonly use: Working;
  readonly capacity: Working;
}

export function waterWorkings(
  forecast: WaterForecast,
  decision: Decision,
  amount: Amount,
  dateSaid: string,
  sight: Outward,
): WaterWorkings {
  const capacity = capacityWorking(forecast, sight);
  const use = useWorking(forecast, sight);
  const depletion = depletionInput(forecast, sight);
  const store = storeWorking(forecast, capacity, depletion, sight);
  const when = whenWorking(forecast, decision, { capacity, use, depletion, dateSaid }, sight);
  const howMuch = amountWorking(forecast, amount, depletion, capacity, sight);
  return { when, howMuch, store, use, capacity };
}

/** A value that is ours, as an input that may be replaced where it is shown. */
function assumedInput(key: WateringAssumption, sight: Outward, name: string, said: string): WorkingInput {
  const assumption = wateringAssumption(key);
  return {
    name,
    said,
    value: sight.assumed(key),
    unit: assumption.unit,
    origin: "assumed",
    from: assumption.source,
    assumption: key,
  };
}

/** Not rounded to a mark of the jug, as a volume is said at the pot. */
const exactVolume = (volume_mL: number, say: Say): string =>
  say.units === "us"
    ? `${say.number(volume_mL / ML_PER_US_FL_OZ, 1)} fl oz`
    : `${say.number(volume_mL, 0)} mL`;

const fromWorking = (working: Working, from: string): WorkingInput => ({
  name: working.title,
  said: working.result,
  ...(working.value === undefined ? {} : { value: working.value }),
  unit: working.unit,
  origin: working.origin,
  from,
  working,
});

function depletionInput({ slice }: WaterForecast, sight: Outward): WorkingInput {
  const { say } = sight;
  const words = wateringWords(say).working;
  const value = meanOf(slice.state, DEPLETION);
  const seen = lastSeen(slice);
  return {
    name: words.depletion,
    said: say.mass(value),
    value,
    unit: "g",
    origin: heldOrigin(slice),
    from: seen ? words.seen(seen.what, say.day(seen.at_ms)) : words.notSeen,
    ...(seen ? { at_ms: seen.at_ms } : {}),
  };
}

function capacityWorking({ slice }: WaterForecast, sight: Outward): Working {
  const { say } = sight;
  const words = wateringWords(say).working;
  const value = meanOf(slice.state, CAPACITY);
  const sd = sdOf(slice.state, CAPACITY);
  const prior = sight.read("capacityPrior_g");
  const origin = capacityOrigin(slice);
  const weighed = slice.weights.filter((weight) => weight.used).at(-1);
  const from = {
    measured: words.dryDown,
    learned: words.learnedFrom(slice.weights.length, slice.looks.length + slice.pours.length),
    assumed: words.fromModel,
  };
  // Between the numbers as they are said, so that the sum adds up for who reads it.
  const step_g = say.units === "us" ? G_PER_OZ / 10 : 1;
  const change = (Math.round(value / step_g) - Math.round(prior.value / step_g)) * step_g;
  const inputs: WorkingInput[] = [
    {
      name: words.capacityModel,
      said: say.mass(prior.value),
      value: prior.value,
      unit: "g",
      origin: prior.origin,
      from: prior.from(say),
    },
    {
      name: words.capacityLearned,
      said: `${change < 0 ? "−" : "+"}${say.mass(Math.abs(change))}`,
      value: change,
      unit: "g",
      origin,
      from: from[origin],
    },
    ...(weighed
      ? [
          {
            name: words.drained,
            said: say.mass(slice.state[3] as number),
            value: slice.state[3] as number,
            unit: "g",
            origin: "learned" as const,
            from: words.weighedAs(weighed.weight_g, say.day(weighed.at_ms)),
            at_ms: weighed.at_ms,
          },
        ]
      : []),
  ];
  return {
    title: words.capacity,
    result: say.mass(value),
    value,
    unit: "g",
    low: Math.max(0, value - Z80 * sd),
    high: value + Z80 * sd,
    origin,
    formula: "C = C₀ + Δ",
    sum: `${say.mass(prior.value)} ${change < 0 ? "−" : "+"} ${say.mass(Math.abs(change))} = ${say.mass(value)}`,
    inputs,
    source: words.sourceStore,
    notes: [from[origin]],
  };
}

function useWorking(forecast: WaterForecast, sight: Outward): Working {
  const { say } = sight;
  const { slice, today } = forecast;
  const words = wateringWords(say).working;
  const area = sight.read("leafArea_m2");
  const rim_m2 = rimArea_m2(sight.plant.pot ?? USUAL_POT);
  const leafFactor = Math.exp(meanOf(slice.state, LEAF));
  const surfaceFactor = Math.exp(meanOf(slice.state, SURFACE));
  const wet_frac = surfaceWet_frac(slice.surfaceLost_mm, surfaceLayer(sight));
  const leafModel_g_m2 = area.value > 0 ? forecast.leafUse_g_d / (area.value * leafFactor) : 0;
  const bare_m2 = rim_m2 * (1 - sight.assumed("surfaceCover_frac"));
  const surfaceModel_g_m2 = bare_m2 > 0 ? forecast.surfaceUse_g_d / (bare_m2 * surfaceFactor) : 0;
  const learned = demandOrigin(slice);
  const learnedFrom =
    learned === "learned"
      ? words.learnedFrom(slice.weights.length, slice.looks.length + slice.pours.length)
      : words.fromModel;
  const n = (value: number, digits_n: number) => say.number(value, digits_n);
  return {
    title: words.use,
    result: `${say.mass(forecast.use_g_d)} ${words.perDay}`,
    value: forecast.use_g_d,
    unit: "g/d",
    low: forecast.useLow_g_d,
    high: forecast.useHigh_g_d,
    origin: weakest([learned, area.origin === "assumed" && learned === "assumed" ? "assumed" : "learned"]),
    formula: "U = k A E + s B K F",
    sum: `${n(leafFactor, 2)} × ${n(area.value, 4)} m² × ${n(leafModel_g_m2, 0)} g/m² + ${n(surfaceFactor, 2)} × ${n(bare_m2, 4)} m² × ${n(surfaceModel_g_m2, 0)} g/m² = ${n(forecast.leafUse_g_d, 0)} + ${n(forecast.surfaceUse_g_d, 0)} g`,
    inputs: [
      {
        name: words.leafArea,
        said: `${n(area.value, 4)} m²`,
        value: area.value,
        unit: "m²",
        origin: area.origin,
        from: area.from(say),
      },
      {
        name: words.leafFactor,
        said: n(leafFactor, 2),
        value: leafFactor,
        unit: "",
        origin: learned,
        from: learnedFrom,
      },
      {
        name: words.leafModel,
        said: `${n(leafModel_g_m2, 0)} g/m²`,
        value: leafModel_g_m2,
        unit: "g/m²",
        origin: weakest([today.air.origin, today.light.origin]),
        from: `${words.air}: ${today.air.from(say)}; ${words.light}: ${today.light.from(say)}`,
      },
      {
        name: words.surfaceFactor,
        said: n(surfaceFactor, 2),
        value: surfaceFactor,
        unit: "",
        origin: learned,
        from: learnedFrom,
      },
      {
        name: words.surfaceModel,
        said: `${n(surfaceModel_g_m2, 0)} g/m² (${say.percent(wet_frac)})`,
        value: surfaceModel_g_m2,
        unit: "g/m²",
        origin: weakest([today.air.origin, today.light.origin]),
        from: today.air.from(say),
      },
      assumedInput(
        "surfaceCover_frac",
        sight,
        wateringAssumption("surfaceCover_frac").what,
        say.percent(sight.assumed("surfaceCover_frac")),
      ),
      ...(forecast.pooled.from_n > 0
        ? [
            {
              name: words.neighbours,
              said: `× ${n(Math.exp(forecast.pooled.ln), 2)}`,
              value: Math.exp(forecast.pooled.ln),
              unit: "",
              origin: "learned" as const,
              from: words.neighboursFrom(forecast.pooled.from_n),
            },
          ]
        : []),
    ],
    source: words.sourceUse,
    notes: [],
  };
}

function storeWorking(
  { slice }: WaterForecast,
  capacity: Working,
  depletion: WorkingInput,
  sight: Outward,
): Working {
  const { say } = sight;
  const words = wateringWords(say).working;
  const capacity_g = meanOf(slice.state, CAPACITY);
  const depletion_g = meanOf(slice.state, DEPLETION);
  const left_frac = Math.max(0, 1 - depletion_g / capacity_g);
  const sd_frac = sdOf(slice.state, DEPLETION) / capacity_g;
  return {
    title: words.store,
    result: say.percent(left_frac),
    value: left_frac,
    unit: "share",
    low: Math.max(0, left_frac - Z80 * sd_frac),
    high: Math.min(1, left_frac + Z80 * sd_frac),
    origin: weakest([capacity.origin, depletion.origin]),
    formula: "left = 1 − D / C",
    sum: `1 − ${say.mass(depletion_g)} ÷ ${say.mass(capacity_g)} = ${say.percent(left_frac)}`,
    inputs: [depletion, fromWorking(capacity, capacity.notes[0] ?? "")],
    source: words.sourceStore,
    notes: [],
  };
}

function whenWorking(
  forecast: WaterForecast,
  decision: Decision,
  parts: { capacity: Working; use: Working; depletion: WorkingInput; dateSaid: string },
  sight: Outward,
): Working {
  const { say } = sight;
  const words = wateringWords(say).working;
  const { draws, slice, threshold_frac, now_ms } = forecast;
  const capacity_g = meanOf(slice.state, CAPACITY);
  const depletion_g = meanOf(slice.state, DEPLETION);
  const left_g = threshold_frac * capacity_g - depletion_g;
  const wait_d = Math.max(0, left_g) / Math.max(0.1, forecast.use_g_d);
  const middle_d = quantileOf(draws.dry_d, 0.5);
  const thresholdKey = forecast.flowering ? "waterAtFlowering_frac" : "waterAt_frac";
  return {
    title: words.when,
    result: parts.dateSaid,
    value: now_ms + middle_d * DAY_ms,
    unit: "ms",
    low: now_ms + quantileOf(draws.dry_d, 0.1) * DAY_ms,
    high: now_ms + quantileOf(draws.dry_d, 0.9) * DAY_ms,
    origin: weakest([parts.capacity.origin, parts.use.origin, parts.depletion.origin]),
    formula: "T = (p C − D) / U",
    sum: `(${say.percent(threshold_frac)} × ${say.mass(capacity_g)} − ${say.mass(depletion_g)}) ÷ ${say.mass(forecast.use_g_d)} = ${say.number(wait_d, 1)} ${words.days}`,
    inputs: [
      parts.depletion,
      fromWorking(parts.use, parts.use.inputs[2]?.from ?? ""),
      fromWorking(parts.capacity, parts.capacity.notes[0] ?? ""),
      assumedInput(thresholdKey, sight, words.threshold, say.percent(threshold_frac)),
      assumedInput("waterRisk_frac", sight, words.risk, say.percent(sight.assumed("waterRisk_frac"))),
    ],
    source: words.sourceDate,
    movesMost: movesMost(forecast, middle_d, sight),
    notes: [
      words.drawn(forecast.draws.dry_d.length),
      ...unheardSaid(forecast, words),
      forecast.flowering ? words.thresholdFlowering : words.thresholdDry,
      words.chance(decision.chanceBeforeNext_frac),
    ],
  };
}

/** A pour of today that may stand in no book yet moves the dates and nothing else, so it is said beside them. */
function unheardSaid(
  { unheard, draws }: WaterForecast,
  words: ReturnType<typeof wateringWords>["working"],
): readonly string[] {
  if (!unheard) return [];
  const draws_n = Math.round(unheard.chance_frac * draws.dry_d.length);
  return [words.unheard(draws_n, unheard.later_n, unheard.pours_n)];
}

/** Which doubt widens the range most: what it holds, how wet it is, or what it uses. */
function movesMost(
  { slice, threshold_frac, use_g_d }: WaterForecast,
  middle_d: number,
  sight: Outward,
): string {
  const words = wateringWords(sight.say).working;
  const spread = {
    capacity: threshold_frac * sdOf(slice.state, CAPACITY),
    depletion: sdOf(slice.state, DEPLETION),
    use: use_g_d * middle_d * sdOf(slice.state, LEAF),
  };
  if (spread.capacity >= spread.depletion && spread.capacity >= spread.use) return words.movesCapacity;
  return spread.depletion >= spread.use ? words.movesDepletion : words.movesUse;
}

function amountWorking(
  forecast: WaterForecast,
  amount: Amount,
  depletion: WorkingInput,
  capacity: Working,
  sight: Outward,
): Working {
  const { say } = sight;
  const words = wateringWords(say).working;
  const gritty = sight.plant.medium === "bark" || sight.plant.medium === "gritty";
  const sd_g = sdOf(forecast.slice.state, DEPLETION);
  const scale = 1 / (amount.capture_frac * (1 - amount.leaching_frac));
  return {
    title: words.howMuch,
    result: say.volume(amount.volume_mL),
    value: amount.volume_mL,
    unit: "mL",
    low: Math.max(0, amount.depletion_g - Z80 * sd_g) * scale,
    high: (amount.depletion_g + Z80 * sd_g) * scale,
    origin: weakest([depletion.origin, capacity.origin]),
    formula: "V = D / (η (1 − L))",
    sum: `${say.mass(amount.depletion_g)} ÷ (${say.number(amount.capture_frac, 2)} × (1 − ${say.number(amount.leaching_frac, 2)})) = ${exactVolume(amount.exact_mL, say)}`,
    inputs: [
      { ...depletion, said: say.mass(amount.depletion_g), value: amount.depletion_g },
      assumedInput(
        gritty ? "dryCaptureOther_frac" : "dryCapture_frac",
        sight,
        words.capture,
        say.percent(amount.capture_frac),
      ),
      assumedInput("leaching_frac", sight, words.leaching, say.percent(amount.leaching_frac)),
    ],
    source: words.sourceAmount,
    notes: amount.pours.length > 1 ? [words.notePours(amount.pours.length)] : [],
  };
}
