import { uuidMaker } from "@sillwood/bench/book";
import { type Role, roles } from "@sillwood/bench/people";
import type { EntryStore } from "@sillwood/store/entry-store";
import { loadPresent } from "../book/load-book.ts";
import { type Call, textOption } from "../command.ts";
import { UsageError } from "../errors.ts";
import type { Doors } from "./at-home.ts";

/** A code for a computer without a screen of its own: for whoever has this role already, else for somebody new. */
export async function pairFirst(
  call: Call,
  store: EntryStore,
  doors: Doors,
): Promise<{ readonly code: string } | undefined> {
  const typed = textOption(call, "pair");
  if (typed === undefined) return undefined;
  const role = roles.find((each) => each === typed);
  if (role === undefined)
    throw new UsageError(`--pair is ${JSON.stringify(typed)}; expected ${roles.join(", ")}.`);
  if (doors.address === undefined)
    throw new UsageError("--pair needs a door for phones: --at-home or --behind.");
  return doors.code(await personOf(call, store, role), role);
}

async function personOf(call: Call, store: EntryStore, role: Role): Promise<string> {
  const { ledger } = await loadPresent(store, {
    zone: call.around.zone,
    language: call.language,
    units: call.units,
    whole: false,
  });
  const people = ledger.house().people.roles;
  const known = [...people].find(([, each]) => each === role)?.[0];
  if (known !== undefined) return known;
  // In a book that has people only the grower lets somebody new in, and that is an entry: made on his screen.
  if (people.size > 0 || role !== "grower")
    throw new UsageError(
      `the book knows no ${role}. The grower lets people in: People in Settings, or sillwood enter person.joined new role=${role}`,
    );
  return uuidMaker()(call.around.now_ms(), call.around.random);
}
