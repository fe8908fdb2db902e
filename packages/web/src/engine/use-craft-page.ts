import type { Json } from "@sillwood/bench/book";
import { useRef } from "react";
import { useAsk } from "./use-ask.ts";

interface CraftPageSeen<Page> {
  readonly page?: Page;
  /** Why the craft can't draw what was asked. */
  readonly refused?: string;
  readonly error?: Error | undefined;
  /** The program has no such craft. */
  readonly isMissing?: true;
}

/**
 * A craft's own page, as it answers what was asked; what is asked and answered is the contract of the craft's folder.
 *
 * @param keepsLast whether the last answer stays while the next is reckoned
 */
export function useCraftPage<Ask, Page>(craft: string, ask: Ask, keepsLast = false): CraftPageSeen<Page> {
  const { value, error } = useAsk("craft page", { craft, ask: ask as unknown as Json });
  const last = useRef<Page>(undefined);
  if (!value) return keepsLast && last.current && !error ? { page: last.current } : { error };
  if ("refused" in value) return { refused: value.refused };
  if (value.page === undefined) return { isMissing: true };
  last.current = value.page as Page;
  return { page: last.current, error };
}
