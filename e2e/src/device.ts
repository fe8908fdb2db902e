import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { browserFlags, browserProgram } from "./browser-program.ts";
import { throwAway } from "./throw-away.ts";

/** The screens that everything must work on. */
export const screens = {
  phone: { width: 390, height: 844 },
  smallPhone: { width: 360, height: 740 },
  desktop: { width: 1280, height: 900 },
} as const;

export interface DeviceLook {
  readonly screen?: keyof typeof screens;
  readonly colorScheme?: "light" | "dark";
  readonly reducedMotion?: boolean;
  readonly contrast?: "more" | "no-preference";
  readonly locale?: string;
  readonly timezone?: string;
  /** Whether this phone was told to trust the house's own certificate: every certificate, as far as this browser goes. */
  readonly trusts?: true;
  /** What the device's clock says when it is taken in hand, so that a walk is the same on every day. */
  readonly now_ms?: number;
}

/** A phone or computer with a memory of its own, which outlives its browser as on a shelf edge it must. */
export interface Device {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Ends the browser at once, as a flat battery does. */
  kill(): Promise<void>;
  /** Starts the browser again on the same memory. */
  reopen(): Promise<void>;
  /** Closes the browser and throws its memory away. */
  discard(): Promise<void>;
}

/** Only the page's clock is set: the engine is told the time by the page, and syncing must see the true one. */
function setClock(shift_ms: number): void {
  const True = Date;
  globalThis.Date = class extends True {
    constructor(...args: unknown[]) {
      if (args.length === 0) super(True.now() + shift_ms);
      else super(...(args as []));
    }
    static override now(): number {
      return True.now() + shift_ms;
    }
  } as DateConstructor;
}

async function open(memory: string, look: DeviceLook, shift_ms: number): Promise<BrowserContext> {
  const screen = look.screen ?? "phone";
  const program = browserProgram();
  const context = await chromium.launchPersistentContext(memory, {
    executablePath: program.path,
    args: [...browserFlags, ...(look.trusts ? ["--ignore-certificate-errors"] : [])],
    env: { ...process.env, ...program.env } as Record<string, string>,
    viewport: screens[screen],
    hasTouch: screen !== "desktop",
    isMobile: screen !== "desktop",
    colorScheme: look.colorScheme ?? "light",
    reducedMotion: look.reducedMotion ? "reduce" : "no-preference",
    contrast: look.contrast ?? "no-preference",
    locale: look.locale ?? "en-GB",
    timezoneId: look.timezone ?? "Europe/London",
    serviceWorkers: "allow",
  });
  if (shift_ms !== 0) await context.addInitScript(setClock, shift_ms);
  return context;
}

async function processOf(context: BrowserContext): Promise<number> {
  const browser = context.browser();
  if (!browser) throw new Error("this browser does not say who it is");
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  const main = processInfo.find((each) => each.type === "browser");
  if (!main) throw new Error("the browser's own process is not on its list");
  return main.id;
}

/** Takes a new device in hand. */
export async function openDevice(look: DeviceLook = {}): Promise<Device> {
  const memory = mkdtempSync(join(tmpdir(), "sillwood-device-"));
  const shift_ms = look.now_ms === undefined ? 0 : look.now_ms - Date.now();
  let context = await open(memory, look, shift_ms);
  let page = context.pages()[0] ?? (await context.newPage());
  return {
    get page() {
      return page;
    },
    get context() {
      return context;
    },
    async kill() {
      const gone = new Promise((resolve) => context.once("close", resolve));
      process.kill(await processOf(context), "SIGKILL");
      await gone;
    },
    async reopen() {
      context = await open(memory, look, shift_ms);
      page = context.pages()[0] ?? (await context.newPage());
    },
    async discard() {
      await context.close().catch(() => {});
      await throwAway(memory);
    },
  };
}
