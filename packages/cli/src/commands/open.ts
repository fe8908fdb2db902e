import { existsSync } from "node:fs";
import { type AddressInfo, createServer } from "node:net";
import { fileURLToPath } from "node:url";
import { ListenError } from "@sillwood/server/listen";
import { kinds } from "../book/kinds.ts";
import { openForWriting } from "../book/open-book.ts";
import { type BookPlace, placeOf, placeSaid } from "../book/place.ts";
import { type Call, type Command, textOption } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { nightlyBackups } from "../keeping/nightly.ts";
import { type Doors, openDoors, portOf } from "../opening/at-home.ts";
import { demoPath } from "../opening/demo-book.ts";
import { pairFirst } from "../opening/pair-first.ts";

const USUAL_PORT = 7373;

/** Serves the book and the app on this machine until somebody stops it. */
export const open: Command = {
  verb: "open",
  what: "serve the book and the app on this computer, and to paired phones at home",
  usage: [
    "[--demo | --book FILE|postgres://…] [--port N]",
    "--at-home [--name NAME.local] [--home-port N] [--pair ROLE]",
    "--behind https://NAME/ [--home-port N] [--pair ROLE]",
  ],
  options: {
    demo: { type: "boolean", what: "an invented grower's book with about forty plants, made anew each day" },
    port: {
      type: "string",
      value: "N",
      what: `port on this computer; else ${USUAL_PORT}, 0 for any free one`,
    },
    "at-home": {
      type: "boolean",
      what: "let paired phones in over HTTPS, with a certificate that this computer makes",
    },
    behind: {
      type: "string",
      value: "URL",
      what: "let paired phones in through a proxy that answers to this https address",
    },
    name: { type: "string", value: "NAME", what: "a further name of this computer at home, as bench.local" },
    "home-port": { type: "string", value: "N", what: "port for phones; else one more than --port" },
    pair: { type: "string", value: "ROLE", what: "print a code for one phone: grower, helper, viewer" },
    web: { type: "string", value: "FOLDER", what: "the built app; else the one that came with this program" },
  },
  help: [
    "Without --at-home or --behind only this computer can reach it, and nobody is asked for a key.",
    "While it is open it keeps a backup a day, two weeks of them, in the device's folder under backups.",
    "A phone comes in by a code from People in Settings; docs/at-home.md tells the steps.",
    "Stop it with Ctrl+C. Nothing that was acknowledged is lost however it ends.",
  ],
  example: ["sillwood open --demo", "sillwood open --book my.sillwood --at-home"],
  async run(call) {
    if (call.words.length > 0)
      throw new UsageError(`open takes no words, only options: ${call.words[0]?.slice(0, 60)}.`);
    const port = await freePort(portOf(call, "port", USUAL_PORT));
    if (call.options["demo"] === true && call.options["book"] !== undefined)
      throw new UsageError("--demo and --book name two books; choose one.");
    const place: BookPlace =
      call.options["demo"] === true ? { engine: "sqlite", path: await demoPath(call.around) } : placeOf(call);
    const store = await openForWriting(place, `sillwood open, http://127.0.0.1:${port}`);
    try {
      const webDir = webFolder(call);
      const doors = await openDoors(call, port, {
        store,
        kinds,
        ...(webDir === undefined ? {} : { webDir }),
        log: (line) => call.around.err(`${line}\n`),
      }).catch((error: unknown) => {
        if (error instanceof ListenError) throw dataError("port", error.message, port);
        throw error;
      });
      // The demo is made anew each day; every other book is kept by itself.
      const nightly =
        call.options["demo"] === true
          ? undefined
          : nightlyBackups(store, call.around.home, {
              now_ms: () => call.around.now_ms(),
              tell: (line) => call.around.err(`${line}\n`),
            });
      const stopped = call.around.stopped();
      // One month of one device each start: the whole book comes round without anybody waiting for it.
      const { damaged } = await store.verify("next");
      const count_n = await store.count_n();
      const first = await pairFirst(call, store, doors);
      const json = {
        book: placeSaid(place),
        entries_n: count_n,
        address: `${doors.own.url}/`,
        ...(doors.address === undefined ? {} : { atHome: doors.address }),
        ...(doors.fingerprint === undefined ? {} : { fingerprint: doors.fingerprint }),
        ...(first ? { code: first.code } : {}),
      };
      call.ready(
        json,
        `${placeSaid(place)}: ${count_n} ${count_n === 1 ? "entry" : "entries"}.\n` +
          `Open in a browser on this computer:\n${doors.own.url}/\n` +
          atHomeSaid(doors) +
          (first ? `Code for one phone, for ten minutes: ${first.code}\n` : "") +
          (webDir === undefined
            ? "The app is not built: npm run build. Programs are served all the same.\n"
            : "Ctrl+C stops it.\n"),
      );
      if (damaged.length > 0)
        call.around.err(`${damaged.length} damaged entries wait for a good copy from another device.\n`);
      await stopped;
      nightly?.stop();
      await doors.close();
      return { json, text: "", shown: true };
    } finally {
      await store.close();
    }
  },
};

function atHomeSaid({ address, fingerprint }: Doors): string {
  if (address === undefined) return "";
  if (fingerprint === undefined) return `Phones come in through the proxy:\n${address}\n`;
  return (
    `Phones at home:\n${address}\n` +
    `Once on each phone: open ${address}house.crt, install it as a trusted authority, and compare\n${fingerprint}\n`
  );
}

/** The port itself; for 0 one that is free just now, so that the book's lock can name the address from the first moment. */
async function freePort(port: number): Promise<number> {
  if (port !== 0) return port;
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port: free } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return free;
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
