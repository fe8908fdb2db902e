/** One file for Node in the `dist` of a folder (from the root): own packages inside, everything from npm outside. */
export function bundle(folder: string, outFile: string, entry?: string): Promise<void>;
/** Builds the named products, or only those whose sources have changed since. */
export function build(names: readonly string[], options: { readonly ifStale: boolean }): Promise<void>;
