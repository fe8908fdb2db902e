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

/** What the first round of a day keeps by itself. */
const FORECASTS = "forecast.issued";

/** Every entry that people wrote and the server holds, as its export gives them: the day's forecasts are kept by no hand. */
export const entriesOf = async (house: House): Promise<readonly WrittenEntry[]> =>
  (await allEntriesOf(house)).filter(({ kind }) => kind !== FORECASTS);

async function allEntriesOf(house: House): Promise<readonly WrittenEntry[]> {
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

/** Waits until the first round of the day has kept its forecasts: from then on only hands write. */
export async function forecastsKept(house: House): Promise<void> {
  for (let waited_ms = 0; waited_ms < 60_000; waited_ms += 200) {
    if ((await allEntriesOf(house)).some(({ kind }) => kind === FORECASTS)) return;
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
  throw new Error("the round kept no forecasts within a minute");
}

/** Opens the house on a device as somebody; the choice of who holds it is made once and counts for no walk but the first. */
export async function enter(page: Page, house: House, who: "grower" | "helper"): Promise<void> {
  await page.goto(house.address);
  await page.getByRole("button", { name: who === "grower" ? "THE GROWER" : "The helper" }).click();
  await page.getByRole("button", { name: /^START / }).waitFor({ timeout: 120_000 });
  await allOnServer(page);
}
