import type { PlantId } from "@sillwood/bench/book";
import { type HowGood, howGood } from "@sillwood/bench/issued";
import { plantPage } from "@sillwood/bench/pages";
import type { PlantPage } from "@sillwood/bench/round";
import type { Working } from "@sillwood/bench/working";
import { type Reading, readBook } from "../book/session.ts";
import { type Command, textOption } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { plantShape, workingShape } from "../shapes/page-shapes.ts";
import { trimShape } from "../shapes/trim-shapes.ts";
import { plantText } from "../text/plant-text.ts";
import { shapeSvg, shapeText } from "../text/shape-svg.ts";
import { widthFor } from "../text/width.ts";
import { workingText } from "../text/working-text.ts";
import { findThing } from "../typed/find-thing.ts";
import { trimPageOf } from "./cut.ts";

/** One plant for the next fourteen days. */
export const show: Command = {
  verb: "show",
  what: "one plant: what to do, when, and why",
  usage: ["PLANT [--working NAME] [--shape text|svg]"],
  options: {
    working: { type: "string", value: "NAME", what: "how a number came about, in full; all for every one" },
    shape: { type: "string", value: "FORM", what: "its structure instead: as text, or drawn as svg" },
  },
  help: [
    "PLANT is the number on its label, or its id. A date with a range means: 8 times in 10 it",
    "falls into the range. Marks: ● measured, ◐ learned from this plant, ○ assumed by us.",
  ],
  example: ["sillwood show 127", 'sillwood show 127 --working "how much"'],
  async run(call) {
    const [word, more] = call.words;
    if (word === undefined || more !== undefined)
      throw new UsageError("show is about one plant: sillwood show 127. For all of them: sillwood round.");
    const reading = await readBook(call, { issuedOf: word });
    const found = findThing(reading.desk, "plant", word);
    if ("wrong" in found) throw dataError("plant", found.wrong, word);
    const page = plantPage(reading.desk, found.id as PlantId);
    if (!page) throw dataError("plant", `the book has not met ${word} yet`, word);
    const form = textOption(call, "shape");
    if (form !== undefined) return shapeShown(reading, word, form, widthFor(call));
    const good = howGood(reading.desk, { plant: page.plant });
    const wanted = textOption(call, "working");
    if (wanted !== undefined) return oneWorking(page, good, wanted, reading, widthFor(call));
    return {
      json: {
        ...askedShape(reading),
        ...plantShape(page, reading.desk.view(page.plant), good, reading.calendar),
      },
      text: plantText(page, reading.desk, widthFor(call), good),
    };
  },
};

/** The structure of a plant: a list for eyes and readers, or a picture. */
async function shapeShown(reading: Reading, word: string, form: string, width_n: number) {
  if (form !== "text" && form !== "svg")
    throw new UsageError(`--shape is ${JSON.stringify(form.slice(0, 20))}; expected text or svg.`);
  const page = await trimPageOf(reading, word, {});
  const { plant } = page;
  if (!plant) throw dataError("plant", `the book has not met ${word} yet`, word);
  const drawn = form === "svg" ? shapeSvg(plant) : shapeText(plant, width_n);
  if (drawn === undefined)
    throw dataError("shape", `${plant.number} is not traced: ${plant.levelSaid}`, word);
  return { json: { ...askedShape(reading), ...trimShape(page), drawn }, text: drawn };
}

function oneWorking(
  page: PlantPage,
  good: readonly HowGood[],
  wanted: string,
  reading: Reading,
  width_n: number,
) {
  const all = allWorkings(page, good);
  const fitting =
    wanted === "all" ? all : all.filter(({ title }) => title.toLowerCase().includes(wanted.toLowerCase()));
  if (fitting.length === 0)
    throw dataError(
      "working",
      `${page.number} has no working ${JSON.stringify(wanted)}; expected one of ${all.map(({ title }) => title).join(", ")}`,
      wanted,
    );
  return {
    json: {
      ...askedShape(reading),
      plant: page.plant,
      number: page.number,
      workings: fitting.map(workingShape),
    },
    text: fitting.map((working) => workingText(working, reading.desk, width_n)).join("\n\n"),
  };
}

/** Every working of the page once, by its title. */
function allWorkings(page: PlantPage, good: readonly HowGood[]): readonly Working[] {
  const found = new Map<string, Working>();
  const all = [
    ...page.workings,
    ...page.heads.map(({ head }) => head.working),
    ...page.tasks.map(({ working }) => working),
    ...good.flatMap(({ working }) => working ?? []),
  ];
  for (const working of all) if (!found.has(working.title)) found.set(working.title, working);
  return [...found.values()];
}
