import { type Fetch, httpTransport, readersFrom, SyncError, syncOnce } from "@sillwood/bench/book";
import { memoryStore } from "@sillwood/store/memory";
import { describe, expect, it } from "vitest";
import { someEntries, testKinds, writer } from "../../bench/test/entry-maker.ts";
import { makeNews } from "../src/app.ts";
import { BASE, makeApp } from "./make-app.ts";

const readersOf = readersFrom(testKinds);
const over = (app: ReturnType<typeof makeApp>["app"]) =>
  httpTransport(((url, init) => app.request(url, init)) as Fetch, `${BASE}/books/main`);

describe("sync over HTTP", () => {
  it("brings two devices and the server to one book, in calls of 500", async () => {
    const { app, store } = makeApp();
    const [one, two] = [memoryStore(), memoryStore()];
    await one.append({ entries: someEntries(1, 1203), redacted: [] });
    await two.append({ entries: someEntries(2, 40), redacted: [] });
    const sync = (device: typeof one) =>
      syncOnce({ store: device, transport: over(app), kinds: testKinds, now_ms: () => 1_790_000_060_000 });
    const first = await sync(one);
    expect(first).toMatchObject({ sent_n: 1203, fetched_n: 0, unnamed: [], refused: [], ahead_ms: 60_000 });
    expect(await sync(two)).toMatchObject({ sent_n: 40, fetched_n: 1203, missing: [], problems: [] });
    expect(await sync(one)).toMatchObject({ sent_n: 0, fetched_n: 40 });
    const books = await Promise.all([one, two, store].map((book) => book.summary(readersOf)));
    expect(books[0]).toEqual(books[2]);
    expect(books[1]).toEqual(books[2]);
    expect(await sync(one)).toMatchObject({ sent_n: 0, fetched_n: 0 });
  });

  it("carries redactions, twins and what only a newer app knows", async () => {
    const { app } = makeApp();
    const [one, two] = [memoryStore(), memoryStore()];
    const { write } = writer(3);
    const secret = write("test.noted", { text: "an address" });
    const redaction = write("book.redacted", { id: secret.entry.id, hash: secret.hash });
    await one.append({ entries: [secret, redaction, ...someEntries(4, 3)], redacted: [] });
    for (const device of [one, two, one])
      await syncOnce({ store: device, transport: over(app), kinds: testKinds, now_ms: () => 0 });
    expect(await two.summary(readersOf)).toEqual(await one.summary(readersOf));
    expect(await two.get([{ id: secret.entry.id, hash: secret.hash }])).toMatchObject([{ redacted: true }]);
  });

  it("names what it refuses and why, and keeps the rest of the call", async () => {
    const { post, store } = makeApp();
    const [good] = someEntries(5, 1);
    const bad = { ...good?.entry, kind: "test.weighed", v: 2, on: ["plant-1"], data: { mass_g: -1 } };
    const answer = await (await post("/books/main/sync/entries", { entries: [bad, good?.entry, 7] })).json();
    expect(answer.stored).toHaveLength(1);
    expect(answer.refused).toHaveLength(2);
    expect(answer.refused[0].problems[0]).toMatchObject({
      path: "data.mass_g",
      value: -1,
      unit: "g",
      message: "at least 1 g",
    });
    expect(await store.count_n()).toBe(1);
  });

  it("a client tells an answer that is no answer", async () => {
    const portal = (async () =>
      new Response("<html>Welcome to the harbour network</html>")) as unknown as Fetch;
    await expect(httpTransport(portal, BASE).summary({})).rejects.toMatchObject({
      name: "SyncError",
      retry: true,
    });
    const { app } = makeApp();
    const wrong = httpTransport(((url, init) => app.request(url, init)) as Fetch, `${BASE}/books/other`);
    await expect(wrong.summary({})).rejects.toBeInstanceOf(SyncError);
    await expect(wrong.summary({})).rejects.toMatchObject({ status: 404, retry: false });
  });

  it("says that something is new, once for many, and nothing else", async () => {
    const news = makeNews();
    const { ask, post } = makeApp({ news });
    const response = await ask("/books/main/news");
    expect(response.headers.get("content-type")).toContain("text/event-stream");
    const reader = (response.body as ReadableStream<Uint8Array>).getReader();
    const next = async () => new TextDecoder().decode((await reader.read()).value);
    expect(await next()).toContain("listening");
    await post("/books/main/sync/entries", { entries: someEntries(6, 5).map(({ entry }) => entry) });
    expect(await next()).toBe("data: something new\n\n");
    expect(news.listeners_n).toBe(1);
    await reader.cancel();
    await expect.poll(() => news.listeners_n).toBe(0);
  });
});
