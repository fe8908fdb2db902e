/** Screen 13. Names and words of the sums themselves come with them, from science, in English. */
export const reckoner = {
  title: "Reckoner",
  find: "Find a sum: dew point, litres, day length, frost…",
  noneFound: (wanted: string) => `No sum here answers to “${wanted}”.`,
  notFetched: "The sums could not be fetched. They come once and stay on this device after that.",
  fields: {
    air: "Air",
    water: "Water",
    sun: "Sun",
    units: "Units",
    chance: "Chance",
    light: "Light",
    medium: "Medium",
    feed: "Feed",
    growth: "Growth",
    fruit: "Fruit",
    pests: "Pests",
    shape: "Shape",
  } as Readonly<Record<string, string>>,
  units: (said: string) => `Units: ${said}`,
  metric: "metric",
  us: "US",
  takeFrom: "Take the numbers from",
  typed: "typed",
  putRight: "One value can’t be. There is no result until it is put right.",
  takeInstead: (what: string) => `Take ${what} from`,
  choose: "what stands above",
  usual: (said: string) => `left empty: ${said} is usual`,
  optionalUsual: (said: string) => `may stay empty; ${said} is usual`,
  usualIs: (said: string) => `usual: ${said} ○`,
  yes: "yes",
  no: "no",
  from: (source: string) => `From: ${source}`,
  copy: "Copy",
  copied: (said: string) => `copied ${said}`,
  notCopied: (said: string) => `This browser does not let the page copy. Write it down: ${said}`,
  use: "Use it",
  whereTo: "Where does it belong?",
  goesTo: (kind: string, what: string, said: string) => `${kind}, ${what}: ${said}`,
  range: (min: string | undefined, max: string | undefined, unit: string) =>
    min !== undefined && max !== undefined
      ? `from ${min} to ${max} ${unit}`.trim()
      : min !== undefined
        ? `${[min, unit].filter(Boolean).join(" ")} and more`
        : max !== undefined
          ? `up to ${max} ${unit}`.trim()
          : "",
  another: "Another sum",
  keep: "KEEP ON THE TAPE",
  onTape: (said: string) => `on the tape: ${said}`,
  tape: "Tape",
  fromTape: (title: string) => `tape, ${title}`,
  printTape: "Print",
  tearOff: "Tear it off",
  tornOff: "tore the tape off",
};
