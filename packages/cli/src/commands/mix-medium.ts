import type { Json } from "@sillwood/bench/book";
import { PageError } from "@sillwood/bench/crafts";
import type { MixPage } from "@sillwood/bench/crafts/potting";
import { craftPage } from "@sillwood/bench/pages";
import { readBook } from "../book/session.ts";
import { type Call, type Outcome, textOption } from "../command.ts";
import { dataError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { mixShape } from "../shapes/potting-shapes.ts";
import { widthFor } from "../text/width.ts";
import { wrap } from "../text/wrap.ts";
import { findThing } from "../typed/find-thing.ts";
import { potOf } from "../typed/pot-text.ts";

/** `mix medium BAG BAG ...`: whole scoops from these bags for a pot, or why none will do. */
export async function mixMedium(call: Call, bags: readonly string[]): Promise<Outcome> {
  const reading = await readBook(call);
  const width_n = widthFor(call);
  const typedPot = textOption(call, "pot");
  const pot = typedPot === undefined ? undefined : potOf(typedPot, call.units);
  if (pot && "wrong" in pot) throw dataError("pot", `pot ${pot.wrong}`, typedPot ?? "");
  const typedPlant = textOption(call, "for");
  const plant = typedPlant === undefined ? undefined : findThing(reading.desk, "plant", typedPlant);
  if (plant && "wrong" in plant) throw dataError("for", plant.wrong, typedPlant ?? "");
  const ask = {
    what: "mix",
    bags,
    ...(pot ? { pot: pot.pot } : {}),
    ...(plant ? { plant: plant.id } : {}),
    ...(call.options["bare-roots"] === true ? { bareRoots: true } : {}),
  } as unknown as Json;
  try {
    const page = (await craftPage(reading.desk, "potting", ask)) as MixPage;
    return {
      json: { ...askedShape(reading), ...mixShape(page) },
      text: [
        ...wrap(page.potSaid, width_n),
        ...wrap(page.said, width_n),
        ...(page.mix?.lines ?? []).flatMap((line) => wrap(line, width_n, 2, 4)),
        ...(bags.length === 0
          ? page.parts.map(({ part, name }) => `  ${part === name ? part : `${part} (${name})`}`)
          : []),
        ...(page.mix && page.noMix === undefined
          ? page.test.flatMap((line, i) => wrap(`${i + 1}. ${line}`, width_n, 2, 5))
          : []),
        ...wrap(page.care, width_n),
      ].join("\n"),
    };
  } catch (error) {
    if (error instanceof PageError) throw dataError("bags", error.message, bags.join(" "));
    throw error;
  }
}
