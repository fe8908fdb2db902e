/** Works that the field `fruit` rests on. */
export const sources = {
  Wubs2009: {
    authors: "Wubs AM, Ma YT, Heuvelink E, Marcelis LFM",
    year: 2009,
    title:
      "Genetic differences in fruit-set patterns are determined by differences in fruit sink strength and a source to sink threshold for fruit set",
    place: "Annals of Botany 104; authors and volume from memory; table 3 opened",
    seen: "opened",
  },
  DSSAT48: {
    authors: "Hoogenboom G and others",
    year: 2024,
    title: "Decision Support System for Agrotechnology Transfer 4.8: bell pepper files of the CROPGRO model",
    place: "PRGRO048.SPE, .CUL and .ECO; FreshWt.for",
    seen: "opened",
  },
  SWATPlus: {
    authors: "Arnold JG and others",
    year: 2026,
    title: "SWAT+ plant parameters, rows pepr and pepp",
    place: "plants.plt; authors from memory",
    seen: "opened",
  },
  ReddyKakani2007: {
    authors: "Reddy KR, Kakani VG",
    year: 2007,
    title:
      "Screening Capsicum species of different origins for high temperature tolerance by in vitro pollen germination",
    place: "Scientia Horticulturae 112; title from memory",
    seen: "abstract",
  },
  RedHot: {
    authors: "Authors not shown",
    year: 2010,
    title: "Floral biology and pollination of Red Hot F1 hot pepper in the Philippines",
    place: "abstract; year uncertain",
    seen: "abstract",
  },
  EricksonMarkhart2002: {
    authors: "Erickson AN, Markhart AH",
    year: 2002,
    title: "Flower developmental stage and organ sensitivity of bell pepper to elevated temperature",
    place: "Plant, Cell and Environment 25",
    seen: "abstract",
  },
  Pressman: {
    authors: "Pressman E and others",
    year: 1998,
    title: "Pollen and fruit of sweet pepper at low night temperature",
    place: "title and year from memory",
    seen: "abstract",
  },
  RoldanSerrano2006: {
    authors: "Roldán Serrano A, Guerra-Sanz JM",
    year: 2006,
    title: "Quality fruit improvement in sweet pepper culture by bumblebee pollination",
    place: "Scientia Horticulturae 110; title from memory",
    seen: "abstract",
  },
  Homma2026: {
    authors: "Homma M, Isozaki M, Ahn DH",
    year: 2026,
    title:
      "Growth of sweet pepper fruit: volume, water and dry mass in windows of thermal time (title not shown)",
    place: "The Horticulture Journal 95",
    seen: "abstract",
  },
  Molinari: {
    authors: "Molinari AF, de Castro LR, Antoniali S, Pornchaloempong P, Fox AJ, Sargent SA, Lamb EM",
    year: 1999,
    title: "The potential for bell pepper harvest prior to full color development",
    place: "Proceedings of the Florida State Horticultural Society 112; authors from memory",
    seen: "abstract",
  },
  AlOthman2011: {
    authors: "Al Othman ZA, Ahmed YBH, Habila MA, Ghafar AA",
    year: 2011,
    title:
      "Determination of capsaicin and dihydrocapsaicin in Capsicum fruit samples using high performance liquid chromatography",
    place: "Molecules 16",
    seen: "abstract",
  },
  AOAC995: {
    authors: "Parrish M",
    year: 1996,
    title:
      "Liquid chromatographic method for determining capsaicinoids in capsicums and their extractives: AOAC 995.03",
    place: "Journal of AOAC International 79; weights from memory",
    seen: "quoted by an opened document",
  },
  KoreanChilli2020: {
    authors: "Authors not noted",
    year: 2020,
    title: "Capsaicinoids of Korean chilli peppers, dry and fresh basis, table 1",
    place: "Food Science and Nutrition; PMC7455983",
    seen: "opened",
  },
  HeatScale: {
    authors: "Authors not shown",
    year: 2020,
    title: "Chile heat scale 0 to 10",
    place: "page of a medical reference; year uncertain",
    seen: "opened",
  },
  IBPGR1983: {
    authors: "International Board for Plant Genetic Resources",
    year: 1983,
    title: "Genetic resources of Capsicum, figure 3",
    place: "as reproduced in a garden FAQ",
    seen: "opened",
  },
  GenetMolRes2018: {
    authors: "Authors not shown",
    year: 2018,
    title: "Estimate of natural cross-pollination rate of Capsicum annuum",
    place: "Genetics and Molecular Research 17(1), gmr16039887",
    seen: "abstract",
  },
  McCormack: {
    authors: "McCormack JH",
    year: 2005,
    title: "Isolation distances: principles and practices for home gardeners and seed growers",
    place: "quotes Odland and Porter 1941; year from memory",
    seen: "opened",
  },
} as const;
