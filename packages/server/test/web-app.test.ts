import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { brotliCompressSync, brotliDecompressSync } from "node:zlib";
import { afterAll, expect, it } from "vitest";
import { makeApp } from "./make-app.ts";

const folder = mkdtempSync(join(tmpdir(), "sillwood-web-"));
const script = "export const ripe = true;".repeat(100);
const at = "/assets/main-a1B2c3D4.js";
mkdirSync(join(folder, "assets"));
writeFileSync(join(folder, "index.html"), "<!doctype html><title>Sillwood</title>");
writeFileSync(join(folder, at), script);
writeFileSync(join(folder, `${at}.br`), brotliCompressSync(script));
afterAll(() => rmSync(folder, { recursive: true }));
const { ask } = makeApp({ webDir: folder });
const asked = (path: string, accepts?: string) =>
  ask(path, { headers: accepts === undefined ? {} : { "accept-encoding": accepts } });

it.each(["br", "gzip, deflate, br, zstd", "gzip;q=1.0, br;q=0.8"])(
  "sends the packed copy to whoever takes %s",
  async (accepts) => {
    const answer = await asked(at, accepts);
    expect(answer.headers.get("content-encoding")).toBe("br");
    expect(answer.headers.get("content-type")).toContain("text/javascript");
    expect(answer.headers.get("vary")).toBe("accept-encoding");
    const bytes = Buffer.from(await answer.arrayBuffer());
    expect(bytes.length).toBeLessThan(script.length / 10);
    expect(brotliDecompressSync(bytes).toString()).toBe(script);
  },
);

it.each([undefined, "", "gzip", "br;q=0", "br;q=0.000", "brx", "xbr"])(
  "sends the plain file to whoever takes %s",
  async (accepts) => {
    const answer = await asked(at, accepts);
    expect(answer.headers.get("content-encoding")).toBeNull();
    expect(await answer.text()).toBe(script);
  },
);

it("tells the two apart for a cache, and sends plain what was not packed", async () => {
  const [packed, plain] = [await asked(at, "br"), await asked(at)];
  expect(packed.headers.get("etag")).not.toBe(plain.headers.get("etag"));
  expect((await asked("/", "br")).headers.get("content-encoding")).toBeNull();
});
