/** Works that the field `growth` rests on. */
export const sources = {
  Zalom1983: {
    authors: "Zalom FG, Goodell PB, Wilson LT, Barnett WW, Bentley WJ",
    year: 1983,
    title: "Degree-days: the calculation and use of heat units in pest management",
    place: "University of California DANR Leaflet 21373",
    seen: "quoted by an opened document",
  },
  McMasterWilhelm1997: {
    authors: "McMaster GS, Wilhelm WW",
    year: 1997,
    title: "Growing degree-days: one equation, two interpretations",
    place: "Agricultural and Forest Meteorology 87",
    seen: "quoted by an opened document",
  },
  MetEireann: {
    authors: "Met Éireann",
    year: 2000,
    title: "Degree days above and below a base temperature, cases I to IV",
    place: "climate pages of the Irish meteorological service; year not shown, taken as 2000",
    seen: "opened",
  },
  DSSAT48: {
    authors: "Hoogenboom G and others",
    year: 2024,
    title: "Decision Support System for Agrotechnology Transfer 4.8: bell pepper files of the CROPGRO model",
    place: "PRGRO048.SPE, .CUL and .ECO",
    seen: "opened",
  },
  Dickson2024: {
    authors: "Dickson RW, Padhye S, Machesney LM, Tebow J",
    year: 2024,
    title:
      "Quantifying temperature effects on plant development rates and quality of compact container-grown pepper",
    place: "HortScience 59",
    seen: "abstract",
  },
  Dickson2025: {
    authors: "Dickson RW and others",
    year: 2025,
    title:
      "Temperature effects on plant development rate and quality of compact container-grown cucumber and hot pepper",
    place: "HortTechnology 35",
    seen: "abstract",
  },
  BiquinhoPlastochron: {
    authors: "Authors not shown",
    year: 2019,
    title:
      "Base temperature and plastochron are influenced by the development phase in biquinho pepper cultivars",
    place: "abstract on a reference page; journal not shown, year uncertain",
    seen: "abstract",
  },
  Knott1997: {
    authors: "Harrington JF, Minges PA; reprinted by Maynard DN, Hochmuth GJ",
    year: 1997,
    title: "Vegetable seed germination (1954), in Knott's handbook for vegetable growers, 4th edition",
    place: "John Wiley & Sons; days to emergence and percentage of normal seedlings, row pepper",
    seen: "quoted by an opened document",
  },
  Sachs1980: {
    authors: "Sachs M, Cantliffe DJ, Watkins JT",
    year: 1980,
    title: "Germination of pepper seed at low temperatures",
    place: "Proceedings of the Florida State Horticultural Society 93; results opened, title from memory",
    seen: "opened",
  },
  Homma2022: {
    authors: "Homma M, Watabe T, Ahn DH, Higashide T",
    year: 2022,
    title: "Fruit set of sweet pepper and the balance of source and sink (title not shown)",
    place: "Journal of the American Society for Horticultural Science 147",
    seen: "abstract",
  },
  Salau2008: {
    authors: "Salau AW, Olasantan FO, Oloriade GA",
    year: 2008,
    title: "Rapid leaf area estimation in Capsicum (Capsicum spp)",
    place: "Nigerian Journal of Horticultural Science; year from memory",
    seen: "abstract",
  },
  Feller1995: {
    authors:
      "Feller C, Bleiholder H, Buhr L, Hack H, Hess M, Klose R, Meier U, Stauss R, van den Boom T, Weber E",
    year: 1995,
    title: "Phänologische Entwicklungsstadien von Gemüsepflanzen: II. Fruchtgemüse und Hülsenfrüchte",
    place:
      "Nachrichtenblatt des Deutschen Pflanzenschutzdienstes 47; solanaceous fruit, also in the BBCH monograph (Meier 2001)",
    seen: "quoted by an opened document",
  },
} as const;
