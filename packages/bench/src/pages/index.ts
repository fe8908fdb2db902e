export { AbsenceError, awayPage, LONGEST_AWAY_d } from "./away-page.ts";
export { AHEAD_d, type Asked, type Desk, deskAt, type PlantView } from "./desk.ts";
export { type Doubt, doubtsOf } from "./doubts.ts";
export { assumedSite, type FirstIds, type FourFacts, firstAnswer, firstDrafts } from "./first-answer.ts";
export { type ListColumn, type ListKind, listColumns } from "./list-columns.ts";
export type { ListOptions, ListPreview, ListProblem } from "./list-rows.ts";
export {
  assumptionsPage,
  type BenchRow,
  looksPage,
  type PlantRow,
  plantList,
  weighingRun,
  wrongDesk,
} from "./lists.ts";
export { logLine, logPage } from "./log-page.ts";
export { kindSaid, nameBook } from "./names.ts";
export { inWalkingOrder, plantPage } from "./plant-page.ts";
export { readList } from "./read-list.ts";
export { unreadableDrafts } from "./unreadable.ts";
export { craftPage } from "./world.ts";
