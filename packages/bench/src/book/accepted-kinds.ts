import type { AcceptedKinds } from "./accept.ts";
import type { Json } from "./entry.ts";
import { checkData, type KindRegistry } from "./kinds.ts";

/** The registry of kinds, as the gate into the book sees it. */
export function acceptedKinds(registry: KindRegistry): AcceptedKinds {
  return {
    find(name) {
      const kind = registry.find(name);
      if (!kind) return undefined;
      return {
        v: kind.v,
        readers: kind.readers,
        onMin_n: kind.onMin_n,
        check: (data: Json) => checkData(kind, data),
        upcast: (from: number, data: Json) => kind.upcast?.(from, data) ?? data,
      };
    },
  };
}
