import type { PlantId } from "../book/entry.ts";
import type { Outward } from "../crafts/craft.ts";
import type { AirDay } from "../places/ahead.ts";
import { type Bench, benchesInOrder } from "../places/places.ts";
import { inHandOrder } from "../round/conflicts.ts";
import type { WeighingRow } from "../round/pages.ts";
import type { Desk } from "./desk.ts";
import { kindSaid } from "./names.ts";

/** A row of the list of plants: number, kind, next task. */
export interface PlantRow {
  readonly plant: PlantId;
  readonly number: string;
  readonly kind: string;
  readonly spot?: string;
  readonly spotName?: string;
  readonly next?: { readonly title: string; readonly said: string; readonly best_ms: number };
  readonly ended?: string;
}

export interface BenchRow {
  readonly bench: Bench;
  readonly rows: readonly {
    readonly spot: string;
    readonly spotName: string;
    readonly plants: readonly PlantRow[];
  }[];
  /** Air and light today, with where they come from. */
  readonly today: Pick<AirDay, "dli_mol_m2_d" | "air" | "light" | "demandSd_frac"> & {
    readonly dayAir_C: number;
    readonly nightAir_C: number;
  };
}

/** The benches as ruled lists in walking order, then plants without a spot, then the ended ones. */
export function plantList(desk: Desk): {
  readonly benches: readonly BenchRow[];
  readonly nowhere: readonly PlantRow[];
  readonly ended: readonly PlantRow[];
} {
  const { ledger, now_ms } = desk;
  const { places } = ledger.house();
  const today = ledger.calendar.dateOf(now_ms);
  const living = desk.living();
  const standing = new Map<string, PlantId[]>();
  for (const plant of living) {
    const spot = desk.facts(plant)?.spot ?? "";
    standing.set(spot, [...(standing.get(spot) ?? []), plant]);
  }
  const benches = benchesInOrder(places).map((bench) => {
    const day = ledger.airAt(bench.spots[0]?.id, today);
    const airs = day.spells.map(({ air_C }) => air_C);
    return {
      bench,
      rows: bench.spots.map(({ id, name }) => ({
        spot: id,
        spotName: name,
        plants: (standing.get(id) ?? []).map((plant) => rowOf(desk, plant)),
      })),
      today: {
        dli_mol_m2_d: day.dli_mol_m2_d,
        air: day.air,
        light: day.light,
        demandSd_frac: day.demandSd_frac,
        dayAir_C: Math.max(...airs),
        nightAir_C: Math.min(...airs),
      },
    };
  });
  const known = new Set(benches.flatMap(({ rows }) => rows.map(({ spot }) => spot)));
  return {
    benches,
    nowhere: living
      .filter((plant) => !known.has(desk.facts(plant)?.spot ?? ""))
      .map((plant) => rowOf(desk, plant)),
    ended: ledger
      .plants()
      .filter((plant) => desk.facts(plant)?.ended)
      .map((plant) => rowOf(desk, plant)),
  };
}

function rowOf(desk: Desk, plant: PlantId): PlantRow {
  const { ledger, now_ms, say } = desk;
  const view = desk.view(plant);
  const facts = desk.facts(plant);
  const next = view && inHandOrder(view.tasks)[0];
  return {
    plant,
    number: desk.numberOf(plant),
    kind: facts ? kindSaid(facts, ledger, say.language, now_ms) : "",
    ...(facts?.spot ? { spot: facts.spot, spotName: say.name(facts.spot) } : {}),
    ...(next ? { next: { title: next.title, said: next.said, best_ms: next.best_ms } } : {}),
    ...(facts?.ended ? { ended: facts.ended.how } : {}),
  };
}

/**
 * Rows of a weighing run over a bench in walking order (all of them, or the few that speak for the shelf), each with the band in
 * which the next weight is expected. Crafts give the band as figures `expectedWeightLow_g`, `expectedWeightHigh_g` and the worth of a
 * weighing as the question.
 */
export function weighingRun(desk: Desk, bench: string, onlyFew = false): readonly WeighingRow[] {
  const FEW_n = 5;
  const { places } = desk.ledger.house();
  const spots = places.benches.get(bench)?.spots.map(({ id }) => id) ?? [];
  const plants = desk.living().filter((plant) => spots.includes(desk.facts(plant)?.spot ?? ""));
  const rows = plants
    .sort((a, b) => spots.indexOf(desk.facts(a)?.spot ?? "") - spots.indexOf(desk.facts(b)?.spot ?? ""))
    .flatMap((plant) => {
      const view = desk.view(plant);
      const figures = view?.outlooks
        .map(({ outlook }) => outlook.figures)
        .find((one) => typeof one["expectedWeightLow_g"] === "number");
      if (!figures) return [];
      const worth_d = Math.max(
        0,
        ...(view?.outlooks.map(({ outlook }) => outlook.question?.worth_d ?? 0) ?? []),
      );
      return [
        {
          plant,
          number: desk.numberOf(plant),
          low_g: figures["expectedWeightLow_g"] as number,
          high_g: figures["expectedWeightHigh_g"] as number,
          worth_d,
        },
      ];
    });
  if (!onlyFew) return rows;
  const few = new Set([...rows].sort((a, b) => b.worth_d - a.worth_d).slice(0, FEW_n));
  return rows.filter((row) => few.has(row));
}

/** Every value that is ours, how much it is now, and the one measurement that replaces it. */
export function assumptionsPage(desk: Desk) {
  const set = desk.ledger.house().people.assumptions;
  return desk.ledger.crafts.flatMap((craft) =>
    craft.assumptions.map((assumption) => ({
      craft: craft.name,
      ...assumption,
      now: set.get(assumption.key) ?? assumption.value,
      changed: set.has(assumption.key),
    })),
  );
}

/** Crafts that can say something of troubles, with where their slices stand. */
const sayingCrafts = async (desk: Desk) =>
  (
    await Promise.all(
      desk.ledger.crafts.map(async (craft, place) => {
        const wrong = await craft.wrong?.();
        return wrong ? [{ craft: craft.name, place, wrong }] : [];
      }),
    )
  ).flat();

/** What can be seen on a plant, as all crafts together draw it. */
export async function looksPage(desk: Desk) {
  return (await sayingCrafts(desk)).flatMap(({ wrong }) => wrong.looks(desk.say));
}

/** Troubles that fit what is seen, likeliest first over all crafts: a ranking, never a chance. */
export async function wrongDesk(desk: Desk, plant: PlantId, seen: readonly string[]) {
  const view = desk.view(plant);
  if (!view || view.outlooks.length === 0) return [];
  return (await sayingCrafts(desk))
    .flatMap(({ craft, place, wrong }) =>
      wrong
        .signs(view.state.slices[place], view.outwards[place] as Outward, seen)
        .map((sign) => ({ craft, sign })),
    )
    .sort((a, b) => b.sign.weight - a.sign.weight || (a.sign.key < b.sign.key ? -1 : 1));
}
