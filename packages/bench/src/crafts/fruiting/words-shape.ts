import type { ColourStage } from "@sillwood/science/fruit";
import type { Look } from "../craft.ts";
import type {
  Aimed,
  Assayed,
  Brushed,
  Coloured,
  Counted,
  Dropped,
  Flowered,
  Picked,
  Seeded,
  Tagged,
  Tested,
  Thinned,
} from "./kinds.ts";
import type { FruitProblem } from "./slice.ts";

/** Every sentence of the craft that a round, a plant page or the log says. A missing one does not compile. */
export interface FruitingWords {
  readonly sentence: {
    flowered(data: Flowered): string;
    brushed(data: Brushed): string;
    counted(data: Counted): string;
    thinned(data: Thinned): string;
    dropped(data: Dropped): string;
    tagged(data: Tagged): string;
    coloured(data: Coloured): string;
    picked(data: Picked): string;
    aimed(data: Aimed): string;
    assayed(data: Assayed): string;
    seeded(data: Seeded): string;
    tested(data: Tested): string;
  };
  readonly colour: Readonly<Record<ColourStage, string>>;
  readonly head: string;
  /** "light feeds about 10 (6 to 19)". */
  feeds(fruits_n: string, low: string, high: string): string;
  /** "3 fruits", "1 fruit". */
  fruits(fruits_n: number): string;
  flowers(open_n: number): string;
  flowersFrom(day: string): string;
  /** "3 fruits 9 to 20 Feb". */
  ripe(fruits: string, range: string): string;
  ripeNow(fruits: string): string;
  cannotRipen(air: string, floor: string): string;
  readonly task: {
    readonly brush: string;
    brushSaid(flowers: string): string;
    brushHow(again: boolean): string;
    brushWhy(still: string, brushed: string): string;
    readonly thin: string;
    thinSaid(removed: string, keep: string): string;
    readonly thinHow: string;
    thinWhy(has_n: number, low: string, high: string, size: string): string;
    readonly pick: string;
    readonly pickHow: string;
    pickWhy(day: string): string;
    pickGuess(range: string): string;
  };
  readonly care: string;
  readonly sprayLimit: string;
  problem(problem: FruitProblem): string;
  looks(): readonly Look[];
  readonly sign: {
    readonly hungry: string;
    readonly pollen: string;
    readonly warmth: string;
    chance(now: string, brushed: string): string;
    load(has_n: string, fed_n: string): string;
    air(day: string, night: string): string;
    readonly lookQuestion: string;
    readonly lookAnswers: readonly [string, string];
    readonly hungryDo: string;
    readonly pollenDo: string;
    readonly warmthDo: string;
    readonly doNot: string;
  };
  readonly working: WorkingWords;
}

export interface WorkingWords {
  readonly capacity: string;
  readonly capacityFormula: string;
  capacitySum(light: string, made: string, days: string, mass: string, fruits: string): string;
  readonly capacityMoves: string;
  readonly light: string;
  readonly warmth: string;
  warmthFrom(air: string): string;
  readonly fresh: string;
  freshOwn(weighed_n: number): string;
  readonly dry: string;
  readonly lightUse: string;
  readonly share: string;
  readonly toRipe: string;
  toRipeFrom(sum: string, day: string): string;
  readonly learned: string;
  learnedFrom(weighed_n: number): string;
  naturalNote(natural: string): string;
  readonly keepNote: string;
  readonly ripe: string;
  readonly ripeFormula: string;
  ripeSum(sum: string, behind: string, left: string): string;
  readonly ripeMoves: string;
  readonly opened: string;
  openedFrom(isGuessed: boolean): string;
  readonly behind: string;
  readonly behindFrom: string;
  readonly sum: string;
  sumFrom(own_n: number): string;
  readonly colourSeen: string;
  colourFrom(day: string): string;
  readonly set: string;
  readonly setFormula: string;
  setSum(pollen: string, warmth: string, fed: string, chance: string): string;
  readonly setMoves: string;
  readonly pollen: string;
  readonly moved: Readonly<Record<"still air" | "open air" | "by hand", string>>;
  readonly fed: string;
  readonly fedFrom: string;
  readonly best: string;
}
