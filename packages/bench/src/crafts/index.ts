export type * from "./craft.ts";
export { crafts } from "./registry.ts";
