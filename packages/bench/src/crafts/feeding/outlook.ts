import type { Json } from "../../book/entry.ts";
import type { Ask } from "../../round/pages.ts";
import type { Limit, Task } from "../../round/task.ts";
import type { Say } from "../../words/say.ts";
import { once } from "../../working/once.ts";
import type { Outlook, Outward, Sight, World } from "../craft.ts";
import { FED } from "./kinds.ts";
import type { FeedSlice, Tank } from "./slice.ts";
import { type FeedToday, feedToday } from "./today.ts";
import { feedingWords } from "./words.ts";
import { feedWorking, saltWorking } from "./workings.ts";

export const CRAFT = "feeding";
const DAY_ms = 86_400_000;
const FEED_min = 0.7;
const LATEST_d = 7;
/** A tank is not kept longer. @source common practice, no source */
const TANK_KEEPS_d = 7;

/** Everything feeding says of a plant now. */
export function feedOutlook(slice: FeedSlice, sight: Outward): Outlook {
  const today = feedToday(slice, sight);
  const words = feedingWords(sight.say);
  const working = once(() => (today.does === "flush" ? saltWorking : feedWorking)(today, slice, sight));
  const { dates_ms } = today;
  return {
    tasks: tasksOf(today, slice, sight, working),
    get workings() {
      return [working()];
    },
    problems: slice.problems.map(({ entry }) => ({ entry, message: words.cannotRead })),
    get figures() {
      return {
        feedDoes: today.does,
        feedBecause: today.because,
        feedStage: today.stage,
        feedDue_ms: today.due_ms,
        dates_ms,
        feed_mL: today.volume_mL,
        feedStrength_frac: today.strength_frac,
        feedNitrogen_mg: today.nitrogen_mg,
        feedNitrogen_mg_L: today.nitrogen_mg_L,
        feedDemand_mg_d: today.demand_mg_d,
        feedSalt_mS_cm: today.salt_mS_cm,
      };
    },
  };
}

function tasksOf(
  today: FeedToday,
  slice: FeedSlice,
  sight: Outward,
  working: () => Task["working"],
): readonly Task[] {
  const { now_ms, plant, say } = sight;
  // A pot is fed from a tank that was mixed for it: until then the round asks for the mix, not for the pour. Salts are
  // potting's: while they are too high nothing is fed.
  const tank = tankOf(slice, now_ms);
  if (today.does !== "feed" || !tank) return [];
  const words = feedingWords(say);
  const { dates_ms, volume_mL } = today;
  return [
    {
      id: `${CRAFT}:feed:${plant.id}`,
      craft: CRAFT,
      work: "feed",
      plant: plant.id,
      earliest_ms: Math.min(dates_ms[2] as number, today.due_ms),
      best_ms: today.due_ms,
      latest_ms: Math.max(today.due_ms, now_ms) + LATEST_d * DAY_ms,
      dates_ms,
      minutes: FEED_min,
      must: false,
      amount: { value: volume_mL, unit: "mL" },
      title: words.feed,
      said: say.volume(volume_mL),
      then: words.ofTank(tank.name),
      why:
        today.because === "nitrogen"
          ? words.whyNitrogen(say.number(today.nitrogen_mg_L, 0), say.number(today.demand_mg_d, 0))
          : words.whyHabit,
      act: {
        kind: FED,
        data: { volume_mL, drained: "unknown", solution: tank.solution, tank: tank.name } as unknown as Json,
      },
      get working() {
        return working();
      },
    },
  ];
}

/** Before you go: the litres to mix for the pots that can share them, once a label stands on the shelf. */
export function feedAsks(world: World<FeedSlice>): readonly Ask[] {
  const { supplies, say, now_ms } = world;
  if (![...supplies.values()].some(({ what, label, onHand }) => what === "feed" && label && onHand > 0))
    return [];
  const due = world.members.flatMap(({ plant, slice, sight }) => {
    const today = feedToday(slice, sight);
    const waits =
      today.does === "feed" && !tankOf(slice, now_ms) && feedLimitsOf(slice, sight, say).length === 0;
    return waits ? [{ plant: plant.id, volume_mL: today.volume_mL }] : [];
  });
  if (due.length === 0) return [];
  const all_mL = due.reduce((sum, { volume_mL }) => sum + volume_mL, 0);
  return [
    {
      key: "feed:mix",
      said: feedingWords(say).mixAsk(say.volume(500 * Math.ceil(all_mL / 500)), due.length),
      plants: due.map(({ plant }) => plant),
      answers: [],
    },
  ];
}

/** The tank that was made for this pot, while it keeps. */
const tankOf = ({ tank, fedAt_ms }: FeedSlice, now_ms: number): Tank | undefined =>
  tank && now_ms - tank.at_ms < TANK_KEEPS_d * DAY_ms && (fedAt_ms ?? 0) < tank.at_ms ? tank : undefined;

/** No feed after a hard cut until new leaves; a flush stays allowed. */
export function feedLimitsOf(slice: FeedSlice, sight: Sight, say: Say): readonly Limit[] {
  if (slice.cutAt_ms === undefined) return [];
  const until_ms = slice.cutAt_ms + sight.assumed("feedAfterCut_d") * DAY_ms;
  if (until_ms <= sight.at_ms) return [];
  return [
    {
      work: "feed",
      on: sight.plant.id,
      from_ms: slice.cutAt_ms,
      until_ms,
      why: feedingWords(say).heldCut,
      by: CRAFT,
      firm: false,
    },
  ];
}
