import { onDemand } from "../../words/on-demand.ts";
import type { CraftScreens } from "../screens.ts";
import { TrimmingMark } from "./mark.tsx";

export const trimming: CraftScreens = {
  mark: TrimmingMark,
  pages: [
    {
      path: "/craft/trim",
      screen: onDemand(async () => (await import("./list-screen.tsx")).TrimList),
    },
    {
      path: "/craft/trim/:plant",
      screen: onDemand(async () => (await import("./trim-screen.tsx")).TrimScreen),
    },
    {
      path: "/craft/trim/:plant/trace",
      screen: onDemand(async () => (await import("./trace-screen.tsx")).TraceScreen),
    },
    {
      path: "/craft/trim/:plant/sketch",
      screen: onDemand(async () => (await import("./sketch-screen.tsx")).SketchScreen),
    },
    {
      path: "/craft/trim/:plant/cuts",
      screen: onDemand(async () => (await import("./cuts-screen.tsx")).CutsScreen),
    },
    {
      path: "/craft/trim/:plant/print/:key",
      screen: onDemand(async () => (await import("./print-screen.tsx")).PrintScreen),
    },
  ],
};
