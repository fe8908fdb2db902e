import {
  crossing,
  finishOff_d,
  germinationTest,
  onFreshBasis,
  seedLife_d,
  usualHeat,
} from "@sillwood/science/fruit";
import type { World } from "../craft.ts";
import { fruitSettings } from "./assumptions.ts";
import { type Capacity, loadOf } from "./capacity.ts";
import { keepOf } from "./keep.ts";
import { kinds } from "./kinds.ts";
import { openNow } from "./open-now.ts";
import type { Bearer } from "./page.ts";
import type { BranchSaid, PlantFruit, PlantLine } from "./page-shape.ts";
import { HEAT_OF_HABIT, pepperOf } from "./pepper.ts";
import type { FruitSlice, SeedLot } from "./slice.ts";
import { fruitingWords } from "./words.ts";
import type { FruitPageWords } from "./words-page-shape.ts";
import { aboutSaid, capacityWorking, ripeSaid, ripeWorking, setWorking } from "./workings.ts";

const DAY_ms = 86_400_000;
/** From here on its heat is near its most, as a share of the way from flower to ripe. The model sheet of fruit, section 11. */
const HOT_FROM_frac = 0.7;
const ROOM_C = 21;

/** Everything the page says of one plant. */
export function plantFruit(
  world: World<FruitSlice>,
  { member, now }: Bearer,
  keeping_n: number | undefined,
  line: PlantLine,
  words: FruitPageWords,
): PlantFruit {
  const { say, now_ms } = world;
  const { slice, sight, plant } = member;
  const said = fruitingWords(say);
  const capacity = now.capacity();
  const working = capacityWorking(capacity, slice, sight);
  const setting = now.setting();
  const about = (value: number) => aboutSaid(value, sight);
  const has_n = slice.fruits?.n;
  const full = loadOf(capacity, capacity.fruits_n, sight);
  const many = loadOf(capacity, capacity.natural_n, sight);
  const price_frac = many.mass_g > 0 ? Math.max(0, 1 - full.mass_g / many.mass_g) : 0;
  const tried_n = keeping_n ?? (has_n !== undefined && has_n > capacity.keep_n ? has_n : undefined);
  const green = plant.habit === "fat";
  const days = finishOff_d({ coloured_frac: 0.3, air_C: 20, ...fruitSettings(sight) });
  const dropped = (["buds", "flowers", "fruits"] as const).filter((what) => slice.dropped[what] > 0);
  const droppedWords = { buds: words.buds, flowers: said.flowers, fruits: said.fruits };
  return {
    ...line,
    said: working.result,
    feeds: { said: working.result, working },
    aim: slice.aim,
    keep_n: capacity.keep_n,
    ...(has_n === undefined ? {} : { has_n }),
    totalSaid:
      capacity.keep_n === 0
        ? words.noFruit
        : words.total(say.number(capacity.keep_n, 0), about(capacity.low_n), about(capacity.high_n)),
    branches: branchesSaid(member, capacity, words, now_ms),
    ...(tried_n === undefined ? {} : { trySaid: tryWords(capacity, tried_n, sight, words) }),
    priceSaid: words.price(
      about(capacity.fruits_n),
      say.mass(full.mass_g),
      about(capacity.natural_n),
      say.mass(many.mass_g),
      say.percent(price_frac),
    ),
    price_frac,
    set: {
      said:
        setting.brushed_frac > setting.chance_frac + 0.05
          ? words.set(say.percent(setting.chance_frac), say.percent(setting.brushed_frac))
          : words.setFine(say.percent(setting.chance_frac)),
      working: setWorking(setting, sight),
    },
    ...(dropped.length === 0
      ? {}
      : {
          droppedSaid: words.dropped(
            say.list(dropped.map((what) => droppedWords[what](slice.dropped[what]))),
            say.day(slice.droppedAt_ms ?? now_ms, now_ms),
          ),
        }),
    ripe: now.ripe().map((ripe) => ({
      tag: ripe.cohort.id,
      ...(ripe.cohort.branch === undefined ? {} : { branch: ripe.cohort.branch }),
      fruits_n: ripe.cohort.fruits_n,
      state: ripe.state,
      said: ripeSaid(ripe, now, sight),
      dates_ms: ripe.dates_ms,
      working: ripeWorking(ripe, now, sight),
    })),
    pickStage: green ? "green or ripe" : "ripe",
    pickSaid: [green ? words.pickEither() : words.pickRipe(), ...hottestSaid(now, sight, words)].join(" "),
    earlySaid: words.early(say.language === "de" ? `${days ?? 5} Tagen` : `${days ?? 5} days`),
    storeSaid: words.store,
    heatSaid: heatSaid(member, words),
    seedSaid: crossSaid(world, member, words),
    lots: slice.lots.map((lot) => ({ lot: lot.lot, said: lotSaid(world, member, lot, words) })),
  };
}

function tryWords(
  capacity: Capacity,
  fruits_n: number,
  sight: Bearer["member"]["sight"],
  words: FruitPageWords,
): string {
  const { size_frac } = loadOf(capacity, fruits_n, sight);
  return size_frac > 0.97
    ? words.keepingFull(fruits_n)
    : words.keeping(fruits_n, sight.say.percent(size_frac));
}

function branchesSaid(
  { slice, sight, plant }: Bearer["member"],
  capacity: Capacity,
  words: FruitPageWords,
  now_ms: number,
): readonly BranchSaid[] {
  const isOpen = openNow(slice, sight.assumed("keepsOpen_d"), now_ms) > 0;
  return keepOf(slice, capacity, sight).map((each) => {
    const { branch, keep_n, has_n, why, bears_n, leaf_frac } = each;
    const fact = plant.branches?.[branch] as NonNullable<typeof plant.branches>[string];
    const open_n = isOpen ? slice.openBy[branch]?.n : undefined;
    const removed_n = has_n === undefined ? 0 : has_n - keep_n;
    const none = why === "thin" ? words.noneThin : words.noneLight;
    const said =
      has_n !== undefined && has_n > 0
        ? keep_n === 0
          ? none
          : words.keepOf(keep_n, has_n)
        : keep_n === 0 && has_n === undefined
          ? none
          : words.keep(keep_n);
    return {
      branch,
      said,
      keep_n,
      ...(has_n === undefined ? {} : { has_n }),
      ...(open_n === undefined ? {} : { open_n }),
      bears_n,
      leaf_frac,
      thickness_mm: fact.thickness_mm,
      length_cm: fact.length_cm,
      lean_deg: fact.lean_deg,
      ...(removed_n > 0
        ? { act: { kind: kinds.thinned.kind, data: { what: "fruits", removed_n, branch } } }
        : {}),
    };
  });
}

function hottestSaid(
  now: Bearer["now"],
  sight: Bearer["member"]["sight"],
  words: FruitPageWords,
): readonly string[] {
  const next = now.ripe().find(({ state }) => state === "on its way");
  if (!next) return [];
  const from_ms = now.course().reaches_ms(HOT_FROM_frac * next.sum_Cd - next.behind_Cd);
  const to_ms = next.dates_ms[10];
  return from_ms === undefined || to_ms === undefined
    ? []
    : [words.hottest(sight.say.days(from_ms, Math.max(from_ms, to_ms)))];
}

/** Never a number from looks: a laboratory's, on its basis, or the usual range of what people call such a pepper. */
function heatSaid({ slice, sight, plant }: Bearer["member"], words: FruitPageWords): string {
  const { say } = sight;
  const { assay } = slice;
  const number = (heat: number) => say.number(Number(heat.toPrecision(2)), 0);
  if (assay) {
    const factor = assay.water_frac === undefined ? undefined : 1 - assay.water_frac;
    const dry =
      assay.basis === "dry" ? assay.heat_n : factor === undefined ? undefined : assay.heat_n / factor;
    const fresh =
      assay.basis === "fresh"
        ? assay.heat_n
        : factor === undefined
          ? undefined
          : onFreshBasis({ onDry: assay.heat_n, freshPerDry_frac: factor });
    return words.heatLab(
      dry === undefined ? undefined : number(dry),
      fresh === undefined ? undefined : number(fresh),
      assay.method,
    );
  }
  const type = HEAT_OF_HABIT[plant.habit];
  if (!type) return words.heatNone;
  const { low, high } = usualHeat(type);
  return words.heatUsual(number(low), number(high));
}

/** Chance of a crossed fruit beside the likeliest father that stands here. */
function crossed_frac(
  world: World<FruitSlice>,
  { plant, sight }: Bearer["member"],
  kept: SeedLot["kept"],
): number {
  const mother = pepperOf(plant, sight).species;
  const fathers = world.members.filter(
    (other) =>
      other.plant.id !== plant.id &&
      (other.plant.cultivar !== plant.cultivar || other.plant.habit !== plant.habit),
  );
  return fathers.reduce((most, other) => {
    const father = pepperOf(other.plant, other.sight).species;
    return Math.max(most, crossing({ mother, father, distance_m: 0, kept }).fruit_frac);
  }, 0);
}

function crossSaid(world: World<FruitSlice>, member: Bearer["member"], words: FruitPageWords): string {
  const share = crossed_frac(world, member, "none");
  return share > 0 ? words.cross(world.say.percent(share)) : words.crossNone;
}

function lotSaid(
  world: World<FruitSlice>,
  member: Bearer["member"],
  lot: SeedLot,
  words: FruitPageWords,
): string {
  const { say } = world;
  const share = crossed_frac(world, member, lot.kept);
  const until_ms = lot.at_ms + seedLife_d({ air_C: ROOM_C }) * DAY_ms;
  const kept = words.lot(
    lot.kept,
    share >= 0.005 ? say.percent(share) : undefined,
    say.date(world.calendar.dateOf(until_ms)),
  );
  if (lot.tested_n === undefined || lot.germinated_n === undefined) return `${kept}; ${words.noTest}`;
  const { germinates_frac, low_frac, high_frac } = germinationTest({
    tested_n: lot.tested_n,
    germinated_n: lot.germinated_n,
  });
  return `${kept}; ${words.test(say.percent(germinates_frac), say.percent(low_frac), say.percent(high_frac))}`;
}
