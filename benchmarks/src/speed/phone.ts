import type { CDPSession, Page } from "playwright-core";
import { openDevice } from "../../../e2e/src/device.ts";
import type { House } from "../../../e2e/src/house.ts";
import { enter } from "../../../e2e/src/served-book.ts";

/** One opening of the app on a phone that holds the book already. */
export interface PhoneStart {
  readonly usable_ms: number;
  /** What lives in page and worker after a collection, and before it. */
  readonly heap_MB: number;
  readonly unswept_MB: number;
  /** Whether the worker was slowed as the page was. */
  readonly workerSlowed: boolean;
}

const B_PER_MB = 1e6;
/** A phone stays in the hand for a while: the lines behind the round are read then, which is when the heap is largest. */
const IN_HAND_ms = 5_000;

/**
 * Takes a phone in hand, lets it fetch the book once, and opens the app several times with a processor slowed as a phone's is.
 *
 * @param slower times slower than this machine
 */
export async function phoneStarts(
  house: House,
  now_ms: number,
  slower: number,
  runs_n: number,
): Promise<readonly PhoneStart[]> {
  const device = await openDevice({ screen: "phone", now_ms });
  try {
    device.page.setDefaultTimeout(600_000);
    await enter(device.page, house, "grower");
    await device.page.waitForTimeout(IN_HAND_ms);
    const starts: PhoneStart[] = [];
    for (let run = 0; run < runs_n; run++) {
      await device.context.close();
      await device.reopen();
      starts.push(await startOn(device.page, house, slower));
    }
    return starts;
  } finally {
    await device.discard();
  }
}

async function startOn(page: Page, house: House, slower: number): Promise<PhoneStart> {
  const cdp = await page.context().newCDPSession(page);
  const worker = await workerOf(cdp, slower);
  await cdp.send("Emulation.setCPUThrottlingRate", { rate: slower });
  const start_ms = performance.now();
  await page.goto(house.address, { waitUntil: "commit" });
  await page.getByRole("button", { name: /^START / }).waitFor({ timeout: 300_000 });
  const usable_ms = performance.now() - start_ms;
  await cdp.send("Emulation.setCPUThrottlingRate", { rate: 1 });
  await page.waitForTimeout(IN_HAND_ms);
  const unswept_B = (await cdp.send("Runtime.getHeapUsage")).usedSize + (await worker.heap_B());
  await cdp.send("HeapProfiler.collectGarbage");
  await worker.collect();
  const heap_B = (await cdp.send("Runtime.getHeapUsage")).usedSize + (await worker.heap_B());
  return {
    usable_ms,
    heap_MB: heap_B / B_PER_MB,
    unswept_MB: unswept_B / B_PER_MB,
    workerSlowed: worker.slowed(),
  };
}

/** A line to the engine's worker, which the page's own session does not reach. */
async function workerOf(cdp: CDPSession, slower: number) {
  let session: string | undefined;
  let slowed = false;
  let next = 0;
  const waiting = new Map<number, (answer: { result?: unknown; error?: unknown }) => void>();
  const ask = (sessionId: string, method: string, params: object = {}) =>
    new Promise<{ result?: unknown; error?: unknown }>((resolve) => {
      const id = ++next;
      waiting.set(id, resolve);
      cdp
        .send("Target.sendMessageToTarget", { sessionId, message: JSON.stringify({ id, method, params }) })
        .catch((error) => resolve({ error }));
    });
  cdp.on("Target.receivedMessageFromTarget", ({ message }) => {
    const { id, ...answer } = JSON.parse(message) as { id?: number; result?: unknown; error?: unknown };
    if (id === undefined) return;
    waiting.get(id)?.(answer);
    waiting.delete(id);
  });
  cdp.on("Target.attachedToTarget", async ({ sessionId, targetInfo }) => {
    if (targetInfo.type !== "worker") return;
    session = sessionId;
    slowed = (await ask(sessionId, "Emulation.setCPUThrottlingRate", { rate: slower })).error === undefined;
  });
  await cdp.send("Target.setAutoAttach", { autoAttach: true, waitForDebuggerOnStart: false, flatten: false });
  return {
    slowed: () => slowed,
    async heap_B(): Promise<number> {
      if (session === undefined) throw new Error("the app runs no worker that can be asked for its heap");
      const { result, error } = await ask(session, "Runtime.getHeapUsage");
      if (error) throw new Error(`the worker does not say its heap: ${JSON.stringify(error)}`);
      return (result as { usedSize: number }).usedSize;
    },
    async collect(): Promise<void> {
      if (session !== undefined) await ask(session, "HeapProfiler.collectGarbage");
    },
  };
}
