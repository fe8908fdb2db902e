import { leafAreaAfter_m2 } from "@sillwood/science/growth";
import { dayNumber } from "../../places/time.ts";
import { fullLeafArea_m2, type PlantFacts } from "../../plants/facts.ts";
import type { Sight } from "../craft.ts";
import { pepperOf } from "./pepper.ts";
import { type Clockwork, growthSettings, type Settings, waitFor } from "./settings.ts";
import {
  type Clock,
  changed,
  type Growing,
  type GrowthSlice,
  type Known,
  kept,
  type Leaves,
} from "./slice.ts";
import { LAST_CLOCKED, type StageWord } from "./stages.ts";

const DAY_ms = 86_400_000;
const NOON_ms = DAY_ms / 2;
const LONGEST_SUM_Cd = 20_000;
/** Relative doubt of the usual leaf area, as where the house has nothing better. */
const USUAL_SD_ln = 0.5;
/** A plant of which nobody said anything has leaves; it may bear flowers. @source our assumption */
const GUESS: StageWord = { bbch: 19, bbchLow: 13, bbchHigh: 69 };
const NO_FRUITING_Cd = 1e6;

/** The growing of a plant at the moment it enters the book. */
export function startSlice(plant: PlantFacts, sight: Sight): GrowthSlice {
  const settings = growthSettings(sight);
  const { at_ms } = sight;
  const usual_m2 = fullLeafArea_m2(plant);
  const growing: Growing = {
    at_ms,
    pepper_n: pepperOf(plant, sight),
    clock: {
      how: "guess",
      at_ms,
      ...GUESS,
      sd_Cd: 0,
      fruiting_Cd: NO_FRUITING_Cd,
      sownOn: undefined,
    },
    leaves: {
      from: "usual",
      at_ms,
      sd_ln: USUAL_SD_ln,
      leaf_cm2: 0,
      leaves_n: 0,
      usual_m2,
      most_m2: usual_m2 * settings.leafAreaMost_frac,
    },
    nodes: { from: "unknown", at_ms, nodes_n: 0, sd_n: 0 },
    sum_Cd: 0,
    rest_Cd: 0,
    book_Cd: 0,
    made_n: 0,
    leafArea_m2: usual_m2,
    grown_ln: 0,
    problems: [],
  };
  return kept(plant.sownOn === undefined ? growing : sown(growing, plant, plant.sownOn, settings));
}

const clockworkOf = (growing: Growing, settings: Settings): Clockwork =>
  settings.clockworks[growing.pepper_n] as Clockwork;

/** Sum from a code at which fruit begins to slow the nodes. */
function fruitingFrom_Cd(clockwork: Clockwork, bbch: number): number {
  return bbch >= 71 ? 0 : waitFor(clockwork, Math.min(LAST_CLOCKED, bbch), 71).median_Cd;
}

/**
 * The clock as it stands by the sowing date: days before the plant came into the book at the air assumed for them, days since
 * as they were.
 */
function sown(
  growing: Growing,
  plant: Pick<PlantFacts, "broughtAt_ms">,
  sownOn: string,
  settings: Settings,
): Growing {
  const { at_ms } = growing;
  const clockwork = clockworkOf(growing, settings);
  const sown_ms = dayNumber(sownOn) * DAY_ms + NOON_ms;
  const { broughtAt_ms } = plant;
  const nursery_d = Math.max(0, (Math.min(at_ms, broughtAt_ms) - sown_ms) / DAY_ms);
  const inBook_ms = Math.max(0, at_ms - broughtAt_ms);
  const since_frac =
    inBook_ms > 0 ? Math.min(1, Math.max(0, at_ms - Math.max(sown_ms, broughtAt_ms)) / inBook_ms) : 0;
  const air_C = settings.nurseryAir_C;
  const rate_Cd = clockwork.pace(air_C);
  const sum_Cd = Math.min(LONGEST_SUM_Cd, rate_Cd * nursery_d + growing.book_Cd * since_frac);
  const leafed_Cd = sum_Cd - clockwork.cotyledons_Cd;
  const nodes_n = leafed_Cd > 0 ? (leafed_Cd / Math.max(0.1, rate_Cd)) * clockwork.nodePace(air_C) : 0;
  const clocked: Growing = changed(growing, {
    clock: {
      how: "sown",
      at_ms: sown_ms,
      bbch: 0,
      bbchLow: 0,
      bbchHigh: 0,
      sd_Cd: Math.min(5000, settings.nurseryAirSd_C * nursery_d),
      fruiting_Cd: fruitingFrom_Cd(clockwork, 0),
      sownOn,
    },
    sum_Cd,
    rest_Cd: 0,
    nodes: { from: "sown", at_ms, nodes_n, sd_n: settings.nodeSpread_frac * nodes_n },
    made_n: 0,
  });
  if (growing.leaves.from !== "usual" && growing.leaves.from !== "sown") return clocked;
  if (leafed_Cd < 0)
    return changed(clocked, {
      leaves: { ...growing.leaves, from: "sown", at_ms, sd_ln: 0.3 },
      leafArea_m2: 0,
      grown_ln: 0,
    });
  const growth_per_d = clockwork.relativeGrowth(settings.nurseryLight_mol_m2_d, air_C);
  const leafArea_m2 = leafAreaAfter_m2({
    leafArea_m2: clockwork.cotyledonArea_m2,
    leafAreaMax_m2: growing.leaves.most_m2,
    relativeGrowth_per_d: growth_per_d,
    days_d: Math.min(1000, leafed_Cd / Math.max(0.1, rate_Cd)),
  });
  const grown_ln = Math.log(leafArea_m2 / clockwork.cotyledonArea_m2);
  return changed(clocked, {
    leaves: {
      ...growing.leaves,
      from: "sown",
      at_ms,
      sd_ln: Math.max(0.3, settings.growthSpread_frac * grown_ln),
    },
    leafArea_m2,
    grown_ln: 0,
  });
}

/** The clock set by a look: from here it counts from the code that was seen. */
export function seen(growing: Growing, at_ms: number, look: StageWord, settings: Settings): Growing {
  const clockwork = clockworkOf(growing, settings);
  const young = growing.leafArea_m2 === 0 && growing.leaves.from === "sown" && look.bbch >= 10;
  return changed(growing, {
    clock: {
      how: "seen",
      at_ms,
      ...look,
      sd_Cd: 0,
      fruiting_Cd: fruitingFrom_Cd(clockwork, look.bbch),
      sownOn: growing.clock.sownOn,
    },
    sum_Cd: 0,
    rest_Cd: 0,
    ...(young ? { leafArea_m2: clockwork.cotyledonArea_m2, grown_ln: 0 } : {}),
  });
}

/** Cut back hard, or seen at rest: the clock waits for the first new leaf and starts from there. */
export function atRest(growing: Growing, at_ms: number, how: "seen" | "cut", settings: Settings): Growing {
  const clockwork = clockworkOf(growing, settings);
  const clock: Clock = {
    how,
    at_ms,
    bbch: 15,
    bbchLow: 15,
    bbchHigh: 15,
    sd_Cd: settings.budbreakSpread_frac * clockwork.budbreak_Cd,
    fruiting_Cd: fruitingFrom_Cd(clockwork, 15),
    sownOn: growing.clock.sownOn,
  };
  return changed(growing, { clock, sum_Cd: 0, rest_Cd: clockwork.budbreak_Cd });
}

/** Whether the house knows another pot, kind or sowing date of the plant than growth does. */
export const areFactsNew = ({ pepper_n, leaves, clock }: Known, sight: Sight): boolean =>
  pepperOf(sight.plant, sight) !== pepper_n ||
  fullLeafArea_m2(sight.plant) !== leaves.usual_m2 ||
  (sight.plant.sownOn !== undefined && sight.plant.sownOn !== clock.sownOn);

/** What the house learned of the plant since: another pot, another kind, a sowing date. The same growing where nothing did. */
export function withFacts(growing: Growing, sight: Sight): Growing {
  const { plant } = sight;
  const settings = growthSettings(sight);
  let next = growing;
  const pepper_n = pepperOf(plant, sight);
  if (pepper_n !== growing.pepper_n) next = onClockOf(next, pepper_n, settings);
  const usual_m2 = fullLeafArea_m2(plant);
  if (usual_m2 !== next.leaves.usual_m2) {
    const leaves: Leaves = { ...next.leaves, usual_m2, most_m2: usual_m2 * settings.leafAreaMost_frac };
    next = changed(next, leaves.from === "usual" ? { leaves, leafArea_m2: usual_m2 } : { leaves });
  }
  const { sownOn } = plant;
  if (sownOn !== undefined && sownOn !== next.clock.sownOn) {
    next =
      next.clock.how === "guess" || next.clock.how === "sown"
        ? sown(next, plant, sownOn, settings)
        : changed(next, { clock: { ...next.clock, sownOn } });
  }
  return next;
}

/** Sums carried over to the clock of another species, by equal days at the air of a nursery. */
function onClockOf(growing: Growing, pepper_n: number, settings: Settings): Growing {
  const air_C = settings.nurseryAir_C;
  const rate = (at: number) => (settings.clockworks[at] as Clockwork).pace(air_C);
  const before = rate(growing.pepper_n);
  const scale = before > 0 ? rate(pepper_n) / before : 1;
  const clockwork = settings.clockworks[pepper_n] as Clockwork;
  const { clock } = growing;
  return changed(growing, {
    pepper_n,
    clock: {
      ...clock,
      sd_Cd: clock.sd_Cd * scale,
      fruiting_Cd: clock.how === "guess" ? clock.fruiting_Cd : fruitingFrom_Cd(clockwork, clock.bbch),
    },
    sum_Cd: growing.sum_Cd * scale,
    rest_Cd: growing.rest_Cd * scale,
    book_Cd: growing.book_Cd * scale,
  });
}
