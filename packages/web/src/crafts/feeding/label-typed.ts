import type { Json } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";
import { readNumber } from "../../pages/fields/read-number.ts";

/** What is typed off a label: per cents as text, choices where one was made. */
export interface LabelTyped {
  readonly name: string;
  readonly form: "liquid" | "solid";
  readonly basis?: "by mass" | "by volume";
  readonly tool: "syringe" | "scale" | "spoon";
  /** By element: as it is printed. */
  readonly as: Readonly<Partial<Record<string, "oxide" | "element">>>;
  /** Typed numbers by field: N, nitrate, ammonium, urea, P, K, Ca, Mg, S, Fe, B, density, step, most, amount. */
  readonly numbers: Readonly<Record<string, string>>;
}

export const emptyLabel: LabelTyped = { name: "", form: "liquid", tool: "syringe", as: {}, numbers: {} };
export const oxideOf = { P: "P2O5", K: "K2O", Ca: "CaO", Mg: "MgO", S: "SO3" } as const;
/** How far apart oxide and element are. */
export const apartOf = { P: "56 %", K: "17 %", Ca: "29 %", Mg: "40 %", S: "60 %" } as const;
export type Doubled = keyof typeof oxideOf;
export const doubled = Object.keys(oxideOf) as readonly Doubled[];
export const others = ["Fe", "B"] as const;

export const numberOf = ({ numbers }: LabelTyped, field: string): number | undefined => {
  const text = numbers[field]?.trim();
  return text ? readNumber(text) : undefined;
};

/** The first nutrient that is there and of which nobody said whether it is an oxide. */
export const unsaid = (typed: LabelTyped): Doubled | undefined =>
  doubled.find((of) => (numberOf(typed, of) ?? 0) > 0 && typed.as[of] === undefined);

export const isWhole = (typed: LabelTyped): boolean =>
  typed.name.trim() !== "" &&
  numberOf(typed, "N") !== undefined &&
  (numberOf(typed, "amount") ?? 0) > 0 &&
  (typed.form === "solid" || typed.basis !== undefined);

const share = (per_cent: number) => Number((per_cent / 100).toPrecision(12));

/** The two entries of a bottle that comes onto the shelf: that it was bought, and what its label prints. */
export function labelDrafts(typed: LabelTyped, id: string): readonly Draft[] {
  const unit = typed.form === "liquid" ? "mL" : "g";
  const data: Record<string, Json> = {
    form: typed.form,
    tool: typed.tool,
    N_frac: share(numberOf(typed, "N") ?? 0),
  };
  if (typed.form === "liquid" && typed.basis !== undefined) data["basis"] = typed.basis;
  const put = (key: string, value: number | undefined) => {
    if (value !== undefined) data[key] = value;
  };
  for (const [field, key] of [
    ["nitrate", "nitrateN_frac"],
    ["ammonium", "ammoniumN_frac"],
    ["urea", "ureaN_frac"],
    ...[...doubled, ...others].map((of) => [of, `${of}_frac`] as const),
  ] as const) {
    const value = numberOf(typed, field);
    put(key, value === undefined ? undefined : share(value));
  }
  for (const of of doubled) {
    const as = typed.as[of];
    if (data[`${of}_frac`] !== undefined && as !== undefined) data[`${of.toLowerCase()}As`] = as;
  }
  if (typed.form === "liquid") put("density_g_mL", numberOf(typed, "density"));
  put(unit === "mL" ? "step_mL" : "step_g", numberOf(typed, "step"));
  put(unit === "mL" ? "most_mL_L" : "most_g_L", numberOf(typed, "most"));
  return [
    {
      kind: "supply.bought",
      on: [id],
      data: { name: typed.name.trim(), what: "feed", amount: numberOf(typed, "amount") ?? 0, unit },
    },
    { kind: "supply.labelled", on: [id], data },
  ];
}
