import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { StoreError } from "@sillwood/store/errors";
import { memoryStore } from "@sillwood/store/memory";
import { afterAll, describe, expect, it } from "vitest";
import { testRegistry } from "../../bench/test/entry-maker.ts";
import { createApp } from "../src/app.ts";
import { BASE, makeApp } from "./make-app.ts";

const folder = mkdtempSync(join(tmpdir(), "sillwood-web-"));
mkdirSync(join(folder, "web", "assets"), { recursive: true });
writeFileSync(join(folder, "secret.txt"), "not for the web");
writeFileSync(join(folder, "web", "index.html"), "<!doctype html><title>Sillwood</title>");
writeFileSync(join(folder, "web", "sw.js"), "// worker");
writeFileSync(join(folder, "web", "assets", "main-a1B2c3D4.js"), "export {}");
afterAll(() => rmSync(folder, { recursive: true }));
const web = () => makeApp({ webDir: join(folder, "web") });

describe("headers", () => {
  it.each(["/", "/books", "/no/such/page", "/books/other/export", "/openapi.json"])(
    "keep the browser careful on %s",
    async (path) => {
      const { headers } = await web().ask(path);
      expect(headers.get("content-security-policy")).toContain("frame-ancestors 'none'");
      expect(headers.get("content-security-policy")).not.toContain("unsafe-inline");
      expect(headers.get("x-content-type-options")).toBe("nosniff");
      expect(headers.get("referrer-policy")).toBe("no-referrer");
      expect(headers.get("cross-origin-opener-policy")).toBe("same-origin");
      expect(headers.get("cross-origin-resource-policy")).toBe("same-origin");
    },
  );
});

describe("who may ask", () => {
  const { app } = makeApp();
  const asked = async (url: string, init: RequestInit = {}) => (await app.request(url, init)).status;

  it("answers to the names of this machine and to no other", async () => {
    for (const host of ["127.0.0.1:7373", "localhost:7373", "[::1]:7373", "localhost"])
      expect(await asked(`http://${host}/books`)).toBe(200);
    for (const host of ["rebound.example", "127.0.0.1.example", "10.0.0.5:7373", "0.0.0.0:7373"])
      expect(await asked(`http://${host}/books`)).toBe(421);
    expect(await asked(`${BASE}/books`, { headers: { host: "rebound.example" } })).toBe(421);
  });

  it("takes nothing from pages of other origins", async () => {
    const from = (headers: Record<string, string>, method = "POST") =>
      asked(`${BASE}/books/main/sync/summary`, {
        method,
        headers: { "content-type": "application/json", ...headers },
        ...(method === "POST" ? { body: '{"summary":{}}' } : {}),
      });
    expect(await from({})).toBe(200);
    expect(await from({ origin: BASE })).toBe(200);
    expect(await from({ origin: "http://127.0.0.1:5173" })).toBe(403);
    expect(await from({ origin: "null" })).toBe(403);
    expect(await from({ "sec-fetch-site": "cross-site" })).toBe(403);
    expect(await from({ "sec-fetch-site": "same-site" })).toBe(403);
    expect(await from({ "sec-fetch-site": "same-origin" })).toBe(200);
    expect(await from({ "content-type": "text/plain" })).toBe(415);
    expect(await asked(`${BASE}/books`, { headers: { origin: "http://evil.example" } })).toBe(403);
  });

  it("a development server may be let in by name", async () => {
    const { ask } = makeApp({ origins: ["http://localhost:5173"] });
    expect((await ask("/books", { headers: { origin: "http://localhost:5173" } })).status).toBe(200);
  });
});

it("every answer with a body says what it is, and no other origin is let in by a header", async () => {
  const { ask } = web();
  for (const path of ["/", "/books", "/openapi.json", "/books/main/export", "/no.js", "/sw.js"]) {
    const { headers } = await ask(path);
    expect(headers.get("content-type"), path).toMatch(/^[a-z]+\/[\w.+-]+/);
    if (headers.get("content-type")?.startsWith("text/"))
      expect(headers.get("content-type")).toContain("charset=utf-8");
    expect(headers.get("access-control-allow-origin")).toBeNull();
  }
});

describe("errors", () => {
  it("an unknown error gets a number; its stack goes to the log and not to the answer", async () => {
    const store = { ...memoryStore("main"), count_n: () => Promise.reject(new Error("secret path /home/x")) };
    const { ask, logged } = makeApp({ store });
    const response = await ask("/books");
    const body = await response.json();
    expect(response.status).toBe(500);
    expect(JSON.stringify(body)).not.toContain("secret");
    expect(logged[0]).toContain(body.incident);
    expect(logged[0]).toContain("secret path");
  });

  it.each([
    ["full", 507],
    ["busy", 503],
    ["taken over", 503],
  ] as const)("a store that is %s answers %d", async (fault, status) => {
    const store = {
      ...memoryStore("main"),
      append: () => Promise.reject(new StoreError(fault, `the disk is ${fault}`)),
    };
    const response = await makeApp({ store }).post("/books/main/sync/entries", { entries: [] });
    expect(response.status).toBe(status);
    expect(await response.json()).toMatchObject({ title: `the disk is ${fault}`, status, problems: [] });
  });

  it.each([
    ["not JSON", "{", 400],
    ["bad UTF-8", new Uint8Array([0x22, 0xff, 0x22]), 400],
    ["another shape", '{"refs":[{"id":1}]}', 422],
    [
      "too many names",
      JSON.stringify({
        refs: Array(501).fill({ id: "0193a5c8-7b1e-7abc-8def-0123456789ab", hash: "0".repeat(64) }),
      }),
      422,
    ],
    ["too large", `"${"x".repeat(4 * 1024 * 1024)}"`, 413],
  ])("%s: %s", async (_what, body, status) => {
    const { ask } = makeApp();
    const response = await ask("/books/main/sync/fetch", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body,
    });
    expect(response.status).toBe(status);
    const { problems } = await response.json();
    expect(problems.length).toBeGreaterThan(0);
  });
});

describe("the web app", () => {
  it("serves files, pages, and nothing outside its folder", async () => {
    const { ask } = web();
    const main = await ask("/assets/main-a1B2c3D4.js");
    expect(main.headers.get("content-type")).toContain("text/javascript");
    expect(main.headers.get("cache-control")).toContain("immutable");
    const worker = await ask("/sw.js");
    expect(worker.headers.get("cache-control")).toBe("no-cache");
    expect(
      (await ask("/sw.js", { headers: { "if-none-match": worker.headers.get("etag") as string } })).status,
    ).toBe(304);
    for (const path of ["/", "/round", "/plant/127"])
      expect(await (await ask(path)).text()).toContain("<title>Sillwood");
    for (const path of [
      "/gone.js",
      "/..%2fsecret.txt",
      "/%2e%2e/secret.txt",
      "/..%5csecret.txt",
      "/%00",
      "/%ff",
      "/secret.txt",
      "/.git/config",
    ]) {
      const response = await ask(path);
      expect(response.status, path).toBe(404);
      expect(response.headers.get("content-type")).toBe("application/problem+json");
    }
    expect((await ask("/books/main/nothing")).status).toBe(404);
    expect((await ask("/round", { method: "POST" })).status).toBe(404);
  });

  it("without one only programs are answered", async () => {
    const app = createApp({ store: memoryStore("main"), kinds: testRegistry });
    expect((await app.request(`${BASE}/`)).status).toBe(404);
    expect((await app.request(`${BASE}/health`)).status).toBe(200);
  });
});
