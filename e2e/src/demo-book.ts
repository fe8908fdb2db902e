import { execFile, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readFileSync, renameSync, rmSync } from "node:fs";
import { tmpdir, userInfo } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import type { DeviceLook } from "./device.ts";
import { type House, type HouseOptions, openHouse } from "./house.ts";

/** The demo's morning: Tuesday 14 January 2025, 07:30 where its grower lives. */
export const DEMO_NOW_ms = Date.parse("2025-01-14T15:30:00Z");
/** A device that stands in the demo: its clock and zone. */
export const demoLook = { now_ms: DEMO_NOW_ms, timezone: "America/Los_Angeles" } satisfies DeviceLook;

const root = fileURLToPath(new URL("../../", import.meta.url));

function runNode(args: readonly string[]): void {
  const done = spawnSync(process.execPath, args, { cwd: root, encoding: "utf8" });
  if (done.status !== 0) throw new Error(`the demo book could not be made: ${done.stderr}${done.stdout}`);
}

/** The demo book of that morning, seed 1; made once for each build. */
function demoBook(): string {
  const builtFrom = readFileSync(join(root, "packages/cli/dist/built-from.txt"), "utf8");
  const key = createHash("sha256").update(`${root} ${builtFrom} ${DEMO_NOW_ms}`).digest("hex").slice(0, 16);
  const folder = join(tmpdir(), `sillwood-demo-${key}-${userInfo().username}`);
  const book = join(folder, "demo.sillwood");
  if (existsSync(book)) return book;
  const staging = mkdtempSync(join(tmpdir(), "sillwood-demo-making-"));
  const now = new Date(DEMO_NOW_ms).toISOString();
  const plain = join(staging, "plain");
  runNode(["tools/run.mjs", "simulator/src/main.ts", "--out", plain, "--now", now, "--seed", "1"]);
  const made = join(staging, "demo.sillwood");
  runNode(["packages/cli/dist/sillwood.js", "book", "import", plain, "--book", made]);
  try {
    renameSync(staging, folder);
  } catch (error) {
    rmSync(staging, { recursive: true, force: true });
    if (!existsSync(book)) throw error;
  }
  return book;
}

/** A house with a copy of the demo book of that morning. */
export const openDemo = (more: Pick<HouseOptions, "atHome"> = {}): Promise<House> =>
  openHouse({ book: demoBook(), ...more });

/** What the shell answers about the served book, on the demo's morning unless said otherwise. */
export async function askDemo<Answer>(
  house: House,
  words: readonly string[],
  at_ms = DEMO_NOW_ms,
): Promise<Answer> {
  if (house.book === undefined) throw new Error("this house serves no book of its own");
  const at = new Date(at_ms).toISOString();
  const program = join(root, "packages/cli/dist/sillwood.js");
  const { stdout } = await promisify(execFile)(
    process.execPath,
    [program, ...words, "--json", "--book", house.book, "--at", at],
    { maxBuffer: 50_000_000 },
  );
  return JSON.parse(stdout) as Answer;
}
