import type { Effect } from "../book/effects.ts";
import type { EntryId, Json, PersonId, PlantId } from "../book/entry.ts";
import type { AnyEntryKind } from "../book/kinds.ts";
import type { AirAt, AirDay, Spell } from "../places/ahead.ts";
import type { Places } from "../places/places.ts";
import type { Site } from "../places/site.ts";
import type { Calendar } from "../places/time.ts";
import type { Species } from "../plants/batch-kinds.ts";
import type { PlantFacts } from "../plants/facts.ts";
import type { Read, ReadingName } from "../readings.ts";
import type { Ask } from "../round/pages.ts";
import type { Limit, Task, Work } from "../round/task.ts";
import type { Supplies } from "../supplies/supplies.ts";
import type { Say } from "../words/say.ts";
import type { Reading } from "../working/reading.ts";
import type { Working } from "../working/working.ts";

/**
 * A craft: one part of the grower's work. Adding one touches its folder, its screens and one line in the registry.
 * Slices are private to the craft; what it needs of others comes as effects and readings.
 */
export interface Craft<Slice = unknown, Rates = unknown> {
  readonly name: string;
  readonly kinds: readonly AnyEntryKind[];
  /** Values that are ours, adjustable, shown as assumed. */
  readonly assumptions: readonly Assumption[];
  /** The slice of a plant at the moment it enters the book. */
  start(plant: PlantFacts, sight: Sight): Slice;
  /** Total and pure: an entry that makes no sense yields a `problem` in the slice, never a throw. */
  fold(slice: Slice, happening: Happening, sight: Sight): Slice;
  /**
   * Rates of change from the state at the start of the step. Every midnight and entry of every plant asks for them: what knows nothing
   * of a plant hands back the slice that it was given. A craft whose slice changes with entries alone leaves out both members.
   */
  rates?(slice: Slice, step: Step): Rates;
  /** The slice at the end of the step; called after all crafts have computed their rates. */
  integrate?(slice: Slice, rates: Rates, step: Step): Slice;
  readonly offers: {
    readonly [Name in ReadingName]?: (slice: Slice, plant: PlantFacts, sight: Sight) => Reading | undefined;
  };
  limits(slice: Slice, sight: Sight, say: Say): readonly Limit[];
  /** What the plants of one bench tell one another about today (pooling); a pure function of their slices. */
  pool?(members: readonly Member<Slice>[], now_ms: number): ReadonlyMap<PlantId, unknown>;
  /** Everything the craft says of a plant now: dates, tasks, questions, workings. */
  outlook(slice: Slice, sight: Outward): Outlook;
  /** What it can say of troubles, loaded when somebody asks what is wrong. */
  wrong?(): Promise<CraftWrong<Slice>>;
  /** What an absence does to these plants, what helps, and what a sitter must do. */
  away?(): Promise<CraftAway<Slice>>;
  /** When the work of its day line came due in past cycles, as now believed: what forecasts as issued are scored against. */
  came?(slice: Slice, sight: Sight): Came;
  /** What the craft asks of today's round that belongs to no single plant: a lamp to set. */
  asks?(world: World<Slice>): readonly Ask[];
  /** Its own page for its screen and its verb, loaded when it is first asked for: a round needs nothing of it. */
  page?(): Promise<CraftPage<Slice>>;
}

/**
 * What may be asked of a craft's page and what comes back is the craft's own contract, whose types its folder gives; an ask that
 * makes no sense is refused with a `PageError`.
 */
export type CraftPage<Slice = unknown> = (world: World<Slice>, ask: Json) => unknown;

/** Everything at once, for what no single plant answers: all places, and all living plants in walking order. */
export interface World<Slice = unknown> {
  readonly now_ms: number;
  readonly say: Say;
  readonly places: Places;
  /** What is on the shelf, labels and waters with it. */
  readonly supplies: Supplies;
  readonly calendar: Calendar;
  readonly airAt: AirAt;
  assumed(key: string): number;
  /** Air and light as they would be if places were others than these: a lamp moved, a reading left out. */
  airIn(places: Places): AirAt;
  /** What a plant's label says: "127". */
  numberOf(plant: PlantId): string;
  /** "red cayenne, year 3". */
  kindOf(plant: PlantFacts): string;
  /** "unknown" where no cultivar says it. */
  speciesOf(plant: PlantFacts): Species;
  readonly members: readonly WorldMember<Slice>[];
}

export interface WorldMember<Slice = unknown> {
  readonly plant: PlantFacts;
  readonly slice: Slice;
  readonly sight: Outward;
}

/** Why a craft can't draw the page that was asked for: names field, value, limit and unit. */
export class PageError extends Error {
  override readonly name = "PageError";
}

/** Past cycles of one work, from one time that it was done to the next, oldest first. */
export interface Came {
  readonly work: Work;
  readonly cycles: readonly CameDue[];
  /** Cycles whose date nobody knows better than a forecast did: nothing was measured or seen towards their end. */
  readonly unseen_n: number;
}

export interface CameDue {
  /** When the work was done the time before: from then on forecasts speak of this cycle. */
  readonly from_ms: number;
  readonly done_ms: number;
  /** When it came due; after `done_ms` where it was done early, at `from_ms` where it never stopped being due. */
  readonly at_ms: number;
  readonly sd_ms: number;
  readonly how: "weighed" | "looked";
  /** How long the cycle before took. */
  readonly lasted_ms?: number;
}

/** Loaded when an absence is planned: few are. */
export type CraftAway<Slice = unknown> = (members: readonly AwayMember<Slice>[], absence: Span) => AwayPlan;

/** A stretch of time, its end not included. */
export interface Span {
  readonly from_ms: number;
  readonly to_ms: number;
}

export interface AwayMember<Slice> {
  readonly slice: Slice;
  readonly sight: Outward;
}

/** An absence, planned: what will not last, what to do about it, a sheet for the sitter, the day of return. */
export interface AwayPlan {
  readonly said: string;
  /** Least lasting first. */
  readonly plants: readonly AwayPlant[];
  /** For the sitter, in order of days. */
  readonly sitter: readonly SitterLine[];
  readonly sitterHow: readonly string[];
  /** What to look at on the day of return, most pressing first. */
  readonly back: readonly { readonly plant: PlantId; readonly said: string }[];
}

export interface AwayPlant {
  readonly plant: PlantId;
  readonly said: string;
  /** Chance that it wants care, and that it suffers, before the return, if nothing is done. */
  readonly wants_frac: number;
  readonly suffers_frac: number;
  readonly dates_ms: readonly number[];
  /** Most useful first. */
  readonly remedies: readonly Remedy[];
}

export interface Remedy {
  readonly key: string;
  readonly said: string;
  readonly sum: string;
  readonly wants_frac: number;
  readonly suffers_frac: number;
  readonly working: Working;
}

export interface SitterLine {
  readonly plant: PlantId;
  readonly at_ms: number;
  readonly said: string;
  readonly amount: { readonly value: number; readonly unit: string };
}

// biome-ignore lint/suspicious/noExplicitAny: the registry holds crafts with different slices
export type AnyCraft = Craft<any, any>;

export interface Member<Slice> {
  readonly plant: PlantFacts;
  readonly slice: Slice;
}

/** A value that is nobody's: marked as our assumption and adjustable by the grower. */
export interface Assumption {
  readonly key: string;
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly source: string;
  /** The one measurement that replaces it. */
  readonly replacedBy: string;
}

/** What a craft may see of one plant at one moment. */
export interface Sight {
  readonly plant: PlantFacts;
  /** As its cultivar says; "unknown", or left out, where none does. */
  readonly species?: Species;
  readonly at_ms: number;
  readonly read: Read;
  readonly airAt: AirAt;
  /** Local date of an instant at the book's site. */
  dateOf(at_ms: number): string;
  readonly site: Site;
  /** Value of an assumption, as the grower has adjusted it. */
  assumed(key: string): number;
}

/** A step of time between two cuts (entries and midnights) on one local day at one spot. */
export interface Step extends Sight {
  readonly from_ms: number;
  readonly to_ms: number;
  readonly dt_d: number;
  readonly day: AirDay;
  /** The parts of the day's spells that fall into the step. */
  readonly spells: readonly Spell[];
}

/** Something that happened to the plant: effects for every craft, the data only for the craft whose kind it is. */
export interface Happening {
  readonly entry: EntryId;
  readonly at_ms: number;
  readonly by: PersonId;
  readonly effects: readonly Effect[];
  readonly own?: { readonly kind: string; readonly data: Json };
}

/** What a craft may see when it is asked about now and the days ahead. */
export interface Outward extends Sight {
  readonly now_ms: number;
  /** When somebody will stand before the plant again, ascending, from the grower's visiting habit. */
  readonly visits_ms: readonly number[];
  /** From `pool`, if the craft pools. */
  readonly pooled: unknown;
  /** Seeded draws for this plant and day: the same book gives the same numbers on every device. */
  readonly seed: string;
  readonly say: Say;
  /** The next local midnight's dates ahead, today first. */
  readonly datesAhead: readonly string[];
}

export interface Outlook {
  readonly tasks: readonly Task[];
  /** One line on the plant page's day line. */
  readonly line?: DayLine;
  /** The head state of the plant page: "water 38 %". */
  readonly head?: {
    readonly name: string;
    readonly said: string;
    readonly value: number;
    readonly unit: string;
    readonly working: Working;
  };
  /** At most one: the measurement that is worth most, only where it would change an act. */
  readonly question?: Question;
  readonly workings: readonly Working[];
  readonly chart?: Fan;
  /** An amount expected on each of the coming days; drawn only for who asks. */
  readonly daily?: Daily;
  /** Wrong-looking inputs the grower should know of. */
  readonly problems: readonly { readonly entry: EntryId; readonly message: string }[];
  /** Machine-readable figures for `--json`: name with unit suffix to value. */
  readonly figures: Readonly<Record<string, number | readonly number[] | string>>;
}

/** Twenty equally likely instants and what they mean, for a row of the day line. */
export interface DayLine {
  readonly work: Work;
  /** When that work was last done, as far as is known. */
  readonly since_ms?: number;
  readonly said: string;
  readonly dates_ms: readonly number[];
  readonly origin: Working["origin"];
}

/** An amount in stretches that end at local midnights; the first begins now. */
export interface Daily {
  /** With its unit: `use_g`. */
  readonly name: string;
  readonly stretches: readonly {
    readonly date: string;
    readonly from_ms: number;
    readonly to_ms: number;
    readonly mean: number;
    readonly sd: number;
    readonly p10: number;
    readonly p90: number;
  }[];
}

export interface Question {
  readonly work: "weigh" | "look" | "measure";
  /** Expected narrowing of the 80 % range, days: how questions are ranked. */
  readonly worth_d: number;
  readonly said: string;
  readonly seconds: number;
}

/** What a craft brings to the what-is-wrong desk. */
export interface CraftWrong<Slice = unknown> {
  /** Things a person can see that this craft can say something about, drawn on the desk. */
  looks(say: Say): readonly Look[];
  /** Troubles that fit what is seen and what the craft knows of the plant, likeliest first. */
  signs(slice: Slice, sight: Outward, seen: readonly string[]): readonly Sign[];
}

/** Something to see on a plant, in the grower's words. */
export interface Look {
  readonly key: string;
  readonly where: "whole" | "tip" | "leaf" | "underside" | "stem and soil" | "fruit";
  readonly said: string;
}

/** What a craft can say of a trouble. */
export interface Sign {
  readonly key: string;
  readonly cause: string;
  /** How well it explains what was seen and known, for ranking only; never shown as a chance. */
  readonly weight: number;
  /** Evidence of the book itself, for and against. */
  readonly evidence: readonly string[];
  /** The look that tells it apart from the next, and its answers ("can't tell" is added by the screen). */
  readonly lookApart?: {
    readonly question: string;
    readonly answers: readonly { readonly key: string; readonly said: string }[];
  };
  readonly doNow: readonly string[];
  readonly doNot: readonly string[];
  readonly lookAgainIn_h: number;
}

/** A quantity against time: behind solid, ahead as a fan. */
export interface Fan {
  readonly name: string;
  readonly unit: string;
  readonly past: readonly { readonly at_ms: number; readonly value: number }[];
  readonly ahead: readonly {
    readonly at_ms: number;
    readonly p10: number;
    readonly p25: number;
    readonly p50: number;
    readonly p75: number;
    readonly p90: number;
  }[];
  readonly threshold?: { readonly value: number; readonly said: string };
  readonly events: readonly { readonly at_ms: number; readonly letter: string; readonly said: string }[];
  readonly origin: Working["origin"];
}
