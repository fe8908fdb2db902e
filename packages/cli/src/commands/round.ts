import { theRound } from "@sillwood/bench/round";
import { keepForecasts } from "../book/keep-forecasts.ts";
import { readBook } from "../book/session.ts";
import { type Command, textOption } from "../command.ts";
import { UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { roundShape } from "../shapes/page-shapes.ts";
import { roundText } from "../text/round-text.ts";
import { sheetText } from "../text/sheet-text.ts";
import { widthFor } from "../text/width.ts";
import { readNumber } from "../typed/read-number.ts";

const MOST_min = 1440;

/** `--minutes 30`, `--minutes 1h`. */
function minutesOf(text: string | undefined): number | undefined {
  if (text === undefined || text === "all") return undefined;
  const read = readNumber(text, "min", "own");
  if ("wrong" in read || !(read.value >= 1 && read.value <= MOST_min))
    throw new UsageError(`--minutes is ${JSON.stringify(text)}; expected 1 to ${MOST_min} min, or all.`);
  return read.value;
}

/** Today's work in walking order. */
export const round: Command = {
  verb: "round",
  what: "today's work in walking order, bench by bench",
  usage: ["[--minutes N] [--other-end] [--print]"],
  options: {
    minutes: { type: "string", value: "N", what: "minutes there are; what must be done is always in" },
    "other-end": { type: "boolean", what: "walk every bench from its other end" },
    print: { type: "boolean", what: "the sheet to take along, with boxes and a grams column" },
  },
  help: [
    "What does not fit the minutes is listed with its own latest date. The first round of a day also",
    "keeps the day's forecasts in the book, so that they can be judged; with --at or --known it does not.",
  ],
  example: ["sillwood round --minutes 30"],
  async run(call) {
    if (call.words.length > 0)
      throw new UsageError(
        `round takes no ${JSON.stringify(call.words[0])}; one plant: sillwood show ${call.words[0]}`,
      );
    const minutes = minutesOf(textOption(call, "minutes"));
    const reading = await readBook(call);
    const page = theRound(reading.desk, {
      ...(minutes === undefined ? {} : { minutes }),
      otherEnd: call.options["other-end"] === true,
    });
    const json = { ...askedShape(reading), ...roundShape(page, reading.calendar) };
    const text =
      call.options["print"] === true
        ? sheetText(page, reading.desk)
        : roundText(page, reading.desk, widthFor(call));
    call.ready(json, text);
    await keepForecasts(call, reading);
    return { json, text, shown: true };
  },
};
