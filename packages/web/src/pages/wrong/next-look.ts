import type { Sign } from "@sillwood/bench/crafts";

type LookApart = NonNullable<Sign["lookApart"]>;

/** A cause with less than this share of the likeliest one's weight is not worth a look yet. @source our assumption */
const CONTENDS_frac = 0.25;

/**
 * The one look that parts the leading causes: of the open ones that a leading cause asks for, the one that stands behind most
 * weight. Once a look has settled it, unlikely causes ask no more.
 *
 * @param seen keys of what was seen and answered
 * @param untold questions that could not be told
 */
export function nextLook(
  signs: readonly Sign[],
  seen: readonly string[],
  untold: readonly string[],
): LookApart | undefined {
  const most = Math.max(0, ...signs.map(({ weight }) => weight));
  const open = new Map<string, { readonly look: LookApart; readonly weight: number }>();
  for (const { lookApart: look, weight } of signs) {
    if (!look || weight < CONTENDS_frac * most) continue;
    if (untold.includes(look.question) || look.answers.some(({ key }) => seen.includes(key))) continue;
    open.set(look.question, { look, weight: weight + (open.get(look.question)?.weight ?? 0) });
  }
  return [...open.values()].sort((a, b) => b.weight - a.weight)[0]?.look;
}
