import type { World } from "../craft.ts";
import { feedLimitsOf } from "./outlook.ts";
import type { FeedGroup } from "./page-shape.ts";
import type { FeedSlice } from "./slice.ts";
import { feedToday } from "./today.ts";
import { feedPageWords } from "./words-page.ts";

const DAY_ms = 86_400_000;
/** Pots due within these days share today's tank. @source our assumption */
const TOGETHER_d = 2;
/** Some is spilt and some stays in the can. @source common practice, no source */
const SPARE_frac = 0.05;
/** A tank for nobody in particular. */
const USUAL_L = 4;

/** Pots that can share a mix today: one stage, one strength. Without any, a tank for plants in leaf. */
export function feedGroups(world: World<FeedSlice>): readonly FeedGroup[] {
  const { now_ms, say } = world;
  const words = feedPageWords(say);
  const groups = new Map<string, FeedGroup>();
  for (const { plant, slice, sight } of world.members) {
    const today = feedToday(slice, sight);
    if (today.does === "flush" || today.due_ms > now_ms + TOGETHER_d * DAY_ms) continue;
    if (feedLimitsOf(slice, sight, say).length > 0) continue;
    const { stage, strength_frac } = today;
    const key = `${stage} ${strength_frac}`;
    const before = groups.get(key);
    const pots = [
      ...(before?.pots ?? []),
      { plant: plant.id, number: world.numberOf(plant.id), volume_mL: today.volume_mL },
    ];
    groups.set(key, { key, stage, strength_frac, said: "", pots, volume_L: litresFor(pots) });
  }
  const found = [...groups.values()].toSorted((one, other) => other.pots.length - one.pots.length);
  const all =
    found.length > 0
      ? found
      : [
          {
            key: "in leaf 1",
            stage: "in leaf",
            strength_frac: 1,
            said: "",
            pots: [],
            volume_L: USUAL_L,
          } as const,
        ];
  return all.map((group) => ({
    ...group,
    said: words.group(
      words.stage[group.stage],
      group.strength_frac,
      group.pots.length,
      say.volume(1000 * group.volume_L),
    ),
  }));
}

const litresFor = (pots: FeedGroup["pots"]): number => {
  const litres = (pots.reduce((sum, { volume_mL }) => sum + volume_mL, 0) / 1000) * (1 + SPARE_frac);
  return Math.max(0.5, Math.ceil(2 * litres) / 2);
};
