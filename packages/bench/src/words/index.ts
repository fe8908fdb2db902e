export type { Language, Say, UnitSystem } from "./say.ts";
export { type SayOptions, sayFor } from "./say-for.ts";
