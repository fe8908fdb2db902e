import { type Entry, REDACTED } from "@sillwood/bench/book";
import { DEVICE_CLOSED } from "@sillwood/bench/people";
import type { AsideWhy } from "@sillwood/store/entry-store";
import type { Who } from "./who.ts";

/** Kinds on which the stores and the server act by themselves, whatever the fold thinks of their writer. */
const ACTS_AT_ONCE: ReadonlySet<string> = new Set([REDACTED, DEVICE_CLOSED]);
const DEVICE_CLOCK = "device.clock";

/**
 * Why an entry waits for the grower instead of going into the book; undefined where it may go in. A grower's device may bring
 * everything, also what others wrote: so a server that lost its book gets it back. What a helper's device says for others is taken
 * on the grower's word only, since a helper could write it in the grower's name.
 */
export function asideWhy(who: Who, entry: Entry): AsideWhy | undefined {
  if (who.at === "this machine") return undefined;
  if (who.closed) return "closed";
  if (who.role === "grower") return undefined;
  if (who.role === "viewer") return "viewer";
  if (entry.device !== who.device || entry.by !== who.person) return "for another";
  if (ACTS_AT_ONCE.has(entry.kind)) return "only the grower";
  const about = (entry.data as { readonly device?: unknown } | null)?.device;
  return entry.kind === DEVICE_CLOCK && about !== who.device ? "for another" : undefined;
}
