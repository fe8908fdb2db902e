import { StoreError, storeError } from "../errors.ts";

/** Runs an act and turns what it throws into a StoreError. */
export type Ask = <Result>(act: () => Promise<Result> | Result) => Promise<Result>;

/**
 * A gate before a store: refuses after closing, names errors, and lets writers through one at a time, so that an append never
 * slips into the transaction of a verification on the same connection.
 */
export function storeGate(): { ask: Ask; write: Ask; close(last: () => Promise<void>): Promise<void> } {
  let queue: Promise<unknown> = Promise.resolve();
  let closed = false;
  const ask: Ask = async (act) => {
    if (closed) throw new StoreError("closed", "the book has been closed");
    try {
      return await act();
    } catch (error) {
      throw storeError(error);
    }
  };
  const write: Ask = (act) => {
    const turn = queue.then(() => ask(act));
    queue = turn.catch(() => undefined);
    return turn;
  };
  return {
    ask,
    write,
    async close(last) {
      if (closed) return;
      await write(last);
      closed = true;
    },
  };
}
