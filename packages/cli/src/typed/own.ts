/** An entry of a table by what somebody typed; never one that every object inherits (`constructor`, `__proto__`). */
export const own = <Value>(table: Readonly<Record<string, Value>>, key: string): Value | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;
