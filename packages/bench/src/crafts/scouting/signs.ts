import { bestLook, rankCauses, type SignKey, signKeys } from "@sillwood/science/pests";
import type { CraftWrong, Outward, Sign } from "../craft.ts";
import { allPests } from "./pests.ts";
import type { ScoutPool } from "./pool.ts";
import type { ScoutAct, ScoutSlice } from "./slice.ts";
import { lastFind } from "./watch.ts";
import { scoutingWords } from "./words.ts";

const DAY_ms = 86_400_000;
/** What other crafts say more of than a table of likelihoods can. */
const OTHERS = new Set(["overwater", "drought", "sunscald", "something else"]);
/** How this ranking stands beside those of other crafts, whose sure causes weigh about as much. @source our assumption */
const WEIGHT = 4;
const SHOWN_n = 4;
/** Likelihood ratios of the plant's own record. @source the pest sheet: strong 6, moderate 3, weak 1.5 */
const RECORD = { found: 6, onBench: 3, warmDry: 1.5, cold: 6 } as const;
const RECENT_d = 35;

const isSign = (key: string): key is SignKey => (signKeys as readonly string[]).includes(key);

/** Pests, diseases and disorders that fit what is seen and the plant's record: a ranking, with the one look that parts the first two. */
function scoutSigns(slice: ScoutSlice, sight: Outward, keys: readonly string[]): readonly Sign[] {
  const seen = keys.filter(isSign);
  const absent = keys.flatMap((key) =>
    key.startsWith("no ") && isSign(key.slice(3)) ? [key.slice(3) as SignKey] : [],
  );
  const own = seen.filter((key) => key !== "droops" && key !== "heavy pot" && key !== "light pot");
  if (own.length === 0 && absent.length === 0) return [];
  const record = recordOf(slice, sight);
  const trouble = { seen, absent, record: record.ratios, learned: learnedOf(slice.acts) };
  const ranked = rankCauses(trouble);
  const words = scoutingWords(sight.say);
  const looks = new Map(words.looks().map((look) => [look.key, look.said]));
  const next = bestLook(trouble);
  const said = (sign: string) => looks.get(sign);
  return ranked
    .filter(({ cause }) => !OTHERS.has(cause))
    .slice(0, SHOWN_n)
    .map(({ cause, weight_frac }): Sign => {
      const fits = sight.say.list(own.flatMap((sign) => said(sign) ?? []));
      const against = sight.say.list(absent.flatMap((sign) => said(sign) ?? []));
      return {
        key: cause,
        cause: words.cause(cause),
        weight: WEIGHT * weight_frac,
        evidence: [
          ...(fits ? [words.sign.fits(fits)] : []),
          ...(against ? [words.sign.against(against)] : []),
          ...(record.near.has(cause) ? [words.sign.near(words.cause(cause))] : []),
        ],
        ...(next && said(next)
          ? {
              lookApart: {
                question: words.sign.isThere(said(next) as string),
                answers: [
                  { key: next, said: words.sign.yes },
                  { key: `no ${next}`, said: words.sign.no },
                ],
              },
            }
          : {}),
        doNow: words.sign.doNow(cause),
        doNot: words.sign.doNot(cause),
        lookAgainIn_h: 72,
      };
    });
}

/** What the book itself knows: finds on this plant and on its bench, a hot dry place, a cold night. */
function recordOf(
  slice: ScoutSlice,
  sight: Outward,
): { readonly ratios: Readonly<Record<string, number>>; readonly near: ReadonlySet<string> } {
  const ratios: Record<string, number> = {};
  const near = new Set<string>();
  const since_ms = sight.now_ms - RECENT_d * DAY_ms;
  const times = (cause: string, ratio: number): void => {
    ratios[cause] = Math.min(100, (ratios[cause] ?? 1) * ratio);
  };
  for (const pest of allPests) if ((lastFind(slice, pest)?.at_ms ?? 0) > since_ms) times(pest, RECORD.found);
  for (const { pest, at_ms, plant } of (sight.pooled as ScoutPool | undefined)?.finds ?? [])
    if (at_ms > since_ms && plant !== sight.plant.id && !near.has(pest)) {
      near.add(pest);
      times(pest, RECORD.onBench);
    }
  const { spells } = sight.airAt(sight.plant.spot, sight.dateOf(sight.now_ms - DAY_ms));
  if (spells.some(({ air_C, humidity_frac }) => air_C > 26 && humidity_frac < 0.45))
    times("spider mite", RECORD.warmDry);
  if (spells.some(({ air_C }) => air_C < 10)) times("cold injury", RECORD.cold);
  return { ratios, near };
}

/** Cases of this plant that were settled move the table a little. */
function learnedOf(acts: readonly ScoutAct[]) {
  const learned: Record<string, Partial<Record<SignKey, { seen_n: number; looked_n: number }>>> = {};
  for (const act of acts) {
    if (act.act !== "confirm") continue;
    const row = learned[act.data.cause] ?? {};
    learned[act.data.cause] = row;
    for (const [signs, isSeen] of [
      [act.data.seen, 1],
      [act.data.absent, 0],
    ] as const)
      for (const sign of signs) {
        const { seen_n = 0, looked_n = 0 } = row[sign] ?? {};
        row[sign] = { seen_n: seen_n + isSeen, looked_n: looked_n + 1 };
      }
  }
  return learned;
}

export const scoutWrong: CraftWrong<ScoutSlice> = {
  looks: (say) => scoutingWords(say).looks(),
  signs: scoutSigns,
};
