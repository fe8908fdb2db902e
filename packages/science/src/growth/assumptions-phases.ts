import { assume, ours, published, remembered, trade } from "./assume.ts";

const onTen = "thermal time above 10 °C";
const derived = (basis: string) => ours(`our assumption, derived from ${basis}`);
const ripe = (fruit: string): string => `${onTen} from open flower to ripe colour, ${fruit}`;
const spread = (phase: string): string => `spread of the thermal time ${phase}, as a share of it`;

/**
 * Thermal sums of the phases. All but emergence are written on one clock (base 10 °C, counted up to 28 °C), and carried over
 * to the clock of a species by equal days at 25 °C, so that a base and its sum travel together.
 */
export const phaseAssumptions = [
  assume(
    "emergenceBase_C",
    "medium temperature at and below which seed does not emerge",
    10.5,
    8,
    13,
    derived("the emergence days of Knott1997"),
  ),
  assume(
    "emergencePlateau_C",
    "medium temperature from which seed emerges no faster",
    25,
    22,
    30,
    derived("the emergence days of Knott1997"),
  ),
  assume(
    "emergence_Cd",
    "thermal time of the medium from sowing to emergence: annuum, frutescens, baccatum",
    118,
    80,
    250,
    derived("the emergence days of Knott1997; 90 to 160"),
  ),
  assume(
    "emergenceSlow_Cd",
    "thermal time of the medium from sowing to emergence: chinense, pubescens",
    170,
    80,
    300,
    trade,
  ),
  assume("cotyledon_Cd", `${onTen} from emergence to open cotyledons`, 40, 10, 120, ours()),
  assume(
    "transplant_Cd",
    `${onTen} from sowing to 4 to 6 true leaves`,
    460,
    250,
    800,
    derived("6 to 8 weeks in growers' guides; 400 to 650"),
  ),
  assume(
    "flower_Cd",
    `${onTen} from transplanting to the first open flower`,
    420,
    200,
    900,
    derived("Dickson2024 and DSSAT48; 300 to 640"),
  ),
  assume("budShare_frac", "share of that time after which the first bud is seen", 0.5, 0.2, 0.9, ours()),
  assume(
    "set_Cd",
    `${onTen} from open flower to a set that can be seen`,
    110,
    60,
    200,
    derived("Homma2022; 80 to 160"),
  ),
  assume(
    "fullSize_Cd",
    `${onTen} from open flower to full size, green`,
    420,
    250,
    600,
    derived("DSSAT48; 350 to 480"),
  ),
  assume(
    "ripeSmall_Cd",
    ripe("small annuum and frutescens"),
    640,
    400,
    1000,
    derived("Dickson2024; 550 to 720"),
  ),
  assume(
    "ripeLong_Cd",
    ripe("long annuum and baccatum"),
    690,
    400,
    1000,
    derived("opened abstracts; 600 to 780"),
  ),
  assume("ripeBell_Cd", ripe("bell"), 690, 400, 1100, derived("opened abstracts; 620 to 800")),
  assume("ripeChinense_Cd", ripe("chinense"), 750, 500, 1200, remembered),
  assume("ripePubescens_Cd", ripe("pubescens"), 950, 600, 1400, remembered),
  assume("budbreak_Cd", `${onTen} from a hard cut to the first new leaf`, 180, 60, 500, trade),
  assume(
    "emergenceSpread_frac",
    spread("to emergence"),
    0.22,
    0.02,
    0.8,
    derived("its range, taken as 80 %"),
  ),
  assume("emergenceSlowSpread_frac", spread("to emergence, slow species"), 0.4, 0.02, 0.8, trade),
  assume(
    "transplantSpread_frac",
    spread("from sowing to 4 to 6 leaves"),
    0.15,
    0.02,
    0.6,
    derived("its range"),
  ),
  assume(
    "flowerSpread_frac",
    spread("from there to the first flower"),
    0.18,
    0.02,
    0.6,
    derived("its range"),
  ),
  assume("ripeSpread_frac", spread("from flower to ripe"), 0.12, 0.02, 0.6, derived("its range")),
  assume(
    "radicle_Cd",
    "thermal time above 11.44 °C from sowing to the first radicle",
    41,
    20,
    120,
    published("Sachs1980: fitted to its days at 15, 20 and 25 °C"),
  ),
] as const;
