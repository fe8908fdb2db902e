/** Works that the field `light` rests on. */
export const sources = {
  DuffieBeckman2013: {
    authors: "Duffie JA, Beckman WA",
    year: 2013,
    title: "Solar engineering of thermal processes, 4th edition",
    place: "Wiley, chapter 5",
    seen: "from memory",
  },
  LbnlGlazing: {
    authors: "Lawrence Berkeley National Laboratory",
    year: 2020,
    title: "International glazing database, spectra of samples 102 and 103",
    place: "tables of an open-source window program",
    seen: "opened",
  },
  DeSoto2006: {
    authors: "De Soto W, Klein SA, Beckman WA",
    year: 2006,
    title: "Improvement and validation of a model for photovoltaic array performance",
    place: "Solar Energy 80",
    seen: "quoted by an opened document",
  },
  HowellCatalog: {
    authors: "Howell JR",
    year: 2010,
    title: "A catalog of radiation heat transfer configuration factors",
    place: "factors B-3 and B-4",
    seen: "quoted by an opened document",
  },
  MoonSpencer1942: {
    authors: "Moon P, Spencer DE",
    year: 1942,
    title: "Illumination from a nonuniform sky",
    place: "Illuminating Engineering 37",
    seen: "from memory",
  },
  CollaresPereiraRabl1979: {
    authors: "Collares-Pereira M, Rabl A",
    year: 1979,
    title:
      "The average distribution of solar radiation: correlations between diffuse and hemispherical and between daily and hourly insolation values",
    place: "Solar Energy 22",
    seen: "from memory",
  },
  Erbs1982: {
    authors: "Erbs DG, Klein SA, Duffie JA",
    year: 1982,
    title:
      "Estimation of the diffuse radiation fraction for hourly, daily and monthly-average global radiation",
    place: "Solar Energy 28",
    seen: "quoted by an opened document",
  },
  ThimijanHeins1983: {
    authors: "Thimijan RW, Heins RD",
    year: 1983,
    title: "Photometric, radiometric and quantum light units of measure",
    place: "HortScience 18, Table 3",
    seen: "quoted by an opened document",
  },
  FaustLogan2018: {
    authors: "Faust JE, Logan J",
    year: 2018,
    title: "Daily light integral: a research review and high-resolution maps of the United States",
    place: "HortScience 53",
    seen: "abstract",
  },
  InverseSquare: {
    authors: "Lambert JH",
    year: 1760,
    title: "Photometria: inverse square and cosine laws; the rule of five in any text of photometry",
    place: "as in an opened exercise",
    seen: "quoted by an opened document",
  },
  Shepard1968: {
    authors: "Shepard D",
    year: 1968,
    title: "A two-dimensional interpolation function for irregularly-spaced data",
    place: "Proceedings of the 23rd ACM National Conference",
    seen: "from memory",
  },
  NelsonBugbee2014: {
    authors: "Nelson JA, Bugbee B",
    year: 2014,
    title:
      "Economic analysis of greenhouse lighting: light emitting diodes vs. high intensity discharge fixtures",
    place: "PLoS ONE 9(6) e99010",
    seen: "abstract",
  },
  MonsiSaeki1953: {
    authors: "Monsi M, Saeki T",
    year: 1953,
    title: "Über den Lichtfaktor in den Pflanzengesellschaften und seine Bedeutung für die Stoffproduktion",
    place: "Japanese Journal of Botany 14",
    seen: "from memory",
  },
  Runkle2018: {
    authors: "Runkle E",
    year: 2018,
    title: "Efficacy of greenhouse lamps",
    place: "a trade article",
    seen: "opened",
  },
} as const;
