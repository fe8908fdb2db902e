import type { Round } from "@sillwood/bench/round";
import { nowMs } from "../../engine/clock.ts";
import { useAsk } from "../../engine/use-ask.ts";
import { hasWork } from "./use-round.ts";

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-/;
const HALF_A_DAY_ms = 12 * 3_600_000;

/** Where somebody stopped on another device: the pot of today's last entry on a bench that still has work. */
export function useStoppedElsewhere(
  round: Round | undefined,
): { readonly by: string; readonly number: string; readonly at_ms: number } | undefined {
  // Rounded, so that the question stays the same while the clock runs.
  const from_ms = Math.floor((nowMs() - HALF_A_DAY_ms) / 3_600_000) * 3_600_000;
  const { value: lines } = useAsk("log", { from_ms, most_n: 1 });
  const line = lines?.[0];
  if (!round || !line || line.state !== "in force") return undefined;
  const plant = line.onIds.length === 1 ? line.onIds[0] : undefined;
  const bench = round.benches.find(({ spots }) => spots.some((spot) => spot.plant === plant));
  const number = bench?.spots.find((spot) => spot.plant === plant)?.number;
  // A person whom the book has not met is named by an id, which says nothing to anybody.
  if (UUID.test(line.by)) return undefined;
  return number && bench?.spots.some(hasWork) ? { by: line.by, number, at_ms: line.at_ms } : undefined;
}
