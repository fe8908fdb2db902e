import { type Desk, plantList } from "@sillwood/bench/pages";
import type { AirSource } from "@sillwood/bench/places";
import type { BenchesSeen } from "./seen.ts";

/** Benches in walking order with what each spot gets today. */
export function benchesSeen(desk: Desk): BenchesSeen {
  const { ledger, now_ms } = desk;
  const date = ledger.calendar.dateOf(now_ms);
  const missing = ledger.missing();
  const said = ({ origin, from }: AirSource) => ({ origin, from: from(desk.say) });
  return {
    date,
    missing: [...new Set(missing.map(({ series }) => series))],
    benches: plantList(desk).benches.map(({ bench, rows, today }) => ({
      id: bench.id,
      name: bench.name,
      place: bench.place,
      outdoors: bench.outdoors,
      quarantine: bench.quarantine ?? false,
      order_n: bench.order_n,
      ...(bench.windowFaces_deg === undefined ? {} : { windowFaces_deg: bench.windowFaces_deg }),
      dayAir_C: today.dayAir_C,
      nightAir_C: today.nightAir_C,
      humidity_frac: meanHumidity(desk, bench.spots[0]?.id, date),
      air: said(today.air),
      demandSd_frac: today.demandSd_frac,
      spots: rows.map(({ spot, spotName, plants }) => {
        const day = ledger.airAt(spot, date);
        return {
          id: spot,
          name: spotName,
          dli_mol_m2_d: day.dli_mol_m2_d,
          light: said(day.light),
          plants: plants.map(({ plant, number }) => ({ plant, number })),
        };
      }),
    })),
  };
}

function meanHumidity({ ledger }: Desk, spot: string | undefined, date: string): number {
  const { spells } = ledger.airAt(spot, date);
  const whole_ms = spells.reduce((sum_ms, { from_ms, to_ms }) => sum_ms + to_ms - from_ms, 0);
  return (
    spells.reduce((sum, { from_ms, to_ms, humidity_frac }) => sum + humidity_frac * (to_ms - from_ms), 0) /
    whole_ms
  );
}
