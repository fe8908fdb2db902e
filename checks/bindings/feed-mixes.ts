import * as feed from "@sillwood/science/feed";
import type { CheckRow } from "../src/row.ts";

type Product = {
  readonly mg_per_mL?: feed.Amounts;
  readonly mg_per_g?: feed.Amounts;
  readonly step_mL?: number;
  readonly step_g?: number;
  readonly EC_per_unit_L: number;
};
type Instance = {
  readonly V_L: number;
  readonly water_mg_L: feed.Amounts & { readonly alk_CaCO3?: number };
  readonly target_mg_L: Readonly<Record<feed.Aimed, number>>;
  readonly weight: Readonly<Record<feed.Aimed, number>>;
  readonly NH4_plus_urea_share_max: number;
  readonly EC_lin_max_mS_cm: number;
  readonly EC_water_mS_cm: number;
  readonly products: Readonly<Record<string, Product>>;
  readonly k_max_steps: number;
};

function problemOf(instance: Instance, products_n: number): feed.MixProblem {
  const { alk_CaCO3: _, ...water_mg_L } = instance.water_mg_L;
  const products = Object.entries(instance.products);
  return {
    products: products.map(([id, product]) => ({
      id,
      contents_mg: product.mg_per_mL ?? product.mg_per_g ?? {},
      step: product.step_mL ?? product.step_g ?? 1,
      most_n: instance.k_max_steps,
    })),
    volume_L: instance.V_L,
    water_mg_L,
    aims: Object.entries(instance.target_mg_L).map(([of, aim_mg_L]) => ({
      of: of as feed.Aimed,
      aim_mg_L,
      weight: instance.weight[of as feed.Aimed],
    })),
    limits: {
      ammoniumShare_frac: instance.NH4_plus_urea_share_max,
      lines: [
        {
          name: "conductivity by a line",
          perUnit: Object.fromEntries(products.map(([id, { EC_per_unit_L }]) => [id, EC_per_unit_L])),
          water: instance.EC_water_mS_cm,
          most: instance.EC_lin_max_mS_cm,
        },
      ],
    },
    products_n,
  };
}

/** Doses under the keys of the table: A_mL, C_g. */
function doses(instance: Instance, mix: { readonly doses: feed.Mix["doses"] }) {
  const unit = (id: string) => (instance.products[id]?.step_mL === undefined ? "g" : "mL");
  return Object.fromEntries(mix.doses.map(({ id, dose }) => [`${id}_${unit(id)}`, dose]));
}

/** The instance solved as the row asks: whole steps, squares or misses, or any doses at all. */
function ofInstance(row: CheckRow): Readonly<Record<string, unknown>> {
  const { instance_data, max_products, objective, doses: which } = row.inputs;
  const instance = instance_data as unknown as Instance | undefined;
  if (!instance?.products) return {};
  const products_n = typeof max_products === "number" ? max_products : Object.keys(instance.products).length;
  const problem = problemOf(instance, products_n);
  if (which === "continuous") {
    const relaxed = feed.relaxedMix(problem);
    return { objective: relaxed.misfit, one_solution: Object.values(relaxed.doses) };
  }
  if (objective === "L1") {
    const mix = feed.bestLinearMix(problem);
    return mix ? { ...doses(instance, mix), objective: mix.misfit } : {};
  }
  if (typeof row.inputs["syringe_step_mL"] === "number") return spread(row, instance);
  const table = feed.bestMix(problem);
  if (!feed.isMade(table)) return {};
  const mix = table.byProducts.at(-1) as feed.Mix;
  return {
    ...doses(instance, mix),
    objective: mix.misfit,
    EC_full_mS_cm: mix.conductivity_mS_cm,
    ...Object.fromEntries(
      (["N", "P", "K", "Ca", "Mg", "S"] as const).map((of) => [
        `${of}_mg_L`,
        feed.amountOf(mix.amounts_mg_L, of),
      ]),
    ),
  };
}

/** How the steps of the tools spread a concentration. */
function spread(row: CheckRow, instance: Instance): Readonly<Record<string, unknown>> {
  const volume_L = row.inputs["V_L"] as number;
  const sd = (of: feed.Aimed): number =>
    Math.hypot(
      ...Object.entries(instance.products).flatMap(([id, product]) => {
        const dose = (row.inputs[`${id}_mL`] ?? row.inputs[`${id}_g`]) as number | undefined;
        if (dose === undefined) return [];
        return [
          feed.doseSpread_mg_L({
            content_mg: feed.amountOf(product.mg_per_mL ?? product.mg_per_g ?? {}, of),
            dose,
            step: (product.step_mL === undefined
              ? row.inputs["scale_step_g"]
              : row.inputs["syringe_step_mL"]) as number,
            volume_L,
            dose_frac: 0,
          }),
        ];
      }),
    );
  return Object.fromEntries((["N", "P", "K", "Ca", "Mg"] as const).map((of) => [`sd_${of}_mg_L`, sd(of)]));
}

/** Any doses of named products, with the price of the limit on ammonium in mg/L. */
function ofPrices(row: CheckRow): Readonly<Record<string, unknown>> {
  const { products_mg_g, target_mg_L, NH4_share_max } = row.inputs;
  if (typeof products_mg_g !== "object" || products_mg_g === null) return {};
  const products = Object.entries(
    products_mg_g as Readonly<Record<string, Readonly<Record<string, number>>>>,
  );
  const problem: feed.MixProblem = {
    // A thousandth of a gram is fine enough for doses in any fraction.
    products: products.map(([id, { N = 0, NH4N = 0, ...rest }]) => ({
      id,
      contents_mg: { ...rest, NH4N, NO3N: N - NH4N },
      step: 0.001,
      most_n: 5000,
    })),
    volume_L: 1,
    water_mg_L: {},
    aims: Object.entries(target_mg_L as Readonly<Record<feed.Aimed, number>>).map(([of, aim_mg_L]) => ({
      of: of as feed.Aimed,
      aim_mg_L,
      weight: 1,
    })),
    limits: { ammoniumShare_frac: NH4_share_max as number },
  };
  const { doses: dose, misfit, prices } = feed.relaxedMix(problem);
  const sum = feed.sumAmounts(problem.products.map(({ id, contents_mg }) => [contents_mg, dose[id] ?? 0]));
  return {
    x_g_L: products.map(([id]) => dose[id]),
    multiplier_per_mgL: prices["ammonium share"],
    objective: misfit,
    NH4_share: (sum.NH4N ?? 0) / feed.amountOf(sum, "N"),
  };
}

export const ofMixes = (row: CheckRow): Readonly<Record<string, unknown>> => ({
  ...ofInstance(row),
  ...ofPrices(row),
});
