import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, existsSync, mkdtempSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { throwAway } from "./throw-away.ts";

const sillwood = fileURLToPath(new URL("../../packages/cli/dist/sillwood.js", import.meta.url));

export interface HouseOptions {
  /** A book to copy and open; without one, a new and empty book. */
  readonly book?: string;
  /** Opens the demo book instead. */
  readonly demo?: boolean;
  /** Lets paired phones in over HTTPS as well. */
  readonly atHome?: boolean;
  /** More words for `sillwood open`. */
  readonly words?: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
  /** Another server than the built one, for the harness's own tests; the port is added as `--port N`. */
  readonly program?: readonly [string, ...string[]];
}

/** A running house on loopback, with a book of its own in a temporary folder. */
export interface House {
  readonly address: string;
  /** Where phones come in, on loopback as well; with `atHome` only. */
  readonly homePort: number | undefined;
  readonly folder: string;
  /** The book file that is served, for looking at it from outside; undefined for the demo. */
  readonly book: string | undefined;
  /** Asks the server to close, and waits for it. */
  stop(): Promise<void>;
  /** Ends the server at once, as a power cut does. */
  kill(): Promise<void>;
  /** Starts it again on the same port and book. */
  start(): Promise<void>;
  discard(): Promise<void>;
}

/** A port of loopback that nobody listens on at this moment. */
async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  await once(server, "close");
  if (address === null || typeof address === "string") throw new Error("no port was given");
  return address.port;
}

const pause = (span_ms: number) => new Promise((resolve) => setTimeout(resolve, span_ms));

async function waitForAnswer(address: string, child: ChildProcess, said: () => string): Promise<void> {
  const until_ms = Date.now() + 60_000;
  while (Date.now() < until_ms) {
    if (child.exitCode !== null || child.signalCode !== null) break;
    const answer = await fetch(address).catch(() => undefined);
    if (answer?.ok) return;
    await pause(50);
  }
  throw new Error(`the server on ${address} does not answer; it said:\n${said()}`);
}

function bookWords(options: HouseOptions, folder: string): { book: string | undefined; words: string[] } {
  if (options.demo) return { book: undefined, words: ["--demo"] };
  const book = join(folder, options.book ? basename(options.book) : "trial.book");
  if (options.book) {
    cpSync(options.book, book, { recursive: true });
    // A copy of an open SQLite book is whole only with its log, and with the files that its entries name.
    for (const tail of ["-wal", "-shm", "-files"]) {
      if (existsSync(options.book + tail)) cpSync(options.book + tail, book + tail, { recursive: true });
    }
  }
  return { book, words: ["--book", book] };
}

/** Starts the built house and waits until it answers. */
export async function openHouse(options: HouseOptions = {}): Promise<House> {
  const folder = mkdtempSync(join(tmpdir(), "sillwood-house-"));
  const port = await freePort();
  const address = `http://127.0.0.1:${port}/`;
  const { book, words } = bookWords(options, folder);
  const [program, ...first] = options.program ?? [process.execPath, sillwood, "open", ...words];
  const homePort = options.atHome ? await freePort() : undefined;
  const home = homePort === undefined ? [] : ["--at-home", "--home-port", String(homePort)];
  const args = [...first, "--port", String(port), ...home, ...(options.words ?? [])];
  // Whatever the house keeps for its people lands in the temporary folder, never in the tester's own.
  const homes = {
    HOME: folder,
    USERPROFILE: folder,
    XDG_DATA_HOME: folder,
    XDG_CONFIG_HOME: folder,
    SILLWOOD_NO_BROWSER: "1",
  };
  let child: ChildProcess | undefined;

  async function start() {
    let said = "";
    const started = spawn(program, args, { cwd: folder, env: { ...process.env, ...homes, ...options.env } });
    for (const stream of [started.stdout, started.stderr])
      stream.setEncoding("utf8").on("data", (text) => (said += text));
    child = started;
    await waitForAnswer(address, started, () => said);
  }
  async function end(signal: "SIGTERM" | "SIGKILL") {
    const running = child;
    child = undefined;
    if (!running || running.exitCode !== null || running.signalCode !== null) return;
    const gone = once(running, "exit");
    running.kill(signal);
    await gone;
  }

  const house: House = {
    address,
    homePort,
    folder,
    book,
    stop: () => end("SIGTERM"),
    kill: () => end("SIGKILL"),
    start,
    async discard() {
      await end("SIGKILL");
      await throwAway(folder);
    },
  };
  try {
    await start();
  } catch (error) {
    await house.discard();
    throw error;
  }
  return house;
}
