import type { Page } from "playwright-core";
import type { House } from "./house.ts";
import type { Line } from "./line.ts";
import { allOnServer } from "./served-book.ts";

/** A code from the grower's screen, made as the grower makes it. */
export async function codeFor(grower: Page, house: House, whom: RegExp): Promise<string> {
  await grower.goto(`${house.address}#/settings/people`);
  await grower.getByRole("button", { name: "LET A PHONE IN" }).click();
  await grower.getByRole("button", { name: whom }).click();
  const code = grower.locator("output");
  await code.waitFor();
  return ((await code.textContent()) ?? "").replace(/\D/g, "");
}

/** Types the code on a phone at the door for phones, and waits until the book is there. */
export async function letIn(phone: Page, line: Line, code: string, name: string): Promise<void> {
  await phone.goto(`https://127.0.0.1:${line.port}/`);
  await phone.getByRole("heading", { level: 1, name: "Let this phone in" }).waitFor({ timeout: 60_000 });
  await phone.getByRole("textbox", { name: "This phone is called" }).fill(name);
  for (const digit of code) await phone.getByRole("button", { name: digit, exact: true }).click();
  await phone.getByRole("button", { name: "LET ME IN" }).click();
  await phone.getByRole("button", { name: /^START / }).waitFor({ timeout: 120_000 });
  await allOnServer(phone);
}
