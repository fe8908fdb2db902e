import type { Json } from "@sillwood/bench/book";
import type { TrimAsk, TrimPage } from "@sillwood/bench/crafts/trimming";
import { useRef } from "react";
import { useAsk } from "../../engine/use-ask.ts";

interface Trim {
  readonly page?: TrimPage;
  readonly refused?: string;
  readonly error?: Error | undefined;
  readonly isMissing?: true;
}

const CRAFT = "trimming";

/** The craft's own page, as it answers what was asked; the last answer stays while the next is reckoned. */
export function useTrim(ask: TrimAsk): Trim {
  const { value, error } = useAsk("craft page", { craft: CRAFT, ask: ask as unknown as Json });
  const last = useRef<TrimPage>(undefined);
  if (!value) return last.current && !error ? { page: last.current } : { error };
  if ("refused" in value) return { refused: value.refused };
  if (value.page === undefined) return { isMissing: true };
  last.current = value.page as TrimPage;
  return { page: last.current, error };
}
