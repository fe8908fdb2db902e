/** Works that the field `chance` rests on. */
export const sources = {
  Cody1969: {
    authors: "Cody WJ",
    year: 1969,
    title: "Rational Chebyshev approximations for the error function",
    place: "Mathematics of Computation 23",
    seen: "from memory",
  },
  Wichura1988: {
    authors: "Wichura MJ",
    year: 1988,
    title: "Algorithm AS 241: the percentage points of the normal distribution",
    place: "Applied Statistics 37",
    seen: "from memory",
  },
  Kalman1960: {
    authors: "Kalman RE",
    year: 1960,
    title: "A new approach to linear filtering and prediction problems",
    place: "Journal of Basic Engineering 82",
    seen: "from memory",
  },
  GneitingRaftery2007: {
    authors: "Gneiting T, Raftery AE",
    year: 2007,
    title: "Strictly proper scoring rules, prediction, and estimation",
    place: "Journal of the American Statistical Association 102",
    seen: "from memory",
  },
  BlackmanVigna2018: {
    authors: "Blackman D, Vigna S",
    year: 2018,
    title: "Scrambled linear pseudorandom number generators (xoshiro128**)",
    place: "ACM Transactions on Mathematical Software 47",
    seen: "from memory",
  },
  HyndmanFan1996: {
    authors: "Hyndman RJ, Fan Y",
    year: 1996,
    title: "Sample quantiles in statistical packages",
    place: "The American Statistician 50 (definition 7)",
    seen: "from memory",
  },
  Kunsch1989: {
    authors: "Künsch HR",
    year: 1989,
    title: "The jackknife and the bootstrap for general stationary observations",
    place: "Annals of Statistics 17",
    seen: "from memory",
  },
} as const;
