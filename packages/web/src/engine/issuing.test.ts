import type { Entry } from "@sillwood/bench/book";
import { FORECAST_ISSUED, parseForecasts } from "@sillwood/bench/issued";
import type { Draft } from "@sillwood/bench/round";
import { afterEach, beforeAll, beforeEach, expect, test, vi } from "vitest";
import { fileStore } from "../device/file-store.ts";
import type { Server } from "../device/server.ts";
import { asking, MORNING_ms, trialClerk, trialServer } from "./trial.ts";

const unplugged = trialServer(
  () => {
    throw new Error("not reached");
  },
  { isUp: false },
);
const plant = "019bb7c0-0000-7000-8000-0000000000aa";
const drafts: readonly Draft[] = [
  { kind: "plant.brought", on: [plant], data: { number: 127, habit: "thin", medium: "spongy" } },
];
const SOON_ms = 60_000;
const DAY_ms = 86_400_000;
type Trial = Awaited<ReturnType<typeof trialClerk>>;

// Loaded with the first round of a day; here it must not come between the pause and its end.
beforeAll(() => import("./issued-part.ts"));
beforeEach(() => {
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
});
afterEach(() => {
  vi.useRealTimers();
});

async function device(
  name: string,
  role: "grower" | "helper" = "grower",
  server: Server = unplugged,
  seed = 1,
) {
  const trial = await trialClerk(name, server, seed);
  await trial.clerk.obey({ do: "be", person: undefined, role, asking: asking() });
  return trial;
}
const ask = ({ clerk }: Trial, name: "round" | "howGood", at_ms: number, args: object = {}) =>
  clerk.obey({ do: "ask", name, args, asking: asking(at_ms) });
/** Opens the round and lets the pause after it pass. */
async function openRound(trial: Trial, at_ms: number, args: object = {}) {
  await ask(trial, "round", at_ms, args);
  vi.advanceTimersByTime(10_000);
  vi.useRealTimers();
  await new Promise((resolve) => setTimeout(resolve, 60));
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
}
const keptIn = ({ book }: Trial): readonly Entry[] =>
  [...book.ledger.records()].flatMap(({ first }) => (first.kind === FORECAST_ISSUED ? [first] : []));

test("the first round of a day keeps its forecasts: entry and file, once, after it was answered", async () => {
  const trial = await device("issue once");
  await trial.clerk.obey({ do: "write", drafts, asking: asking() });
  await ask(trial, "round", MORNING_ms + SOON_ms);
  expect(keptIn(trial)).toEqual([]);
  await openRound(trial, MORNING_ms + SOON_ms);
  await openRound(trial, MORNING_ms + 2 * SOON_ms);
  const [kept, more] = keptIn(trial);
  expect(more).toBeUndefined();
  expect(kept).toMatchObject({ on: [], data: { date: "2026-01-14", plants_n: 1 } });
  const file = await fileStore(trial.db).get(kept?.files?.[0] as string);
  const text = new TextDecoder().decode(file?.bytes);
  expect(file?.type).toBe("text/csv");
  expect(parseForecasts(text).dates).toMatchObject([{ plant, work: "water" }]);
  await openRound(trial, MORNING_ms + DAY_ms);
  expect(keptIn(trial).map(({ data }) => (data as { date: string }).date)).toEqual([
    "2026-01-14",
    "2026-01-15",
  ]);
});

test("the desk on which the round lies stays: no plant is looked at again for it", async () => {
  const trial = await device("issue desk");
  await trial.clerk.obey({ do: "write", drafts, asking: asking() });
  const at = asking(MORNING_ms + SOON_ms);
  const before = trial.book.deskFor(at);
  const { revision } = trial.book.ledger;
  await openRound(trial, at.now_ms);
  expect(keptIn(trial)).toHaveLength(1);
  expect(trial.book.ledger.revision).toBeGreaterThan(revision);
  expect(trial.book.deskFor(at)).toBe(before);
});

test("nobody keeps forecasts before saying who holds the device, for an empty bench, or of a past moment", async () => {
  const trial = await device("issue none");
  await openRound(trial, MORNING_ms + SOON_ms);
  await trial.clerk.obey({ do: "write", drafts, asking: asking() });
  await openRound(trial, MORNING_ms + SOON_ms, { at_ms: MORNING_ms + 1000 });
  expect(keptIn(trial)).toEqual([]);
  trial.db.close();
  const stranger = await trialClerk("issue none", unplugged, 2);
  await stranger.db.delete("meta", "identity");
  stranger.db.close();
  const nobody = await trialClerk("issue none", unplugged, 3);
  await openRound(nobody, MORNING_ms + SOON_ms);
  expect(keptIn(nobody)).toEqual([]);
  await nobody.db.put(
    "meta",
    { device: plant.replace("aa", "ab"), person: plant.replace("aa", "ac"), role: "viewer" },
    "identity",
  );
  nobody.db.close();
  const viewer = await trialClerk("issue none", unplugged, 4);
  await openRound(viewer, MORNING_ms + SOON_ms);
  expect(keptIn(viewer)).toEqual([]);
});

test("how good they were is read from this device's files, and from the server's where they are not here", async () => {
  const weigh = (weight_g: number): Draft => ({
    kind: "watering.weighed",
    on: [plant],
    data: { weight_g, state: "as found" },
  });
  const pour: Draft = { kind: "watering.watered", on: [plant], data: { volume_mL: 400, drained: "yes" } };
  const phone = await device("issue phone");
  const write = (day: number, ...more: readonly Draft[]) =>
    phone.clerk.obey({ do: "write", drafts: more, asking: asking(MORNING_ms + day * DAY_ms) });
  await write(0, ...drafts);
  for (let day = 1; day <= 18; day++) {
    await write(day, weigh(600 - 45 * ((day - 1) % 5)));
    await openRound(phone, MORNING_ms + day * DAY_ms + SOON_ms);
    if ((day - 1) % 5 === 4) await write(day, pour);
  }
  const NOW_ms = MORNING_ms + 19 * DAY_ms;
  const good = (await ask(phone, "howGood", NOW_ms, { plant })) as { said: string; waiting_n: number }[];
  expect(good[0]).toMatchObject({
    waiting_n: 0,
    said: expect.stringMatching(/^2 forecasts since .*too few/),
  });

  const texts = await phone.db.getAll("files");
  const plug = { isUp: false };
  const server: Server = {
    ...unplugged,
    getFile: async (sha256) => {
      if (!plug.isUp) throw new TypeError("failed to fetch");
      return texts.find((one) => one.sha256 === sha256);
    },
  };
  const tablet = await trialClerk("issue tablet", server, 7);
  const lines = await phone.db.getAll("entries");
  await tablet.clerk.obey({
    do: "bring in",
    text: await exported(phone),
    keep: true,
    now_ms: NOW_ms,
  });
  expect(tablet.book.ledger.entries_n).toBe(lines.length);
  const waiting = (await ask(tablet, "howGood", NOW_ms, { plant })) as {
    waits: string[];
    waiting_n: number;
  }[];
  expect(waiting[0]?.waiting_n).toBe(2);
  expect(waiting[0]?.waits[0]).toMatch(/wait for their files/);
  plug.isUp = true;
  await ask(tablet, "howGood", NOW_ms, { plant });
  vi.useRealTimers();
  await new Promise((resolve) => setTimeout(resolve, 80));
  expect(await ask(tablet, "howGood", NOW_ms, { plant })).toEqual(good);
});

async function exported({ clerk }: Trial): Promise<string> {
  const { lines } = (await clerk.obey({ do: "take out" })) as { lines: Blob };
  return lines.text();
}
