import type { Mark } from "../engine/messages.ts";
import type { Person } from "../engine/questions.ts";

/** So long a server may be silent before its silence is worth a word. @source our assumption */
const SILENT_ms = 30 * 60_000;

export interface Missing {
  readonly roles: readonly Person["role"][];
  readonly since_ms: number;
}

/** Whose entries may not be here yet, and since when: the server last answered then, and others write too. */
export function othersMissing(
  { server, answered_ms }: Pick<Mark, "server" | "answered_ms">,
  people: readonly Person[],
  me: string | undefined,
  now_ms: number,
): Missing | undefined {
  if (server !== "silent" || answered_ms === undefined || now_ms - answered_ms < SILENT_ms) return undefined;
  const roles = [...new Set(people.filter(({ id }) => id !== me).map(({ role }) => role))];
  return roles.length > 0 ? { roles, since_ms: answered_ms } : undefined;
}
