import * as v from "valibot";
import { type Effect, type SoluteSpecies, soluteSpecies } from "../../book/effects.ts";
import { choice, id, quantity, text } from "../../book/fields.ts";
import type { EntryKind } from "../../book/kinds.ts";
import { feedingWords } from "./words.ts";

const species = (what: string) => v.optional(quantity(what, "mg/L", 0, 5000));

/** What the products of a mix put into each litre; what the water brings is the water's own. */
const solutionSchema = v.strictObject({
  NO3N_mg_L: species("nitrate nitrogen"),
  NH4N_mg_L: species("ammonium nitrogen"),
  ureaN_mg_L: species("urea nitrogen"),
  P_mg_L: species("phosphorus"),
  K_mg_L: species("potassium"),
  Ca_mg_L: species("calcium"),
  Mg_mg_L: species("magnesium"),
  S_mg_L: species("sulphur"),
  Na_mg_L: species("sodium"),
  Cl_mg_L: species("chloride"),
  HCO3_mg_L: species("bicarbonate"),
  B_mg_L: species("boron"),
  Cu_mg_L: species("copper"),
  Fe_mg_L: species("iron"),
  Mn_mg_L: species("manganese"),
  Mo_mg_L: species("molybdenum"),
  Zn_mg_L: species("zinc"),
});
export type Solution = v.InferOutput<typeof solutionSchema>;

const drained = choice("drained", ["yes", "no", "unknown"]);
const fedSchema = v.strictObject({
  volume_mL: quantity("feed poured", "mL", 1, 100_000),
  drained,
  leachate_mL: v.optional(quantity("ran through", "mL", 0, 100_000)),
  solution: solutionSchema,
  tank: v.optional(text("tank", 40)),
});
export type Fed = v.InferOutput<typeof fedSchema>;

const flushedSchema = v.strictObject({
  volume_mL: quantity("plain water run through", "mL", 1, 1_000_000),
  leachate_mL: v.optional(quantity("ran through", "mL", 0, 1_000_000)),
});
export type Flushed = v.InferOutput<typeof flushedSchema>;

const mixedSchema = v.strictObject({
  tank: text("tank", 40),
  volume_L: quantity("volume mixed", "L", 0.05, 10_000),
  doses: v.pipe(
    v.array(
      v.strictObject({
        supply: id("product"),
        amount: quantity("amount of the product", "", 0, 1e6),
        unit: choice("unit", ["mL", "g"]),
      }),
    ),
    v.maxLength(12, "a mix holds more than 12 products"),
  ),
  solution: solutionSchema,
  expected_mS_cm: quantity("conductivity that it should read", "mS/cm", 0, 30),
  read_mS_cm: v.optional(quantity("conductivity that it read", "mS/cm", 0, 30)),
});
export type Mixed = v.InferOutput<typeof mixedSchema>;

const plant = { v: 1, readers: "all", subject: "plant", onMin_n: 1 } as const;
export const FED = "feeding.fed";
export const FLUSHED = "feeding.flushed";
export const MIXED = "feeding.mixed";

/** Species of a solution, with what a litre of it holds [mg]. */
const speciesOf = (solution: Solution): readonly (readonly [SoluteSpecies, number])[] =>
  soluteSpecies.flatMap((of) => {
    const held_mg = solution[`${of}_mg_L`];
    return held_mg === undefined || held_mg === 0 ? [] : [[of, held_mg] as const];
  });

function fedEffects({ volume_mL, drained: out, leachate_mL, solution }: Fed): readonly Effect[] {
  const water: Effect = {
    effect: "water in",
    volume_mL,
    drained: out,
    ...(leachate_mL === undefined ? {} : { leachate_mL }),
  };
  const added_mg = Object.fromEntries(
    speciesOf(solution).map(([of, held_mg]) => [of, (held_mg * volume_mL) / 1000]),
  );
  return [water, { effect: "solutes", added_mg }];
}

const fed: EntryKind<Fed> = {
  ...plant,
  kind: FED,
  schema: fedSchema,
  sentence: (data, say) => feedingWords(say).fed(data),
  effects: fedEffects,
  example: { volume_mL: 180, drained: "yes", solution: { NO3N_mg_L: 80, K_mg_L: 120 }, tank: "A" },
};

const flushed: EntryKind<Flushed> = {
  ...plant,
  kind: FLUSHED,
  schema: flushedSchema,
  sentence: (data, say) => feedingWords(say).flushed(data),
  effects: ({ volume_mL, leachate_mL }) => [
    {
      effect: "water in",
      volume_mL,
      drained: "yes",
      ...(leachate_mL === undefined ? {} : { leachate_mL }),
    },
  ],
  example: { volume_mL: 700 },
};

/** A tank made for these plants. Nothing reaches them before they are fed. */
const mixed: EntryKind<Mixed> = {
  ...plant,
  kind: MIXED,
  schema: mixedSchema,
  sentence: (data, say) => feedingWords(say).mixed(data),
  effects: () => [],
  example: {
    tank: "A",
    volume_L: 7.5,
    doses: [{ supply: "bottle-a", amount: 3, unit: "mL" }],
    solution: { NO3N_mg_L: 80, K_mg_L: 120 },
    expected_mS_cm: 1.4,
  },
};

export const feedingKinds = [fed, flushed, mixed] as const;
