import { importBook, sha256Hex } from "@sillwood/bench/book";
import { FILE_MAX_B } from "@sillwood/store/entry-store";
import { describe, expect, it } from "vitest";
import { someEntries, testKinds } from "../../bench/test/entry-maker.ts";
import { makeApp } from "./make-app.ts";

const text = "instant,air_C\n2026-11-25T13:00:00.000Z,21.4\n";
const hash = sha256Hex(text);
const at = `/books/main/files/${hash}`;
const put = (ask: ReturnType<typeof makeApp>["ask"], body: BodyInit, type = "text/csv", path = at) =>
  ask(path, { method: "PUT", headers: { "content-type": type }, body });

describe("files", () => {
  it("come back byte for byte, may be kept for ever and can do nothing", async () => {
    const { ask } = makeApp();
    expect((await ask(at)).status).toBe(404);
    expect((await put(ask, text)).status).toBe(201);
    expect((await put(ask, text)).status).toBe(201);
    const response = await ask(at);
    expect(await response.text()).toBe(text);
    expect(response.headers.get("content-type")).toBe("text/csv");
    expect(response.headers.get("cache-control")).toContain("immutable");
    expect(response.headers.get("content-security-policy")).toContain("sandbox");
    expect(response.headers.get("x-content-type-options")).toBe("nosniff");
    expect((await ask(at, { headers: { "if-none-match": `"${hash}"` } })).status).toBe(304);
    const head = await ask(at, { method: "HEAD" });
    expect([head.status, head.headers.get("content-length"), await head.text()]).toEqual([
      200,
      String(text.length),
      "",
    ]);
  });

  it.each([
    ["other bytes than the name says", 422, "something else", "text/csv", at],
    ["a page", 415, "<script>", "text/html", at],
    ["a drawing that could run", 415, "<svg/>", "image/svg+xml", at],
    ["no type", 415, text, "", at],
    ["a name that is none", 422, text, "text/csv", "/books/main/files/..%2F..%2Fetc"],
    ["too many bytes", 413, "x".repeat(FILE_MAX_B + 1), "image/png", at],
  ])("%s: %d", async (_what, status, body, type, path) => {
    const { ask, logged } = makeApp();
    const response = await put(ask, body, type, path);
    expect(response.status).toBe(status);
    expect(response.headers.get("content-type")).toBe("application/problem+json");
    expect((await ask(at)).status).toBe(404);
    expect(logged).toEqual([]);
  });

  it("a body that never ends is stopped at the limit", async () => {
    const { ask } = makeApp();
    let sent_B = 0;
    const endless = new ReadableStream<Uint8Array>({
      pull(controller) {
        sent_B += 65_536;
        controller.enqueue(new Uint8Array(65_536));
      },
    });
    const response = await ask(at, {
      method: "PUT",
      headers: { "content-type": "image/png" },
      body: endless,
      duplex: "half",
    } as RequestInit);
    expect(response.status).toBe(413);
    expect(sent_B).toBeLessThan(FILE_MAX_B + 10 * 65_536);
  });
});

describe("export", () => {
  it("holds every entry and names every file", async () => {
    const { ask, store } = makeApp();
    const entries = someEntries(1, 700);
    await store.append({ entries, redacted: [] });
    await put(ask, text);
    const response = await ask("/books/main/export");
    expect(response.headers.get("content-type")).toContain("application/x-ndjson");
    const texts: string[] = [];
    const others: string[] = [];
    for await (const line of importBook((await response.text()).split("\n"), testKinds))
      if (line.what === "entry") texts.push(line.entry.text);
      else others.push(line.what);
    expect(texts.sort()).toEqual(entries.map((entry) => entry.text).sort());
    expect(others).toEqual(["head", "file", "end"]);
  });
});

describe("person cards", () => {
  const person = "/books/main/people/0193a5c8-7b1e-7abc-8def-0123456789ab";
  const write = (ask: ReturnType<typeof makeApp>["ask"], card: unknown, path = person) =>
    ask(path, { method: "PUT", headers: { "content-type": "application/json" }, body: JSON.stringify(card) });

  it("can be written, read, changed and erased, and are not in the book", async () => {
    const { ask } = makeApp();
    expect((await write(ask, { name: "A helper" })).status).toBe(204);
    expect((await write(ask, { name: "A grower", note: "early riser" })).status).toBe(204);
    expect(await (await ask(person)).json()).toEqual({ name: "A grower", note: "early riser" });
    expect(await (await ask("/books/main/export")).text()).not.toContain("A grower");
    expect((await ask(person, { method: "DELETE" })).status).toBe(204);
    expect((await ask(person)).status).toBe(404);
    expect(await (await ask("/books/main/people")).json()).toEqual({ people: [] });
  });

  it("name every field that is wrong", async () => {
    const { ask } = makeApp();
    const response = await write(ask, { name: "", mail: "x".repeat(201), shoe: 44 });
    expect(response.status).toBe(422);
    const { problems } = await response.json();
    expect(problems.map(({ path }: { path: string }) => path).sort()).toEqual(["mail", "name", "shoe"]);
    expect((await write(ask, { name: "A" }, "/books/main/people/me")).status).toBe(422);
  });
});
