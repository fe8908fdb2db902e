import { type LeastCost, leastCost } from "./lp.ts";
import { isAllowed, lineAt } from "./mix-measure.ts";
import { type CompiledMix, compiledMix, type MixProblem } from "./mix-problem.ts";

export type LinearMix = {
  readonly doses: readonly { readonly id: string; readonly steps_n: number; readonly dose: number }[];
  readonly misfit: number;
};

/** Weighted misses, not squared, each over its aim. */
function linearMisfit(mix: CompiledMix, steps: ArrayLike<number>): number {
  let sum = 0;
  for (const aim of mix.aims) {
    const value = lineAt(aim, steps);
    const miss = value > aim.high ? value - aim.high : value < aim.low ? aim.low - value : 0;
    sum += aim.linearWeight * miss;
  }
  return sum;
}

/** The relaxation over a box: steps above their least, and a miss for each aim. */
function relaxed(mix: CompiledMix, low: Int32Array, high: Int32Array): ReturnType<typeof leastCost> {
  const steps_n = low.length;
  const width = steps_n + mix.aims.length;
  const lines: { factors: number[]; most: number }[] = [];
  const shifted = (row: CompiledMix["limits"][number]) => lineAt(row, low);
  mix.aims.forEach((aim, aim_n) => {
    const over = new Array<number>(width).fill(0);
    const under = new Array<number>(width).fill(0);
    for (let index_n = 0; index_n < steps_n; index_n++) {
      over[index_n] = aim.steps[index_n] as number;
      under[index_n] = -(aim.steps[index_n] as number);
    }
    over[steps_n + aim_n] = -1;
    under[steps_n + aim_n] = -1;
    lines.push({ factors: over, most: aim.high - shifted(aim) });
    lines.push({ factors: under, most: shifted(aim) - aim.low });
  });
  for (const row of mix.limits) {
    const factors = new Array<number>(width).fill(0);
    for (let index_n = 0; index_n < steps_n; index_n++) factors[index_n] = row.steps[index_n] as number;
    lines.push({ factors, most: -shifted(row) });
  }
  for (let index_n = 0; index_n < steps_n; index_n++) {
    const factors = new Array<number>(width).fill(0);
    factors[index_n] = 1;
    lines.push({ factors, most: (high[index_n] as number) - (low[index_n] as number) });
  }
  const costs = [...new Array<number>(steps_n).fill(0), ...mix.aims.map(({ linearWeight }) => linearWeight)];
  return leastCost({ costs, lines } satisfies LeastCost);
}

function searchLinear(
  mix: CompiledMix,
  chosen: readonly number[],
  best: { misfit: number; steps: Int32Array } | undefined,
): typeof best {
  const products_n = mix.products.length;
  const allowed = new Set(chosen);
  const boxes = [
    {
      low: new Int32Array(products_n),
      high: Int32Array.from(mix.most, (most, index_n) => (allowed.has(index_n) ? most : 0)),
    },
  ];
  let found = best;
  for (let box = boxes.pop(); box; box = boxes.pop()) {
    const { low, high } = box;
    const least = relaxed(mix, low, high);
    if (!least || least.cost >= (found?.misfit ?? Number.POSITIVE_INFINITY) - 1e-10) continue;
    const at = Array.from(low, (least_n, index_n) => least_n + (least.amounts[index_n] ?? 0));
    const steps = Int32Array.from(at, (value) => Math.round(value));
    const misfit = linearMisfit(mix, steps);
    if (isAllowed(mix, steps) && misfit < (found?.misfit ?? Number.POSITIVE_INFINITY))
      found = { misfit, steps };
    let split = -1;
    let off = 1e-7;
    at.forEach((value, index_n) => {
      const here = Math.abs(value - Math.round(value));
      if (here > off) {
        off = here;
        split = index_n;
      }
    });
    if (split < 0) continue;
    const cut = Math.floor(at[split] as number);
    const below = high.slice();
    below[split] = cut;
    const above = low.slice();
    above[split] = cut + 1;
    const halves = [
      { low, high: below },
      { low: above, high },
    ];
    boxes.push(...((at[split] as number) > cut + 0.5 ? halves : halves.toReversed()));
  }
  return found;
}

/**
 * The mix of whole tool steps with the least sum of weighted misses, none of them squared: what a mixed-integer program finds,
 * and what this is checked against. Least steps per product and conductivity by ions are not looked at.
 *
 * @param problem as for `bestMix`
 * @returns doses and the sum of misses; nothing where the water breaks a limit that no product undoes
 * @throws QuantityError for numbers outside their ranges
 * @source our assumption: branch and bound over the linear relaxation
 * @see checks/feed.json FEED-094
 */
export function bestLinearMix(problem: MixProblem): LinearMix | undefined {
  const { conductivity_mS_cm: _, ...limits } = problem.limits ?? {};
  const mix = compiledMix({ ...problem, limits });
  const count_n = Math.min(problem.products_n ?? mix.products.length, mix.products.length);
  let best: { misfit: number; steps: Int32Array } | undefined;
  for (const chosen of choicesOf(mix.products.length, count_n)) best = searchLinear(mix, chosen, best);
  if (!best) return undefined;
  const { steps, misfit } = best;
  return {
    misfit,
    doses: mix.products.flatMap(({ id, step }, index_n) => {
      const steps_n = steps[index_n] as number;
      return steps_n > 0 ? [{ id, steps_n, dose: steps_n * step }] : [];
    }),
  };
}

function* choicesOf(products_n: number, of_n: number, from_n = 0): Generator<number[]> {
  if (of_n === 0) {
    yield [];
    return;
  }
  for (let first_n = from_n; first_n <= products_n - of_n; first_n++)
    for (const rest of choicesOf(products_n, of_n - 1, first_n + 1)) yield [first_n, ...rest];
}

/** What would have to give for every aim to be met: the least misses and passed limits, each as a share. */
export type Shortfall = {
  readonly name: string;
  readonly kind: "too little" | "too much" | "limit";
  /** how far, as a share of the aim or of the limit */
  readonly by_frac: number;
};

/**
 * Why no mix meets every aim: the smallest relaxations of ranges and limits that would make it so, doses in any fraction.
 *
 * @param problem as for `bestMix`; all products together
 * @returns what is short, too much or passed, the greatest first; empty where all can be met
 * @throws QuantityError for numbers outside their ranges
 * @source our assumption: the elastic linear program, all shares alike
 */
export function shortfalls(problem: MixProblem): readonly Shortfall[] {
  const mix = compiledMix(problem);
  const steps_n = mix.products.length;
  const limits = [...mix.limits, ...mix.prunes];
  const slacks_n = 2 * mix.aims.length + limits.length;
  const width = steps_n + slacks_n;
  const line = (
    row: CompiledMix["limits"][number],
    sign: 1 | -1,
    slack_n: number,
    most: number,
    scale: number,
  ) => {
    const factors = new Array<number>(width).fill(0);
    for (let index_n = 0; index_n < steps_n; index_n++)
      factors[index_n] = (sign * (row.steps[index_n] as number)) / scale;
    factors[steps_n + slack_n] = -1;
    return { factors, most: most / scale };
  };
  const scaleOf = (aim: CompiledMix["aims"][number]) => Math.max(aim.low, aim.high, 1e-6);
  const lines = [
    ...mix.aims.map((aim, aim_n) => line(aim, 1, 2 * aim_n, aim.high - aim.base, scaleOf(aim))),
    ...mix.aims.map((aim, aim_n) => line(aim, -1, 2 * aim_n + 1, aim.base - aim.low, scaleOf(aim))),
    ...limits.map((row, row_n) => line(row, 1, 2 * mix.aims.length + row_n, -row.base, 1)),
    ...mix.products.map((_, index_n) => ({
      factors: Array.from({ length: width }, (__, column_n) => (column_n === index_n ? 1 : 0)),
      most: mix.most[index_n] as number,
    })),
  ];
  // Limits give way last.
  const costs = Array.from({ length: width }, (_, column_n) =>
    column_n < steps_n ? 0 : column_n < steps_n + 2 * mix.aims.length ? 1 : 10,
  );
  const slack = (leastCost({ costs, lines })?.amounts ?? []).slice(steps_n);
  return slack
    .flatMap((by_frac, slack_n): Shortfall[] => {
      if (by_frac < 1e-6) return [];
      const aim = mix.aims[slack_n >> 1];
      return slack_n < 2 * mix.aims.length
        ? [{ name: aim?.name ?? "", kind: slack_n % 2 === 0 ? "too much" : "too little", by_frac }]
        : [{ name: limits[slack_n - 2 * mix.aims.length]?.name ?? "", kind: "limit", by_frac }];
    })
    .toSorted((one, other) => other.by_frac - one.by_frac);
}
