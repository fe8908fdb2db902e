import { assume, ours, published, remembered } from "./assume.ts";

const base = (species: string): string =>
  `${species}: temperature at and below which development stands still`;
const optimum = (species: string): string => `${species}: temperature from which development is fastest`;

const middle = ours("our assumption; published values run from 5.5 to 18 °C, see DSSAT48 and Dickson2024");
const between = ours("our assumption between 9 °C (Dickson2024) and 16.8 °C (BiquinhoPlastochron)");
const model = published("DSSAT48: upper optimum of pepper, vegetative and reproductive rows");

/** Cardinal temperatures of development by species group; each may be set for a cultivar. */
export const temperatureAssumptions = [
  assume("baseAnnuum_C", base("annuum"), 10, 0, 19, middle),
  assume("baseFrutescens_C", base("frutescens"), 10, 0, 19, middle),
  assume("baseBaccatum_C", base("baccatum"), 10, 0, 19, middle),
  assume("baseChinense_C", base("chinense"), 13, 0, 19, between),
  assume("basePubescens_C", base("pubescens"), 8, 0, 19, remembered),
  assume("optimumAnnuum_C", optimum("annuum"), 28, 21, 34, model),
  assume("optimumFrutescens_C", optimum("frutescens"), 28, 21, 34, ours("our assumption; as annuum")),
  assume("optimumBaccatum_C", optimum("baccatum"), 28, 21, 34, ours("our assumption; as annuum")),
  assume("optimumChinense_C", optimum("chinense"), 28, 21, 34, ours("our assumption; as annuum")),
  assume("optimumPubescens_C", optimum("pubescens"), 24, 21, 34, remembered),
  assume("plateau_C", "how far above the optimum development stays fastest", 7, 0, 12, ours()),
  assume(
    "ceiling_C",
    "temperature at which development stops again",
    55,
    48,
    58,
    published("DSSAT48: maximum of the pepper rows"),
  ),
] as const;
