import { isUuid7, type Json } from "@sillwood/bench/book";
import type { Context, Hono } from "hono";
import * as v from "valibot";
import { grower, reader } from "../access/who.ts";
import { bookAt, type House } from "../house.ts";
import { HttpProblem } from "../problem.ts";
import { readJson } from "../request-body.ts";

const line = (what: string, longest: number) =>
  v.pipe(
    v.string(`${what} is not text`),
    v.maxLength(longest, `${what} is longer than ${longest} characters`),
  );

/** A person card: outside the book, editable, erasable. */
export const cardSchema = v.strictObject({
  name: v.pipe(line("name", 100), v.minLength(1, "name is empty")),
  address: v.optional(line("address", 500)),
  mail: v.optional(line("mail", 200)),
  telephone: v.optional(line("telephone", 50)),
  note: v.optional(line("note", 1000)),
  /** What everybody else who walks the round may call this person. */
  shown: v.optional(line("display name", 60)),
});

type Card = v.InferOutput<typeof cardSchema>;

export function peopleRoutes(app: Hono, house: House): void {
  app.get("/books/:book/people", async (c) => {
    const { people } = bookAt(house, c);
    const isGrower = reader(c).role === "grower";
    const listed: { id: string; name?: string; shown?: string }[] = [];
    for (const id of await people.ids()) {
      const { name, shown } = (await people.get(id)) as unknown as Card;
      // Others get a display name, never the card.
      listed.push({ id, ...(isGrower ? { name } : {}), ...(shown ? { shown } : {}) });
    }
    c.header("cache-control", "no-store");
    return c.json({ people: listed });
  });
  app.get("/books/:book/people/:person", async (c) => {
    grower(c);
    const card = await bookAt(house, c).people.get(personAt(c));
    if (card === undefined) throw new HttpProblem(404, "there is no card of this person");
    c.header("cache-control", "no-store");
    return c.json(card as object);
  });
  app.put("/books/:book/people/:person", async (c) => {
    grower(c);
    const store = bookAt(house, c);
    const person = personAt(c);
    const card = await readJson(c, cardSchema, 16 * 1024);
    await store.people.put(person, card as unknown as Json);
    return c.body(null, 204);
  });
  app.delete("/books/:book/people/:person", async (c) => {
    grower(c);
    await bookAt(house, c).people.erase(personAt(c));
    return c.body(null, 204);
  });
}

function personAt(c: Context): string {
  const person = c.req.param("person") ?? "";
  if (!isUuid7(person))
    throw new HttpProblem(422, "a person is named by an id", [
      {
        path: "person",
        message: "is no UUIDv7",
        value: person.slice(0, 100),
        limit: "a UUIDv7 in lower case",
      },
    ]);
  return person;
}
