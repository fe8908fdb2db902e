import { acceptedKinds, type SyncTransport, without } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";
import { expect, test, vi } from "vitest";
import type { BookStore } from "../device/book-store.ts";
import { asking, MORNING_ms, trialClerk, trialServer } from "./trial.ts";

const unplugged = trialServer(
  () => {
    throw new Error("not reached");
  },
  { isUp: false },
);

const plant = "019bb7c0-0000-7000-8000-0000000000aa";
const drafts: readonly Draft[] = [
  {
    kind: "bench.laid",
    on: ["south-sill"],
    data: {
      name: "South sill",
      place: "sill",
      outdoors: false,
      order_n: 1,
      spots: [{ id: "s1", name: "1" }],
      windowFaces_deg: 180,
    },
  },
  { kind: "plant.brought", on: [plant], data: { number: 127, habit: "thin", medium: "spongy", spot: "s1" } },
];

test("what is written is kept, said, and there again after the browser was killed", async () => {
  const first = await trialClerk("killed", unplugged);
  await first.clerk.obey({ do: "be", person: undefined, role: "grower", asking: asking() });
  const written = await first.clerk.obey({ do: "write", drafts, asking: asking() });
  expect(written).toMatchObject({ kept: [expect.any(String), expect.any(String)] });
  expect((written as { said: string[] }).said[1]).toMatch(/^127 /);
  first.db.close();

  const second = await trialClerk("killed", unplugged, 2);
  expect(await second.clerk.opened()).toMatchObject({ identity: { role: "grower" }, entries_n: 3 });
  expect(second.mark()).toMatchObject({ away_n: 3 });
  const round = await second.book.ask("round", {}, asking(MORNING_ms + 60_000));
  expect(round.benches[0]?.spots[0]).toMatchObject({ number: "127" });
});

test("a book that is closed while a pass or a write is under way ends quietly: no error goes astray", async () => {
  const astray: unknown[] = [];
  const hear = (error: unknown) => astray.push(error);
  process.on("unhandledRejection", hear);
  try {
    const { clerk, db, mark } = await trialClerk("closing", unplugged);
    await clerk.obey({ do: "be", person: undefined, role: "grower", asking: asking() });
    const passing = clerk.obey({ do: "sync", now_ms: MORNING_ms });
    db.close();
    expect(await passing).toBe(false);
    expect(await clerk.obey({ do: "sync", now_ms: MORNING_ms })).toBe(false);
    await expect(clerk.obey({ do: "write", drafts, asking: asking() })).rejects.toThrow();
    await new Promise((resolve) => setTimeout(resolve, 600));
    expect(mark()?.server).not.toBe("answers");
  } finally {
    process.off("unhandledRejection", hear);
  }
  expect(astray).toEqual([]);
});

test("a write that fails half way leaves nothing behind and is told once, to whoever wrote", async () => {
  const astray: unknown[] = [];
  const hear = (error: unknown) => astray.push(error);
  process.on("unhandledRejection", hear);
  try {
    const { clerk, book, store } = await trialClerk("half way", unplugged);
    const identity = await clerk.obey({ do: "be", person: undefined, role: "grower", asking: asking() });
    const before = { away: await store.away(), entries_n: await store.count() };
    const judged = book.write(drafts, identity as { device: string; person: string }, asking());
    if ("refused" in judged) throw new Error("the drafts are good");
    // Nothing can keep a function: the second entry fails after the first was put.
    const [first, second] = judged.accepted;
    const broken = [first, { ...second, text: () => "" }] as unknown as typeof judged.accepted;
    await expect(store.write(broken, MORNING_ms)).rejects.toThrow();
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect({ away: await store.away(), entries_n: await store.count() }).toEqual(before);
  } finally {
    process.off("unhandledRejection", hear);
  }
  expect(astray).toEqual([]);
});

test("nobody writes before saying who holds the device", async () => {
  const { clerk } = await trialClerk("nobody", unplugged);
  expect(await clerk.obey({ do: "write", drafts, asking: asking() })).toHaveProperty("refused");
});

test("a bad entry is refused whole, with field, value, limit and unit, and nothing is kept", async () => {
  const { clerk, store } = await trialClerk("bad", unplugged);
  await clerk.obey({ do: "be", person: undefined, role: "grower", asking: asking() });
  const before_n = await store.count();
  const bad: Draft = { kind: "watering.watered", on: [plant], data: { volume_mL: -3, drained: "no" } };
  const written = await clerk.obey({ do: "write", drafts: [...drafts, bad], asking: asking() });
  expect(written).toMatchObject({ refused: [{ path: "data.volume_mL", value: -3 }] });
  expect((written as { refused: { message: string }[] }).refused[0]?.message).toMatch(/-3 mL; expected 1 to/);
  expect(await store.count()).toBe(before_n);
});

test("a helper's first day in an empty book founds the grower's place too", async () => {
  const { clerk, book } = await trialClerk("helper", unplugged);
  const identity = await clerk.obey({
    do: "be",
    person: undefined,
    role: "helper",
    card: "R.",
    asking: asking(),
  });
  expect(identity).toMatchObject({ role: "helper", card: "R." });
  const people = await book.ask("people", {}, asking());
  expect(people.map(({ role }) => role).sort()).toEqual(["grower", "helper"]);
  expect(JSON.stringify([...book.ledger.records()])).not.toContain("R.");
});

test("a full disk loses nothing silently: the entry comes back as words for paper", async () => {
  const { clerk, store, db } = await trialClerk("full", unplugged);
  await clerk.obey({ do: "be", person: undefined, role: "grower", asking: asking() });
  await clerk.obey({ do: "write", drafts, asking: asking() });
  const kept_n = await store.count();
  vi.spyOn(db, "transaction").mockImplementation(() => {
    throw new DOMException("no room", "QuotaExceededError");
  });
  const weigh: Draft = { kind: "watering.weighed", on: [plant], data: { weight_g: 412, state: "as found" } };
  const written = await clerk.obey({ do: "write", drafts: [weigh], asking: asking() });
  expect((written as { lost: string }).lost).toMatch(/127.*412/);
  vi.restoreAllMocks();
  expect(await store.count()).toBe(kept_n);
});

/** The other side of the three calls, on a store of its own. */
function serverSide(store: BookStore, kinds: ReturnType<typeof acceptedKinds>): () => SyncTransport {
  const readersOf = (kind: string) => kinds.find(kind)?.readers ?? "grower";
  return () => ({
    summary: async (mine) => {
      const theirs = await store.summary(readersOf);
      const names = new Set([...Object.keys(mine), ...Object.keys(theirs)]);
      const differing = await Promise.all(
        [...names]
          .filter((name) => mine[name]?.h !== theirs[name]?.h || mine[name]?.n !== theirs[name]?.n)
          .map(async (name) => [name, await store.refs(name, readersOf)] as const),
      );
      return { now_ms: Date.now(), differing: Object.fromEntries(differing) };
    },
    entries: async (texts) => {
      const { accept } = await import("@sillwood/bench/book");
      const entries = texts.flatMap((text) => {
        const judged = accept(JSON.parse(text), kinds);
        return judged.ok ? [judged] : [];
      });
      return { stored: (await store.append({ entries, redacted: [] })).stored, refused: [] };
    },
    fetch: async (refs) => ({
      entries: (await store.get(refs)).flatMap((one) => ("text" in one ? [JSON.parse(one.text)] : [])),
      redacted: [],
    }),
  });
}

test("entries wait for the server, go home by themselves, and reach a second device", async () => {
  const home = await trialClerk("home", unplugged, 9);
  const plug = { isUp: false };
  const server = trialServer(serverSide(home.store, acceptedKinds(home.book.ledger.kinds)), plug);
  const phone = await trialClerk("phone", server, 3);
  await phone.clerk.obey({ do: "be", person: undefined, role: "grower", asking: asking() });
  await phone.clerk.obey({ do: "write", drafts, asking: asking() });
  expect(await phone.clerk.obey({ do: "sync", now_ms: MORNING_ms })).toBe(false);
  expect(phone.mark()).toMatchObject({ away_n: 3, server: "silent" });

  plug.isUp = true;
  expect(await phone.clerk.obey({ do: "sync", now_ms: MORNING_ms })).toBe(true);
  expect(phone.mark()).toMatchObject({ away_n: 0, server: "answers", answered_ms: expect.any(Number) });
  // A restart without the server still knows since when others' entries may be missing.
  const { answered_ms } = phone.mark() ?? {};
  const again = await trialClerk("phone", unplugged, 3);
  await again.clerk.obey({ do: "sync", now_ms: MORNING_ms });
  expect(again.mark()).toMatchObject({ server: "silent", answered_ms });

  const tablet = await trialClerk("tablet", server, 4);
  await tablet.clerk.obey({ do: "sync", now_ms: MORNING_ms });
  expect(tablet.book.ledger.entries_n).toBe(3);
  expect(await without(await refsOf(tablet.store), await refsOf(phone.store))).toEqual([]);
});

async function refsOf(store: BookStore) {
  const all = () => "all" as const;
  const buckets = Object.keys(await store.summary(all));
  return (await Promise.all(buckets.map((bucket) => store.refs(bucket, all)))).flat();
}

test("a grown book opens with the fold it kept: the same round, before its lines are read", async () => {
  const first = await trialClerk("early", unplugged);
  await first.clerk.obey({ do: "be", person: undefined, role: "grower", asking: asking() });
  await first.clerk.obey({ do: "write", drafts, asking: asking() });
  const looks = Array.from({ length: 500 }, (_, i) => ({
    kind: "watering.looked",
    on: [plant],
    data: { look: "light", yes: i % 3 === 0 },
  }));
  for (let day = 1; day <= 5; day++)
    await first.clerk.obey({ do: "write", drafts: looks, asking: asking(MORNING_ms + day * 86_400_000) });
  const now = asking(MORNING_ms + 6 * 86_400_000);
  const round = { do: "ask", name: "round", args: {}, asking: now } as const;
  await first.clerk.obey(round);
  await vi.waitFor(async () => expect(await first.db.get("meta", "fold")).toBeDefined(), 5_000);
  // Written since: read by name at the next start.
  const watered = { kind: "watering.watered", on: [plant], data: { volume_mL: 300, drained: "yes" } };
  await first.clerk.obey({ do: "write", drafts: [watered], asking: now });
  const answer = await first.clerk.obey(round);
  const log = { do: "ask", name: "log", args: {}, asking: now } as const;
  const lines = await first.clerk.obey(log);
  first.db.close();

  const second = await trialClerk("early", unplugged, 2);
  expect(await second.clerk.obey(round)).toEqual(answer);
  expect(second.book.ledger.entries_n).toBe(0);
  // What looks back waits for the whole book, whose plants take over the kept states.
  expect(await second.clerk.obey(log)).toEqual(lines);
  expect(second.book.ledger.entries_n).toBe(2504);
  expect(await second.clerk.obey(round)).toEqual(answer);
}, 60_000);
