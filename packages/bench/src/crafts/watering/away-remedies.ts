import { CAPACITY, DEPLETION, meanOf, quantileOf } from "@sillwood/science/water";
import type { AirDay } from "../../places/ahead.ts";
import type { Working } from "../../working/working.ts";
import type { Remedy } from "../craft.ts";
import { measurable } from "./amount.ts";
import {
  AWAY_DRAWS_n,
  chancesWithin,
  type Departure,
  full,
  sitterEvery,
  sitterLines,
} from "./away-departure.ts";
import { forecastOf, type WaterForecast, type WhatIf } from "./forecast.ts";
import { demandOrigin } from "./origins.ts";
import { wateringWords } from "./words.ts";
import { awayWords } from "./words-away.ts";
import type { RemedyKey } from "./words-shape.ts";

/** An unheated room against a heated one. @source our assumption */
const COOLER_C = 5;
const COOLEST_C = 10;
/** A step back from the window, or a thin curtain. @source our assumption */
const DIMMER_frac = 0.5;
/** Leaves close together raise the damp between them. @source our assumption */
const GROUPED_frac = 0.85;
/** The jar is filled for all but one draw in twenty. */
const WICK_SURE = 0.95;
/** Hands it takes, least first: breaks ties and ranks what is enough. */
const EFFORT: readonly RemedyKey[] = ["soak", "group", "dimmer", "cooler", "wick", "sitter"];

/** Ways to make a pot last, each on top of watering it fully before leaving: enough with least effort first. */
export function remediesOf(departure: Departure): readonly Remedy[] {
  const { sight } = departure;
  const outdoors = departure.forecast.today.outdoors;
  const soaked = forecastOf(full(departure.slice), sight, { draws_n: AWAY_DRAWS_n });
  const remedies: Remedy[] = [
    soak(departure, soaked),
    lessDemand("group", departure, soaked, { demand_frac: GROUPED_frac }),
    dimmer(departure, soaked, outdoors),
    ...(outdoors ? [] : [cooler(departure, soaked)]),
    wick(departure, soaked),
    sitter(departure),
  ];
  const risk_frac = sight.assumed("waterRisk_frac");
  const rank = (remedy: Remedy) => EFFORT.indexOf(remedy.key as RemedyKey);
  return remedies.sort((a, b) => {
    const enough = Number(b.wants_frac <= risk_frac) - Number(a.wants_frac <= risk_frac);
    if (enough !== 0) return enough;
    return a.wants_frac <= risk_frac ? rank(a) - rank(b) : a.wants_frac - b.wants_frac || rank(a) - rank(b);
  });
}

function remedy(
  key: RemedyKey,
  departure: Departure,
  sum: string,
  formula: string,
  chances: { readonly wants_frac: number; readonly suffers_frac: number },
  result: { readonly said: string; readonly value: number; readonly unit: string },
): Remedy {
  const { sight, forecast, slice } = departure;
  const words = wateringWords(sight.say);
  const said = awayWords(sight.say).remedy(key);
  const capacity_g = meanOf(slice.state, CAPACITY);
  const working: Working = {
    title: said,
    result: result.said,
    value: result.value,
    unit: result.unit,
    origin: demandOrigin(slice),
    formula,
    sum,
    inputs: [
      {
        name: words.working.use,
        said: sight.say.mass(forecast.use_g_d),
        value: forecast.use_g_d,
        unit: "g/d",
        origin: demandOrigin(slice),
        from: `${forecast.today.air.from(sight.say)}; ${forecast.today.light.from(sight.say)}`,
      },
      {
        name: words.working.capacity,
        said: sight.say.mass(capacity_g),
        value: capacity_g,
        unit: "g",
        origin: slice.capacityFrom === "dry-down" ? "measured" : "assumed",
        from: sight.read("capacityPrior_g").from(sight.say),
      },
    ],
    source: words.working.sourceDate,
    notes: [words.working.chance(chances.wants_frac)],
  };
  return { key, said, sum, ...chances, working };
}

function soak(departure: Departure, soaked: WaterForecast): Remedy {
  const { sight, days_d } = departure;
  const words = awayWords(sight.say);
  const capacity_g = meanOf(soaked.slice.state, CAPACITY);
  const lasts_d = quantileOf(soaked.draws.dry_d, 0.5);
  return remedy(
    "soak",
    departure,
    words.soakSum(capacity_g, soaked.threshold_frac, soaked.use_g_d, lasts_d),
    "T = p C / U",
    chancesWithin(soaked, days_d),
    { said: sight.say.number(lasts_d, 1), value: lasts_d, unit: "d" },
  );
}

function lessDemand(
  key: "group" | "dimmer",
  departure: Departure,
  soaked: WaterForecast,
  whatIf: WhatIf,
): Remedy {
  const { sight, slice, days_d } = departure;
  const words = awayWords(sight.say);
  const then = forecastOf(full(slice), sight, { draws_n: AWAY_DRAWS_n, ...whatIf });
  const sum =
    key === "group"
      ? words.groupSum(soaked.use_g_d, then.use_g_d)
      : words.dimmerSum(soaked.use_g_d, then.use_g_d);
  return remedy(key, departure, sum, "U' = U × f", chancesWithin(then, days_d), {
    said: sight.say.mass(then.use_g_d),
    value: then.use_g_d,
    unit: "g/d",
  });
}

function dimmer(departure: Departure, soaked: WaterForecast, outdoors: boolean): Remedy {
  // Outdoors the day's demand follows its light nearly in proportion; indoors the leaf model says how far.
  if (outdoors) return lessDemand("dimmer", departure, soaked, { demand_frac: 0.65 });
  return lessDemand("dimmer", departure, soaked, {
    airAt: changed(departure, (day) => ({
      ...day,
      spells: day.spells.map((spell) => ({
        ...spell,
        ppfd_umol_m2_s: spell.ppfd_umol_m2_s * DIMMER_frac,
      })),
    })),
  });
}

function cooler(departure: Departure, soaked: WaterForecast): Remedy {
  const { sight, slice, days_d } = departure;
  const words = awayWords(sight.say);
  const then = forecastOf(full(slice), sight, {
    draws_n: AWAY_DRAWS_n,
    airAt: changed(departure, (day) => ({
      ...day,
      spells: day.spells.map((spell) => ({
        ...spell,
        air_C: Math.max(Math.min(spell.air_C, COOLEST_C), spell.air_C - COOLER_C),
      })),
    })),
  });
  const warm_C = soaked.today.spells.reduce((most, spell) => Math.max(most, spell.air_C), -40);
  return remedy(
    "cooler",
    departure,
    words.coolerSum(
      warm_C,
      Math.max(Math.min(warm_C, COOLEST_C), warm_C - COOLER_C),
      soaked.use_g_d,
      then.use_g_d,
    ),
    "U' = U(T − 5)",
    chancesWithin(then, days_d),
    { said: sight.say.mass(then.use_g_d), value: then.use_g_d, unit: "g/d" },
  );
}

function changed({ sight }: Departure, change: (day: AirDay) => AirDay): (date: string) => AirDay {
  const days = new Map<string, AirDay>();
  return (date) => {
    let day = days.get(date);
    if (!day) {
      day = change(sight.airAt(sight.plant.spot, date));
      days.set(date, day);
    }
    return day;
  };
}

function wick(departure: Departure, soaked: WaterForecast): Remedy {
  const { sight, days_d } = departure;
  const words = awayWords(sight.say);
  const capacity_g = meanOf(soaked.slice.state, CAPACITY);
  const inPot_g = Math.max(0, soaked.threshold_frac * capacity_g - meanOf(soaked.slice.state, DEPLETION));
  const high_g_d = quantileOf(soaked.draws.use_g, WICK_SURE);
  const needed_mL = Math.max(0, high_g_d * days_d - inPot_g);
  const jar_mL = measurable(needed_mL, sight.say.units);
  // A wick gives what is used until the jar is empty; then the pot lives on what it holds.
  const days = Math.max(0.1, days_d);
  const toWilt_g = Math.max(inPot_g, capacity_g - meanOf(soaked.slice.state, DEPLETION));
  return remedy(
    "wick",
    departure,
    words.wickSum(high_g_d, days_d, inPot_g, jar_mL),
    "R = U₉₅ × t − p C",
    {
      wants_frac: shareUsingMoreThan(soaked, (jar_mL + inPot_g) / days),
      suffers_frac: shareUsingMoreThan(soaked, (jar_mL + toWilt_g) / days),
    },
    { said: sight.say.volume(jar_mL), value: jar_mL, unit: "mL" },
  );
}

function shareUsingMoreThan(forecast: WaterForecast, use_g_d: number): number {
  const { use_g } = forecast.draws;
  return use_g.filter((drawn) => drawn > use_g_d).length / use_g.length;
}

function sitter(departure: Departure): Remedy {
  const { sight, days_d } = departure;
  const words = awayWords(sight.say);
  const span = { from_ms: sight.now_ms, to_ms: sight.now_ms + days_d * 86_400_000 };
  const lines = sitterLines(departure, span);
  const { every_d, forecast } = sitterEvery(departure);
  return remedy(
    "sitter",
    departure,
    words.sitterSum(lines.length),
    "n = t / T",
    chancesWithin(forecast, Math.min(every_d, days_d)),
    { said: sight.say.number(lines.length), value: lines.length, unit: "" },
  );
}
