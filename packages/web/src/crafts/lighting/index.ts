import { lazy } from "react";
import type { CraftScreens } from "../screens.ts";
import { LightingMark } from "./mark.tsx";

export const lighting: CraftScreens = {
  mark: LightingMark,
  ofBench: (bench) => `/craft/light/${encodeURIComponent(bench)}`,
  pages: [
    {
      path: "/craft/light",
      screen: lazy(async () => ({ default: (await import("./light-screen.tsx")).LightScreen })),
    },
    {
      path: "/craft/light/:bench",
      screen: lazy(async () => ({ default: (await import("./light-screen.tsx")).LightScreen })),
    },
    {
      path: "/craft/light/:bench/read/:spot",
      screen: lazy(async () => ({ default: (await import("./read-screen.tsx")).ReadScreen })),
    },
    {
      path: "/craft/light/:bench/draw/:what/:which?",
      screen: lazy(async () => ({ default: (await import("./draw-screen.tsx")).DrawScreen })),
    },
    {
      path: "/craft/light/:bench/print",
      screen: lazy(async () => ({ default: (await import("./shelf-edge.tsx")).ShelfEdge })),
    },
  ],
};
