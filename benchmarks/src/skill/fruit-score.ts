import "temporal-polyfill/global";
import type { EntryId, Json, PersonId } from "@sillwood/bench/book";
import type { Happening, Outward } from "@sillwood/bench/crafts";
import { type FruitSlice, fruiting } from "@sillwood/bench/crafts/fruiting";
import { sayFor } from "@sillwood/bench/words";
import { chanceOf } from "@sillwood/simulator/chance";
import { type BearingPlant, bearingPlants, type Life, liveBearing } from "@sillwood/simulator/fruit";
import type { ReportRow } from "../../../tools/report.ts";

const DAY_ms = 86_400_000;
const DAY0_ms = Date.UTC(2025, 0, 1);
const DAYS_n = 150;
/** Fruit is thinned to the number advised every third day while flowers come. */
const EVERY_d = 3;
/** Days after its flower on which a tagged fruit's date is asked for. */
const ASKED_d = [3, 15, 30, 42];
const values = new Map(fruiting.assumptions.map(({ key, value }) => [key, value]));
const say = sayFor({ language: "en", units: "metric", zone: "UTC", nameOf: (id) => id });
const at = (day: number, hour = 12) => DAY0_ms + day * DAY_ms + hour * 3_600_000;

/** What the grower's own tools and habits make of one plant: the air as logged, and as believed for the days to come. */
function sightOf(plant: BearingPlant, light: { mol_d: number; sd: number }, now_ms: number): Outward {
  const { air, nature } = plant;
  const today = Math.floor((now_ms - DAY0_ms) / DAY_ms);
  const days = new Map<string, object>();
  const airAt = (_spot: string | undefined, date: string) => {
    let day = days.get(date);
    if (!day) {
      const from_ms = Date.parse(`${date}T00:00:00Z`);
      const n = Math.round((from_ms - DAY0_ms) / DAY_ms);
      const mean = n <= today ? (air.means_C[Math.max(0, n)] as number) + air.bias_C : air.believed_C;
      const spells = Array.from({ length: 4 }, (_, i) => ({
        from_ms: from_ms + i * 6 * 3_600_000,
        to_ms: from_ms + (i + 1) * 6 * 3_600_000,
        air_C: mean + (i === 1 || i === 2 ? air.swing_C : -air.swing_C) / 2,
      }));
      day = { date, from_ms, to_ms: from_ms + DAY_ms, spells, outdoors: false };
      days.set(date, day);
    }
    return day as never;
  };
  return {
    plant: { id: "plant", spot: "spot", habit: nature.kind },
    species: nature.species,
    at_ms: now_ms,
    now_ms,
    say,
    dateOf: (ms: number) => new Date(ms).toISOString().slice(0, 10),
    airAt,
    assumed: (key: string) => values.get(key) ?? Number.NaN,
    read: () => ({ value: light.mol_d, sd: light.sd, origin: "learned", from: () => "" }),
    visits_ms: [],
    pooled: undefined,
    seed: "",
    datesAhead: [],
  } as unknown as Outward;
}

type Entry = { readonly day: number; readonly kind: string; readonly data: Json };

function sliceOf(entries: readonly Entry[], sight: Outward): FruitSlice {
  return entries.reduce<FruitSlice>(
    (slice, { day, kind, data }, n) =>
      fruiting.fold(
        slice,
        {
          entry: `e${n}` as EntryId,
          at_ms: at(day),
          by: "p" as PersonId,
          effects: [],
          own: { kind: `fruiting.${kind}`, data },
        } satisfies Happening,
        { ...sight, at_ms: at(day) },
      ),
    fruiting.start(sight.plant, { ...sight, at_ms: at(0) }),
  );
}

/** The number that the craft advises on a day, for the light as the grower knows it. */
function advised(plant: BearingPlant, day: number, caught_mol_d: number, error: number): number {
  const mol_d = caught_mol_d * error;
  const sight = sightOf(plant, { mol_d, sd: 0.25 * mol_d }, at(day));
  return fruiting.outlook(sliceOf([], sight), sight).figures["fruitsKeep_n"] as number;
}

interface Told {
  readonly alone: Life;
  readonly thinned: Life;
  readonly plant: BearingPlant;
}

function lives(seed: number, plants_n: number): readonly Told[] {
  return bearingPlants(seed, plants_n, DAYS_n).map((plant) => {
    const chance = chanceOf(plant.name);
    // A light meter, a guess of the leaves: the light that the leaves catch is known to a quarter.
    const error = chance.under("meter").logNormal(1, 0.25);
    const week: number[] = [];
    let keep_n: number | undefined;
    const thinned = liveBearing(
      plant.nature,
      plant.air,
      (day, hanging, caught_mol_d) => {
        week.push(caught_mol_d);
        const mean = week.slice(-7).reduce((sum, each) => sum + each, 0) / Math.min(7, week.length);
        if (day % EVERY_d !== 0 || hanging.length === 0) return undefined;
        if (keep_n === undefined || day % 15 === 0) keep_n = advised(plant, day, mean, error);
        return keep_n;
      },
      chance,
    );
    return {
      plant,
      thinned,
      alone: liveBearing(plant.nature, plant.air, () => undefined, chanceOf(plant.name)),
    };
  });
}

interface Dated {
  readonly holds: boolean;
  readonly width_d: number;
  readonly error_d: number;
  readonly coloured: boolean;
}

/** Ripe dates of tagged fruits, asked at several ages, one in two after a look at its first colour. */
function dated({ plant, thinned }: Told, each: number): readonly Dated[] {
  const ripe = thinned.fruits.filter(({ ripe_d }) => ripe_d !== undefined).slice(0, 3);
  const chance = chanceOf(plant.name).under("tags");
  return ripe.flatMap(({ opened_d, ripe_d = 0, broke_d = 0 }, fruit) => {
    // People see a flower on the day, or a day late; a ripe fruit is what they see, so within the day.
    const written_d = Math.max(0, opened_d + chance.whole(0, 2) - 1);
    const tag: Entry = {
      day: Math.max(written_d, opened_d) + 2,
      kind: "tagged",
      data: { fruits_n: 1, tag: "t", openedOn: new Date(at(written_d)).toISOString().slice(0, 10) },
    };
    const ask = (day: number, coloured: boolean): Dated[] => {
      if (day <= tag.day || day >= ripe_d) return [];
      const sight = sightOf(plant, { mol_d: 0.3, sd: 0.1 }, at(day));
      const look: Entry[] = coloured
        ? [{ day, kind: "coloured", data: { colour: "breaker", tag: "t" } }]
        : [];
      const { line } = fruiting.outlook(sliceOf([tag, ...look], sight), sight);
      if (!line) return [{ holds: false, width_d: 0, error_d: 0, coloured }];
      const [low, mid, high] = [2, 10, 17].map((draw) => line.dates_ms[draw] as number) as [
        number,
        number,
        number,
      ];
      const truth_ms = at(ripe_d);
      return [
        {
          holds: truth_ms >= low && truth_ms <= high,
          width_d: (high - low) / DAY_ms,
          error_d: (mid - truth_ms) / DAY_ms,
          coloured,
        },
      ];
    };
    const isLooked = (each + fruit) % 2 === 0 && broke_d > 0;
    return [
      ...ASKED_d.flatMap((age_d) => ask(opened_d + age_d, false)),
      ...(isLooked ? ask(broke_d + chance.whole(0, 2), true) : []),
    ];
  });
}

const median = (numbers: readonly number[]): number =>
  numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? Number.NaN;
const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, each) => sum + each, 0) / Math.max(1, numbers.length);

/** How well ripe dates hold, and what keeping the advised number does, on simulated plants. */
export function fruitRows(seeds: readonly number[], plants_n: number): ReportRow[] {
  const told = seeds.flatMap((seed) => lives(seed, plants_n));
  const dates = told.flatMap(dated);
  const before = dates.filter(({ coloured }) => !coloured);
  const after = dates.filter(({ coloured }) => coloured);
  const kept = told.map(({ thinned }) => thinned);
  const alone = told.map(({ alone: life }) => life);
  const sizes = (all: readonly Life[]) =>
    all.flatMap(({ fruits }) =>
      fruits.filter(({ ripe_d }) => ripe_d !== undefined).map(({ dry_g, full_g }) => dry_g / full_g),
    );
  /** Of fruit that was old enough to be kept, and young enough in time to be ripe by the end: what became ripe. */
  const ripeShare = (all: readonly Life[]) => {
    const chosen = all.flatMap(({ fruits }) =>
      fruits.filter(
        ({ opened_d, gone, way }) =>
          opened_d < DAYS_n - 90 && gone !== "pinched" && (gone === undefined || way > 0.3),
      ),
    );
    return mean(chosen.map(({ ripe_d }) => (ripe_d === undefined ? 0 : 1)));
  };
  const mass = (all: readonly Life[]) =>
    mean(
      all.map(({ fruits }) =>
        fruits.filter(({ ripe_d }) => ripe_d !== undefined).reduce((sum, { dry_g }) => sum + dry_g, 0),
      ),
    );
  const row = (
    figure: string,
    value: number,
    unit: string,
    reference: string,
    goal: string,
    holds: boolean,
  ): ReportRow => ({
    figure,
    value,
    unit,
    reference,
    goal,
    holds,
  });
  const hold = (part: readonly Dated[]) => mean(part.map(({ holds }) => (holds ? 1 : 0)));
  const coverage = (name: string, part: readonly Dated[]) =>
    row(
      `ripe date: 80 % range holds the truth, ${name}`,
      hold(part),
      "share",
      `${part.length} forecasts, width ${mean(part.map(({ width_d }) => width_d)).toFixed(1)} d, bias ${mean(part.map(({ error_d }) => error_d)).toFixed(1)} d`,
      "0.75 to 0.85",
      hold(part) >= 0.75 && hold(part) <= 0.85,
    );
  const size = median(sizes(kept));
  const ripe = ripeShare(kept);
  const leaves = mean(kept.map(({ leaves_ratio }) => leaves_ratio));
  const leavesAlone = mean(alone.map(({ leaves_ratio }) => leaves_ratio));
  const all = (group: readonly Life[]) => mean(group.map(({ droppedAll }) => (droppedAll ? 1 : 0)));
  const price = 1 - mass(kept) / mass(alone);
  return [
    coverage("all", dates),
    coverage("before any colour", before),
    coverage("after a look at first colour", after),
    row(
      "fruit: median size of ripe fruit, advised number kept",
      size,
      "share of full",
      `left alone ${median(sizes(alone)).toFixed(2)}`,
      "at least 0.85",
      size >= 0.85,
    ),
    row(
      "fruit: kept fruit that ripens",
      ripe,
      "share",
      `left alone ${ripeShare(alone).toFixed(2)}`,
      "at least 0.90",
      ripe >= 0.9,
    ),
    row(
      "fruit: leaf area at the end over that at the start, advised number kept",
      leaves,
      "ratio",
      `left alone ${leavesAlone.toFixed(2)}`,
      "at least as left alone",
      leaves >= leavesAlone,
    ),
    row(
      "fruit: plants that drop all young fruit at once, advised number kept",
      all(kept),
      "share",
      `left alone ${all(alone).toFixed(2)}`,
      "fewer than left alone",
      all(kept) <= all(alone),
    ),
    row(
      "fruit: ripe mass given up for full size",
      price,
      "share",
      `${kept.length} plants over ${DAYS_n} days`,
      "printed; 0.10 to 0.40 expected",
      true,
    ),
  ];
}
