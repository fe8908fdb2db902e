import { onDemand } from "../../words/on-demand.ts";
import type { CraftScreens } from "../screens.ts";
import { LightingMark } from "./mark.tsx";

export const lighting: CraftScreens = {
  mark: LightingMark,
  ofBench: (bench) => `/craft/light/${encodeURIComponent(bench)}`,
  pages: [
    {
      path: "/craft/light",
      screen: onDemand(async () => (await import("./light-screen.tsx")).LightScreen),
    },
    {
      path: "/craft/light/:bench",
      screen: onDemand(async () => (await import("./light-screen.tsx")).LightScreen),
    },
    {
      path: "/craft/light/:bench/read/:spot",
      screen: onDemand(async () => (await import("./read-screen.tsx")).ReadScreen),
    },
    {
      path: "/craft/light/:bench/draw/:what/:which?",
      screen: onDemand(async () => (await import("./draw-screen.tsx")).DrawScreen),
    },
    {
      path: "/craft/light/:bench/print",
      screen: onDemand(async () => (await import("./shelf-edge.tsx")).ShelfEdge),
    },
  ],
};
