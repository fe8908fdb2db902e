/** Tells listeners that something new is in the book. Says no more: what it is, sync asks. */
export interface News {
  announce(): void;
  /** Returns the way to stop listening. */
  listen(heard: () => void): () => void;
  readonly listeners_n: number;
}

export function makeNews(): News {
  const listeners = new Set<() => void>();
  return {
    announce() {
      for (const heard of listeners) heard();
    },
    listen(heard) {
      listeners.add(heard);
      return () => void listeners.delete(heard);
    },
    get listeners_n() {
      return listeners.size;
    },
  };
}
