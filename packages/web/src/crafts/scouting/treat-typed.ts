import type { ClockedPest, Tool } from "@sillwood/bench/crafts/scouting";

/** What stands in the fields, as typed. */
export interface Typed {
  readonly product: string;
  readonly reentry: string;
  readonly preharvest: string;
  readonly strength: string;
  readonly volume: string;
  readonly every: string;
  readonly times: string;
}

/** A number as people type it, comma or point; undefined where there is none. */
export function numberOf(text: string): number | undefined {
  const plain = text.trim().replace(",", ".");
  if (!/^\d+(\.\d+)?$/.test(plain)) return undefined;
  return Number(plain);
}
export const isNumber = (text: string): boolean => numberOf(text) !== undefined;

/** The entry that the fields make; what is not typed is left out, never taken as 0. */
export function treatedData(
  chosen: { readonly tool: Tool; readonly pest: ClockedPest },
  typed: Typed,
): object {
  const isWash = chosen.tool === "wash";
  const given = (name: string, value: number | undefined, times = 1) =>
    value === undefined ? {} : { [name]: value * times };
  const times = numberOf(typed.times);
  return {
    tool: chosen.tool,
    against: [chosen.pest],
    ...(isWash || typed.product.trim() === "" ? {} : { product: typed.product.trim() }),
    ...(isWash
      ? {}
      : {
          ...given("reentry_h", numberOf(typed.reentry)),
          ...given("preharvest_d", numberOf(typed.preharvest)),
          ...given("strength_frac", numberOf(typed.strength), 0.01),
          ...given("volume_mL", numberOf(typed.volume)),
        }),
    ...given("course_n", times === undefined ? undefined : Math.round(times)),
    ...given("every_d", numberOf(typed.every)),
  };
}
