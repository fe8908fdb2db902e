import type { Citation } from "../citations.ts";

const work = (
  authors: string,
  year: number,
  title: string,
  place: string,
  seen: Citation["seen"],
): Citation => ({ authors, year, title, place, seen });

/** Works that the field `feed` rests on. */
export const sources = {
  IUPAC2013: work(
    "Meija J and others",
    2016,
    "Atomic weights of the elements 2013",
    "Pure and Applied Chemistry 88, abridged values",
    "from memory",
  ),
  UMassFeed: work(
    "UMass Extension Greenhouse Crops and Floriculture Program",
    2015,
    "Fertilizer calculations for greenhouse crops; fact sheets on alkalinity and on soluble salts",
    "University of Massachusetts Amherst; year uncertain",
    "opened",
  ),
  MattsonPractice: work(
    "Mattson N",
    2014,
    "Fertilizer calculations and practice questions",
    "Cornell University, hand-out; year uncertain",
    "opened",
  ),
  Appelo2010: work(
    "Appelo CAJ",
    2010,
    "Specific conductance: how to calculate, to use, and the pitfalls",
    "method page; exponent of the activity from memory",
    "opened",
  ),
  PHREEQC: work(
    "Parkhurst DL, Appelo CAJ",
    2013,
    "Description of input and examples for PHREEQC version 3",
    "US Geological Survey Techniques and Methods 6-A43, file phreeqc.dat",
    "opened",
  ),
  Sonneveld1999: work(
    "Sonneveld C, Voogt W, Spaans L",
    1999,
    "A universal algorithm for calculation of nutrient solutions",
    "Acta Horticulturae 481",
    "from memory",
  ),
  Pierre1933: work(
    "Pierre WH",
    1933,
    "Determination of equivalent acidity and basicity of fertilizers",
    "Industrial and Engineering Chemistry, Analytical Edition 5",
    "from memory",
  ),
  Argo1997: work(
    "Argo WR, Biernbaum JA, Warncke DD",
    1997,
    "Geographical characterization of greenhouse irrigation water",
    "HortTechnology 7: 49; 4306 samples, medians",
    "opened",
  ),
  Maas1990: work(
    "Maas EV",
    1990,
    "Crop salt tolerance, in Agricultural salinity assessment and management",
    "American Society of Civil Engineers; threshold and slope of pepper",
    "opened",
  ),
  Steppuhn2005: work(
    "Steppuhn H, van Genuchten MT, Grieve CM",
    2005,
    "Root-zone salinity: selecting a product-yield index and response function for crop tolerance",
    "Crop Science 45",
    "opened",
  ),
  BarTal2001: work(
    "Bar-Tal A, Aloni B, Karni L, Rosenberg R",
    2001,
    "Nitrogen nutrition of greenhouse pepper",
    "HortScience 36",
    "abstract",
  ),
  Nackley2023: work(
    "Nackley LL, McCauley D, Scagel CF",
    2023,
    "Release of controlled-release fertilizer in heat",
    "HortScience 58: 1459; title shortened",
    "abstract",
  ),
  UsdaFood: work(
    "United States Department of Agriculture",
    2019,
    "Nutrient database: peppers, hot chili, red, raw",
    "as copied on food-fact pages",
    "opened",
  ),
  StandardMethods: work(
    "American Public Health Association",
    1998,
    "Standard methods for the examination of water and wastewater, 20th edition",
    "method 2510, conductivity factors",
    "quoted by an opened document",
  ),
  FieldPepper: work(
    "Authors not shown",
    2000,
    "Uptake of nutrients by field-grown bell pepper at 98 days",
    "field study; year uncertain",
    "opened",
  ),
} as const satisfies Readonly<Record<string, Citation>>;
