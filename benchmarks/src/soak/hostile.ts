import { createHash } from "node:crypto";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { accept, acceptedKinds, importBook, kindRegistry, parseSeries } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { houseKinds } from "@sillwood/bench/house";
import { deskAt, listColumns, readList } from "@sillwood/bench/pages";
import { hashToken, pairings } from "@sillwood/server/access";
import { createApp } from "@sillwood/server/app";
import { memoryStore } from "@sillwood/store/memory";
import { seeded } from "../../../packages/bench/test/entry-maker.ts";
import { START_ms, testLedger } from "../../../packages/bench/test/toy.ts";
import { crowdId, crowdKey } from "./crowd-keys.ts";
import { type Draw, drawOf, oddText, oddValue, spoilt } from "./odd.ts";

export interface HostileReport {
  readonly asked_n: number;
  readonly answers: Readonly<Record<string, number>>;
  /** What went wrong, the first few: 5xx, a throw, an answer that is no answer, something invalid in the book. */
  readonly troubles: readonly string[];
  readonly slowest_ms: number;
  readonly kept_n: number;
  /** Heap after a collection [MB]: after the first quarter, and at the end. */
  readonly warm_MB: number;
  readonly end_MB: number;
}

const kinds = kindRegistry([...houseKinds, ...crafts.flatMap((craft) => craft.kinds)]);
const gate = acceptedKinds(kinds);
const BASE = "https://bench.local";
const TROUBLES_MAX_n = 10;

interface Example {
  readonly path: string;
  readonly method: string;
  readonly value: unknown;
}

/** Sends spoilt requests, files and lines at everything that reads from outside. `planted` lets one in fifty answers be a crash. */
export async function hostile(asks_n: number, seed: number, planted?: "crashes"): Promise<HostileReport> {
  const draw = drawOf(seeded(seed));
  const store = memoryStore("main");
  const options = {
    store,
    kinds,
    codes: pairings({ hash: async (secret) => secret, close: async () => undefined }),
  };
  const troubles: string[] = [];
  const trouble = (what: string) =>
    void (troubles.length < TROUBLES_MAX_n && troubles.push(what.slice(0, 400)));
  const log = (line: string) => trouble(`logged: ${line}`);
  // Time runs, so that the limits on asking too often do not end the trial.
  let now_ms = START_ms;
  const app = createApp({
    ...options,
    log,
    door: "paired devices",
    hosts: ["bench.local"],
    now_ms: () => now_ms,
  });
  let epoch = 0;
  /** Devices that leave, or are closed by what was sent, are followed by others. */
  const letIn = async () => {
    epoch++;
    for (const [i, role] of (["grower", "helper", "viewer"] as const).entries()) {
      const n = 3 * epoch + i;
      const [hash, device, person] = [hashToken(crowdKey(n)), crowdId(n), crowdId(n)];
      await store.keys.add({ hash, device, person, role, name: role, made_ms: now_ms, seen_ms: now_ms });
    }
  };
  await letIn();
  const bearer = (i: number) => ({ authorization: `Bearer ${crowdKey(3 * epoch + i)}` });
  const document = await (await app.request(`${BASE}/openapi.json`, { headers: bearer(0) })).json();
  const examples = examplesOf(document);
  const answers: Record<string, number> = {};
  const lists = listKinds.map((kind) => listColumns[kind].map(({ key }) => key));
  const desk = deskAt(testLedger(crafts), { now_ms: START_ms, language: "en", units: "metric" });
  let [slowest_ms, warm_MB] = [0, 0];

  const request = async (): Promise<void> => {
    const { path, init } = draw.chance(0.2) ? fileRequest(draw) : spoiltRequest(draw, examples);
    const headers = { ...bearer(draw.below(3)), ...(init.headers as Record<string, string>) };
    let response: Response;
    try {
      response = await app.request(`${BASE}${path}`, { ...init, headers });
    } catch (error) {
      return trouble(`${path} threw ${String(error)}`);
    }
    const status = planted && draw.chance(0.02) ? 500 : response.status;
    answers[status] = (answers[status] ?? 0) + 1;
    // A line that stays open is an answer too; it is let go.
    if (response.headers.get("content-type")?.startsWith("text/event-stream"))
      return void (await response.body?.cancel());
    const text = await response.text();
    if (status >= 500 && status !== 507)
      trouble(`${init.method} ${path}: ${status} for ${String(init.body).slice(0, 150)}`);
    // How much of a file is here is an answer, though the piece was not taken.
    if (
      status >= 400 &&
      !text.startsWith('{"have_B"') &&
      response.headers.get("content-type") !== "application/problem+json"
    )
      trouble(`${path}: ${status} without a problem: ${text.slice(0, 100)}`);
  };
  const lines = async (): Promise<void> => {
    const { cells, text } = oddLines(draw, lists);
    try {
      const { drafts, problems } = readList(desk, draw.pick(listKinds), cells, {
        newId: () => crowdId(draw.below(1000)),
      });
      if (drafts.length > 0 && problems.length > 0)
        trouble(`a list with problems would be kept: ${text.slice(0, 150)}`);
      for (const { kind, data } of drafts) {
        const known = gate.find(kind);
        const wrong = known === undefined ? [{ message: "is no kind" }] : known.check(data);
        if (wrong.length > 0) trouble(`a list gives ${kind} that the gate refuses: ${wrong[0]?.message}`);
      }
    } catch (error) {
      trouble(`a list threw ${String(error)} for ${JSON.stringify(text.slice(0, 150))}`);
    }
    try {
      parseSeries(text);
    } catch (error) {
      if ((error as Error).name !== "SeriesError") trouble(`a series threw ${String(error)}`);
    }
    try {
      for await (const _line of importBook(text.split("\n"), gate));
    } catch (error) {
      trouble(`an import threw ${String(error)}`);
    }
    answers["lines"] = (answers["lines"] ?? 0) + 1;
  };

  for (let i = 0; i < asks_n; i++) {
    now_ms += 1000;
    if (i % 100 === 99) await letIn();
    const began_ms = performance.now();
    await (draw.chance(0.2) ? lines() : request());
    slowest_ms = Math.max(slowest_ms, performance.now() - began_ms);
    if (i === Math.floor(asks_n / 4)) warm_MB = heap_MB();
  }
  for await (const texts of store.texts())
    for (const text of texts) {
      const judged = accept(JSON.parse(text), gate);
      if (!judged.ok) trouble(`the book holds what the gate refuses: ${text.slice(0, 150)}`);
    }
  const { damaged, damagedFiles } = await store.verify("all");
  if (damaged.length + damagedFiles.length > 0) trouble("the book or a file is damaged");
  return {
    asked_n: asks_n,
    answers,
    troubles,
    slowest_ms,
    kept_n: await store.count_n(),
    warm_MB,
    end_MB: heap_MB(),
  };
}

const listKinds = ["plants", "weighings", "logger", "weather"] as const;

// The collector is called by name, so that memory can be compared; the flag acts on what is made after it.
setFlagsFromString("--expose_gc");
const collect = runInNewContext("gc") as () => void;

function heap_MB(): number {
  collect();
  return process.memoryUsage().heapUsed / 1e6;
}

function examplesOf(document: unknown): Example[] {
  const { paths } = document as {
    paths: Record<
      string,
      Record<
        string,
        { requestBody?: { content?: Record<string, { examples?: Record<string, { value: unknown }> }> } }
      >
    >;
  };
  const examples: Example[] = [];
  for (const [path, operations] of Object.entries(paths))
    for (const [method, { requestBody }] of Object.entries(operations)) {
      if (method === "parameters") continue;
      const given = Object.values(requestBody?.content?.["application/json"]?.examples ?? {});
      const at = path
        .replace("{book}", "main")
        .replace("{person}", crowdId(7))
        .replace("{hash}", "0".repeat(64));
      for (const value of given.length > 0 ? given.map((one) => one.value) : [undefined])
        examples.push({ path: at, method: method.toUpperCase(), value });
    }
  return examples;
}

function spoiltRequest(draw: Draw, examples: readonly Example[]): { path: string; init: RequestInit } {
  const { path, method: usual, value } = draw.pick(examples);
  const method = draw.chance(0.05) ? draw.pick(["GET", "POST", "PUT", "DELETE", "PATCH", "OPTIONS"]) : usual;
  const address = draw.chance(0.1)
    ? `${path.slice(0, draw.below(path.length + 1))}/${encodeURIComponent(Buffer.from(oddText(draw)).toString())}`
    : path;
  const body = draw.chance(0.15)
    ? oddText(draw)
    : JSON.stringify(draw.chance(0.9) ? spoilt(draw, value ?? {}) : oddValue(draw, 3));
  const type = draw.chance(0.05) ? "text/plain" : "application/json";
  const headers: Record<string, string> = { "content-type": type };
  if (draw.chance(0.03)) headers["origin"] = "https://elsewhere.example";
  if (draw.chance(0.03)) headers["cookie"] = "__Host-sillwood=x";
  return { path: address, init: { method, headers, ...(method === "GET" ? {} : { body: body ?? "" }) } };
}

function fileRequest(draw: Draw): { path: string; init: RequestInit } {
  const bytes = Uint8Array.from({ length: draw.below(3000) }, () => draw.below(256));
  const right = createHash("sha256").update(bytes).digest("hex");
  const hash = draw.chance(0.6)
    ? right
    : draw.chance(0.5)
      ? "0".repeat(64)
      : encodeURIComponent(Buffer.from(oddText(draw)).toString());
  const type = draw.pick(["image/jpeg", "image/png", "text/csv", "text/html", "image/svg+xml", "", "x"]);
  const range = () =>
    `bytes ${draw.below(3000)}-${draw.below(3000)}/${draw.pick([bytes.length, 3000, -1, 99_999_999])}`;
  const path = `/books/main/files/${hash}`;
  if (draw.chance(0.3))
    return {
      path,
      init: {
        method: "GET",
        headers: { range: draw.pick(["bytes=0-", "bytes=5-2", "bytes=a", "bytes=9-99999999999"]) },
      },
    };
  const headers: Record<string, string> = { "content-type": type };
  if (draw.chance(0.4))
    headers["content-range"] = draw.chance(0.5) ? range() : `bytes 0-${bytes.length - 1}/${bytes.length}`;
  return { path, init: { method: "PUT", headers, body: bytes } };
}

/** A file of lines as spreadsheets, loggers and copies of books have them, and as nobody has. */
function oddLines(
  draw: Draw,
  columns: readonly (readonly string[])[],
): { readonly cells: readonly (readonly string[])[]; readonly text: string } {
  const separator = draw.pick([",", ";", "\t", "|"]);
  const head = draw.pick(columns).filter(() => draw.chance(0.8));
  const cell = () =>
    draw.pick([
      "412",
      "4,12",
      "1e999",
      "-0",
      "NaN",
      "2026-03-01 08:00",
      "31.02.2026",
      "",
      '"',
      "=1+1",
      oddText(draw),
    ]);
  const rows = Array.from({ length: draw.below(12) }, () => head.map(cell));
  const line = () => JSON.stringify(oddValue(draw, 3)) ?? "";
  const cells = [draw.chance(0.7) ? head : [oddText(draw)], ...rows];
  const more = draw.chance(0.3) ? [line(), "{", "\u0000"] : [];
  const text = [...cells.map((row) => row.join(separator)), ...more].join(draw.pick(["\n", "\r\n", "\r"]));
  return { cells, text };
}
