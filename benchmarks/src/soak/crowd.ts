import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { uuidMaker } from "@sillwood/bench/book";
import Database from "better-sqlite3";
import { seeded } from "../../../packages/bench/test/entry-maker.ts";
import { crowdId, crowdKey } from "./crowd-keys.ts";
import { type Served, serve } from "./served.ts";

const ENTRIES_n = 20;
const PHOTOS_n = 2;

export interface CrowdOptions {
  readonly folder: string;
  readonly devices_n: number;
  readonly span_s: number;
  readonly seed: number;
  readonly photo_B?: number;
}

export interface CrowdReport {
  readonly rounds_n: number;
  readonly entries_n: number;
  readonly entries_s: number;
  /** The same content in the same batches by prepared inserts into SQLite, each batch synced. */
  readonly raw_entries_s: number;
  readonly slowest_s: number;
  readonly refused_n: number;
  /** Memory of the server [MB] once warm, and at the end. */
  readonly warm_MB: number;
  readonly end_MB: number;
}

interface Phone {
  readonly key: string;
  readonly pen: ReturnType<typeof quickPen>;
}
interface Round {
  readonly entries: readonly { readonly id: string; readonly text: string }[];
  readonly photos: readonly { readonly hash: string; readonly bytes: Uint8Array<ArrayBuffer> }[];
}

/** Many phones push their rounds at one server, one after another as each is answered; a raw database takes the same beside it. */
export async function crowd(options: CrowdOptions): Promise<CrowdReport> {
  const { folder, devices_n, span_s, seed, photo_B = 60_000 } = options;
  const raw_entries_s = rawRate(join(folder, "raw.sqlite"), seed, Math.min(400, devices_n * 4), photo_B);
  const served = await serve(join(folder, "crowd.sillwood"), { crowd_n: devices_n });
  try {
    const phones = phonesOf(devices_n, seed);
    const random = seeded(seed);
    const memory_MB: number[] = [];
    let [rounds_n, refused_n, slowest_ms] = [0, 0, 0];
    const began_ms = performance.now();
    const until_ms = began_ms + span_s * 1000;
    const watch = setInterval(() => memory_MB.push(memoryOf_MB(served.child.pid as number)), 250);
    await Promise.all(
      phones.map(async (phone) => {
        do {
          const round = roundOf(phone, random, photo_B);
          for (const call of callsOf(served, phone, round)) {
            const asked_ms = performance.now();
            if (!(await call())) refused_n++;
            slowest_ms = Math.max(slowest_ms, performance.now() - asked_ms);
          }
          rounds_n++;
        } while (performance.now() < until_ms);
      }),
    );
    clearInterval(watch);
    const took_s = (performance.now() - began_ms) / 1000;
    const entries_n = rounds_n * ENTRIES_n;
    const quarter = Math.max(1, Math.floor(memory_MB.length / 4));
    return {
      rounds_n,
      entries_n,
      entries_s: entries_n / took_s,
      raw_entries_s,
      slowest_s: slowest_ms / 1000,
      refused_n,
      warm_MB: Math.max(...memory_MB.slice(quarter, 2 * quarter), 0),
      end_MB: Math.max(...memory_MB.slice(-quarter), 0),
    };
  } finally {
    served.kill();
    await served.ended;
  }
}

function roundOf({ pen }: Phone, random: () => number, photo_B: number): Round {
  const photos = Array.from({ length: PHOTOS_n }, () => {
    const bytes = new Uint8Array(photo_B);
    for (let i = 0; i < photo_B; i += 997) bytes[i] = Math.floor(random() * 256);
    new DataView(bytes.buffer).setFloat64(0, random());
    return { hash: createHash("sha256").update(bytes).digest("hex"), bytes };
  });
  const entries = Array.from({ length: ENTRIES_n }, (_, i) =>
    pen(i < PHOTOS_n ? [photos[i]?.hash as string] : []),
  );
  return { entries, photos };
}

/** Entry first, picture later, as a phone does. */
function callsOf({ outer }: Served, { key }: Phone, { entries, photos }: Round): (() => Promise<boolean>)[] {
  const authorization = `Bearer ${key}`;
  return [
    async () => {
      const response = await fetch(`${outer}/books/main/sync/entries`, {
        method: "POST",
        headers: { authorization, "content-type": "application/json" },
        body: `{"entries":[${entries.map(({ text }) => text).join(",")}]}`,
      });
      const { stored } = (await response.json()) as { stored?: readonly unknown[] };
      return stored?.length === entries.length;
    },
    ...photos.map(({ hash, bytes }) => async () => {
      const response = await fetch(`${outer}/books/main/files/${hash}`, {
        method: "PUT",
        headers: { authorization, "content-type": "image/jpeg" },
        body: bytes,
      });
      await response.arrayBuffer();
      return response.status === 201;
    }),
  ];
}

/** The phones that the server let in at its start. */
const phonesOf = (devices_n: number, seed: number): Phone[] =>
  Array.from({ length: devices_n }, (_, i) => ({
    key: crowdKey(i),
    pen: quickPen(crowdId(i), seed * 1000 + i),
  }));

/** Writes entries without judging them: that is the server's work, and both share this machine. */
function quickPen(device: string, seed: number) {
  const [random, nextId] = [seeded(seed), uuidMaker()];
  let now_ms = 1_790_000_000_000;
  let count_n = 0;
  return (files: readonly string[]) => {
    now_ms += 1000;
    const clock = `${new Date(now_ms).toISOString()}/${(count_n++ % 0xffff).toString(16).padStart(4, "0")}`;
    const entry = {
      id: nextId(now_ms, random),
      device,
      kind: "test.weighed",
      v: 2,
      at_ms: now_ms,
      zone: "Europe/Berlin",
      atFrom: "clock",
      clock,
      by: device,
      on: ["plant-1"],
      data: { mass_g: 100 + Math.floor(random() * 4000) },
      ...(files.length > 0 ? { files } : {}),
    };
    return { id: entry.id, text: JSON.stringify(entry) };
  };
}

/** Prepared inserts of the same rows and pictures, one synced transaction a round: what the disk and SQLite give at best. */
function rawRate(path: string, seed: number, rounds_n: number, photo_B: number): number {
  const db = new Database(path);
  db.pragma("journal_mode = WAL");
  db.pragma("synchronous = FULL");
  db.exec("create table entry (id text, hash text, json text, primary key (id, hash))");
  db.exec("create table photo (hash text primary key, bytes blob)");
  const insert = db.prepare("insert into entry values (?, ?, ?) on conflict do nothing");
  const picture = db.prepare("insert into photo values (?, ?) on conflict do nothing");
  const random = seeded(seed);
  const phone: Phone = { key: "", pen: quickPen(crowdId(0), seed) };
  const rounds = Array.from({ length: rounds_n }, () => roundOf(phone, random, photo_B));
  const began_ms = performance.now();
  const put = db.transaction(({ entries, photos }: Round) => {
    for (const { id, text } of entries) insert.run(id, createHash("sha256").update(text).digest("hex"), text);
    for (const { hash, bytes } of photos) picture.run(hash, bytes);
  });
  for (const round of rounds) put.immediate(round);
  const took_s = (performance.now() - began_ms) / 1000;
  db.close();
  return (rounds_n * ENTRIES_n) / took_s;
}

/** Resident memory of a process, where the system tells; 0 elsewhere. */
function memoryOf_MB(pid: number): number {
  try {
    const status = readFileSync(`/proc/${pid}/status`, "utf8");
    return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024;
  } catch {
    return 0;
  }
}
