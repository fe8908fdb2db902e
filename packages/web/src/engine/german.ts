/**
 * German of the engine. English comes with the first script; the sentences in `*.de.ts` of crafts and house are left out of it by
 * `german-on-demand.ts` and come (from the cache, offline) before the first question that is asked in German.
 */
const loads: (() => Promise<void>)[] = [];
let coming: Promise<unknown> | undefined;

/**
 * Called by what stands for a module of sentences until it is here: code that a build writes.
 *
 * @public
 */
export const later = (load: () => Promise<void>): void => {
  loads.push(load);
};

/** Where sentences cannot be had just now the question fails, and the next one tries again. */
export async function needGerman(): Promise<void> {
  coming ??= Promise.all(loads.map((load) => load()));
  try {
    await coming;
  } catch (error) {
    coming = undefined;
    throw error;
  }
}
