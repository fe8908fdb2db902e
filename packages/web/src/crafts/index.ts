import { feeding } from "./feeding/index.ts";
import { fruiting } from "./fruiting/index.ts";
import { growth } from "./growth/index.ts";
import { lighting } from "./lighting/index.ts";
import { potting } from "./potting/index.ts";
import { scouting } from "./scouting/index.ts";
import type { CraftName, CraftScreens } from "./screens.ts";
import { trimming } from "./trimming/index.ts";
import { watering } from "./watering/index.ts";

/** One line a craft: its screens, or an explicit "none". */
export const craftScreens = {
  watering,
  lighting,
  growth,
  potting,
  feeding,
  fruiting,
  scouting,
  trimming,
} satisfies Readonly<Record<CraftName, CraftScreens | "none">>;

/** The first craft that gives something, whatever it is called. */
export function fromCrafts<Part extends keyof CraftScreens>(part: Part): CraftScreens[Part] | undefined {
  for (const screens of Object.values<CraftScreens | "none">(craftScreens))
    if (screens !== "none" && screens[part] !== undefined) return screens[part];
  return undefined;
}

/** The pages of all crafts, for the table of routes. */
export const craftPages: NonNullable<CraftScreens["pages"]> = Object.values<CraftScreens | "none">(
  craftScreens,
).flatMap((screens) => (screens === "none" ? [] : (screens.pages ?? [])));

export const screensOf = (craft: string): CraftScreens | undefined => {
  const screens: CraftScreens | "none" | undefined = (
    craftScreens as Readonly<Record<string, CraftScreens | "none">>
  )[craft];
  return screens === "none" ? undefined : screens;
};
export type { CraftName, CraftScreens } from "./screens.ts";
