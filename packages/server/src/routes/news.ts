import type { Hono } from "hono";
import { streamSSE } from "hono/streaming";
import { bookAt, type House } from "../house.ts";
import { HttpProblem } from "../problem.ts";

/** Most pages listening at once, and how often a silent line is kept open [ms]. Our assumption. */
const LISTENERS_MAX_n = 200;
const SILENCE_ms = 20_000;

/** Server-sent events that say only "something new"; the page then syncs. */
export function newsRoute(app: Hono, house: House): void {
  app.get("/books/:book/news", (c) => {
    bookAt(house, c);
    if (house.news.listeners_n >= LISTENERS_MAX_n) throw new HttpProblem(503, "too many pages are listening");
    return streamSSE(c, async (stream) => {
      let pending = false;
      let wake: () => void = () => undefined;
      const stop = house.news.listen(() => {
        pending = true;
        wake();
      });
      stream.onAbort(() => {
        stop();
        wake();
      });
      // So that the browser knows at once that the line stands.
      await stream.write(": listening\n\n");
      try {
        while (!stream.aborted && !stream.closed) {
          if (!pending) await silence(SILENCE_ms, (go) => (wake = go));
          if (stream.aborted || stream.closed) return;
          // Ten entries in a row are one piece of news.
          if (pending) await stream.writeSSE({ data: "something new" });
          else await stream.write(": still here\n\n");
          pending = false;
        }
      } finally {
        stop();
      }
    });
  });
}

const silence = (ms: number, wakeable: (go: () => void) => void) =>
  new Promise<void>((resolve) => {
    const timer = setTimeout(resolve, ms);
    timer.unref();
    wakeable(() => {
      clearTimeout(timer);
      resolve();
    });
  });
