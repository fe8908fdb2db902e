import type { AirDay } from "../../places/ahead.ts";
import type { Craft } from "../craft.ts";
import { lightIntegrate, lightRates } from "./advance.ts";
import { lightAsks } from "./asks.ts";
import { lightingAssumptions } from "./assumptions.ts";
import { lightFold } from "./fold.ts";
import { kept, type LightKept, lightOf, turnParts, worldByName } from "./kept.ts";
import { lightingKinds } from "./kinds.ts";
import { lightOffers } from "./offers.ts";
import { lightOutlook } from "./outlook.ts";
import { startSlice } from "./slice.ts";
import { benchTurns, CRAFT } from "./turn.ts";

export type * from "./page-shape.ts";

/** Lighting: how much light each spot gets, whether that is enough, which lamp hours, which seat, which way round. */
export const lighting = {
  name: CRAFT,
  kinds: lightingKinds,
  assumptions: lightingAssumptions,
  start: (_plant, sight) => kept(startSlice(sight)),
  fold: lightFold,
  rates: lightRates,
  integrate: lightIntegrate,
  offers: lightOffers,
  limits: () => [],
  pool: (members) => benchTurns(turnParts(members)),
  outlook: (slice, sight) => lightOutlook(lightOf(slice), sight),
  wrong: async () => (await import("./signs.ts")).lightWrong,
  asks: (world) => lightAsks(worldByName(world)),
  page: async () => {
    const { lightPage } = await import("./page.ts");
    return (world, ask) => lightPage(worldByName(world), ask);
  },
} as const satisfies Craft<LightKept, AirDay>;
