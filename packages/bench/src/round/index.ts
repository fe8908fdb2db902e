export type * from "./pages.ts";
export { type Limit, type Pour, type Task, type Work, works } from "./task.ts";
