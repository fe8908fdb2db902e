export { apartRules, inHandOrder, keepApart, orderRules } from "./conflicts.ts";
export { roundKinds, skipReasons } from "./kinds.ts";
export type * from "./pages.ts";
export { type RoundOptions, theRound } from "./round.ts";
export { type Limit, type Pour, type Task, type Work, works } from "./task.ts";
export { workSaid } from "./words.ts";
