import { type GrowthAssumptionKey, growthAssumptions as published } from "@sillwood/science/growth";
import { assumption, OURS, TRADE } from "../assumption.ts";
import type { Assumption } from "../craft.ts";

/** Numbers of the field that no work of this craft rests on: an assumption that moves nothing is not shown. */
const UNUSED: readonly GrowthAssumptionKey[] = ["emergencePlateau_C", "set_Cd"];

/** What settles a number of the field, by the unit of its name and what it belongs to. */
function replacedBy(key: GrowthAssumptionKey): string {
  if (/^leafShape/.test(key))
    return "area and length times width of some leaves of that cultivar, drawn on squared paper";
  if (/^leafSpread|^cotyledon.*cm2/.test(key)) return "measuring eight to twelve leaves picked blindly";
  if (/^growth/.test(key)) return "two leaf counts some weeks apart, with the light between";
  if (/^leafRate|^plastochron|^fruitingSlows|^nodeSpread/.test(key))
    return "nodes counted twice, some weeks apart";
  if (/_C$/.test(key)) return "days to one stage of four batches or more, at places 4 °C apart";
  return "dates of that stage in your own book";
}

const fromScience: readonly Assumption[] = published
  .filter(({ key }) => !UNUSED.includes(key))
  .map(({ key, what, value, unit, min, max, source }) => ({
    key,
    what,
    value,
    unit,
    min,
    max,
    source,
    replacedBy: replacedBy(key),
  }));

const ownAssumptions = [
  assumption(
    "nurseryAir_C",
    "air in which a plant stood from sowing until it came into the book",
    21,
    "°C",
    5,
    35,
    OURS,
    "one look at its stage",
  ),
  assumption(
    "nurseryAirSd_C",
    "how far off that air may be, one sd",
    3,
    "°C",
    0,
    10,
    OURS,
    "one look at its stage",
  ),
  assumption(
    "nurseryLight_mol_m2_d",
    "daily light in which it stood until then",
    10,
    "mol/m²/d",
    1,
    60,
    OURS,
    "one leaf count",
  ),
  assumption(
    "hardCut_frac",
    "share of the leaves left below which a cut sets the clock anew",
    0.5,
    "share",
    0.05,
    0.9,
    TRADE,
    "watching whether buds go on or shoots begin anew",
  ),
  assumption(
    "budbreakSpread_frac",
    "spread of the thermal time from a hard cut to the first new leaf, as a share of it",
    0.25,
    "share",
    0.02,
    0.8,
    "our assumption, from 10 to 20 days of common practice",
    "the date of the first new leaf longer than 1 cm",
  ),
  assumption(
    "regrowth_frac",
    "leaf area that a plant cut back puts out of its reserves, as a share of the usual",
    0.05,
    "share",
    0,
    0.5,
    OURS,
    "a leaf count two weeks after the new leaves",
  ),
  assumption(
    "leafAreaMost_frac",
    "greatest leaf area in its pot, as a multiple of the usual for kind and pot",
    1.3,
    "",
    1,
    4,
    OURS,
    "a leaf count of a full crown",
  ),
  assumption(
    "leafWander_frac",
    "how fast a leaf area strays from what is reckoned, share in the root of a day",
    0.03,
    "share",
    0,
    0.2,
    OURS,
    "leaf counts some weeks apart",
  ),
  assumption(
    "leafUse_g_m2_d",
    "water that leaves use in a day, only to rank what is worth a look",
    1200,
    "g/m²/d",
    200,
    6000,
    OURS,
    "nothing: watering learns the use of each pot",
  ),
] as const satisfies readonly Assumption[];

/** Values of the craft that nobody measured for this plant; each may be adjusted and is shown as assumed. */
export const growthAssumptions: readonly Assumption[] = [...fromScience, ...ownAssumptions];

const byKey = new Map<string, Assumption>(growthAssumptions.map((each) => [each.key, each]));

/** One of the craft's assumptions by its key. */
export function growthAssumption(key: string): Assumption {
  const found = byKey.get(key);
  if (!found) throw new Error(`growth has no assumption ${key}`);
  return found;
}

/** Keys of the field `growth` that the craft lets a grower set. */
export const fieldKeys: readonly GrowthAssumptionKey[] = published
  .map(({ key }) => key)
  .filter((key) => !UNUSED.includes(key));
