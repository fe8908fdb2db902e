import type { Role } from "@sillwood/bench/people";
import type { Context } from "hono";
import { HttpProblem } from "../problem.ts";

/** Who asks: somebody at this machine, who holds the book anyway, or a paired device. */
export type Who =
  | { readonly at: "this machine"; readonly role: "grower" }
  | {
      readonly at: "device";
      readonly role: Role;
      readonly device: string;
      readonly person: string;
      /** Shut out: may hand in what it still has, and read nothing. */
      readonly closed: boolean;
    };

/** Nobody: addresses that need no key ask for none. */
export const whoOf = (c: Context): Who | undefined => c.get("who" as never) as Who | undefined;
export const setWho = (c: Context, who: Who): void => c.set("who" as never, who as never);

/** Refusals that a device understands by their number: pair again, and closed by the grower. */
const UNPAIRED = 401;
const CLOSED = 423;

/** @throws HttpProblem 401 for nobody, 423 for a device that was shut out */
export function reader(c: Context): Who {
  const who = whoOf(c);
  if (!who) throw new HttpProblem(UNPAIRED, "this device is not paired with the book");
  if (who.at === "device" && who.closed)
    throw new HttpProblem(CLOSED, "this device was closed by the grower");
  return who;
}

/** @throws HttpProblem as `reader`, and 403 for everybody but a grower */
export function grower(c: Context): Who {
  const who = reader(c);
  if (who.role !== "grower")
    throw new HttpProblem(403, "only the grower may do this", [
      { path: "role", message: "is not enough", value: who.role, limit: "grower" },
    ]);
  return who;
}
