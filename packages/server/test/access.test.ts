import { type AcceptedEntry, readersFrom } from "@sillwood/bench/book";
import { describe, expect, it } from "vitest";
import { testKinds, writer } from "../../bench/test/entry-maker.ts";
import { closeAsTheBookSays, pairings } from "../src/access/index.ts";
import { twoDoors } from "./paired.ts";

const DEVICE = "0193a5c8-7b1e-7abc-8def-0123456789ab";
const PERSON = "0193a5c8-7b1e-7abc-8def-0123456789ac";
const push = (entries: readonly AcceptedEntry[]) => ({ entries: entries.map(({ entry }) => entry) });
const refOf = ({ entry, hash }: AcceptedEntry) => ({ id: entry.id, hash });

describe("pairing", () => {
  it("nobody reads or writes without a key, at any address that holds the book", async () => {
    const { ask, post } = twoDoors();
    for (const path of [
      "/books",
      "/books/main/export",
      "/books/main/people",
      "/books/main/news",
      "/openapi.json",
    ])
      expect((await ask(path)).status, path).toBe(401);
    expect((await ask("/books", { key: "x".repeat(43) })).status).toBe(401);
    expect((await post("/books/main/sync/entries", { entries: [] })).status).toBe(401);
    expect((await post("/books/main/pairing", { person: PERSON, role: "grower" })).status).toBe(401);
    expect((await ask("/health")).status).toBe(200);
  });

  it("a code lets one device in, once, within ten minutes", async () => {
    let now_ms = 1_790_000_000_000;
    const { post, codeFor, ask } = twoDoors({ now_ms: () => now_ms });
    const code = await codeFor(PERSON, "helper");
    const body = { code, device: DEVICE, name: "kitchen phone", bearer: true };
    const answer = await post("/pair", body);
    expect(await answer.json()).toMatchObject({ book: "main", person: PERSON, role: "helper" });
    expect((await post("/pair", body)).status).toBe(403);
    const late = await codeFor(PERSON, "helper");
    now_ms += 10 * 60_000 + 1;
    expect((await post("/pair", { ...body, code: late })).status).toBe(403);
    expect((await ask("/pair")).status).toBe(404);
  });

  it("a browser gets its key as a cookie that no script, other site or plain line sees", async () => {
    const { post, codeFor, ask } = twoDoors();
    const code = await codeFor(PERSON, "helper");
    const answer = await post("/pair", { code, device: DEVICE, name: "phone" });
    const cookie = answer.headers.get("set-cookie") as string;
    expect(cookie).toMatch(
      /^__Host-sillwood=[\w-]{43}; Path=\/; Max-Age=\d+; Secure; HttpOnly; SameSite=Strict$/,
    );
    expect(await answer.json()).not.toHaveProperty("key");
    const books = await ask("/books", { headers: { cookie: cookie.split(";")[0] as string } });
    expect((await books.json()).you).toEqual({ role: "helper", device: DEVICE, person: PERSON });
    expect(books.headers.get("set-cookie")).toBe(cookie);
  });

  it("what is kept of keys and codes does not open the door, and neither is logged", async () => {
    const { pair, store, outside, inside, ask } = twoDoors();
    const helper = await pair(1, "helper");
    const [kept] = await store.keys.list();
    expect(JSON.stringify(kept)).not.toContain(helper.key);
    expect((await ask("/books", { key: kept?.hash as string })).status).toBe(401);
    Object.assign(store, { count_n: () => Promise.reject(new Error("broken")) });
    expect((await ask("/books", { key: helper.key })).status).toBe(500);
    const log = [...outside.logged, ...inside.logged].join("\n");
    expect(log).toContain("broken");
    expect(log).not.toContain(helper.key);
  });

  it("codes are hashed slowly, by Argon2id in a thread of its own", async () => {
    const codes = pairings();
    const { code } = await codes.make({ person: PERSON, role: "viewer" }, 0);
    expect(code).toMatch(/^\d{8}$/);
    expect(await codes.redeem("00000000" === code ? "00000001" : "00000000", 1)).toBeUndefined();
    expect(await codes.redeem(code, 1)).toEqual({ person: PERSON, role: "viewer" });
    expect(await codes.redeem(code, 1)).toBeUndefined();
    await codes.close();
  });

  it("guesses are counted: five from one line, and then none for a while", async () => {
    let now_ms = 1_790_000_000_000;
    const { post, codeFor } = twoDoors({ now_ms: () => now_ms });
    const code = await codeFor(PERSON, "grower");
    const guess = (given: string) =>
      post("/pair", { code: given, device: DEVICE, name: "phone", bearer: true });
    for (let i = 0; i < 5; i++)
      expect((await guess("12345678" === code ? "87654321" : "12345678")).status).toBe(403);
    const refused = await guess(code);
    expect(refused.status).toBe(429);
    expect(Number(refused.headers.get("retry-after"))).toBeGreaterThan(60);
    now_ms += 3 * 60_000;
    expect((await guess(code)).status).toBe(200);
  });

  it("a device mad with asking is slowed down, the others are not", async () => {
    const { pair, ask } = twoDoors();
    const [mad, calm] = [await pair(1, "helper"), await pair(2, "helper")];
    const statuses = new Set<number>();
    for (let i = 0; i < 450; i++) statuses.add((await ask("/books", { key: mad.key })).status);
    expect([...statuses].sort()).toEqual([200, 429]);
    expect((await ask("/books", { key: calm.key })).status).toBe(200);
  });

  it("nobody takes over another person's device by its name", async () => {
    const { pair, codeFor, post } = twoDoors();
    const theirs = await pair(1, "grower");
    const code = await codeFor(PERSON, "helper");
    const claim = (device: string) => post("/pair", { code, device, name: "phone", bearer: true });
    expect((await claim(theirs.device)).status).toBe(409);
    // The code stands: the phone takes a name of its own and goes on.
    expect((await claim(DEVICE)).status).toBe(200);
  });

  it("each pairing makes a new key, and the one before is over", async () => {
    const { pair, codeFor, post, ask } = twoDoors();
    const phone = await pair(1, "helper");
    const code = await codeFor(phone.person, "helper");
    const again = await post("/pair", { code, device: phone.device, name: "phone", bearer: true });
    const { key } = await again.json();
    expect(key).not.toBe(phone.key);
    expect((await ask("/books", { key: phone.key })).status).toBe(423);
    expect((await ask("/books", { key })).status).toBe(200);
  });

  it("behind a proxy browsers are told to stay with HTTPS, and its word on who calls is counted by", async () => {
    const { makeApp } = await import("./make-app.ts");
    const { app } = makeApp({ door: "paired devices", behindProxy: true, hosts: ["bench.example"] });
    const guess = (from: string) =>
      app.request("http://bench.example/pair", {
        method: "POST",
        headers: { "content-type": "application/json", "x-forwarded-for": `1.1.1.1, ${from}` },
        body: JSON.stringify({ code: "12345678", device: DEVICE, name: "phone" }),
      });
    for (let i = 0; i < 5; i++) expect((await guess("10.0.0.9")).status).toBe(403);
    expect((await guess("10.0.0.9")).status).toBe(429);
    const other = await guess("10.0.0.8");
    expect(other.status).toBe(403);
    expect(other.headers.get("strict-transport-security")).toBe("max-age=31536000");
  });

  it("leaving closes the device's own key", async () => {
    const { pair, ask } = twoDoors();
    const helper = await pair(1, "helper");
    expect((await ask("/leave", { method: "POST", key: helper.key })).headers.get("set-cookie")).toContain(
      "Max-Age=0",
    );
    expect((await ask("/books", { key: helper.key })).status).toBe(423);
  });

  it("pages of other sites can neither pair nor write, and other names are refused", async () => {
    const { ask, outside, pair } = twoDoors();
    const helper = await pair(1, "helper");
    const from = (origin: string, path: string) =>
      ask(path, {
        method: "POST",
        key: helper.key,
        headers: { origin, "content-type": "application/json" },
        body: "{}",
      });
    for (const path of ["/pair", "/leave", "/books/main/sync/entries"])
      expect((await from("https://evil.example", path)).status).toBe(403);
    expect((await outside.app.request("https://evil.example/books")).status).toBe(421);
    expect((await outside.app.request("http://127.0.0.1:7373/books")).status).toBe(421);
  });
});

describe("who may do what", () => {
  it("a helper reads what is for all, and not a name of what is the grower's", async () => {
    const { pair, post, store, ask } = twoDoors();
    const helper = await pair(1, "helper");
    const grower = writer(9);
    const [note, price] = [
      grower.write("test.noted", { text: "seen" }),
      grower.write("test.paid", { price_minor: 5, currency: "EUR" }),
    ];
    await store.append({ entries: [note, price], redacted: [] });
    const asked = async (path: string, body: unknown) =>
      (await post(`/books/main/sync/${path}`, body, helper.key)).text();
    expect(await asked("summary", { summary: {} })).toContain(note.hash);
    expect(await asked("summary", { summary: {} })).not.toContain(price.hash);
    const named = Object.keys(await store.summary(readersFrom(testKinds))).find((name) =>
      name.endsWith("grower"),
    );
    const guessed = { [named as string]: { n: 1, h: "0".repeat(16) } };
    expect(await asked("summary", { summary: guessed })).not.toContain(price.hash);
    const fetched = await asked("fetch", { refs: [refOf(note), refOf(price)] });
    expect(fetched).toContain("seen");
    expect(fetched).not.toContain("price_minor");
    for (const path of [
      "/books/main/export",
      "/books/main/devices",
      "/books/main/aside",
      `/books/main/people/${PERSON}`,
    ])
      expect((await ask(path, { key: helper.key })).status, path).toBe(403);
  });

  it("a helper writes in his own name; what he says for others waits for the grower", async () => {
    const { pair, post, store, inside } = twoDoors();
    const helper = await pair(1, "helper");
    const own = helper.write("test.noted", { text: "mine" });
    const forged = helper.write("test.noted", { text: "in another's name" }, { by: PERSON });
    const redaction = helper.write("book.redacted", refOf(own));
    const clock = helper.write("device.clock", {
      device: DEVICE,
      from_ms: 1_790_000_000_000,
      until_ms: 1_790_000_600_000,
      ahead_ms: 600_000,
    });
    const answer = await post("/books/main/sync/entries", push([own, forged, redaction, clock]), helper.key);
    const { stored, aside } = await answer.json();
    expect(stored).toEqual([refOf(own)]);
    expect(aside).toEqual([refOf(forged), refOf(redaction), refOf(clock)]);
    expect(await store.count_n()).toBe(1);
    expect(await store.get([refOf(own)])).toMatchObject([{ text: own.text }]);
    const waiting = (await (await inside.ask("/books/main/aside")).json()).entries;
    expect(waiting.map(({ why }: { why: string }) => why)).toEqual([
      "for another",
      "only the grower",
      "for another",
    ]);
    await inside.post("/books/main/aside", { take: [refOf(redaction)], drop: [refOf(forged)] });
    expect(await store.get([refOf(own)])).toMatchObject([{ redacted: true }]);
    // Dropped once is dropped: it does not come back with the next sync.
    await post("/books/main/sync/entries", push([forged]), helper.key);
    expect((await (await inside.ask("/books/main/aside")).json()).entries).toHaveLength(1);
  });

  it("a viewer reads and adds nothing; a grower's phone brings what others wrote", async () => {
    const { pair, post, store, ask } = twoDoors();
    const [viewer, grower] = [await pair(1, "viewer"), await pair(2, "grower")];
    const others = writer(7).write("test.noted", { text: "from a restored book" });
    await post("/books/main/sync/entries", push([viewer.write("test.noted", { text: "x" })]), viewer.key);
    expect(await store.count_n()).toBe(0);
    const put = { method: "PUT", key: viewer.key, headers: { "content-type": "image/png" }, body: "x" };
    expect((await ask(`/books/main/files/${"0".repeat(64)}`, put)).status).toBe(403);
    await post("/books/main/sync/entries", push([others]), grower.key);
    expect(await store.count_n()).toBe(1);
    expect((await post("/books/main/sync/summary", { summary: {} }, viewer.key)).status).toBe(200);
  });

  it("person cards stay on the server: the grower sees them, a helper a display name", async () => {
    const { inside, ask, pair } = twoDoors();
    const helper = await pair(1, "helper");
    await inside.ask(`/books/main/people/${PERSON}`, {
      method: "PUT",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ name: "A full name", address: "A street", shown: "Ash" }),
    });
    const seen = await (await ask("/books/main/people", { key: helper.key })).text();
    expect(JSON.parse(seen)).toEqual({ people: [{ id: PERSON, shown: "Ash" }] });
    expect((await inside.ask(`/books/main/people/${PERSON}`)).status).toBe(200);
  });
});

describe("a lost phone", () => {
  it("is shut out by an entry; what it still has waits, to be taken or dropped", async () => {
    const { pair, post, ask, inside, store } = twoDoors();
    const [lost, other] = [await pair(1, "helper"), await pair(2, "helper")];
    const before = lost.write("test.noted", { text: "before" });
    await post("/books/main/sync/entries", push([before]), lost.key);
    const closed = writer(9).write("device.closed", {}, { on: [lost.device] });
    await inside.post("/books/main/sync/entries", push([closed]));
    for (const path of ["/books", "/books/main/news", "/books/main/people"])
      expect((await ask(path, { key: lost.key })).status, path).toBe(423);
    expect((await post("/books/main/sync/summary", { summary: {} }, lost.key)).status).toBe(423);
    expect((await ask("/books", { key: other.key })).status).toBe(200);

    const late = [
      lost.write("test.noted", { text: "late 1" }),
      lost.write("test.noted", { text: "late 2" }),
    ] as const;
    for (let i = 0; i < 2; i++) {
      const answer = await (await post("/books/main/sync/entries", push([before, ...late]), lost.key)).json();
      expect(answer).toMatchObject({ stored: [refOf(before)], aside: late.map(refOf) });
    }
    expect(await store.count_n()).toBe(2);
    await inside.post("/books/main/aside", { take: [refOf(late[0])], drop: [refOf(late[1])] });
    expect(await store.count_n()).toBe(3);
    expect((await (await inside.ask("/books/main/aside")).json()).entries).toEqual([]);
    const put = (hash: string) =>
      ask(`/books/main/files/${hash}`, {
        method: "PUT",
        key: lost.key,
        headers: { "content-type": "image/png" },
        body: "x",
      });
    expect((await put("0".repeat(64))).status).toBe(423);
  });

  it("stays shut out on a server that came back from an older copy, and may be paired anew", async () => {
    const { pair, ask, store, post, codeFor, inside } = twoDoors();
    const lost = await pair(1, "helper");
    // The closing comes to the restored server with the book alone.
    const closed = writer(9).write("device.closed", {}, { on: [lost.device] });
    await store.append({ entries: [closed], redacted: [] });
    expect((await ask("/books", { key: lost.key })).status).toBe(200);
    expect(await closeAsTheBookSays(store, 1_790_000_000_000)).toBe(1);
    expect((await ask("/books", { key: lost.key })).status).toBe(423);
    expect((await (await inside.ask("/books/main/devices")).json()).devices).toMatchObject([
      { device: lost.device },
    ]);
    const code = await codeFor(lost.person, "helper");
    const again = await post("/pair", { code, device: lost.device, name: "found again", bearer: true });
    const { key } = await again.json();
    expect((await ask("/books", { key })).status).toBe(200);
    // The same closing heard again, or read at the next start, is old news.
    await inside.post("/books/main/sync/entries", push([closed]));
    expect(await closeAsTheBookSays(store, 1_790_000_000_000)).toBe(0);
    expect((await ask("/books", { key })).status).toBe(200);
  });

  it("is shut out though the clock of the grower's phone is years slow (found by walk 25)", async () => {
    const { pair, ask, inside } = twoDoors();
    const lost = await pair(1, "helper");
    const closed = writer(9, 1_500_000_000_000).write("device.closed", {}, { on: [lost.device] });
    await inside.post("/books/main/sync/entries", push([closed]));
    expect((await ask("/books", { key: lost.key })).status).toBe(423);
  });

  it("a helper can shut nobody out", async () => {
    const { pair, post, ask } = twoDoors();
    const [one, other] = [await pair(1, "helper"), await pair(2, "helper")];
    await post(
      "/books/main/sync/entries",
      push([one.write("device.closed", {}, { on: [other.device] })]),
      one.key,
    );
    expect((await ask("/books", { key: other.key })).status).toBe(200);
  });

  it("what waits of one device has an end", async () => {
    const { pair, post, inside } = twoDoors();
    const viewer = await pair(1, "viewer");
    const some = Array.from({ length: 500 }, () => viewer.write("test.noted", { text: "x" }));
    for (let i = 0; i < 10; i++)
      await post(
        "/books/main/sync/entries",
        push(i === 0 ? some : Array.from({ length: 500 }, () => viewer.write("test.noted", { text: "x" }))),
        viewer.key,
      );
    const refused = await post(
      "/books/main/sync/entries",
      push([viewer.write("test.noted", { text: "x" })]),
      viewer.key,
    );
    expect(refused.status).toBe(507);
    expect((await (await inside.ask("/books/main/aside")).json()).entries).toHaveLength(5000);
  });
});

describe("photos over a bad line", () => {
  const bytes = Buffer.from("0123456789".repeat(10));
  const hash = "0e9da5c3c1d0ad85c5f4ce5f9a2a3e2c8f0f1ee5c6aee0b4b1b7e5d2ac0d4e52";
  it("come and go in pieces that go on where they broke off", async () => {
    const { createHash } = await import("node:crypto");
    const name = createHash("sha256").update(bytes).digest("hex");
    expect(name).not.toBe(hash);
    const { inside } = twoDoors();
    const at = `/books/main/files/${name}`;
    const put = async (from: number, until: number, body = bytes.subarray(from, until)) => {
      const answer = await inside.ask(at, {
        method: "PUT",
        headers: { "content-type": "image/png", "content-range": `bytes ${from}-${until - 1}/100` },
        body: new Uint8Array(body),
      });
      return [answer.status, (await answer.json()).have_B];
    };
    expect(await put(0, 40)).toEqual([202, 40]);
    // The answer was lost: the same piece again, then one too far, then one that broke off in its middle.
    expect(await put(0, 40)).toEqual([202, 40]);
    expect(await put(60, 100)).toEqual([409, 40]);
    expect(await put(40, 80, bytes.subarray(40, 50))).toEqual([409, 40]);
    expect((await inside.ask(at)).status).toBe(404);
    expect((await put(40, 100))[0]).toBe(201);
    const part = await inside.ask(at, { headers: { range: "bytes=30-49" } });
    expect([part.status, part.headers.get("content-range"), await part.text()]).toEqual([
      206,
      "bytes 30-49/100",
      "01234567890123456789",
    ]);
    expect(await (await inside.ask(at, { headers: { range: "bytes=95-" } })).text()).toBe("56789");
    expect((await inside.ask(at, { headers: { range: "bytes=100-" } })).status).toBe(416);
  });

  it("whose bytes are others than their name says are refused and may be sent again", async () => {
    const { inside, store } = twoDoors();
    const put = (range: string) =>
      inside.ask(`/books/main/files/${hash}`, {
        method: "PUT",
        headers: { "content-type": "image/png", "content-range": range },
        body: new Uint8Array(bytes),
      });
    expect((await put("bytes 0-99/100")).status).toBe(422);
    expect(await store.files.has(hash)).toBeUndefined();
    for (const odd of ["bytes 0-99/99", "bytes 5-4/100", "bytes x-1/100", `bytes 0-99/${17 * 1024 * 1024}`])
      expect((await put(odd)).status, odd).toBe(422);
  });
});
