import {
  causeKeys,
  causePriors_frac,
  rankCauses,
  type SignKey,
  signKeys,
  signShare_frac,
} from "@sillwood/science/pests";
import { seeded } from "../speed/seeded.ts";
import { writtenCases } from "./diagnosis-cases.ts";

/** A case to be told: what was seen, what was looked for and not there, what it was. */
interface Case {
  readonly seen: readonly SignKey[];
  readonly absent: readonly SignKey[];
  readonly causes: readonly string[];
}

const LEVELS = [0.02, 0.1, 0.3, 0.6, 0.9] as const;
const MOVED_frac = 0.3;
const TWO_frac = 0.2;
const LOOKED_frac = 0.5;

/** Cases from the table with every level moved one step three times in ten, two causes at once in a fifth, half the signs looked for. */
export function tableCases(count_n: number, seed: number): readonly Case[] {
  const random = seeded(seed);
  const pick = (): string => {
    let left = random() * Object.values(causePriors_frac).reduce((sum, each) => sum + each, 0);
    for (const cause of causeKeys) {
      left -= causePriors_frac[cause] ?? 0;
      if (left <= 0) return cause;
    }
    return "something else";
  };
  const moved = (share: number): number => {
    if (random() >= MOVED_frac) return share;
    const at = LEVELS.findIndex((level) => Math.abs(level - share) < 1e-9);
    return LEVELS[Math.max(0, Math.min(LEVELS.length - 1, at + (random() < 0.5 ? -1 : 1)))] as number;
  };
  return Array.from({ length: count_n }, () => {
    const causes = random() < TWO_frac ? [pick(), pick()] : [pick()];
    const seen: SignKey[] = [];
    const absent: SignKey[] = [];
    for (const sign of signKeys) {
      const missing = causes.reduce(
        (product, cause) => product * (1 - moved(signShare_frac(cause, sign))),
        1,
      );
      const isThere = random() < 1 - missing;
      // What is there catches the eye; what is not must have been looked for.
      if (isThere && random() < 0.8) seen.push(sign);
      else if (!isThere && random() < LOOKED_frac) absent.push(sign);
    }
    return { seen, absent, causes };
  });
}

export const casesWritten: readonly Case[] = writtenCases.map(({ seen, absent, cause }) => ({
  seen: seen as readonly SignKey[],
  absent: absent as readonly SignKey[],
  causes: [cause],
}));

/** Share of cases with one of their causes among the first three, by signs and by how common causes are alone. */
export function topThree(cases: readonly Case[]): {
  readonly ours_frac: number;
  readonly priors_frac: number;
  readonly first_frac: number;
} {
  const common = [...causeKeys]
    .sort((a, b) => (causePriors_frac[b] ?? 0) - (causePriors_frac[a] ?? 0))
    .slice(0, 3);
  const share = (of: (one: Case) => readonly string[]) =>
    cases.filter((one) => of(one).some((cause) => one.causes.includes(cause))).length / cases.length;
  const ranked = (one: Case, n: number) =>
    rankCauses(one)
      .slice(0, n)
      .map(({ cause }) => cause);
  return {
    ours_frac: share((one) => ranked(one, 3)),
    priors_frac: share(() => common),
    first_frac: share((one) => ranked(one, 1)),
  };
}
