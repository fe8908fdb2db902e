/** What the engine is told as now. One place, so that a book can be looked at as of another moment. */
let shift_ms = 0;

export const nowMs = (): number => Date.now() + shift_ms;

/** Moves now to an instant; time goes on from there. Undefined returns to the device's own clock. */
function lookFrom(at_ms: number | undefined): void {
  shift_ms = at_ms === undefined ? 0 : at_ms - Date.now();
}
