// node tools/build.mjs [--if-stale] [web|server|cli|science ...]: builds what is served, run or published.
import { copyFileSync, existsSync, readFileSync, realpathSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { fingerprint } from "./fingerprint.mjs";
import { packAssets } from "./pack-assets.mjs";
import { root, runNode } from "./run-program.mjs";

const notBuilt = /\.(test|test-d)\.tsx?$|\.md$/;

const usualEntry = "src/main.ts";

/**
 * One file for Node: own packages inside, everything from npm left outside, since some of it is native.
 *
 * @param folder folder from the root, as `packages/cli`; the file goes into its `dist`
 */
export async function bundle(folder, outFile, entry = usualEntry) {
  const { build, defaultServerConditions } = await import("vite");
  const resolve = { conditions: ["source", ...defaultServerConditions] };
  await build({
    root: join(root, folder),
    configFile: false,
    logLevel: "warn",
    resolve,
    ssr: { resolve, noExternal: [/^@sillwood\//] },
    build: {
      ssr: entry,
      outDir: "dist",
      // Several files may be built into one folder, one after another.
      emptyOutDir: entry === usualEntry,
      target: "node20",
      minify: false,
      sourcemap: true,
      rolldownOptions: { output: { entryFileNames: outFile, codeSplitting: false } },
    },
  });
}

/** A thread's own program stands beside whoever starts it. */
const withThreads = async (folder, outFile) => {
  await bundle(folder, outFile);
  const thread = "slow-hash-worker.mjs";
  copyFileSync(join(root, "packages/server/src/access", thread), join(root, folder, "dist", thread));
};

const typescript = join(root, "node_modules/typescript/bin/tsc");

/** Plain modules with declarations, for whoever wants the formulas without the house. */
async function declare(name) {
  const flags = [
    "--noEmit",
    "false",
    "--declaration",
    "--rewriteRelativeImportExtensions",
    "--outDir",
    `packages/${name}/dist`,
  ];
  const code = await runNode([
    typescript,
    "-p",
    `packages/${name}`,
    ...flags,
    "--rootDir",
    `packages/${name}/src`,
  ]);
  if (code !== 0) throw new Error(`tsc could not build packages/${name}`);
}

const products = {
  web: {
    sources: ["packages/web", "packages/bench", "packages/science"],
    made: "packages/web/dist/index.html",
    make: async () => {
      await (await import("vite")).build({ root: join(root, "packages/web"), logLevel: "warn" });
      await packAssets(join(root, "packages/web/dist"));
    },
  },
  server: {
    sources: ["packages/server", "packages/store", "packages/bench", "packages/science", "simulator"],
    made: "packages/server/dist/server.js",
    make: () => withThreads("packages/server", "server.js"),
  },
  cli: {
    sources: [
      "packages/cli",
      "packages/server",
      "packages/store",
      "packages/bench",
      "packages/science",
      "simulator",
    ],
    made: "packages/cli/dist/sillwood.js",
    make: () => withThreads("packages/cli", "sillwood.js"),
  },
  science: {
    sources: ["packages/science"],
    made: "packages/science/dist/units/index.js",
    make: () => declare("science"),
  },
};

const shared = ["package-lock.json", "tsconfig.base.json", "tools/build.mjs", "tools/pack-assets.mjs"];
const markOf = (name) => join(root, "packages", name, "dist/built-from.txt");
const sourcesOf = (product) =>
  fingerprint([...product.sources, ...shared], { alsoUntracked: true, without: notBuilt });

function isFresh(name, product) {
  const mark = markOf(name);
  if (!existsSync(join(root, product.made)) || !existsSync(mark)) return false;
  return readFileSync(mark, "utf8") === sourcesOf(product);
}

/** Builds the named products, or only those whose sources have changed since. */
export async function build(names, { ifStale }) {
  for (const name of names) {
    const product = products[name];
    if (ifStale && isFresh(name, product)) continue;
    const start_ms = Date.now();
    const from = sourcesOf(product);
    await product.make();
    if (!existsSync(join(root, product.made))) throw new Error(`building ${name} made no ${product.made}`);
    writeFileSync(markOf(name), from);
    console.log(`built ${name} in ${((Date.now() - start_ms) / 1000).toFixed(1)} s`);
  }
}

/** What went wrong, without the way through the bundler's own files that its messages carry. */
export const plainly = (error) => String(error.message).split(/\n\s+at /)[0];

/** What a running house needs; the science package is only built to be published. */
export const running = ["web", "server", "cli"];

const calledDirectly = process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url);
if (calledDirectly) {
  const words = process.argv.slice(2);
  const names = words.filter((word) => word !== "--if-stale");
  const unknown = names.find((name) => !(name in products));
  if (unknown) {
    console.error(`there is no product ${unknown}; expected ${Object.keys(products).join(", ")}`);
    process.exit(2);
  }
  try {
    await build(names.length > 0 ? names : Object.keys(products), { ifStale: words.includes("--if-stale") });
  } catch (error) {
    console.error(plainly(error));
    process.exit(1);
  }
}
