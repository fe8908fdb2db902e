import type { EntryId } from "../../book/entry.ts";
import type { PairData, UnderLampData } from "../../places/light/kinds.ts";
import { lightSentences } from "../../places/light/sentences.ts";
import type { Bench, From, Places } from "../../places/places.ts";
import type { World } from "../craft.ts";
import type { BenchLight, ReadAsk } from "./page-shape.ts";

/** A reading of light that the book holds. */
interface Taken {
  readonly spot: string;
  readonly entry: EntryId;
  readonly at_ms: number;
  readonly said: string;
}
const SHOWN_n = 5;

/** Readings of a bench until now, latest first. */
export function readingsOf({ places, now_ms, say }: World, bench: Bench): readonly Taken[] {
  const words = lightSentences(say);
  const taken = <Data>(said: ReadonlyMap<string, readonly From<Data>[]>, sentence: (data: Data) => string) =>
    [...bench.spots.map(({ id }) => id), bench.id].flatMap((spot) =>
      (said.get(spot) ?? [])
        .filter(({ at_ms }) => at_ms <= now_ms)
        .map(({ data, entry, at_ms }) => ({ spot, entry, at_ms, said: sentence(data) })),
    );
  return [...taken(places.light.pairs, words.pair), ...taken(places.light.underLamps, words.underLamp)].sort(
    (a, b) => b.at_ms - a.at_ms || (a.entry < b.entry ? 1 : -1),
  );
}

export const readingsShown = (taken: readonly Taken[], { say }: World): BenchLight["read"] =>
  taken
    .slice(0, SHOWN_n)
    .map(({ spot, entry, at_ms, said }) => ({ entry, at_ms, said, spotSaid: say.name(spot) }));

/** The places as they were known before one of their readings. */
export function placesWithout(places: Places, entry: EntryId): Places {
  const without = <Data>(said: ReadonlyMap<string, readonly From<Data>[]>) =>
    new Map(
      [...said].flatMap(([id, all]) => {
        const kept = all.filter((one) => one.entry !== entry);
        return kept.length > 0 ? [[id, kept] as const] : [];
      }),
    );
  const { light } = places;
  return {
    ...places,
    light: { ...light, pairs: without(light.pairs), underLamps: without(light.underLamps) },
  };
}

const SUPPOSED = "supposed" as EntryId;

/** The places as they would be known with one more reading. */
export function placesWith(places: Places, { spot, kind, data }: ReadAsk, at_ms: number): Places {
  const { light } = places;
  const more = <Data>(
    said: ReadonlyMap<string, readonly From<Data>[]>,
  ): ReadonlyMap<string, readonly From<Data>[]> =>
    new Map(said).set(spot, [
      ...(said.get(spot) ?? []),
      { at_ms, data: data as unknown as Data, entry: SUPPOSED },
    ]);
  return {
    ...places,
    light:
      kind === "light.pair"
        ? { ...light, pairs: more<PairData>(light.pairs) }
        : { ...light, underLamps: more<UnderLampData>(light.underLamps) },
  };
}
