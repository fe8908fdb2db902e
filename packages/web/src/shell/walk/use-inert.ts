import { useEffect, useState } from "react";
import { INERT_ms } from "../guard.ts";

/** True for 700 ms after the pot changed: DONE rests, so that a second drop on the glass writes nothing. */
export function useInert(pot: string): boolean {
  const [restedFor, setRested] = useState<string>();
  useEffect(() => {
    const timer = setTimeout(() => setRested(pot), INERT_ms);
    return () => clearTimeout(timer);
  }, [pot]);
  return restedFor !== pot;
}
