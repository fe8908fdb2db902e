// node tools/file-size.mjs: one file, one idea. Says how long our files are and refuses the longest.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, realpathSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { root } from "./run-program.mjs";

const longest = 400;
const code = /\.(ts|tsx|mjs|cjs|css)$/;
// Tables that a program wrote are as long as their data.
const exempt = /\.generated\.ts$|\/fixtures\//;

/** Lines of a text; the last line counts with or without its line end. */
export const linesOf = (text) => text.split("\n").length - (text.endsWith("\n") ? 1 : 0);

/** The value below which a share of the sorted numbers lies (nearest rank). */
export const rank = (sorted, share) => sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? 0;

/** Names the files that are too long, and how long files are on the whole. */
export function judgeSizes(files) {
  const counted = files.filter(({ path }) => code.test(path) && !exempt.test(path));
  const sizes = counted.map(({ lines }) => lines).sort((one, other) => one - other);
  return {
    files_n: sizes.length,
    median: rank(sizes, 0.5),
    p90: rank(sizes, 0.9),
    largest: sizes.at(-1) ?? 0,
    tooLong: counted.filter(({ lines }) => lines > longest),
  };
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const listed = spawnSync("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"], {
    cwd: root,
    encoding: "utf8",
  });
  const files = listed.stdout
    .split("\0")
    .filter((path) => code.test(path) && existsSync(join(root, path)))
    .map((path) => ({ path, lines: linesOf(readFileSync(join(root, path), "utf8")) }));
  const { files_n, median, p90, largest, tooLong } = judgeSizes(files);
  console.log(
    `${files_n} files: median ${median} lines, 90 % at most ${p90}, largest ${largest} (aims: 100, 250; stop: ${longest})`,
  );
  for (const { path, lines } of tooLong)
    console.error(`${path} has ${lines} lines; expected at most ${longest}`);
  if (tooLong.length > 0 || files_n === 0) process.exit(1);
}
