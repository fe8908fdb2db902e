import type { Json } from "../book/entry.ts";
import type { World } from "../crafts/craft.ts";
import type { Ask } from "../round/pages.ts";
import type { Desk } from "./desk.ts";
import { kindSaid } from "./names.ts";
import { inWalkingOrder } from "./plant-page.ts";

/** All places and plants as one craft sees them; members are looked up when they are first asked for. */
export function worldOf(desk: Desk, craft_n: number): World {
  const { ledger, say, now_ms } = desk;
  let members: World["members"] | undefined;
  return {
    now_ms,
    say,
    places: ledger.house().places,
    supplies: ledger.house().supplies,
    calendar: ledger.calendar,
    airAt: ledger.airAt,
    assumed: ledger.assumed,
    airIn: ledger.airIn,
    numberOf: desk.numberOf,
    kindOf: (plant) => kindSaid(plant, ledger, say.language, now_ms),
    speciesOf: ({ cultivar = "" }) => ledger.house().batches.cultivars.get(cultivar)?.species ?? "unknown",
    get members() {
      members ??= inWalkingOrder(desk).flatMap((plant) => {
        const view = desk.view(plant);
        const sight = view?.outwards[craft_n];
        return view && sight ? [{ plant: view.facts, slice: view.state.slices[craft_n], sight }] : [];
      });
      return members;
    },
  };
}

/**
 * A craft's own page; undefined when no craft of that name is here or it has none.
 *
 * @throws PageError when the craft can't draw what was asked
 */
export async function craftPage(desk: Desk, name: string, ask: Json): Promise<unknown> {
  const craft_n = desk.ledger.crafts.findIndex((craft) => craft.name === name);
  const page = await desk.ledger.crafts[craft_n]?.page?.();
  return page?.(worldOf(desk, craft_n), ask);
}

/** What the crafts ask of today's round that belongs to no single plant. */
export const craftAsks = (desk: Desk): readonly Ask[] =>
  desk.ledger.crafts.flatMap((craft, craft_n) => craft.asks?.(worldOf(desk, craft_n)) ?? []);
