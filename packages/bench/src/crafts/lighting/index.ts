import type { AirDay } from "../../places/ahead.ts";
import type { Craft } from "../craft.ts";
import { lightIntegrate, lightRates } from "./advance.ts";
import { lightAsks } from "./asks.ts";
import { lightingAssumptions } from "./assumptions.ts";
import { lightFold } from "./fold.ts";
import { lightingKinds } from "./kinds.ts";
import { lightOffers } from "./offers.ts";
import { lightOutlook } from "./outlook.ts";
import { lightPage } from "./page.ts";
import { lightLooks, lightSigns } from "./signs.ts";
import { type LightSlice, startSlice } from "./slice.ts";
import { benchTurns, CRAFT } from "./turn.ts";

export type * from "./page-shape.ts";

/** Lighting: how much light each spot gets, whether that is enough, which lamp hours, which seat, which way round. */
export const lighting = {
  name: CRAFT,
  kinds: lightingKinds,
  assumptions: lightingAssumptions,
  start: (_plant, sight) => startSlice(sight),
  fold: lightFold,
  rates: lightRates,
  integrate: lightIntegrate,
  offers: lightOffers,
  limits: () => [],
  pool: benchTurns,
  outlook: lightOutlook,
  looks: lightLooks,
  signs: lightSigns,
  asks: lightAsks,
  page: lightPage,
} as const satisfies Craft<LightSlice, AirDay>;
