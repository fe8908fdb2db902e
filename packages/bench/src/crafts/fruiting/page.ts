import type { Json } from "../../book/entry.ts";
import { PageError, type World, type WorldMember } from "../craft.ts";
import { kinds } from "./kinds.ts";
import { type FruitNow, fruitNow } from "./now.ts";
import { brushingDue, openNow } from "./open-now.ts";
import type { FruitAsk, FruitPage, OpenList, PickLine, PlantLine } from "./page-shape.ts";
import { plantFruit } from "./plant-fruit.ts";
import type { FruitSlice } from "./slice.ts";
import { tooMany, toPick } from "./tasks.ts";
import { fruitingWords } from "./words.ts";
import { pageGerman } from "./words-page.de.ts";
import { pageEnglish } from "./words-page.en.ts";
import { aboutSaid, ripeSaid } from "./workings.ts";

const MOST_TRIED_n = 2000;

/** One plant of the page with what is reckoned of its fruit. */
export interface Bearer {
  readonly member: WorldMember<FruitSlice>;
  readonly now: FruitNow;
}

/** Screen 8 and `sillwood fruit`. */
export function fruitPage(world: World<FruitSlice>, json: Json): FruitPage {
  const ask = readAsk(json);
  const { say, now_ms } = world;
  const words = say.language === "de" ? pageGerman : pageEnglish;
  const said = fruitingWords(say);
  const bearers = world.members.map(
    (member): Bearer => ({ member, now: fruitNow(member.slice, member.sight) }),
  );
  const known = bearers.filter(({ member: { slice } }) => isWritten(slice));
  const wanted =
    ask.plant === undefined ? undefined : bearers.find(({ member }) => member.plant.id === ask.plant);
  if (ask.plant !== undefined && !wanted)
    throw new PageError(`plant is ${JSON.stringify(ask.plant)}; expected the id of a living plant`);
  const open = openList(world, known);
  const pick = known.flatMap((bearer) => pickLines(world, bearer));
  const ripe_n = pick.reduce((sum, { fruits_n }) => sum + fruits_n, 0);
  const line = ({ member }: Bearer, text: string): PlantLine => ({
    plant: member.plant.id,
    number: world.numberOf(member.plant.id),
    kind: world.kindOf(member.plant),
    said: text,
  });
  const calendar = known
    .flatMap((bearer) =>
      bearer.now
        .ripe()
        .filter(({ state }) => state === "on its way")
        .map((ripe) => ({
          ...line(bearer, ripeSaid(ripe, bearer.now, bearer.member.sight)),
          fruits_n: ripe.cohort.fruits_n,
          dates_ms: ripe.dates_ms,
        })),
    )
    .toSorted((a, b) => (a.dates_ms[10] as number) - (b.dates_ms[10] as number));
  return {
    now_ms,
    said:
      known.length === 0
        ? words.nothing
        : words.head(said.flowers(open.flowers_n), open.plants.length, said.fruits(ripe_n)),
    open,
    thin: known.flatMap((bearer) => {
      const removed_n = tooMany(bearer.member.slice, bearer.now, bearer.member.sight);
      const { keep_n } = bearer.now.capacity();
      return removed_n === undefined
        ? []
        : [line(bearer, said.task.thinSaid(said.fruits(removed_n), say.number(keep_n, 0)))];
    }),
    pick,
    calendar,
    stuck: known.flatMap((bearer) => {
      const ripe = bearer.now.ripe().find(({ state }) => state === "cannot ripen");
      return ripe ? [line(bearer, ripeSaid(ripe, bearer.now, bearer.member.sight))] : [];
    }),
    plants: known.map((bearer) => {
      const { fruits_n, low_n, high_n } = bearer.now.capacity();
      const about = (value: number) => aboutSaid(value, bearer.member.sight);
      return line(bearer, said.feeds(about(fruits_n), about(low_n), about(high_n)));
    }),
    ...(wanted ? { plant: plantFruit(world, wanted, ask.keeping_n, line(wanted, ""), words) } : {}),
    cautions: [
      { key: "hot", said: words.careHot },
      { key: "food", said: words.careFood },
      { key: "seed", said: words.careSeed },
    ],
    figures: {
      openFlowers_n: open.flowers_n,
      inFlower_n: open.plants.length,
      toPick_n: ripe_n,
      plants_n: known.length,
      onTheWay_n: calendar.reduce((sum, { fruits_n }) => sum + fruits_n, 0),
    },
  };
}

const isWritten = ({ open, fruits, cohorts, picked_n, buds }: FruitSlice): boolean =>
  open !== undefined || buds !== undefined || fruits !== undefined || cohorts.length > 0 || picked_n > 0;

function readAsk(json: Json): FruitAsk {
  if (typeof json !== "object" || json === null || Array.isArray(json))
    throw new PageError("what is asked of fruit is no object; expected {plant, keeping_n}, each optional");
  const { plant, keeping_n, ...others } = json as Readonly<Record<string, Json | undefined>>;
  const [other] = Object.keys(others);
  if (other !== undefined) throw new PageError(`${other} is asked of fruit; expected plant or keeping_n`);
  if (plant !== undefined && typeof plant !== "string")
    throw new PageError(`plant is ${JSON.stringify(plant)}; expected the id of a plant`);
  if (
    keeping_n !== undefined &&
    !(
      typeof keeping_n === "number" &&
      Number.isInteger(keeping_n) &&
      keeping_n >= 0 &&
      keeping_n <= MOST_TRIED_n
    )
  )
    throw new PageError(
      `keeping_n is ${JSON.stringify(keeping_n)}; expected 0 to ${MOST_TRIED_n} fruits, a whole number`,
    );
  return {
    ...(plant === undefined ? {} : { plant }),
    ...(keeping_n === undefined ? {} : { keeping_n: keeping_n as number }),
  };
}

function openList(world: World<FruitSlice>, known: readonly Bearer[]): OpenList {
  const { say, now_ms } = world;
  const words = say.language === "de" ? pageGerman : pageEnglish;
  const said = fruitingWords(say);
  const plants = known.flatMap(({ member }) => {
    const { slice, sight, plant } = member;
    const open_n = openNow(slice, sight.assumed("keepsOpen_d"), now_ms);
    if (open_n === 0) return [];
    const due = brushingDue(slice, sight);
    // What is asked for tomorrow only is not what the key writes today.
    const isDue =
      due !== undefined && world.calendar.dateOf(due.earliest_ms) === world.calendar.dateOf(now_ms);
    const last_ms = slice.brushes_ms.at(-1);
    return [
      {
        plant: plant.id,
        number: world.numberOf(plant.id),
        kind: world.kindOf(plant),
        open_n,
        isDue,
        said: words.open(
          said.flowers(open_n),
          isDue,
          last_ms === undefined ? undefined : say.day(last_ms, now_ms),
        ),
      },
    ];
  });
  const flowers_n = plants.reduce((sum, { open_n }) => sum + open_n, 0);
  const due = plants.filter(({ isDue }) => isDue);
  return {
    flowers_n,
    said: plants.length === 0 ? words.noneOpen : words.openSaid(said.flowers(flowers_n), plants.length),
    how: words.how,
    due_n: due.reduce((sum, { open_n }) => sum + open_n, 0),
    acts: due.map(({ plant, open_n }) => ({
      kind: kinds.brushed.kind,
      on: plant,
      data: { open_n, how: "brush" },
    })),
    plants,
  };
}

function pickLines(world: World<FruitSlice>, { member, now }: Bearer): readonly PickLine[] {
  return toPick(now, world.now_ms).map((ripe) => ({
    plant: member.plant.id,
    number: world.numberOf(member.plant.id),
    kind: world.kindOf(member.plant),
    said: ripeSaid(ripe, now, member.sight),
    fruits_n: ripe.cohort.fruits_n,
    tag: ripe.cohort.id,
    isSeen: ripe.state === "ripe",
    act: {
      kind: kinds.picked.kind,
      data: { fruits_n: ripe.cohort.fruits_n, colour: "ripe", tag: ripe.cohort.id },
    },
  }));
}
