import { lazy } from "react";
import type { CraftScreens } from "../screens.ts";
import { PottingMark } from "./mark.tsx";

const mixScreen = lazy(async () => ({ default: (await import("./mix-screen.tsx")).MixScreen }));

export const potting: CraftScreens = {
  mark: PottingMark,
  pages: [
    {
      path: "/craft/potting",
      screen: lazy(async () => ({ default: (await import("./day-screen.tsx")).DayScreen })),
    },
    { path: "/craft/potting/mix", screen: mixScreen },
    { path: "/craft/potting/mix/:plant", screen: mixScreen },
  ],
};
