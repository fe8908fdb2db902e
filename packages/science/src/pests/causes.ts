import { within } from "../errors/index.ts";

/** What can be seen on a pepper in a pot, and what it costs to look, in seconds. @source our assumption */
export const signKeys = [
  "droops",
  "heavy pot",
  "light pot",
  "brown roots",
  "yellow old leaves",
  "yellow new leaves",
  "mosaic",
  "fine specks",
  "curled tips",
  "sticky",
  "webbing",
  "white bloom",
  "blisters",
  "fruit end patch",
  "lit patch",
  "collapsed stem",
  "insects seen",
  "gnats",
  "burnt edges",
] as const;
export type SignKey = (typeof signKeys)[number];

const SECONDS: Readonly<Partial<Record<SignKey, number>>> = {
  "heavy pot": 5,
  "light pot": 5,
  "brown roots": 120,
  "insects seen": 30,
  "fine specks": 20,
  webbing: 20,
  gnats: 15,
};
/** Signs of one look hang together: each weighs less when more than one of them is known. */
const LOOKS: readonly (readonly SignKey[])[] = [
  ["heavy pot", "light pot"],
  ["yellow old leaves", "yellow new leaves", "mosaic"],
  ["fine specks", "webbing", "sticky", "insects seen", "white bloom"],
  ["fruit end patch", "lit patch"],
];
const TOGETHER_weight = 0.7;

/**
 * How often a sign goes with a cause: T typical .9, C common .6, S sometimes .3, R rare .1, N never .02; before it the share of
 * indoor pot peppers in trouble that have it. In the order of `signKeys`.
 *
 * @source our assumption: expert judgement, every one of them
 */
const TABLE: readonly (readonly [key: string, prior: number, levels: string])[] = [
  ["overwater", 0.15, "CTNCCSNNRNNNSRNRRCR"],
  ["drought", 0.1, "TNTRSRNNSNNNNSRNRNS"],
  ["aphid", 0.12, "RSSNSSRRCTNNNNNNTRN"],
  ["spider mite", 0.07, "RSSNSSRTRNSNNNNNCRR"],
  ["broad mite", 0.03, "RSSNRSRRTNNNRRNNSRN"],
  ["thrips", 0.06, "RSSNRSRTSNNNNRNNCRN"],
  ["whitefly", 0.05, "RSSNSSRRRCNNNNNNTRN"],
  ["fungus gnat", 0.1, "SCRSSRNNNNNNNNNSSTN"],
  ["powdery mildew", 0.04, "RSSNCRRRRNNTNNNNNRN"],
  ["virus", 0.02, "RSSNRCTRCNNNNRNNSRN"],
  ["blossom-end rot", 0.03, "RSSNRRNNSNNNNTRNNRS"],
  ["sunscald", 0.03, "RSSNNRNRRNNNNRTNNRR"],
  ["oedema", 0.02, "NCRRRNNNRNNNTNNNNSN"],
  ["nutrient N/Mg", 0.05, "NSSRTRRNNNNNNRNNNRR"],
  ["nutrient Fe/pH", 0.03, "NSSRNTRNNNNNNRNNNRR"],
  ["salt", 0.04, "SSSSSRNNSNNNNSNNNRT"],
  ["cold injury", 0.02, "CSSRSSNNSNNNNNRRNRR"],
  ["damping-off", 0.01, "CCRCRRNNNNNNNNNTRSN"],
  ["something else", 0.03, "SSSSSSSSSSSSSSSSSSS"],
];
const LEVELS: Readonly<Record<string, number>> = { T: 0.9, C: 0.6, S: 0.3, R: 0.1, N: 0.02 };

export const causeKeys = TABLE.map(([key]) => key);
export const causePriors_frac: Readonly<Record<string, number>> = Object.fromEntries(
  TABLE.map(([key, prior]) => [key, prior]),
);

/** Confirmed cases: of how many of a cause a sign was looked for, and seen. */
export type LearnedSigns = Readonly<
  Record<string, Readonly<Partial<Record<SignKey, { readonly seen_n: number; readonly looked_n: number }>>>>
>;
/** As many cases as the table itself is worth. @source our assumption */
const TABLE_WORTH_n = 10;
const [LEAST_frac, MOST_frac] = [0.02, 0.98];

/**
 * How often a sign goes with a cause, moved by cases that were confirmed.
 *
 * (10 p + seen)/(10 + looked), held between 0.02 and 0.98
 *
 * @param cause one of `causeKeys`
 * @param sign one of `signKeys`
 * @param learned confirmed cases, none unless given
 * @returns share
 * @throws RangeError for a cause or sign that is not on the list
 * @source our assumption: expert judgement with Dirichlet counts
 */
export function signShare_frac(cause: string, sign: SignKey, learned: LearnedSigns = {}): number {
  const row = TABLE.find(([key]) => key === cause);
  const at = signKeys.indexOf(sign);
  if (!row || at < 0)
    throw new RangeError(`${row ? sign : cause} is not on the list of ${row ? "signs" : "causes"}`);
  const { seen_n = 0, looked_n = 0 } = learned[cause]?.[sign] ?? {};
  within("seen_n", seen_n, 0, 1_000_000);
  within("looked_n", looked_n, seen_n, 1_000_000);
  const share = LEVELS[row[2][at] as string] as number;
  return Math.max(
    LEAST_frac,
    Math.min(MOST_frac, (TABLE_WORTH_n * share + seen_n) / (TABLE_WORTH_n + looked_n)),
  );
}

export type Trouble = {
  readonly seen: readonly SignKey[];
  /** looked for and not there: what was not looked for counts nothing */
  readonly absent: readonly SignKey[];
  /** what the plant's own record says for or against a cause, as likelihood ratios */
  readonly record?: Readonly<Record<string, number>>;
  readonly priors?: Readonly<Record<string, number>>;
  readonly learned?: LearnedSigns;
};

export type RankedCause = { readonly cause: string; readonly weight_frac: number };

/**
 * Causes of a trouble in order, from signs seen and looked for and from the plant's record: a ranking, not a chance.
 *
 * ln w = ln prior + Σ ln LR(record) + Σ v ln P(sign|cause), v 0.7 where several signs of one look are known; made to sum to 1.
 *
 * @param trouble signs seen, and looked for but not seen; ratios of the record, 0.01 to 100; priors, the table's unless given; confirmed cases
 * @returns causes, likeliest first
 * @throws QuantityError outside those ranges
 * @source Yuen2006; every share is our assumption
 * @example rankCauses({ seen: ["droops", "heavy pot"], absent: [] })[0].cause // "overwater"
 */
export function rankCauses(trouble: Trouble): readonly RankedCause[] {
  const { seen, absent, record = {}, priors = causePriors_frac, learned } = trouble;
  for (const ratio of Object.values(record)) within("record_n", ratio, 0.01, 100);
  const known = [
    ...seen.map((sign) => [sign, true] as const),
    ...absent.map((sign) => [sign, false] as const),
  ];
  const weightOf = (sign: SignKey): number => {
    const look = LOOKS.find((each) => each.includes(sign));
    return look && known.filter(([each]) => look.includes(each)).length > 1 ? TOGETHER_weight : 1;
  };
  const logs = causeKeys.map((cause) => {
    let sum =
      Math.log(Math.max(1e-6, priors[cause] ?? causePriors_frac[cause] ?? 0)) + Math.log(record[cause] ?? 1);
    for (const [sign, isThere] of known) {
      const share = signShare_frac(cause, sign, learned);
      sum += weightOf(sign) * Math.log(isThere ? share : 1 - share);
    }
    return sum;
  });
  const most = Math.max(...logs);
  const all = logs.reduce((sum, each) => sum + Math.exp(each - most), 0);
  return causeKeys
    .map((cause, i) => ({ cause, weight_frac: Math.exp((logs[i] as number) - most) / all }))
    .sort((one, other) => other.weight_frac - one.weight_frac);
}

const entropy = (ranked: readonly RankedCause[]): number =>
  ranked.reduce(
    (sum, { weight_frac }) => sum - (weight_frac > 0 ? weight_frac * Math.log(weight_frac) : 0),
    0,
  );

/**
 * The one look that would tell most for its time, among those not yet made.
 *
 * expected fall of entropy over yes and no, divided by √seconds
 *
 * @param trouble as for rankCauses
 * @returns sign to look for, or none (undefined) where nothing is left to look for
 * @throws QuantityError as rankCauses does
 * @source Yuen2006 for the odds; weighing by time is our assumption
 */
export function bestLook(trouble: Trouble): SignKey | undefined {
  const known = new Set<SignKey>([...trouble.seen, ...trouble.absent]);
  // A pot that was lifted is heavy or light or neither: both are answered.
  if (known.has("heavy pot") || known.has("light pot")) known.add("heavy pot").add("light pot");
  const now = rankCauses(trouble);
  const before = entropy(now);
  let best: { readonly sign: SignKey; readonly worth: number } | undefined;
  for (const sign of signKeys) {
    if (known.has(sign)) continue;
    const yes = now.reduce(
      (sum, { cause, weight_frac }) => sum + weight_frac * signShare_frac(cause, sign, trouble.learned),
      0,
    );
    const after =
      yes * entropy(rankCauses({ ...trouble, seen: [...trouble.seen, sign] })) +
      (1 - yes) * entropy(rankCauses({ ...trouble, absent: [...trouble.absent, sign] }));
    const worth = (before - after) / Math.sqrt(SECONDS[sign] ?? 10);
    if (!best || worth > best.worth) best = { sign, worth };
  }
  return best?.sign;
}
