import type { ScoutPage } from "@sillwood/bench/crafts/scouting";
import { craftPage } from "@sillwood/bench/pages";
import { readBook } from "../book/session.ts";
import type { Command } from "../command.ts";
import { UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { scoutShape } from "../shapes/scout-shapes.ts";
import { columns } from "../text/columns.ts";
import { widthFor } from "../text/width.ts";
import { wrap } from "../text/wrap.ts";

/** Plants that are kept apart or looked at, with their gate to sell. */
export const scout: Command = {
  verb: "scout",
  what: "plants that are kept apart or looked at, what holds them, whose look is due",
  usage: [""],
  options: {},
  help: [
    "Looks, cards and treatments are entries: scouting.looked, scouting.card, scouting.treated,",
    "scouting.arrived. A clean look carries its method. One plant in full: sillwood clear.",
  ],
  example: [
    "sillwood scout",
    "sillwood enter scouting.looked 131 way=lens tips_n=3 leaves_n=6 found=[]",
    "sillwood clear 131",
  ],
  async run(call) {
    if (call.words.length > 0)
      throw new UsageError("scout is about all plants; one of them: sillwood clear PLANT.");
    const reading = await readBook(call);
    const page = (await craftPage(reading.desk, "scouting", {})) as ScoutPage;
    const width_n = widthFor(call);
    return {
      json: { ...askedShape(reading), ...scoutShape(page) },
      text: [
        ...wrap(page.said, width_n),
        ...columns(
          page.rows.map(({ number, bench, said, isDue }) => [isDue ? "*" : "", number, bench, said]),
          { indent_n: 2, right: [1] },
        ),
        ...page.cautions.flatMap((said) => wrap(said, width_n, 0, 2)),
      ].join("\n"),
    };
  },
};
