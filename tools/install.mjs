import { createHash } from "node:crypto";
import { existsSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { refuse, sqliteAdvice, sqliteLoads } from "./requirements.mjs";
import { root, runProgram } from "./run-program.mjs";

const lock = join(root, "package-lock.json");
const modules = join(root, "node_modules");
// npm writes this file last, so its time says when the folder was last made complete.
const hidden = join(modules, ".package-lock.json");
const mark = join(modules, ".sillwood-installed");

/** Native parts belong to one major version of Node on one system. */
function wanted() {
  const node = process.versions.node.split(".")[0];
  const content = createHash("sha256").update(readFileSync(lock)).digest("hex");
  return `${content} node${node} ${process.platform} ${process.arch}\n`;
}

/** A workspace added since the last installation is not yet linked, though every package from npm is there. */
function allLinked() {
  const { packages } = JSON.parse(readFileSync(lock, "utf8"));
  return Object.entries(packages).every(([path, entry]) => !entry.link || existsSync(join(root, path)));
}

function isInstalled() {
  if (!existsSync(hidden) || !allLinked()) return false;
  if (existsSync(mark) && readFileSync(mark, "utf8") === wanted()) return true;
  return statSync(hidden).mtimeMs >= statSync(lock).mtimeMs;
}

const npm = (...args) => runProgram("npm", [...args, "--no-audit", "--no-fund"]);

// The lock file is the developers' business: an installation never rewrites it.
const inPlace = () => npm("install", "--no-save");

/**
 * Makes node_modules agree with the lock file and SQLite load; ends the command with a plain sentence where it cannot.
 * A folder that is only out of date is brought up to date in place, so that nothing that runs from it is pulled away.
 */
export async function installWhenNeeded() {
  if (!isInstalled()) {
    const fresh = !existsSync(modules);
    console.log(fresh ? "Installing packages (about a minute) ..." : "Bringing packages up to date ...");
    let code = fresh ? await npm("ci") : await inPlace();
    if (code !== 0 && fresh) {
      console.log(
        "npm ci refused, as it does when the lock file was made by another npm; trying npm install ...",
      );
      code = await inPlace();
    }
    if (code !== 0) refuse(`npm could not install the packages (see above).\n${sqliteAdvice()}`);
  }
  if (!sqliteLoads()) {
    console.log("SQLite does not load under this Node; building it again ...");
    await npm("rebuild", "better-sqlite3");
    if (!sqliteLoads()) refuse(sqliteAdvice());
  }
  writeFileSync(mark, wanted());
}
