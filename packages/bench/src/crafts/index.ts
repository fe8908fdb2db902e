export type * from "./craft.ts";
export { PageError } from "./craft.ts";
export { crafts } from "./registry.ts";
