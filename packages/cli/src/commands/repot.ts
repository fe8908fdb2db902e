import { PageError } from "@sillwood/bench/crafts";
import type { DayPage, PotPage } from "@sillwood/bench/crafts/potting";
import { craftPage } from "@sillwood/bench/pages";
import { readBook } from "../book/session.ts";
import type { Command } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { dayShape, potShape } from "../shapes/potting-shapes.ts";
import { columns } from "../text/columns.ts";
import { widthFor } from "../text/width.ts";
import { wrap } from "../text/wrap.ts";
import { findThing } from "../typed/find-thing.ts";

/** The potting day, or what one pot holds, carries and how large the next may be. */
export const repot: Command = {
  verb: "repot",
  what: "who is due for fresh medium, the rail of a potting day; what one pot holds and how large the next may be",
  usage: ["[PLANT]"],
  options: {},
  help: [
    "Steps are entries: potting.prepared (water, medium and room), potting.lifted, potting.cut,",
    "potting.washed, plant.potted, potting.drained, potting.placed. Clocks run out of the book.",
  ],
  example: [
    "sillwood repot",
    "sillwood repot 127",
    "sillwood enter potting.prepared 127 128 water_C=18 medium_C=19 room_C=21",
  ],
  async run(call) {
    const [word, more] = call.words;
    if (more !== undefined) throw new UsageError("repot is about one plant, or all: sillwood repot.");
    const reading = await readBook(call);
    const width_n = widthFor(call);
    if (word === undefined) {
      const page = (await craftPage(reading.desk, "potting", { what: "day" })) as DayPage;
      return {
        json: { ...askedShape(reading), ...dayShape(page) },
        text: [
          ...wrap(page.said, width_n),
          ...(page.warmth ? wrap(page.warmth.said, width_n) : []),
          ...columns(
            page.rail.map(({ number, next, clocks }) => [
              number,
              next ?? "",
              clocks.map(({ said }) => said).join(", "),
            ]),
            { indent_n: 2, right: [0] },
          ),
          ...columns(
            page.due.map(({ number, said }) => [number, said]),
            { indent_n: 2, right: [0] },
          ),
          ...page.held.flatMap(({ number, said }) => wrap(`${number}: ${said}`, width_n, 2, 4)),
          ...wrap(page.care, width_n),
        ].join("\n"),
      };
    }
    const found = findThing(reading.desk, "plant", word);
    if ("wrong" in found) throw dataError("plant", found.wrong, word);
    try {
      const page = (await craftPage(reading.desk, "potting", { what: "pot", plant: found.id })) as PotPage;
      return {
        json: { ...askedShape(reading), plant: found.id, ...potShape(page) },
        text: [page.number, ...page.lines.flatMap((line) => wrap(line, width_n, 2, 4))].join("\n"),
      };
    } catch (error) {
      if (error instanceof PageError) throw dataError("plant", error.message, word);
      throw error;
    }
  },
};
