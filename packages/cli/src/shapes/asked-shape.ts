import type { Reading } from "../book/session.ts";
import { iso } from "./instants.ts";

/** When a page was asked for, in front of every page's JSON. */
export const askedShape = ({ now_ms, known_ms, desk }: Pick<Reading, "now_ms" | "known_ms" | "desk">) => ({
  now: iso(now_ms),
  known: known_ms === undefined ? null : iso(known_ms),
  zone: desk.say.zone,
  language: desk.say.language,
  units: desk.say.units,
});
