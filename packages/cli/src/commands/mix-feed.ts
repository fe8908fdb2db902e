import type { Json } from "@sillwood/bench/book";
import { PageError } from "@sillwood/bench/crafts";
import type { FeedAsk, FeedPage } from "@sillwood/bench/crafts/feeding";
import { craftPage } from "@sillwood/bench/pages";
import { readBook } from "../book/session.ts";
import { type Call, type Outcome, textOption } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { feedShape } from "../shapes/feed-shapes.ts";
import { MARK } from "../text/marks.ts";
import { widthFor } from "../text/width.ts";
import { wrap } from "../text/wrap.ts";

const scales = { mS: "mS/cm", uS: "uS/cm", ppm500: "ppm 500", ppm700: "ppm 700" } as const;

function numberOption(call: Call, name: string): number | undefined {
  const text = textOption(call, name);
  if (text === undefined) return undefined;
  const value = text.trim() === "" ? Number.NaN : Number(text.replace(",", "."));
  if (!Number.isFinite(value))
    throw new UsageError(`--${name} is ${JSON.stringify(text.slice(0, 20))}; expected a number.`);
  return value;
}

/** "2.1mS", "2100uS", "1050ppm500"; a bare number is in mS/cm. */
function readingOption(call: Call): FeedAsk["read"] {
  const text = textOption(call, "reads");
  if (text === undefined) return undefined;
  const [, amount = "", unit = ""] = /^([\d.,]+)\s*([A-Za-z]*\d*)$/.exec(text) ?? [];
  const value = Number(amount.replace(",", "."));
  const scale = scales[(unit || "mS") as keyof typeof scales];
  if (amount === "" || !Number.isFinite(value) || scale === undefined)
    throw new UsageError(
      `--reads is ${JSON.stringify(text.slice(0, 20))}; expected a number with ${Object.keys(scales).join(", ")}, as 1.4mS.`,
    );
  return { value, scale };
}

/** `mix feed`: the card of today's tank from the labels on the shelf; nothing is written. */
export async function mixFeed(call: Call, words: readonly string[]): Promise<Outcome> {
  if (words.length > 0)
    throw new UsageError("mix feed takes options only: --litres, --bottles, --rain, --group, --reads.");
  const reading = await readBook(call);
  const width_n = widthFor(call);
  const group = textOption(call, "group");
  const water = textOption(call, "water");
  const numbers = {
    volume_L: numberOption(call, "litres"),
    products_n: numberOption(call, "bottles"),
    pure_frac: numberOption(call, "rain"),
  };
  const read = readingOption(call);
  const ask = {
    ...Object.fromEntries(Object.entries(numbers).filter(([, value]) => value !== undefined)),
    ...(group === undefined ? {} : { group }),
    ...(water === undefined ? {} : { water }),
    ...(read ? { read } : {}),
  } as unknown as Json;
  try {
    const page = (await craftPage(reading.desk, "feeding", ask)) as FeedPage;
    return { json: { ...askedShape(reading), ...feedShape(page) }, text: textOf(page, width_n) };
  } catch (error) {
    if (error instanceof PageError) throw dataError("mix", error.message, "feed");
    throw error;
  }
}

function textOf(page: FeedPage, width_n: number): string {
  const { recipe, water, trouble, reading, cautions } = page;
  return [
    ...page.groups.flatMap(({ said, pots }) =>
      wrap(pots.length === 0 ? said : `${said}: ${pots.map(({ number }) => number).join(", ")}`, width_n),
    ),
    ...wrap(`${water.said} ${MARK[water.origin]}`, width_n),
    ...water.notes.flatMap((note) => wrap(note, width_n, 2, 2)),
    ...cautions.flatMap((caution) => wrap(caution, width_n)),
    ...(trouble ? [trouble.said, ...trouble.ways].flatMap((line) => wrap(line, width_n)) : []),
    ...(recipe
      ? [
          ...recipe.steps.flatMap((step, i) => wrap(`${i + 1}. ${step}`, width_n, 2, 5)),
          ...wrap(recipe.meterSaid, width_n),
          recipe.trade.map(({ said }) => said).join(" | "),
          ...recipe.elements.flatMap(({ said }) => wrap(said, width_n, 2, 4)),
          ...[recipe.driftSaid, recipe.costSaid ?? "", ...recipe.notes]
            .filter(Boolean)
            .flatMap((line) => wrap(line, width_n)),
        ]
      : []),
    ...(reading
      ? [reading.said, ...reading.slips.map((slip) => `- ${slip}`)].flatMap((line) => wrap(line, width_n))
      : []),
  ].join("\n");
}
