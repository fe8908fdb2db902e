import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir, userInfo } from "node:os";
import { dirname, join } from "node:path";

/** A Chromium that starts on this machine, and what it must find in its environment. */
export interface BrowserProgram {
  readonly path: string;
  readonly env: Readonly<Record<string, string>>;
}

const packageName = "@sparticuz/chromium";
const require = createRequire(import.meta.url);

function packedVersion(): string {
  const entry = require.resolve(packageName);
  const root = entry.slice(0, entry.lastIndexOf(`${packageName}/`) + packageName.length);
  return (JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string }).version;
}

// The package's own font list names folders that only its usual host has.
const fontList = (folder: string) => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${folder}/fonts</dir>
  <dir>/usr/share/fonts</dir>
  <cachedir>${folder}/font-cache</cachedir>
  <alias><family>sans-serif</family><prefer><family>Open Sans</family></prefer></alias>
  <alias><family>system-ui</family><prefer><family>Open Sans</family></prefer></alias>
</fontconfig>
`;

/** Unpacks into a folder of its own and puts it in place in one move: several test runs may start at once. */
function unpack(folder: string): void {
  const staging = mkdtempSync(join(tmpdir(), "sillwood-unpack-"));
  const script = `import(${JSON.stringify(packageName)}).then((m) => m.default.executablePath())`;
  const env = {
    ...process.env,
    TMPDIR: staging,
    // Makes the package unpack the libraries as well that a bare system lacks (nss and its like).
    AWS_EXECUTION_ENV: "AWS_Lambda_nodejs20.x",
  };
  const done = spawnSync(process.execPath, ["-e", script], {
    cwd: import.meta.dirname,
    env,
    encoding: "utf8",
  });
  if (done.status !== 0) throw new Error(`the test browser could not be unpacked: ${done.stderr}`);
  writeFileSync(join(staging, "fonts.conf"), fontList(folder));
  try {
    renameSync(staging, folder);
  } catch (error) {
    rmSync(staging, { recursive: true, force: true });
    if (!existsSync(join(folder, "fonts.conf"))) throw error;
  }
}

const starts = (program: BrowserProgram) =>
  spawnSync(program.path, ["--version"], { env: { ...process.env, ...program.env } }).status === 0;

let found: BrowserProgram | undefined;

/** The browser named in SILLWOOD_CHROMIUM, else the one that npm brought, unpacked once per version and person. */
export function browserProgram(): BrowserProgram {
  if (found) return found;
  const own = process.env["SILLWOOD_CHROMIUM"];
  if (own) {
    found = { path: own, env: {} };
    return found;
  }
  const folder = join(tmpdir(), `sillwood-chromium-${packedVersion()}-${userInfo().username}`);
  if (!existsSync(join(folder, "fonts.conf"))) unpack(folder);
  const bare = { path: join(folder, "chromium"), env: { FONTCONFIG_FILE: join(folder, "fonts.conf") } };
  const withLibraries = { ...bare, env: { ...bare.env, LD_LIBRARY_PATH: join(folder, "al2023/lib") } };
  found = [bare, withLibraries].find(starts);
  if (!found)
    throw new Error(`the test browser in ${dirname(bare.path)} does not start; set SILLWOOD_CHROMIUM`);
  return found;
}

/** Every browser of the tests starts with these; none may reach out by itself. */
export const browserFlags = ["--no-sandbox", "--disable-gpu", "--disable-background-networking"] as const;
