import { PageError } from "@sillwood/bench/crafts";
import type { TrimAsk, TrimPage } from "@sillwood/bench/crafts/trimming";
import { craftPage } from "@sillwood/bench/pages";
import { type Reading, readBook } from "../book/session.ts";
import { type Call, type Command, textOption } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { workingShape } from "../shapes/page-shapes.ts";
import { trimShape } from "../shapes/trim-shapes.ts";
import { trimText } from "../text/trim-text.ts";
import { widthFor } from "../text/width.ts";
import { workingText } from "../text/working-text.ts";
import { findThing } from "../typed/find-thing.ts";

const USUAL_TRIES_n = 20_000;

/** Plans of cuts beside doing nothing, or what one cut would do. */
export const cut: Command = {
  verb: "cut",
  what: "plans of cuts beside doing nothing, what one cut would do, the weeks after",
  usage: ["[PLANT] [--node ID] [--own ID,ID] [--tries N] [--working]"],
  options: {
    node: { type: "string", value: "ID", what: "what a cut through the stem just below this joint would do" },
    own: { type: "string", value: "ID,ID", what: "a plan of your own: the first joints that go" },
    tries: { type: "string", value: "N", what: "stop the search after so many sets of cuts" },
    angle: { type: "boolean", what: "how it would best be potted" },
    working: { type: "boolean", what: "how the numbers of each cut came about" },
  },
  help: [
    "Without PLANT: which plants are sketched or traced. Joints are listed by show PLANT --shape text.",
    "A plan is not a cut: nothing is written here. Keep a plan with trimming.planned, write a cut that",
    "was made with trimming.cut; their data stand in --json as draft.",
  ],
  example: ["sillwood cut 127", "sillwood cut 127 --node 9", "sillwood cut 127 --own 9,14 --json"],
  async run(call) {
    const [word, more] = call.words;
    if (more !== undefined) throw new UsageError("cut is about one plant, or all: sillwood cut 127.");
    const reading = await readBook(call);
    const page = await trimPageOf(reading, word, askOf(call, word !== undefined));
    if (call.options["working"] === true) {
      const workings = workingsOf(page);
      return {
        json: { ...askedShape(reading), workings: workings.map(workingShape) },
        text: workings.map((each) => workingText(each, reading.desk, widthFor(call))).join("\n\n"),
      };
    }
    return { json: { ...askedShape(reading), ...trimShape(page) }, text: trimText(page, widthFor(call)) };
  },
};

function askOf(call: Call, isOne: boolean): TrimAsk {
  const node = textOption(call, "node");
  const own = textOption(call, "own");
  const tries = textOption(call, "tries");
  const tries_n = tries === undefined ? USUAL_TRIES_n : /^\d{1,5}$/.test(tries) ? Number(tries) : 0;
  if (!(tries_n >= 1 && tries_n <= USUAL_TRIES_n))
    throw new UsageError(`--tries is ${JSON.stringify(tries)}; expected 1 to ${USUAL_TRIES_n}.`);
  if (!isOne && (node !== undefined || own !== undefined))
    throw new UsageError("--node and --own are about one plant: sillwood cut 127 --node 9.");
  if (!isOne) return {};
  return {
    ...(node === undefined ? {} : { node }),
    ...(own === undefined ? {} : { own: own.split(",") }),
    ...(call.options["angle"] === true ? { potAngle: true } : {}),
    ...(node === undefined && own === undefined ? { tries_n } : {}),
  };
}

const workingsOf = ({ plant }: TrimPage) => [
  ...(plant?.node ? [plant.node.working] : []),
  ...(plant?.plans?.plans ?? []).flatMap(({ cuts }) => cuts.map(({ working }) => working)),
  ...(plant?.workings ?? []),
];

/** The page of trimming about a plant as it was typed, or about all. */
export async function trimPageOf(
  { desk }: Reading,
  word: string | undefined,
  ask: TrimAsk,
): Promise<TrimPage> {
  const found = word === undefined ? undefined : findThing(desk, "plant", word);
  if (found && "wrong" in found) throw dataError("plant", found.wrong, word ?? "");
  try {
    const whole = { ...ask, ...(found ? { plant: found.id } : {}) };
    return (await craftPage(desk, "trimming", whole as never)) as TrimPage;
  } catch (error) {
    if (error instanceof PageError) throw dataError("cut", error.message, word ?? "");
    throw error;
  }
}
