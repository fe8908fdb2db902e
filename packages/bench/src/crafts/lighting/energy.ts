import { lampCost } from "@sillwood/science/light";
import { lampsAt } from "../../places/light/lamp-light.ts";
import { type Bench, inForceAt } from "../../places/places.ts";
import type { WorkingInput } from "../../working/working.ts";
import type { World } from "../craft.ts";
import type { Energy } from "./page-shape.ts";
import { lightingWords } from "./words.ts";

const DAYS_OF_MONTH = 30;

export interface Tariff {
  readonly price_minor_kWh: number;
  readonly cheapPrice_minor_kWh: number;
  /** Hours of a span that fall into the cheap hours; undefined where there are none. */
  readonly cheap?: (from_h: number, hours_h: number) => number;
  readonly at_ms: number;
}

/** The price of electricity in force, where it is written and the reader may see it. */
export function tariffNow({ places, now_ms }: World): Tariff | undefined {
  const said = inForceAt(places.light.tariffs, now_ms);
  if (!said) return undefined;
  const {
    price_minor_kWh,
    cheapPrice_minor_kWh = price_minor_kWh,
    cheapFrom_h,
    cheapHours_h = 0,
  } = said.data;
  return {
    price_minor_kWh,
    cheapPrice_minor_kWh,
    ...(cheapFrom_h !== undefined && cheapHours_h > 0 && cheapPrice_minor_kWh < price_minor_kWh
      ? { cheap: (from_h: number, hours_h: number) => shared_h(from_h, hours_h, cheapFrom_h, cheapHours_h) }
      : {}),
    at_ms: said.at_ms,
  };
}

/** Hours that two daily spans share, each going past midnight where it must. */
function shared_h(from_h: number, hours_h: number, otherFrom_h: number, otherHours_h: number): number {
  const start = ((from_h % 24) + 24) % 24;
  return [-24, 0, 24].reduce((sum, day) => {
    const begin = Math.max(start, otherFrom_h + day);
    const end = Math.min(start + hours_h, otherFrom_h + otherHours_h + day);
    return sum + Math.max(0, end - begin);
  }, 0);
}

/** What the lamps of a bench take when they burn so, a day and a month, and for each plant. */
export function energyOf(
  world: World,
  bench: Bench,
  timer: { readonly from_h: number; readonly hours_h: number },
  plants_n: number,
): Energy {
  const { say, places, now_ms } = world;
  const words = lightingWords(say);
  const lamps = lampsAt(places, bench.id, now_ms);
  const power_W = lamps.reduce((sum, { data }) => sum + data.power_W, 0);
  const tariff = tariffNow(world);
  const { currency } = places.site;
  const cheapHours_h = tariff?.cheap?.(timer.from_h, timer.hours_h) ?? 0;
  const costOf = (days_n: number) =>
    lampCost({
      power_W,
      hours_h: timer.hours_h,
      days_n,
      price_minor_per_kWh: tariff?.price_minor_kWh ?? 0,
      cheapHours_h: Math.min(timer.hours_h, cheapHours_h),
      cheapPrice_minor_per_kWh: tariff?.cheapPrice_minor_kWh ?? 0,
    });
  const [day, month] = [costOf(1), costOf(DAYS_OF_MONTH)];
  const cost = tariff && {
    cost_minor_d: day.cost_minor,
    cost_minor_month: month.cost_minor,
    ...(plants_n > 0 ? { costPerPlant_minor_month: month.cost_minor / plants_n } : {}),
  };
  const said = words.lamp.energy(
    say.number(day.energy_kWh, 2),
    cost && say.money(cost.cost_minor_d, currency),
    cost?.costPerPlant_minor_month === undefined
      ? undefined
      : say.money(cost.costPerPlant_minor_month, currency),
  );
  const { working } = words;
  const inputs: WorkingInput[] = [
    {
      name: working.power,
      said: `${say.number(power_W)} W`,
      value: power_W,
      unit: "W",
      origin: "measured",
      from: working.lampWritten,
    },
    {
      name: working.hours,
      said: words.hours(timer.hours_h),
      value: timer.hours_h,
      unit: "h",
      origin: "measured",
      from: working.timer,
    },
    ...(tariff
      ? [
          {
            name: working.price,
            said: say.money(tariff.price_minor_kWh, currency),
            value: tariff.price_minor_kWh,
            unit: "1/100 per kWh",
            origin: "measured" as const,
            from: working.written(say.day(tariff.at_ms)),
          },
          ...(tariff.cheap
            ? [
                {
                  name: working.cheapHours,
                  said: words.hours(cheapHours_h),
                  value: cheapHours_h,
                  unit: "h",
                  origin: "measured" as const,
                  from: working.written(say.day(tariff.at_ms)),
                },
              ]
            : []),
        ]
      : []),
  ];
  return {
    power_W,
    kWh_d: day.energy_kWh,
    kWh_month: month.energy_kWh,
    plants_n,
    ...(cost ?? {}),
    currency,
    said,
    working: {
      title: working.energy,
      result: said,
      value: day.energy_kWh,
      unit: "kWh",
      origin: "measured",
      formula: working.energyFormula,
      sum: working.energySum(say.number(power_W), words.hours(timer.hours_h), say.number(day.energy_kWh, 2)),
      inputs,
      source: working.arithmetic,
      notes: [working.monthNote(DAYS_OF_MONTH)],
    },
  };
}
