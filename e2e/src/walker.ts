import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { type Budget, type Effort, overBudget } from "./budget.ts";
import type { Device } from "./device.ts";

/** Whoever walks a walk: does what a person does, and counts it. */
export interface Walker {
  readonly effort: Effort;
  /** One pointer press; a decision unless said otherwise. */
  tap(target: Locator, options?: { readonly decision?: boolean }): Promise<void>;
  /** Digits on the number pad of the screen, each found by its name; one typed value. */
  pad(value: string): Promise<void>;
  /** One key press of a keyboard. */
  key(key: string): Promise<void>;
  /** A value typed on a keyboard into what has the focus. */
  type(value: string): Promise<void>;
  /** Saves a picture under SILLWOOD_SHOTS, if that is set. */
  shoot(name: string): Promise<void>;
  /** Troubles of the console that this walk brings about itself, such as a stopped server. */
  expectTrouble(pattern: RegExp): void;
  /** Console errors and uncaught errors that nobody expected. */
  troubles(): readonly string[];
  /** Throws when the walk cost more than it may, or the console complained. */
  finish(budget: Budget): void;
}

const isDigit = (key: string) => /^[\d.,]$/.test(key);

/** Starts counting on a device. The device may be killed and opened again on the way. */
export function walkerOn(device: Device): Walker {
  const effort = { taps_n: 0, keys_n: 0, digits_n: 0, decisions_n: 0, typedValues_n: 0 };
  const heard: string[] = [];
  const expected: RegExp[] = [];
  const listening = new WeakSet<Page>();

  function here(): Page {
    const page = device.page;
    if (!listening.has(page)) {
      listening.add(page);
      page.on("console", (message) => {
        if (message.type() === "error") heard.push(`${message.text()} (${message.location().url})`);
      });
      page.on("pageerror", (error) => heard.push(`uncaught: ${error.message}`));
    }
    return page;
  }
  here();

  const pressed = (key: string) => {
    effort.keys_n += 1;
    if (isDigit(key)) effort.digits_n += 1;
  };
  const troubles = () => heard.filter((trouble) => !expected.some((pattern) => pattern.test(trouble)));

  return {
    effort,
    async tap(target, { decision = true } = {}) {
      here();
      await target.click();
      effort.taps_n += 1;
      if (decision) effort.decisions_n += 1;
    },
    async pad(value) {
      for (const digit of value) {
        await here().getByRole("button", { name: digit, exact: true }).click();
        pressed(digit);
      }
      effort.typedValues_n += 1;
    },
    async key(key) {
      await here().keyboard.press(key);
      pressed(key);
    },
    async type(value) {
      await here().keyboard.type(value);
      for (const letter of value) pressed(letter);
      effort.typedValues_n += 1;
    },
    async shoot(name) {
      const folder = process.env["SILLWOOD_SHOTS"];
      if (!folder) return;
      mkdirSync(folder, { recursive: true });
      await here().screenshot({ path: join(folder, `${name}.png`), fullPage: true });
    },
    expectTrouble: (pattern) => void expected.push(pattern),
    troubles,
    finish(budget) {
      const complaints = [...overBudget(effort, budget), ...troubles()];
      if (complaints.length > 0) throw new Error(`the walk does not hold:\n${complaints.join("\n")}`);
    },
  };
}
