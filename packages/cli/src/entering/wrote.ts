import type { Entry, PlantId } from "@sillwood/bench/book";
import { type Desk, logLine, plantPage } from "@sillwood/bench/pages";
import type { Outcome } from "../command.ts";
import { iso } from "../shapes/instants.ts";
import { taskShape } from "../shapes/page-shapes.ts";
import { MARK } from "../text/marks.ts";
import { plantText } from "../text/plant-text.ts";
import { cliWords } from "../words/words.ts";

/** Letters of an id that tell it from its neighbours; any unique end of an id is understood. */
export const TAIL_n = 6;
const MOST_SHOWN_n = 12;

interface WroteOptions {
  readonly width_n: number;
  /** Whether nothing was written, only tried. */
  readonly tried?: boolean;
}

/** What was written, as the book says it, and what it changes for a plant. */
export function wroteOutcome(entries: readonly Entry[], desk: Desk, options: WroteOptions): Outcome {
  const words = cliWords(desk.say.language);
  const lines = entries.flatMap((entry) => {
    const line = logLine(desk, entry.id);
    return line ? [`${[line.on, line.said].filter(Boolean).join("  ")}   (${entry.id.slice(-TAIL_n)})`] : [];
  });
  const shown = lines.slice(0, MOST_SHOWN_n).map((line) => (lines.length > 1 ? `  ${line}` : line));
  if (lines.length > MOST_SHOWN_n) shown.push(`  … ${lines.length - MOST_SHOWN_n}`);
  const head = options.tried ? "Nothing written yet. It would write:" : words.wrote(entries.length);
  const plants = touchedPlants(entries, desk);
  const page = plants.length === 1 ? plantPage(desk, plants[0] as PlantId) : undefined;
  const isNew = entries.some(({ kind }) => kind === "plant.brought");
  const after =
    page === undefined
      ? []
      : isNew
        ? ["", plantText(page, desk, options.width_n)]
        : page.lines.map(
            ({ craft, line }) =>
              `${page.number}  ${craft}: ${line.said}  ${MARK[line.origin]} ${words[line.origin]}`,
          );
  return {
    json: {
      written: options.tried !== true,
      entries: entries.map((entry) => ({
        id: entry.id,
        kind: entry.kind,
        on: entry.on,
        at: iso(entry.at_ms),
        data: entry.data,
        files: entry.files ?? [],
        said: logLine(desk, entry.id)?.said ?? null,
      })),
      plants: plants.map((plant) => {
        const view = plants.length <= MOST_SHOWN_n ? plantPage(desk, plant) : undefined;
        return {
          plant,
          number: desk.numberOf(plant),
          next: view?.lines.map(({ craft, line }) => ({ craft, said: line.said, origin: line.origin })) ?? [],
          tasks: view?.tasks.map((task) => taskShape(task, desk.ledger.calendar)) ?? [],
        };
      }),
    },
    text: [lines.length === 1 ? `${head} ${shown[0]}` : [head, ...shown].join("\n"), ...after].join("\n"),
  };
}

function touchedPlants(entries: readonly Entry[], desk: Desk): readonly PlantId[] {
  const known = new Set<string>(desk.ledger.plants());
  return [...new Set(entries.flatMap(({ on }) => on))].filter((id): id is PlantId => known.has(id));
}
