import { afterAll, beforeAll, expect, it } from "vitest";
import { startPostgres } from "../../store/test/embedded.ts";
import { shell } from "./shell.ts";

let postgres: Awaited<ReturnType<typeof startPostgres>>;
beforeAll(async () => {
  postgres = await startPostgres();
  await postgres.make("garden");
}, 120_000);
afterAll(() => postgres?.stop());

it("keeps a book in PostgreSQL as in a file, and two books of one database apart", async () => {
  const sh = shell();
  const at = (book: string) => ["--book", `${postgres.url("garden")}?book=${book}`];
  expect((await sh.run("enter", "brought", "new", "habit=thin", "window=S", ...at("one"))).code).toBe(0);
  expect((await sh.run("enter", "weighed", "1", "weight=612", ...at("one"))).code).toBe(0);
  expect((await sh.run("enter", "brought", "new", "habit=fat", ...at("two"))).code).toBe(0);
  expect((await sh.run("show", "1", ...at("one"))).out).toContain("thin-fruited");
  expect((await sh.run("show", "1", ...at("two"))).out).toContain("fat-fruited");
  expect((await sh.run("book", "log", "1", ...at("one"))).out).toContain("weighed 612 g");
  const verified = await sh.run("book", "verify", ...at("one"));
  expect(verified.out).toContain("the book one in 127.0.0.1");
  expect(verified.out).not.toContain("postgres:");
  const missing = await sh.run("round", ...at("three"));
  expect(missing.code).toBe(1);
  expect(missing.err).toContain("holds no book three");
}, 60_000);
