import type { EntryId, Json, PlantId } from "../../book/entry.ts";
import type { LampData, WindowData } from "../../places/light/kinds.ts";
import type { Draft } from "../../round/pages.ts";
import type { Origin, Working } from "../../working/working.ts";

/**
 * What `lighting.page(world, ask)` takes and answers: screen 3 and `sillwood light`. Everything is plain data in the person's
 * language and units; numbers are SI. Light is photons on a level surface at the leaves, mol m⁻² d⁻¹.
 */
export interface LightAsk {
  /** Id of one bench; all benches in walking order when left out. */
  readonly bench?: string;
  /** 1 to 12; the month of now when left out. */
  readonly month?: number;
  /** A reading about to be written: it is checked, and what it would change is said. Nothing is written. */
  readonly read?: ReadAsk;
}

/** The entry that the screen would write: `light.pair` or `light.lamp` with its data, at one spot. */
export interface ReadAsk {
  readonly spot: string;
  readonly kind: "light.pair" | "light.lamp";
  readonly data: Json;
  /** When it was read; now when left out. */
  readonly at_ms?: number;
}

export interface LightPage {
  readonly now_ms: number;
  /** 1 to 12, and its name. */
  readonly month: number;
  readonly monthSaid: string;
  /** The answer first: "Light is short at 5 of 14 pots in January. Lamp shelf A: 05:30 to 19:00." */
  readonly said: string;
  readonly benches: readonly BenchLight[];
  /** Who would stand better elsewhere this month. */
  readonly seats: Seats;
  /** Answer to `ask.read`. */
  readonly reading?: ReadingCheck;
  readonly cautions: readonly Caution[];
  /** For `--json`: names with unit suffix. */
  readonly figures: Readonly<Record<string, number | string>>;
}

export interface BenchLight {
  readonly bench: string;
  readonly name: string;
  readonly outdoors: boolean;
  readonly quarantine: boolean;
  /** "window S, double glass"; "no window written"; "open sky". */
  readonly windowSaid: string;
  readonly windows: readonly WindowDrawn[];
  readonly lamps: readonly LampDrawn[];
  /** Only where there is a lamp. */
  readonly timer?: TimerSaid;
  /** What the plan shows: from left to right seen from inside, and from the glass into the room. */
  readonly plan: {
    readonly left_m: number;
    readonly right_m: number;
    readonly near_m: number;
    readonly far_m: number;
  };
  /** In standing order. */
  readonly spots: readonly SpotLit[];
  /** Indoors, where a window or lamp is known. */
  readonly contours?: Contours;
  /** "short 20 Oct to 25 Feb at 5 of 7 spots: 3.5 h lamp"; what the bench as a whole wants. */
  readonly said: string;
  /** What to set the timer to; only where there is a lamp and a plant. */
  readonly advice?: LampAdvice;
  /** What the lamps use as they are set now. */
  readonly energy?: Energy;
  /** The one reading worth most on this bench; left out where none would change an act. */
  readonly worth?: WorthReading;
  /** Where the direction of the window is not known: the two cases, and the one reading that tells them apart. */
  readonly unsure?: UnsureWindow;
  /** Readings of light so far, latest first, at most five. */
  readonly read: readonly {
    readonly entry: EntryId;
    readonly at_ms: number;
    readonly spotSaid: string;
    readonly said: string;
  }[];
}

/** Geometry for the side view and the plan, seen from inside. */
export interface WindowDrawn {
  readonly window_n: number;
  readonly said: string;
  readonly faces_deg: number;
  readonly facesSaid: string;
  readonly width_m: number;
  readonly height_m: number;
  /** Lower edge of the glass above the leaves; negative below them. */
  readonly sill_m: number;
  readonly opposite_deg: number;
  readonly recess_m: number;
  readonly glazing: WindowData["glazing"];
  readonly veil: NonNullable<WindowData["veil"]>;
  readonly origin: Origin;
}

export interface LampDrawn {
  readonly lamp_n: number;
  readonly said: string;
  readonly form: LampData["form"];
  readonly source: LampData["source"];
  readonly above_m: number;
  /** Middle of the lamp: to the right of the middle of the bench, and from the glass. */
  readonly along_m: number;
  readonly fromGlass_m: number;
  readonly length_m?: number;
  readonly width_m?: number;
  readonly power_W: number;
  readonly origin: Origin;
}

export interface TimerSaid {
  readonly from_h: number;
  readonly hours_h: number;
  /** "05:30", "19:00"; both undefined while the lamp stays off. */
  readonly on?: string;
  readonly off?: string;
  readonly said: string;
  /** `measured`: somebody wrote it; `assumed`: nobody has. */
  readonly origin: Origin;
  /** Since when the lamps are out, while they are. */
  readonly outSince_ms?: number;
}

export interface SpotLit {
  readonly spot: string;
  /** "6", as the spot is called on its bench. */
  readonly name: string;
  readonly along_m: number;
  readonly fromGlass_m: number;
  /** Whether somebody measured where it lies; else the pots are taken as standing side by side. */
  readonly placeOrigin: Origin;
  readonly plant?: PlantId;
  readonly number?: string;
  readonly kind?: string;
  /** Light of the month that was asked for. */
  readonly light: SpotMonth;
  /** Only where a plant stands. */
  readonly need?: Need;
  readonly state: "short" | "enough" | "bright" | "free";
  /** "Spot 6, pot 128: 9 of 12 needed, from 6 to 12." */
  readonly said: string;
  /** January to December. */
  readonly year: readonly MonthBar[];
  /** When it stops being enough and when it is enough again; only where a plant stands. */
  readonly short?: Short;
  /** "not turned for 23 days, 70 % from the window"; only where a plant stands and light is one-sided. */
  readonly turnSaid?: string;
  /** "14 mol behind since the lamp went out 3 days ago"; only while there is a debt. */
  readonly debtSaid?: string;
}

/** Daily light of a month: the middle, the dull and the sunny days (20 and 80 % of days are duller). */
export interface LightBand {
  readonly mid_mol_m2_d: number;
  readonly dull_mol_m2_d: number;
  readonly sunny_mol_m2_d: number;
}

export interface SpotMonth extends LightBand {
  readonly window_mol_m2_d: number;
  readonly lamp_mol_m2_d: number;
  readonly sky_mol_m2_d: number;
  /** 80 % range of the middle from not knowing the place: what a reading narrows. */
  readonly low_mol_m2_d: number;
  readonly high_mol_m2_d: number;
  readonly origin: Origin;
  readonly from: string;
  readonly working: Working;
}

export interface Need {
  /** What sentences call needed: below it light is short. */
  readonly min_mol_m2_d: number;
  readonly aim_mol_m2_d: number;
  readonly max_mol_m2_d: number;
  /** "in flower". */
  readonly stageSaid: string;
  readonly origin: Origin;
  readonly working: Working;
}

export interface MonthBar extends LightBand {
  readonly month: number;
  readonly name: string;
  /** First letter of its name. */
  readonly letter: string;
  /** Aim of what stands there; left out at a free spot. */
  readonly need_mol_m2_d?: number;
}

export interface DateBand {
  /** Median, YYYY-MM-DD. */
  readonly date: string;
  /** 10 and 90 %. */
  readonly low: string;
  readonly high: string;
  /** "20 Oct (12 to 29 Oct)". */
  readonly said: string;
}

export interface Short {
  readonly state: "short now" | "short later" | "short always" | "never short";
  /** "short 20 Oct to 25 Feb: 3.5 h lamp"; "enough all year". */
  readonly said: string;
  /** When it begins, or began within the past year where it is short now. */
  readonly from?: DateBand;
  readonly until?: DateBand;
  /** Lamp hours that would close the gap in its darkest month, at the lamp of this bench. */
  readonly lamp_h?: number;
  /** As it stood before the last reading, where there is one; it stands in the working too. */
  readonly before?: {
    readonly entry: EntryId;
    readonly from?: DateBand;
    readonly until?: DateBand;
    readonly said: string;
  };
  readonly origin: Origin;
  readonly working: Working;
}

/** Light at the leaves over the bench on a small grid, to be drawn as height lines. */
export interface Contours {
  /** Columns, from left to right seen from inside. */
  readonly along_m: readonly number[];
  /** Rows, from the glass into the room. */
  readonly fromGlass_m: readonly number[];
  /** [row][column] */
  readonly light_mol_m2_d: readonly (readonly number[])[];
  /** Values whose lines are worth drawing, ascending. */
  readonly levels_mol_m2_d: readonly number[];
}

export interface LampAdvice {
  /** Hours of the fixed timer for the stage's need, within the day-length cap, to the quarter of an hour. */
  readonly from_h: number;
  readonly hours_h: number;
  /** "05:30" and "19:00"; both undefined when the lamp is not needed. */
  readonly on?: string;
  readonly off?: string;
  /** "lamp 05:30 to 19:00, 13.5 h". */
  readonly said: string;
  /** Whether it differs enough from the timer as it is set to be worth a hand. */
  readonly change: boolean;
  /** Why there is nothing to change, or why it waits: "set 3 days ago; at most one change a week". */
  readonly waitSaid?: string;
  /** The entry that setting it writes. */
  readonly draft: Draft;
  /** What the timer is worked out for. */
  readonly target_mol_m2_d: number;
  /** Window light of a dull day (3 of 10 days are duller). */
  readonly natural_mol_m2_d: number;
  readonly ppfd_umol_m2_s: number;
  readonly cap_h: number;
  /** What is left open within the cap, and what the lamp would have to give. */
  readonly short_mol_m2_d: number;
  readonly shortSaid?: string;
  readonly wanted_umol_m2_s?: number;
  readonly energy: Energy;
  readonly working: Working;
}

export interface Energy {
  readonly power_W: number;
  readonly kWh_d: number;
  readonly kWh_month: number;
  readonly plants_n: number;
  /** Only where a price of electricity is written and the reader may see it. */
  readonly cost_minor_d?: number;
  readonly cost_minor_month?: number;
  readonly costPerPlant_minor_month?: number;
  readonly currency: string;
  /** "2.1 kWh a day, €0.63; €2.71 a plant and month". */
  readonly said: string;
  readonly working: Working;
}

export interface WorthReading {
  readonly spot: string;
  readonly spotSaid: string;
  readonly kind: ReadAsk["kind"];
  /** "Worth 2 min: lux at spot 4, then outside, on a grey day: 20 Oct (2 Oct to 8 Nov) would become about 14 to 27 Oct." */
  readonly said: string;
  readonly seconds: number;
  /** Relative sd of the light, before and after. */
  readonly sdNow_frac: number;
  readonly sdThen_frac: number;
  readonly working: Working;
}

export interface UnsureWindow {
  readonly said: string;
  readonly cases: readonly (LightBand & {
    readonly faces_deg: number;
    readonly said: string;
    /** What a lux meter at the leaf would show at noon of a clear day. */
    readonly noon_lux: number;
  })[];
  /** "Read lux at the leaf at noon of a clear day: near 20,000 is a south window, near 1,500 a north one." */
  readonly ask: string;
}

export interface Seats {
  /** "Better seat: 131 and 140 swap. Gains 3 mol a day." or why staying is best. */
  readonly said: string;
  /** Best first, at most three. */
  readonly swaps: readonly Swap[];
  /** How many pots the best order of all would move, and its gain over staying, mol a day met. */
  readonly allMoves_n: number;
  readonly allGain_mol_m2_d: number;
  readonly working?: Working;
}

export interface Swap {
  readonly key: string;
  readonly plant: PlantId;
  readonly number: string;
  readonly from: string;
  readonly to: string;
  /** Who stands at `to` now and goes to `from`; left out where it is free. */
  readonly other?: { readonly plant: PlantId; readonly number: string };
  /** Need newly met by both together, mol m⁻² d⁻¹. */
  readonly gain_mol_m2_d: number;
  /** "131 and 140 swap: 131 gets 11 instead of 7, 140 keeps enough." */
  readonly said: string;
  readonly drafts: readonly Draft[];
  readonly working: Working;
}

export interface ReadingCheck {
  /** `refused`: it can't be true; `doubtful`: ask before keeping it; `good`: keep it. */
  readonly state: "refused" | "doubtful" | "good";
  /** "Indoor reading is brighter than the sky can be today (11,000 of 9,400 lux). Lamp on, or meters swapped?" */
  readonly said: string;
  /** Ways out, where there are any: the entry each would write instead. */
  readonly answers: readonly { readonly said: string; readonly drafts: readonly Draft[] }[];
  /** What it would change: band of light, and the short-from date, of that spot. */
  readonly then?: {
    readonly light: LightBand & { readonly low_mol_m2_d: number; readonly high_mol_m2_d: number };
    readonly from?: DateBand;
    readonly until?: DateBand;
    readonly said: string;
  };
  readonly working?: Working;
}

export interface Caution {
  readonly key: "water" | "eyes" | "heat" | "load" | "sun";
  readonly said: string;
}
