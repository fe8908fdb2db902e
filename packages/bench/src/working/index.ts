export type { Reading } from "./reading.ts";
export { type Origin, type Working, type WorkingInput, weakest } from "./working.ts";
