import type { Json, PlantId } from "@sillwood/bench/book";
import type { Pest } from "@sillwood/bench/crafts/scouting";
import type { Draft } from "@sillwood/bench/round";

/** Places that were ticked. */
export interface Ticks {
  readonly tips: boolean;
  readonly leaves: boolean;
  readonly stem: boolean;
  readonly tap: boolean;
}
export type Seen = Readonly<Partial<Record<Pest, number>>>;

/** Kinds that fly onto a card; all else was seen on the plant. */
const FLIES: readonly Pest[] = ["fungus gnat", "whitefly", "thrips"];

/**
 * What one press writes: the look with its method, the taps, the card; and for what stands beside a find, that it was next to it.
 * What was counted goes to the look; with only a card ticked, to the card.
 */
export function lookDrafts(
  plant: PlantId,
  near: readonly PlantId[],
  ticks: Ticks,
  seen: Seen,
  card: string | undefined,
): readonly Draft[] {
  const found = (Object.entries(seen) as [Pest, number][]).map(([pest, count_n]) => ({ pest, count_n }));
  const hasLook = ticks.tips || ticks.leaves || ticks.stem;
  const draft = (kind: string, data: object): Draft => ({ kind, on: [plant], data: data as Json });
  const drafts: Draft[] = [];
  if (hasLook)
    drafts.push(
      draft("scouting.looked", {
        way: "lens",
        ...(ticks.tips ? { tips_n: 3 } : {}),
        ...(ticks.leaves ? { leaves_n: 6 } : {}),
        ...(ticks.stem ? { stem: true } : {}),
        found,
      }),
    );
  if (ticks.tap) drafts.push(draft("scouting.looked", { way: "tap", found: hasLook ? [] : found }));
  if (card === "lost") drafts.push(draft("scouting.card", { lost: true, caught: [] }));
  else if (card !== undefined)
    drafts.push(
      draft("scouting.card", {
        out_d: Number(card),
        cards_n: 1,
        caught: hasLook || ticks.tap ? [] : found.filter(({ pest }) => FLIES.includes(pest)),
      }),
    );
  if (near.length > 0)
    for (const { pest } of found)
      drafts.push({ kind: "scouting.exposed", on: near, data: { pest, how: "near" } });
  return drafts;
}
