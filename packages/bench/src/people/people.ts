import type { Entry, PersonId } from "../book/entry.ts";
import { type AssumptionSet, peopleKinds, type Role } from "./kinds.ts";

/** Who is who, and what the grower has put in place of our assumptions. */
export interface People {
  readonly roles: ReadonlyMap<PersonId, Role>;
  readonly assumptions: ReadonlyMap<string, number>;
}

export const noPeople: People = { roles: new Map(), assumptions: new Map() };

/** The first to join as grower founds the book; after that only a grower lets people in. */
export function foldPeople(people: People, entry: Entry): People {
  if (entry.kind === peopleKinds.joined.kind) {
    const { role } = entry.data as { role: Role };
    const founding = people.roles.size === 0;
    if (!founding && people.roles.get(entry.by) !== "grower") return people;
    const roles = new Map(people.roles);
    for (const person of entry.on) roles.set(person, role);
    return { ...people, roles };
  }
  if (entry.kind === peopleKinds.assumption.kind) {
    const { key, value } = entry.data as unknown as AssumptionSet;
    return { ...people, assumptions: new Map(people.assumptions).set(key, value) };
  }
  return people;
}
