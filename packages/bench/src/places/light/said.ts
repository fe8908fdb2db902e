import type { Entry } from "../../book/entry.ts";
import type { From } from "../places.ts";
import {
  type LampData,
  type LampHoursData,
  lightKinds,
  type OutageData,
  type PairData,
  type StandsData,
  type TariffData,
  type UnderLampData,
  type WindowData,
} from "./kinds.ts";

type Said<Data> = ReadonlyMap<string, readonly From<Data>[]>;

/** What was said of the light of places, by bench or spot, each list in book order. */
export interface LightSaid {
  readonly windows: Said<WindowData>;
  readonly stands: Said<StandsData>;
  readonly lamps: Said<LampData>;
  readonly lampHours: Said<LampHoursData>;
  readonly outages: Said<OutageData>;
  readonly pairs: Said<PairData>;
  readonly underLamps: Said<UnderLampData>;
  readonly tariffs: readonly From<TariffData>[];
}

export const nothingSaid: LightSaid = {
  windows: new Map(),
  stands: new Map(),
  lamps: new Map(),
  lampHours: new Map(),
  outages: new Map(),
  pairs: new Map(),
  underLamps: new Map(),
  tariffs: [],
};

/** What the house learns of light from one entry. Kinds of others leave it as it is. */
export function foldLight(said: LightSaid, entry: Entry): LightSaid {
  switch (entry.kind) {
    case lightKinds.window.kind:
      return { ...said, windows: withEntry(said.windows, entry) };
    case lightKinds.stands.kind:
      return { ...said, stands: withEntry(said.stands, entry) };
    case lightKinds.lamp.kind:
      return { ...said, lamps: withEntry(said.lamps, entry) };
    case lightKinds.lampHours.kind:
      return { ...said, lampHours: withEntry(said.lampHours, entry) };
    case lightKinds.outage.kind:
      return { ...said, outages: withEntry(said.outages, entry) };
    case lightKinds.pair.kind:
      return { ...said, pairs: withEntry(said.pairs, entry) };
    case lightKinds.underLamp.kind:
      return { ...said, underLamps: withEntry(said.underLamps, entry) };
    case lightKinds.tariff.kind:
      return { ...said, tariffs: [...said.tariffs, fromEntry(entry)] };
    default:
      return said;
  }
}

const fromEntry = <Data>(entry: Entry): From<Data> => ({
  at_ms: entry.at_ms,
  data: entry.data as Data,
  entry: entry.id,
});

function withEntry<Data>(said: Said<Data>, entry: Entry): Said<Data> {
  const next = new Map(said);
  for (const id of entry.on) next.set(id, [...(said.get(id) ?? []), fromEntry<Data>(entry)]);
  return next;
}

/**
 * The things of a bench at an instant, one a number: of windows and lamps that were described more than once the last said
 * before it, or the first said after it (a bench described late).
 */
export function inForceByNumber<Data>(
  said: readonly From<Data>[] | undefined,
  numberOf: (data: Data) => number,
  at_ms: number,
): readonly From<Data>[] {
  const found = new Map<number, From<Data>>();
  for (const one of said ?? []) {
    const n = numberOf(one.data);
    if (!found.has(n) || one.at_ms <= at_ms) found.set(n, one);
  }
  return [...found].sort(([a], [b]) => a - b).map(([, one]) => one);
}
