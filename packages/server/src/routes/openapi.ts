import type { Hono } from "hono";
import type { House } from "../house.ts";
import { jsonSchemaOf, openApiDocument } from "../openapi.ts";
import { HttpProblem } from "../problem.ts";

/** The interface for programs, described from the schemas that judge it. */
export function openApiRoute(app: Hono, house: House): void {
  let document: object | undefined;
  app.get("/openapi.json", (c) => {
    document ??= openApiDocument(house.registry, house.store.book);
    return c.json(document);
  });
  app.get("/openapi/kinds/:kind", (c) => {
    const name = c.req.param("kind").replace(/\.json$/, "");
    const kind = house.registry.find(name);
    if (!kind)
      throw new HttpProblem(404, "there is no such kind of entry", [
        { path: "kind", message: "is not known", value: name.slice(0, 100) },
      ]);
    return c.json({
      $schema: "https://json-schema.org/draft/2020-12/schema",
      title: name,
      ...jsonSchemaOf(kind.schema),
    });
  });
}
