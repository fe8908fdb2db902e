import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

/** Sentences that the engine holds from its start; those of a page on demand come with that page, under names of their own. */
const FROM_THE_START = /\/(words|words-workings|words-signs|whence)\.de\.ts$/;
const GERMAN = /\.de\.ts$/;
const STAND_IN = "\0german:";
const loader = fileURLToPath(new URL("src/engine/german.ts", import.meta.url));

/**
 * Puts a stand-in for each module of German sentences into the engine's script. It exports the same names, which hold nothing until
 * `needGerman` has been awaited: sources and tests import German as they import English, and a first screen does not carry it.
 */
export function germanOnDemand(): Plugin {
  return {
    name: "german-on-demand",
    enforce: "pre",
    resolveId(source, importer) {
      if (!importer || !GERMAN.test(source) || GERMAN.test(importer)) return null;
      const path = resolve(dirname(importer), source);
      return FROM_THE_START.test(path) ? STAND_IN + path : null;
    },
    load(id) {
      if (!id.startsWith(STAND_IN)) return null;
      const path = id.slice(STAND_IN.length);
      const names = [...readFileSync(path, "utf8").matchAll(/^export (?:const|function) (\w+)/gm)].map(
        ([, name]) => name,
      );
      return [
        `import { later } from ${JSON.stringify(loader)};`,
        `export let ${names.join(", ")};`,
        `later(() => import(${JSON.stringify(path)}).then((__sentences) => { ({ ${names.join(", ")} } = __sentences); }));`,
      ].join("\n");
    },
    generateBundle(_options, bundle) {
      const chunks = Object.values(bundle).flatMap((one) => (one.type === "chunk" ? [one] : []));
      const first = new Set(chunks.filter(({ isEntry }) => isEntry));
      // A set that grows while it is walked: what the first scripts import, and what that imports.
      for (const { imports } of first)
        for (const chunk of chunks) if (imports.includes(chunk.fileName)) first.add(chunk);
      for (const chunk of chunks)
        for (const id of chunk.moduleIds)
          if (id.startsWith(STAND_IN) && !first.has(chunk))
            this.error(
              `${id.slice(STAND_IN.length)} is imported by a page on demand: name it otherwise (words-page.de.ts), so that it comes with the page`,
            );
    },
  };
}
