/** Most acts in one group: none waits long for the others. @source our assumption */
const GROUP_MAX_n = 64;

/**
 * Lets acts that come at about the same time share one commit: syncing the disk costs the same for one as for twenty. Each is answered
 * once the commit that holds it is durable. Where a group fails, each is tried alone, so that none suffers for another.
 *
 * @param run makes a group durable, all or nothing
 * @param turn lets nothing else write meanwhile
 */
export function inGroups<Item, Result>(
  run: (items: readonly Item[]) => readonly Result[] | Promise<readonly Result[]>,
  turn: <Done>(act: () => Promise<Done>) => Promise<Done>,
): (item: Item) => Promise<Result> {
  interface Waiting {
    readonly item: Item;
    resolve(result: Result): void;
    reject(error: unknown): void;
  }
  let waiting: Waiting[] = [];
  const settle = async (group: readonly Waiting[]): Promise<void> => {
    try {
      const results = await run(group.map(({ item }) => item));
      for (const [i, { resolve }] of group.entries()) resolve(results[i] as Result);
    } catch (error) {
      if (group.length === 1) group[0]?.reject(error);
      else for (const one of group) await settle([one]);
    }
  };
  const next = (): Promise<void> =>
    turn(async () => {
      // A turn of the event loop: what has arrived by then comes along.
      await new Promise((resolve) => setImmediate(resolve));
      const group = waiting.slice(0, GROUP_MAX_n);
      waiting = waiting.slice(GROUP_MAX_n);
      await settle(group);
    });
  let running = false;
  const start = async (): Promise<void> => {
    running = true;
    try {
      while (waiting.length > 0) await next();
    } catch (error) {
      for (const { reject } of waiting) reject(error);
      waiting = [];
    } finally {
      running = false;
    }
  };
  return (item) =>
    new Promise((resolve, reject) => {
      waiting.push({ item, resolve, reject });
      if (!running) void start();
    });
}
