import { type Desk, plantList } from "@sillwood/bench/pages";
import { HABIT_WORDS } from "@sillwood/bench/plants";
import type { PlantsSeen } from "./seen.ts";

export function plantsSeen(desk: Desk): PlantsSeen {
  const { benches, nowhere, ended } = plantList(desk);
  const { batches, problems } = desk.ledger.house().batches;
  const { say } = desk;
  return {
    benches: benches.map(({ bench, rows }) => ({
      id: bench.id,
      name: bench.name,
      outdoors: bench.outdoors,
      quarantine: bench.quarantine ?? false,
      // Under the name of its bench a spot needs only its own.
      rows: rows.map((row) => ({
        ...row,
        plants: row.plants.map((plant) => ({ ...plant, spotName: row.spotName })),
      })),
    })),
    nowhere,
    ended,
    batches: [...batches.values()]
      .filter(({ mergedInto, count_n, lost_n }) => mergedInto === undefined && (count_n > 0 || lost_n > 0))
      .map(({ id, name, count_n, lost_n, habit, sownOn, from }) => ({
        id,
        name,
        count_n,
        lost_n,
        kind: HABIT_WORDS[say.language][habit],
        ...(sownOn ? { sownOn } : {}),
        ...(from ? { from: say.name(from) } : {}),
      })),
    problems: problems.map(({ message }) => message),
  };
}
