/** Lets so many through at once and so many more each second, for each name apart. */
export interface RateLimit {
  /** Takes one; undefined when it may pass, else the seconds until one may. */
  wait_s(name: string, now_ms: number): number | undefined;
  readonly names_n: number;
}

/** More names than this are strangers knocking: the oldest are forgotten, so that memory stays bounded. @source our assumption */
const NAMES_MAX_n = 10_000;

export function rateLimit({ burst_n, perSecond_n }: { burst_n: number; perSecond_n: number }): RateLimit {
  const buckets = new Map<string, { left_n: number; at_ms: number }>();
  return {
    wait_s(name, now_ms) {
      const before = buckets.get(name) ?? { left_n: burst_n, at_ms: now_ms };
      // A clock set back must not lock anybody out: no time has passed then.
      const passed_s = Math.max(0, now_ms - before.at_ms) / 1000;
      const left_n = Math.min(burst_n, before.left_n + passed_s * perSecond_n);
      buckets.delete(name);
      const may = left_n >= 1;
      buckets.set(name, { left_n: may ? left_n - 1 : left_n, at_ms: now_ms });
      if (buckets.size > NAMES_MAX_n) buckets.delete(buckets.keys().next().value as string);
      return may ? undefined : Math.ceil((1 - left_n) / perSecond_n);
    },
    get names_n() {
      return buckets.size;
    },
  };
}
