const plural = (count_n: number, one: string, many: string) =>
  count_n === 1 ? `1 ${one}` : `${count_n} ${many}`;

/** Writing an entry and putting one right. */
export const write = {
  title: "Write an entry",
  lastKinds: "The last ones",
  about: { plant: "Plants", batch: "Batches", bench: "Benches and air", supply: "Supplies" } as Readonly<
    Record<string, string>
  >,
  noSuchKind: "This book knows no entry of this name.",
  onWhat: "On what",
  values: "Values",
  when: "When",
  whens: { now: "now", "this morning": "this morning", yesterday: "yesterday", other: "other" },
  day: "Day",
  time: "Time",
  ahead: "This day is not whole, or still ahead.",
  numbers: "Numbers, as 127 128 130-133",
  findThing: "Find",
  takeThese: (count_n: number) => `take ${count_n}`,
  wholeBench: "A whole bench",
  benchOf: (name: string, count_n: number) => `${name}, all ${count_n}`,
  nothingToChoose: "Nothing of this kind is in the book yet.",
  moreByNumber: (count_n: number) => `${count_n} in all: type numbers to find the others.`,
  change: "change",
  unmet: "not met yet",
  otherKind: "Another kind",
  photos: (count_n: number) => (count_n === 0 ? "Photo" : plural(count_n, "photo", "photos")),
  keep: "KEEP",
  keepOn: (kind: string, count_n: number, subject: string) =>
    subject === "plant" ? `KEEP ${kind}, ${plural(count_n, "pot", "pots")}` : `KEEP ${kind}`,
  keepMissing: "SAY WHAT IS MISSING",
  keepBroken: "PUT THE NUMBER RIGHT",
  chooseFirst: {
    plant: "WHICH POT?",
    bench: "WHICH BENCH?",
    batch: "WHICH BATCH?",
    supply: "WHICH SUPPLY?",
  } as Readonly<Record<string, string>>,
  putRight: "PUT IT RIGHT",
  putRightTitle: (on: string) => `Put right: ${on}`,
  notFound: "This entry is not in the book of this phone.",
  moves: (number: string, title: string, before: string, after: string) =>
    `Moves ${number}’s ${title} from ${before} to ${after}.`,
};

/** Screen 4. */
export const log = {
  title: "Book",
  all: "all",
  me: "me",
  filters: "Show",
  number: "number",
  crafts: { watering: "water", feeding: "feed", growth: "growth", scouting: "pests" } as Readonly<
    Record<string, string>
  >,
  findADay: "Find a day",
  day: "Day",
  everyDay: "every day",
  export: "Take out",
  write: "WRITE AN ENTRY",
  empty: "The book is empty. The first entry is usually a plant.",
  noneHere: "Nothing is written that fits these words.",
  onlyHere: (count_n: number, oldest: string) => `only on this phone: ${count_n}, oldest ${oldest}`,
  by: (who: string) => `by ${who}`,
  putRightNow: (who: string) => `put right; first written by ${who}`,
  withdrawn: "withdrawn",
  request: "left as a request",
  photos: (count_n: number) => plural(count_n, "photo", "photos"),
  putRight: "Put it right",
  withdraw: "Withdraw",
  restore: "Take it back in",
  unreadable: "Make unreadable",
  unreadableSure: "Make it unreadable for good",
  unreadableSaid:
    "Its words go from every phone and from the server, and nothing brings them back. For what should never have been written.",
  unreadableDone: "The entry is unreadable now, here and wherever this book goes.",
  working: "What stands in it",
  older: "Older entries",
  written: "written",
  signed: "signed",
  kind: "kind",
  version: "earlier",
  took: (what: string) => `withdrawal: ${what}`,
  gave: (what: string) => `taken back in: ${what}`,
};

/** Taking entries out of the book and in. */
export const take = {
  title: "Take it all",
  said: "All entries as plain lines of text, readable without this program. One press, no reason asked.",
  whole: "The whole book (NDJSON)",
  table: "The log as a table (CSV)",
  print: "Print the year",
  printTitle: (year: string) => `Book of ${year}`,
  bring: "Bring a book in",
  bringSaid: "Lines from another copy. Nothing is written before KEEP; what is here already stays once.",
  choose: "Choose the file",
  preview: (entries_n: number, fresh_n: number) =>
    `${plural(entries_n, "entry", "entries")} in it, ${fresh_n} of them new to this phone.`,
  redacted: (count_n: number) =>
    `${plural(count_n, "line was", "lines were")} made unreadable by the grower and stay so.`,
  damaged: (line: number, message: string) => `line ${line}: ${message}`,
  damagedTitle: (count_n: number) => `${plural(count_n, "line", "lines")} can’t be read and will be left out`,
  files: (count_n: number) =>
    `It names ${plural(count_n, "file", "files")} that lie beside it. Choose them too:`,
  chooseFiles: "Choose the files",
  filesTaken: (count_n: number) => `${plural(count_n, "file", "files")} kept.`,
  fileUnknown: (name: string) => `${name} is named by nothing in this book.`,
  keep: (count_n: number) => `KEEP ${plural(count_n, "ENTRY", "ENTRIES")}`,
  kept: (count_n: number) => `${plural(count_n, "entry", "entries")} brought in`,
  done: (count_n: number) => `${plural(count_n, "entry", "entries")} taken out.`,
  back: "TO THE BOOK",
};
