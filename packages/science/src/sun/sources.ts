import { citations } from "../citations.ts";

/** Works that the field `sun` rests on. */
export const sources = {
  FAO56: citations.FAO56,
  ASCE2005: citations.ASCE2005,
  ThimijanHeins1983: {
    authors: "Thimijan RW, Heins RD",
    year: 1983,
    title: "Photometric, radiometric and quantum light units of measure",
    place: "HortScience 18",
    seen: "from memory",
  },
  Meeus1998: {
    authors: "Meeus J",
    year: 1998,
    title: "Astronomical algorithms, 2nd edition",
    place: "Willmann-Bell, chapters 7, 13, 15, 22, 25, 28",
    seen: "quoted by an opened document",
  },
  NoaaSolar: {
    authors: "NOAA Global Monitoring Laboratory",
    year: 2010,
    title: "Solar calculator: calculation details",
    place: "low-precision equations after Meeus, with refraction for standard air",
    seen: "quoted by an opened document",
  },
  DuffieBeckman2013: {
    authors: "Duffie JA, Beckman WA",
    year: 2013,
    title: "Solar engineering of thermal processes, 4th edition",
    place: "Wiley, chapter 1",
    seen: "quoted by an opened document",
  },
  Haurwitz1945: {
    authors: "Haurwitz B",
    year: 1945,
    title: "Insolation in relation to cloudiness and cloud density",
    place: "Journal of Meteorology 2 and 3 (1946)",
    seen: "quoted by an opened document",
  },
  Spencer1971: {
    authors: "Spencer JW",
    year: 1971,
    title: "Fourier series representation of the position of the sun",
    place: "Search 2",
    seen: "quoted by an opened document",
  },
  Erbs1982: {
    authors: "Erbs DG, Klein SA, Duffie JA",
    year: 1982,
    title:
      "Estimation of the diffuse radiation fraction for hourly, daily and monthly-average global radiation",
    place: "Solar Energy 28",
    seen: "quoted by an opened document",
  },
  CollaresPereiraRabl1979: {
    authors: "Collares-Pereira M, Rabl A",
    year: 1979,
    title:
      "The average distribution of solar radiation: correlations between diffuse and hemispherical and between daily and hourly insolation values",
    place: "Solar Energy 22",
    seen: "from memory",
  },
  LiuJordan1960: {
    authors: "Liu BYH, Jordan RC",
    year: 1960,
    title:
      "The interrelationship and characteristic distribution of direct, diffuse and total solar radiation",
    place: "Solar Energy 4",
    seen: "from memory",
  },
  Bendt1981: {
    authors: "Bendt P, Collares-Pereira M, Rabl A",
    year: 1981,
    title: "The frequency distribution of daily insolation values",
    place: "Solar Energy 27; greatest clearness after Hollands KGT, Huget RG, Solar Energy 30 (1983)",
    seen: "from memory",
  },
} as const;
