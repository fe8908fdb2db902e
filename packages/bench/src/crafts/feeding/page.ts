import {
  hardnessOf_mg_L,
  ionImbalance_frac,
  type MeterScale,
  meterScales,
  pureShare_frac,
  waterLimits,
} from "@sillwood/science/feed";
import type { Json } from "../../book/entry.ts";
import { PageError, type World } from "../craft.ts";
import { feedGroups } from "./groups.ts";
import type { FeedAsk, FeedPage } from "./page-shape.ts";
import { checkReading } from "./reading.ts";
import { type Made, recipeFor, type Wanted } from "./recipe.ts";
import { bottlesOf, USUAL_WATER, waterPoured, watersOf } from "./shelf.ts";
import type { FeedSlice } from "./slice.ts";
import { feedPageWords } from "./words-page.ts";

const number = (name: string, value: unknown, min: number, max: number, unit: string): number | undefined => {
  if (value === undefined) return undefined;
  if (typeof value !== "number" || !(value >= min && value <= max))
    throw new PageError(
      `${name} is ${JSON.stringify(value)}; expected ${min} to ${max}${unit && ` ${unit}`}`,
    );
  return value;
};

/** An ask that came as plain data, looked over. */
function askOf(ask: Json): FeedAsk {
  if (typeof ask !== "object" || ask === null || Array.isArray(ask))
    throw new PageError("the ask is not an object");
  const { group, volume_L, water, pure_frac, products_n, without, read } = ask as Readonly<
    Record<string, Json>
  >;
  const text = (name: string, value: Json | undefined) => {
    if (value !== undefined && typeof value !== "string")
      throw new PageError(`${name} is ${JSON.stringify(value)}; expected a name`);
    return value;
  };
  const reading = read as { readonly value?: unknown; readonly scale?: unknown } | undefined;
  if (reading && !meterScales.includes(reading.scale as MeterScale))
    throw new PageError(
      `scale is ${JSON.stringify(reading.scale)}; expected one of ${meterScales.join(", ")}`,
    );
  const given = {
    group: text("group", group),
    water: text("water", water),
    volume_L: number("volume", volume_L, 0.05, 1000, "L"),
    pure_frac: number("share of rain", pure_frac, 0, 1, ""),
    products_n: number("bottles", products_n, 1, 4, ""),
    without: Array.isArray(without) ? without.map(String) : undefined,
    read: reading && {
      value: number("reading", reading.value ?? null, 0, 100_000, String(reading.scale)) as number,
      scale: reading.scale as MeterScale,
    },
  };
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as FeedAsk;
}

/** The mixing desk: screen 5 and `sillwood mix feed`. */
export function feedPage(world: World<FeedSlice>, given: Json): FeedPage {
  const ask = askOf(given);
  const { say, supplies, now_ms } = world;
  const words = feedPageWords(say);
  const groups = feedGroups(world);
  const chosen = ask.group === undefined ? groups[0] : groups.find(({ key }) => key === ask.group);
  if (!chosen)
    throw new PageError(`group is ${ask.group}; expected one of ${groups.map(({ key }) => key).join(", ")}`);
  const waters = watersOf(supplies);
  const tested =
    ask.water === USUAL_WATER ? undefined : (waters.find(({ id }) => id === ask.water) ?? waters[0]);
  const pure_frac = ask.pure_frac ?? world.assumed("feedPure_frac");
  const water = waterPoured(tested, pure_frac);
  const bottles = bottlesOf(supplies);
  const used = bottles.filter(({ supply }) => supply.onHand > 0 && !(ask.without ?? []).includes(supply.id));
  const wanted: Wanted = {
    group: chosen,
    volume_L: ask.volume_L ?? chosen.volume_L,
    water,
    isWaterKnown: tested !== undefined,
    bottles: used,
    products_n: ask.products_n ?? 4,
  };
  const made: Made | undefined = used.length === 0 ? undefined : recipeFor(wanted, world);
  const recipe = made && "recipe" in made ? made.recipe : undefined;
  const doses = new Set(recipe?.doses.map(({ supply }) => supply));
  const reading = ask.read && recipe ? checkReading(ask.read, recipe, wanted, world) : undefined;
  const trouble = troubleOf(made, used.length, wanted, world);
  return {
    now_ms,
    said: chosen.said,
    groups,
    chosen: { ...chosen, volume_L: wanted.volume_L },
    water: {
      id: tested?.id ?? USUAL_WATER,
      said: tested ? words.waterOf(tested.name, pure_frac) : words.usualWater(pure_frac),
      origin: tested && tested.water?.source !== "guessed" ? "measured" : "assumed",
      pure_frac,
      notes: waterNotes(water, tested?.water?.softened, world),
    },
    waters: [
      ...waters.map(({ id, name }) => ({ id, said: name })),
      { id: USUAL_WATER, said: words.usualWater(0) },
    ],
    shelf: bottles.map(({ supply, label }) => {
      const why =
        supply.onHand <= 0
          ? words.empty
          : (ask.without ?? []).includes(supply.id)
            ? words.leftOut
            : undefined;
      return {
        id: supply.id,
        name: supply.name,
        said: words.bottle(label.N_frac, label.P_frac ?? 0, label.K_frac ?? 0),
        isUsed: doses.has(supply.id),
        ...(why === undefined ? {} : { why }),
      };
    }),
    ...(recipe ? { recipe } : {}),
    ...(trouble ? { trouble } : {}),
    ...(reading ? { reading } : {}),
    cautions: words.cautions,
  };
}

function troubleOf(
  made: Made | undefined,
  used_n: number,
  { water }: Wanted,
  world: World<FeedSlice>,
): FeedPage["trouble"] {
  const words = feedPageWords(world.say);
  if (!made || used_n === 0) return { said: words.noBottle, ways: [] };
  if ("broken" in made) {
    const most = { Na: waterLimits.Na_mg_L, Cl: waterLimits.Cl_mg_L, B: waterLimits.B_mg_L } as const;
    const shares = (["Na", "Cl", "B"] as const).map((of) =>
      pureShare_frac({ tap_mg_L: water[`${of}_mg_L`] ?? 0, most_mg_L: most[of] }),
    );
    return { said: words.waterBreaks(made.broken.join(", ")), ways: [words.thin(Math.max(...shares))] };
  }
  return made.short.length > 0
    ? { said: words.notMet(made.short.slice(0, 2).join(", ")), ways: [words.oneMore] }
    : undefined;
}

function waterNotes(
  water: Wanted["water"],
  softened: string | undefined,
  { say }: World<FeedSlice>,
): readonly string[] {
  const words = feedPageWords(say);
  const imbalance = ionImbalance_frac(water);
  const alkalinity = water.alkalinity_mg_L ?? 0;
  return [
    ...(imbalance > 0.1
      ? [words.unbalanced(imbalance)]
      : imbalance > 0.05
        ? [words.lookAgain(imbalance)]
        : []),
    ...(softened === "sodium" || softened === "potassium" ? [words.softened] : []),
    ...(alkalinity > waterLimits.alkalinityAct_mg_L ? [words.alkaline(say.number(alkalinity, 0))] : []),
    ...(hardnessOf_mg_L(water) > 2 * waterLimits.hardness_mg_L ? [words.hard] : []),
  ];
}
