import * as v from "valibot";
import type { Entry } from "../book/entry.ts";
import { choice, id, quantity, text } from "../book/fields.ts";
import type { EntryKind } from "../book/kinds.ts";
import type { Say } from "../words/say.ts";
import type { Work } from "./task.ts";
import { workSaid } from "./words.ts";

/** Paper has a box for "not" and no room for why. */
export const skipReasons = ["no time", "not sure", "too wet", "told to", "no reason said"] as const;
const SKIP_DE = {
  "no time": "keine Zeit",
  "not sure": "nicht sicher",
  "too wet": "zu nass",
  "told to": "auf Anweisung",
  "no reason said": "ohne Grund",
} as const;

const walkedSchema = v.strictObject({
  bench: id("bench"),
  minutes: v.optional(quantity("minutes", "min", 0, 1440)),
  tasks_n: v.optional(quantity("tasks done", "", 0, 5000)),
});
export type Walked = v.InferOutput<typeof walkedSchema>;
const skippedSchema = v.strictObject({ task: text("task", 120), reason: choice("reason", skipReasons) });
export type Skipped = v.InferOutput<typeof skippedSchema>;
const awaySchema = v.pipe(
  v.strictObject({
    from_ms: quantity("start", "ms", 0, 7_258_118_400_000),
    to_ms: quantity("end", "ms", 0, 7_258_118_400_000),
  }),
  v.check((away) => away.to_ms > away.from_ms, "the absence ends before it starts"),
);
export type Absence = v.InferOutput<typeof awaySchema>;
const leftSchema = v.strictObject({
  text: text("what was seen", 500),
  case: v.optional(v.array(text("sign", 60))),
});
export type LeftForGrower = v.InferOutput<typeof leftSchema>;
const overrodeSchema = v.strictObject({ work: text("work", 30), reason: text("reason", 200) });
export type Overrode = v.InferOutput<typeof overrodeSchema>;

const said = (say: Say, english: string, german: string) => (say.language === "de" ? german : english);
const onPlants = { v: 1, readers: "all", subject: "plant", onMin_n: 1 } as const;

export const roundKinds = {
  /** The bench was walked: `on` are the plants that were passed. What was not done then is evidence too. */
  walked: {
    ...onPlants,
    kind: "round.walked",
    schema: walkedSchema,
    sentence: (data, say) => {
      const took =
        data.minutes === undefined
          ? ""
          : said(say, ` in ${say.minutes(data.minutes)}`, ` in ${say.minutes(data.minutes)}`);
      return said(say, `walked ${say.name(data.bench)}${took}`, `${say.name(data.bench)} abgegangen${took}`);
    },
    effects: () => [{ effect: "visited" }],
    example: { bench: "south-sill", minutes: 18, tasks_n: 12 },
  } satisfies EntryKind<Walked>,
  skipped: {
    ...onPlants,
    kind: "round.skipped",
    schema: skippedSchema,
    sentence: (data, say) => said(say, `left, ${data.reason}`, `ausgelassen, ${SKIP_DE[data.reason]}`),
    effects: () => [],
    example: { task: "watering:water", reason: "not sure" },
  } satisfies EntryKind<Skipped>,
  /** Somebody saw something that the grower should decide on. */
  left: {
    ...onPlants,
    kind: "round.left",
    schema: leftSchema,
    sentence: (data, say) =>
      said(say, `left for the grower: ${data.text}`, `für die Gärtnerin: ${data.text}`),
    effects: () => [],
    example: { text: "droops, pot is heavy", case: ["droops", "heavy"] },
  } satisfies EntryKind<LeftForGrower>,
  settled: {
    ...onPlants,
    kind: "round.settled",
    schema: v.strictObject({}),
    sentence: (_data, say) => said(say, "seen to", "erledigt"),
    effects: () => [],
    example: {},
  } satisfies EntryKind<object>,
  /** The grower does what a craft holds back, and says why. Firm limits have no such entry. */
  overrode: {
    ...onPlants,
    growerOnly: true,
    kind: "round.overrode",
    schema: overrodeSchema,
    sentence: (data, say) =>
      said(
        say,
        `${workSaid(data.work as Work, say)} allowed today: ${data.reason}`,
        `${workSaid(data.work as Work, say)} heute erlaubt: ${data.reason}`,
      ),
    effects: () => [],
    example: { work: "feed", reason: "drenched from below this morning" },
  } satisfies EntryKind<Overrode>,
  away: {
    v: 1,
    readers: "all",
    subject: "book",
    onMin_n: 1,
    kind: "round.away",
    schema: awaySchema,
    sentence: (data, say) =>
      said(
        say,
        `away ${say.days(data.from_ms, data.to_ms)}`,
        `abwesend ${say.days(data.from_ms, data.to_ms)}`,
      ),
    effects: () => [],
    example: { from_ms: 1_767_225_600_000, to_ms: 1_767_657_600_000 },
  } satisfies EntryKind<Absence>,
} as const;

/** A walk that tells how fast somebody is: it says how long it took and for how much work. */
export function isTimedWalk({ kind, data }: Entry): boolean {
  if (kind !== roundKinds.walked.kind) return false;
  const { minutes, tasks_n } = data as unknown as Walked;
  return Boolean(minutes && tasks_n);
}

/** A pace is learned from this many of the latest walks. @source our assumption */
export const PACE_WALKS_n = 20;
