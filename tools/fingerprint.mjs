import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { root } from "./run-program.mjs";

const skipped = new Set(["node_modules", "dist", ".git", "coverage"]);

function walk(path) {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path];
  return readdirSync(full).flatMap((name) => (skipped.has(name) ? [] : walk(`${path}/${name}`)));
}

function filesOf(paths, alsoUntracked) {
  const flags = alsoUntracked ? ["--cached", "--others", "--exclude-standard"] : ["--cached"];
  const listed = spawnSync("git", ["ls-files", "-z", ...flags, "--", ...paths], {
    cwd: root,
    encoding: "utf8",
  });
  // Without git (an unpacked archive) the files that lie there are all we can know.
  if (listed.status !== 0) return paths.flatMap(walk);
  return listed.stdout.split("\0").filter((path) => path !== "" && existsSync(join(root, path)));
}

/**
 * A hash of the content of files and folders as they lie in the working tree, so that it is the same before
 * and after a commit, on every machine. Times of files are not looked at: git does not keep them.
 */
export function fingerprint(paths, { alsoUntracked = false, without = /(?!)/ } = {}) {
  const hash = createHash("sha256");
  const files = [...new Set(filesOf(paths, alsoUntracked))].filter((path) => !without.test(path)).sort();
  for (const path of files) {
    const content = createHash("sha256")
      .update(readFileSync(join(root, path)))
      .digest("hex");
    hash.update(`${path}\0${content}\n`);
  }
  return hash.digest("hex").slice(0, 16);
}
