/**
 * Thirty cases written down from what published descriptions say of each trouble, before any table of likelihoods was coded: what
 * one would see and not see, and what it was. Looked for and absent counts as well as seen; all else was not looked at.
 *
 * @source descriptions as in extension pages on pepper and pot plants (British Columbia, Alberta, Colorado State, Rutgers,
 * Connecticut), excerpts; where no page was at hand, from memory
 */
export interface WrittenCase {
  readonly said: string;
  readonly seen: readonly string[];
  readonly absent: readonly string[];
  readonly cause: string;
}

const one = (
  cause: string,
  said: string,
  seen: readonly string[],
  absent: readonly string[] = [],
): WrittenCase => ({
  said,
  seen,
  absent,
  cause,
});

export const writtenCases: readonly WrittenCase[] = [
  one("overwater", "Wilts in a pot that is heavy; roots brown, their skin slips off", [
    "droops",
    "heavy pot",
    "brown roots",
  ]),
  one(
    "overwater",
    "Lower leaves yellow, pot never light, no animals",
    ["yellow old leaves", "heavy pot"],
    ["insects seen", "fine specks"],
  ),
  one(
    "drought",
    "Hangs, the pot is light, stood up overnight after water",
    ["droops", "light pot"],
    ["brown roots"],
  ),
  one("drought", "Old leaves yellow and edges dry, pot light each time", [
    "light pot",
    "yellow old leaves",
    "burnt edges",
  ]),
  one("aphid", "Sticky shine and white skins on the tips, small soft animals", [
    "sticky",
    "insects seen",
    "curled tips",
  ]),
  one(
    "aphid",
    "Shoot tips curled, honeydew, ants run up the stem",
    ["curled tips", "sticky"],
    ["webbing", "burnt edges"],
  ),
  one(
    "spider mite",
    "Fine pale stipple on leaves near the lamp, threads below",
    ["fine specks", "webbing"],
    ["sticky"],
  ),
  one(
    "spider mite",
    "Pale speckled leaves in dry warm air, moving dots under the lens",
    ["fine specks", "insects seen"],
    ["sticky", "gnats"],
  ),
  one(
    "broad mite",
    "New leaves narrow, brittle, curled down; old leaves normal",
    ["curled tips"],
    ["sticky", "insects seen", "yellow old leaves", "mosaic"],
  ),
  one(
    "broad mite",
    "Tips stall, bronze below; nothing seen without a lens",
    ["curled tips"],
    ["sticky", "webbing", "mosaic", "droops"],
  ),
  one(
    "thrips",
    "Silver streaks with black specks, scarred fruit, flowers full of slivers",
    ["fine specks", "insects seen"],
    ["webbing", "sticky"],
  ),
  one(
    "thrips",
    "Silvered patches on young leaves, tips a little curled",
    ["fine specks", "curled tips"],
    ["webbing", "sticky", "mosaic"],
  ),
  one(
    "whitefly",
    "A cloud when the plant is tapped, scales below, sticky",
    ["sticky", "insects seen"],
    ["curled tips", "fine specks"],
  ),
  one(
    "whitefly",
    "White flies under the leaves, old leaves yellow and shiny",
    ["insects seen", "sticky", "yellow old leaves"],
    ["curled tips"],
  ),
  one(
    "fungus gnat",
    "Small black flies on the card and over a wet surface",
    ["gnats", "heavy pot"],
    ["brown roots", "blisters"],
  ),
  one(
    "fungus gnat",
    "Flies on the card, seedlings weak",
    ["gnats", "insects seen"],
    ["sticky", "white bloom"],
  ),
  one("powdery mildew", "Yellow spots above, white bloom below, old leaves drop", [
    "white bloom",
    "yellow old leaves",
  ]),
  one("powdery mildew", "White bloom under the leaf, edges roll up", ["white bloom"], ["insects seen"]),
  one(
    "virus",
    "Light and dark mosaic, ferny leaves on the whole plant",
    ["mosaic", "curled tips"],
    ["webbing"],
  ),
  one(
    "virus",
    "Mottled new leaves, stunted, came from saved seed",
    ["mosaic", "yellow new leaves"],
    ["sticky"],
  ),
  one("blossom-end rot", "Sunken leathery patch at the blossom end, firm at first", ["fruit end patch"]),
  one(
    "blossom-end rot",
    "Fruit ends tan and sunken, edges of leaves burnt in a small pot",
    ["fruit end patch", "burnt edges"],
    ["lit patch"],
  ),
  one(
    "sunscald",
    "Pale papery patch on the lit side of the fruit after a move outdoors",
    ["lit patch"],
    ["fruit end patch"],
  ),
  one(
    "oedema",
    "Corky blisters under old leaves, no animals, cool wet nights",
    ["blisters", "heavy pot"],
    ["insects seen"],
  ),
  one(
    "nutrient N/Mg",
    "Old leaves pale yellow evenly, new ones green, nothing else",
    ["yellow old leaves"],
    ["insects seen", "heavy pot", "droops", "white bloom", "sticky", "fine specks"],
  ),
  one(
    "nutrient Fe/pH",
    "Youngest leaves yellow between green veins",
    ["yellow new leaves"],
    ["mosaic", "insects seen", "droops"],
  ),
  one("salt", "Edges burnt all around, white crust, meter high", ["burnt edges"], ["insects seen", "sticky"]),
  one(
    "salt",
    "Leaf margins brown, hangs though moist, roots tan",
    ["burnt edges", "droops"],
    ["light pot", "sticky"],
  ),
  one(
    "cold injury",
    "Water-soaked leaves and hanging after a cold night",
    ["droops", "yellow new leaves"],
    ["insects seen", "gnats", "light pot", "brown roots"],
  ),
  one(
    "damping-off",
    "Seedlings fall over at the soil line, gaps in the tray",
    ["collapsed stem", "droops"],
    ["light pot"],
  ),
];
