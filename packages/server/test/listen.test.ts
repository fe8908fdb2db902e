import { memoryStore } from "@sillwood/store/memory";
import { expect, it } from "vitest";
import { testRegistry } from "../../bench/test/entry-maker.ts";
import { createApp } from "../src/app.ts";
import { ListenError, listen } from "../src/listen.ts";

const app = () => createApp({ store: memoryStore("main"), kinds: testRegistry });

it("answers on loopback, tells when the port is taken, and closes with listeners on the line", async () => {
  const listening = await listen(app(), { port: 0 });
  expect(listening.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
  const books = await (await fetch(`${listening.url}/books`)).json();
  expect(books).toMatchObject({ books: [{ id: "main", entries_n: 0 }] });
  await expect(listen(app(), { port: Number(new URL(listening.url).port) })).rejects.toThrow(/is taken/);
  const news = await fetch(`${listening.url}/books/main/news`);
  expect(news.status).toBe(200);
  await listening.close();
  await expect(fetch(`${listening.url}/books`)).rejects.toThrow();
  await news.body?.cancel().catch(() => undefined);
});

it.each(["0.0.0.0", "::", "192.168.1.20", "example.org", ""])("refuses to listen on %j", async (host) => {
  const refusal = listen(app(), { port: 0, host });
  await expect(refusal).rejects.toBeInstanceOf(ListenError);
  await expect(refusal).rejects.toThrow(/nobody is asked for a key here/);
});

it.each([-1, 65_536, 1.5, Number.NaN])("refuses port %d", async (port) => {
  await expect(listen(app(), { port })).rejects.toThrow(/expected 0 to 65535/);
});
