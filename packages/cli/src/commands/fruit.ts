import { PageError } from "@sillwood/bench/crafts";
import type { FruitPage } from "@sillwood/bench/crafts/fruiting";
import { craftPage } from "@sillwood/bench/pages";
import { type Reading, readBook } from "../book/session.ts";
import { type Command, textOption } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { fruitShape } from "../shapes/fruit-shapes.ts";
import { fruitText } from "../text/fruit-text.ts";
import { widthFor } from "../text/width.ts";
import { findThing } from "../typed/find-thing.ts";

const MOST_n = 2000;

/** `--keeping 14`. */
function keepingOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const fruits_n = /^\d{1,4}$/.test(text) ? Number(text) : Number.NaN;
  if (!(fruits_n <= MOST_n))
    throw new UsageError(
      `--keeping is ${JSON.stringify(text.slice(0, 20))}; expected 0 to ${MOST_n} fruits.`,
    );
  return fruits_n;
}

/** Flowers, fruit to keep, ripe dates and picking: of all plants, or of one in full. */
export const fruit: Command = {
  verb: "fruit",
  what: "flowers to brush, fruit to thin and to pick, when the rest is ripe; one plant in full",
  usage: ["[PLANT] [--keeping N]"],
  options: {
    keeping: { type: "string", value: "N", what: "what so many fruits would come to on that plant" },
  },
  help: [
    "A range means: 8 times in 10 it falls into it. Flowers, fruits, tags, colours and picks are",
    "entries: fruiting.flowered, .brushed, .counted, .thinned, .dropped, .tagged, .coloured, .picked;",
    "branches are plant.branched, heat from a laboratory fruiting.assayed, seed fruiting.seeded.",
  ],
  example: [
    "sillwood fruit",
    "sillwood fruit 127 --keeping 14",
    "sillwood enter fruiting.tagged 127 fruits_n=2 openedOn=2026-01-04 tag=red",
  ],
  async run(call) {
    const [word, more] = call.words;
    if (more !== undefined)
      throw new UsageError(
        "fruit is about all plants, or one: sillwood fruit PLANT. Put a name of two words in quotes.",
      );
    const keeping_n = keepingOf(textOption(call, "keeping"));
    if (keeping_n !== undefined && word === undefined)
      throw new UsageError("--keeping is about one plant: sillwood fruit PLANT --keeping N.");
    const reading = await readBook(call);
    const page = await pageOf(reading, word, keeping_n);
    return {
      json: { ...askedShape(reading), ...fruitShape(page) },
      text: fruitText(page, reading.desk, widthFor(call)),
    };
  },
};

async function pageOf(
  { desk }: Reading,
  word: string | undefined,
  keeping_n: number | undefined,
): Promise<FruitPage> {
  const found = word === undefined ? undefined : findThing(desk, "plant", word);
  if (found && "wrong" in found) throw dataError("plant", found.wrong, word ?? "");
  try {
    const ask = { ...(found ? { plant: found.id } : {}), ...(keeping_n === undefined ? {} : { keeping_n }) };
    return (await craftPage(desk, "fruiting", ask)) as FruitPage;
  } catch (error) {
    if (error instanceof PageError) throw dataError("plant", error.message, word ?? "");
    throw error;
  }
}
