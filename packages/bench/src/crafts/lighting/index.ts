export type * from "./page-shape.ts";
