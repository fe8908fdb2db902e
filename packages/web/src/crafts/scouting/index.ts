import { onDemand } from "../../words/on-demand.ts";
import type { CraftScreens } from "../screens.ts";
import { ScoutingMark } from "./mark.tsx";

export const scouting: CraftScreens = {
  mark: ScoutingMark,
  pages: [
    {
      path: "/craft/scout",
      screen: onDemand(async () => (await import("./list-screen.tsx")).ScoutList),
    },
    {
      path: "/craft/scout/:plant",
      screen: onDemand(async () => (await import("./look-screen.tsx")).LookScreen),
    },
    {
      path: "/craft/scout/:plant/treat",
      screen: onDemand(async () => (await import("./treat-screen.tsx")).TreatScreen),
    },
  ],
};
