import type { Entry, PlantId } from "../book/entry.ts";
import type { Draft } from "../round/pages.ts";
import type { Desk } from "./desk.ts";

/** More than this many stores of water at one pour is a slip, not a flood (air-water sheet, section 0). */
const MOST_STORES = 3;

/** Something typed that is possible but hardly meant; a person may say that it is right. */
export interface Doubt {
  readonly plant: PlantId;
  readonly path: string;
  readonly value: number;
  readonly most: number;
  readonly unit: string;
  /** What was probably meant. */
  readonly meant: number;
}

/** Pours beyond what the pots can take. The gate into the book refuses the impossible; this asks about the unlikely. */
export function doubtsOf(desk: Desk, drafts: readonly Draft[]): readonly Doubt[] {
  return drafts.flatMap((draft) => {
    const effects = desk.ledger.kinds.find(draft.kind)?.effects(draft.data, draft as unknown as Entry) ?? [];
    return effects.flatMap((effect) => {
      if (effect.effect !== "water in") return [];
      return draft.on.flatMap((plant): Doubt[] => {
        const state = desk.ledger.stateAt(plant as PlantId, desk.now_ms);
        if (!state) return [];
        const { value: store_g } = desk.ledger.runner().sight(state).read("capacity_g");
        const { volume_mL } = effect;
        if (volume_mL <= MOST_STORES * store_g) return [];
        return [
          {
            plant: plant as PlantId,
            path: "data.volume_mL",
            value: volume_mL,
            most: store_g,
            unit: "mL",
            meant: volume_mL / 10,
          },
        ];
      });
    });
  });
}
