import { PageError } from "@sillwood/bench/crafts";
import type { LightPage } from "@sillwood/bench/crafts/lighting";
import { craftPage } from "@sillwood/bench/pages";
import { type Reading, readBook } from "../book/session.ts";
import { type Command, textOption } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { lightShape } from "../shapes/light-shapes.ts";
import { workingShape } from "../shapes/page-shapes.ts";
import { lightText } from "../text/light-text.ts";
import { lightWorkings } from "../text/light-workings.ts";
import { widthFor } from "../text/width.ts";
import { workingText } from "../text/working-text.ts";
import { findThing } from "../typed/find-thing.ts";

/** `--month 1` to `--month 12`. */
function monthOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const month = /^\d{1,2}$/.test(text) ? Number(text) : Number.NaN;
  if (!(month >= 1 && month <= 12))
    throw new UsageError(`--month is ${JSON.stringify(text.slice(0, 20))}; expected 1 to 12.`);
  return month;
}

/** Benches and their light: what each spot gets and wants, when it stops being enough, lamp hours, better seats. */
export const light: Command = {
  verb: "light",
  what: "light of benches and spots, when it stops being enough, lamp hours, better seats",
  usage: ["[BENCH] [--month N] [--working NAME]"],
  options: {
    month: { type: "string", value: "N", what: "light of that month, 1 to 12; of this month when left out" },
    working: { type: "string", value: "NAME", what: "how numbers came about, in full; all for every one" },
  },
  help: [
    "Light is mol/m² a day on a level leaf. A range means: 8 times in 10 it falls into it. Readings",
    "are entries: light.pair for a spot read inside and outside, light.lamp under a lamp; what is",
    "there is bench.window, bench.lamp, bench.timer, spot.stands. Nothing is written here.",
  ],
  example: [
    "sillwood light",
    'sillwood light "South sill" --month 1',
    'sillwood enter light.pair S3 inside_lux=1400 outside_lux=9000 sky="evenly grey"',
  ],
  async run(call) {
    const [word, more] = call.words;
    if (more !== undefined)
      throw new UsageError(
        "light is about one bench, or all: sillwood light. Put a name of two words in quotes.",
      );
    const month = monthOf(textOption(call, "month"));
    const reading = await readBook(call);
    const page = await pageOf(reading, word, month);
    const wanted = textOption(call, "working");
    if (wanted !== undefined) {
      const workings = lightWorkings(page, wanted);
      if (workings.length === 0)
        throw dataError(
          "working",
          `light has no working ${JSON.stringify(wanted)}; expected one of ${titlesOf(page)}`,
          wanted,
        );
      return {
        json: {
          ...askedShape(reading),
          workings: workings.map(({ of, working }) => ({ of, ...workingShape(working) })),
        },
        text: workings
          .map(({ of, working }) => `${of}\n${workingText(working, reading.desk, widthFor(call))}`)
          .join("\n\n"),
      };
    }
    return {
      json: { ...askedShape(reading), ...lightShape(page) },
      text: lightText(page, reading.desk, widthFor(call)),
    };
  },
};

const titlesOf = (page: LightPage): string =>
  [...new Set(lightWorkings(page, "all").map(({ working }) => working.title))].join(", ");

async function pageOf(
  { desk }: Reading,
  word: string | undefined,
  month: number | undefined,
): Promise<LightPage> {
  const found = word === undefined ? undefined : findThing(desk, "bench", word);
  if (found && "wrong" in found) throw dataError("bench", found.wrong, word ?? "");
  try {
    const ask = { ...(found ? { bench: found.id } : {}), ...(month === undefined ? {} : { month }) };
    return (await craftPage(desk, "lighting", ask)) as LightPage;
  } catch (error) {
    if (error instanceof PageError) throw dataError("bench", error.message, word ?? "");
    throw error;
  }
}
