/** Who holds this device, asked once; and the printed sheets. */
export const first = {
  title: "Who holds this phone?",
  said: "No account, no password. It only signs the entries.",
  grower: "THE GROWER",
  growerSaid: "owns the book, decides what is cut and sold",
  helper: "The helper",
  helperSaid: "walks the round; what only the grower decides is kept as a request",
  card: "Name on the card",
  cardSaid: "May stay empty. It stays on this phone and never enters the book.",
  newBook: "A new book begins on this phone.",
  foundPeople: "The book on the server is here, with its people.",
};

export const print = {
  roundTitle: "Round",
  asOf: (said: string) => `Numbers as of ${said}`,
  code: "Sheet",
  number: "No.",
  task: "Task",
  less: "less",
  more: "more",
  not: "not",
  printIt: "PRINT",
  backTo: "Back",
  typeBackTitle: "Type the sheet back",
  typeBackSaid: "All are taken as done. Tap the exceptions, then keep.",
  noSheet: "This code is no sheet of ours. Look again at the eight digits.",
  nothing: "On this sheet nothing was to do.",
  keepSheet: (count_n: number) => (count_n === 1 ? "KEEP 1 ENTRY" : `KEEP ${count_n} ENTRIES`),
  weights: { metric: { unit: "g", name: "grams" }, us: { unit: "oz", name: "ounces" } },
  labelsTitle: "Labels",
  benchLabels: "Bench labels",
  pots: (count_n: number) => (count_n === 1 ? "1 pot" : `${count_n} pots`),
  plantCard: "Plant card",
  care: "Care",
  potLine: (weight: string) => `pencil, wet hands: mark the box, write ${weight}`,
  typedBack: (count_n: number) => (count_n === 1 ? "1 row of the sheet" : `${count_n} rows of the sheet`),
  alreadyBack: (count_n: number) =>
    count_n === 1
      ? "1 row of this sheet is in the book already."
      : `${count_n} rows of this sheet are in the book already.`,
};
