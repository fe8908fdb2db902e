import { existsSync } from "node:fs";
import { type AddressInfo, createServer } from "node:net";
import { fileURLToPath } from "node:url";
import { createApp } from "@sillwood/server/app";
import { ListenError, listen } from "@sillwood/server/listen";
import { kinds } from "../book/kinds.ts";
import { openForWriting } from "../book/open-book.ts";
import { type BookPlace, placeOf, placeSaid } from "../book/place.ts";
import { type Call, type Command, textOption } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { demoPath } from "../opening/demo-book.ts";

const USUAL_PORT = 7373;

/** Serves the book and the app on this machine until somebody stops it. */
export const open: Command = {
  verb: "open",
  what: "serve the book and the app on this computer",
  usage: ["[--demo | --book FILE|postgres://…] [--port N]"],
  options: {
    demo: { type: "boolean", what: "an invented grower's book with about forty plants, made anew each day" },
    port: {
      type: "string",
      value: "N",
      what: `port on this computer; else ${USUAL_PORT}, 0 for any free one`,
    },
    web: { type: "string", value: "FOLDER", what: "the built app; else the one that came with this program" },
  },
  help: [
    "Only this computer can reach it: there is no sign-in yet, so no other address is served.",
    "Stop it with Ctrl+C. Nothing that was acknowledged is lost however it ends.",
  ],
  example: ["sillwood open --demo", "sillwood open --book my.sillwood --port 7400"],
  async run(call) {
    if (call.words.length > 0)
      throw new UsageError(`open takes no words, only options: ${call.words[0]?.slice(0, 60)}.`);
    const port = await freePort(portOf(call));
    if (call.options["demo"] === true && call.options["book"] !== undefined)
      throw new UsageError("--demo and --book name two books; choose one.");
    const place: BookPlace =
      call.options["demo"] === true ? { engine: "sqlite", path: await demoPath(call.around) } : placeOf(call);
    const store = await openForWriting(place, `sillwood open, http://127.0.0.1:${port}`);
    try {
      const webDir = webFolder(call);
      const app = createApp({
        store,
        kinds,
        ...(webDir === undefined ? {} : { webDir }),
        log: (line) => call.around.err(`${line}\n`),
      });
      const listening = await listen(app, { port }).catch((error: unknown) => {
        if (error instanceof ListenError) throw dataError("port", error.message, port);
        throw error;
      });
      const stopped = call.around.stopped();
      // One month of one device each start: the whole book comes round without anybody waiting for it.
      const { damaged } = await store.verify("next");
      const count_n = await store.count_n();
      const json = { book: placeSaid(place), entries_n: count_n, address: `${listening.url}/` };
      call.ready(
        json,
        `${placeSaid(place)}: ${count_n} ${count_n === 1 ? "entry" : "entries"}.\n` +
          `Open in a browser on this computer:\n${listening.url}/\n` +
          (webDir === undefined
            ? "The app is not built: npm run build. Programs are served all the same.\n"
            : "Ctrl+C stops it.\n"),
      );
      if (damaged.length > 0)
        call.around.err(`${damaged.length} damaged entries wait for a good copy from another device.\n`);
      await stopped;
      await listening.close();
      return { json, text: "", shown: true };
    } finally {
      await store.close();
    }
  },
};

/** The port itself; for 0 one that is free just now, so that the book's lock can name the address from the first moment. */
async function freePort(port: number): Promise<number> {
  if (port !== 0) return port;
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port: free } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return free;
}

function portOf(call: Call): number {
  const typed = textOption(call, "port");
  if (typed === undefined) return USUAL_PORT;
  const port = /^\d{1,5}$/.test(typed) ? Number(typed) : Number.NaN;
  if (!(port >= 0 && port <= 65_535))
    throw new UsageError(`--port is ${JSON.stringify(typed)}; expected 0 to 65535.`);
  return port;
}

/** The app beside this program: in the built file's neighbour package, or where `--web` says. */
function webFolder(call: Call): string | undefined {
  const given = textOption(call, "web");
  if (given !== undefined) {
    if (!existsSync(given)) throw dataError("web", `there is no folder ${given}`, given);
    return given;
  }
  const usual = ["../../web/dist/", "../../../web/dist/"].map((path) =>
    fileURLToPath(new URL(path, import.meta.url)),
  );
  return usual.find((path) => existsSync(`${path}/index.html`));
}
