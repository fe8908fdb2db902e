/** The desk: a row a craft and the pages that belong to none. */
export const desk = {
  title: "Desk",
  crafts: "Crafts and desks",
  craftNames: { watering: "Watering", lighting: "Lighting", growth: "Growth", trimming: "Trimming" } as Readonly<
    Record<string, string>
  >,
  waits: (due_n: number) =>
    due_n === 0 ? "nothing waits" : due_n === 1 ? "1 task waits" : `${due_n} tasks wait`,
  wrong: "What is wrong?",
  benches: "Benches and air",
  away: "Away",
  supplies: "Supplies",
  reckoner: "Reckoner",
  settings: "Settings",
  toTheRound: "TO THE ROUND",
};

/** Benches, their air and the light written for them. */
export const benches = {
  title: "Benches",
  empty: "No bench yet. A windowsill is a bench.",
  missing: (series: string) => `Waiting for the file of ${series}: what rests on it is a guess until then.`,
  places: { sill: "windowsill", shelf: "shelf", table: "table", bed: "bed" } as Readonly<
    Record<string, string>
  >,
  indoors: "indoors",
  outdoors: "outdoors",
  quarantine: "kept apart",
  airToday: (day: string, night: string) => `${day} by day, ${night} by night.`,
  lightToday: (dli: string) => `Light ${dli} mol/m² a day.`,
  plantsOn: (plants_n: number, spots_n: number) => `${plants_n} of ${spots_n} spots taken.`,
  toPlants: "Plants",
  newBench: "NEW BENCH",
  noSuchBench: "This bench is not in the book of this phone.",
  moveHow: "Press a pot, then the spot it moves to. The line over the pots is today’s light, in mol/m².",
  spotSaid: (spot: string, numbers: string, light: string) =>
    `Spot ${spot}, ${numbers === "" ? "free" : `pot ${numbers}`}: ${light}`,
  otherBench: "Another bench…",
  changeBench: "Change…",
  changeTitle: (name: string) => `Change ${name}`,
  moveWhere: (number: string) => `${number} moves. Where to?`,
  dli: (said: string) => `${said} mol/m²`,
  setAir: "Air…",
  weigh: "Weigh run",
  labels: "Labels",
  takeReading: "WRITE THE LIGHT",
  reckonedWith: "Reckoned with",
  air: "air",
  humidity: "humidity",
  light: "light a day",
  window: "window",
  faces: (degrees: number) => `faces ${degrees}°`,
  care: "Care",
  lampCare: "Lamps and water on one shelf: protected outlets, drip loops, and your local code.",
  newBenchTitle: "New bench",
  whatIsIt: "What is it?",
  howManySpots: "How many spots",
  where: "Where",
  windowFaces: "Its window faces",
  keepBench: "KEEP THIS BENCH",
  keepBenchShut: "GIVE IT A NAME",
};

export const away = {
  title: "Away",
  from: "From",
  to: "Back on",
  refused: (reason: string) => `This can’t be planned: ${reason}.`,
  others: (count_n: number) => (count_n === 1 ? "1 other will last." : `${count_n} others will last.`),
  wontLast: "What will not last",
  sitter: "For the sitter",
  back: "On the day of return",
  print: "Print the sitter’s sheet",
  keep: "KEEP THESE DATES",
};

export const supplies = {
  title: "Supplies",
  care: "Care",
  labelCare: "The label of a feed or treatment is the law. Lock it up, away from children and food.",
  empty: "Nothing on hand is written yet. Price and expiry can stand with it.",
  bought: "BOUGHT SOMETHING",
  what: {
    medium: "medium",
    pots: "pots",
    feed: "feed",
    treatment: "treatment",
    labels: "labels",
    other: "other",
  } as Readonly<Record<string, string>>,
  lot: (lot: string) => `lot ${lot}`,
  expired: (date: string) => `too old since ${date}`,
  goodUntil: (date: string) => `good until ${date}`,
  counted: (day: string) => `counted ${day}`,
  used: "Used",
  count: "Counted",
  thrown: "Thrown away",
};
