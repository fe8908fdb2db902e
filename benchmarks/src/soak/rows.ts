import { join } from "node:path";
import { openPostgres } from "@sillwood/store/postgres";
import { openSqlite } from "@sillwood/store/sqlite";
import { startPostgres } from "../../../packages/store/test/embedded.ts";
import type { ReportRow } from "../../../tools/report.ts";
import { crowd } from "./crowd.ts";
import { hostile } from "./hostile.ts";
import { type KillReport, killTrial } from "./kill.ts";
import { playStorm } from "./storm.ts";

/** How much of each a run does. */
export interface Sizes {
  readonly acknowledged_n: number;
  readonly storms_n: number;
  readonly asks_n: number;
  readonly devices_n: number;
  readonly crowd_s: number;
}

export async function killRows(
  folder: string,
  seed: number,
  { acknowledged_n }: Sizes,
): Promise<ReportRow[]> {
  const path = join(folder, "kill.sillwood");
  const sqlite = await killTrial({ place: path, open: () => openSqlite({ path }), acknowledged_n, seed });
  const server = await startPostgres();
  try {
    await server.make("kill");
    const url = server.url("kill");
    const open = () => openPostgres({ url, book: "main" });
    const postgres = await killTrial({ place: url, open, acknowledged_n, seed: seed + 1 });
    return [killRow("SQLite", sqlite), killRow("PostgreSQL", postgres)];
  } finally {
    await server.stop();
  }
}

const killRow = (engine: string, report: KillReport): ReportRow => {
  const { kills_n, entries_n, photos_n, lost_n, doubled_n, damaged_n } = report;
  return {
    figure: `kill, ${engine}: acknowledged, then lost, doubled or damaged`,
    value: lost_n + doubled_n + damaged_n,
    unit: "of all",
    reference: `${entries_n} entries and ${photos_n} photos acknowledged, the server killed ${kills_n} times; lost ${lost_n}, doubled ${doubled_n}, damaged ${damaged_n}`,
    goal: "0",
    holds: lost_n + doubled_n + damaged_n === 0 && kills_n > 0,
  };
};

export async function stormRows(seed: number, { storms_n }: Sizes): Promise<ReportRow[]> {
  const failing: string[] = [];
  let [entries_n, faults_n] = [0, 0];
  for (let i = 0; i < storms_n; i++) {
    const storm = await playStorm(seed + i);
    entries_n += storm.entries_n;
    faults_n += storm.faults_n;
    if (storm.failed !== undefined) {
      failing.push(`${seed + i}`);
      console.error(`storm ${seed + i}: ${storm.failed}\n${storm.log.join("\n")}`);
    }
  }
  return [
    {
      figure: "storm: histories that ended in unlike books or rounds",
      value: failing.length,
      unit: "histories",
      reference: `${storms_n} histories of 5 devices, ${entries_n} entries, ${faults_n} broken calls${failing.length > 0 ? `; seeds ${failing.slice(0, 10).join(", ")}` : ""}`,
      goal: "0",
      holds: failing.length === 0,
    },
  ];
}

export async function hostileRows(seed: number, { asks_n }: Sizes): Promise<ReportRow[]> {
  const { troubles, answers, slowest_ms, kept_n, warm_MB, end_MB } = await hostile(asks_n, seed);
  for (const trouble of troubles) console.error(`hostile: ${trouble}`);
  const grown_frac = warm_MB > 0 ? end_MB / warm_MB : 1;
  return [
    {
      figure: "hostile: 5xx, throws, odd answers, invalid entries kept",
      value: troubles.length,
      unit: "troubles",
      reference: `${asks_n} requests, files and lists; ${Object.entries(answers)
        .map(([status, n]) => `${status}: ${n}`)
        .join(", ")}; ${kept_n} entries kept, all of them pass the gate`,
      goal: "0",
      holds: troubles.length === 0,
    },
    {
      figure: "hostile: slowest answer",
      value: slowest_ms / 1000,
      unit: "s",
      reference: "",
      goal: "at most 5 s",
      holds: slowest_ms <= 5000,
    },
    {
      figure: "hostile: heap at the end, as a multiple of that after a quarter",
      value: grown_frac,
      unit: "times",
      reference: `${end_MB.toFixed(1)} MB, ${warm_MB.toFixed(1)} MB; what was kept of the book is part of it`,
      goal: "at most 1.5",
      holds: grown_frac <= 1.5,
    },
  ];
}

export async function crowdRows(
  folder: string,
  seed: number,
  { devices_n, crowd_s }: Sizes,
): Promise<ReportRow[]> {
  const report = await crowd({ folder, devices_n, span_s: crowd_s, seed });
  const share = report.entries_s / report.raw_entries_s;
  const grown = report.warm_MB > 0 ? report.end_MB / report.warm_MB : 1;
  return [
    {
      figure: `crowd: entries a second of ${devices_n} devices, as a share of the raw database's`,
      value: share,
      unit: "of raw",
      reference: `ours ${Math.round(report.entries_s)} a second over HTTP (${report.rounds_n} rounds of 20 entries and 2 photos of 60 kB), raw prepared inserts of the same in the same batches ${Math.round(report.raw_entries_s)}; ${report.refused_n} calls refused`,
      goal: "at least 0.3",
      holds: share >= 0.3 && report.refused_n === 0,
    },
    {
      figure: "crowd: slowest push",
      value: report.slowest_s,
      unit: "s",
      reference: `${devices_n} devices, each sending its next as soon as it was answered`,
      goal: "at most 2 s",
      holds: report.slowest_s <= 2,
    },
    {
      figure: "crowd: memory of the server at the end, as a multiple of that once warm",
      value: grown,
      unit: "times",
      reference: `${report.end_MB.toFixed(0)} MB, ${report.warm_MB.toFixed(0)} MB, over ${(crowd_s / 60).toFixed(1)} minutes`,
      goal: "at most 1.2",
      holds: grown <= 1.2,
    },
  ];
}
