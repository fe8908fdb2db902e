import type { PlantId } from "../book/entry.ts";
import type { Ledger } from "../house/index.ts";
import { ROLE_WORDS } from "../people/kinds.ts";
import { benchesInOrder } from "../places/places.ts";
import type { PlantFacts } from "../plants/facts.ts";
import { HABIT_WORDS } from "../plants/sentences.ts";
import type { Language } from "../words/say.ts";

export interface NameBook {
  /** "127"; "131?" for the later of two plants that were given one number; "no number". */
  numberOf(id: string): string;
  nameOf(id: string): string;
  /** Plants that need a new number and label. */
  readonly doubled: readonly PlantId[];
}

const WORDS = { en: { none: "no number", year: "year" }, de: { none: "ohne Nummer", year: "Jahr" } } as const;
const kept = new WeakMap<Ledger, { revision: number; language: Language; book: NameBook }>();

/** What people call the things of a book. Numbers go to whoever got them first in book order; both plants stay. */
export function nameBook(ledger: Ledger, language: Language): NameBook {
  const before = kept.get(ledger);
  if (before && before.revision === ledger.factsRevision && before.language === language) return before.book;
  const book = makeNames(ledger, language);
  kept.set(ledger, { revision: ledger.factsRevision, language, book });
  return book;
}

function makeNames(ledger: Ledger, language: Language): NameBook {
  const words = WORDS[language];
  const { places, people, batches, supplies } = ledger.house();
  const names = new Map<string, string>();
  const numbers = new Map<string, string>();
  const doubled: PlantId[] = [];
  ledger.foldAll();
  const taken = new Set<number>();
  const given = ledger
    .plants()
    .map((plant) => ({ plant, facts: ledger.lastState(plant)?.facts }))
    .sort((a, b) => ((a.facts?.numberedAt ?? "") < (b.facts?.numberedAt ?? "") ? -1 : 1));
  for (const { plant, facts } of given) {
    const number = facts?.number;
    if (number === undefined) numbers.set(plant, words.none);
    else if (taken.has(number)) {
      numbers.set(plant, `${number}?`);
      doubled.push(plant);
    } else {
      taken.add(number);
      numbers.set(plant, `${number}`);
    }
    names.set(plant, numbers.get(plant) as string);
  }
  for (const bench of benchesInOrder(places)) {
    names.set(bench.id, bench.name);
    for (const spot of bench.spots) names.set(spot.id, `${bench.name} ${spot.name}`);
  }
  for (const [person, role] of people.roles) names.set(person, ROLE_WORDS[language][role]);
  for (const batch of batches.batches.values()) names.set(batch.id, batch.name);
  for (const cultivar of batches.cultivars.values()) names.set(cultivar.id, cultivar.name);
  for (const supply of supplies.values()) names.set(supply.id, supply.name);
  return {
    numberOf: (id) => numbers.get(id) ?? words.none,
    nameOf: (id) => names.get(id) ?? id,
    doubled,
  };
}

/** "red cayenne, year 3"; the kind of fruit where no cultivar is written. */
export function kindSaid(facts: PlantFacts, ledger: Ledger, language: Language, now_ms: number): string {
  const cultivar = facts.cultivar && ledger.house().batches.cultivars.get(facts.cultivar)?.name;
  const name = cultivar ?? HABIT_WORDS[language][facts.habit];
  if (!facts.sownOn) return name;
  const year = new Date(now_ms).getUTCFullYear() - Number(facts.sownOn.slice(0, 4)) + 1;
  return `${name}, ${WORDS[language].year} ${Math.max(1, year)}`;
}
