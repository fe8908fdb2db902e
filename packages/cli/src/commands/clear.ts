import type { Json } from "@sillwood/bench/book";
import { PageError } from "@sillwood/bench/crafts";
import type { PlantScout, ScoutPage } from "@sillwood/bench/crafts/scouting";
import { craftPage } from "@sillwood/bench/pages";
import { readBook } from "../book/session.ts";
import { type Call, type Command, textOption } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { clearShape } from "../shapes/scout-shapes.ts";
import { widthFor } from "../text/width.ts";
import { wrap } from "../text/wrap.ts";
import { findThing } from "../typed/find-thing.ts";

/** Whether plants are clean enough to move and to sell, pest by pest, and what a course of treatments would do. */
export const clear: Command = {
  verb: "clear",
  what: "whether plants are clean enough to move or sell, which pest holds them, what a course would do",
  usage: ["PLANT... [--against PEST --tool TOOL --every DAYS --times N]"],
  options: {
    against: { type: "string", value: "PEST", what: "a course is thought about: against aphid, thrips, ..." },
    tool: {
      type: "string",
      value: "TOOL",
      what: "with soap, oil, wash, bti, nematodes or other; soap when left out",
    },
    every: { type: "string", value: "DAYS", what: "days between treatments, 1 to 60; 5 when left out" },
    times: { type: "string", value: "N", what: "treatments, 1 to 20; 3 when left out" },
  },
  help: [
    "Both gates are of the plant: none of the pests considered present, with chance 0.95 to move and",
    "0.99 to sell, as far as looked. Dates hold if looks stay clean. Releasing is an entry of the",
    "grower's: scouting.released. The label of a product is the law.",
  ],
  example: [
    "sillwood clear 131",
    "sillwood clear 131 132 --json",
    "sillwood clear 134 --against aphid --tool soap --every 4 --times 3",
  ],
  async run(call) {
    if (call.words.length === 0) throw new UsageError("clear is about plants: sillwood clear 131.");
    const reading = await readBook(call);
    const course = courseOf(call);
    const plants: PlantScout[] = [];
    for (const word of call.words) {
      const found = findThing(reading.desk, "plant", word);
      if ("wrong" in found) throw dataError("plant", found.wrong, word);
      try {
        const ask = { plant: found.id, ...(course ? { course } : {}) } as Json;
        const page = (await craftPage(reading.desk, "scouting", ask)) as ScoutPage;
        if (page.plant) plants.push(page.plant);
      } catch (error) {
        if (error instanceof PageError) throw dataError("plant", error.message, word);
        throw error;
      }
    }
    return {
      json: { ...askedShape(reading), plants: plants.map(clearShape) },
      text: plants.map((plant) => plantText(plant, widthFor(call))).join("\n\n"),
    };
  },
};

function courseOf(call: Call): Json | undefined {
  const pest = textOption(call, "against");
  const [every, times] = [textOption(call, "every"), textOption(call, "times")];
  const number = (name: string, text: string | undefined, usual: number): number => {
    const value = text === undefined ? usual : Number(text);
    if (!Number.isFinite(value))
      throw new UsageError(`--${name} is ${JSON.stringify(text)}; expected a number.`);
    return value;
  };
  if (pest === undefined) {
    if (every !== undefined || times !== undefined || textOption(call, "tool") !== undefined)
      throw new UsageError("a course needs --against PEST.");
    return undefined;
  }
  return {
    pest,
    tool: textOption(call, "tool") ?? "soap",
    every_d: number("every", every, 5),
    treatments_n: number("times", times, 3),
  };
}

function plantText(plant: PlantScout, width_n: number): string {
  const line = (said: string | undefined) => (said ? wrap(said, width_n, 2, 4) : []);
  return [
    `${plant.number}  ${plant.kind}  ${plant.place}`,
    ...line(plant.gates.move.said),
    ...line(plant.gates.sell.said),
    ...plant.evidence.flatMap(({ name, said, dateSaid }) => line(`${name}: ${said}; ${dateSaid}`)),
    ...(plant.together
      ? line(`${plant.together.name}: ${plant.together.said}; ${plant.together.dateSaid}`)
      : []),
    ...[
      plant.holderSaid,
      plant.unseenSaid,
      ...plant.courses,
      plant.labelSaid,
      plant.cheapestSaid,
      plant.warmSaid,
      plant.trendSaid,
      plant.staleSaid,
      plant.habitSaid,
    ].flatMap(line),
    ...(plant.course?.said ?? []).flatMap(line),
  ].join("\n");
}
