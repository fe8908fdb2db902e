import { memoryStore } from "@sillwood/store/memory";
import { writer } from "../../bench/test/entry-maker.ts";
import { type Pairings, pairings } from "../src/access/index.ts";
import { makeApp } from "./make-app.ts";

const HOME = "https://bench.local:7374";

/** A house with two doors on one book: this machine's own, and one for paired devices. */
export function twoDoors(more: { readonly codes?: Pairings; readonly now_ms?: () => number } = {}) {
  const store = memoryStore("main");
  const codes = more.codes ?? pairings({ hash: async (secret) => secret, close: async () => undefined });
  const inside = makeApp({ store, codes, ...more });
  const outside = makeApp({ store, codes, door: "paired devices", hosts: ["bench.local"], ...more });

  const ask = (path: string, init: RequestInit & { readonly key?: string } = {}) => {
    const { key, headers, ...rest } = init;
    const own = {
      ...(key ? { authorization: `Bearer ${key}` } : {}),
      ...(headers as Record<string, string>),
    };
    return outside.app.request(`${HOME}${path}`, { ...rest, headers: own });
  };
  const post = (path: string, body: unknown, key?: string) =>
    ask(path, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
      ...(key ? { key } : {}),
    });
  const codeFor = async (person: string, role: string): Promise<string> =>
    (await (await inside.post("/books/main/pairing", { person, role })).json()).code;
  /** A paired device that writes entries in its own name. */
  const pair = async (seed: number, role: string) => {
    const pen = writer(seed);
    const person = pen.write("test.noted", { text: "" }).entry.by;
    const code = await codeFor(person, role);
    const answer = await post("/pair", { code, device: pen.device, name: `phone ${seed}`, bearer: true });
    const { key } = (await answer.json()) as { key: string };
    return { ...pen, person, key };
  };
  return { store, inside, outside, ask, post, codeFor, pair };
}
