import { kindRegistry } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { houseKinds } from "@sillwood/bench/house";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeApp } from "./make-app.ts";

const kinds = kindRegistry([...houseKinds, ...crafts.flatMap((craft) => craft.kinds)]);

interface Operation {
  readonly requestBody?: {
    readonly content: Record<string, { readonly examples?: Record<string, { readonly value: unknown }> }>;
  };
}
interface Document {
  readonly paths: Record<string, Record<string, Operation>>;
  readonly components: { readonly schemas: Record<string, unknown> };
}

async function read() {
  const made = makeApp({ kinds });
  const document = (await (await made.ask("/openapi.json")).json()) as Document;
  const examples = Object.entries(document.paths).flatMap(([path, operations]) =>
    Object.entries(operations).flatMap(([method, { requestBody }]) =>
      Object.entries(requestBody?.content["application/json"]?.examples ?? {}).map(([name, { value }]) => ({
        name: `${method} ${path} ${name}`,
        path: path.replace("{book}", "main").replace("{person}", "0193a5c8-7b1e-7abc-8def-0123456789ab"),
        method: method.toUpperCase(),
        value,
      })),
    ),
  );
  return { ...made, document, examples };
}

const send = (
  { ask }: Pick<Awaited<ReturnType<typeof read>>, "ask">,
  path: string,
  method: string,
  body: string,
) => ask(path, { method, headers: { "content-type": "application/json" }, body });

describe("the OpenAPI document", () => {
  it("describes every kind of entry and refers to nothing that is not there", async () => {
    const { document, examples } = await read();
    for (const { kind } of kinds.all)
      expect(document.components.schemas, kind).toHaveProperty([`data.${kind}`]);
    for (const [, name] of JSON.stringify(document).matchAll(/"#\/components\/schemas\/([^"]+)"/g))
      expect(document.components.schemas).toHaveProperty([name as string]);
    expect(examples.length).toBeGreaterThan(kinds.all.length);
  });

  it("gives the JSON Schema of each kind on its own", async () => {
    const { ask } = makeApp({ kinds });
    for (const { kind } of kinds.all) {
      const schema = await (await ask(`/openapi/kinds/${kind}.json`)).json();
      expect(schema, kind).toHaveProperty("$schema");
    }
    expect((await ask("/openapi/kinds/no.such")).status).toBe(404);
  });

  it("every example in it is taken", async () => {
    const made = await read();
    for (const { name, path, method, value } of made.examples) {
      const response = await send(made, path, method, JSON.stringify(value));
      expect([200, 201, 204], name).toContain(response.status);
      if (!path.endsWith("/entries")) continue;
      const { stored, refused } = await response.json();
      expect(refused, name).toEqual([]);
      expect(stored, name).toHaveLength(1);
    }
    expect(await made.store.count_n()).toBe(kinds.all.length);
  });

  it("whatever is sent in place of any part of an example gets an orderly answer", async () => {
    const made = await read();
    const strange = fc.oneof(
      fc.jsonValue({ maxDepth: 3 }),
      fc.constantFrom(
        -1,
        0,
        1e308,
        -0.5,
        "",
        " ",
        "NaN",
        "\u0000",
        "__proto__",
        [],
        {},
        null,
        "x".repeat(5000),
        2 ** 53,
      ),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...made.examples),
        fc.nat(),
        strange,
        fc.boolean(),
        async (example, where, value, remove) => {
          const body = JSON.stringify(mutated(example.value, where, value, remove));
          const response = await send(made, example.path, example.method, body);
          await orderly(response, body);
        },
      ),
      { numRuns: 1500 },
    );
    expect(made.logged).toEqual([]);
  });

  it("so does any text at any address", async () => {
    const made = await read();
    const paths = [
      ...new Set(made.examples.map(({ path }) => path)),
      "/books",
      "/openapi.json",
      "/books/main/export",
      "/nothing",
    ];
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...paths),
        fc.constantFrom("GET", "POST", "PUT", "DELETE", "PATCH"),
        fc.string(),
        async (path, method, body) => {
          const response = await made.ask(path, {
            method,
            headers: { "content-type": "application/json" },
            ...(method === "GET" ? {} : { body }),
          });
          await orderly(response, `${method} ${path} ${body}`);
        },
      ),
      { numRuns: 500 },
    );
    expect(made.logged).toEqual([]);
  });
});

/** Never a 5xx, never NaN; refusals are problem+json that names each field with its value or limit. */
async function orderly(response: Response, sent: string) {
  expect(response.status, sent).toBeLessThan(500);
  const text = await response.text();
  // What somebody typed may be quoted back to him.
  if (!sent.includes("NaN")) expect(text, sent).not.toMatch(/\bNaN\b/);
  if (response.status >= 400) {
    expect(response.headers.get("content-type"), sent).toBe("application/problem+json");
    for (const problem of JSON.parse(text).problems)
      expect(problem, sent).toMatchObject({ path: expect.any(String), message: expect.any(String) });
  }
  if (!text.startsWith('{"stored"')) return;
  const { stored, refused } = JSON.parse(text);
  for (const { problems } of refused) {
    expect(problems.length, sent).toBeGreaterThan(0);
    for (const problem of problems) {
      expect(problem.message, sent).toMatch(/\S/);
      // A number that is out of range is named with its unit where its field has one.
      const suffix = /_(mL|g|cm|C|ms|frac|d|min|m2)$/.exec(problem.path)?.[1];
      if (suffix) expect(problem.unit, sent).toBeDefined();
    }
  }
  expect(Array.isArray(stored)).toBe(true);
}

/** The value with one part, picked by number, replaced or left out. */
function mutated(value: unknown, where: number, by: unknown, remove: boolean): unknown {
  const places: (string | number)[][] = [];
  const visit = (part: unknown, path: (string | number)[]) => {
    places.push(path);
    if (part !== null && typeof part === "object")
      for (const [key, inner] of Object.entries(part)) visit(inner, [...path, key]);
  };
  visit(value, []);
  const path = places[where % places.length] as (string | number)[];
  const last = path.at(-1);
  if (last === undefined) return by;
  const copy: unknown = structuredClone(value);
  const holder = path
    .slice(0, -1)
    .reduce<unknown>((part, key) => (part as Record<string, unknown>)[key], copy);
  if (remove) delete (holder as Record<string, unknown>)[last];
  else (holder as Record<string, unknown>)[last] = by;
  return copy;
}
