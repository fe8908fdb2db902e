// npm start [-- arguments of "sillwood open"]: from a fresh clone to the open book, with plain Node.
import { spawn } from "node:child_process";
import { join } from "node:path";
import { build, plainly, running } from "./build.mjs";
import { installWhenNeeded } from "./install.mjs";
import { refuse, requirePrograms } from "./requirements.mjs";
import { root } from "./run-program.mjs";

requirePrograms();
await installWhenNeeded();
try {
  await build(running, { ifStale: true });
} catch (error) {
  refuse(`Building failed: ${plainly(error)}`);
}

const given = process.argv.slice(2);
const args = given.some((word) => word === "--book" || word.startsWith("--book="))
  ? given
  : ["--demo", ...given];
const sillwood = spawn(process.execPath, [join(root, "packages/cli/dist/sillwood.js"), "open", ...args], {
  cwd: root,
  stdio: ["inherit", "pipe", "inherit"],
});

function showInBrowser(address) {
  const hasDesktop = process.platform !== "linux" || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  if (process.env.SILLWOOD_NO_BROWSER === "1" || process.env.CI || !hasDesktop) return;
  const opener = { darwin: ["open"], win32: ["cmd", "/c", "start", ""] }[process.platform] ?? ["xdg-open"];
  const browser = spawn(opener[0], [...opener.slice(1), address], { stdio: "ignore", detached: true });
  // The address stands on the terminal as well, so a desktop without an opener loses nothing.
  browser.on("error", () => {});
  browser.unref();
}

let shown = false;
let line = "";
sillwood.stdout.setEncoding("utf8").on("data", (text) => {
  process.stdout.write(text);
  if (shown) return;
  line += text;
  const address = /http:\/\/(?:localhost|127\.0\.0\.1|\[::1\]):\d+\S*/.exec(line)?.[0];
  // The address may still be arriving while its line has no end.
  if (!address || !line.slice(line.indexOf(address)).includes("\n")) return;
  shown = true;
  showInBrowser(address);
});

// The terminal sends Ctrl-C to both; the book is closed by the one that holds it, and then this one ends.
process.on("SIGINT", () => {});
process.on("SIGTERM", () => sillwood.kill("SIGTERM"));
sillwood.on("exit", (code) => process.exit(code ?? 1));
