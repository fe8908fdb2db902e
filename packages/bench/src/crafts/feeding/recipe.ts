import {
  amountOf,
  bestMix,
  closedIons,
  conductivity_mS_cm,
  doseSpread_mg_L,
  feedDrift,
  ionsOf,
  isMade,
  type Mix,
  type MixProblem,
  potentialAcidity_mg_g,
  shortfalls,
  sumAmounts,
  USUAL_WATER_SPREAD_frac,
  type WaterReport,
  waterAmounts_mg_L,
} from "@sillwood/science/feed";
import type { Json } from "../../book/entry.ts";
import type { Draft } from "../../round/pages.ts";
import type { World } from "../craft.ts";
import { fed } from "./assumptions.ts";
import { MIXED, type Mixed, type Solution } from "./kinds.ts";
import { aimsOf, limitsOf } from "./need.ts";
import type { FeedGroup, FeedRecipe, MixElement } from "./page-shape.ts";
import { asProduct, type Bottle } from "./shelf.ts";
import type { FeedSlice } from "./slice.ts";
import { feedPageWords } from "./words-page.ts";
import { recipeWorking } from "./working-recipe.ts";

/** Steps under which a dose is measured better through a stock. @source feed sheet: quantisation of a step */
const SMALL_DOSE_n = 5;
/** How far a meter, a label and a hand are off together. @source our assumption */
const METER_frac = 0.08;

export interface Wanted {
  readonly group: FeedGroup;
  readonly volume_L: number;
  readonly water: WaterReport;
  readonly isWaterKnown: boolean;
  readonly bottles: readonly Bottle[];
  readonly products_n: number;
}

const problemOf = (
  { group, volume_L, water, bottles, products_n }: Wanted,
  world: World<FeedSlice>,
): MixProblem => ({
  products: bottles.map((bottle) => asProduct(bottle, volume_L)),
  volume_L,
  water_mg_L: waterAmounts_mg_L(water),
  aims: aimsOf(group.stage, world.assumed, group.strength_frac),
  limits: limitsOf(group.stage),
  products_n,
});

export type Made =
  | { readonly recipe: FeedRecipe; readonly mix: Mix; readonly short: readonly string[] }
  | { readonly broken: readonly string[] };

/** The card: what, with which tool, in which order, how it should read. */
export function recipeFor(wanted: Wanted, world: World<FeedSlice>): Made {
  const problem = problemOf(wanted, world);
  const table = bestMix(problem);
  if (!isMade(table)) return { broken: table.broken };
  const words = feedPageWords(world.say);
  const { say } = world;
  const mix =
    table.byProducts.length > 1 && wanted.products_n < 4 ? (table.byProducts.at(-1) as Mix) : table.chosen;
  const byId = new Map(wanted.bottles.map((bottle) => [bottle.supply.id, bottle]));
  const doses = mix.doses.flatMap(({ id, steps_n, dose }) => {
    const bottle = byId.get(id);
    if (!bottle) return [];
    const amount = Number(dose.toFixed(4));
    const { unit, step, label, supply } = bottle;
    const stepSaid = unit === "mL" ? `${say.number(step, 2)} mL` : `${say.number(step, 2)} g`;
    return [
      {
        supply: id,
        name: supply.name,
        steps_n,
        amount,
        unit,
        said: words.dose(label.tool, steps_n, stepSaid, `${say.number(amount, 2)} ${unit}`),
      },
    ];
  });
  const calcium = (id: string) => ((byId.get(id)?.read.contents_mg.Ca ?? 0) > 0 ? 1 : 0);
  const inOrder = doses.toSorted((one, other) => calcium(one.supply) - calcium(other.supply));
  const litres = say.volume(1000 * wanted.volume_L);
  const steps = [
    words.pour(say.volume(750 * wanted.volume_L)),
    ...inOrder.flatMap(({ name, said }, i) => [
      `${name}: ${said}`,
      i === inOrder.length - 1 ? words.stirAll : words.stir,
    ]),
    words.fill(litres),
    words.measure,
  ];
  const spread = wanted.isWaterKnown ? 0 : USUAL_WATER_SPREAD_frac;
  const water_mS_cm = conductivity_mS_cm(closedIons(ionsOf(problem.water_mg_L)));
  const off_mS_cm = METER_frac * mix.conductivity_mS_cm + 0.35 * spread * water_mS_cm;
  const low_mS_cm = Math.max(0, mix.conductivity_mS_cm - off_mS_cm);
  const high_mS_cm = mix.conductivity_mS_cm + off_mS_cm;
  const elements = elementsOf(mix, problem, wanted, byId, spread, world);
  const small = doses.filter(({ steps_n }) => steps_n < SMALL_DOSE_n);
  const tank = tankName(wanted.group, world);
  const solution = solutionOf(mix, problem);
  const drafts = actOf(tank, doses, solution, mix, wanted);
  const cost = costOf(doses, byId);
  const short = shortfalls(problem);
  const recipe: FeedRecipe = {
    tank,
    volume_L: wanted.volume_L,
    doses,
    steps,
    trade: table.byProducts.slice(1).map(({ misfit }, i) => ({
      products_n: i + 1,
      misfit,
      said: words.trade(i + 1, misfit, i > 0 && Math.abs(misfit - (table.byProducts[i]?.misfit ?? 0)) < 1e-9),
    })),
    elements,
    expected_mS_cm: mix.conductivity_mS_cm,
    low_mS_cm,
    high_mS_cm,
    meterSaid: words.meter(say.number(low_mS_cm, 1), say.number(high_mS_cm, 1)),
    driftSaid: words.drift[driftOf(doses, byId, wanted).drift],
    ...(cost === undefined ? {} : { costSaid: words.cost(say.money(cost.minor, cost.currency)) }),
    notes: [
      ...small.map(({ name, amount, unit }) =>
        words.smallDose(name, `${say.number(10 * amount, 2)} ${unit}`, say.volume(1000), say.volume(100)),
      ),
      ...doses.flatMap(({ supply, name }) =>
        byId.get(supply)?.read.splitKnown ? [] : [words.noSplit(name)],
      ),
      ...doses.flatMap(({ supply, name }) => {
        const bottle = byId.get(supply);
        const guessed = bottle?.read.doubts.some(({ doubt }) => doubt === "no density");
        return guessed ? [words.noDensity(name)] : [];
      }),
      ...(doses.some(({ supply }) => calcium(supply) > 0) && doses.length > 1 ? [words.neverTogether] : []),
    ],
    act: drafts,
    working: recipeWorking(mix, wanted, elements, world),
  };
  return { recipe, mix, short: short.map((each) => words.shortfall(each)) };
}

/** What the products bring, without the water's own. */
function solutionOf(mix: Mix, problem: MixProblem): Solution {
  const without = sumAmounts([
    [mix.amounts_mg_L, 1],
    [problem.water_mg_L, -1],
  ]);
  return Object.fromEntries(
    Object.entries(without).flatMap(([of, held_mg]) =>
      held_mg > 1e-6 ? [[`${of}_mg_L`, Number(held_mg.toFixed(4))]] : [],
    ),
  );
}

function actOf(
  tank: string,
  doses: FeedRecipe["doses"],
  solution: Solution,
  mix: Mix,
  { group, volume_L }: Wanted,
): readonly Draft[] {
  const data: Mixed = {
    tank,
    volume_L,
    doses: doses.map(({ supply, amount, unit }) => ({ supply, amount, unit })),
    solution,
    expected_mS_cm: Number(mix.conductivity_mS_cm.toFixed(3)),
  };
  return [
    ...(group.pots.length > 0
      ? [{ kind: MIXED, on: group.pots.map(({ plant }) => plant), data: data as unknown as Json }]
      : []),
    ...doses.map(({ supply, amount }) => ({
      kind: "supply.used",
      on: [supply],
      data: { amount, why: `tank ${tank}` } as Json,
    })),
  ];
}

function elementsOf(
  mix: Mix,
  problem: MixProblem,
  wanted: Wanted,
  byId: ReadonlyMap<string, Bottle>,
  spread: number,
  world: World<FeedSlice>,
): readonly MixElement[] {
  const words = feedPageWords(world.say);
  return fed.map((of): MixElement => {
    const aim = problem.aims.find((each) => each.of === of);
    const value_mg_L = amountOf(mix.amounts_mg_L, of);
    const fromDoses = mix.doses.map(({ id, dose }) => {
      const bottle = byId.get(id) as Bottle;
      return doseSpread_mg_L({
        content_mg: Math.min(1000, amountOf(bottle.read.contents_mg, of)),
        dose,
        step: bottle.step,
        volume_L: wanted.volume_L,
        dose_frac: bottle.label.tool === "spoon" ? 0.15 : 0.05,
        volume_frac: 0.02,
      });
    });
    const sd_mg_L = Math.hypot(...fromDoses, spread * amountOf(problem.water_mg_L, of));
    const low_mg_L = aim?.low_mg_L ?? 0;
    const high_mg_L = aim?.high_mg_L ?? 0;
    const state = value_mg_L < low_mg_L ? "low" : value_mg_L > high_mg_L ? "high" : "in";
    const number = (value: number) => world.say.number(value, 0);
    return {
      of,
      value_mg_L,
      low_mg_L,
      high_mg_L,
      sd_mg_L,
      said: words.element(
        of,
        number(value_mg_L),
        number(sd_mg_L),
        number(low_mg_L),
        number(high_mg_L),
        state,
      ),
    };
  });
}

function driftOf(doses: FeedRecipe["doses"], byId: ReadonlyMap<string, Bottle>, { volume_L, water }: Wanted) {
  const acidity_mg_L = doses.reduce((sum, { supply, amount }) => {
    const held = byId.get(supply)?.read.contents_mg ?? {};
    const share = (of: "P" | "K" | "Ca" | "Mg" | "S" | "Cl" | "Na") => Math.min(1, amountOf(held, of) / 1000);
    const perUnit = potentialAcidity_mg_g({
      N_frac: Math.min(1, amountOf(held, "N") / 1000),
      P_frac: share("P"),
      K_frac: share("K"),
      Ca_frac: share("Ca"),
      Mg_frac: share("Mg"),
      S_frac: share("S"),
      Cl_frac: share("Cl"),
      Na_frac: share("Na"),
    });
    return sum + (perUnit * amount) / volume_L;
  }, 0);
  return feedDrift({
    alkalinity_mg_L: Math.min(1000, water.alkalinity_mg_L ?? 0),
    acidity_mg_L: Math.max(-1000, Math.min(1000, acidity_mg_L)),
  });
}

function costOf(doses: FeedRecipe["doses"], byId: ReadonlyMap<string, Bottle>) {
  let minor = 0;
  let currency: string | undefined;
  for (const { supply, amount, unit } of doses) {
    const on = byId.get(supply)?.supply;
    if (!on || on.paid_minor === 0 || on.unit !== unit || on.bought <= 0) return undefined;
    minor += (on.paid_minor * amount) / on.bought;
    currency = on.currency ?? currency;
  }
  return doses.length > 0 && currency !== undefined ? { minor: Math.round(minor), currency } : undefined;
}

/** Month and day, and which of that day's tanks: short enough for a tag. */
function tankName(group: FeedGroup, world: World<FeedSlice>): string {
  const date = world.calendar.dateOf(world.now_ms);
  return `${date.slice(5, 7)}${date.slice(8, 10)} ${group.stage}${group.strength_frac < 1 ? " weak" : ""}`;
}
