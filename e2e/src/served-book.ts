import type { Page } from "playwright-core";
import type { House } from "./house.ts";

/** An entry as it lies in the book, in SI. */
export interface WrittenEntry {
  readonly id: string;
  readonly kind: string;
  readonly on: readonly string[];
  readonly by: string;
  readonly at_ms: number;
  readonly data: Readonly<Record<string, unknown>>;
  readonly corrects?: readonly string[];
}

/** Every entry that the server holds, as its export gives them. */
export async function entriesOf(house: House): Promise<readonly WrittenEntry[]> {
  const listed = (await (await fetch(`${house.address}books`)).json()) as { books: { id: string }[] };
  const book = listed.books[0]?.id;
  if (book === undefined) throw new Error("the server names no book");
  const text = await (await fetch(`${house.address}books/${book}/export`)).text();
  const lines = text
    .split("\n")
    .filter(Boolean)
    .map((line) => JSON.parse(line) as Partial<WrittenEntry>);
  return lines.filter((line): line is WrittenEntry => line.kind !== undefined && line.id !== undefined);
}

/** What came to the book since another look at it, in the order of the export. */
export async function entriesSince(
  house: House,
  before: readonly WrittenEntry[],
): Promise<readonly WrittenEntry[]> {
  const known = new Set(before.map(({ id }) => id));
  return (await entriesOf(house)).filter(({ id }) => !known.has(id));
}

/** Waits until the device says that the server has all. */
export async function allOnServer(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Save mark: all on server" }).waitFor({ timeout: 60_000 });
}

/** Opens the house on a device as somebody; the choice of who holds it is made once and counts for no walk but the first. */
export async function enter(page: Page, house: House, who: "grower" | "helper"): Promise<void> {
  await page.goto(house.address);
  await page.getByRole("button", { name: who === "grower" ? "THE GROWER" : "The helper" }).click();
  await page.getByRole("button", { name: /^START / }).waitFor({ timeout: 120_000 });
  await allOnServer(page);
}
