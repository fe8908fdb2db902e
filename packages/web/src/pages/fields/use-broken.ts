import { useCallback, useState } from "react";
import type { Broken } from "./entry-form.tsx";

/** Which fields of a form hold something that is no value of theirs. */
export function useBroken(): {
  readonly broken: Broken;
  readonly onBroken: (key: string, isBroken: boolean) => void;
} {
  const [broken, setBroken] = useState<Broken>(new Set());
  const onBroken = useCallback((key: string, isBroken: boolean) => {
    setBroken((before) => {
      if (before.has(key) === isBroken) return before;
      const next = new Set(before);
      if (isBroken) next.add(key);
      else next.delete(key);
      return next;
    });
  }, []);
  return { broken, onBroken };
}
