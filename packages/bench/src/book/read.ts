import type { Entry } from "./entry.ts";

type Writable = { -readonly [Field in keyof Entry]: Entry[Field] };

/**
 * Reads entries as they stand in a store, which took them through the gate. Names that many entries share (kinds, devices, people,
 * plants, zones) become one string each: a book of years is then half as large in memory, and what walks through it waits less for it.
 *
 * @returns text in RFC 8785 form -> entry
 * @throws SyntaxError (from the reader) when a text is no JSON
 */
export function entryReader(): (text: string) => Entry {
  const names = new Map<string, string>();
  const shared = <Name extends string>(name: Name): Name => {
    const known = names.get(name);
    if (known !== undefined) return known as Name;
    names.set(name, name);
    return name;
  };
  return (text) => {
    const entry = JSON.parse(text) as Writable;
    entry.kind = shared(entry.kind);
    entry.device = shared(entry.device);
    entry.by = shared(entry.by);
    entry.zone = shared(entry.zone);
    entry.on = entry.on.map(shared);
    return entry;
  };
}
