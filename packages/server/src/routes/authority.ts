import type { Hono } from "hono";

/** What a phone must trust once, before it can trust this house: public, for it is no secret. */
export function authorityRoute(app: Hono, authority: Uint8Array): void {
  app.get("/house.crt", (c) =>
    c.body(Uint8Array.from(authority), 200, {
      "content-type": "application/x-x509-ca-cert",
      "content-disposition": 'attachment; filename="sillwood-at-home.crt"',
    }),
  );
}
