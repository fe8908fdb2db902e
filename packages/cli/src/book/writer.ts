import type { PersonId } from "@sillwood/bench/book";
import type { Ledger } from "@sillwood/bench/house";
import type { Draft } from "@sillwood/bench/round";
import { type Call, textOption } from "../command.ts";
import { UsageError } from "../errors.ts";

/**
 * Who writes: the person that `--by` names by role or id, else the grower who founded the book, since this shell holds the
 * grower's own file. In a book without people somebody new, who founds it.
 *
 * @throws UsageError when nobody, or more than one, answers to the role
 */
export function writerOf(call: Call, ledger: Ledger, newId: () => string): PersonId {
  const { roles } = ledger.house().people;
  const wanted = textOption(call, "by");
  if (roles.size === 0) return newId();
  if (wanted === undefined) {
    const grower = [...roles].find(([, role]) => role === "grower");
    return (grower ?? ([...roles][0] as [string, string]))[0];
  }
  if (roles.has(wanted)) return wanted;
  const fitting = [...roles].filter(([person, role]) => role === wanted || person.endsWith(wanted));
  if (fitting.length === 1) return (fitting[0] as [string, string])[0];
  const people = [...roles].map(([person, role]) => `${role} ${person}`).join(", ");
  throw new UsageError(
    `--by is ${JSON.stringify(wanted)}; ${fitting.length === 0 ? "nobody" : "more than one person"} answers to that. The book knows ${people}.`,
  );
}

/** What a first entry brings with it: its writer, as the grower of the new book. */
export const founding = (ledger: Ledger, by: PersonId): readonly Draft[] =>
  ledger.house().people.roles.size === 0
    ? [{ kind: "person.joined", on: [by], data: { role: "grower" } }]
    : [];
