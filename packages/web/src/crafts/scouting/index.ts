import { lazy } from "react";
import type { CraftScreens } from "../screens.ts";
import { ScoutingMark } from "./mark.tsx";

export const scouting: CraftScreens = {
  mark: ScoutingMark,
  pages: [
    {
      path: "/craft/scout",
      screen: lazy(async () => ({ default: (await import("./list-screen.tsx")).ScoutList })),
    },
    {
      path: "/craft/scout/:plant",
      screen: lazy(async () => ({ default: (await import("./look-screen.tsx")).LookScreen })),
    },
    {
      path: "/craft/scout/:plant/treat",
      screen: lazy(async () => ({ default: (await import("./treat-screen.tsx")).TreatScreen })),
    },
  ],
};
