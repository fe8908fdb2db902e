import type { Evidence, GateSaid, PlantScout, ScoutPage } from "@sillwood/bench/crafts/scouting";
import { iso } from "./instants.ts";

/** The stable shapes of scouting (docs/cli.md): the engine's own objects may change under them. */
export const scoutShape = (page: ScoutPage) => ({
  said: page.said,
  plants: page.rows.map(({ plant, number, kind, bench, quarantine, state, said, isDue }) => ({
    plant,
    number,
    kind,
    bench,
    quarantine,
    state,
    said,
    due: isDue,
  })),
  notLookedAt: page.others.map(({ plant, number }) => ({ plant, number })),
});

const gate = ({ open, said, early_ms, best_ms, late_ms }: GateSaid) => ({
  open,
  said,
  early: early_ms === undefined ? null : iso(early_ms),
  best: best_ms === undefined ? null : iso(best_ms),
  late: late_ms === undefined ? null : iso(late_ms),
});

const evidence = ({ key, name, said, free_frac, dateSaid }: Evidence) => ({
  pest: key,
  name,
  said,
  free_frac,
  dateSaid,
});

export const clearShape = (plant: PlantScout) => ({
  plant: plant.plant,
  number: plant.number,
  kind: plant.kind,
  place: plant.place,
  move: gate(plant.gates.move),
  sell: gate(plant.gates.sell),
  pests: plant.evidence.map(evidence),
  together: plant.together ? evidence(plant.together) : null,
  holder: plant.holderSaid ?? null,
  habit: plant.habitSaid ?? null,
  notLookedFor: plant.unseenSaid ?? null,
  cheapest: plant.cheapestSaid ?? null,
  warmer: plant.warmSaid ?? null,
  trend: plant.trendSaid ?? null,
  label: plant.labelSaid ?? null,
  courses: plant.courses,
  gates: plant.sprayGates.map(({ key, state, said }) => ({ key, state, said })),
  course: plant.course ? { canWin: plant.course.canWin, said: plant.course.said } : null,
  release: plant.release
    ? { kind: plant.release.kind, on: plant.release.on, data: plant.release.data }
    : null,
  figures: plant.figures,
});
