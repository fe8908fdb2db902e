import { DAY_ms, HOUR_ms } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import type { Happening } from "../nursery/potted-plant.ts";
import { SPOTS_n } from "./draw-place.ts";
import { drawn, RANGES } from "./ranges.ts";

/** A move that somebody wrote down. */
export interface WrittenMove {
  readonly key: number;
  readonly at_ms: number;
  readonly bench: number;
  readonly spot: number;
}

/** A cut after which somebody counted the leaves again, and wrote it an hour later. */
export interface WrittenTrim {
  readonly key: number;
  readonly at_ms: number;
}

export interface PotEvents {
  readonly happenings: readonly Happening[];
  readonly moves: readonly WrittenMove[];
  readonly trims: readonly WrittenTrim[];
}

/** How many of these reach the book. @source our assumption */
const WRITTEN = { trim_frac: 0.4, shift_frac: 0.3, bench_frac: 0.7 } as const;

/**
 * What happens to a pot whoever looks: cuts, shifts along the bench and between benches, a stranger's glass of water, fruit
 * picked, grit and wire added, roots that rot. Some of the cuts and moves are written.
 */
export function drawEvents(
  key: number,
  bench: number,
  from_ms: number,
  days_n: number,
  chance: Chance,
): PotEvents {
  const { event, pot } = RANGES;
  const moves: WrittenMove[] = [];
  const trims: WrittenTrim[] = [];
  const happenings: Happening[] = [];
  const some = (mean_d: number, act: (at_ms: number) => void) => {
    let day = -mean_d * Math.log(1 - chance.uniform());
    while (day < days_n) {
      // By daylight and to the minute, as people do things.
      act(from_ms + Math.floor(day) * DAY_ms + Math.round(chance.between(8.5, 20) * 60) * 60_000);
      day += 4 - mean_d * Math.log(1 - chance.uniform());
    }
  };
  some(event.trim_d, (at_ms) => {
    const written = chance.happens(WRITTEN.trim_frac);
    happenings.push({ at_ms, what: "trim", taken_frac: drawn(chance, event.trimmed_frac), written });
    if (written) trims.push({ key, at_ms: at_ms + HOUR_ms });
  });
  some(event.sip_d, (at_ms) =>
    happenings.push({ at_ms, what: "sip", volume_mL: drawn(chance, event.sip_mL) }),
  );
  some(event.lightened_d, (at_ms) =>
    happenings.push({ at_ms, what: "lightened", taken_g: drawn(chance, event.lightened_g) }),
  );
  some(event.dressed_d, (at_ms) =>
    happenings.push({ at_ms, what: "lightened", taken_g: -drawn(chance, event.dressed_g) }),
  );
  some(event.rot_d, (at_ms) =>
    happenings.push({ at_ms, what: "rot", rootsLeft_frac: drawn(chance, event.rootsLeft_frac) }),
  );
  const steps: { readonly at_ms: number; readonly other: boolean }[] = [];
  some(event.shift_d, (at_ms) => steps.push({ at_ms, other: false }));
  some(event.bench_d, (at_ms) => steps.push({ at_ms, other: true }));
  steps.sort((a, b) => a.at_ms - b.at_ms);
  let stands = bench;
  for (const { at_ms, other } of steps) {
    if (other) stands = 1 - stands;
    const spot = chance.whole(0, SPOTS_n - 1);
    const written = chance.happens(other ? WRITTEN.bench_frac : WRITTEN.shift_frac);
    happenings.push({
      at_ms,
      what: "move",
      bench: stands,
      spot,
      light_frac: drawn(chance, pot.light_frac),
      written,
    });
    if (written) moves.push({ key, at_ms, bench: stands, spot });
  }
  happenings.sort((a, b) => a.at_ms - b.at_ms);
  return { happenings, moves, trims };
}
