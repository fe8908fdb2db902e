import type { FeedPage } from "@sillwood/bench/crafts/feeding";
import { iso } from "./instants.ts";
import { workingShape } from "./page-shapes.ts";

/** The stable shape of the mixing desk (docs/cli.md): the engine's own objects may change under it. */
export const feedShape = (page: FeedPage) => ({
  asOf: iso(page.now_ms),
  said: page.said,
  groups: page.groups.map(({ key, stage, strength_frac, pots, volume_L, said }) => ({
    key,
    stage,
    strength_frac,
    volume_L,
    said,
    pots: pots.map(({ plant, number, volume_mL }) => ({ plant, number, volume_mL })),
  })),
  water: { ...page.water },
  shelf: page.shelf.map(({ id, name, said, isUsed, why }) => ({ id, name, said, isUsed, why: why ?? null })),
  recipe: page.recipe
    ? {
        tank: page.recipe.tank,
        volume_L: page.recipe.volume_L,
        doses: page.recipe.doses.map((dose) => ({ ...dose })),
        steps: page.recipe.steps,
        trade: page.recipe.trade.map((each) => ({ ...each })),
        elements: page.recipe.elements.map((each) => ({ ...each })),
        expected_mS_cm: page.recipe.expected_mS_cm,
        low_mS_cm: page.recipe.low_mS_cm,
        high_mS_cm: page.recipe.high_mS_cm,
        drafts: page.recipe.act.map(({ kind, on, data }) => ({ kind, on, data })),
        working: workingShape(page.recipe.working),
      }
    : null,
  trouble: page.trouble ?? null,
  reading: page.reading
    ? {
        state: page.reading.state,
        said: page.reading.said,
        read_mS_cm: page.reading.read_mS_cm,
        slips: page.reading.slips,
      }
    : null,
  cautions: page.cautions,
});
