/** What the engine is told as now. One place, so that nothing else in the app reads the device's clock. */
export const nowMs = (): number => Date.now();
