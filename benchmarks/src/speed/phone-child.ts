import { openHouse } from "../../../e2e/src/house.ts";
import { judgePage } from "../../../e2e/src/lighthouse.ts";
import { answerAsked } from "./answer-asked.ts";
import { type PhoneStart, phoneStarts } from "./phone.ts";

/** Serves a book and opens it on a phone. */
async function phone(
  book: string,
  now_ms: number,
  slower: number,
  runs_n: number,
): Promise<readonly PhoneStart[]> {
  const house = await openHouse({ book });
  try {
    return await phoneStarts(house, now_ms, slower, runs_n);
  } finally {
    await house.discard();
  }
}

/** Lighthouse's mark for the speed of the demo's first screen; undefined with the reason where it gives none. */
async function lighthouse(): Promise<{ readonly mark?: number; readonly trouble?: string }> {
  const house = await openHouse({ demo: true });
  try {
    const mark = (await judgePage(house.address, ["performance"])).scores.performance;
    return mark === undefined ? { trouble: "no mark" } : { mark };
  } catch (error) {
    return { trouble: (error as Error).message };
  } finally {
    await house.discard();
  }
}

const tasks = { phone, lighthouse };
export type PhoneTasks = typeof tasks;

await answerAsked(tasks);
