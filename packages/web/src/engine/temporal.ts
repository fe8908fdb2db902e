/** The engine needs Temporal. New browsers have it; the others fetch it (from the cache, offline) before it starts. */
export async function needTemporal(): Promise<void> {
  if (typeof (globalThis as { Temporal?: unknown }).Temporal === "undefined")
    await import("temporal-polyfill/global");
}
