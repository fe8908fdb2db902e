import { pasteRatio, pourThroughRatio } from "@sillwood/science/medium";
import type { Effect } from "../../book/effects.ts";
import type { Happening, Sight } from "../craft.ts";
import {
  CUT,
  DRAINED,
  FILLED,
  type Filled,
  LIFTED,
  LOOKED,
  PLACED,
  PREPARED,
  type Prepared,
  type RootsLooked,
  SALTS,
  type SaltsRead,
  TESTED,
  type Tested,
  WASHED,
} from "./kinds.ts";
import { drawn, type Masses, massesOf, noMasses, poured, putRight, renewed } from "./ledger.ts";
import { saltNow_mS_cm } from "./salts.ts";
import { chargeOf, type PotSlice, type PottingDay, potSeen } from "./slice.ts";

const DAY_ms = 86_400_000;
/** How long after potting the store is taken as the mark that a later one is held against. @source medium-repot sheet 8 */
const STORE_MARK_d = 75;
/** A potting day that nobody ended is over after so long. */
const DAY_OVER_ms = 18 * 3_600_000;
const PROBLEMS_n = 8;

/** What happened to the pot, folded into the slice. Total: what makes no sense becomes a problem of the slice. */
export function potFold(slice: PotSlice, happening: Happening, sight: Sight): PotSlice {
  let next = slice;
  const { effects } = happening;
  for (let i = 0; i < effects.length; i++) {
    const effect = effects[i] as Effect;
    if (effect.effect === "water in") next = withPour(next, effect, effects, happening, sight);
    else if (effect.effect === "medium renewed")
      next = withMedium(next, effect.renewed_frac, happening, sight);
    else if (effect.effect === "pot changed") next = withStep(next, "pot_ms", happening);
    else if (effect.effect === "roots")
      next = { ...next, roots: { kept_frac: effect.kept_frac, at_ms: happening.at_ms } };
  }
  // Feed that came without water (grains on the surface) is dissolved by the next pour.
  if (!effects.some(({ effect }) => effect === "water in")) next = withGrains(next, effects);
  return happening.own ? withOwn(next, happening, sight) : next;
}

const known = new WeakMap<Sight["assumed"], Masses>();

/** What a litre of the water poured brings, mg; looked up once for all pours of a run. */
function sourceWater_mg_L({ assumed }: Sight): Masses {
  let water = known.get(assumed);
  if (!water) {
    water = massesOf({
      Ca: assumed("tapCa_mg_L"),
      Mg: assumed("tapMg_mg_L"),
      Na: assumed("tapNa_mg_L"),
      Cl: assumed("tapCl_mg_L"),
      S: assumed("tapS_mg_L"),
      HCO3: assumed("tapHCO3_mg_L"),
    });
    known.set(assumed, water);
  }
  return water;
}

const uptakeOf = (sight: Pick<Sight, "assumed">) => ({
  massFlow_frac: sight.assumed("massFlow_frac"),
  massFlowSlow_frac: sight.assumed("massFlowSlow_frac"),
});

/** Water in the pot at this moment, all of it, mL: what roots can't draw, and what is held above that. */
export function waterNow_mL(slice: PotSlice, sight: Pick<Sight, "plant" | "assumed" | "read">): number {
  const seen = potSeen(sight.plant, slice.fill, sight);
  const held_g = Math.min(sight.read("waterHeld_g").value, sight.read("capacity_g").value);
  return Math.max(1, seen.unavailable_mL + Math.max(0, held_g));
}

function withPour(
  slice: PotSlice,
  pour: Extract<Effect, { effect: "water in" }>,
  effects: readonly Effect[],
  { at_ms }: Happening,
  sight: Sight,
): PotSlice {
  const seen = potSeen(sight.plant, slice.fill, sight);
  const capacity_g = sight.read("capacity_g").value;
  const before_mL = Math.min(waterNow_mL(slice, sight), seen.unavailable_mL + capacity_g);
  const room_mL = Math.max(0, seen.unavailable_mL + capacity_g - before_mL);
  const out_mL = pour.leachate_mL ?? (pour.drained === "no" ? 0 : Math.max(0, pour.volume_mL - room_mL));
  const leachate_mL = Math.min(out_mL, pour.volume_mL);
  const fed = effects.find((effect) => effect.effect === "solutes");
  const water_mg_L = sourceWater_mg_L(sight);
  const fed_mg = fed?.effect === "solutes" ? massesOf(fed.added_mg) : noMasses;
  const litres = pour.volume_mL / 1000;
  const brought = new Array<number>(fed_mg.length);
  for (let i = 0; i < brought.length; i++)
    brought[i] = (water_mg_L[i] as number) * litres + (fed_mg[i] as number);
  const ledger = poured(drawn(slice.ledger, before_mL, uptakeOf(sight)), {
    kept_mL: pour.volume_mL - leachate_mL,
    leachate_mL,
    poured_mg: brought,
    leachingEfficiency: sight.assumed("leachingEfficiency"),
  });
  const isMark = slice.storeThen_g === undefined && at_ms - slice.mediumSince_ms > STORE_MARK_d * DAY_ms;
  return { ...slice, ledger, ...(isMark ? { storeThen_g: capacity_g } : {}) };
}

function withGrains(slice: PotSlice, effects: readonly Effect[]): PotSlice {
  const fed = effects.find((effect) => effect.effect === "solutes");
  if (fed?.effect !== "solutes") return slice;
  const brought = massesOf(fed.added_mg);
  const { ledger } = slice;
  return {
    ...slice,
    ledger: {
      ...ledger,
      held_mg: ledger.held_mg.map((held, i) => held + (brought[i] as number)),
      in_mg: ledger.in_mg.map((all, i) => all + (brought[i] as number)),
    },
  };
}

function withMedium(slice: PotSlice, renewed_frac: number, happening: Happening, sight: Sight): PotSlice {
  const fill = renewed_frac >= 0.5 ? {} : slice.fill;
  const seen = potSeen(sight.plant, fill, sight);
  const charge = chargeOf(seen.medium_mL, sight.assumed("chargeN_mg_L"));
  const { storeThen_g: _then, looked: _looked, ...rest } = slice;
  return withStep(
    {
      ...(renewed_frac >= 0.5 ? rest : slice),
      fill,
      mediumSince_ms: renewed_frac >= 0.5 ? happening.at_ms : slice.mediumSince_ms,
      ledger: renewed(slice.ledger, renewed_frac, charge, seen.capacity_mL),
    },
    "pot_ms",
    happening,
  );
}

/** A step of the potting day; potting outside such a day is no step of one. */
function withStep(slice: PotSlice, step: keyof PottingDay, { at_ms }: Happening): PotSlice {
  const open = isOpen(slice.day, at_ms);
  if (!open && step !== "lift_ms") return slice;
  return { ...slice, day: { ...(open ? slice.day : {}), [step]: at_ms } };
}

/** Whether a potting day is under way for this plant. */
export function isOpen(day: PottingDay | undefined, at_ms: number): boolean {
  const begun_ms = day?.prepared?.at_ms ?? day?.lift_ms;
  return begun_ms !== undefined && day?.place_ms === undefined && at_ms - begun_ms < DAY_OVER_ms;
}

function withOwn(slice: PotSlice, happening: Happening, sight: Sight): PotSlice {
  const own = happening.own as NonNullable<Happening["own"]>;
  const data = own.data as object | null;
  const problem = (): PotSlice => ({
    ...slice,
    problems: [...slice.problems.slice(-PROBLEMS_n + 1), { entry: happening.entry, what: own.kind }],
  });
  if (data === null || typeof data !== "object") return problem();
  try {
    switch (own.kind) {
      case FILLED: {
        const { recipe } = data as Filled;
        if (!Array.isArray(recipe) || recipe.length === 0) return problem();
        const fill = { recipe };
        potSeen(sight.plant, fill, sight);
        return { ...slice, fill };
      }
      case TESTED: {
        const fill = { ...slice.fill, test: data as Tested };
        potSeen(sight.plant, fill, sight);
        return { ...slice, fill };
      }
      case PREPARED:
        return {
          ...slice,
          day: {
            ...(isOpen(slice.day, happening.at_ms) ? slice.day : {}),
            prepared: { ...(data as Prepared), at_ms: happening.at_ms },
          },
        };
      case LIFTED:
        return withStep(slice, "lift_ms", happening);
      case CUT:
        return withStep(slice, "cut_ms", happening);
      case WASHED:
        return withStep(slice, "wash_ms", happening);
      case DRAINED:
        return withStep(slice, "drain_ms", happening);
      case PLACED:
        return withStep(slice, "place_ms", happening);
      case LOOKED: {
        const { rootsCircling, standing_s } = data as RootsLooked;
        return { ...slice, looked: { rootsCircling, standing_s, at_ms: happening.at_ms } };
      }
      case SALTS:
        return withReading(slice, data as SaltsRead, sight);
      default:
        return slice;
    }
  } catch {
    return problem();
  }
}

/** A meter against the ledger: the two are averaged on the log, a reading counting twice. @source our assumption, error of a pour-through ±20 % */
const READING_WEIGHT = 2 / 3;

function withReading(slice: PotSlice, { ec_mS_cm, method }: SaltsRead, sight: Sight): PotSlice {
  const seen = potSeen(sight.plant, slice.fill, sight);
  const porosity_frac = Math.min(0.99, seen.air_frac + seen.drained_frac);
  const water_frac = Math.min(porosity_frac, seen.drained_frac);
  const toPore = pourThroughRatio({ porosity_frac, water_frac });
  // A pour-through reads the water of the pot at capacity; a paste thins it; one to two thins it more.
  const factor =
    method === "pour-through"
      ? 1
      : method === "saturated"
        ? toPore
        : toPore * pasteRatio({ porosity_frac, water_frac: 0.3 });
  const ours = saltNow_mS_cm(slice, seen.capacity_mL, sight);
  if (!(ours > 0) || !(ec_mS_cm > 0)) return slice;
  return { ...slice, ledger: putRight(slice.ledger, ((ec_mS_cm * factor) / ours) ** READING_WEIGHT) };
}
