import type { Json } from "@sillwood/bench/book";
import type { LightAsk, LightPage } from "@sillwood/bench/crafts/lighting";
import { useAsk } from "../../engine/use-ask.ts";

interface Light {
  readonly page?: LightPage;
  /** Why the craft can't draw what was asked. */
  readonly refused?: string;
  readonly error?: Error | undefined;
  /** The program has no craft of light. */
  readonly isMissing?: true;
}

export const CRAFT = "lighting";

/** The craft's own page, as it answers what was asked. */
export function useLight(ask: LightAsk): Light {
  const { value, error } = useAsk("craft page", { craft: CRAFT, ask: ask as unknown as Json });
  if (!value) return { error };
  if ("refused" in value) return { refused: value.refused };
  if (value.page === undefined) return { isMissing: true };
  return { page: value.page as LightPage, error };
}
