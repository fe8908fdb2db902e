const plural = (count_n: number, one: string, many: string) =>
  count_n === 1 ? `1 ${one}` : `${count_n} ${many}`;

/** Frame, save mark, states that all screens share, keys that all screens have. */
export const shell = {
  round: "Round",
  plants: "Plants",
  desk: "Desk",
  book: "Book",
  number: "Number",
  placesToGo: "Places to go",
  allOnServer: "all on server",
  onPhone: (count_n: number) => `${count_n} on phone`,
  reading: "reading",
  saveMark: (said: string) => `Save mark: ${said}`,
  noConnection: "No connection. Entries are kept on this phone and go home by themselves.",
  onServerToo: "Every entry of this phone is on the server too.",
  notYetHome: (count_n: number) =>
    `${plural(count_n, "entry is", "entries are")} kept on this phone and not yet on the server.`,
  unpaired: "The server does not know this phone. Let it in again; nothing here is lost.",
  letInAgain: "Let it in again",
  waitsForGrower: (count_n: number) =>
    `${plural(count_n, "entry waits", "entries wait")} on the server for the grower’s word.`,
  sendNow: "Send now",
  readingBook: (read: string, of: string) => `Reading the book: ${read} of ${of} entries.`,
  storageRefused: "This phone may throw entries away when it is full.",
  allowKeeping: "Allow keeping",
  diskFull: (entry: string) =>
    `This phone is full. The last entry is NOT kept: ${entry}. Write it on paper, then free some room.`,
  stumbled: (count_n: number) =>
    count_n === 0
      ? "This page stumbled. Every entry is kept."
      : `This page stumbled. Your ${plural(count_n, "entry is", "entries are")} kept.`,
  openAgain: "Open again",
  copyReport: "Copy report",
  newVersion: "A newer Sillwood is here. It waits until this round is done.",
  changeNow: "Change now",
  clockFast: (minutes: string) => `This phone’s clock is ${minutes} fast. Times are put right.`,
  clockSlow: (minutes: string) => `This phone’s clock is ${minutes} slow. Times are put right.`,
  notRead: "This could not be reckoned. The book itself is unharmed.",
  undo: "Undo",
  wrote: (said: string) => `wrote ${said}`,
  tookBack: (said: string) => `took back ${said}`,
  broughtBack: (said: string) => `wrote again ${said}`,
  notHereYet: {
    grower: (since: string) => `The grower’s entries since ${since} are not here yet.`,
    helper: (since: string) => `The helper’s entries since ${since} are not here yet.`,
    viewer: (since: string) => `The viewer’s entries since ${since} are not here yet.`,
  },
  close: "Close",
  nothingHere: "There is no page of this name.",
  toTheRound: "To the round",
  sunAsk: "Sun?",
  sunAskSaid: "Change to the paper for bright light",
  keys: "Keys",
  keysTitle: "Keys of the keyboard",
  keyList: [
    ["Enter", "main key"],
    ["Esc", "close"],
    ["U", "undo what was written last"],
    ["W", "working of the first number"],
    ["/", "find a plant"],
    ["0 to 9", "number of a pot"],
    ["[ and ]", "plant before, plant after"],
    ["Arrows", "pot before, pot after"],
    ["?", "this list"],
  ] as readonly (readonly [string, string])[],
  measured: "measured",
  learned: "learned",
  assumed: "assumed",
};
