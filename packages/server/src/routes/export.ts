import { exportBook } from "@sillwood/bench/book";
import type { Hono } from "hono";
import { grower } from "../access/who.ts";
import { bookAt, type House } from "../house.ts";

/** The whole book as lines of JSON; each file that it lists is fetched at `/books/{book}/files/{hash}`. */
export function exportRoute(app: Hono, house: House): void {
  app.get("/books/:book/export", (c) => {
    grower(c);
    const store = bookAt(house, c);
    const lines = exportBook(store.book, store.all(), store.files.list());
    const encoder = new TextEncoder();
    const body = new ReadableStream<Uint8Array>({
      async pull(controller) {
        let text = "";
        // Lines are short; a piece of some size spares the network thousands of tiny ones.
        while (text.length < 65_536) {
          const { done, value } = await lines.next();
          if (done) {
            if (text) controller.enqueue(encoder.encode(text));
            return controller.close();
          }
          text += `${value}\n`;
        }
        controller.enqueue(encoder.encode(text));
      },
      async cancel() {
        await lines.return(undefined);
      },
    });
    return c.body(body, 200, {
      "content-type": "application/x-ndjson; charset=utf-8",
      "content-disposition": 'attachment; filename="book.ndjson"',
      "cache-control": "no-store",
    });
  });
}
