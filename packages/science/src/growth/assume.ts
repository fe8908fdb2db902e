import type { Assumption } from "../assumption.ts";
import { unitOfName } from "../errors/index.ts";

type Found = Pick<Assumption, "kind" | "source">;

export const published = (source: string): Found => ({ kind: "published", source });
export const ours = (source = "our assumption"): Found => ({ kind: "assumed", source });
export const remembered = ours("from memory");
export const trade: Found = { kind: "common practice", source: "common practice, no source" };

/** One adjustable number in one line; its unit is read out of its key. */
export const assume = <const Key extends string>(
  key: Key,
  what: string,
  value: number,
  min: number,
  max: number,
  found: Found,
): Assumption & { readonly key: Key } => ({ key, what, value, unit: unitOfName(key), min, max, ...found });
