/** A spot as a bench's entry names it. */
export interface SpotText {
  readonly id: string;
  readonly name: string;
}

const MOST_n = 500;

/** Spots as people write them, in walking order: `S1,S2,S3`, or `12` for twelve of them. Ids are put in once the bench is known. */
export function spotsOf(
  text: string,
): { readonly value: readonly { readonly name: string }[] } | { readonly wrong: string } {
  const count = /^\d+$/.test(text) ? Number(text) : undefined;
  if (count !== undefined && (count < 1 || count > MOST_n))
    return { wrong: `expected 1 to ${MOST_n} spots, or their names as S1,S2,S3` };
  const names =
    count === undefined
      ? text.split(/\s*[,;]\s*/).filter(Boolean)
      : Array.from({ length: count }, (_, i) => `${i + 1}`);
  const twice = names.find((name, i) => names.indexOf(name) < i);
  if (twice !== undefined)
    return { wrong: `two spots are called ${JSON.stringify(twice)}; expected different names` };
  return { value: names.map((name) => ({ name })) };
}

/** Gives spots their ids: those that the bench has keep theirs, so that its plants stay where they are. */
export const withIds = (
  names: readonly { readonly name: string }[],
  bench: string,
  known: readonly SpotText[],
): readonly SpotText[] => {
  const taken = new Set(known.map(({ id }) => id));
  return names.map(({ name }) => {
    const there = known.find((spot) => spot.name.toLowerCase() === name.toLowerCase());
    if (there) return { id: there.id, name };
    let id = `${bench}-${name.replace(/[^\w.-]+/g, "-").toLowerCase()}`.slice(0, 64);
    while (taken.has(id)) id = `${id.slice(0, 60)}-${taken.size}`;
    taken.add(id);
    return { id, name };
  });
};
