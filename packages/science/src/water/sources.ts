import { citations } from "../citations.ts";

/** Works that the field `water` rests on. */
export const sources = {
  FAO56: citations.FAO56,
  ASCE2005: citations.ASCE2005,
  CampbellNorman1998: citations.CampbellNorman1998,
  HargreavesSamani1985: {
    authors: "Hargreaves GH, Samani ZA",
    year: 1985,
    title: "Reference crop evapotranspiration from temperature",
    place: "Applied Engineering in Agriculture 1; as FAO-56 eq. 52",
    seen: "quoted by an opened document",
  },
  ZotarelliAE459: {
    authors: "Zotarelli L, Dukes MD, Romero CC, Migliaccio KW, Morgan KT",
    year: 2010,
    title: "Step by step calculation of the Penman-Monteith evapotranspiration (FAO-56 method)",
    place: "UF/IFAS AE459",
    seen: "from memory",
  },
  Graamans2017: {
    authors: "Graamans L, van den Dobbelsteen A, Meinen E, Stanghellini C",
    year: 2017,
    title: "Plant factories: crop transpiration and energy balance",
    place: "Agricultural Systems 153",
    seen: "from memory",
  },
  Baille1994: {
    authors: "Baille M, Baille A, Laury JC",
    year: 1994,
    title:
      "A simplified model for predicting evapotranspiration rate of nine ornamental species vs. climate factors and leaf area",
    place: "Scientia Horticulturae 59",
    seen: "from memory",
  },
  Fernandez2010: {
    authors: "Fernández MD, Bonachela S, Orgaz F, Thompson R, López JC, Granados MR, Gallardo M, Fereres E",
    year: 2010,
    title:
      "Measurement and estimation of plastic greenhouse reference evapotranspiration in a Mediterranean climate",
    place: "Irrigation Science 28",
    seen: "abstract",
  },
  Beeson2010: {
    authors: "Beeson RC Jr",
    year: 2010,
    title:
      "Modeling actual evapotranspiration of Viburnum odoratissimum during production from rooted cuttings to market size plants in 11.4-L containers",
    place: "HortScience 45",
    seen: "abstract",
  },
  Passioura2006: {
    authors: "Passioura JB",
    year: 2006,
    title: "The perils of pot experiments",
    place: "Functional Plant Biology 33",
    seen: "quoted by an opened document",
  },
  FAO29: {
    authors: "Ayers RS, Westcot DW",
    year: 1985,
    title: "Water quality for agriculture",
    place: "FAO Irrigation and Drainage Paper 29",
    seen: "from memory",
  },
  ENH1268: {
    authors: "Million J, Yeager T",
    year: 2016,
    title: "Testing and managing leaching fraction in container nurseries",
    place: "UF/IFAS ENH1268",
    seen: "opened",
  },
  Caird2007: {
    authors: "Caird MA, Richards JH, Hsiao TC",
    year: 2007,
    title: "Significant transpirational water loss occurs throughout the night in field-grown tomato",
    place: "Functional Plant Biology 34",
    seen: "abstract",
  },
} as const;
