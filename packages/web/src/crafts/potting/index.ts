import { onDemand } from "../../words/on-demand.ts";
import type { CraftScreens } from "../screens.ts";
import { PottingMark } from "./mark.tsx";

const mixScreen = onDemand(async () => (await import("./mix-screen.tsx")).MixScreen);

export const potting: CraftScreens = {
  mark: PottingMark,
  pages: [
    {
      path: "/craft/potting",
      screen: onDemand(async () => (await import("./day-screen.tsx")).DayScreen),
    },
    { path: "/craft/potting/mix", screen: mixScreen },
    { path: "/craft/potting/mix/:plant", screen: mixScreen },
  ],
};
