import { join } from "node:path";
import { CertificateError, closeAsTheBookSays, houseCertificate, pairings } from "@sillwood/server/access";
import { type AppOptions, createApp, makeNews } from "@sillwood/server/app";
import { type Listening, listen, listenAtHome } from "@sillwood/server/listen";
import { type Call, textOption } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";

/** The doors through which a house is reached, all on one book. */
export interface Doors {
  /** This machine's own, where nobody is asked for a key. */
  readonly own: Listening;
  /** Where paired devices come in, as it is shown and typed. */
  readonly address?: string;
  /** To compare by eye before a phone trusts the house; only with the house's own certificate. */
  readonly fingerprint?: string;
  /** Makes a code that lets one phone in. */
  code(person: string, role: "grower" | "helper" | "viewer"): Promise<{ code: string; until_ms: number }>;
  close(): Promise<void>;
}

type Shared = Pick<AppOptions, "store" | "kinds" | "webDir" | "log" | "now_ms">;

/** Opens this machine's door, and with `--at-home` or `--behind` the one for phones. */
export async function openDoors(call: Call, port: number, shared: Shared): Promise<Doors> {
  const codes = pairings();
  const news = makeNews();
  await closeAsTheBookSays(shared.store, call.around.now_ms());
  const outer = await outerDoor(call, port, { ...shared, codes, news });
  const more = { codes, news, ...(outer ? { address: outer.address } : {}) };
  let own: Listening;
  try {
    own = await listen(createApp({ ...shared, ...more }), { port });
  } catch (error) {
    await outer?.listening.close();
    throw error;
  }
  return {
    own,
    ...(outer ? { address: outer.address } : {}),
    ...(outer?.fingerprint === undefined ? {} : { fingerprint: outer.fingerprint }),
    code: (person, role) => codes.make({ person, role }, call.around.now_ms()),
    async close() {
      await Promise.all([own.close(), outer?.listening.close()]);
      await codes.close();
    },
  };
}

interface Outer {
  readonly listening: Listening;
  readonly address: string;
  readonly fingerprint?: string;
}

async function outerDoor(call: Call, port: number, options: AppOptions): Promise<Outer | undefined> {
  const isHome = call.options["at-home"] === true;
  const behind = textOption(call, "behind");
  if (isHome && behind !== undefined)
    throw new UsageError("--at-home makes its own certificate, --behind leaves that to a proxy; choose one.");
  const own = portOf(call, "home-port", port + 1);
  if (behind !== undefined) return behindProxy(behind, own, options);
  if (!isHome) return undefined;
  const name = textOption(call, "name")?.toLowerCase();
  const folder = join(call.around.home, "at-home");
  const certificate = await houseCertificate(folder, name ? [name] : [], call.around.now_ms()).catch(
    (error: unknown) => {
      throw error instanceof CertificateError ? dataError("name", error.message, name ?? "") : error;
    },
  );
  const { cert, key, authority, fingerprint, names } = certificate;
  // What people type: a name that was given, else the address in the home's network, else the computer's own name.
  const numbered = names.find((each) => /^[\d.]+$/.test(each) && !each.startsWith("127."));
  const shown = name ?? numbered ?? names.find((each) => each.endsWith(".local")) ?? "localhost";
  // Known before the first answer, so that a screen can show it beside a code.
  let address = `https://${shown}:${own}/`;
  const app = createApp({
    ...options,
    door: "paired devices",
    hosts: names,
    authority,
    get address() {
      return address;
    },
  });
  const listening = await listenAtHome(app, { port: own, cert, key });
  address = `https://${shown}:${new URL(listening.url).port}/`;
  return { listening, address, fingerprint };
}

async function behindProxy(typed: string, port: number, options: AppOptions): Promise<Outer> {
  let url: URL;
  try {
    url = new URL(typed);
  } catch {
    throw new UsageError(
      `--behind is ${JSON.stringify(typed)}; expected an address as https://bench.example/.`,
    );
  }
  if (url.protocol !== "https:" || url.pathname !== "/")
    throw new UsageError(
      `--behind is ${typed}; expected https:// and a host of its own, as https://bench.example/.`,
    );
  const app = createApp({
    ...options,
    door: "paired devices",
    behindProxy: true,
    hosts: [url.hostname],
    origins: [url.origin],
    address: url.href,
  });
  return { listening: await listen(app, { port }), address: url.href };
}

export function portOf(call: Call, option: string, usual: number): number {
  const typed = textOption(call, option);
  if (typed === undefined) return usual;
  const port = /^\d{1,5}$/.test(typed) ? Number(typed) : Number.NaN;
  if (!(port >= 0 && port <= 65_535))
    throw new UsageError(`--${option} is ${JSON.stringify(typed)}; expected 0 to 65535.`);
  return port;
}
